import { fail, type RiggingErrorCode } from '../errors.js';
import { plainDecimal } from './decimal.js';
import { Quantity } from './quantity.js';
import { isUnit, type Kind, UNITS, type Unit, type UnitOfKind, unitFitsKind, unitsOfKind } from './units.js';

/** Longest text that is looked at: the longest that a quantity of sensible size prints. */
const MAX_LENGTH = 64;

/**
 * Reads strict text as a quantity of a kind.
 *
 * Grammar (the whole text must match, one space between the pieces):
 *
 *     quantity  = number " " unit | digits " ft " inches " in"     (inches below 12, without a sign)
 *     number    = ["-"] decimal | fraction | digits " " fraction   (beside a whole number a fraction is below 1)
 *     inches    = decimal | fraction | digits " " fraction
 *     decimal   = digits ["." digits]
 *     fraction  = digits "/" ( "2" | "4" | "8" | "16" | "32" | "64" )
 *
 * No thousands separators, exponents, locale or unit guessing. Halving fractions only, so that every accepted
 * text has an exact value; feet-and-inches are returned in inches for the same reason. Linear in the length
 * of the text, which is refused above 64 characters.
 *
 * @param text such as `'3940 lb'`, `'5/16 in'`, `'3 3/8 in'`, `'16 ft 6 in'`, `'0.435 g'`
 * @param kind what the field asks for: `'length'`, `'mass'`, `'force'`, `'ratedLoad'`, `'angle'`, ...
 * @param path where the text came from; goes into the error
 * @returns the quantity, in the unit that was written
 * @throws RiggingError `TEXT_NOT_A_QUANTITY`, `TEXT_TOO_LONG`, `TEXT_TOO_PRECISE`, `AMBIGUOUS_NUMBER`, `AMBIGUOUS_UNIT`,
 * `UNKNOWN_UNIT`, `WRONG_KIND`, `NEGATIVE`, `NOT_A_QUANTITY` when it is not text, `UNKNOWN_VALUE` for an unknown kind
 * @example
 * parseQuantity('3 3/8 in', 'length')
 * // => 3.375 in
 * @example
 * parseQuantity('16 ft 6 in', 'length')
 * // => 198 in
 */
export function parseQuantity<K extends Kind>(text: string, kind: K, path = ''): Quantity<UnitOfKind[K]> {
  if (typeof text !== 'string') return refuse('NOT_A_QUANTITY', path, kind, text);
  if (text.length > MAX_LENGTH) return refuse('TEXT_TOO_LONG', path, kind, text, `At most ${MAX_LENGTH} characters.`);
  // Nearly all text is "decimal unit": read it in one pass, and leave the rest to the full grammar. Up to 15
  // digits, both numbers of the division below are exact, so the quotient is the number that was written.
  const start = text.charCodeAt(0) === 45 ? 1 : 0;
  let number = 0;
  let scale = 0; // beyond the decimal point a power of ten
  let at = start;
  for (let code = text.charCodeAt(at); code !== 32; code = text.charCodeAt(++at)) {
    if (code >= 48 && code <= 57) {
      number = number * 10 + (code - 48);
      scale *= 10;
    } else if (code === 46 && scale === 0 && at > start) scale = 1;
    else return parseFraction(text, kind, path);
  }
  const unit = text.slice(at + 1);
  if (at === start || scale === 1 || !isUnit(unit)) return parseFraction(text, kind, path);
  const size = at - start > 15 ? longNumber(text.slice(start, at), path) : number / (scale || 1);
  return quantityOfKind(start === 0 ? size : -size, unit, kind, path);
}

/** The kinds whose values cannot be below zero. Lengths can: a coordinate is a length. */
const NEVER_NEGATIVE: readonly Kind[] = ['mass', 'ratedLoad', 'duration', 'massPerLength', 'density'];

/** Refuses values below zero in the kinds that have none. */
export function checkSign(value: number, kind: Kind, path: string): void {
  if (value < 0 && NEVER_NEGATIVE.includes(kind)) {
    refuse('NEGATIVE', path, kind, value, 'Check the sign.');
  }
}

/** A quantity from its two parts, if the unit and the sign are ones that the kind has. */
export function quantityOfKind<K extends Kind>(value: number, unit: string, kind: K, path: string): Quantity<UnitOfKind[K]> {
  if (!unitFitsKind(unit as Unit, kind)) return refuseUnit(value, unit, kind, path);
  const quantity = new Quantity(value, unit as UnitOfKind[K], path);
  checkSign(value, kind, path);
  return quantity;
}

/** A fraction, or feet and inches. A decimal without feet has an unknown unit when it comes here. */
const FRACTION_OR_FEET = /^(?:(\d{1,9}) ft )?(?:(?:(\d{1,9}) )?(\d{1,9})\/(2|4|8|16|32|64)|(\d{1,9})(\.\d+)?) (\S+)$/;

