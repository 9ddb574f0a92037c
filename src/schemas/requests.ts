import * as z from 'zod';
import { TIE_DOWN_PATHS } from '../securement/plan.js';
import { CAPACITY_SYSTEMS } from '../tables/rating-table.js';
import { build, fault, fields, flag, list, name, optional, text, wholeNumber, withFaults, word } from './fields.js';
import { grade, partList, tradeSize } from './part.js';
import { articleFields, planFaults, planFields } from './plan.js';
import { length, point, quantitySchema, ratedLoad } from './quantity.js';

/** Ids of rule sets and rating tables; `chain-rigging/registry` turns one into its constant. */
export const RULE_SET_IDS = [
  'us-49cfr393-2024',
  'us-49cfr393-102-2024',
  'ca-nsc10-2013',
  'eu-en12195-1-2010',
  'imo-ctu-2014',
  'imo-css-annex13-2014',
  'au-lrg-2018',
  'nz-tlc-2017',
  'uk-dvsa-2024',
] as const;
export const RATING_TABLE_IDS = [
  'us-49cfr393-108-2024',
  'us-49cfr393-108-chain-2024',
  'us-welded-chain-2003',
  'ca-nsc10-chain-2013',
] as const;

export const CAPACITY_TABLE_IDS = [
  'us-49cfr393-108-2024',
  'us-49cfr393-108-chain-2024',
  'us-welded-chain-2003',
  'ca-nsc10-chain-2013',
  'eu-en12195-3-2001',
  'au-lrg-2018-chain',
] as const;

export const rules = /* @__PURE__ */ build(() => word(RULE_SET_IDS, 'UNKNOWN_RULE_SET'));
export const ratings = /* @__PURE__ */ build(() => word(RATING_TABLE_IDS, 'UNKNOWN_RATING_TABLE'));
/** What every request may ask of its answer. */
export const options = /* @__PURE__ */ build(() => ({
  units: optional(word(['us', 'si'])),
  working: optional(flag()),
}));

/**
 * The body of a request for `chainRating`, the rating table as a text id.
 *
 * @example
 * const body = readJson(chainRatingRequestSchema, { ratings: 'us-49cfr393-108-2024', size: '5/16', grade: 70 });
 * chainRating({ ...body, ratings: ratingTableById(body.ratings) }).workingLoadLimit
 * // => 4700 lb
 */
export const chainRatingRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', { ratings, size: tradeSize, grade: optional(grade), markedWll: optional(ratedLoad), ...options }),
);

/**
 * The body of a request for `assemblyRating`, the rating table as a text id.
 *
 * @example
 * const body = readJson(assemblyRatingRequestSchema, {
 *   ratings: 'us-49cfr393-108-2024',
 *   parts: [
 *     { id: 'chain', kind: 'chain', size: '3/8', grade: 70 },
 *     { id: 'binder', kind: 'binder', markedWll: '5400 lb' },
 *   ],
 * });
 * assemblyRating({ ...body, ratings: ratingTableById(body.ratings) }).weakest
 * // => [ 'binder' ]
 */
export const assemblyRatingRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', { ratings, parts: partList(), load: optional(ratedLoad), ...options }),
);

/**
 * The body of a request for `tieDownsRequired`, the rule set as a text id; the id of the article may be left out.
 *
 * @example
 * const body = readJson(tieDownsRequiredRequestSchema, {
 *   rules: 'us-49cfr393-2024',
 *   article: { kind: 'machinery', mass: '12000 lb', length: '14 ft' },
 * });
 * tieDownsRequired({ ...body, rules: ruleSetById(body.rules) }).minimumCount
 * // => 4
 */
export const tieDownsRequiredRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', {
    rules,
    article: fields('an article', { ...articleFields, id: optional(articleFields.id) }),
    ...options,
  }),
);

/**
 * The body of a request for `checkSecurement`: a plan, and the rule set as a text id.
 *
 * @example
 * const check = checkJson(checkSecurementRequestSchema, { rules: 'us-49cfr393-1999', articles: [], tieDowns: [] });
 * if (!check.ok) for (const { path, code } of check.issues) console.log(`${path}: ${code}`);
 * // => rules: UNKNOWN_RULE_SET
 * //    articles: EMPTY_LIST
 * //    tieDowns: EMPTY_LIST
 */
export const checkSecurementRequestSchema = /* @__PURE__ */ build(() =>
  withFaults(fields('a request', { rules, ...planFields, ...options }), () => undefined, planFaults),
);

