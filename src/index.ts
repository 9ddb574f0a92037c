// Named re-exports only: what is not named here is not public.

export { type AssemblyInput, type AssemblyRating, assemblyRating } from './assembly/assembly-rating.js';
export { type MaximumSecuringLoad, maximumSecuringLoad } from './assembly/maximum-securing-load.js';
export type {
  AnchorPart,
  Capacities,
  ChainPart,
  Condition,
  FiberRopePart,
  FittingPart,
  MarkedPart,
  ParallelPart,
  Part,
  PartKind,
  StrappingPart,
  WebbingPart,
  WireRopePart,
} from './assembly/part.js';
export type { PartBasis, PartRating } from './assembly/rate-part.js';
export {
  type ChainMass,
  type ChainMassFromLink,
  chainMass,
  chainMassFromLink,
  STEEL_DENSITY,
} from './chain/chain-mass.js';
export {
  type ChainRating,
  type ChainRatingBasis,
  chainRating,
  type ListedChain,
  type MarkedChain,
} from './chain/chain-rating.js';
export { type ChainStiffness, chainStiffness } from './chain/chain-stiffness.js';
export { type BreakingForceOfGrade, breakingForceOfGrade } from './chain/grade-strength.js';
export { type ChainCandidate, type ChainFinish, type ChainIdentity, identifyChain } from './chain/identify-chain.js';
export { type LengthOfLinks, type LinksForLength, lengthOfLinks, linksForLength } from './chain/links.js';
export type { RatedChain } from './chain/rated-chains.js';
export {
  type AnyGrade,
  CHAIN_GRADES,
  type ChainGrade,
  type EuropeanChainClass,
  INCH_SIZES,
  type InchSize,
  parseTradeSize,
  type TradeSize,
} from './chain/trade-size.js';
export { type DrawingOptions, drawSecurement } from './drawing/draw-securement.js';
export { RiggingError, type RiggingErrorCode, type RiggingIssue } from './errors.js';
export { type Evaluated, evaluateMany } from './evaluate-many.js';
export { explain, type SheetFormat } from './explain/explain.js';
export { inWords } from './explain/in-words.js';
export { type Fit, fits, type Hook } from './hardware/fits.js';
export {
  type AvailablePull,
  type AvailablePullInput,
  availablePull,
  type PullLimit,
  type PullLimitName,
} from './pulling/available-pull.js';
export { type BridleAngles, type BridleTension, bridleTension } from './pulling/bridle-tension.js';
export { type ChainSag, chainSag } from './pulling/chain-sag.js';
export type { DrawbarPowerCase, Engine } from './pulling/engine.js';
export type { ChainAngle, Hitch, HitchKind } from './pulling/hitch.js';
export { type HitchStability, hitchStability, type Stance } from './pulling/hitch-stability.js';
export { type GreenWood, type LogMass, type LogMassInput, logMass } from './pulling/log-mass.js';
export { type PlannedPull, type PullChain, type PullPlan, planPull } from './pulling/plan-pull.js';
export { type PullChainLength, pullChainLength, type Standoff } from './pulling/pull-chain-length.js';
export {
  type PullResistance,
  type PullResistanceInput,
  pullResistance,
  type RollingLoad,
  type Tackle,
} from './pulling/pull-resistance.js';
export type { LogCondition, LogLoad } from './pulling/resistance/log.js';
export type { MiredLoad, RecoveredLoad } from './pulling/resistance/recovery.js';
export type { RollingResistance, RollingSurface } from './pulling/resistance/rolling.js';
export type { SoftGroundLoad } from './pulling/resistance/soft-ground.js';
export { type LooseLoad, type ShockTension, type Spring, shockTension, type TakeUp } from './pulling/shock-tension.js';
export { type TakeUpSpeed, takeUpSpeed } from './pulling/take-up-speed.js';
export {
  type ConeIndex,
  type SoilClass,
  type SoilTraction,
  type Tire,
  type TireTraction,
  type TractionRatios,
  tireTraction,
} from './pulling/tire-traction.js';
export type { Traction, TractionSurface } from './pulling/traction.js';
export type { Drive, Tractor } from './pulling/tractor.js';
export type { ChainEnd } from './pulling/wrap-length.js';
export { add, compare, scale, subtract, weightOf } from './quantities/arithmetic.js';
export {
  cm,
  daN,
  deg,
  ft,
  inches,
  kg,
  kgf,
  kN,
  lb,
  lbf,
  longTon,
  m,
  mm,
  N,
  shortTon,
  t,
  yd,
} from './quantities/constructors.js';
export { convert } from './quantities/convert.js';
export { formatQuantity } from './quantities/format.js';
export { parseQuantity } from './quantities/parse.js';
export { Quantity, type QuantityInput, type QuantityLike, type QuantityText, quantity } from './quantities/quantity.js';
export { STANDARD_GRAVITY } from './quantities/rated.js';
export type {
  Dimension,
  ForceUnit,
  Kind,
  LengthUnit,
  MassUnit,
  Unit,
  UnitOfKind,
  UnitSystem,
} from './quantities/units.js';
export { type CheckSecurementInput, checkSecurement, type SecurementCheck } from './securement/check-securement.js';
export { compareRules, type RuleSetVerdict, type RulesComparison } from './securement/compare-rules.js';
export type { TieDownPoints } from './securement/layout.js';
export type {
  Accessory,
  Article,
  ArticleKind,
  ContactPoint,
  Deck,
  FrictionMat,
  Gives,
  Plan,
  Point,
  ReadArticle,
  ShipForces,
  Surfaces,
  TieDown,
  TieDownAsWhole,
  TieDownOfParts,
  TieDownPath,
  Vehicle,
  VehicleUnit,
} from './securement/plan.js';
export type {
  Direction,
  DirectionAnswer,
  ElasticAnswer,
  LimitAnswer,
  Mode,
  Restraint,
  Tension,
} from './securement/restraint/answer.js';
export type {
  Accelerations,
  DeckSlope,
  Tolerances,
} from './securement/restraint/options.js';
export {
  type FixingPoint,
  type Proposal,
  type ProposedTieDown,
  type ProposedTieDowns,
  proposeTieDowns,
} from './securement/restraint/propose-tie-downs.js';
export { type SolveRestraintInput, solveRestraint } from './securement/restraint/solve-restraint.js';
export type {
  Applicability,
  ArticleOutcome,
  ArticleRequirement,
  CountedTieDown,
  CountOption,
  CountRules,
  DirectionalRequirement,
  InspectionDue,
  PlanOutcome,
  RuleContext,
  RuleSet,
} from './securement/rule-set.js';
export { auLrg_2018 } from './securement/rules/au-lrg-2018/index.js';
export { caNsc10_2013 } from './securement/rules/ca-nsc10-2013/index.js';
export { euEn12195_1_2010 } from './securement/rules/eu-en12195-1-2010/index.js';
export { imoCssAnnex13_2014 } from './securement/rules/imo-css-annex13-2014/index.js';
export { imoCtu_2014 } from './securement/rules/imo-ctu-2014/index.js';
export { nzTlc_2017 } from './securement/rules/nz-tlc-2017/index.js';
export { ukDvsa_2024 } from './securement/rules/uk-dvsa-2024/index.js';
export {
  us49cfr393_102_2024,
  us49cfr393_110_2024,
  us49cfr393_2024,
} from './securement/rules/us-49cfr393-2024/index.js';
export { type TensionerLength, type TieDownLength, tieDownLength } from './securement/tie-down-length.js';
export { type TieDownsRequired, tieDownsRequired } from './securement/tie-downs-required.js';
export {
  buildKit,
  checkItems,
  type Kit,
  type KitChoice,
  type KitInput,
  type KitLine,
  type KitTieDown,
  type KitTotals,
} from './selection/build-kit.js';
export {
  type ChainChoice,
  type ChainChoiceInput,
  type ChainPrice,
  type ChainTask,
  type ChosenFitting,
  chooseChain,
  type HaulTask,
  type PullTask,
  type RankedChain,
  type RejectedChain,
  type WrapTask,
} from './selection/choose-chain.js';
export { type ItemsFromCsv, itemsFromCsv } from './selection/items-from-csv.js';
export type { WantedTieDown } from './selection/kit-demand.js';
export type { FittingKind, ItemFault, ItemSource, KitItem, KitKind } from './selection/kit-item.js';
export type { KitObstacle } from './selection/kit-obstacles.js';
export type { KitObjective } from './selection/kit-solver.js';
export { auLrg_2018_chain } from './tables/au-lrg-2018-chain.js';
export { caNsc10_chain_2013 } from './tables/ca-nsc10-2013.js';
export { euEn12195_3_2001 } from './tables/eu-en12195-3-2001.js';
export type { DeviceOf, DeviceUse, FractionTable } from './tables/fraction-table.js';
export { imoCssMslFractions_2014 } from './tables/imo-css-msl-fractions-2014.js';
export { imoCtuMslFractions_2014 } from './tables/imo-ctu-msl-fractions-2014.js';
export type {
  CapacitySystem,
  CapacityTable,
  ChainRows,
  FindRow,
  FoundRow,
  GeneratedTable,
  GradeOf,
  LashingCell,
  RatedCell,
  RatedRows,
  RatingTable,
  RowFields,
  RowKey,
  RowKind,
  SizeOf,
} from './tables/rating-table.js';
export { CAPACITY_SYSTEMS } from './tables/rating-table.js';
export { us49cfr393_108_2024, us49cfr393_108_chain_2024 } from './tables/us-49cfr393-108-2024.js';
export { usWeldedChain_2003 } from './tables/us-welded-chain-2003.js';
export type {
  Check,
  ConditionCheck,
  NotApplicableCheck,
  RatioCheck,
  UndeterminedCheck,
  Verdict,
} from './working/check.js';
export type { Note, NoteParam } from './working/note.js';
export type { ResultBase } from './working/result.js';
export type { Provenance, SourceRef } from './working/source.js';
export type { Step, StepValue, Working } from './working/step.js';
