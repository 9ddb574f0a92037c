import { within } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import type { SecurementCheck } from '../securement/check-securement.js';
import type { Plan } from '../securement/plan.js';
import type { Restraint } from '../securement/restraint/answer.js';
import { drawPage } from './draw-page.js';
import { type Outcome, VERDICTS } from './outcome.js';
import { outcomeOfCheck } from './outcome-of-check.js';
import { outcomeOfRestraint } from './outcome-of-restraint.js';
import { readScene, type Scene } from './scene.js';
import { type DrawingOptions, readOptions, standalone } from './standalone.js';
import { describe, wordsOf } from './words.js';

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
  const { units, id } = readOptions(options);
  const scene = readScene(plan, units);
  const outcome = result === undefined || result === null ? undefined : readOutcome(result, scene);
  const words = wordsOf(scene, outcome);
  return standalone('securement', {
    title: `Securement plan: ${words.heading}`,
    description: describe(words),
    page: drawPage(scene, outcome, words),
    id,
  });
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
