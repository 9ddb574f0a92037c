import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { isForce, ratedLoadIn, STANDARD_GRAVITY } from '../quantities/rated.js';
import { readPositive } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import {
  chainCell,
  type GradeOf,
  printedRating,
  type RatedCell,
  type RatingTable,
  rowOf,
  type SizeOf,
  sourceOfCell,
} from '../tables/rating-table.js';
import { FOLLOW_THE_MARK, NOT_FOR_LIFTING, STRAIGHT_PULL } from '../working/cautions.js';
import { note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { type StepValue, Working } from '../working/step.js';
import { type ChainGrade, checkChain, checkGrade, type TradeSize } from './trade-size.js';

/** Where a rating comes from: the maker's mark, the table's row, or the row an unmarked chain counts as. */
export type ChainRatingBasis = 'marked' | 'table' | 'unmarked';

export interface ChainRating extends ResultBase<'chainRating'> {
  readonly workingLoadLimit: Quantity<'lb' | 'kg'>;
  readonly basis: ChainRatingBasis;
  readonly size: string;
  /** The grade the chain counts as; absent for a marked chain whose grade was not given. */
  readonly grade?: number;
  /** The table's id. */
  readonly ratings: string;
  /** Design factor times the working load limit, where the table states one. A manufacturing figure, never a limit for use. */
  readonly minimumBreakingForce?: Quantity<'lbf' | 'kN'>;
  readonly designFactor?: number;
}

interface Options {
  /** Units of the result; the table's own when omitted. */
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

/** Input of {@link chainRating} for a chain the table lists. */
export interface ListedChain<T extends RatingTable, S> extends Options {
  readonly ratings: T;
  readonly size: S;
  readonly grade?: GradeOf<T, S>;
}

/** Input of {@link chainRating} for a chain that carries its working load limit: any trade size, any grade. */
export interface MarkedChain extends Options {
  readonly ratings: RatingTable;
  readonly size: TradeSize;
  readonly grade?: ChainGrade;
  readonly markedWll: QuantityInput<'ratedLoad'>;
}

/** What a chain may be counted on for. */
interface ChainLimit {
  readonly limit: QuantityLike;
  readonly basis: ChainRatingBasis;
  readonly grade?: number;
  readonly cell?: RatedCell;
}

/**
 * The working load limit of a chain in a named rating table: the maker's marked limit where there is one,
 * else the table's value for size and grade, else what the document gives an unmarked chain.
 *
 * WLL = marked WLL, or table(size, grade). Nothing is interpolated between sizes or grades, and a higher grade
 * is not assumed to be stronger: in 49 CFR 393.108 the 5/16 in grade 80 row is below the grade 70 row.
 *
 * @param input.ratings the rating table, such as {@link us49cfr393_108_2024}
 * @param input.size trade size as the table writes it, such as `'5/16'`
 * @param input.grade 30, 43, 70, 80, 100 or 120; omitted means the grade cannot be read from the chain
 * @param input.units `'us'` or `'si'`; omitted: the table's own. The kg column of a table is the printed one, no conversion
 * @throws RiggingError `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `NO_VALUE_IN_TABLE` (such as 7/16 grade 80), `MISSING_FIELD` (no
 * grade, and the document counts unmarked chain as nothing), `NOT_POSITIVE`, `WRONG_KIND`
 * @validity a straight pull on chain in sound condition; the mark on the chain governs
 * @source 49 CFR 393.108(b) and (d), as of 2024, for that table; each table names its own
 * @example
 * chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 }).workingLoadLimit
 * // => 4700 lb
 * @example
 * chainRating({ ratings: us49cfr393_108_2024, size: '3/8' }).workingLoadLimit
 * // => 2650 lb
 */
export function chainRating<const T extends RatingTable, const S extends SizeOf<T>>(
  input: ListedChain<T, S>,
): ChainRating;
/**
 * The working load limit of a chain that carries its maker's mark: that limit, above or below any table, for any
 * trade size and grade.
 *
 * @param input.ratings the rating table the caller works with; its value is shown beside the mark
 * @param input.size any trade size, such as `'9/32'`
 * @param input.markedWll the limit the maker marked, a rated load in mass or force units
 * @throws RiggingError `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `NOT_POSITIVE`, `WRONG_KIND` and what the parser throws
 * @source 49 CFR 393.108(b): a marked limit governs; standard gravity where it is marked as a force
 * @example
 * chainRating({ ratings: us49cfr393_108_2024, size: '9/32', grade: 80, markedWll: '3500 lb' }).basis
 * // => 'marked'
 */
export function chainRating(input: MarkedChain): ChainRating;
export function chainRating(input: ListedChain<RatingTable, string> | MarkedChain): ChainRating {
  checkObject(input, '', '{ ratings, size, grade }');
  const { ratings, size, grade } = input;
  const markedWll = 'markedWll' in input ? input.markedWll : undefined;
  const working = new Working(input.working !== false);
  checkRatings(ratings);
  const units = readSystem(input.units, ratings.units);
  checkGrade(grade);
  const { limit, basis, grade: countedGrade, cell } = chainLimit(ratings, size, grade, markedWll);

  const system = massUnitOf(units);
  const workingLoadLimit =
    cell === undefined || basis === 'marked'
      ? ratedLoadIn(limit, system)
      : new Quantity(printedRating(cell, units).value, system);
  if (working.shown)
    showRating(working, ratings, size, { limit, basis, grade: countedGrade, cell } as ChainLimit, workingLoadLimit);
  if (cell !== undefined && basis !== 'marked') working.cite(sourceOfCell(ratings.chain, cell, units));
  else
    working.cite({
      document: "maker's mark on the chain or its tag",
      provenance: 'read',
      note: 'as the caller states it',
    });
  if (basis === 'unmarked') {
    working.assumptions.push(
      note('UNMARKED_CHAIN', { grade: countedGrade ?? 0, clause: ratings.unmarkedChain?.clause ?? '' }),
    );
  }
  working.cautions.push(STRAIGHT_PULL, FOLLOW_THE_MARK);
  if ((countedGrade ?? 0) < 80) working.cautions.push(NOT_FOR_LIFTING);

  const force = basis === 'marked' ? undefined : cell?.minimum_breaking_force_lbf;
  return makeResult(
    'chainRating',
    {
      workingLoadLimit,
      basis,
      size,
      ...(countedGrade === undefined ? {} : { grade: countedGrade }),
      ratings: ratings.id,
      ...(force === undefined
        ? {}
        : { minimumBreakingForce: ratedLoadIn({ value: force, unit: 'lbf' }, units === 'si' ? 'kN' : 'lbf') }),
      ...(cell?.design_factor === undefined || basis === 'marked' ? {} : { designFactor: cell.design_factor }),
    },
    input,
    working,
  );
}

/** The limit itself, before any result is built around it. */
function chainLimit(ratings: RatingTable, size: string, grade: number | undefined, markedWll: unknown): ChainLimit {
  if (markedWll !== undefined) {
    checkChain(size, grade);
    const limit = readPositive(markedWll, 'ratedLoad', 'markedWll');
    const cell = grade === undefined ? undefined : rowOf(rowOf(ratings.chain.rows, size) ?? {}, grade);
    return {
      limit,
      basis: 'marked',
      ...(grade === undefined ? {} : { grade }),
      ...(cell === undefined ? {} : { cell }),
    };
  }
  if (grade === undefined) {
    const unmarked = ratings.unmarkedChain;
    if (unmarked === null) {
      return fail(
        'MISSING_FIELD',
        'grade',
        'the grade read from the chain',
        undefined,
        `${ratings.id} does not rate chain without a grade mark: read it, or give markedWll.`,
      );
    }
    const cell = chainCell(ratings, size, unmarked.grade);
    return { limit: printedRating(cell, ratings.units), basis: 'unmarked', grade: unmarked.grade, cell };
  }
  const cell = chainCell(ratings, size, grade);
  return { limit: printedRating(cell, ratings.units), basis: 'table', grade, cell };
}

/** Refuses anything that is not a rating table, with the remedy a newcomer needs. */
export function checkRatings(ratings: unknown): asserts ratings is RatingTable {
  if ((ratings as Partial<RatingTable> | null | undefined)?.chain?.rows === undefined) {
    fail(
      'UNKNOWN_RATING_TABLE',
      'ratings',
      'a rating table constant',
      ratings,
      'Import one, such as us49cfr393_108_2024.',
    );
  }
}

function showRating(working: Working, ratings: RatingTable, size: string, found: ChainLimit, shown: Quantity): void {
  const { limit, basis, grade, cell } = found;
  const subject = grade === undefined ? `chain ${size}` : `chain ${size} grade ${grade}`;
  if (basis === 'marked') {
    const crossing = isForce(limit);
    const values: (readonly [string, StepValue])[] = [['marked WLL', limit]];
    if (crossing) values.push(['g', { value: STANDARD_GRAVITY, unit: 'm/s2' }]);
    if (cell !== undefined) values.push(['table WLL, not used', printedRating(cell, ratings.units)]);
    working.step(subject, 'WLL', crossing ? 'marked WLL / g' : 'marked WLL', values, shown);
    return;
  }
  working.step(
    subject,
    'WLL',
    'table(size, grade)',
    [
      ['size', size],
      ['grade', grade ?? ''],
    ],
    shown,
    ratings.chain.source.clause && `${ratings.chain.source.document} ${ratings.chain.source.clause}`,
  );
  if (cell?.minimum_breaking_force_lbf !== undefined && cell.design_factor !== undefined) {
    working.step(
      subject,
      'MBF',
      'design factor · WLL',
      [
        ['design factor', cell.design_factor],
        ['WLL', printedRating(cell, 'us')],
      ],
      { value: cell.minimum_breaking_force_lbf, unit: 'lbf' },
    );
  }
}
