import { auLrg2018Accelerations as accelerations } from '../../../tables/generated/au-lrg-2018-accelerations.js';
import { type Check, notApplicableCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { HEADINGS, type Heading, SIDE, toward } from '../../forces/directions.js';
import type { FrictionFactor } from '../../forces/friction.js';
import {
  directShare,
  downShare,
  type Held,
  heldDirectly,
  heldDown,
  heldLessLift,
  ifKnown,
  judgeHeld,
  pressedDown,
  pressedShare,
  together,
} from '../../forces/held.js';
import { amountOf, forceUnitOf, inForce, type Sum, times } from '../../forces/sums.js';
import { type CountedForce, shareValues } from '../../forces/tie-downs.js';
import type { ArticleLayout } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, citeGuide, GUIDE, SCHEDULE_7 } from './cite.js';
import { frictionFactor } from './friction.js';

/** The acceleration of a heading, in g. */
const accelerationOf = (heading: Heading): number => accelerations.rows[SIDE[heading]].c;

/** What an article is held by, and what the steps are shown in. */
interface Restraint {
  readonly article: ArticleLayout;
  /** By their lashing capacity. */
  readonly direct: readonly CountedForce[];
  /** By their pretension. */
  readonly over: readonly CountedForce[];
  readonly context: RuleContext;
}

/**
 * Schedule 7 for one article: 0.8 of its weight forward, half of it rearward and to each side; and 0.2 of it upward
 * where friction is relied on for any of these.
 *
 * Direct restraint alone: sum(LC · AE) ≥ a · W, AE the distance between the tie points in the restrained direction
 * over the length of the lashing. Where that is not enough, friction counts in full, that of the weight and that of
 * the clamp P = sum(T · AE) of the tie-downs over the load, AE = sin α and T the stated pretension:
 * sum(LC · AE) + μ · (W + P) ≥ a · W. By tie-downs over the load alone that is P ≥ W · (a / μ − 1).
 */
export function judgeRestraint(restraint: Restraint): Check[] {
  const { article, direct, over, context } = restraint;
  const { working } = context;
  if (working.shown) {
    working.cite(accelerations.source);
    if (over.length > 0) citeGuide(working, 'tie-down restraint: clamp and pretension', 'memory');
    if (direct.length > 0) citeGuide(working, 'angle effect; direct restraint', 'read', 'read in a page quoting it');
    if (direct.length > 0 && over.length > 0)
      citeGuide(working, 'both together', 'interpretation', 'what each holds is added up');
  }
  const friction = frictionFactor(article.article, working);
  const blocked = article.article.blockedForward === true;
  const headings = blocked ? HEADINGS.filter((heading) => heading !== 'forward') : HEADINGS;
  const found = headings.map((heading) => judgeHeading(restraint, heading, friction));
  const relying = found.filter(({ byFriction }) => byFriction);
  if (working.shown && relying.length > 0 && friction.missing.length === 0 && direct.length === 0) {
    showClamp(restraint, friction.least, headings);
  }
  return [
    ...(blocked ? [notApplicableCheck(aboutHeading('forward', article.article.id), BLOCKED)] : []),
    ...found.map(({ check }) => check),
    judgeUpward(
      restraint,
      relying.map(({ strength }) => strength),
    ),
  ];
}

const aboutHeading = (heading: Heading, subject: string) => aboutRule(heading, `Held ${toward(heading)}`, subject);

/** A heading judged: by the strength of direct tie-downs alone, and with friction where that is not enough. */
interface FoundHeading {
  readonly strength: Check;
  readonly check: Check;
  readonly byFriction: boolean;
}

