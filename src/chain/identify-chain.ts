import { fail } from '../errors.js';
import { compareExact } from '../quantities/exact.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { chainFinishPractice } from '../tables/generated/chain-finish-practice.js';
import { measuredWireBands } from '../tables/generated/measured-wire-bands.js';
import { type GradeOf, type RatingTable, rowOf, type SizeOf } from '../tables/rating-table.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
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
  const { mark, worn } = input;
  const ratings: RatingTable = input.ratings;
  checkRatings(ratings);
  if (mark === undefined && input.wireDiameter === undefined && input.finish === undefined) {
    return fail(
      'MISSING_FIELD',
      '',
      'a mark, a wireDiameter or a finish',
      undefined,
      'Look for a grade mark on the links and measure the wire on a straight leg.',
    );
  }
  const working = new Working(input.working !== false);
  const wire =
    input.wireDiameter === undefined ? undefined : readPositive(input.wireDiameter, 'length', 'wireDiameter');
  const marked = gradeOfMark(ratings, mark, working);
  const suggested = gradesOfFinish(input.finish, marked, working);
  const grade = marked ?? ratings.unmarkedChain?.grade;
  const place = wire === undefined ? undefined : placeWire(wire, ratings, grade, worn === true, working);

  const candidates = listCandidates(place, marked, suggested, input.finish, mark);
  const { countAs, because } = count(ratings, place, marked, wire);
  if (typeof countAs === 'object') {
    if (marked === undefined)
      working.assumptions.push(note(UNMARKED, { grade: countAs.grade, clause: ratings.unmarkedChain?.clause ?? '' }));
    else if (wire !== undefined && place !== undefined) warnIfThin(wire, countAs, place.all, working);
  }
  working.cautions.push(FOLLOW_THE_MARK);
  return makeResult(
    'identifyChain',
    { candidates, countAs, because, ratings: ratings.id },
    input,
    working,
  ) as ChainIdentity<T>;
}

const UNMARKED = {
  code: 'UNMARKED_CHAIN',
  text: 'No grade can be read from the chain: it counts as grade {grade} ({clause}).',
};
const UNKNOWN_MARK = {
  code: 'UNKNOWN_MARK',
  text: 'The mark {mark} names no grade that {ratings} knows: it counts as no grade mark.',
};
const AMBIGUOUS_MARK = {
  code: 'AMBIGUOUS_MARK',
  text: 'The mark {mark} is read as grade {grade}: {note}. Ask where the chain was made.',
};
const FINISH_IS_NO_PROOF = {
  code: 'FINISH_IS_NO_PROOF',
  text: 'A finish is only a habit of the trade (here grade {grades}): it proves no grade and counts as nothing.',
};
const FINISH_IGNORED = {
  code: 'FINISH_IGNORED',
  text: 'The finish is more usual on grade {grades}; the mark governs.',
};

const BY_MARK = { code: 'BY_MARK', text: 'Marked {mark}: grade {grade}.' };
const BY_WIRE = { code: 'BY_WIRE', text: 'Wire of {nominal} when new; made in grade {grades}.' };
const BY_FINISH = { code: 'BY_FINISH', text: 'A {finish} finish is usual on grade {grade}; it is no proof.' };
const MAYBE_WORN = {
  code: 'MAYBE_WORN',
  text: 'A worn chain passes through smaller sizes: this one has {nominal} wire when new.',
};

const BETWEEN_BANDS = {
  code: 'BETWEEN_BANDS',
  text: 'No new chain has this wire: an odd make, or a larger chain worn down. The lower size counts.',
};
const IN_WIDE_BAND = {
  code: 'IN_WIDE_BAND',
  text: 'The reading is also within 5 percent of {nominal} wire ({size}): measure again, two readings at right angles.',
};
const OVERLAP = { code: 'OVERLAP', text: 'The reading fits two sizes: the smaller counts.' };
const THIN_FOR_GRADE = {
  code: 'THIN_FOR_GRADE',
  text: 'Thinner than new {size} grade {grade} chain of {nominal} wire: worn, or made thinner. Inspect it before use.',
};

