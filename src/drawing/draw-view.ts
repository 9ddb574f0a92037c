import type { Push } from './outcome.js';
import { PAGE, type Piece, ROW } from './paper.js';
import { drawPush, reachOfPush } from './push-arrow.js';
import type { Box, Scene, SceneArticle, SceneTieDown } from './scene.js';
import { element, lineOf, MOST_OF_ID, pointList, TEXT_SIZE, textLine } from './svg.js';
import {
  arrow,
  centerOfGravitySign,
  contactSign,
  endSign,
  frontEdge,
  frontSign,
  INK,
  type LineStyle,
  type Spot,
  strokeOf,
} from './symbols.js';
import { type Frame, heightOf, project, type View, type ViewName } from './view.js';
import { drawLabels, type LabelBands } from './view-labels.js';

export interface ViewContent {
  readonly scene: Scene;
  readonly frame: Frame;
  /** In the order of the tie-downs. */
  readonly lines: readonly LineStyle[];
  readonly push?: Push | undefined;
}

/** Room for signs that reach over the edge of a view. */
const PAD = 9;
const TITLES: Readonly<Record<ViewName, string>> = {
  above: 'From above (left side below)',
  left: 'From the left',
};

/** One view with its title above it and its labels around it. */
export function drawView(
  name: ViewName,
  { scene, frame, lines, push }: ViewContent,
  { upper, lower }: LabelBands,
  top: number,
): Piece {
  const reach = reachOfPush({ name, frame, top: 0 }, push, scene);
  const view: View = { name, frame, top: top + ROW + upper.height + PAD + reach.above };
  const viewBottom = view.top + heightOf(frame, name);
  const [upperEdge, lowerEdge] = [view.top - PAD - reach.above, viewBottom + PAD + reach.below];
  const { margin, width } = PAGE;
  const markup = [
    textLine(width / 2, top + TEXT_SIZE, TITLES[name], { bold: true, anchor: 'middle' }),
    arrow([margin + 18, top + 8], [-1, 0], 18),
    textLine(margin + 22, top + TEXT_SIZE, 'FRONT', { bold: true }),
    scene.deck === undefined ? '' : drawDeck(view, scene.deck),
    ...scene.articles.map((article) => drawBox(view, article)),
    drawLabels(upper, view, upperEdge, -1),
    drawLabels(lower, view, lowerEdge, 1),
    ...scene.tieDowns.map((tieDown, index) => drawTieDown(view, tieDown, lines[index] as LineStyle)),
    ...scene.articles.map((article) => drawSigns(view, article)),
    drawPush(view, push, scene),
  ].join('');
  return { markup: element('g', { 'data-view': name }, markup), bottom: lowerEdge + lower.height };
}

function drawDeck(view: View, deck: Box): string {
  const { x, y, width, height } = rectOf(view, deck);
  if (view.name === 'left') {
    const top = { x1: x, y1: y, x2: x + width, y2: y, stroke: '#6b6b6b', 'stroke-width': 3 };
    return element('line', { 'data-deck': '', ...top }) + frontSign([x, y]);
  }
  const deckFromAbove = { x, y, width, height, fill: '#f4f1ea', stroke: '#6b6b6b' };
  return element('rect', { 'data-deck': '', ...deckFromAbove }) + frontEdge([x, y], [x, y + height]);
}

function rectOf(view: View, { low, high }: Box) {
  const [one, other] = [project(view, low), project(view, high)];
  const [x, y] = [Math.min(one[0], other[0]), Math.min(one[1], other[1])];
  return { x, y, width: Math.max(one[0], other[0]) - x, height: Math.max(one[1], other[1]) - y };
}

/** The outline; dashed where it is only about right. */
function drawBox(view: View, { id, box, approximate }: SceneArticle): string {
  if (box === undefined) return '';
  return element('rect', {
    'data-article': lineOf(id, MOST_OF_ID),
    ...rectOf(view, box),
    fill: '#dfe6ec',
    'fill-opacity': 0.7,
    stroke: INK,
    'stroke-width': 1.25,
    'stroke-dasharray': approximate ? '5 3' : undefined,
  });
}

function drawTieDown(view: View, { id, path, anchors }: SceneTieDown, style: LineStyle): string {
  if (path.length === 0) return '';
  const spots = path.map((point) => project(view, point));
  const line = { 'data-tie-down': lineOf(id, MOST_OF_ID), points: pointList(spots), ...strokeOf(style) };
  const ends = path.map((point, index) => endSign(spots[index] as Spot, anchors.includes(point)));
  return element('polyline', line) + ends.join('');
}

function drawSigns(view: View, { contacts, centerOfGravity }: SceneArticle): string {
  const standing = contacts.map((contact) => contactSign(project(view, contact))).join('');
  return centerOfGravity === undefined ? standing : standing + centerOfGravitySign(project(view, centerOfGravity));
}
