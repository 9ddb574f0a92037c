/**
 * Writes the schemas as JSON Schema 2020-12 into dist/schemas, for validators and form builders in any language.
 *
 *     npx tsx .config/tasks/json-schema.ts
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as z from 'zod';
import {
  articleSchema,
  assemblyRatingRequestSchema,
  availablePullRequestSchema,
  buildKitRequestSchema,
  chainHistorySchema,
  chainMeasurementsSchema,
  chainRatingRequestSchema,
  checkSecurementRequestSchema,
  chooseChainRequestSchema,
  compareRulesRequestSchema,
  forecastRetirementRequestSchema,
  hitchStabilityRequestSchema,
  housePolicySchema,
  inspectChainRequestSchema,
  kitItemSchema,
  partSchema,
  planPullRequestSchema,
  planSchema,
  proposeTieDownsRequestSchema,
  pullChainLengthRequestSchema,
  pullResistanceRequestSchema,
  shockTensionRequestSchema,
  solveRestraintRequestSchema,
  tieDownLengthRequestSchema,
  tieDownSchema,
  tieDownsRequiredRequestSchema,
  vehicleSchema,
} from '../../src/schemas/index.js';
import { anyGrade, capacities, grade, tradeSize } from '../../src/schemas/part.js';
import { describeKind, force, length, mass, point, ratedLoad } from '../../src/schemas/quantity.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What a pattern or a shape cannot say. */
const BEYOND = {
  numbers: 'Numbers in text with more than 15 digits are refused unless they are their own shortest form.',
  readings: 'A place has one reading or two.',
  dates: 'A date is a day of the calendar.',
  parts: 'Every id of a list of parts is used once.',
  prices: 'A price has at most 4 decimals, and only chain includes fittings.',
  items:
    'Every id of a list of items is used once, all prices are in one currency, every row has one where money is asked about, and a spare stands for something that the tie-down has.',
  plan: 'Every id of an article, accessory or tie-down is used once, and a tie-down holds an article or accessory of the plan.',
  pull: 'A tractor has frontAxleMass or centerOfGravityAhead, a hitch the distance from its own axle, an engine with power a speed and one share of it.',
};

const FILES: Readonly<Record<string, readonly [schema: z.ZodType, title: string, beyond: readonly string[]]>> = {
  plan: [planSchema, 'The load on its vehicle', [BEYOND.numbers, BEYOND.parts, BEYOND.plan]],
  part: [partSchema, 'One part of an assembly', [BEYOND.numbers, BEYOND.parts]],
  'chain-rating': [chainRatingRequestSchema, 'A request for chainRating', [BEYOND.numbers]],
  'assembly-rating': [assemblyRatingRequestSchema, 'A request for assemblyRating', [BEYOND.numbers, BEYOND.parts]],
  'tie-downs-required': [tieDownsRequiredRequestSchema, 'A request for tieDownsRequired', [BEYOND.numbers]],
  'check-securement': [
    checkSecurementRequestSchema,
    'A request for checkSecurement',
    [BEYOND.numbers, BEYOND.parts, BEYOND.plan],
  ],
  'compare-rules': [
    compareRulesRequestSchema,
    'A request for compareRules',
    [BEYOND.numbers, BEYOND.parts, BEYOND.plan],
  ],
  'solve-restraint': [
    solveRestraintRequestSchema,
    'A request for solveRestraint',
    [BEYOND.numbers, BEYOND.parts, BEYOND.plan],
  ],
  'propose-tie-downs': [proposeTieDownsRequestSchema, 'A request for proposeTieDowns', [BEYOND.numbers]],
  'kit-item': [kitItemSchema, 'One row of a catalog, or of what somebody owns', [BEYOND.numbers, BEYOND.prices]],
  'build-kit': [
    buildKitRequestSchema,
    'A request for buildKit',
    [BEYOND.numbers, BEYOND.plan, BEYOND.prices, BEYOND.items],
  ],
  'choose-chain': [chooseChainRequestSchema, 'A request for chooseChain', [BEYOND.numbers, BEYOND.prices]],
  'tie-down-length': [tieDownLengthRequestSchema, 'A request for tieDownLength', [BEYOND.numbers]],
  'chain-measurements': [
    chainMeasurementsSchema,
    'What was measured and seen of a chain',
    [BEYOND.numbers, BEYOND.readings],
  ],
  'chain-history': [
    chainHistorySchema,
    'The inspections and tensionings of a chain',
    [BEYOND.numbers, BEYOND.readings, BEYOND.dates],
  ],
  'inspect-chain': [inspectChainRequestSchema, 'A request for inspectChain', [BEYOND.numbers, BEYOND.readings]],
  'forecast-retirement': [
    forecastRetirementRequestSchema,
    'A request for forecastRetirement',
    [BEYOND.numbers, BEYOND.readings, BEYOND.dates],
  ],
  'house-policy': [housePolicySchema, "An owner's policy", []],
  'plan-pull': [planPullRequestSchema, 'A request for planPull', [BEYOND.numbers, BEYOND.parts, BEYOND.pull]],
  'available-pull': [availablePullRequestSchema, 'A request for availablePull', [BEYOND.numbers, BEYOND.pull]],
  'pull-resistance': [pullResistanceRequestSchema, 'A request for pullResistance', [BEYOND.numbers]],
  'hitch-stability': [hitchStabilityRequestSchema, 'A request for hitchStability', [BEYOND.numbers, BEYOND.pull]],
  'shock-tension': [shockTensionRequestSchema, 'A request for shockTension', [BEYOND.numbers]],
  'pull-chain-length': [pullChainLengthRequestSchema, 'A request for pullChainLength', [BEYOND.numbers]],
};

