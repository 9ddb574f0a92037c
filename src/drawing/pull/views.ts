import type { Vec3 } from '../../statics/vector.js';
import { PAGE, type Piece, ROW } from '../paper.js';
import { within } from '../push-arrow.js';
import { drawScaleBar } from '../scale-bar.js';
import { boxOf } from '../scene.js';
import { element, pointList, TEXT_SIZE, textLine, textWidth } from '../svg.js';
import { arrow, centerOfGravitySign, endSign, INK, type Spot, textOnPaper } from '../symbols.js';
import { type Frame, frameOf, heightOf, project, type View, type ViewName } from '../view.js';
import { drawLabels, placeBand, type ViewLabel } from '../view-labels.js';
import type { PullOutcome } from './outcome.js';
import type { PullPlaces, Shape } from './places.js';
import type { PullScene } from './scene.js';
import type { PullWords } from './words.js';

export interface PullContent {
  readonly scene: PullScene;
  readonly places: PullPlaces;
  readonly words: PullWords;
  readonly outcome: PullOutcome | undefined;
}

const INSET = 18;
const PAD = 8;
/** Of the arrows. */
const LENGTH = 40;
/** No arrow is nearer to the edge of the page. */
const EDGE = 7;

/** An arrow that begins or ends at a point. */
interface Force {
  readonly name: string;
  readonly at: Vec3;
  /** A unit step in the axes of the scene. */
  readonly way: Vec3;
  readonly ends: boolean;
}

/** The whole pull: ground, tractor, chain and load, and how far apart they are. */
export function drawWhole({ scene, places, words, outcome }: PullContent, top: number): Piece {
  const { hitch, attachment, load, tractor, ground, away, loadLength } = places;
  const frame = frameOf(boxOf([...ground, ...pointsOf([...load, ...tractor])]), INSET, PAGE.width - 2 * INSET);
  const middle = between(hitch, attachment);
  const center = step(attachment, away, loadLength / 2);
  const upper = [
    label(words.hitch, 'hitch', hitch),
    label(words.chain, 'chain', middle),
    label(words.load, 'load', step(center, places.up, 0)),
  ];
  const resists: Force[] =
    outcome?.needed === undefined ? [] : [{ name: 'resistance', at: center, way: away, ends: false }];
  const lower = outcome?.needed === undefined ? [] : [label(`R ${outcome.needed}`, 'R', center)];
  const draw = (view: View): string =>
    [
      ...[...tractor, ...load].map((shape) => drawShape(view, shape)),
      drawGround(view, ground), // over what has sunk into it
      drawChain(view, places),
      drawAngle(view, scene, places),
      ...resists.map((force) => drawForce(view, force)),
      drawGap(view, places, words.gap),
    ].join('');
  const content = { name: 'left', frame, draw, upper, lower, forces: resists, below: GAP_BELOW } as const;
  const title = `The pull from the left, ${words.ground}`;
  return drawPullView('whole', title, content, scene, top);
}

/** The tractor alone, larger, with the forces on it. */
export function drawTractor({ scene, places, words, outcome }: PullContent, top: number): Piece {
  const { hitch, underHitch, frontContact, rearContact, centerOfGravity, up, chain, tractor } = places;
  const ground = groundUnder(places, scene);
  const box = boxOf([...pointsOf(tractor), ...ground, hitch, centerOfGravity]);
  const room = LENGTH + INSET;
  const frame = frameOf(box, scene.hitch.forward ? room : INSET + LENGTH / 2, PAGE.width - room - INSET - LENGTH / 2);
  const { front, rear, pull } = outcome ?? {};
  const weight = { name: 'weight', at: centerOfGravity, way: DOWN, ends: false };
  const forces: Force[] = [
    weight,
    ...(front === undefined || front.isLifted ? [] : [{ name: 'front', at: frontContact, way: up, ends: true }]),
    ...(rear === undefined || rear.isLifted ? [] : [{ name: 'rear', at: rearContact, way: up, ends: true }]),
    ...(pull === undefined ? [] : [{ name: 'pull', at: hitch, way: chain, ends: false }]),
  ];
  const reaction = (symbol: string, found: typeof front, at: Vec3): ViewLabel[] =>
    found === undefined ? [] : [label(found.isLifted ? `${symbol}: lifts` : `${symbol} ${found.text}`, symbol, at)];
  const upper = [label(`W ${words.weight}`, 'W', centerOfGravity)];
  const lower = [
    ...reaction('R front', front, frontContact),
    ...reaction('R rear', rear, rearContact),
    label(pull === undefined ? words.hitch : `P ${pull}, ${words.hitch}`, 'P', underHitch),
  ];
  const draw = (view: View): string =>
    [
      drawGround(view, ground),
      ...tractor.map((shape) => drawShape(view, shape)),
      drawLine('data-hitch-height', [project(view, underHitch), project(view, hitch)], 1.25),
      ...forces.map((force) => drawForce(view, force)),
      centerOfGravitySign(project(view, centerOfGravity)),
      endSign(project(view, hitch), true),
    ].join('');
  const content = { name: 'left', frame, draw, upper, lower, forces, below: 0 } as const;
  const title = outcome === undefined ? 'The tractor' : 'The tractor under this pull';
  return drawPullView('tractor', title, content, scene, top);
}