function judgeHeading(
  { article, direct, over, context }: Restraint,
  heading: Heading,
  friction: FrictionFactor,
): FoundHeading {
  const { working, units } = context;
  const show = inForce(units);
  const a = accelerationOf(heading);
  const about = aboutHeading(heading, article.article.id);
  const subject = `${article.article.id} ${heading}`;
  const weight: Sum = [{ quantity: article.mass }];
  const asked = times(weight, a);
  const back = heldDirectly(direct, heading);
  const strength = judgeHeld(about, asked, back, show);
  const byFriction = strength.verdict !== 'pass' && friction.most > 0;
  if (working.shown) {
    working.step(subject, 'F', 'a · W', { a, W: show(weight) }, show(asked), SCHEDULE_7);
    if (direct.length > 0) {
      const values = shareValues(direct, 'AE', (runs) => directShare(runs, heading, 0));
      working.step(subject, 'R', 'sum(LC · AE)', values, ifKnown(back, show), GUIDE);
    }
  }
  if (!byFriction) return { strength, check: strength, byFriction };
  if (friction.missing.length > 0) {
    return { strength, check: undeterminedCheck(about, [...friction.missing, ...back.missing]), byFriction };
  }
  const mu = friction.least;
  const clamp = pressedDown(over, friction);
  // what the weight alone holds leaves the demand; never less than nothing is asked
  const rest = mu >= a ? [] : [...asked, ...times(weight, -mu)];
  if (working.shown) {
    const expression = mu >= a ? '0, because μ ≥ a' : '(a − μ) · W';
    working.step(subject, 'F after friction', expression, { a, μ: mu, W: show(weight) }, show(rest), GUIDE);
    if (over.length > 0) {
      const values = shareValues(over, 'AE', pressedShare);
      working.step(subject, 'friction of the clamp', 'μ · sum(T · AE)', values, ifKnown(clamp, show), GUIDE);
    }
  }
  // friction is relied on from here: what a direct tie-down lifts as it holds does not rub
  const backLessLift = heldLessLift(direct, heading, friction);
  return { strength, check: judgeHeld(about, rest, together(backLessLift, clamp), show), byFriction };
}

/**
 * 0.2 W upward: by the clamp of tie-downs over the load, and by the upright parts of direct ones at their capacity.
 * While a missing fact might make strength alone enough, it can be met but not broken.
 */
function judgeUpward({ article, direct, over, context }: Restraint, relying: readonly Check[]): Check {
  const { working, units } = context;
  const { id } = article.article;
  const about = aboutRule('up', 'Held down, because friction is relied on', id);
  if (relying.length === 0) return notApplicableCheck(about, FRICTION_NOT_RELIED_ON);
  const a = accelerations.rows.upward.c;
  const weight: Sum = [{ quantity: article.mass }];
  const asked = times(weight, a);
  const held: Held = together(heldDown(direct), pressedDown(over));
  const show = inForce(units);
  if (working.shown) {
    const how = 'by the clamp of the pretension and by direct tie-downs at their capacity';
    citeGuide(working, 'upward restraint', 'interpretation', how);
    working.step(`${id} up`, 'F', 'a · W', { a, W: show(weight) }, show(asked), SCHEDULE_7);
    const values = [...shareValues(over, 'AE', pressedShare), ...shareValues(direct, 'AE', downShare)];
    working.step(`${id} up`, 'R', 'sum(T · AE) + sum(LC · AE)', values, ifKnown(held, show), GUIDE);
  }
  const check = judgeHeld(about, asked, held, show);
  if (check.verdict !== 'fail' || relying.some(({ verdict }) => verdict === 'fail')) return check;
  return undeterminedCheck(
    about,
    relying.flatMap((each) => (each.verdict === 'undetermined' ? each.missing : [])),
  );
}

/** The clamp that tie-downs over the load must give together: P = max(W · (a / μ − 1), 0.2 · W). */
function showClamp({ article, context }: Restraint, mu: number, headings: readonly Heading[]): void {
  const { working, units } = context;
  const weight = amountOf([{ quantity: article.mass }], forceUnitOf(units));
  const a = Math.max(...headings.map(accelerationOf));
  const { c } = accelerations.rows.upward;
  working.step(
    article.article.id,
    'P',
    'max(W · (a / μ − 1), c · W)',
    { a, μ: mu, c, W: weight },
    { value: weight.value * Math.max(a / mu - 1, c), unit: weight.unit },
    GUIDE,
  );
}

const BLOCKED: Note = /* @__PURE__ */ note('BLOCKED_FORWARD');
const FRICTION_NOT_RELIED_ON: Note = /* @__PURE__ */ note('FRICTION_NOT_RELIED_ON');
