import { checkOneOf } from '../../../input-checks.js';
import { type Check, type CheckSubject, undeterminedCheck } from '../../../working/check.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { anglesOf, type Heading, holdingBack, pressingDown } from '../../forces.js';
import type { Run } from '../../layout.js';
import type { Article } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, type Coefficients, coefficients, factor, STANDARD, safetyFactor } from './cite.js';
import type { Held } from './held.js';
import type { Load } from './load.js';
import { plus, type Range } from './range.js';
import { rankOf, settle, shown } from './settle.js';
import { direct, heldByDirect } from './sliding-direct.js';
import { heldByOverTop } from './sliding-over-top.js';

/**
 * Sliding in a heading: what friction does not hold of m · g · c must be held by the lashings,
 * m · g · (c − μ · cz) ≤ sum over over-top lashing + sum over direct lashing. Where friction alone holds, the left side
 * is zero; the least number of lashings stays.
 *
 * Over-top lashing counts with μ as it stands. Once direct lashing is counted, the whole friction term is 0.75 · μ,
 * because the load creeps before direct lashing takes up force. A load may be held either way, so the better counts.
 */
export function checkSliding(load: Load, heading: Heading, context: RuleContext): Check {
  const { working } = context;
  const { layout, friction } = load;
  const about = aboutRule(working, `sliding-${heading}`, `Sliding ${heading}`, layout.article.id, 'sliding');
  const best = bestWay(about, load, heading, friction.mu ?? 0, context);
  const { check } = best;
  // more friction than none only helps, unless a lashing lifts the load
  const decided = friction.mu !== undefined || (check.verdict === 'pass' && !lifts(best));
  if (working.shown && decided) {
    showWay(best, load, heading, context);
    if (friction.mu === undefined) working.assumptions.push(note(WITHOUT_FRICTION, { heading }));
  }
  if (decided && check.verdict === 'pass') {
    noteFrictionOfDirect(best, heading, working);
    return check;
  }
  const missing = [...friction.missing, ...(check.verdict === 'undetermined' ? check.missing : [])];
  if (heading === 'forward' && isBlocked(layout.article)) {
    const force = shown(best.demand - Math.max(0, best.force.least), context.units);
    return undeterminedCheck(about, [note(BLOCK_NOT_STATED, { article: layout.article.id, force }), ...missing]);
  }
  return decided ? check : undeterminedCheck(about, missing);
}

/** One way to hold the load in a heading: by over-top lashing alone, or with the direct lashing as well. */
interface Way {
  readonly check: Check;
  readonly demand: number;
  readonly force: Range;
  readonly mu: number;
  readonly fmu: number | undefined;
  readonly overTop: Held;
  readonly direct: Held | undefined;
}

function bestWay(about: CheckSubject, load: Load, heading: Heading, mu: number, context: RuleContext): Way {
  const { lashings, weight } = load;
  const { working, units } = context;
  const { c, cz } = coefficients(working, 'sliding', heading) as Coefficients;
  const way = (fmu?: number): Way => {
    const counted = (fmu ?? 1) * mu;
    const demand = Math.max(0, weight * (c - counted * cz));
    const overTop = heldByOverTop(lashings, safetyFactor(working, heading), counted);
    const directly = fmu === undefined ? undefined : heldByDirect(lashings, heading, counted);
    const force = directly === undefined ? overTop.amount : plus(overTop.amount, directly.amount);
    const check = settle(about, demand, force, [...overTop.missing, ...(directly?.missing ?? [])], units);
    return { check, demand, force, mu, fmu, overTop, direct: directly };
  };
  const frictional = way();
  if (direct(lashings, heading).length === 0) return frictional;
  const mixed = way(factor(working, 'friction-factor-direct'));
  return rankOf(frictional.check) < rankOf(mixed.check) ? frictional : mixed;
}

const lifts = ({ direct: held }: Way): boolean =>
  held?.shares.some(([{ runs }]) => runs.some((run) => pressingDown(run) < 0)) === true;

