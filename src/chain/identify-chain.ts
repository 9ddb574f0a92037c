import { fail } from '../errors.js';
import { checkOneOf } from '../input-checks.js';
import { compareExact } from '../quantities/exact.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readOptional } from '../quantities/read.js';
import { chainFinishPractice } from '../tables/generated/chain-finish-practice.js';
import { measuredWireBands } from '../tables/generated/measured-wire-bands.js';
import { us49cfr393108ChainMarks } from '../tables/generated/us-49cfr393-108-chain-marks.js';
import {
  type ChainRows,
  type GeneratedTable,
  type GradeOf,
  type MarkRows,
  type RatingTable,
  rowOf,
  type SizeOf,
} from '../tables/rating-table.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { type Note, type NoteWith, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { checkRatings } from './chain-rating.js';

/** A finish of chain as the table of trade practice names it; `'yellow'` is short for `'yellow-chromate'`. */
export type ChainFinish = keyof typeof chainFinishPractice.rows | 'yellow';

/** What a chain may be. */
export interface ChainCandidate {
  /** Absent while no wire was measured, and where the wire is no size. */
  readonly size?: string;
  /** Absent where nothing tells the grade: a caliper does not. */
  readonly grade?: number;
  /** What it rests on: a grade mark, a measured wire, or a finish, which is only a habit of the trade. */
  readonly confidence: 'marked' | 'measured' | 'suggested';
  readonly because: Note;
}

export interface ChainIdentity<T extends RatingTable = RatingTable> extends ResultBase<'identifyChain'> {
  /** The one that counts stands first. */
  readonly candidates: readonly ChainCandidate[];
  /**
   * What the chain may be counted as under the table: a size and grade that it lists, nothing at all, or not
   * decided until the wire is measured.
   */
  readonly countAs: { readonly size: SizeOf<T>; readonly grade: GradeOf<T, SizeOf<T>> } | 'no credit' | 'undetermined';
  /** Why it counts as that. */
  readonly because: Note;
  /** The table's id. */
  readonly ratings: string;
}

/**
 * What a chain may be, and what it counts as, from what its user has: a mark, a wire measured with a caliper, a
 * finish, or some of them.
 *
 * The mark decides the grade. Without one the chain counts as what the table gives unmarked chain: grade 30 under
 * 49 CFR 393.108(d), nothing under a table that gives it nothing. The wire decides the size, and runs over the trade
 * size, so the nearest fraction is the wrong rule: the size is the one whose band of new wire (+2/−6 % below 18 mm,
 * ±5 % from there) holds the reading; between two bands it is the lower size, where bands overlap the smaller one. The
 * finish suggests a grade and counts as nothing.
 *
 * @param input.ratings the rating table to count under, such as {@link us49cfr393_108_2024}
 * @param input.mark the grade mark on the links, such as `'70'`, `'G70'` or `'7'`; leave it out where none can be read
 * @param input.wireDiameter measured on a straight leg away from the weld: the mean of two readings at right angles
 * @param input.worn `true` where the wire is worn: the next larger size is listed too, and the smaller still counts
 * @param input.finish `'yellow'`, `'yellow-chromate'`, `'plain'`, `'bright-zinc'`, `'galvanized'`, `'black'`, `'gray'`,
 * `'painted'` or `'blue'`
 * @throws RiggingError `MISSING_FIELD` (no mark, no wire, no finish), `UNKNOWN_SIZE` (wire above the largest band; nothing is
 * extrapolated), `UNKNOWN_VALUE` (finish, or a mark that is no text), `NOT_POSITIVE`, `WRONG_KIND`
 * @validity open-link chain of round wire; an unmarked repair link makes the whole run unmarked
 * @source bands: EN 818-1, from memory; marks and unmarked chain: the rating table's document; finish: common practice
 * @example
 * identifyChain({ ratings: us49cfr393_108_2024, wireDiameter: '0.27 in' }).countAs
 * // => { size: '1/4', grade: 30 }
 * @example
 * identifyChain({ ratings: us49cfr393_108_2024, mark: '70', wireDiameter: '0.35 in' }).countAs
 * // => { size: '5/16', grade: 70 }
 * @example
 * identifyChain({ ratings: us49cfr393_108_2024, finish: 'yellow' }).countAs
 * // => 'undetermined'
 */