/** Schemas that get a name of their own in `$defs`. A registry made here keeps zod's global one as it was. */
function namedSchemas() {
  const names = z.registry<{ id: string; description?: string }>();
  names.add(length, { id: 'length', description: describeKind('length') });
  names.add(mass, { id: 'mass', description: describeKind('mass') });
  names.add(force, { id: 'force', description: describeKind('force') });
  names.add(ratedLoad, { id: 'rated-load', description: describeKind('ratedLoad') });
  names.add(tradeSize, {
    id: 'trade-size',
    description: "Trade size in inches as written, such as '5/16', or a metric size such as '8 mm'",
  });
  names.add(grade, { id: 'grade', description: 'Grade of welded chain' });
  names.add(anyGrade, { id: 'any-grade', description: 'Grade of welded chain, or a European class as text' });
  names.add(point, {
    id: 'point',
    description: 'x forward, y left, z up, from the middle of the front edge of the deck',
  });
  names.add(capacities, { id: 'capacities', description: 'Capacities as marked, each in the system it was marked in' });
  names.add(chainMeasurementsSchema, { id: 'chain-measurements' });
  names.add(chainHistorySchema, { id: 'chain-history' });
  names.add(partSchema, { id: 'part' });
  names.add(articleSchema, { id: 'article' });
  names.add(tieDownSchema, { id: 'tie-down' });
  names.add(vehicleSchema, { id: 'vehicle' });
  return names;
}

/** The JSON Schemas by the name of their file. */
export function jsonSchemas(): Record<string, z.core.JSONSchema.BaseSchema> {
  const metadata = namedSchemas();
  const entries = Object.entries(FILES).map(([file, [schema, title, beyond]]) => {
    const { $schema, ...rest } = z.toJSONSchema(schema, { io: 'input', target: 'draft-2020-12', metadata });
    return [
      file,
      {
        $schema,
        $id: `chain-rigging/${file}`,
        title,
        $comment: `Checked by the library beyond this schema: ${beyond.join(' ')}`,
        ...rest,
      },
    ];
  });
  return Object.fromEntries(entries);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = join(root, 'dist/schemas');
  mkdirSync(folder, { recursive: true });
  for (const [file, schema] of Object.entries(jsonSchemas())) {
    writeFileSync(join(folder, `${file}.schema.json`), `${JSON.stringify(schema, null, 2)}\n`);
  }
}