/** A headboard, bulkhead or other cargo stops it, how strongly is not stated. */
function isBlocked({ blockedForward, headboard }: Article): boolean {
  if (headboard !== undefined) checkOneOf(headboard, ['none', 'partial', 'adequate'], 'headboard');
  return blockedForward === true || headboard === 'adequate' || headboard === 'partial';
}

function showWay(way: Way, load: Load, heading: Heading, { working, units }: RuleContext): void {
  const { layout, weight } = load;
  const { demand, force, mu, fmu, overTop, direct } = way;
  const subject = `${layout.article.id}, ${heading}`;
  const { c, cz } = coefficients(working, 'sliding', heading) as Coefficients;
  const friction = fmu === undefined ? 'μ' : 'fμ · μ';
  const shownIf = ({ least, most }: Range) => (least === most ? shown(least, units) : null);
  working.step(
    subject,
    'F',
    `max(0, m · g · (c − ${friction} · cz))`,
    { 'm · g': shown(weight, units), c, cz, μ: mu, ...(fmu === undefined ? {} : { fμ: fmu }) },
    shown(demand, units),
    `${STANDARD}, sliding`,
  );
  const showHeld = (symbol: string, expression: string, name: 'FT' | 'LC', held: Held, clause: string) => {
    if (held.shares.length === 0) return;
    working.step(
      subject,
      symbol,
      expression,
      held.shares.flatMap(([lashing, share]) => {
        const { id } = lashing.tieDown;
        return [
          [`${id}, ${name}`, shownIf(name === 'FT' ? lashing.tension : lashing.capacity)] as const,
          ...lashing.runs.flatMap((run) => anglesShown(id, run, heading)),
          [`${id}, share`, share] as const,
        ];
      }),
      shownIf(held.amount),
      `${STANDARD}, ${clause}`,
    );
  };
  const fs = safetyFactor(working, heading);
  showHeld('R over-top', `sum(${friction} · FT · sin α) / ${fs}, both legs`, 'FT', overTop, 'over-top lashing');
  if (direct === undefined) return;
  showHeld('R direct', `sum(LC · (cos α · cos β + ${friction} · sin α))`, 'LC', direct, 'direct lashing');
  if (overTop.shares.length === 0) return;
  working.step(
    subject,
    'R',
    'R over-top + R direct',
    { 'R over-top': shownIf(overTop.amount), 'R direct': shownIf(direct.amount) },
    shownIf(force),
    `${STANDARD}, over-top with direct lashing`,
  );
}

function anglesShown(id: string, run: Run, heading: Heading) {
  const { alpha, beta } = anglesOf(run, heading);
  return [
    [`${id}, α`, { value: alpha, unit: 'deg' }],
    [`${id}, β`, { value: beta, unit: 'deg' }],
  ] as const;
}

/** A leg that runs almost across the heading is hardly stretched by a load that moves: its strength may never come into play. */
function noteFrictionOfDirect({ fmu = 0, mu, direct }: Way, heading: Heading, working: Working): void {
  for (const [{ tieDown, runs }] of direct?.shares ?? []) {
    if (runs.every((run) => holdingBack(run, heading) >= fmu * mu * pressingDown(run))) continue;
    working.cautions.push(note(MORE_FRICTION_THAN_PULL, { tieDown: tieDown.id, heading }));
  }
}

const BLOCK_NOT_STATED: Words = [
  'BLOCK_NOT_STATED',
  'Whether what stops {article} forward takes {force}: the lashings leave that much to it.',
];
const WITHOUT_FRICTION: Words = [
  'WITHOUT_FRICTION',
  'The friction is not known; {heading} the lashings are enough without any.',
];
const MORE_FRICTION_THAN_PULL: Words = [
  'MORE_FRICTION_THAN_PULL',
  'Tie-down {tieDown} runs steeply or almost across: {heading} it counts more by friction than by its pull.',
];