function parseFraction<K extends Kind>(text: string, kind: K, path: string): Quantity<UnitOfKind[K]> {
  const [, feet, whole, numerator = 0, denominator = 1, inches = 0, decimals, unit] = FRACTION_OR_FEET.exec(text) ?? [];
  const part = Number(numerator) / Number(denominator);
  const size = Number(whole ?? inches) + part;
  const mixed = (whole === undefined || part < 1) && (feet === undefined || (unit === 'in' && size < 12));
  if (!mixed || !isUnit(unit)) return refuseText(text, kind, path);
  const total = Number(feet ?? 0) * 12 + size;
  return quantityOfKind(decimals === undefined ? total : longNumber(total + decimals, path), unit, kind, path);
}

/**
 * Any text of up to 15 significant digits is its number's own shortest form. Longer text is accepted where it is,
 * as when a program wrote it; otherwise text and number would differ.
 */
function longNumber(written: string, path: string): number {
  const value = Number(written);
  if (significant(written) === significant(plainDecimal(value))) return value;
  return fail('TEXT_TOO_PRECISE', path, 'at most 15 significant digits', written, 'Round it as measured.');
}

const significant = (decimal: string) => decimal.replace('.', '').replace(/^0+|0+$/g, '');

/** What people often write for a unit of this library, without a plural s. */
const ALSO_WRITTEN: { readonly [name: string]: Unit } = {
  pound: 'lb',
  '#': 'lb',
  inch: 'in',
  inche: 'in',
  '"': 'in',
  '”': 'in',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '’': 'ft',
  tonne: 't',
};

/** Thousands or decimals written with a comma, apostrophe, underscore or space. */
const SEPARATORS = /\d[,_]\d|\d\.\d+\.\d|\d['’\s]\d{3}(?![\d/])/;
const WHICH_TON = /(?<![a-z-])(?:[Tt]ons?|TONS?|T)(?![a-z/])/;
const NUMBER_THEN_NAME = /^-?[\d./ ]*\d ?([^\d\s./][^\d\s]*)$/;

/** Says what is wrong with text that is no quantity; speed does not matter here. */
function refuseText(text: string, kind: Kind, path: string): never {
  if (SEPARATORS.test(text)) {
    refuse('AMBIGUOUS_NUMBER', path, kind, text, 'Write 1000, not 1,000; decimals take a point: 2.5.');
  }
  if (WHICH_TON.test(text)) {
    refuse('AMBIGUOUS_UNIT', path, kind, text, 'Say which ton: short-ton (2000 lb), long-ton (2240 lb) or t (1000 kg).');
  }
  const name = NUMBER_THEN_NAME.exec(text)?.[1];
  if (name !== undefined && !isUnit(name)) {
    const written = name.toLowerCase().replace(/s?\.?$/, '');
    const known = [...Object.keys(UNITS), ...Object.keys(ALSO_WRITTEN)].find((each) => each.toLowerCase() === written);
    refuse('UNKNOWN_UNIT', path, kind, text, known && `Write ${ALSO_WRITTEN[known] ?? known}, not ${name}.`);
  }
  let remedy: string | undefined;
  if (text === '') remedy = 'Leave the field out when the value is not known.';
  else if (/ ft |['"”]/.test(text)) remedy = 'Write 16 ft 6 in, with the inches below 12.';
  else if (/[/¼-¾⅐-⅞]/.test(text)) remedy = 'Write fractions as 5/16 in or 3 3/8 in, halves to sixty-fourths.';
  refuse('TEXT_NOT_A_QUANTITY', path, kind, text, remedy);
}

function refuseUnit(value: number, unit: string, kind: Kind, path: string): never {
  const dimension = UNITS[unit as Unit]?.dimension;
  if (dimension === undefined) refuse('UNKNOWN_UNIT', path, kind, unit);
  const crossed = [kind, dimension].every((each) => each === 'mass' || each === 'force');
  const remedy = crossed ? 'lb is a mass, lbf a force; weightOf(mass) gives the force.' : undefined;
  refuse('WRONG_KIND', path, kind, `${value} ${unit}`, remedy);
}

/** Refuses an input for a kind; without a better remedy the message lists its units. */
export function refuse(code: RiggingErrorCode, path: string, kind: Kind, received: unknown, remedy?: string): never {
  const units = unitsOfKind(kind);
  const [unit] = units;
  if (unit === undefined) fail('UNKNOWN_VALUE', 'kind', 'a kind such as length or mass', kind, 'Name the kind wanted.');
  const expected = `${kind} such as '3 ${unit}' or { value: 3, unit: '${unit}' }`;
  return fail(code, path, expected, received, remedy ?? `Write a number, one space and a unit: ${units.join(', ')}.`);
}
