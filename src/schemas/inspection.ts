import * as z from 'zod';
import { readDate } from '../service/calendar.js';
import { HEAVY_SIZES, type InspectedSize } from '../service/inspection.js';
import { CHAIN_DEFECTS, HOOK_DEFECTS } from '../tables/criteria-set.js';
import { INSPECTION_KINDS, SERVICE_CLASSES } from '../tables/interval-set.js';
import {
  build,
  fault,
  faultOf,
  fieldOf,
  fields,
  flag,
  list,
  optional,
  text,
  wholeNumber,
  withFaults,
  word,
} from './fields.js';
import { anyGrade, tradeSize } from './part.js';
import { length, quantitySchema } from './quantity.js';

/** Ids of sets of removal criteria and of inspection intervals; `chain-rigging/registry` turns one into its constant. */
export const CRITERIA_SET_IDS = [
  'us-29cfr1910-184-2011',
  'us-29cfr1926-251-2019',
  'us-29cfr1919-25-2024',
  'us-49cfr393-104-2024',
  'us-asme-b30-9-2010',
  'us-asme-b30-10-2005',
  'us-wac-296-155-55800-2013',
  'us-doe-std-1090-1996',
  'us-osha-course-600',
  'eu-en818-6-2000',
  'eu-en12195-3-2001-criteria',
  'de-dguv-209-021-2021',
  'de-dguv-109-004',
  'de-bg-bau-3072',
  'au-qld-doggers-2010',
] as const;
export const INTERVAL_SET_IDS = [
  'us-29cfr1910-184-2011',
  'us-wac-296-155-55800-2013',
  'us-asme-b30-9-2010',
  'us-asme-b30-10-2005',
  'de-bg-bau-3074',
  'uk-loler-1998',
  'us-navfac-p-307',
] as const;

const criteria = /* @__PURE__ */ build(() => word(CRITERIA_SET_IDS, 'UNKNOWN_CRITERIA_SET'));

/** A day as YYYY-MM-DD, one that the calendar has. */
const date = /* @__PURE__ */ build(() =>
  withFaults(
    z.string().regex(/^[0-9]{4}-[0-9]{2}-[0-9]{2}$/),
    () => [],
    (value) => faultOf(() => readDate(value, '')),
  ),
);

const depth = /* @__PURE__ */ build(() => quantitySchema('length', { fromZero: true }));

const count = (least: number) =>
  wholeNumber(least, Number.MAX_SAFE_INTEGER, `a whole number, ${least} or more`, 'Count them.');

/** A trade size, or one of the heavy sizes of wear tables. */
const inspectedSize = /* @__PURE__ */ build(() => {
  const written = z.union([tradeSize, z.enum(HEAVY_SIZES)]);
  return withFaults(written, (value) => [
    fault('UNKNOWN_SIZE', "a trade size such as '5/16' or '8 mm'", value, 'Write it as it stands here.'),
  ]) as unknown as z.ZodType<InspectedSize, InspectedSize>;
});

/** Refuses a flag that says there is no such thing beside the thing itself. */
function notBoth(none: string, other: string) {
  return (value: unknown) =>
    fieldOf(value, none) === true && fieldOf(value, other) !== undefined
      ? [fault('CONFLICTING_FIELDS', `${none} or ${other}`, 'both', 'Give the one that is true.', [none])]
      : [];
}

const chain = /* @__PURE__ */ build(() =>
  withFaults(
    fields('a chain', {
      size: optional(inspectedSize),
      grade: optional(anyGrade),
      wireDiameter: optional(length),
      pitch: optional(length),
      outsideLength: optional(length),
      hook: optional(fields('a hook when new', { throat: optional(length), section: optional(length) })),
      withoutHook: optional(flag()),
    }),
    () => undefined,
    notBoth('withoutHook', 'hook'),
  ),
);

/**
 * What was measured and seen of a chain, one inspection.
 *
 * @example
 * const check = checkJson(chainMeasurementsSchema, { section: { links: 11, length: '341' }, found: ['cracks'] });
 * if (!check.ok) console.log(check.issues.map(({ path, code }) => `${path}: ${code}`));
 * // => [ 'section.length: TEXT_NOT_A_QUANTITY', 'found[0]: UNKNOWN_VALUE' ]
 */
