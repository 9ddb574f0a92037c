import { build, fields, flag, optional, withFaults, word } from './fields.js';
import { grade, partList, tradeSize } from './part.js';
import { articleFields, planFaults, planFields } from './plan.js';
import { ratedLoad } from './quantity.js';

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

const rules = /* @__PURE__ */ build(() => word(RULE_SET_IDS, 'UNKNOWN_RULE_SET'));
const ratings = /* @__PURE__ */ build(() => word(RATING_TABLE_IDS, 'UNKNOWN_RATING_TABLE'));
const options = /* @__PURE__ */ build(() => ({ units: optional(word(['us', 'si'])), working: optional(flag()) }));

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
