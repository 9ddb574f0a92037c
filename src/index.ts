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
export { drawLift } from './drawing/draw-lift.js';
export { drawPull } from './drawing/draw-pull.js';
export { drawSecurement } from './drawing/draw-securement.js';
export { drawSnatch, type SnatchPlotOptions } from './drawing/draw-snatch.js';
export type { DrawnLift } from './drawing/lift-scene.js';
export type { DrawingOptions } from './drawing/standalone.js';
export { RiggingError, type RiggingErrorCode, type RiggingIssue } from './errors.js';
export { type Evaluated, evaluateMany } from './evaluate-many.js';
export { explain, type SheetFormat } from './explain/explain.js';
export { inWords } from './explain/in-words.js';
export type { CarriedLoad, HandPosition, LiftDestination, LiftFrequency } from './handling/carry-input.js';
export { type CarryCheck, type CarryInput, type CarryPoint, checkCarry } from './handling/check-carry.js';
export type { Coupling, LiftDuration, MultiplierName } from './handling/lifting-equation.js';
export {
  type BoxFit,
  type PipeFit,
  type Stowage,
  type StowageBox,
  type StowageFit,
  type StowagePipe,
  type StowedChain,
  stowage,
  type Volume,
} from './handling/stowage.js';
export { type TeamLimit, teamLimit } from './handling/team-limit.js';
export { type Fit, fits, type Hook } from './hardware/fits.js';
export type { Angle } from './lifting/angle.js';
export {
  type CheckLiftInput,
  checkLift,
  type LiftCheck,
  type LiftingMachine,
  type LiftSling,
} from './lifting/check-lift.js';
export { caAlbertaOhs_21, type LiftCriteria } from './lifting/lift-criteria.js';
export {
  type ListedSling,
  type SlingBasis,
  type SlingRating,
  type StatedSling,
  slingRating,
} from './lifting/sling-rating.js';
export {
  type LegTension,
  type LiftedLoad,
  type SlingLeg,
  type SlingTensions,
  type SlingTensionsInput,
  slingTensions,
} from './lifting/sling-tensions.js';
export {
  type AvailablePull,
  type AvailablePullInput,
  availablePull,
  type PullLimit,
  type PullLimitName,
} from './pulling/available-pull.js';
export { type BridleAngles, type BridleTension, bridleTension } from './pulling/bridle-tension.js';
export { type ChainSag, chainSag } from './pulling/chain-sag.js';
export { type HitchStability, hitchStability, type Stance } from './pulling/hitch-stability.js';
export { type GreenWood, type LogMass, type LogMassInput, logMass } from './pulling/log-mass.js';
export { type PlannedPull, type PullBridle, type PullChain, type PullPlan, planPull } from './pulling/plan-pull.js';
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
export {
  type LooseLoad,
  type ShockTension,
  type ShockTensionInput,
  type Spring,
  shockTension,
  type TakeUp,
} from './pulling/shock-tension.js';
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
export type { DrawbarPowerCase, Engine } from './pulling/traction/engine.js';
export type { Traction, TractionSurface } from './pulling/traction/traction.js';
export type { ChainAngle, Hitch, HitchKind } from './pulling/tractor/hitch.js';
export type { Drive, Tractor } from './pulling/tractor/tractor.js';
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
export type { Point } from './quantities/point.js';
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
export type { CriterionCheck, LimitCheck, Measured } from './service/criterion-check.js';
export {
  type ChainHistory,
  type CountLimit,
  type CriterionTrend,
  type ForecastRetirementInput,
  forecastRetirement,
  type InspectionRecord,
  type ProjectedCount,
  type ProjectedDate,
  type RetirementForecast,
  type TensioningRecord,
} from './service/forecast-retirement.js';
export { type HousePolicyInput, housePolicy, type PolicyLimit } from './service/house-policy.js';
export { type ChainInspection, type InspectChainInput, inspectChain } from './service/inspect-chain.js';
export type { ChainMeasurements, ChainWhenNew, DiameterReading, InspectedSize } from './service/inspection.js';
export type { InspectionDueOn } from './service/inspections-due.js';
export type { Growth, PastLoad } from './service/past-load.js';
export { auLrg_2018_chain } from './tables/au-lrg-2018-chain.js';
export { caNsc10_chain_2013 } from './tables/ca-nsc10-2013.js';
export type {
  ChainDefect,
  ChainQuantity,
  CriteriaRows,
  CriteriaSet,
  Criterion,
  CriterionUnit,
  HookDefect,
  HookQuantity,
  WearRow,
} from './tables/criteria-set.js';
export { CHAIN_DEFECTS, HOOK_DEFECTS } from './tables/criteria-set.js';
export { deDin5688_1986 } from './tables/de-din5688-1986.js';
export { euEn818_2008 } from './tables/eu-en818-2008.js';
export { euEn12195_3_2001 } from './tables/eu-en12195-3-2001.js';
export type { DeviceOf, DeviceUse, FractionTable } from './tables/fraction-table.js';
export { imoCssMslFractions_2014 } from './tables/imo-css-msl-fractions-2014.js';
export { imoCtuMslFractions_2014 } from './tables/imo-ctu-msl-fractions-2014.js';
export {
  deBgBau3074_intervals,
  ukLoler_1998_intervals,
  us29cfr1910_184_2011_intervals,
  usAsmeB30_9_2010_intervals,
  usAsmeB30_10_2005_intervals,
  usNavfacP307_intervals,
  usWac296_155_55800_2013_intervals,
} from './tables/inspection-intervals.js';
export type { CalendarUnit, InspectionKind, Interval, IntervalSet, ServiceClass } from './tables/interval-set.js';
export { INSPECTION_KINDS, SERVICE_CLASSES } from './tables/interval-set.js';
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
export {
  auQldDoggers_2010,
  deBgBau3072,
  deDguv109_004,
  deDguv209_021_2021,
  euEn818_6_2000,
  euEn12195_3_2001_criteria,
  us29cfr1910_184_2011,
  us29cfr1919_25_2024,
  us29cfr1926_251_2019,
  us49cfr393_104_2024,
  usAsmeB30_9_2010,
  usAsmeB30_10_2005,
  usDoeStd1090_1996,
  usOshaCourse600,
  usWac296_155_55800_2013,
} from './tables/removal-criteria.js';
export type {
  SlingCell,
  SlingGradeOf,
  SlingHitch,
  SlingRatings,
  SlingRuleName,
  SlingSizeOf,
} from './tables/sling-ratings.js';
export { us49cfr393_108_2024, us49cfr393_108_chain_2024 } from './tables/us-49cfr393-108-2024.js';
export { usAlloySling_2011 } from './tables/us-alloy-sling-2011.js';
export { usWeldedChain_2003 } from './tables/us-welded-chain-2003.js';
export type { NoteCode, Words } from './words/words.js';
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