const COUNTED_UNMARKED = {
  code: 'COUNTED_UNMARKED',
  text: 'No grade mark: counts as {size} grade {grade} ({clause}).',
};
const COUNTED = { code: 'COUNTED', text: 'Counts as {size} grade {grade}.' };
const SAME_WIRE = {
  code: 'SAME_WIRE',
  text: '{ratings} has no line for {own}; it rates grade {grade} of the same wire as {size}.',
};
const NOT_LISTED = {
  code: 'NOT_LISTED',
  text: '{ratings} has no default for {size} grade {grade}: only a marked working load limit counts.',
};
const NO_DEFAULT_FOR_GRADE = {
  code: 'NO_DEFAULT_FOR_GRADE',
  text: 'Grade {grade} has no public table: only a marked working load limit counts.',
};
const UNMARKED_NOT_CREDITED = {
  code: 'UNMARKED_NOT_CREDITED',
  text: '{ratings} gives a chain without a grade mark no rating.',
};
const TOO_THIN = { code: 'TOO_THIN', text: 'Wire under {least} is no size of welded chain.' };
const MEASURE_THE_WIRE = {
  code: 'MEASURE_THE_WIRE',
  text: 'The size is not known: measure the wire on a straight leg away from the weld.',
};

/** Chain of one nominal wire: the names it is sold under, and the readings that new wire may give. */
interface Band {
  readonly nominal: QuantityLike<'mm'>;
  /** Grade and size; European chain, whose class does not change the wire, has no grade here. */
  readonly names: readonly { readonly grade?: number; readonly size: string }[];
  readonly newMin: QuantityLike<'mm'>;
  readonly newMax: QuantityLike<'mm'>;
  readonly wideMax: QuantityLike<'mm'>;
}

/** Where a reading falls among the bands. */
interface Place {
  readonly all: readonly Band[];
  /** The band that counts; absent below the smallest. */
  readonly band?: Band;
  /** Larger ones that it may be as well, and why. */
  readonly others: readonly { readonly band: Band; readonly worn: boolean }[];
}

/** The bands with a size in the table's own system (inch sizes or metric ones), smallest first. */
function bandsFor(ratings: RatingTable): Band[] {
  const metric = Object.keys(ratings.chain.rows).some((size) => size.endsWith(' mm'));
  const inMm = (value: number) => ({ value, unit: 'mm' }) as const;
  return Object.entries(measuredWireBands.rows)
    .map(([nominal, row]) => ({
      nominal: inMm(Number(nominal)),
      names: [...row.trade_sizes.matchAll(/(\d+|EN):(\S+(?: mm)?)/g)]
        .map(([, grade, size = '']) => (grade === 'EN' ? { size } : { grade: Number(grade), size }))
        .filter(({ size }) => size.endsWith(' mm') === metric),
      newMin: inMm(row.new_min_mm),
      newMax: inMm(row.new_max_mm),
      wideMax: inMm(row.wide_max_mm),
    }))
    .filter(({ names }) => names.length > 0)
    .sort((one, other) => one.nominal.value - other.nominal.value);
}

