/**
 * Checked by `tsc`, never run: the types of the schemas and the types of the library say the same. Every line
 * marked `@ts-expect-error` must be a compile error, and every other line must compile.
 */
import type * as z from 'zod';
import { type AssemblyInput, assemblyRating } from '../../src/assembly/assembly-rating.js';
import type { Part, PartKind } from '../../src/assembly/part.js';
import { chainRating } from '../../src/chain/chain-rating.js';
import { type AvailablePullInput, availablePull } from '../../src/pulling/available-pull.js';
import { hitchStability } from '../../src/pulling/hitch-stability.js';
import { type PullPlan, planPull } from '../../src/pulling/plan-pull.js';
import { pullChainLength } from '../../src/pulling/pull-chain-length.js';
import { type PullResistanceInput, pullResistance } from '../../src/pulling/pull-resistance.js';
import { type ShockTensionInput, shockTension } from '../../src/pulling/shock-tension.js';
import type { Engine } from '../../src/pulling/traction/engine.js';
import type { Hitch } from '../../src/pulling/tractor/hitch.js';
import type { Tractor } from '../../src/pulling/tractor/tractor.js';
import type { QuantityInput } from '../../src/quantities/quantity.js';
import type { Kind } from '../../src/quantities/units.js';
import {
  capacityTableById,
  criteriaSetById,
  intervalSetById,
  ratingTableById,
  ruleSetById,
} from '../../src/registry.js';
import {
  type articleSchema,
  assemblyRatingRequestSchema,
  availablePullRequestSchema,
  type chainHistorySchema,
  type chainMeasurementsSchema,
  chainRatingRequestSchema,
  checkJson,
  checkSecurementRequestSchema,
  compareRulesRequestSchema,
  forecastRetirementRequestSchema,
  hitchStabilityRequestSchema,
  housePolicySchema,
  inspectChainRequestSchema,
  type partSchema,
  planPullRequestSchema,
  type planSchema,
  proposeTieDownsRequestSchema,
  pullChainLengthRequestSchema,
  pullResistanceRequestSchema,
  type quantitySchema,
  readJson,
  shockTensionRequestSchema,
  solveRestraintRequestSchema,
  tieDownLengthRequestSchema,
  type tieDownSchema,
  tieDownsRequiredRequestSchema,
  type vehicleSchema,
} from '../../src/schemas/index.js';
import { type CheckSecurementInput, checkSecurement } from '../../src/securement/check-securement.js';
import { compareRules } from '../../src/securement/compare-rules.js';
import type {
  Accessory,
  Article,
  FrictionMat,
  Plan,
  TieDown,
  Vehicle,
  VehicleUnit,
} from '../../src/securement/plan.js';
import { proposeTieDowns } from '../../src/securement/restraint/propose-tie-downs.js';
import { type SolveRestraintInput, solveRestraint } from '../../src/securement/restraint/solve-restraint.js';
import { tieDownLength } from '../../src/securement/tie-down-length.js';
import { tieDownsRequired } from '../../src/securement/tie-downs-required.js';

import {
  type ChainHistory,
  type ForecastRetirementInput,
  forecastRetirement,
  type InspectionRecord,
  type TensioningRecord,
} from '../../src/service/forecast-retirement.js';
import { type HousePolicyInput, housePolicy, type PolicyLimit } from '../../src/service/house-policy.js';
import { type InspectChainInput, inspectChain } from '../../src/service/inspect-chain.js';
import type { ChainMeasurements, ChainWhenNew, DiameterReading } from '../../src/service/inspection.js';

function same<A, B>(_both: [A] extends [B] ? ([B] extends [A] ? true : never) : never): void {}

/**
 * The library's lists are `readonly`, zod's are not, and a `readonly` list is not assignable to a mutable one.
 * So what a schema takes goes to the library as it is, and the other way only with the `readonly` of lists taken
 * off. Texts need no such help: a schema's text has the library's own template type.
 */
type Writable<T> = T extends object ? { -readonly [K in keyof T]: Writable<T[K]> } : T;

declare const plan: z.input<typeof planSchema>;
declare const corePlan: Writable<Plan>;
void (plan satisfies Plan);
void (corePlan satisfies z.input<typeof planSchema>);

declare const article: z.input<typeof articleSchema>;
declare const coreArticle: Writable<Article>;
void (article satisfies Article);
void (coreArticle satisfies z.input<typeof articleSchema>);

declare const vehicle: z.input<typeof vehicleSchema>;
declare const coreVehicle: Writable<Vehicle>;
void (vehicle satisfies Vehicle);
void (coreVehicle satisfies z.input<typeof vehicleSchema>);

declare const tieDown: z.input<typeof tieDownSchema>;
declare const coreTieDown: Writable<TieDown>;
void (tieDown satisfies TieDown);
void (coreTieDown satisfies z.input<typeof tieDownSchema>);

