import { fail, mapAt, within } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { formatNumber, formatQuantity } from '../quantities/format.js';
import { readQuantity } from '../quantities/read.js';
import { DIRECTIONS, type Direction, type DirectionAnswer, type Restraint } from '../securement/restraint.js';
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

const MODES = { holds: '', slides: ', then it slides', tips: ', then it tips', lifts: ', then it lifts' } as const;

/** What `solveRestraint` found: the direction that decides, and how much of its capacity each tie-down carries there. */
export function outcomeOfRestraint(result: Restraint, ids: PlanIds): Outcome {
  const { verdict, article, governing } = result;
  checkKnown(article, ids.articles, 'article');
  const name = lineOf(article, MOST_OF_ID);
  const words = {
    pass: `${name}: holds in every direction looked at`,
    fail: `${name}: does not hold`,
    undetermined: `${name}: not determined, a fact is missing`,
    'not-applicable': `${name}: nothing to hold`,
  };
  const directions = itemsAt(result.directions, 'directions', readDirection);
  const tieDowns = new Map(itemsAt(result.capacities, 'capacities', (each) => capacityOf(each, ids)));
  const missing = missingWords(directions.flatMap(({ answer }) => listAt(answer.missing, 'missing')));
  const others = factorsOf(directions, governing);
  if (governing === null) return { verdict: words[verdict], because: [...others, ...missing], tieDowns };
  checkOneOf(governing, DIRECTIONS, 'governing');
  const index = directions.findIndex(({ direction }) => direction === governing);
  const decisive = directions[index];
  if (decisive === undefined) {
    return fail('MISSING_FIELD', 'directions', `the ${governing} direction`, undefined, 'Give the whole result.');
  }
  const { answer, found, at } = decisive;
  const { limit, elastic } = answer;
  const shares = within(`directions[${index}]`, () => sharesOf(answer, ids));
  for (const [id, share] of shares) {
    const governs = limit.governing.includes(id) ? ', governs' : '';
    tieDowns.set(id, { known: true, share, words: `${percent(share)} of capacity${governs}` });
  }
  const isFactor = found.startsWith(FACTOR);
  return {
    verdict: words[verdict],
    because: [
      `Decides: ${governing}, ${found}${isFactor ? ` of ${at}${MODES[limit.mode]}` : ''}.`,
      ...others,
      ...missing,
      ...(shares.length === 0
        ? []
        : [
            elastic
              ? `Percent is tension over capacity at ${at} ${governing}, shared by stiffness.`
              : `Percent is tension over capacity at the ${governing} limit: one way the forces can balance.`,
          ]),
    ],
    tieDowns,
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
  readonly answer: DirectionAnswer;
}

function readDirection(answer: DirectionAnswer): ReadDirection {
  const { direction, verdict, limit } = answer;
  checkOneOf(direction, DIRECTIONS, 'direction');
  checkOneOf(verdict, VERDICTS, 'verdict');
  checkObject(limit, 'limit', '{ factor, mode, tensions, governing }');
  checkOneOf(limit.mode, Object.keys(MODES), 'limit.mode');
  const acceleration = readQuantity(answer.acceleration, 'acceleration', 'acceleration');
  const at = lineOf(formatQuantity(acceleration, { digits: 3 }), 30);
  const found = isNumber(limit.factor) ? `${FACTOR}${factorText(limit.factor)}` : 'never gives way';
  const decided = verdict === 'pass' || verdict === 'fail';
  return { direction, at, answer, found: decided ? found : verdict === 'undetermined' ? 'not determined' : verdict };
}

function factorsOf(directions: readonly ReadDirection[], governing: Direction | null): string[] {
  const others = directions.filter(({ direction }) => direction !== governing);
  if (others.length === 0) return [];
  const found = others.map(({ direction, found, at }) =>
    found.startsWith(FACTOR) ? `${direction} ${found.slice(FACTOR.length)} of ${at}` : `${direction} ${found}`,
  );
  return [`${governing === null ? 'Factors' : 'Other factors'}: ${found.join(', ')}.`];
}

function capacityOf(
  { id, capacity }: Restraint['capacities'][number],
  { tieDowns }: PlanIds,
): [string, TieDownOutcome] {
  checkKnown(id, tieDowns, 'id');
  const known = capacity !== null;
  return [id, { known, words: known ? 'no tension given' : 'capacity not known' }];
}

/** As the load really shares where that is known, else at the limit. */
function sharesOf({ elastic, limit }: DirectionAnswer, { tieDowns }: PlanIds): [string, number][] {
  mapAt(listAt(limit.governing, 'limit.governing'), 'limit.governing', (id) => checkKnown(id, tieDowns, ''));
  const [field, answer] = elastic ? (['elastic', elastic] as const) : (['limit', limit] as const);
  return within(field, () =>
    itemsAt(answer.tensions, 'tensions', ({ id, utilization }): [string, number] => {
      checkKnown(id, tieDowns, 'id');
      return [id, utilization];
    }),
  ).filter(([, utilization]) => isNumber(utilization) && utilization >= 0);
}

/** A factor to three digits; one that only rounds to 1 says on which side it lies. */
function factorText(factor: number): string {
  if (factor > 1000) return 'over 1000';
  if (factor < 0.001) return factor > 0 ? 'under 0.001' : '0';
  const text = formatNumber(factor, 3);
  return text !== '1' || factor === 1 ? text : `just ${factor < 1 ? 'under' : 'over'} 1`;
}