function placeWire(
  wire: QuantityLike,
  ratings: RatingTable,
  grade: number | undefined,
  worn: boolean,
  working: Working,
): Place {
  const all = bandsFor(ratings);
  const last = all[all.length - 1] as Band;
  const above = all.findIndex(({ newMax }) => compareExact(wire, newMax) <= 0);
  if (above < 0) {
    return fail(
      'UNKNOWN_SIZE',
      'wireDiameter',
      `at most ${last.newMax.value} mm, the largest wire of the table`,
      `${wire.value} ${wire.unit}`,
      'Nothing is extrapolated: go by the mark on the chain and its tag.',
    );
  }
  working.cite(measuredWireBands.source);
  const inside = compareExact(wire, (all[above] as Band).newMin) >= 0;
  const at = inside ? above : above - 1;
  const band = all[at];
  if (band === undefined) return { all, others: [] };

  const others: { band: Band; worn: boolean }[] = [];
  const next = all[at + 1];
  const overlap = next !== undefined && compareExact(wire, next.newMin) >= 0;
  if (overlap) {
    others.push({ band: next, worn: false });
    working.cautions.push(note(OVERLAP));
  }
  const near = compareExact(wire, band.wideMax) <= 0;
  if (!inside && !near) working.cautions.push(note(BETWEEN_BANDS));
  if (worn || !near) {
    const sizes = sizesOf(band, grade);
    const larger = all.slice(at + 1).find((other) => sizesOf(other, grade).some((size) => !sizes.includes(size)));
    if (larger !== undefined && !(overlap && larger === next)) others.push({ band: larger, worn: true });
  }
  const lower = all[at - 1];
  if (
    lower !== undefined &&
    inside &&
    compareExact(wire, lower.wideMax) <= 0 &&
    lower.names[0]?.size !== band.names[0]?.size
  ) {
    working.cautions.push(note(IN_WIDE_BAND, { nominal: lower.nominal, size: sizesOf(lower, grade).join(', ') }));
  }
  if (working.shown) {
    working.step({
      subject: 'chain',
      symbol: 'nominal wire',
      expression: inside ? 'band of new wire that holds the reading' : 'next lower band of new wire',
      values: { reading: wire, from: band.newMin, to: band.newMax },
      result: band.nominal,
    });
  }
  return { all, band, others };
}

/** The sizes a band is sold as in a grade; in none of them by that name, all its sizes. */
function sizesOf(band: Band, grade: number | undefined): string[] {
  const own = band.names.filter((name) => name.grade === grade);
  return [...new Set((own.length > 0 ? own : band.names).map(({ size }) => size))];
}

function listCandidates(
  place: Place | undefined,
  marked: number | undefined,
  suggested: readonly number[],
  finish: string | undefined,
  mark: string | undefined,
): ChainCandidate[] {
  const candidates: ChainCandidate[] = [];
  const byMark = marked === undefined ? undefined : note(BY_MARK, { mark: mark ?? '', grade: marked });
  const band = place?.band;
  if (byMark !== undefined && marked !== undefined) {
    if (band === undefined) candidates.push({ grade: marked, confidence: 'marked', because: byMark });
    else
      for (const size of sizesOf(band, marked))
        candidates.push({ size, grade: marked, confidence: 'marked', because: byMark });
  } else if (band !== undefined) {
    candidates.push(...measured(band, BY_WIRE));
  }
  for (const { band: other, worn } of place?.others ?? []) {
    const words = worn ? MAYBE_WORN : BY_WIRE;
    if (marked === undefined) candidates.push(...measured(other, words));
    else
      for (const size of sizesOf(other, marked))
        candidates.push({ size, grade: marked, confidence: 'measured', because: note(words, wireOf(other, size)) });
  }
  for (const grade of suggested) {
    const because = note(BY_FINISH, { finish: finish ?? '', grade });
    if (place === undefined) candidates.push({ grade, confidence: 'suggested', because });
    for (const name of band?.names ?? []) {
      if (name.grade === grade) candidates.push({ size: name.size, grade, confidence: 'suggested', because });
    }
  }
  return candidates;
}

/** One candidate a size, without a grade. */
function measured(band: Band, words: typeof BY_WIRE): ChainCandidate[] {
  const sizes = [...new Set(band.names.map(({ size }) => size))];
  return sizes.map((size) => ({ size, confidence: 'measured', because: note(words, wireOf(band, size)) }));
}

function wireOf(band: Band, size: string): { nominal: QuantityLike; grades: string } {
  return {
    nominal: band.nominal,
    grades: band.names.flatMap((name) => (name.size === size ? (name.grade ?? 'EN 818') : [])).join(', '),
  };
}

