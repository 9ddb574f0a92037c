import { checkOneOf } from '../../../input-checks.js';
import { type Check, type CheckSubject, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { type Heading, holdingBack, pressingDown } from '../../forces/directions.js';
import { type Held, ifKnown, judgeHeld, rankOf, together } from '../../forces/held.js';
import { amountOf, forceUnitOf, inForce, type Sum, times, totalOf } from '../../forces/sums.js';
import { type CountedForce, runValues } from '../../forces/tie-downs.js';
import type { Article } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, type Coefficients, coefficients, factor, STANDARD, safetyFactor } from './cite.js';
import { type Load, tensions } from './lashing.js';
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
  const best = bestWay(about, load, heading, friction.least, context);
  const unknown = friction.missing.length > 0;
  const { check } = best;
  // more friction than none only helps, unless a lashing lifts the load
  const decided = !unknown || (check.verdict === 'pass' && !lifts(best));
  if (working.shown && decided) {
    showWay(best, load, heading, context);
    if (unknown) working.assumptions.push(note('ENOUGH_WITHOUT_FRICTION', { heading }));
  }
  if (decided && check.verdict === 'pass') {
    noteFrictionOfDirect(best, heading, working);
    return check;
  }
  const missing = [...friction.missing, ...(check.verdict === 'undetermined' ? check.missing : [])];
  if (heading === 'forward' && isBlocked(layout.article)) {
    const rest = totalOf(best.demand) - Math.max(0, totalOf(best.held.least));
    const force = amountOf([{ quantity: { value: rest, unit: 'N' } }], forceUnitOf(context.units));
    return undeterminedCheck(about, [note('BLOCK_NOT_STATED', { article: layout.article.id, force }), ...missing]);
  }
  return decided ? check : undeterminedCheck(about, missing);
}

/** One way to hold the load in a heading: by over-top lashing alone, or with the direct lashing as well. */
interface Way {
  readonly check: Check;
  readonly demand: Sum;
  readonly mu: number;
  /** The share of μ that counts once direct lashing does. */
  readonly fmu: number | undefined;
  readonly held: Held;
  /** The direct lashing that counts. */
  readonly pulling: readonly CountedForce[];
}

function bestWay(about: CheckSubject, load: Load, heading: Heading, mu: number, context: RuleContext): Way {
  const { lashings, weight } = load;
  const { working, units } = context;
  const { c, cz } = coefficients(working, 'sliding', heading) as Coefficients;
  const all = direct(lashings, heading);
  const way = (pulling: readonly CountedForce[], fmu?: number): Way => {
    const counted = (fmu ?? 1) * mu;
    const demand = c > counted * cz ? [...times(weight, c), ...times(weight, -counted, cz)] : [];
    const held = together(
      heldByOverTop(lashings, safetyFactor(working, heading), counted),
      heldByDirect(pulling, heading, counted),
    );
    return { check: judgeHeld(about, demand, held, inForce(units)), demand, mu, fmu, held, pulling };
  };
  const frictional = way([]);
  if (all.length === 0) return frictional;
  const mixed = way(all, factor(working, 'friction-factor-direct'));
  return rankOf(mixed.check) <= rankOf(frictional.check) ? mixed : frictional;
}

const lifts = ({ pulling }: Way): boolean =>
  pulling.some(({ layout: { runs } }) => runs.some((run) => pressingDown(run) < 0));

/** A headboard, bulkhead or other cargo stops it, how strongly is not stated. */
function isBlocked({ blockedForward, headboard }: Article): boolean {
  if (headboard !== undefined) checkOneOf(headboard, ['none', 'partial', 'adequate'], 'headboard');
  return blockedForward === true || headboard === 'adequate' || headboard === 'partial';
}

function showWay(way: Way, load: Load, heading: Heading, { working, units }: RuleContext): void {
  const { layout, weight, lashings } = load;
  const { demand, mu, fmu, held, pulling } = way;
  const show = inForce(units);
  const subject = `${layout.article.id}, ${heading}`;
  const { c, cz } = coefficients(working, 'sliding', heading) as Coefficients;
  const friction = fmu === undefined ? 'μ' : 'fμ · μ';
  working.step(
    subject,
    'F',
    `max(0, m · g · (c − ${friction} · cz))`,
    { 'm · g': show(weight), c, cz, μ: mu, ...(fmu === undefined ? {} : { fμ: fmu }) },
    show(demand),
    `${STANDARD}, sliding`,
  );
  const over = tensions(lashings);
  const terms: string[] = [];
  if (over.length > 0) terms.push(`sum(${friction} · FT · sin α) / ${safetyFactor(working, heading)}, both legs`);
  if (pulling.length > 0) terms.push(`sum(LC · (cos α · cos β + ${friction} · sin α))`);
  if (terms.length === 0) return;
  working.step(
    subject,
    'R',
    terms.join(' + '),
    [...runValues(over, heading, units, { symbol: 'FT' }), ...runValues(pulling, heading, units, { symbol: 'LC' })],
    ifKnown(held, show),
    `${STANDARD}, sliding`,
  );
}

/** A leg that runs almost across the heading is hardly stretched by a load that moves: its strength may never come into play. */
function noteFrictionOfDirect({ fmu = 0, mu, pulling }: Way, heading: Heading, working: Working): void {
  for (const { layout } of pulling) {
    if (layout.runs.every((run) => holdingBack(run, heading) >= fmu * mu * pressingDown(run))) continue;
    working.cautions.push(note('MORE_FRICTION_THAN_PULL', { tieDown: layout.tieDown.id, heading }));
  }
}
