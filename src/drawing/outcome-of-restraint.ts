import { fail, mapAt, within } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { formatNumber, formatQuantity } from '../quantities/format.js';
import { readQuantity } from '../quantities/read.js';
import type { Direction, Restraint } from '../securement/restraint/answer.js';
import type { Note } from '../working/note.js';
import {
  checkKnown,
  isNumber,
  itemsAt,
  listAt,
  missingWords,
  type Outcome,
  type PlanIds,
  percent,
  type TieDownOutcome,
  VERDICTS,
} from './outcome.js';
import { lineOf, MOST_OF_ID } from './svg.js';

const DIRECTIONS: readonly Direction[] = ['forward', 'rearward', 'left', 'right', 'up'];
const MODES = {
  holds: '',
  slides: ', then it slides',
  turns: ', then it turns',
  tips: ', then it tips',
  lifts: ', then it lifts',
};
/** What is said where the limit has no factor. */
const WITHOUT_FACTOR = {
  unbounded: 'never gives way',
  impossible: 'cannot stand even at rest',
  'not-solved': 'not solved',
};

// What is read of a result. It may have gone through JSON, so nothing is taken for granted but what is checked.

interface Solved extends Pick<Restraint, 'verdict' | 'article' | 'governing'> {
  readonly directions: readonly SolvedDirection[];
  readonly missing?: readonly Note[];
  readonly withOneGone?: Restraint['withOneGone'];
}

interface SolvedDirection {
  readonly direction: Direction;
  readonly verdict: Restraint['verdict'];
  readonly acceleration: unknown;
  readonly limit: {
    readonly outcome?: 'limited' | keyof typeof WITHOUT_FACTOR;
    readonly factor: number | null;
    readonly mode: keyof typeof MODES | null;
    readonly tensions: readonly Share[];
    readonly governing: readonly string[];
  };
  readonly elastic: {
    readonly tensions: readonly Share[];
    readonly firstAtCapacity: { readonly id: string; readonly factor: number } | null;
  } | null;
}

interface Share {
  readonly id: string;
  readonly utilization: number | null;
}

/** What `solveRestraint` found: the direction that decides, and how much of its capacity each tie-down carries there. */
export function outcomeOfRestraint(result: Solved, ids: PlanIds): Outcome {
  const { verdict, article, governing } = result;
  checkKnown(article, ids.articles, 'article');
  const name = lineOf(article, MOST_OF_ID);
  const words = {
    pass: `${name}: holds all that is asked`,
    fail: `${name}: does not hold`,
    undetermined: `${name}: not determined, a fact is missing`,
    'not-applicable': `${name}: nothing to hold`,
  };
  const directions = itemsAt(result.directions, 'directions', (each) => readDirection(each, ids));
  const missing = missingWords(listAt(result.missing ?? [], 'missing'));
  const others = otherFactors(directions, governing);
  if (governing === null) return { verdict: words[verdict], because: [...others, ...missing], tieDowns: new Map() };
  checkOneOf(governing, DIRECTIONS, 'governing');
  const decisive = directions.find(({ direction }) => direction === governing);
  if (decisive === undefined) {
    return fail('MISSING_FIELD', 'directions', `the ${governing} direction`, undefined, 'Give the whole result.');
  }
  const { found, at, next, shares, byStiffness } = decisive;
  const isFactor = found.startsWith(FACTOR);
  const means = byStiffness
    ? `Percent is tension over capacity at ${at} ${governing}, shared by stiffness.`
    : `Percent is tension over capacity at the ${governing} limit: one way the forces can balance.`;
  return {
    verdict: words[verdict],
    because: [
      `Decides: ${governing}, ${isFactor ? `${found.slice(FACTOR.length)} times ${at}${next}` : found}.`,
      ...others,
      ...(verdict === 'pass' && result.withOneGone === 'fail' ? ['With one tie-down gone it does not hold.'] : []),
      ...missing,
      ...(shares.size === 0 ? [] : [means]),
    ],
    tieDowns: shares,
    push: { article, direction: governing, label: `${governing}: ${found}` },
  };
}

const FACTOR = 'factor ';

interface ReadDirection {
  readonly direction: Direction;
  /** What was found, in words. */
  readonly found: string;
  /** The acceleration asked for. */
  readonly at: string;
  /** What happens at the factor. */
  readonly next: string;
  readonly shares: ReadonlyMap<string, TieDownOutcome>;
  /** The shares are those of tie-downs as springs, not of the limit. */
  readonly byStiffness: boolean;
}

