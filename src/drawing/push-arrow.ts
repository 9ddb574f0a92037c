import type { Direction } from '../securement/restraint/answer.js';
import type { Vec3 } from '../statics/vector.js';
import type { Push } from './outcome.js';
import { PAGE } from './paper.js';
import type { Scene, SceneArticle } from './scene.js';
import { TEXT_SIZE, textWidth } from './svg.js';
import { arrow, textOnPaper } from './symbols.js';
import { heightOf, project, type View } from './view.js';

const LENGTH = 44;
const LABEL_ABOVE = 12;
const LABEL_BESIDE = 12;

/** An arrow in a view: it starts at the center of gravity, where the push acts. */
interface PlacedPush {
  readonly way: readonly [number, number];
  readonly x: number;
  readonly y: number;
  readonly label: string;
}

/** None where the direction leads into the page, or the article has no place. */
function placePush(view: View, push: Push | undefined, { articles }: Scene): PlacedPush | undefined {
  if (push === undefined) return undefined;
  const article = articles.find(({ id }) => id === push.article);
  const from = article && placeOf(article);
  const way = wayOf(push.direction, view);
  if (from === undefined || way === undefined) return undefined;
  const [x, y] = project(view, from);
  return { way, x, y, label: push.label };
}

function placeOf({ centerOfGravity, box }: SceneArticle): Vec3 | undefined {
  if (centerOfGravity !== undefined || box === undefined) return centerOfGravity;
  const { low, high } = box;
  return [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
}

function wayOf(direction: Direction, { name }: View): readonly [number, number] | undefined {
  if (direction === 'forward') return [-1, 0];
  if (direction === 'rearward') return [1, 0];
  if (name === 'left') return direction === 'up' ? [0, -1] : undefined;
  if (direction === 'up') return undefined;
  return direction === 'left' ? [0, 1] : [0, -1];
}

/** How far the arrow and its label reach out of their view, above and below. */
export function reachOfPush(view: View, push: Push | undefined, scene: Scene): { above: number; below: number } {
  const placed = placePush(view, push, scene);
  if (placed === undefined) return { above: 0, below: 0 };
  const y = placed.y - view.top;
  const top = placed.way[1] === 0 ? y - LABEL_ABOVE - TEXT_SIZE : y + placed.way[1] * LENGTH;
  const bottom = y + placed.way[1] * LENGTH;
  return { above: Math.max(0, -top), below: Math.max(0, bottom - heightOf(view.frame, view.name)) };
}

/** The arrow with its label, both on the page. */
export function drawPush(view: View, push: Push | undefined, scene: Scene): string {
  const placed = placePush(view, push, scene);
  if (placed === undefined) return '';
  const { way, x, y, label } = placed;
  const half = textWidth(label, TEXT_SIZE, true) / 2;
  const [least, most] = [PAGE.margin + half, PAGE.width - PAGE.margin - half];
  if (way[0] === 0) {
    const right = x + LABEL_BESIDE + half;
    const middle = right <= most ? right : x - LABEL_BESIDE - half;
    return arrow([x, y], way, LENGTH) + textOnPaper(middle, y + way[1] * (LENGTH / 2) + 4, label);
  }
  const tip = within(6, x + way[0] * LENGTH, PAGE.width - 6);
  const start = tip - way[0] * LENGTH; // moved back where the arrow would leave the page
  return arrow([start, y], way, LENGTH) + textOnPaper(within(least, (start + tip) / 2, most), y - LABEL_ABOVE, label);
}

export const within = (least: number, value: number, most: number): number => Math.max(least, Math.min(most, value));
