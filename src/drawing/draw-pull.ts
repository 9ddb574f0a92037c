import { fail, within } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import type { PlannedPull, PullPlan } from '../pulling/plan-pull.js';
import { PAGE, paragraph, stack } from './paper.js';
import { outcomeOfPull, unitsOfPull } from './pull/outcome.js';
import { placesOf } from './pull/places.js';
import { readPullScene } from './pull/scene.js';
import { drawDanger, drawTractor, drawWhole } from './pull/views.js';
import { describePull, pullWordsOf } from './pull/words.js';
import { type DrawingOptions, readOptions, standalone } from './standalone.js';

/**
 * A pull as a drawing: from the left, the ground with its slope, the tractor, the chain at its angle and the load a
 * standoff away, to scale; the tractor again, larger, with its center of gravity and the hitch at its height; and from
 * above the zone where nobody stands. With a result of `planPull` it has the verdict in words with what decides it, and
 * the forces as arrows with their figures: weight, pull, what each axle carries, and what the load resists with.
 *
 * What the plan gives no size for is drawn dashed and said so: the body of the tractor, the load (a box on wheels, or a
 * log), the rear wheels without `rearAxleHeight`, the center of gravity without its height. The length of an arrow means
 * nothing. The load stands where the chain, at its angle, meets it.
 *
 * It returns a standalone SVG as {@link drawSecurement} does: without script, style sheet, reference or size of its own,
 * on white paper, readable in black and white from 360 px on, with title and description. The ids of the caller cannot
 * break out of their place. The same input gives the same text.
 *
 * @param plan the plan of `planPull`; only `tractor`, `hitch`, `load`, `chain`, `ends`, `standoff`, `slope`, `chainAngle`
 * and `rearAxleHeight` are drawn
 * @param result what `planPull` returned for this plan, or its JSON read back
 * @param options.units `'us'` or `'si'` for what the drawing measures itself; omitted: those of the result, or the system
 * that the plan shares
 * @param options.id a letter, then letters, digits, `-` or `_`, at most 64
 * @throws RiggingError `UNKNOWN_REFERENCE` for a result of another plan; `MISSING_FIELD` for a result that lost a part;
 * `UNKNOWN_VALUE` for something that is no result, or an `id` or `units` that cannot be; `UNITS_REQUIRED` where the plan
 * mixes both systems; `IMPOSSIBLE_GEOMETRY` for more than 1000 m; and what reading a plan throws
 * @validity it shows what plan and result hold and computes nothing but places; a chain that sags is drawn straight, and a
 * bridle as one chain
 * @source none of its own
 * @example
 * const plan = {
 *   ratings: us49cfr393_108_2024,
 *   tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
 *   hitch: { kind: 'drawbar', height: '15 in' },
 *   traction: { coefficient: 0.55, kind: 'net' },
 *   rolling: { coefficient: 0.05 },
 *   load: { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.15 } },
 *   rigging: [
 *     { id: 'drawbar', kind: 'anchor', at: 'vehicle', markedWll: '4000 lb' },
 *     { id: 'chain', kind: 'chain', size: '1/4', grade: 70 },
 *     { id: 'tow hook', kind: 'anchor', at: 'cargo', markedWll: '5000 lb' },
 *   ],
 *   chain: { pitch: '0.88 in', length: '20 ft' },
 *   ends: [{ at: 'hook' }, { at: 'hook' }],
 *   standoff: '18 ft',
 *   steeringReserve: 0.2,
 *   takeUp: 'slow',
 * } as const;
 * const svg = drawPull(plan, planPull(plan));
 * /<title [^>]*>(.*?)<\/title>/.exec(svg)?.[1]
 * // => 'Pull plan: Passes what was checked'
 */
export function drawPull(plan: PullPlan, result?: PlannedPull | null, options: DrawingOptions = {}): string {
  const { units, id } = readOptions(options);
  const found = result ?? undefined;
  if (found !== undefined) checkIsPull(found);
  const asked = units ?? (found && within('result', () => unitsOfPull(found)));
  const scene = readPullScene(plan, asked);
  const outcome = found && within('result', () => outcomeOfPull(found));
  if (found !== undefined) {
    const other = within('result.inputs', () => readPullScene(found.inputs as PullPlan, asked));
    if (JSON.stringify(other) !== JSON.stringify(scene)) {
      fail(
        'UNKNOWN_REFERENCE',
        'result.inputs',
        'the tractor, hitch, load and chain of this plan',
        'others',
        'Give the result that was made from this plan.',
      );
    }
  }
  const places = placesOf(scene);
  const words = pullWordsOf(scene, places, outcome);
  const content = { scene, places, words, outcome };
  const { markup, bottom } = stack(PAGE.margin - 4, [
    (top) => paragraph(words.heading, top, true),
    ...words.because.map((text) => (top: number) => paragraph(text, top)),
    (top) => drawWhole(content, top + 8),
    (top) => drawTractor(content, top + 10),
    (top) => drawDanger(content, top + 10),
    ...[...words.figures, ...words.notes].map((text) => (top: number) => paragraph(text, top + 3)),
  ]);
  return standalone('pull', {
    title: `Pull plan: ${words.heading}`,
    description: describePull(words),
    page: { markup, bottom: bottom + PAGE.margin - 4 },
    id,
  });
}

function checkIsPull(result: PlannedPull): void {
  within('result', () => {
    checkObject(result, '', 'a result of planPull');
    checkOneOf(result.result, ['planPull'], 'result');
  });
}