/** Who must be out of the way: round both ends of the line, from above. */
export function drawDanger({ scene, places, outcome }: PullContent, top: number): Piece {
  if (outcome === undefined) return { markup: '', bottom: top };
  const { meters: radius, text } = outcome.danger;
  const ends: readonly Vec3[] = [places.hitch, places.attachment].map(([x]) => [x, 0, 0]);
  const box = boxOf(ends.flatMap(([x]) => [[x - radius, -radius, 0] as const, [x + radius, radius, 0] as const]));
  const frame = frameOf(box, DANGER_INSET, PAGE.width - 2 * DANGER_INSET);
  const draw = (view: View): string => {
    const spots = ends.map((end) => project(view, end));
    const circles = (name: string, look: object) =>
      spots.map(([cx, cy]) => element('circle', { [name]: '', cx, cy, r: radius * frame.scale, ...look })).join('');
    return (
      circles('data-zone', { fill: '#ececec' }) +
      circles('data-danger', { fill: 'none', stroke: INK, 'stroke-width': 2, 'stroke-dasharray': '8 4' }) +
      drawLine('data-line', spots, 3) +
      endSign(spots[0] as Spot, true) +
      endSign(spots[1] as Spot, false)
    );
  };
  const lower = [label('hitch', 'hitch', ends[0] as Vec3), label('load', 'load', ends[1] as Vec3)];
  const content = { name: 'above', frame, draw, upper: [], lower, forces: [], below: 0 } as const;
  return drawPullView('danger', `Nobody within ${text} of either end`, content, scene, top);
}

const DOWN: Vec3 = [0, 0, -1];
const DANGER_INSET = 60;
/** Under the ground, for the line that measures the gap. */
const GAP_BELOW = 26;

interface ViewParts {
  readonly name: ViewName;
  readonly frame: Frame;
  readonly draw: (view: View) => string;
  readonly upper: readonly ViewLabel[];
  readonly lower: readonly ViewLabel[];
  readonly forces: readonly Force[];
  /** Room to leave under everything. */
  readonly below: number;
}

/** A view with its title, its labels and its scale. */
function drawPullView(id: string, title: string, parts: ViewParts, scene: PullScene, top: number): Piece {
  const { name, frame, draw, forces } = parts;
  const [upper, lower] = [placeBand(parts.upper, name, frame), placeBand(parts.lower, name, frame)];
  const flat: View = { name, frame, top: 0 };
  const heights = [0, heightOf(frame, name), ...forces.flatMap((force) => ends(flat, force).map(([, y]) => y))];
  const [above, below] = [Math.min(...heights), Math.max(...heights)];
  const start = top + ROW + upper.height + PAD;
  const view: View = { name, frame, top: start - above };
  const bottom = view.top + below + parts.below + PAD;
  const markup = [
    textLine(PAGE.width / 2, top + TEXT_SIZE, title, { bold: true, anchor: 'middle' }),
    draw(view),
    drawLabels(upper, view, start - PAD, -1),
    drawLabels(lower, view, bottom, 1),
  ].join('');
  const scale = drawScaleBar(frame.scale, scene.units, 'this view', bottom + lower.height + 4);
  return { markup: element('g', { 'data-view': id }, markup + scale.markup), bottom: scale.bottom };
}

const label = (text: string, number: string, point: Vec3): ViewLabel => ({ text, number, point });

const step = ([x, y, z]: Vec3, [dx, dy, dz]: Vec3, by: number): Vec3 => [x + dx * by, y + dy * by, z + dz * by];

const between = (a: Vec3, b: Vec3): Vec3 => [(a[0] + b[0]) / 2, 0, (a[2] + b[2]) / 2];

