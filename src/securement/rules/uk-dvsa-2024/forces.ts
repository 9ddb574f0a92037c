import type { ExactTerm } from '../../../quantities/exact.js';
import { formatNumber } from '../../../quantities/format.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { ukDvsa2024Accelerations as accelerations } from '../../../tables/generated/uk-dvsa-2024-accelerations.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { HEADINGS, type Heading } from '../../forces.js';
import { amountOf, heldBack, judgeHeld, type RatedLayout, type SumUnit } from '../../held.js';
import type { ArticleLayout } from '../../layout.js';
import { aboutGuidance, citeGuidance, GUIDANCE } from './cite.js';

/**
 * The forces a load must be held against: all of its weight forward, half of it rearward and to each side.
 *
 * sum(LC · share) ≥ a · W over the direct tie-downs, LC the maker's rating and the share the part of the pull that
 * holds back; friction adds nothing. Both are our reading. The guidance, as far as read, gives no figure for what a
 * tie-down over the load holds, nor does a plan say what blocking does: where one is needed the answer stays open.
 */
export function judgeForces(
  { article, mass }: ArticleLayout,
  tieDowns: readonly RatedLayout[],
  unit: SumUnit,
  working: Working,
): Check[] {
  const { id } = article;
  if (working.shown) {
    working.cite(accelerations.source);
    citeGuidance(working, 'friction alone', 'memory', 'not to be relied on');
    citeGuidance(working, "the maker's rating", 'interpretation', 'lashing capacity, by its share in each direction');
  }
  const isOver = ({ layout }: RatedLayout) => layout.tieDown.path === 'over-other-side';
  const direct = tieDowns.filter((each) => !isOver(each));
  const over = tieDowns.filter((each) => isOver(each) && each.rating.capacity?.value !== 0);
  return HEADINGS.map((heading) => {
    const sideways = heading === 'left' || heading === 'right';
    const about = aboutGuidance(heading, `Held ${sideways ? `to the ${heading}` : heading}`, id);
    const a = accelerationOf(heading);
    const asked: ExactTerm[] = [{ quantity: mass, times: [a] }];
    const held = heldBack(direct, heading);
    if (working.shown) {
      const subject = `${id} ${heading}`;
      working.step(subject, 'F', 'a · W', { a, W: ratedLoadIn(mass, unit) }, amountOf(asked, unit), GUIDANCE);
      working.step(
        subject,
        'R',
        'sum(LC · share)',
        held.shares.map(
          ([name, share, limit]) =>
            [`${name}, share ${share === null ? 'not known' : formatNumber(share)}`, limit] as const,
        ),
        held.missing.length === 0 ? amountOf(held.known, unit) : null,
        GUIDANCE,
      );
    }
    const check = judgeHeld(about, asked, held, unit);
    const others = [
      ...(heading === 'forward' && article.blockedForward === true ? [note(BLOCKING)] : []),
      ...(over.length === 0 ? [] : [note(OVER_THE_LOAD, { tieDowns: namesOf(over) })]),
    ];
    const settled = check.verdict === 'pass' || others.length === 0;
    return settled ? check : undeterminedCheck(about, [...others, ...held.missing]);
  });
}

/** The share of the weight in a heading. */
const accelerationOf = (heading: Heading): number =>
  heading === 'forward' || heading === 'rearward' ? accelerations.rows[heading].c : accelerations.rows.sideways.c;

const namesOf = (tieDowns: readonly RatedLayout[]): string =>
  tieDowns.map(({ layout }) => layout.tieDown.id).join(', ');

const BLOCKING: Words = [
  'BLOCKING_NOT_RATED',
  'What the headboard or whatever blocks it holds: a plan does not state it.',
];
const OVER_THE_LOAD: Words = [
  'OVER_THE_LOAD',
  'What {tieDowns} over the load add: the guidance gives no figure, and friction alone is not to be relied on.',
];
