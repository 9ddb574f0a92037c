import { compareExactSums } from '../../../quantities/exact.js';
import { type Check, type CheckSubject, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { ALONG, type Heading, pressingDown, SIDE } from '../../forces/directions.js';
import {
  exactly,
  heldAgainstTipping,
  heldBy,
  ifKnown,
  judgeHeld,
  known,
  together,
  worstOf,
} from '../../forces/held.js';
import { inForce, times } from '../../forces/sums.js';
import { type CountedForce, runValues, shareOfLoad } from '../../forces/tie-downs.js';
import { leversOf, missingStance, type TippingEdge, tippingEdges } from '../../forces/tipping-edge.js';
import type { Run } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, type Coefficients, coefficients, factor, STANDARD, safetyFactor } from './cite.js';
import { capacities, type Load, tensions } from './lashing.js';
import { direct } from './sliding-direct.js';

/**
 * Tilting in a heading over the edge of the contacts. A load stands by itself while b / d > c / cz, with b from its
 * center of gravity to that edge and d its height above it; c is 0.8 forward, 0.6 to the side and to the rear.
 *
 * Otherwise the lashings make up the moment, sum(M) ≥ m · g · (c · d − cz · b). The check states it as horizontal
 * force at the center of gravity: m · g · c against (m · g · cz · b + sum(M)) / d.
 */
export function checkTilting(load: Load, heading: Heading, context: RuleContext): Check {
  const { working } = context;
  const { article } = load.layout;
  const about = aboutRule(working, `tilting-${heading}`, `Tilting ${heading}`, article.id, 'tilting');
  const edges = tippingEdges(load.layout, heading);
  if (edges === undefined) return undeterminedCheck(about, missingStance(load.layout));
  const [edge] = edges;
  if (edge.d <= 0) {
    // its center of gravity lies no higher than the edge
    return edge.b >= 0 ? metCheck(about) : failedCheck(about, note('BEYOND_THE_EDGE', { article: article.id }));
  }
  const free = coefficients(working, 'tilting-direct', heading) as Coefficients;
  const order = compareWithStanding(load, edge, heading, free);
  if (order < 0) return judgeCase(about, { name: 'standing', ...free, overTop: [], direct: [] }, load, edge, context);
  const held = worstOf(
    edges.flatMap((each) => tiltingCases(load, each, working).map((one) => judgeCase(about, one, load, each, context))),
  );
  const unheld =
    order === 0 &&
    held.verdict === 'pass' &&
    tensions(load.lashings).length + direct(load.lashings, heading).length === 0;
  return unheld ? failedCheck(about, note('ON_THE_EDGE', { article: article.id })) : held;
}

/** -1 where the load stands by itself, 0 on the very edge: c · d against cz · b, exactly, of the coordinates in meters. */
function compareWithStanding(
  { layout }: Load,
  edge: TippingEdge,
  heading: Heading,
  { c, cz }: Coefficients,
): -1 | 0 | 1 {
  const [x, y, z] = layout.centerOfGravity as readonly [number, number, number];
  const [ux, uy] = ALONG[heading];
  const m = (value: number, ...by: number[]) => ({ quantity: { value, unit: 'm' as const }, times: by });
  return compareExactSums([m(z, c), m(x, ux, cz), m(y, uy, cz)], [m(edge.at, cz), m(edge.height, c)]);
}

/** Lashings against tilting in one heading, with the coefficients to hold them against. */
interface TiltingCase extends Coefficients {
  readonly name: string;
  readonly overTop: readonly CountedForce[];
  readonly direct: readonly CountedForce[];
}

/**
 * Sideways, over-top lashing has two cases, and both must hold: A, c = 0.5 with FT, and B, c = 0.6 with 0.5 · LC. To
 * the front and rear it counts by its pretension alone. Direct lashing counts LC beside it, in every case:
 * sum(LC · (h · cos α · cos β + s · sin α)) over the legs that hold back.
 */
function tiltingCases({ lashings }: Load, edge: TippingEdge, working: Working): readonly TiltingCase[] {
  const { heading } = edge;
  const over = tensions(lashings);
  const pulling = direct(lashings, heading);
  const share = factor(working, 'tension-share-of-lc');
  const cases: TiltingCase[] = [];
  const add = (name: string, rows: Parameters<typeof coefficients>[1], overTop: readonly CountedForce[]) => {
    const own = coefficients(working, rows, heading);
    if (own === undefined) return;
    cases.push({ name, c: own.c, cz: own.cz, overTop, direct: pulling });
  };
  if (over.length === 0) add('direct', 'tilting-direct', []);
  else {
    add('case A, FT', 'tilting-over-top-a', over);
    const halves = capacities(lashings.filter(({ tension }) => tension !== undefined)).map((each) => ({
      ...each,
      force: shareOfLoad(share, each.force),
    }));
    add(`case B, ${share} · LC`, 'tilting-over-top-b', halves);
  }
  return cases;
}

/**
 * Lever of an over-top lashing, for the force in one leg. Forward and rearward: sum(s · sin α), s from the edge to the
 * leg. Sideways: w · sin α, w from the near leg to the far one, as if the near leg stood on the edge; where it stands
 * beyond the edge it helps the tilting, and the sum is less. The horizontal parts are left out, as in the standard.
 */
function overTopLever(runs: readonly Run[], edge: TippingEdge): number {
  const legs = runs.map((run) => ({ s: leversOf(run, edge).s, sin: pressingDown(run) }));
  const sum = legs.reduce((lever, { s, sin }) => lever + s * sin, 0);
  const [one, other] = legs;
  if (one === undefined || other === undefined) return 0;
  if (SIDE[edge.heading] !== 'sideways') return sum;
  const far = one.s > other.s ? one : other;
  return Math.min(sum, Math.abs(one.s - other.s) * far.sin);
}

function judgeCase(about: CheckSubject, each: TiltingCase, load: Load, edge: TippingEdge, context: RuleContext): Check {
  const { working, units } = context;
  const { name, c, cz, overTop, direct: pulling } = each;
  const { b, d, heading } = edge;
  const fs = safetyFactor(working, heading);
  const held = together(
    known(times(load.weight, cz, b)),
    heldBy(overTop, (runs) => overTopLever(runs, edge), Number.POSITIVE_INFINITY, exactly(1 / fs)),
    heldAgainstTipping(pulling, edge),
  );
  const show = inForce(units, d);
  if (working.shown) {
    working.step(
      `${load.layout.article.id}, ${heading}, ${name}`,
      'R',
      '(m · g · cz · b + sum(M)) / d',
      [
        ['m · g', inForce(units)(load.weight)],
        ['cz', cz],
        ['b', { value: b, unit: 'm' }],
        ['d', { value: d, unit: 'm' }],
        ...runValues(overTop, heading, units, { edge }),
        ...runValues(pulling, heading, units, { symbol: 'LC', edge }),
      ],
      ifKnown(held, show),
      `${STANDARD}, tilting`,
    );
  }
  return judgeHeld(about, times(load.weight, c, d), held, show);
}