/** What a frame must show. */
function pointsOf(shapes: readonly Shape[]): Vec3[] {
  return shapes.flatMap((shape) => {
    if ('points' in shape) return shape.points;
    const { center, radius } = shape;
    return [step(center, [1, 0, 1], radius), step(center, [1, 0, 1], -radius)];
  });
}

function groundUnder({ along, rearContact }: PullPlaces, { tractor, hitch }: PullScene): Vec3[] {
  const L = tractor.wheelbase;
  const beyond = Math.max(0.4 * L, hitch.beyond ?? 0);
  return [
    step(rearContact, along, hitch.forward ? L + beyond : 1.3 * L),
    step(rearContact, along, hitch.forward ? -0.4 * L : -beyond),
  ];
}

/** A thick line, with short strokes under it: a broad line of thin dashes. */
function drawGround(view: View, points: readonly Vec3[]): string {
  const spots = points.map((point) => project(view, point));
  const under = drawLine(
    'data-strokes',
    spots.map(([x, y]) => [x, y + 4]),
    5,
    '1 9',
  );
  return under + drawLine('data-ground', spots, 2);
}

/** Dashed where nobody gave its size. */
function drawShape(view: View, shape: Shape): string {
  const line = {
    fill: '#e9edf1',
    stroke: INK,
    'stroke-width': 1.25,
    'stroke-dasharray': shape.isKnown ? undefined : '4 2.5',
  };
  if ('points' in shape) {
    const points = pointList(shape.points.map((point) => project(view, point)));
    return shape.isOpen
      ? element('polyline', { points, ...line, fill: 'none', 'stroke-width': 2.5 })
      : element('polygon', { points, ...line });
  }
  const [cx, cy] = project(view, shape.center);
  return element('circle', { cx, cy, r: shape.radius * view.frame.scale, ...line });
}

function drawChain(view: View, { hitch, attachment }: PullPlaces): string {
  const chain = drawLine('data-chain', [project(view, hitch), project(view, attachment)], 3, '6 2');
  return chain + endSign(project(view, hitch), true) + endSign(project(view, attachment), false);
}

/** A thin line along the tractor from the hitch, where the chain leaves it at an angle. */
function drawAngle(view: View, { hitch, gap }: PullScene, places: PullPlaces): string {
  if (hitch.below === 0) return '';
  const end = step(places.hitch, places.along, (hitch.forward ? 0.5 : -0.5) * gap.meters);
  return drawLine('data-angle', [project(view, places.hitch), project(view, end)], 0.75, '2 2');
}

/** How far apart, on a line of its own under everything. */
function drawGap(view: View, { hitch, attachment }: PullPlaces, text: string): string {
  const [from, to] = [project(view, hitch), project(view, attachment)];
  const y = view.top + heightOf(view.frame, 'left') + GAP_BELOW / 2 + 2;
  const ticks = [from, to].map((end) => drawLine('data-tick', [end, [end[0], y + 4]], 0.75, '2 2'));
  const bar = drawLine(
    'data-gap',
    [
      [from[0], y],
      [to[0], y],
    ],
    1.25,
  );
  const half = textWidth(text, TEXT_SIZE, true) / 2 + EDGE;
  const middle = within(half, (from[0] + to[0]) / 2, PAGE.width - half);
  return ticks.join('') + bar + textOnPaper(middle, y + 4, text);
}

/** A line by its name. */
function drawLine(name: string, spots: readonly Spot[], width: number, dashes?: string): string {
  return element('polyline', {
    [name]: '',
    points: pointList(spots),
    fill: 'none',
    stroke: INK,
    'stroke-width': width,
    'stroke-dasharray': dashes,
  });
}

/** Where an arrow begins and where it ends, in the picture: moved sideways where it would leave the page. */
function ends(view: View, { at, way, ends }: Force): [Spot, Spot] {
  const [x, y] = project(view, at);
  const [dx, dy] = [-way[0] * LENGTH, -way[2] * LENGTH];
  const [start, tip]: [Spot, Spot] = ends
    ? [
        [x - dx, y - dy],
        [x, y],
      ]
    : [
        [x, y],
        [x + dx, y + dy],
      ];
  const [least, most] = [Math.min(start[0], tip[0]), Math.max(start[0], tip[0])];
  const aside = Math.max(EDGE - least, 0) + Math.min(PAGE.width - EDGE - most, 0);
  return [
    [start[0] + aside, start[1]],
    [tip[0] + aside, tip[1]],
  ];
}

function drawForce(view: View, force: Force): string {
  const [start] = ends(view, force);
  return element('g', { 'data-force': force.name }, arrow(start, [-force.way[0], -force.way[2]], LENGTH));
}
