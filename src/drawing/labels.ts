import { textWidth } from './svg.js';

/** A text that belongs to a place of the drawing, `at` along its width. */
export interface Label {
  readonly text: string;
  readonly at: number;
}

/** Where a label stands: row 0 is the nearest to the view, and its leader comes straight down or up at `x`. */
export interface LabelPlace {
  readonly x: number;
  readonly row: number;
  /** Where its text starts or ends. */
  readonly textX: number;
  readonly anchor: 'start' | 'end';
}

/** Leaders stand at least this far apart. */
const APART = 8;
/** A text begins this far before its leader, so that the leader ends under its first letter. */
const LEAD = 3;
const GAP = 5;
/** More labels than this on one side of a view are not labels any more. */
const MOST_LABELS = 60;
/** Up to this many, every place to turn them over is tried. */
const FEW = 24;

/**
 * Rows of labels beside a view, each with a leader to its place, so that no text covers another text or a leader.
 * Labels further left run to the right of their leaders and the others to the left; of all places to change over, the
 * one with the fewest rows is taken, among equals the nearest to the middle. None where texts are too long for any.
 */
export function placeLabels<L extends Label>(
  labels: readonly L[],
  left: number,
  right: number,
): readonly (L & LabelPlace)[] | undefined {
  if (labels.length > MOST_LABELS) return undefined;
  const sorted = [...labels].sort((a, b) => a.at - b.at); // stable: labels of one place keep their order
  const leaders = spread(sorted, left + LEAD, right - LEAD);
  const middle = sorted.filter(({ at }) => at < (left + right) / 2).length;
  let best: readonly (L & LabelPlace)[] | undefined;
  for (const turned of sorted.length > FEW ? [sorted.length] : from(middle, sorted.length)) {
    const placed = inRows(sorted, leaders, turned, left, right);
    if (placed !== undefined && (best === undefined || rowCount(placed) < rowCount(best))) best = placed;
  }
  return best;
}

/** Every number from 0 to a last one, the nearest to a first one first. */
function from(first: number, last: number): number[] {
  const distance = (number: number) => Math.abs(number - first);
  return Array.from({ length: last + 1 }, (_, number) => number).sort((a, b) => distance(a) - distance(b));
}

export const rowCount = (placed: readonly LabelPlace[]): number =>
  placed.reduce((count, { row }) => Math.max(count, row + 1), 0);

/** The leaders in order, moved no more than needed to stand apart and inside. */
function spread(labels: readonly Label[], left: number, right: number): number[] {
  const apart = Math.min(APART, (right - left) / Math.max(1, labels.length));
  const leaders: number[] = [];
  let least = left;
  for (const { at } of labels) {
    const leader = Math.max(at, least);
    leaders.push(leader);
    least = leader + apart;
  }
  let most = right;
  return leaders
    .reverse()
    .map((leader) => {
      const inside = Math.min(leader, most);
      most = inside - apart;
      return inside;
    })
    .reverse();
}

/** The first `turned` labels run right and the rest left; a label stands beyond every leader that its text covers. */
function inRows<L extends Label>(
  labels: readonly L[],
  leaders: readonly number[],
  turned: number,
  left: number,
  right: number,
): readonly (L & LabelPlace)[] | undefined {
  const rows = labels.map((label, index) => {
    const x = leaders[index] as number;
    return { ...label, x, row: 0, ...textPlace(x, textWidth(label.text), index < turned, left, right) };
  });
  if (rows.some(({ from, to }) => to - from > right - left)) return undefined;
  // each pass moves labels out past those they cover; more passes than labels means that two cover each other
  for (let pass = 0; pass <= rows.length; pass++) {
    let moved = false;
    for (const one of rows) {
      for (const other of rows) {
        if (one === other || one.to + GAP <= other.from || other.to + GAP <= one.from) continue;
        const inTheWay = covers(one, other) ? one.row <= other.row : !covers(other, one) && one.row === other.row;
        if (inTheWay) {
          one.row = other.row + 1;
          moved = true;
        }
      }
    }
    if (!moved) return withoutGaps(rows);
  }
  return undefined;
}

/** Moving out can leave a row empty. */
function withoutGaps<Place extends { readonly row: number }>(places: readonly Place[]): Place[] {
  const used = new Set(places.map(({ row }) => row));
  const below = (row: number) => [...used].filter((other) => other < row).length;
  return places.map((place) => ({ ...place, row: below(place.row) }));
}

/** To the right or the left of its leader, but not over the edge. */
function textPlace(x: number, width: number, toTheRight: boolean, left: number, right: number) {
  const [start, end] = [x - LEAD, x + LEAD];
  const isStart = toTheRight ? start + width <= right : end - width < left;
  const textX = isStart ? (toTheRight ? start : left) : toTheRight ? right : end;
  return isStart
    ? { textX, anchor: 'start' as const, from: textX, to: textX + width }
    : { textX, anchor: 'end' as const, from: textX - width, to: textX };
}

interface Span {
  readonly x: number;
  readonly from: number;
  readonly to: number;
}

/** The text of one would stand in the way of the leader of the other, were it nearer to the view. */
const covers = (one: Span, other: Span): boolean => other.x > one.from - GAP && other.x < one.to + GAP;
