import { checkObject } from '../input-checks.js';
import type { LiftCheck } from '../lifting/check-lift.js';
import type { SlingTensions } from '../lifting/sling-tensions.js';
import type { Vec3 } from '../statics/vector.js';
import { type DrawnLift, type LiftScene, type LiftSceneLeg, readLift } from './lift-scene.js';
import { PAGE, type Piece, paragraph, ROW, stack } from './paper.js';
import { drawScaleBar } from './scale-bar.js';
import { boxOf } from './scene.js';
import { type DrawingOptions, readOptions, standalone } from './standalone.js';
import { element, pointList } from './svg.js';
import {
  centerOfGravitySign,
  endSign,
  INK,
  type LineStyle,
  PLAIN_LINE,
  type Spot,
  strokeOf,
  styleOfShare,
} from './symbols.js';
import { type Frame, frameOf, heightOf, project, type View, type ViewName } from './view.js';
import { drawLabels, type LabelBand, placeBand } from './view-labels.js';

/**
 * A lift as a drawing: how the load hangs at rest, from the left and from above, to one scale: the hook, every leg with
 * its tension, the plumb line through hook and center of gravity, and the outline of the load, turned as it hangs. With a
 * result of `checkLift` it shows the verdict, and each leg as thick as its share of what one leg may carry.
 *
 * It returns a standalone SVG without script, style sheet or reference, as {@link drawSecurement} does, on its own white
 * paper; widths, dashes and printed figures say what colors say. The same input gives the same text.
 *
 * @param lift `{ load: { mass, centerOfGravity, outline? }, legs: [{ id, at, length }], hook? }`, as for `slingTensions`
 * @param result what `slingTensions` or `checkLift` returned for this lift, or its JSON read back; without it the tensions
 * are told first
 * @param options.units `'us'` or `'si'` for the scale bar; omitted: the system of the result
 * @param options.id a letter, then letters, digits, `-` or `_`, at most 64
 * @throws RiggingError `MISSING_FIELD` for a lift without legs or a result that lost a part; `UNKNOWN_REFERENCE` for a
 * result of other legs; `UNKNOWN_VALUE`, `IMPOSSIBLE_GEOMETRY` for a point more than 1000 m away; without a result what
 * `slingTensions` throws
 * @validity it shows what the lift and the result hold; it does not see whether a leg passes through the load
 * @source none of its own
 * @example
 * const lift = {
 *   load: { mass: '6000 lb', centerOfGravity: ['0 ft', '0 ft', '-1 ft'] },
 *   legs: [{ id: 'near', at: ['-2 ft', '0 ft', '0 ft'] }, { id: 'far', at: ['6 ft', '0 ft', '0 ft'] }],
 *   hook: ['0 ft', '0 ft', '6 ft'],
 * } as const;
 * /<title [^>]*>(.*?)<\/title>/.exec(drawLift(lift, slingTensions(lift)))?.[1]
 * // => 'Lift: 6000 lb'
 */
export function drawLift(
  lift: DrawnLift,
  result?: SlingTensions | LiftCheck | null,
  options: DrawingOptions = {},
): string {
  checkObject(lift, '', 'a lift { load, legs }');
  const { units, id } = readOptions(options);
  const scene = readLift(lift, result, units);
  const rows = scene.legs.map(({ name, says }) => `${name}: ${says}`);
  const description = [VIEWS, ...rows.map((row) => `${row}.`), ...scene.notes].join(' ');
  return standalone('lift', { title: `Lift: ${scene.heading}`, description, page: drawPage(scene, rows), id });
}

/** From the edge of the page to the views: room for signs. */
const INSET = 18;

