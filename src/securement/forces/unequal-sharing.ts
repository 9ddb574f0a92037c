import { type Note, note } from '../../working/note.js';
import type { ArticleLayout, TieDownLayout } from '../layout.js';
import type { TieDown } from '../plan.js';
import { HEADINGS, type Heading, holdingBack } from './directions.js';

/** Beyond this ratio of stiffness the stiffer tie-down takes most of the load before the other one helps. */
const UNEQUAL = 2;

/** What must be said of the tie-downs of an article, heading by heading. */
export const sharingCautions = (layout: ArticleLayout): readonly Note[] =>
  HEADINGS.flatMap((heading) => cautionsIn(layout, heading));

/**
 * What must be said of tie-downs that hold the load back in one heading and do not share alike: stiffnesses apart by
 * more than 2 to 1, where they are given, and chain beside webbing. Stiffness along the heading: E·A / L · (X / L) for
 * a run of length L that reaches X along it.
 */
function cautionsIn({ article, tieDowns }: ArticleLayout, heading: Heading): readonly Note[] {
  const holding = tieDowns.filter(
    ({ tieDown, runs }) => tieDown.path !== 'over-other-side' && runs.some((run) => holdingBack(run, heading) > 0),
  );
  const said = { article: article.id, heading };
  const cautions: Note[] = [];
  const stiffness = holding.flatMap((layout) => stiffnessOf(layout, heading));
  if (Math.max(...stiffness) > UNEQUAL * Math.min(...stiffness)) cautions.push(note('UNEQUAL_STIFFNESS', said));
  const has = (kind: string) => holding.some(({ tieDown }) => holdsPart(tieDown, kind));
  if (has('chain') && has('webbing')) cautions.push(note('CHAIN_AND_WEBBING', said));
  return cautions;
}

const stiffnessOf = ({ runs, axialStiffness }: TieDownLayout, heading: Heading): number[] =>
  axialStiffness === undefined
    ? []
    : runs.map((run) => (axialStiffness / run.length) * holdingBack(run, heading)).filter((along) => along > 0);

const holdsPart = ({ parts }: TieDown, kind: string): boolean => parts?.some((part) => part.kind === kind) === true;