export const chainMeasurementsSchema = /* @__PURE__ */ build(() =>
  withFaults(
    fields('measurements', {
      diameters: optional(
        list(
          fields('a place', {
            at: optional(text('a place of the chain')),
            readings: withFaults(list(length, 1, 'one reading or two'), () => undefined, tooMany),
          }),
          0,
          'a list of places',
        ),
      ),
      section: optional(fields('a section', { links: count(1), length, whenNew: optional(length) })),
      link: optional(fields('the longest link', { inside: optional(length), outside: optional(length) })),
      uncertainty: optional(depth),
      notchDepth: optional(depth),
      bend: optional(depth),
      highestTemperature: optional(quantitySchema('temperature')),
      neverHeated: optional(flag()),
      found: optional(list(word(CHAIN_DEFECTS), 0, 'a list of what was found, or an empty one')),
      hook: optional(
        fields('a hook', {
          throat: optional(length),
          twist: optional(quantitySchema('angle')),
          section: optional(length),
          found: optional(list(word(HOOK_DEFECTS), 0, 'a list of what was found, or an empty one')),
        }),
      ),
      tensionings: optional(count(0)),
    }),
    () => undefined,
    notBoth('neverHeated', 'highestTemperature'),
  ),
);

function tooMany(value: unknown) {
  return Array.isArray(value) && value.length > 2
    ? [fault('TOO_LARGE', 'one reading or two at right angles', value, 'List other places apart.')]
    : [];
}

/**
 * The body of a request for `inspectChain`, the set of criteria as a text id.
 *
 * @example
 * const body = readJson(inspectChainRequestSchema, {
 *   criteria: 'us-29cfr1919-25-2024',
 *   chain: { pitch: '30 mm' },
 *   measurements: { section: { links: 11, length: '341 mm' }, found: [] },
 * });
 * inspectChain({ ...body, criteria: criteriaSetById(body.criteria) }).verdict
 * // => 'fit'
 */
export const inspectChainRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', { criteria, chain, measurements: chainMeasurementsSchema, working: optional(flag()) }),
);

/**
 * The history of one chain: inspections and tensionings with their dates.
 *
 * @example
 * const check = checkJson(chainHistorySchema, { inspections: [{ date: '3/1/2026', measurements: {} }] });
 * if (!check.ok) console.log(check.issues[0].path, check.issues[0].code);
 * // => inspections[0].date NOT_A_DATE
 */
export const chainHistorySchema = /* @__PURE__ */ build(() =>
  fields('a history', {
    inspections: list(
      fields('an inspection', {
        date,
        measurements: chainMeasurementsSchema,
        kind: optional(word(INSPECTION_KINDS)),
        repaired: optional(flag()),
      }),
      1,
      'at least one inspection',
    ),
    tensionings: optional(list(fields('tensionings', { date, count: count(0) }), 0, 'a list of tensionings')),
  }),
);

/**
 * The body of a request for `forecastRetirement`, criteria and intervals as text ids.
 *
 * @example
 * const body = readJson(forecastRetirementRequestSchema, {
 *   criteria: 'us-29cfr1919-25-2024',
 *   chain: { pitch: '30 mm' },
 *   history: {
 *     inspections: [{ date: '2026-01-31', measurements: { section: { links: 11, length: '331 mm' }, found: [] } }],
 *   },
 *   asOf: '2026-03-01',
 *   intervals: 'us-29cfr1910-184-2011',
 * });
 * const { intervals, ...rest } = body;
 * forecastRetirement({
 *   ...rest,
 *   criteria: criteriaSetById(body.criteria),
 *   ...(intervals && { intervals: intervalSetById(intervals) }),
 * }).due.map(({ by }) => by)
 * // => [ undefined, '2027-01-31' ]
 */
export const forecastRetirementRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', {
    criteria,
    chain,
    history: chainHistorySchema,
    asOf: date,
    intervals: optional(word(INTERVAL_SET_IDS, 'UNKNOWN_CRITERIA_SET')),
    service: optional(word(SERVICE_CLASSES)),
    working: optional(flag()),
  }),
);

const policyLimit = /* @__PURE__ */ build(() =>
  fields('a limit', {
    limit: withFaults(z.number().gt(0).lt(1), (value) => [
      typeof value === 'number' && Number.isFinite(value)
        ? fault(
            value > 0 ? 'TOO_LARGE' : 'NOT_POSITIVE',
            'a fraction above 0 and below 1',
            value,
            '3 percent is 0.03, not 3.',
          )
        : fault('NOT_FINITE', 'a share such as 0.03, as a number', value, 'Give a number: 3 percent is 0.03.'),
    ]),
    over: withFaults(z.boolean(), (value) => [
      fault(
        value === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE',
        'true or false',
        value,
        'Say whether the limit itself is allowed.',
      ),
    ]),
  }),
);

/**
 * An owner's policy, for `housePolicy`.
 *
 * @example
 * housePolicy(readJson(housePolicySchema, { elongation: { limit: 0.03, over: true } })).standing
 * // => 'policy'
 */
export const housePolicySchema = /* @__PURE__ */ build(() =>
  fields('a policy', {
    id: optional(text('a name')),
    elongation: optional(policyLimit),
    linkElongation: optional(policyLimit),
    wear: optional(policyLimit),
    throatOpening: optional(policyLimit),
    tensionings: optional(count(1)),
  }),
);
