import { compareExactSums, ratioOf } from '../../../quantities/exact.js';
import {
  type Check,
  type CheckSubject,
  failedCheck,
  metCheck,
  ratioCheck,
  undeterminedCheck,
} from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import {
  ALONG,
  type Heading,
  heldAgainstTipping,
  leversOf,
  pressingDown,
  type TippingEdge,
  tippingEdge,
} from '../../forces.js';
import type { Run } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, type Coefficients, coefficients, factor, SIDE, STANDARD, safetyFactor } from './cite.js';
import { addUp, alike, type CountedForce, capacityOf, type Held, overTop, tensionOf } from './held.js';
import type { Lashing } from './lashing.js';
import type { Load } from './load.js';
import { plus, times } from './range.js';
import { rankOf, settle, shown } from './settle.js';
import { direct } from './sliding-direct.js';

/**
 * Tilting in a heading over the outermost contacts. A load stands by itself while b / d > c / cz, with b from its
 * center of gravity to that edge and d its height above it; c is 0.8 forward, 0.6 to the side and to the rear.
 *
 * Otherwise the lashings make up the moment, sum(M) ≥ m · g · (c · d − cz · b). The check states it as horizontal
 * force at the center of gravity: m · g · c against (m · g · cz · b + sum(M)) / d.
 */