/**
 * The body of a request for `compareRules`: a plan, and two or more rule sets as text ids.
 *
 * @example
 * const check = checkJson(compareRulesRequestSchema, { rules: ['ca-nsc10-2013'], articles: [], tieDowns: [] });
 * if (!check.ok) console.log(check.issues[0].code, check.issues[0].path);
 * // => EMPTY_LIST rules
 */
export const compareRulesRequestSchema = /* @__PURE__ */ build(() =>
  withFaults(
    fields('a request', { rules: list(rules, 2, 'two rule sets or more'), ...planFields, ...options }),
    () => undefined,
    planFaults,
  ),
);

/** How much of the friction counts. */
const frictionShare = /* @__PURE__ */ build(() =>
  withFaults(z.union([z.enum(['none', 'full']), z.number().gt(0).max(1)]), (value) => [
    fault(
      value === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE',
      "'none', 'full' or a share above 0 and up to 1",
      value,
      'Say how much of it counts.',
    ),
  ]),
);

function accelerations() {
  const acceleration = optional(quantitySchema('acceleration', { positive: true }));
  return fields('accelerations', {
    forward: acceleration,
    rearward: acceleration,
    left: acceleration,
    right: acceleration,
    up: acceleration,
  });
}

/**
 * The body of a request for `solveRestraint`: a plan with its points, and what to hold. A rating table stands as its id.
 *
 * @example
 * const check = checkJson(solveRestraintRequestSchema, {
 *   articles: [{ id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft' }],
 *   tieDowns: [{ id: 'chain', holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '4700 lb' } }],
 *   accelerations: { forwards: '0.8 g' }, capacity: 'workingLoadLimit', friction: 'full',
 * });
 * if (!check.ok) console.log(check.issues[0].code, check.issues[0].path);
 * // => UNKNOWN_FIELD accelerations.forwards
 */
export const solveRestraintRequestSchema = /* @__PURE__ */ build(() => {
  const slope = optional(quantitySchema('angle'));
  return withFaults(
    fields('a request', {
      ...planFields,
      article: optional(text('the id of an article')),
      accelerations: accelerations(),
      capacity: word(CAPACITY_SYSTEMS),
      ratings: optional(word(CAPACITY_TABLE_IDS, 'UNKNOWN_RATING_TABLE')),
      friction: frictionShare,
      deckSlope: optional(fields('the slope of the deck', { noseUp: slope, leftUp: slope })),
      tolerances: optional(
        fields('tolerances', {
          angle: optional(quantitySchema('angle', { positive: true })),
          friction: optional(z.number().gt(0).max(1)),
          centerOfGravity: optional(length),
        }),
      ),
      ...options,
    }),
    () => undefined,
    planFaults,
  );
});

/**
 * The body of a request for `tieDownLength`.
 *
 * @example
 * const body = readJson(tieDownLengthRequestSchema, {
 *   tieDown: { path: 'vehicle-to-cargo', anchor: ['-2 ft', '3 ft', '0 ft'], attachment: ['-6 ft', '0 ft', '0 ft'] },
 *   pitch: '1.25 in',
 * });
 * tieDownLength(body).links
 * // => 48
 */
export const tieDownLengthRequestSchema = /* @__PURE__ */ build(() =>
  fields('a request', {
    tieDown: fields('the points of a tie-down', {
      path: word(TIE_DOWN_PATHS),
      anchor: optional(point),
      attachment: optional(point),
      otherAttachment: optional(point),
      otherAnchor: optional(point),
    }),
    pitch: length,
    hookBack: optional(length),
    tensioner: optional(fields('a tensioner', { takeUp: length, joins: optional(length) })),
    tail: optional(length),
    overCargo: optional(length),
    ...options,
  }),
);

/**
 * The body of a request for `proposeTieDowns`.
 *
 * @example
 * const check = checkJson(proposeTieDownsRequestSchema, { article: {}, anchors: [], attachments: [], count: 4 });
 * if (!check.ok) console.log(check.issues.filter(({ code }) => code === 'EMPTY_LIST').map(({ path }) => path));
 * // => [ 'anchors', 'attachments' ]
 */
export const proposeTieDownsRequestSchema = /* @__PURE__ */ build(() => {
  const points = list(
    fields('a fixing point', { id: name(), at: point, rated: optional(ratedLoad) }),
    1,
    'at least one point',
  );
  return fields('a request', {
    article: fields('an article', articleFields),
    anchors: points,
    attachments: points,
    count: wholeNumber(2, 8, 'a whole number from 2 to 8', 'Say how many tie-downs.'),
    capacity: ratedLoad,
    accelerations: accelerations(),
    friction: frictionShare,
    working: optional(flag()),
  });
});