declare const part: z.input<typeof partSchema>;
declare const corePart: Writable<Part>;
void (part satisfies Part);
void (corePart satisfies z.input<typeof partSchema>);

declare const measurements: z.input<typeof chainMeasurementsSchema>;
declare const coreMeasurements: Writable<ChainMeasurements>;
void (measurements satisfies ChainMeasurements);
void (coreMeasurements satisfies z.input<typeof chainMeasurementsSchema>);

declare const history: z.input<typeof chainHistorySchema>;
declare const coreHistory: Writable<ChainHistory>;
void (history satisfies ChainHistory);
void (coreHistory satisfies z.input<typeof chainHistorySchema>);

declare const inspection: z.input<typeof inspectChainRequestSchema>;
declare const coreChain: Writable<ChainWhenNew>;
void (inspection.chain satisfies ChainWhenNew);
void (coreChain satisfies z.input<typeof inspectChainRequestSchema>['chain']);

declare const policy: z.input<typeof housePolicySchema>;
declare const corePolicy: Writable<HousePolicyInput>;
void (policy satisfies HousePolicyInput);
void (corePolicy satisfies z.input<typeof housePolicySchema>);

/* A field that only one of the two knows would pass the assignments above when it may be left out. */
type Keys<T> = T extends unknown ? keyof T : never;
type KeysOfKind<T extends { kind: PartKind }, K> = T extends unknown ? (K extends T['kind'] ? keyof T : never) : never;
type In<T, K extends PropertyKey> = T extends { [key in K]?: infer Value } ? NonNullable<Value> : never;
type Item<List> = List extends readonly (infer Each)[] ? Each : never;

same<Keys<z.input<typeof planSchema>>, Keys<Plan>>(true);
same<Keys<z.input<typeof articleSchema>>, Keys<Article>>(true);
same<Keys<Item<In<z.input<typeof articleSchema>, 'accessories'>>>, Keys<Accessory>>(true);
same<Keys<In<z.input<typeof articleSchema>, 'frictionMat'>>, Keys<FrictionMat>>(true);
same<Keys<z.input<typeof vehicleSchema>>, Keys<Vehicle>>(true);
same<Keys<Item<z.input<typeof vehicleSchema>['units']>>, Keys<VehicleUnit>>(true);
same<Keys<z.input<typeof tieDownSchema>>, Keys<TieDown>>(true);
same<{ [K in PartKind]: KeysOfKind<z.input<typeof partSchema>, K> }, { [K in PartKind]: KeysOfKind<Part, K> }>(true);
same<Keys<In<z.input<typeof partSchema>, 'capacities'>>, Keys<In<Part, 'capacities'>>>(true);
same<Keys<z.input<typeof checkSecurementRequestSchema>>, keyof CheckSecurementInput>(true);
same<Keys<z.input<typeof assemblyRatingRequestSchema>>, keyof AssemblyInput>(true);
same<Keys<z.input<typeof solveRestraintRequestSchema>>, keyof SolveRestraintInput>(true);
same<Keys<z.input<typeof compareRulesRequestSchema>>, keyof Parameters<typeof compareRules>[0]>(true);
same<Keys<z.input<typeof proposeTieDownsRequestSchema>>, keyof Parameters<typeof proposeTieDowns>[0]>(true);
same<Keys<z.input<typeof tieDownLengthRequestSchema>>, keyof Parameters<typeof tieDownLength>[0]>(true);
same<Keys<z.input<typeof tieDownsRequiredRequestSchema>>, keyof Parameters<typeof tieDownsRequired>[0]>(true);
type MeasurementBody = z.input<typeof chainMeasurementsSchema>;
same<Keys<MeasurementBody>, Keys<ChainMeasurements>>(true);
same<Keys<Item<In<MeasurementBody, 'diameters'>>>, Keys<DiameterReading>>(true);
for (const field of ['section', 'link', 'hook'] as const) {
  same<Keys<In<MeasurementBody, typeof field>>, Keys<In<ChainMeasurements, typeof field>>>(true);
}
same<Keys<z.input<typeof inspectChainRequestSchema>>, keyof InspectChainInput>(true);
same<Keys<z.input<typeof inspectChainRequestSchema>['chain']>, keyof ChainWhenNew>(true);
same<Keys<z.input<typeof chainHistorySchema>>, keyof ChainHistory>(true);
same<Keys<Item<z.input<typeof chainHistorySchema>['inspections']>>, keyof InspectionRecord>(true);
same<Keys<Item<In<z.input<typeof chainHistorySchema>, 'tensionings'>>>, keyof TensioningRecord>(true);
same<Keys<z.input<typeof forecastRetirementRequestSchema>>, keyof ForecastRetirementInput>(true);
same<Keys<z.input<typeof housePolicySchema>>, keyof HousePolicyInput>(true);
same<Keys<In<z.input<typeof housePolicySchema>, 'wear'>>, keyof PolicyLimit>(true);
same<Keys<z.input<typeof planPullRequestSchema>>, keyof PullPlan>(true);
same<Keys<z.input<typeof availablePullRequestSchema>>, keyof AvailablePullInput>(true);
same<Keys<z.input<typeof hitchStabilityRequestSchema>>, keyof Parameters<typeof hitchStability>[0]>(true);
same<Keys<z.input<typeof shockTensionRequestSchema>>, keyof ShockTensionInput>(true);
same<Keys<z.input<typeof pullChainLengthRequestSchema>>, keyof Parameters<typeof pullChainLength>[0]>(true);
type LoadKind = PullResistanceInput['kind'];
type FieldsOfLoad<Union, K extends LoadKind> = Union extends { kind: infer Kinds }
  ? K extends Kinds
    ? keyof Union
    : never
  : never;
