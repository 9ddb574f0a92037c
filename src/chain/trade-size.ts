import { fail } from '../errors.js';

/** Trade sizes of chain in inches. The trade size names the chain, not the wire, which runs over it. */
export const INCH_SIZES = [
  '1/8',
  '3/16',
  '7/32',
  '1/4',
  '9/32',
  '5/16',
  '3/8',
  '7/16',
  '1/2',
  '5/8',
  '3/4',
  '7/8',
  '1',
  '1-1/4',
] as const;

/** A trade size in inches as written: `'1/4'`, `'5/16'`, `'1-1/4'`. */
export type InchSize = (typeof INCH_SIZES)[number];

/** A trade size: inches as written, or a metric size, which does name the wire: `'8 mm'`. */
export type TradeSize = InchSize | `${number} mm`;

/** Grades of North American welded chain. */
export type ChainGrade = 30 | 43 | 70 | 80 | 100 | 120;

/** Classes of European chain: 4 is 400 N/mm², 5 is 500, 8 is 800. */
export type EuropeanChainClass = '4' | '5' | '8';

/** A grade as the market of the chain writes it. */
export type AnyGrade = ChainGrade | EuropeanChainClass;

export const EUROPEAN_CLASSES = ['4', '5', '8'] as const satisfies readonly EuropeanChainClass[];

/** Every grade of {@link ChainGrade}, lowest first; whether a rating table lists one is asked of the table. */
export const CHAIN_GRADES = [30, 43, 70, 80, 100, 120] as const satisfies readonly ChainGrade[];

/**
 * Reads a trade size from free text, as a form field or a stock list has it. It accepts the size alone, the
 * size with `in` or an inch sign, or millimeters; nothing is rounded to a neighboring size.
 *
 * @param text such as `'5/16'`, `'5/16 in'`, `'5/16"'`, `'1 1/4'`, `'8 mm'`, `'8mm'`
 * @param path where the text came from; goes into the error
 * @throws RiggingError `UNKNOWN_SIZE` when the text names no trade size (decimals such as `0.3125` included: a
 * caliper reading is a wire diameter, not a trade size; see {@link identifyChain})
 * @example
 * parseTradeSize('5/16 in')
 * // => '5/16'
 */
export function parseTradeSize(text: string, path = 'size'): TradeSize {
  const wanted = `a trade size: ${INCH_SIZES.join(', ')}, or millimeters such as '8 mm'`;
  if (typeof text !== 'string' || text.length > 24)
    return fail('UNKNOWN_SIZE', path, wanted, text, 'A caliper reading goes to identifyChain as wireDiameter.');
  const plain = text.trim();
  const metric = /^(\d{1,2}(?:\.\d)?) ?mm$/.exec(plain);
  if (metric !== null && Number(metric[1]) > 0) return `${Number(metric[1])} mm`;
  const inch = plain.replace(/ ?(?:in|inch|")$/, '').replace(/^(\d) (\d+\/\d+)$/, '$1-$2');
  const known = INCH_SIZES.find((size) => size === inch);
  return known ?? fail('UNKNOWN_SIZE', path, wanted, text, 'A caliper reading goes to identifyChain as wireDiameter.');
}

/** True when a value is a trade size in either system. */
export function isTradeSize(value: unknown): value is TradeSize {
  return typeof value === 'string' && (INCH_SIZES.includes(value as InchSize) || /^\d{1,2}(?:\.\d)? mm$/.test(value));
}

/** A size and grade that somebody makes; whether a table lists the pair is asked later. */
export function checkChain(size: unknown, grade: unknown): void {
  if (!isTradeSize(size)) {
    fail('UNKNOWN_SIZE', 'size', "a trade size such as '5/16'", size, 'Free text goes through parseTradeSize.');
  }
  if (!EUROPEAN_CLASSES.includes(grade as EuropeanChainClass)) checkGrade(grade);
}

/** A grade that somebody makes, or none. */
export function checkGrade(grade: unknown, path = 'grade'): void {
  if (grade !== undefined && !CHAIN_GRADES.includes(grade as ChainGrade)) {
    fail('UNKNOWN_GRADE', path, `one of ${CHAIN_GRADES.join(', ')}`, grade, 'Leave it out where it is not known.');
  }
}
