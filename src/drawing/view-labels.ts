import type { Vec3 } from '../statics/vector.js';
import { type LabelPlace, placeLabels, rowCount } from './labels.js';
import { PAGE, ROW } from './paper.js';
import type { Scene } from './scene.js';
import { element, fitted, lineOf, MOST_OF_ID, pointList, TEXT_SIZE, textLine } from './svg.js';
import { INK } from './symbols.js';
import { type Frame, project, type View, type ViewName } from './view.js';
import type { TieDownWords } from './words.js';

/** Labels on one side of a view, and the room they take. */
export interface LabelBand {
  readonly labels: readonly PlacedLabel[];
  readonly height: number;
  /** The labels are numbers of the list, because names had no room. */
  readonly numbered: boolean;
}

export interface LabelBands {
  readonly upper: LabelBand;
  readonly lower: LabelBand;
}

export interface ViewLabel {
  readonly text: string;
  /** The text where there is no room for the name. */
  readonly number: string;
  /** What it belongs to. */
  readonly point: Vec3;
}

type PlacedLabel = ViewLabel & LabelPlace;

const WIDEST_ARTICLE = 150;
/** More names than this on one side of a view are too many to read. */
const MANY = 12;

/**
 * The labels above and below a view. From above, those of the right side stand above and those of the left side below;
 * from the left, articles above and tie-downs below.
 */
export function labelBands(name: ViewName, scene: Scene, words: readonly TieDownWords[], frame: Frame): LabelBands {
  const tieDowns = scene.tieDowns.flatMap(({ anchors: [point] }, index): ViewLabel[] => {
    const { label, numberLabel } = words[index] as TieDownWords;
    return point === undefined ? [] : [{ text: label, number: numberLabel, point }];
  });
  const articles = articleLabels(scene);
  const isRight = ({ point }: ViewLabel) => point[1] < 0;
  const band = (labels: readonly ViewLabel[]) => placeBand(labels, name, frame);
  if (name === 'left') return { upper: band(articles), lower: band(tieDowns) };
  return {
    // one article alone is not mistaken for another
    upper: band([...(articles.length > 1 ? articles : []), ...tieDowns.filter(isRight)]),
    lower: band(tieDowns.filter((label) => !isRight(label))),
  };
}

/** At the middle of its upper edge, as both views show it. */
function articleLabels({ articles }: Scene): ViewLabel[] {
  return articles.flatMap(({ id, box, centerOfGravity }, index) => {
    const text = fitted(lineOf(id, MOST_OF_ID), WIDEST_ARTICLE);
    const point: Vec3 | undefined = box ? [(box.low[0] + box.high[0]) / 2, box.low[1], box.high[2]] : centerOfGravity;
    return point === undefined ? [] : [{ text, number: `article ${index + 1}`, point }];
  });
}

/** One side of a view. */
export function placeBand(labels: readonly ViewLabel[], name: ViewName, frame: Frame): LabelBand {
  const inside = [6, PAGE.width - 6] as const;
  const placed = labels.map((label) => ({ ...label, at: project({ name, frame, top: 0 }, label.point)[0] }));
  const short = () => placed.map((label) => ({ ...label, text: label.number }));
  const named = labels.length > MANY ? undefined : placeLabels(placed, ...inside);
  const found = named ?? placeLabels(short(), ...inside) ?? [];
  const height = found.length === 0 ? 0 : rowCount(found) * ROW + 4;
  return { labels: found, height, numbered: named === undefined };
}

/** Labels from an edge of the view outward, each with a thin leader: `way` is 1 downward and -1 upward. */
export function drawLabels({ labels }: LabelBand, view: View, edge: number, way: 1 | -1): string {
  return labels
    .map(({ text, x, row, textX, anchor, point }) => {
      const near = edge + way * (row * ROW + 3); // the side of the text that its leader reaches
      const baseline = way === 1 ? near + TEXT_SIZE - 1 : near - 3;
      const leader = element('polyline', {
        'data-leader': '',
        points: pointList([project(view, point), [x, edge], [x, near]]),
        fill: 'none',
        stroke: INK,
        'stroke-width': 0.6,
        'stroke-dasharray': '2 1.5',
      });
      return leader + textLine(textX, baseline, text, { anchor });
    })
    .join('');
}