function readDirection(solved: SolvedDirection, ids: PlanIds): ReadDirection {
  const { direction, verdict, limit, elastic } = solved;
  checkOneOf(direction, DIRECTIONS, 'direction');
  checkOneOf(verdict, VERDICTS, 'verdict');
  checkObject(limit, 'limit', '{ factor, mode, tensions, governing }');
  const { outcome = 'unbounded', mode } = limit;
  if (mode !== null) checkOneOf(mode, Object.keys(MODES), 'limit.mode');
  if (outcome !== 'limited') checkOneOf(outcome, Object.keys(WITHOUT_FACTOR), 'limit.outcome');
  const acceleration = readQuantity(solved.acceleration, 'acceleration', 'acceleration');
  const first = firstAtCapacity(elastic, ids);
  const isFirst = first !== undefined && !(isNumber(limit.factor) && limit.factor <= first.factor);
  const factor = isFirst ? first.factor : limit.factor;
  const byStiffness = Array.isArray(elastic?.tensions) && elastic.tensions.length > 0;
  return {
    direction,
    found: verdict === 'undetermined' ? 'not determined' : foundWords(factor, outcome),
    at: lineOf(formatQuantity(acceleration, { digits: 3 }), 30),
    next: isFirst ? `, then ${lineOf(first.id, MOST_OF_ID)} is at its capacity` : MODES[mode ?? 'holds'],
    shares: sharesOf(byStiffness ? elastic.tensions : limit.tensions, limit.governing, ids, byStiffness),
    byStiffness,
  };
}

function foundWords(factor: number | null, outcome: 'limited' | keyof typeof WITHOUT_FACTOR): string {
  if (isNumber(factor)) return `${FACTOR}${factorText(factor)}`;
  return outcome === 'limited' ? 'no factor given' : WITHOUT_FACTOR[outcome];
}

function firstAtCapacity(elastic: SolvedDirection['elastic'], { tieDowns }: PlanIds) {
  const first = elastic?.firstAtCapacity;
  if (first === null || first === undefined) return undefined;
  checkObject(first, 'elastic.firstAtCapacity', '{ id, factor }');
  checkKnown(first.id, tieDowns, 'elastic.firstAtCapacity.id');
  return isNumber(first.factor) ? first : undefined;
}

function otherFactors(directions: readonly ReadDirection[], governing: Direction | null): string[] {
  const others = directions.filter(({ direction }) => direction !== governing);
  if (others.length === 0) return [];
  const found = others.map(({ direction, found, at }) =>
    found.startsWith(FACTOR) ? `${direction} ${found.slice(FACTOR.length)} times ${at}` : `${direction} ${found}`,
  );
  return [`${governing === null ? 'Factors' : 'Other factors'}: ${found.join(', ')}.`];
}

/** How much of its capacity each tie-down carries: as the load really shares where that is known, else at the limit. */
function sharesOf(
  tensions: readonly Share[],
  governing: readonly string[],
  { tieDowns }: PlanIds,
  byStiffness: boolean,
): ReadonlyMap<string, TieDownOutcome> {
  mapAt(listAt(governing, 'limit.governing'), 'limit.governing', (id) => checkKnown(id, tieDowns, ''));
  const shares = within(byStiffness ? 'elastic' : 'limit', () =>
    itemsAt(tensions, 'tensions', ({ id, utilization }): [string, TieDownOutcome] => {
      checkKnown(id, tieDowns, 'id');
      if (!isNumber(utilization) || utilization < 0) return [id, { known: false, words: 'capacity not known' }];
      const governs = governing.includes(id) ? ', governs' : '';
      return [id, { known: true, share: utilization, words: `${percent(utilization)} of capacity${governs}` }];
    }),
  );
  return new Map(shares);
}

/** A factor to three digits; one that only rounds to 1 says on which side it lies. */
function factorText(factor: number): string {
  if (factor > 1000) return 'over 1000';
  if (factor < 0.001) return factor > 0 ? 'under 0.001' : '0';
  const text = formatNumber(factor, 3);
  return text !== '1' || factor === 1 ? text : `just ${factor < 1 ? 'under' : 'over'} 1`;
}
