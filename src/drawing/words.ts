import { formatNumber } from '../quantities/format.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Outcome, percent } from './outcome.js';
import type { Scene, SceneArticle, SceneTieDown } from './scene.js';
import { fitted, lineOf, MOST_OF_ID, textWidth } from './svg.js';

/** Everything a drawing says in words: the page shows them, and a screen reader reads them. */
export interface Words {
  readonly heading: string;
  /** What decides, and what the percentages are. */
  readonly because: readonly string[];
  /** In the order of the plan. */
  readonly tieDowns: readonly TieDownWords[];
  /** The deck, and what is not drawn or only about right. */
  readonly notes: readonly string[];
}

export interface TieDownWords {
  /** Beside its line in a view: name and share. */
  readonly label: string;
  /** The same by its number in the list, where there is no room for the name. */
  readonly numberLabel: string;
  /** In the list. */
  readonly row: string;
  /** In the list where a label goes by the number. */
  readonly numberedRow: string;
}

const WIDEST_NAME = 100;
const METERS_PER_INCH = 0.0254;

export function wordsOf(scene: Scene, outcome: Outcome | undefined): Words {
  return {
    heading: outcome?.verdict ?? scene.articles.map(({ id }) => lineOf(id, MOST_OF_ID)).join(', '),
    because: outcome?.because ?? [],
    tieDowns: tieDownWords(scene, outcome),
    notes: [...deckNotes(scene), ...scene.articles.flatMap(articleNotes)],
  };
}

function tieDownWords({ tieDowns }: Scene, outcome: Outcome | undefined): TieDownWords[] {
  const names = tieDowns.map(({ id }) => lineOf(id, MOST_OF_ID));
  const isClear = (name: string) => name !== '' && textWidth(name) <= WIDEST_NAME;
  const numbered = !names.every(isClear); // a name cut short may look like another
  return tieDowns.map((tieDown, index) => {
    const name = names[index] as string;
    const number = `(${index + 1})`;
    const share = outcome?.tieDowns.get(tieDown.id)?.share;
    const carries = share === undefined ? '' : ` ${percent(share)}`;
    const row = `${name}: ${tieDownSays(tieDown, outcome)}`;
    const numberedRow = `${number} ${row}`;
    return {
      label: `${numbered ? `${number} ${fitted(name, WIDEST_NAME)}` : name}${carries}`,
      numberLabel: number + carries,
      row: numbered ? numberedRow : row,
      numberedRow,
    };
  });
}

/** The whole in sentences. */
export function describe({ because, tieDowns, notes }: Words): string {
  const rows = tieDowns.map(({ row }) => `${row}.`);
  return ['From above and from the left, to one scale, front at the left.', ...because, ...rows, ...notes].join(' ');
}

function tieDownSays({ id, holds, path }: SceneTieDown, outcome: Outcome | undefined): string {
  const found = outcome?.tieDowns.get(id)?.words ?? 'not in this result';
  const says = outcome === undefined ? `holds ${lineOf(holds, MOST_OF_ID)}` : found;
  return path.length > 0 ? says : `${says}; not drawn, it has no points`;
}

function deckNotes({ deck, units }: Scene): string[] {
  if (deck === undefined) return ['The deck is not given.'];
  const say = (axis: 0 | 1) => sayLength(deck.high[axis] - deck.low[axis], units);
  return [`Deck: ${say(0)} long, ${say(1)} wide.`];
}

/** To a tenth of an inch, or to a centimeter. */
export function sayLength(meters: number, units: UnitSystem): string {
  if (units === 'si') return `${formatNumber(Math.round(meters * 100) / 100)} m`;
  const tenths = Math.round((meters / METERS_PER_INCH) * 10);
  const [feet, inches] = [Math.floor(tenths / 120), (tenths % 120) / 10];
  if (feet === 0) return `${formatNumber(inches)} in`;
  return `${feet} ft${inches === 0 ? '' : ` ${formatNumber(inches)} in`}`;
}

function articleNotes({ id, box, approximate, centerOfGravity }: SceneArticle): string[] {
  const name = lineOf(id, MOST_OF_ID);
  if (box !== undefined && approximate) {
    return [`${name}: no outline given; dashed is its length about its contacts, its height is not known.`];
  }
  if (box !== undefined) return [];
  return [
    centerOfGravity === undefined
      ? `${name}: not drawn, it has no outline, contacts or center of gravity.`
      : `${name}: no outline or contacts given.`,
  ];
}
