import { fail, within } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import type { UnitSystem } from '../quantities/units.js';
import type { SecurementCheck } from '../securement/check-securement.js';
import type { Plan } from '../securement/plan.js';
import type { Restraint } from '../securement/restraint/answer.js';
import { drawPage } from './draw-page.js';
import { type Outcome, VERDICTS } from './outcome.js';
import { outcomeOfCheck } from './outcome-of-check.js';
import { outcomeOfRestraint } from './outcome-of-restraint.js';
import { PAGE } from './paper.js';
import { readScene, type Scene } from './scene.js';
import { contentName, element, escaped, lineOf, TEXT_SIZE } from './svg.js';
import { INK, PAPER } from './symbols.js';
import { describe, wordsOf } from './words.js';

/** How a drawing is made. */
export interface DrawingOptions {
  /** The system of the scale bar; omitted: the one that the points of the plan share. */
  readonly units?: UnitSystem;
  /** The start of the ids in the drawing; omitted: made from its content. Give one to draw the same twice on one page. */
  readonly id?: string;
}

/**
 * A plan as a drawing: from above and from the left, to one scale, with the deck, the outline of each article, its
 * center of gravity, its contacts and every tie-down. With a result it also shows the verdict in words and, of
 * `solveRestraint`, the direction that decides as an arrow with its factor, and in each tie-down the tension as a share
 * of its capacity; of `checkSecurement`, the rating and the weakest part of each tie-down.
 *
 * It returns a standalone SVG without script, style sheet or reference: write it to a file or put it into a page. It
 * has no size of its own and fills the width it is given, from 360 px of a telephone on. It brings its own white paper,
 * so it reads the same on a light page, a dark page and in print; dashes, widths and printed figures say what colors
 * say. The ids and texts of the caller cannot break out of their place. The same input gives the same text.
 *
 * A tie-down without points, or an article without a place, is listed in words below the views. An article without
 * `outline` is drawn dashed: as long as its length, about its contacts, as high as its center of gravity.
 *
 * @param plan the plan, with as much of its geometry as there is: `vehicle.deck`, and the `outline`, `contacts` and
 * `centerOfGravity` of articles, the `anchor` and `attachment` of tie-downs; x forward, y left, z up, lengths
 * @param result what `solveRestraint` or `checkSecurement` returned for this plan, or its JSON read back
 * @param options.units `'us'` or `'si'` for the scale bar; omitted: the system that all points share
 * @param options.id a letter, then letters, digits, `-` or `_`, at most 64
 * @throws RiggingError `MISSING_FIELD` when nothing has a place, or for a result that lost a part; `UNKNOWN_REFERENCE`
 * for a result that names what the plan does not have; `UNKNOWN_VALUE` for something that is no result, or an `id` or
 * `units` that cannot be; `UNITS_REQUIRED` when the points mix both systems; `IMPOSSIBLE_GEOMETRY` for a point more than
 * 1000 m away; and what reading a plan throws
 * @validity it shows what the plan and the result hold and computes nothing but places; it does not see whether a
 * tie-down passes through something
 * @source none of its own
 * @example
 * const svg = drawSecurement({
 *   vehicle: { units: [{ id: 'trailer', kind: 'towed' }], deck: { length: '16 ft', width: '80 in' } },
 *   articles: [
 *     {
 *       id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft',
 *       outline: [['-3 ft', '-30 in', '0 in'], ['-13 ft', '30 in', '70 in']],
 *     },
 *   ],
 *   tieDowns: [
 *     {
 *       id: 'front left', holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '4700 lb' },
 *       anchor: ['-1 ft', '40 in', '0 in'], attachment: ['-4 ft', '20 in', '20 in'],
 *     },
 *   ],
 * });
 * /<title [^>]*>(.*?)<\/title>/.exec(svg)?.[1]
 * // => 'Securement plan: tractor'
 */
export function drawSecurement(
  plan: Plan,
  result?: Restraint | SecurementCheck | null,
  options: DrawingOptions = {},
): string {
  checkObject(plan, '', 'a plan { articles, tieDowns }');
  const { units, id } = options ?? {};
  if (id !== undefined && !(typeof id === 'string' && /^[A-Za-z][\w-]{0,63}$/.test(id))) {
    fail(
      'UNKNOWN_VALUE',
      'id',
      'a letter, then at most 63 letters, digits, - or _',
      id,
      'Leave it out, or shorten it.',
    );
  }
  const scene = readScene(plan, units);
  const outcome = result === undefined || result === null ? undefined : readOutcome(result, scene);
  const words = wordsOf(scene, outcome);
  const { markup, bottom } = drawPage(scene, outcome, words);
  const title = lineOf(`Securement plan: ${words.heading}`, 300);
  const description = lineOf(describe(words), 3000);
  const name = id ?? contentName('securement', title + description + markup);
  const [width, height] = [PAGE.width, Math.ceil(bottom)];
  const edge = { rx: 4, fill: PAPER, stroke: '#8a8a8a' };
  const paper = element('rect', { x: 0.5, y: 0.5, width: width - 1, height: height - 1, ...edge });
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${name}-title ${name}-desc`,
    },
    element('title', { id: `${name}-title` }, escaped(title)) +
      element('desc', { id: `${name}-desc` }, escaped(description)) +
      // one step in, so that what a page says of every svg does not reach the letters
      element('g', { 'font-family': 'sans-serif', 'font-size': TEXT_SIZE, fill: INK }, paper + markup),
  );
}

function readOutcome(result: Restraint | SecurementCheck, scene: Scene): Outcome {
  const ids = { articles: scene.articles.map(({ id }) => id), tieDowns: scene.tieDowns.map(({ id }) => id) };
  return within('result', () => {
    checkObject(result, '', 'a result of solveRestraint or checkSecurement');
    checkOneOf(result.result, ['solveRestraint', 'checkSecurement'], 'result');
    checkOneOf(result.verdict, VERDICTS, 'verdict');
    return result.result === 'solveRestraint' ? outcomeOfRestraint(result, ids) : outcomeOfCheck(result, ids);
  });
}
