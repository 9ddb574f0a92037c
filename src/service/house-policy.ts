import { fail, within } from '../errors.js';
import { checkFlag, checkObject } from '../input-checks.js';
import { decimalProduct } from '../quantities/decimal.js';
import type { ChainQuantity, CriteriaSet, Criterion, HookQuantity } from '../tables/criteria-set.js';
import { checkCount } from './inspection.js';

/** A limit of an owner's own, as a share: 0.03 is 3 percent. */
export interface PolicyLimit {
  readonly limit: number;
  /** `true`: removed when over the limit; `false`: removed at the limit already. */
  readonly over: boolean;
}

export interface HousePolicyInput {
  /** How results name it; left out: `house-policy`. */
  readonly id?: string;
  /** Growth of the inside length of a section, or of the longest link. */
  readonly elongation?: PolicyLimit;
  /** Growth of the longest link alone. */
  readonly linkElongation?: PolicyLimit;
  /** Loss of the nominal diameter at any point. */
  readonly wear?: PolicyLimit;
  /** Growth of the throat of a hook. */
  readonly throatOpening?: PolicyLimit;
  /** Retired after so many tensionings. */
  readonly tensionings?: number;
}

/**
 * The owner's own limits as a set of criteria for {@link inspectChain} and {@link forecastRetirement}. Results call them a
 * policy: no standard found sets a number of tensionings, and an owner may well be stricter than every source.
 *
 * 100 · limit is the limit in percent, exactly as written.
 *
 * @param input `{ elongation?, linkElongation?, wear?, throatOpening?, tensionings? }`, at least one; shares above 0 and
 * below 1, tensionings a whole number from 1
 * @throws RiggingError `MISSING_FIELD` (no limit, or `over` not stated), `NOT_POSITIVE`, `TOO_LARGE` (a limit of 1 or more),
 * `NOT_FINITE` (no number), `UNKNOWN_VALUE`, `NOT_A_WHOLE_NUMBER`
 * @validity a policy stands beside the rules that bind; it does not replace them
 * @example
 * const policy = housePolicy({ elongation: { limit: 0.03, over: true }, tensionings: 200 });
 * inspectChain({
 *   criteria: policy,
 *   chain: { pitch: '30 mm' },
 *   measurements: { section: { links: 11, length: '332 mm' }, tensionings: 200, found: [] },
 * }).governing
 * // => 'tensionings/chain'
 */
export function housePolicy(input: HousePolicyInput): CriteriaSet {
  checkObject(input, '', '{ elongation, wear, tensionings }');
  const { id = 'house-policy', tensionings } = input;
  if (typeof id !== 'string' || id === '') fail('MISSING_FIELD', 'id', 'a name', id, 'Results name it by its id.');
  if (tensionings !== undefined) checkCount(tensionings, 'tensionings', 1);
  const chain: { [quantity in ChainQuantity]?: Criterion } = {};
  const hook: { [quantity in HookQuantity]?: Criterion } = {};
  const read = (name: 'elongation' | 'linkElongation' | 'wear' | 'throatOpening'): Criterion | undefined => {
    const given = input[name];
    return given === undefined ? undefined : within(name, () => percentage(given));
  };
  const limits = {
    elongation: read('elongation'),
    'link-elongation': read('linkElongation'),
    wear: read('wear'),
  } as const;
  for (const [quantity, criterion] of Object.entries(limits)) {
    if (criterion !== undefined) chain[quantity as ChainQuantity] = criterion;
  }
  if (tensionings !== undefined) chain.tensionings = { comparison: '>=', limit: tensionings, clause: '', ...STATED };
  const throat = read('throatOpening');
  if (throat !== undefined) hook['throat-opening'] = throat;
  const rows = {
    ...(Object.keys(chain).length > 0 ? { chain } : {}),
    ...(throat === undefined ? {} : { hook }),
  };
  if (Object.keys(rows).length === 0) {
    fail(
      'MISSING_FIELD',
      '',
      'at least one limit',
      input,
      'Give one, such as elongation: { limit: 0.03, over: true }.',
    );
  }
  const document = "Owner's policy";
  return { id, title: document, document, short: document, asOf: '', standing: 'policy', removal: { rows } };
}

const STATED = { provenance: 'read' } as const;

function percentage(given: PolicyLimit): Criterion {
  checkObject(given, '', '{ limit, over }');
  const { limit, over } = given;
  if (typeof limit !== 'number' || !Number.isFinite(limit))
    fail('NOT_FINITE', 'limit', 'a share such as 0.03, as a number', limit, 'Give a number: 3 percent is 0.03.');
  if (!(limit > 0 && limit < 1)) {
    const code = limit > 0 ? 'TOO_LARGE' : 'NOT_POSITIVE';
    fail(code, 'limit', 'a fraction above 0 and below 1', limit, '3 percent is 0.03, not 3.');
  }
  if (over === undefined)
    fail('MISSING_FIELD', 'over', 'true or false', over, 'Say whether the limit itself is allowed.');
  checkFlag(over, 'over');
  const percent = decimalProduct(limit, 100);
  return { comparison: over ? '>' : '>=', limit: percent, unit: '%', basis: 'when new', clause: '', ...STATED };
}