function count(
  ratings: RatingTable,
  place: Place | undefined,
  marked: number | undefined,
  wire: QuantityLike | undefined,
): { countAs: { size: string; grade: number } | 'no credit' | 'undetermined'; because: Note } {
  const grade = marked ?? ratings.unmarkedChain?.grade;
  if (grade === undefined)
    return { countAs: 'no credit', because: note(UNMARKED_NOT_CREDITED, { ratings: ratings.id }) };
  if (!Object.values(ratings.chain.rows).some((row) => rowOf(row, grade) !== undefined))
    return { countAs: 'no credit', because: note(NO_DEFAULT_FOR_GRADE, { grade }) };
  if (place === undefined || wire === undefined) return { countAs: 'undetermined', because: note(MEASURE_THE_WIRE) };
  const { band, all } = place;
  if (band === undefined) return { countAs: 'no credit', because: note(TOO_THIN, { least: all[0]?.newMin ?? '' }) };
  const own = sizesOf(band, grade);
  // a table may rate the same wire under its other name: 9/32 in alloy on a 1/4 in line
  for (const size of [...own, ...band.names.map((name) => name.size)]) {
    if (rowOf(rowOf(ratings.chain.rows, size) ?? {}, grade) === undefined) continue;
    const params = {
      ratings: ratings.id,
      own: own.join(', '),
      size,
      grade,
      clause: ratings.unmarkedChain?.clause ?? '',
    };
    const because = note(!own.includes(size) ? SAME_WIRE : marked === undefined ? COUNTED_UNMARKED : COUNTED, params);
    return { countAs: { size, grade }, because };
  }
  return { countAs: 'no credit', because: note(NOT_LISTED, { ratings: ratings.id, size: own.join(' or '), grade }) };
}

function warnIfThin(
  wire: QuantityLike,
  { size, grade }: { size: string; grade: number },
  all: readonly Band[],
  working: Working,
): void {
  const own = all.find(({ names }) => names.some((name) => name.size === size && name.grade === grade));
  if (own !== undefined && compareExact(wire, own.newMin) < 0)
    working.cautions.push(note(THIN_FOR_GRADE, { size, grade, nominal: own.nominal }));
}

/** The grade a mark names under the table; undefined for no mark and for one that names no grade. */
function gradeOfMark(ratings: RatingTable, mark: string | undefined, working: Working): number | undefined {
  if (mark === undefined) return undefined;
  if (typeof mark !== 'string' || mark.length > 24 || !/\w/.test(mark)) {
    return fail(
      'UNKNOWN_VALUE',
      'mark',
      "the mark as text, such as '70'",
      mark,
      'Leave it out where no mark can be read.',
    );
  }
  const plain = mark.toUpperCase().replace(/^GRADE|[\s.-]/g, '');
  const row = rowOf(ratings.marks.rows, plain) ?? rowOf(ratings.marks.rows, plain.replace(/^G(?=\d)/, ''));
  if (row === undefined) {
    working.cautions.push(note(UNKNOWN_MARK, { mark, ratings: ratings.id }));
    return undefined;
  }
  const { source } = ratings.marks;
  working.cite(row.provenance === undefined ? source : { ...source, provenance: row.provenance });
  if (row.note !== undefined) working.cautions.push(note(AMBIGUOUS_MARK, { mark, grade: row.grade, note: row.note }));
  if (working.shown)
    working.step({ subject: 'chain', symbol: 'grade', expression: 'mark', values: { mark }, result: row.grade });
  return row.grade;
}

/** The grades a finish is usual on. They count as nothing, and with a mark they are not even listed. */
function gradesOfFinish(finish: string | undefined, marked: number | undefined, working: Working): number[] {
  if (finish === undefined) return [];
  const practice = rowOf<{ readonly grades: string }>(
    chainFinishPractice.rows,
    finish === 'yellow' ? 'yellow-chromate' : finish,
  );
  if (practice === undefined) {
    return fail(
      'UNKNOWN_VALUE',
      'finish',
      `yellow, ${Object.keys(chainFinishPractice.rows).join(', ')}`,
      finish,
      'Leave it out: a finish counts as nothing.',
    );
  }
  const grades = practice.grades.split(' ').map(Number);
  working.cite(chainFinishPractice.source);
  const params = { grades: grades.join(', ') };
  if (marked === undefined) working.cautions.push(note(FINISH_IS_NO_PROOF, params));
  else if (!grades.includes(marked)) working.cautions.push(note(FINISH_IGNORED, params));
  return marked === undefined ? grades : [];
}
