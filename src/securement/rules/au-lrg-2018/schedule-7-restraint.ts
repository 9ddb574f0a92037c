import type { ExactTerm } from '../../../quantities/exact.js';
import { formatNumber } from '../../../quantities/format.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { auLrg2018Accelerations as accelerations } from '../../../tables/generated/au-lrg-2018-accelerations.js';
import { type Check, notApplicableCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { HEADINGS, type Heading } from '../../forces.js';
import {
  amountOf,
  type Held,
  heldBack,
  heldDown,
  judgeHeld,
  multiplied,
  pressedDown,
  type RatedLayout,
  type SumUnit,
  together,
} from '../../held.js';
import type { ArticleLayout } from '../../layout.js';
import { aboutRule, citeGuide, GUIDE, SCHEDULE_7 } from './cite.js';
import { type Friction, frictionOf } from './friction.js';

/** The acceleration of a heading, in g. */
const accelerationOf = (heading: Heading): number =>
  heading === 'forward' || heading === 'rearward' ? accelerations.rows[heading].c : accelerations.rows.sideways.c;

/** What an article is held by, and what the steps are shown in. */
interface Restraint {
  readonly article: ArticleLayout;
  readonly direct: readonly RatedLayout[];
  readonly over: readonly RatedLayout[];
  readonly unit: SumUnit;
  readonly working: Working;
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
  const { article, direct, over, working } = restraint;
  if (working.shown) {
    working.cite(accelerations.source);
    if (over.length > 0) citeGuide(working, 'tie-down restraint: clamp and pretension', 'memory');
    if (direct.length > 0) citeGuide(working, 'angle effect; direct restraint', 'read', 'read in a page quoting it');
    if (direct.length > 0 && over.length > 0)
      citeGuide(working, 'both together', 'interpretation', 'what each holds is added up');
  }
  const friction = frictionOf(article, working);
  const blocked = article.article.blockedForward === true;
  const headings = blocked ? HEADINGS.filter((heading) => heading !== 'forward') : HEADINGS;
  const found = headings.map((heading) => judgeHeading(restraint, heading, friction));
  const relying = found.filter(({ byFriction }) => byFriction);
  if (working.shown && relying.length > 0 && 'mu' in friction && direct.length === 0) {
    showClamp(restraint, friction.mu, headings);
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

const aboutHeading = (heading: Heading, subject: string) =>
  aboutRule(heading, `Held ${heading === 'left' || heading === 'right' ? `to the ${heading}` : heading}`, subject);

/** A heading judged: by the strength of direct tie-downs alone, and with friction where that is not enough. */
interface FoundHeading {
  readonly strength: Check;
  readonly check: Check;
  readonly byFriction: boolean;
}

function judgeHeading(
  { article, direct, over, unit, working }: Restraint,
  heading: Heading,
  friction: Friction,
): FoundHeading {
  const { mass } = article;
  const a = accelerationOf(heading);
  const about = aboutHeading(heading, article.article.id);
  const subject = `${article.article.id} ${heading}`;
  const back = heldBack(direct, heading);
  const asked: ExactTerm[] = [{ quantity: mass, times: [a] }];
  const strength = judgeHeld(about, asked, back, unit);
  const byFriction = strength.verdict !== 'pass' && !('mu' in friction && friction.mu === 0);
  if (working.shown) {
    showDemand(working, subject, asked, a, ratedLoadIn(mass, unit));
    if (direct.length > 0) showHeld(working, subject, 'R', 'sum(LC · AE)', back, unit);
  }
  if (!byFriction) return { strength, check: strength, byFriction };
  if ('missing' in friction) {
    return { strength, check: undeterminedCheck(about, [friction.missing, ...back.missing]), byFriction };
  }
  const { mu } = friction;
  const clamp = multiplied(pressedDown(over), mu);
  const held = together(back, clamp);
  // what the weight alone holds leaves the demand; never less than nothing is asked
  const rest: ExactTerm[] = mu >= a ? [] : [...asked, { quantity: mass, times: [-mu] }];
  if (working.shown) {
    working.step(
      subject,
      'F after friction',
      mu >= a ? '0, because μ ≥ a' : '(a − μ) · W',
      { a, μ: mu, W: ratedLoadIn(mass, unit) },
      amountOf(rest, unit),
      GUIDE,
    );
    if (over.length > 0) showHeld(working, subject, 'friction of the clamp', 'μ · sum(T · AE)', clamp, unit);
  }
  return { strength, check: judgeHeld(about, rest, held, unit), byFriction };
}

/**
 * 0.2 W upward: by the clamp of tie-downs over the load, and by the upright parts of direct ones at their capacity.
 * While a missing fact might make strength alone enough, it can be met but not broken.
 */
function judgeUpward({ article, direct, over, unit, working }: Restraint, relying: readonly Check[]): Check {
  const { mass } = article;
  const about = aboutRule('up', 'Held down, because friction is relied on', article.article.id);
  if (relying.length === 0) return notApplicableCheck(about, FRICTION_NOT_RELIED_ON);
  const subject = `${article.article.id} up`;
  const a = accelerations.rows.upward.c;
  const asked: ExactTerm[] = [{ quantity: mass, times: [a] }];
  const held = together(heldDown(direct), pressedDown(over));
  if (working.shown) {
    citeGuide(
      working,
      'upward restraint',
      'interpretation',
      'by the clamp of the pretension and by direct tie-downs at their capacity',
    );
    showDemand(working, subject, asked, a, ratedLoadIn(mass, unit));
    showHeld(working, subject, 'R', 'sum(T · AE) + sum(LC · AE)', held, unit);
  }
  const check = judgeHeld(about, asked, held, unit);
  if (check.verdict !== 'fail' || relying.some(({ verdict }) => verdict === 'fail')) return check;
  return undeterminedCheck(
    about,
    relying.flatMap((each) => (each.verdict === 'undetermined' ? each.missing : [])),
  );
}

function showDemand(
  working: Working,
  subject: string,
  asked: readonly ExactTerm[],
  a: number,
  weight: QuantityLike<SumUnit>,
): void {
  working.step(subject, 'F', 'a · W', { a, W: weight }, amountOf(asked, weight.unit), SCHEDULE_7);
}

/** The clamp that tie-downs over the load must give together: P = max(W · (a / μ − 1), 0.2 · W). */
function showClamp({ article, unit, working }: Restraint, mu: number, headings: readonly Heading[]): void {
  const weight = ratedLoadIn(article.mass, unit).value;
  const a = Math.max(...headings.map(accelerationOf));
  const { c } = accelerations.rows.upward;
  working.step(
    article.article.id,
    'P',
    'max(W · (a / μ − 1), c · W)',
    { a, μ: mu, c, W: { value: weight, unit } },
    { value: weight * Math.max(a / mu - 1, c), unit },
    GUIDE,
  );
}

function showHeld(
  working: Working,
  subject: string,
  symbol: string,
  expression: string,
  held: Held,
  unit: SumUnit,
): void {
  const values = held.shares.map(
    ([id, share, load]) => [`${id}, AE ${share === null ? 'not known' : formatNumber(share)}`, load] as const,
  );
  const result = held.missing.length === 0 ? amountOf(held.known, unit) : null;
  working.step(subject, symbol, expression, values, result, GUIDE);
}

const BLOCKED: Note = /* @__PURE__ */ note([
  'BLOCKED_FORWARD',
  'Stopped from moving forward by what stands before it; how strong that is was not looked at.',
]);
const FRICTION_NOT_RELIED_ON: Note = /* @__PURE__ */ note([
  'FRICTION_NOT_RELIED_ON',
  'Friction is not relied on; where limited vertical displacement is, this part of the schedule binds all the same.',
]);