/** The page from top to bottom: verdict, view from the left, view from above, scale, legs, notes. */
function drawPage(scene: LiftScene, rows: readonly string[]): Piece {
  const { hook, legs, corners, notes, heading } = scene;
  const extent = boxOf([ORIGIN, ...(hook === undefined ? [] : [hook]), ...corners, ...legs.map(({ pick }) => pick)]);
  const frame = frameOf(extent, INSET, PAGE.width - 2 * INSET);
  const labels = legs.map(({ name, tension, pick }, index) => ({
    text: tension === undefined ? name : `${name} ${tension}`,
    number: `(${index + 1})`,
    point: pick,
  }));
  const isRight = ({ point }: { readonly point: Vec3 }) => point[1] < 0;
  const below = placeBand(labels, 'left', frame);
  const above = placeBand(labels.filter(isRight), 'above', frame);
  const under = placeBand(
    labels.filter((label) => !isRight(label)),
    'above',
    frame,
  );
  const numbered = [below, above, under].some((band) => band.numbered);
  const { markup, bottom } = stack(PAGE.margin - 4, [
    (top) => paragraph(heading, top, true),
    (top) => drawView('left', scene, frame, NO_LABELS, below, top + 10),
    (top) => drawView('above', scene, frame, above, under, top + 12),
    (top) =>
      drawScaleBar(
        frame.scale,
        scene.units,
        hook === undefined ? 'both views' : 'both views; ring: hook; dash and dot: plumb',
        top + 10,
      ),
    ...rows.map(
      (row, index) => (top: number) =>
        drawRow(numbered ? `(${index + 1}) ${row}` : row, styleOf(legs[index]!), top + 2),
    ),
    ...[...notes, VIEWS].map((text) => (top: number) => paragraph(text, top + 2)),
  ]);
  return { markup, bottom: bottom + PAGE.margin - 4 };
}

const VIEWS = 'From the left and from above, to one scale, front at the left.';
const ORIGIN: Vec3 = [0, 0, 0];
const NO_LABELS: LabelBand = { labels: [], height: 0, numbered: false };
const PLUMB: LineStyle = { color: INK, width: 0.9, dash: '6 3 1 3' };
const OUTLINE: LineStyle = { color: INK, width: 1.25 };

/** As thick as its share of one leg's limit; dots where it hangs slack. */
function styleOf({ share, slack }: LiftSceneLeg): LineStyle {
  if (slack) return styleOfShare(0);
  return share === undefined ? PLAIN_LINE : styleOfShare(share);
}

function drawView(
  name: ViewName,
  scene: LiftScene,
  frame: Frame,
  upper: LabelBand,
  lower: LabelBand,
  top: number,
): Piece {
  const view: View = { name, frame, top: top + upper.height };
  const bottom = view.top + heightOf(frame, name);
  const { hook, legs, corners } = scene;
  const at = (point: Vec3) => project(view, point);
  const box =
    corners.length === 0
      ? ''
      : element('polygon', { 'data-load': '', points: pointList(hullOf(corners.map(at))), ...strokeOf(OUTLINE) });
  const plumb = hook === undefined ? '' : line(at(hook), at(ORIGIN), PLUMB, {});
  const drawn =
    hook === undefined ? [] : legs.map((leg) => line(at(hook), at(leg.pick), styleOf(leg), { 'data-leg': leg.name }));
  const signs = [
    ...legs.map(({ pick }) => endSign(at(pick), false)),
    ...(hook === undefined ? [] : [hookSign(at(hook))]),
    centerOfGravitySign(at(ORIGIN)),
  ];
  const said = drawLabels(upper, view, view.top - 4, -1) + drawLabels(lower, view, bottom + 6, 1);
  const markup = element('g', { 'data-view': name }, [said, box, plumb, ...drawn, ...signs].join(''));
  return { markup, bottom: bottom + 6 + lower.height };
}

function line([x1, y1]: Spot, [x2, y2]: Spot, style: LineStyle, more: Readonly<Record<string, string>>): string {
  return element('line', { ...more, x1, y1, x2, y2, ...strokeOf(style) });
}

/** A ring: where the legs meet. */
function hookSign([x, y]: Spot): string {
  return element('circle', { 'data-hook': '', cx: x, cy: y, r: 4.5, fill: 'none', stroke: INK, 'stroke-width': 2 });
}

/** The outline of points in a plane, one after the other (monotone chain). */
function hullOf(points: readonly Spot[]): Spot[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const turn = (a: Spot, b: Spot, c: Spot) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const half = (list: readonly Spot[]) => {
    const chain: Spot[] = [];
    for (const point of list) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** One leg in words, behind a piece of its line. */
function drawRow(text: string, style: LineStyle, top: number): Piece {
  const y = top + ROW / 2;
  const sample = line([PAGE.margin, y], [PAGE.margin + 28, y], style, {});
  const { markup, bottom } = paragraph(text, top, false, PAGE.margin + 36);
  return { markup: sample + markup, bottom };
}