type FieldsByLoad<Union> = { [K in LoadKind]: FieldsOfLoad<Union, K> };
same<FieldsByLoad<z.input<typeof pullResistanceRequestSchema>>, FieldsByLoad<PullResistanceInput>>(true);
same<FieldsByLoad<z.input<typeof planPullRequestSchema>['load']>, FieldsByLoad<PullPlan['load']>>(true);
same<Keys<z.input<typeof planPullRequestSchema>['tractor']>, keyof Tractor>(true);
same<Keys<z.input<typeof planPullRequestSchema>['hitch']>, keyof Hitch>(true);
same<Keys<In<z.input<typeof planPullRequestSchema>, 'engine'>>, keyof Engine>(true);
// @ts-expect-error the check above does see a field that one of the two lacks
same<'a' | 'b', 'a'>(true);

/* What a schema takes is what it gives. */
same<z.input<typeof planSchema>, z.output<typeof planSchema>>(true);
same<z.input<typeof partSchema>, z.output<typeof partSchema>>(true);
type QuantityOf<K extends Kind> = z.input<ReturnType<typeof quantitySchema<K>>>;
same<QuantityOf<'mass'>, QuantityInput<'mass'>>(true);
same<QuantityOf<'length'>, QuantityInput<'length'>>(true);

/* From a body to a result. */
declare const body: unknown;
void (() => {
  const chain = readJson(chainRatingRequestSchema, body);
  chainRating({ ...chain, ratings: ratingTableById(chain.ratings) });
  const assembly = readJson(assemblyRatingRequestSchema, body);
  assemblyRating({ ...assembly, ratings: ratingTableById(assembly.ratings) });
  const one = readJson(tieDownsRequiredRequestSchema, body);
  tieDownsRequired({ ...one, rules: ruleSetById(one.rules) });
  const check = checkJson(checkSecurementRequestSchema, body);
  if (check.ok) checkSecurement({ ...check.value, rules: ruleSetById(check.value.rules) });
  else check.issues[0].code satisfies string;
  const { ratings, ...solved } = readJson(solveRestraintRequestSchema, body);
  solveRestraint({ ...solved, ...(ratings && { ratings: capacityTableById(ratings) }) });
  const compared = readJson(compareRulesRequestSchema, body);
  compareRules({ ...compared, rules: compared.rules.map(ruleSetById) });
  const pull = readJson(planPullRequestSchema, body);
  planPull({ ...pull, ratings: ratingTableById(pull.ratings) });
  availablePull(readJson(availablePullRequestSchema, body));
  pullResistance(readJson(pullResistanceRequestSchema, body));
  hitchStability(readJson(hitchStabilityRequestSchema, body));
  shockTension(readJson(shockTensionRequestSchema, body));
  pullChainLength(readJson(pullChainLengthRequestSchema, body));
  tieDownLength(readJson(tieDownLengthRequestSchema, body));
  proposeTieDowns(readJson(proposeTieDownsRequestSchema, body));
  const used = readJson(inspectChainRequestSchema, body);
  inspectChain({ ...used, criteria: criteriaSetById(used.criteria) });
  const { intervals, ...past } = readJson(forecastRetirementRequestSchema, body);
  forecastRetirement({
    ...past,
    criteria: criteriaSetById(past.criteria),
    ...(intervals && { intervals: intervalSetById(intervals) }),
  });
  housePolicy(readJson(housePolicySchema, body));
  // @ts-expect-error there is a value only when it is ok
  check.value;
});

/* Texts in source code. */
const tractor = { id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft' } as const;
void (tractor satisfies z.input<typeof articleSchema>);
// @ts-expect-error a length is not a mass
void ({ ...tractor, mass: '10 ft' } satisfies z.input<typeof articleSchema>);
// @ts-expect-error a thousands separator
void ({ ...tractor, mass: '3,940 lb' } satisfies z.input<typeof articleSchema>);
// @ts-expect-error a word that is misspelled
void ({ id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft', blockedFoward: true } satisfies z.input<
  typeof articleSchema
>);
