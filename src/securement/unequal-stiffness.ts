import { type Note, note } from '../working/note.js';
import { HEADINGS, type Heading, holdingBack } from './forces.js';
import type { TieDownLayout } from './layout.js';

/** Beyond this ratio of stiffness the library says that tie-downs will not share the load: its own rule, no clause. */
const MOST_RATIO = 2;

/**
 * A caution for each heading in which direct tie-downs take the load unequally. A small shift of the load stretches a
 * run by its share of it, so its stiffness is E · A / length · cos α · cos β; those not stated are not compared.
 */
export function stiffnessCautions(direct: readonly TieDownLayout[]): Note[] {
  return HEADINGS.flatMap((heading) => {
    const known = direct.flatMap((tieDown) => stiffnessesOf(tieDown, heading));
    return Math.max(...known) > MOST_RATIO * Math.min(...known) ? [note(SHARE_UNEQUALLY, { heading })] : [];
  });
}

function stiffnessesOf({ runs, axialStiffness }: TieDownLayout, heading: Heading): number[] {
  if (axialStiffness === undefined) return [];
  return runs.flatMap((run) => {
    const share = holdingBack(run, heading);
    return share > 0 ? [(axialStiffness / run.length) * share] : [];
  });
}

const SHARE_UNEQUALLY = {
  code: 'SHARE_UNEQUALLY',
  text: 'Against movement {heading} the stiffest tie-down takes more than twice the load of the softest: the sum may not be reached.',
};