export function identifyChain<const T extends RatingTable>(input: {
  readonly ratings: T;
  readonly mark?: string;
  readonly wireDiameter?: QuantityInput<'length'>;
  readonly worn?: boolean;
  readonly finish?: ChainFinish;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): ChainIdentity<T> {
  const ratings: RatingTable = input?.ratings;
  checkRatings(ratings);
  const { mark, wireDiameter, worn, finish } = input;
  if (mark === undefined && wireDiameter === undefined && finish === undefined) {
    fail('MISSING_FIELD', '', 'a mark, a wireDiameter or a finish', undefined, 'Look for a mark; measure the wire.');
  }
  const working = new Working(input.working !== false);
  const wire = readOptional(wireDiameter, 'length', 'wireDiameter');
  const marked = gradeOfMark(ratings, mark, working);
  const suggested = gradesOfFinish(finish, marked, working);
  const place = wire && placeWire(wire, ratings, marked, worn === true, working);
  const band = place?.band;

  const candidates: ChainCandidate[] = [];
  const add = (confidence: ChainCandidate['confidence'], because: Note, grade?: number, size?: string) =>
    candidates.push({ ...(size && { size }), ...(grade && { grade }), confidence, because });
  if (marked !== undefined) {
    const because = note('BY_MARK', { mark: mark ?? '', grade: marked });
    for (const size of band ? sizesOf(band, marked) : [undefined]) add('marked', because, marked, size);
  }
  for (const { band, words } of place?.possible ?? []) {
    for (const size of sizesOf(band, marked)) {
      const grades = band.names.flatMap((name) => (name.size === size ? (name.grade ?? 'EN 818') : [])).join(', ');
      add('measured', note(words, { nominal: band.nominal, grades }), marked, size);
    }
  }
  for (const grade of suggested) {
    const because = note('BY_FINISH', { finish: finish ?? '', grade });
    if (place === undefined) add('suggested', because, grade);
    for (const { size } of namesOf(band, grade)) add('suggested', because, grade, size);
  }

  const { countAs, because } = count(ratings, place, marked);
  if (typeof countAs === 'object') {
    const { size, grade } = countAs;
    const own = place?.all.find((each) => namesOf(each, grade).some((name) => name.size === size));
    if (marked === undefined) {
      working.assumptions.push(note('UNMARKED_CHAIN', { grade, clause: ratings.unmarkedChain?.clause ?? '' }));
    } else if (wire && own && compareExact(wire, own.least) < 0) {
      working.cautions.push(note('THIN_FOR_GRADE', { size, grade, nominal: own.nominal }));
    }
  }
  working.cautions.push(FOLLOW_THE_MARK);
  return makeResult(
    'identifyChain',
    { candidates, countAs, because, ratings: ratings.id },
    input,
    working,
  ) as ChainIdentity<T>;
}

/** A name that chain is sold under; European chain, whose class does not change the wire, has no grade here. */
interface Name {
  readonly grade?: number;
  readonly size: string;
}

/** Chain of one nominal wire: its names, the readings that new wire may give, and the most within 5 percent. */
interface Band {
  readonly nominal: QuantityLike;
  readonly names: readonly Name[];
  readonly least: QuantityLike;
  readonly most: QuantityLike;
  readonly wide: QuantityLike;
}

/** Where a reading falls among the bands. */
interface Place {
  readonly all: readonly Band[];
  /** The band that counts; absent below the smallest. */
  readonly band?: Band | undefined;
  /** The bands that it may be and that no mark speaks for, and why. */
  readonly possible: readonly { readonly band: Band; readonly words: NoteWith<'nominal' | 'grades'> }[];
}

/** The bands with a size in the table's own system (inch sizes or metric ones), smallest first. */
function bandsFor(ratings: RatingTable): Band[] {
  const metric = Object.keys(ratings.chain.rows).some((size) => size.endsWith(' mm'));
  const mm = (value: number | string) => ({ value: Number(value), unit: 'mm' }) as const;
  return Object.entries(measuredWireBands.rows)
    .map(([nominal, row]) => ({
      nominal: mm(nominal),
      names: [...row.trade_sizes.matchAll(/(\d+|EN):(\S+( mm)?)/g)]
        .map(([, grade, size = '']) => (grade === 'EN' ? { size } : { size, grade: Number(grade) }))
        .filter(({ size }) => size.endsWith(' mm') === metric),
      least: mm(row.new_min_mm),
      most: mm(row.new_max_mm),
      wide: mm(row.wide_max_mm),
    }))
    .filter(({ names }) => names.length > 0)
    .sort((one, other) => one.nominal.value - other.nominal.value);
}

function placeWire(
  wire: QuantityLike,
  ratings: RatingTable,
  marked: number | undefined,
  worn: boolean,
  working: Working,
): Place {
  const all = bandsFor(ratings);
  const above = all.findIndex(({ most }) => compareExact(wire, most) <= 0);
  if (above < 0) {
    const largest = `at most ${all.at(-1)?.most.value} mm`;
    fail('UNKNOWN_SIZE', 'wireDiameter', largest, `${wire}`, 'Nothing is extrapolated: go by mark and tag.');
  }
  working.cite(measuredWireBands.source);
  const { cautions } = working;
  const inside = compareExact(wire, (all[above] as Band).least) >= 0;
  const at = inside ? above : above - 1;
  const band = all[at];
  if (band === undefined) return { all, possible: [] };

  const possible: { band: Band; words: NoteWith<'nominal' | 'grades'> }[] =
    marked === undefined ? [{ band, words: 'BY_WIRE' }] : [];
  const next = all[at + 1];
  const overlap = next !== undefined && compareExact(wire, next.least) >= 0;
  if (overlap) {
    possible.push({ band: next, words: 'BY_WIRE' });
    cautions.push(note('OVERLAP'));
  }
  const near = compareExact(wire, band.wide) <= 0;
  if (!inside && !near) cautions.push(note('BETWEEN_BANDS'));
  const grade = marked ?? ratings.unmarkedChain?.grade;
  const sizes = sizesOf(band, grade);
  const larger = all.find((each, index) => index > at && sizesOf(each, grade).some((size) => !sizes.includes(size)));
  if ((worn || !near) && larger && !(overlap && larger === next)) possible.push({ band: larger, words: 'MAYBE_WORN' });
  const lower = all[at - 1];
  if (lower && compareExact(wire, lower.wide) <= 0 && lower.names[0]?.size !== band.names[0]?.size) {
    cautions.push(note('IN_WIDE_BAND', { nominal: lower.nominal, size: sizesOf(lower, grade).join(', ') }));
  }
  working.step(
    'chain',
    'nominal wire',
    inside ? 'band that holds the reading' : 'next lower band',
    { reading: wire, from: band.least, to: band.most },
    band.nominal,
  );
  return { all, band, possible };
}

const namesOf = (band: Band | undefined, grade: number | undefined) =>
  band?.names.filter((name) => name.grade === grade) ?? [];

/** The sizes a band is sold as in a grade; in none of them by that name, all its sizes. */
function sizesOf(band: Band, grade: number | undefined): string[] {
  const own = namesOf(band, grade);
  return [...new Set((own.length > 0 ? own : band.names).map(({ size }) => size))];
}

function count(ratings: RatingTable, place: Place | undefined, marked: number | undefined) {
  const noCredit = (because: Note) => ({ countAs: 'no credit', because }) as const;
  const { id, chain, unmarkedChain } = ratings;
  const grade = marked ?? unmarkedChain?.grade;
  if (grade === undefined) return noCredit(note('UNMARKED_NOT_CREDITED', { ratings: id }));
  const lists = (rows: ChainRows[string] = {}) => rowOf(rows, grade) !== undefined;
  if (!Object.values(chain.rows).some(lists)) return noCredit(note('NO_DEFAULT_FOR_GRADE', { ratings: id, grade }));
  if (place === undefined) return { countAs: 'undetermined', because: note('MEASURE_THE_WIRE') } as const;
  const { band, all } = place;
  if (band === undefined) return noCredit(note('TOO_THIN', { least: (all[0] as Band).least }));
  const own = sizesOf(band, grade);
  // a table may rate the same wire under its other name: 9/32 in alloy on a 1/4 in line
  const names = [...own, ...band.names.map(({ size }) => size)];
  const size = names.find((name) => lists(rowOf(chain.rows, name)));
  if (size === undefined) return noCredit(note('NOT_LISTED', { ratings: id, size: own.join(' or '), grade }));
  const words = own.includes(size) ? (marked ? 'COUNTED' : 'COUNTED_UNMARKED') : 'SAME_WIRE';
  const params = { ratings: id, own: own.join(', '), size, grade, clause: unmarkedChain?.clause ?? '' };
  return { countAs: { size, grade }, because: note(words, params) };
}

/** The marks of a market. */
const MARKS: { readonly [M in RatingTable['market']]: GeneratedTable<MarkRows> } = {
  'north-america': us49cfr393108ChainMarks,
};

/** The grade a mark names; undefined for no mark and for one that names no grade. */
function gradeOfMark(ratings: RatingTable, mark: string | undefined, working: Working): number | undefined {
  if (mark === undefined) return undefined;
  if (typeof mark !== 'string' || mark.length > 24 || !/\w/.test(mark)) {
    fail('UNKNOWN_VALUE', 'mark', "text such as '70'", mark, 'Leave it out where it is not known.');
  }
  const { rows, source } = MARKS[ratings.market];
  const plain = mark.toUpperCase().replace(/^GRADE|[\s.-]/g, '');
  const row = rowOf(rows, plain) ?? rowOf(rows, plain.replace(/^G(?=\d)/, ''));
  if (row === undefined) {
    working.cautions.push(note('UNKNOWN_MARK', { mark }));
    return undefined;
  }
  const { grade, provenance = source.provenance, note: why } = row;
  working.cite({ ...source, provenance });
  if (why) working.cautions.push(note('AMBIGUOUS_MARK', { mark, grade, note: why }));
  working.step('chain', 'grade', 'mark', { mark }, grade);
  return grade;
}

/** The grades a finish is usual on. They count as nothing, and with a mark they are not even listed. */
function gradesOfFinish(finish: string | undefined, marked: number | undefined, working: Working): number[] {
  if (finish === undefined) return [];
  const { rows, source }: GeneratedTable<{ readonly [finish: string]: { readonly grades: string } }> =
    chainFinishPractice;
  const name = finish === 'yellow' ? 'yellow-chromate' : finish;
  checkOneOf(name, Object.keys(rows), 'finish');
  const grades = (rows[name]?.grades ?? '').split(' ').map(Number);
  working.cite(source);
  const params = { grades: grades.join(', ') };
  if (marked === undefined) working.cautions.push(note('FINISH_IS_NO_PROOF', params));
  else if (!grades.includes(marked)) working.cautions.push(note('FINISH_IGNORED', params));
  return marked === undefined ? grades : [];
}
