import { drawView } from './draw-view.js';
import { lineRow } from './line-row.js';
import type { Outcome } from './outcome.js';
import { PAGE, type Piece, paragraph, ROW, stack } from './paper.js';
import { drawScaleBar } from './scale-bar.js';
import { boxOf, type Scene } from './scene.js';
import { textLine, textWidth } from './svg.js';
import {
  centerOfGravitySign,
  contactSign,
  endSign,
  frontSign,
  type LineStyle,
  PLAIN_LINE,
  type Spot,
  styleOfShare,
  UNKNOWN_LINE,
} from './symbols.js';
import { frameOf } from './view.js';
import { labelBands } from './view-labels.js';
import type { Words } from './words.js';

/** From the edge of the page to the views: room for signs and arrows. */
const INSET = 18;

/** The page from top to bottom: verdict, view from above, view from the left, scale, signs, tie-downs, notes. */
export function drawPage(scene: Scene, outcome: Outcome | undefined, words: Words): Piece {
  const frame = frameOf(boxOf(pointsOf(scene)), INSET, PAGE.width - 2 * INSET);
  const lines = scene.tieDowns.map(({ id }) => lineOfTieDown(id, outcome));
  const content = { scene, frame, lines, push: outcome?.push };
  const above = labelBands('above', scene, words.tieDowns, frame);
  const left = labelBands('left', scene, words.tieDowns, frame);
  const numbered = [above.upper, above.lower, left.lower].some((band) => band.numbered);
  const { markup, bottom } = stack(PAGE.margin - 4, [
    (top) => paragraph(words.heading, top, true),
    ...words.because.map((text) => (top: number) => paragraph(text, top)),
    (top) => drawView('above', content, above, top + 8),
    (top) => drawView('left', content, left, top + 10),
    (top) => drawScaleBar(frame.scale, scene.units, 'both views', top + 12),
    (top) => drawSigns(scene, top + 8),
    ...words.tieDowns.map(({ row, numberedRow }, index) => (top: number) => {
      const isDrawn = (scene.tieDowns[index]?.path.length ?? 0) > 0;
      return lineRow(numbered ? numberedRow : row, isDrawn ? lines[index] : undefined, top + 2);
    }),
    ...words.notes.map((text) => (top: number) => paragraph(text, top + 2)),
  ]);
  return { markup, bottom: bottom + PAGE.margin - 4 };
}

/** Every point of a scene; there is at least one. */
function pointsOf({ deck, articles, tieDowns }: Scene) {
  const boxes = [...(deck === undefined ? [] : [deck]), ...articles.flatMap(({ box }) => box ?? [])];
  return [
    ...boxes.flatMap(({ low, high }) => [low, high]),
    ...articles.flatMap(({ contacts, centerOfGravity }) => [
      ...contacts,
      ...(centerOfGravity ? [centerOfGravity] : []),
    ]),
    ...tieDowns.flatMap(({ path }) => path),
  ];
}

function lineOfTieDown(id: string, outcome: Outcome | undefined): LineStyle {
  if (outcome === undefined) return PLAIN_LINE;
  const found = outcome.tieDowns.get(id);
  if (found?.share !== undefined) return styleOfShare(found.share);
  return found?.known === true && outcome.push === undefined ? PLAIN_LINE : UNKNOWN_LINE;
}

/** What the signs mean: those that stand in this drawing. */
function drawSigns({ deck, articles, tieDowns }: Scene, top: number): Piece {
  const signs = [
    deck && { text: 'front of deck', draw: frontSign },
    articles.some(({ centerOfGravity }) => centerOfGravity) && { text: 'center of gravity', draw: centerOfGravitySign },
    articles.some(({ contacts }) => contacts.length > 0) && { text: 'contact', draw: contactSign },
    tieDowns.some(({ path }) => path.length > 0) && { text: 'anchor', draw: anchorSign },
    tieDowns.some(({ path }) => path.length > 0) && { text: 'attachment', draw: attachmentSign },
  ].filter((sign) => typeof sign === 'object');
  let x: number = PAGE.margin + 6;
  let y = top + 6;
  const markup = signs.map(({ text, draw }) => {
    const width = 12 + textWidth(text) + 10;
    if (x + width > PAGE.width - PAGE.margin) {
      x = PAGE.margin + 6;
      y += ROW + 2;
    }
    const sign = draw([x, y]) + textLine(x + 10, y + 4, text);
    x += width;
    return sign;
  });
  return { markup: markup.join(''), bottom: y + ROW - 4 };
}

const anchorSign = (spot: Spot) => endSign(spot, true);
const attachmentSign = (spot: Spot) => endSign(spot, false);