export function checkTilting(load: Load, heading: Heading, context: RuleContext): Check {
  const { working, units } = context;
  const { article, contacts, centerOfGravity } = load.layout;
  const about = aboutRule(working, `tilting-${heading}`, `Tilting ${heading}`, article.id, 'tilting');
  const edge = tippingEdge(load.layout, heading);
  if (edge === undefined) {
    const missing: Note[] = [];
    if (centerOfGravity === undefined) missing.push(note(NO_CENTER_OF_GRAVITY, { article: article.id }));
    if (contacts.length === 0) missing.push(note(NO_CONTACTS, { article: article.id }));
    return undeterminedCheck(about, missing);
  }
  if (edge.d <= 0) return metCheck(about); // its center of gravity lies no higher than the edge
  const free = coefficients(working, 'tilting-direct', heading) as Coefficients;
  const order = compareWithStanding(load, edge, heading, free);
  if (order < 0) {
    const demand = load.weight * free.c;
    const alone = standingForce(load, edge, free);
    showStanding(load, edge, heading, free, context);
    const { utilization } = ratioOf(demand, alone, () => order);
    return ratioCheck(about, true, shown(demand, units), shown(alone, units), utilization);
  }
  let worst: Check | undefined;
  for (const each of tiltingCases(load, edge, heading, working)) {
    const check = judgeCase(about, each, load, edge, heading, context);
    if (worst === undefined || rankOf(check) > rankOf(worst)) worst = check;
  }
  const held = worst as Check;
  const unheld =
    order === 0 &&
    held.verdict === 'pass' &&
    overTop(load.lashings).length + direct(load.lashings, heading).length === 0;
  return unheld ? failedCheck(about, note(ON_THE_EDGE, { article: article.id })) : held;
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

/** The horizontal force at the center of gravity that tips the load when nothing holds it: m · g · cz · b / d. */
const standingForce = ({ weight }: Load, { b, d }: TippingEdge, { cz }: Coefficients): number => (weight * cz * b) / d;

/** Lashings against tilting in one heading, with the coefficients to hold them against. */
interface TiltingCase extends Coefficients {
  readonly name: string;
  readonly overTop: Held;
  readonly direct: Held;
}

/**
 * Sideways, over-top lashing has two cases, and both must hold: A, c = 0.5 with FT, and B, c = 0.6 with 0.5 · LC. To
 * the front and rear it counts by its pretension alone. Direct lashing counts LC beside it, in every case:
 * sum(LC · (h · cos α · cos β + s · sin α)) over the legs that hold back.
 */
function tiltingCases(load: Load, edge: TippingEdge, heading: Heading, working: Working): readonly TiltingCase[] {
  const over = overTop(load.lashings);
  const lever = (runs: readonly Run[]) => heldAgainstTipping(alike(runs), edge, heading);
  const held = addUp(direct(load.lashings, heading), capacityOf, lever, Number.POSITIVE_INFINITY);
  const fs = safetyFactor(working, heading);
  const share = factor(working, 'tension-share-of-lc');
  const cases: TiltingCase[] = [];
  const add = (name: string, rows: Parameters<typeof coefficients>[1], forceOf: (lashing: Lashing) => CountedForce) => {
    const own = coefficients(working, rows, heading);
    if (own === undefined) return;
    const pressed = addUp(over, forceOf, (runs) => overTopLever(runs, edge, heading) / fs, Number.POSITIVE_INFINITY);
    cases.push({ c: own.c, cz: own.cz, name, overTop: pressed, direct: held });
  };
  if (over.length === 0) add('direct', 'tilting-direct', tensionOf);
  else {
    add('case A, FT', 'tilting-over-top-a', tensionOf);
    add(`case B, ${share} · LC`, 'tilting-over-top-b', (lashing) => {
      const { force, missing } = capacityOf(lashing);
      return { force: times(force, share), missing };
    });
  }
  return cases;
}

/**
 * Lever of an over-top lashing, for the force in one leg. Forward and rearward: sum(s · sin α), s from the edge to the
 * leg. Sideways: w · sin α, w from the near leg to the far one, as if the near leg stood on the edge; where it stands
 * beyond the edge it helps the tilting, and the sum is less. The horizontal parts are left out, as in the standard.
 */
function overTopLever(runs: readonly Run[], edge: TippingEdge, heading: Heading): number {
  const legs = runs.map((run) => ({ s: leversOf(run, edge, heading).s, sin: pressingDown(run) }));
  const sum = legs.reduce((lever, { s, sin }) => lever + s * sin, 0);
  if (SIDE[heading] !== 'sideways') return sum;
  const far = legs.reduce((best, leg) => (leg.s > best.s ? leg : best));
  const near = Math.min(...legs.map(({ s }) => s));
  return Math.min(sum, (far.s - near) * far.sin);
}

function judgeCase(
  about: CheckSubject,
  { name, overTop: pressed, direct: pulled, c, cz }: TiltingCase,
  load: Load,
  edge: TippingEdge,
  heading: Heading,
  context: RuleContext,
): Check {
  const { working, units } = context;
  const alone = standingForce(load, edge, { c, cz });
  const moment = plus(pressed.amount, pulled.amount);
  const capacity = { least: alone + moment.least / edge.d, most: alone + moment.most / edge.d };
  if (working.shown) {
    showStanding(load, edge, heading, { c, cz }, context);
    working.step(
      `${load.layout.article.id}, ${heading}, ${name}`,
      'R',
      '(m · g · cz · b + sum(M)) / d',
      [
        ...[...pressed.shares, ...pulled.shares].map(
          ([{ tieDown }, lever]) => [`${tieDown.id}, M / F in m`, lever] as const,
        ),
        ['sum(M) / d', moment.least === moment.most ? shown(moment.least / edge.d, units) : null],
      ],
      capacity.least === capacity.most ? shown(capacity.least, units) : null,
      `${STANDARD}, tilting`,
    );
  }
  return settle(about, load.weight * c, capacity, [...pressed.missing, ...pulled.missing], units);
}

function showStanding(
  load: Load,
  edge: TippingEdge,
  heading: Heading,
  { c, cz }: Coefficients,
  { working, units }: RuleContext,
): void {
  if (!working.shown) return;
  working.step(
    `${load.layout.article.id}, ${heading}`,
    'F standing',
    'm · g · cz · b / d',
    {
      'm · g': shown(load.weight, units),
      b: { value: edge.b, unit: 'm' },
      d: { value: edge.d, unit: 'm' },
      c,
      cz,
    },
    shown(standingForce(load, edge, { c, cz }), units),
    `${STANDARD}, tilting`,
  );
}

const NO_CENTER_OF_GRAVITY: Words = [
  'CENTER_OF_GRAVITY_NOT_STATED',
  'The center of gravity of {article} as carried, raised equipment included.',
];
const NO_CONTACTS: Words = [
  'CONTACTS_NOT_STATED',
  'Where {article} stands on the deck, as contacts: its outermost ones are the edge it would tilt over.',
];
const ON_THE_EDGE: Words = [
  'ON_THE_EDGE',
  '{article} stands at b / d = c / cz, neither more nor less, and no lashing holds it.',
];
