import { fail, type RiggingErrorCode } from '../errors.js';
import { checkOneOf } from '../input-checks.js';
import { plainDecimal } from './decimal.js';
import { Quantity } from './quantity.js';
import { isUnit, type Kind, kinds, UNITS, type Unit, type UnitOfKind, unitFitsKind, unitsOfKind } from './units.js';

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
  if (typeof text !== 'string' || text.length > MAX_LENGTH) {
    return refuse(typeof text === 'string' ? 'TEXT_TOO_LONG' : 'NOT_A_QUANTITY', path, kind, text);
  }
  // Nearly all text is a short "decimal unit": it is read without the pattern of all forms.
  const space = text.indexOf(' ');
  const number = text.slice(0, space);
  const unit = text.slice(space + 1) as UnitOfKind[K];
  if (space < 16 && unitFitsKind(unit, kind) && PLAIN.test(number)) return new Quantity(Number(number), unit, path);
  return parseForm(text, kind, path);
}

const PLAIN = /^\d+(?:\.\d+)?$/;

/** The kinds whose values cannot be below zero. Lengths can: a coordinate is a length. */
const NEVER_NEGATIVE: readonly Kind[] = ['mass', 'ratedLoad', 'duration', 'massPerLength', 'density'];

/** Refuses values below zero in the kinds that have none. */
export function checkSign(value: number, kind: Kind, path: string): void {
  if (value < 0 && NEVER_NEGATIVE.includes(kind)) {
    refuse('NEGATIVE', path, kind, value, 'Check the sign.');
  }
}

/** A quantity from its two parts, if the unit and the sign are ones that the kind has. */
export function quantityOfKind<K extends Kind>(
  value: number,
  unit: string,
  kind: K,
  path: string,
): Quantity<UnitOfKind[K]> {
  if (!unitFitsKind(unit as Unit, kind)) {
    const dimension = UNITS[unit as Unit]?.dimension;
    if (dimension === undefined) refuse('UNKNOWN_UNIT', path, kind, unit);
    const crossed = [kind, dimension].every((each) => each === 'mass' || each === 'force');
    const remedy = crossed ? 'lb is a mass, lbf a force: weightOf(mass).' : undefined;
    refuse('WRONG_KIND', path, kind, `${value} ${unit}`, remedy);
  }
  const quantity = new Quantity(value, unit as UnitOfKind[K], path);
  checkSign(value, kind, path);
  return quantity;
}

const FORM = /^(?:(\d{1,9}) ft (?!-))?(?:(?:(\d{1,9}) )?(\d{1,9})\/(2|4|8|16|32|64)|(-?\d+)(\.\d+)?) (\S+)$/;

function parseForm<K extends Kind>(text: string, kind: K, path: string): Quantity<UnitOfKind[K]> {
  const [, feet, whole, numerator = 0, denominator = 1, digits, decimals = '', unit] = FORM.exec(text) ?? [];
  const part = Number(numerator) / Number(denominator);
  const size = Number(whole ?? digits ?? 0) + part;
  const fits = (whole === undefined || part < 1) && (feet === undefined || (unit === 'in' && size < 12));
  if (!fits || !isUnit(unit)) return refuseText(text, kind, path);
  const total = Number(feet ?? 0) * 12 + size;
  const written = feet === undefined ? digits : total;
  return quantityOfKind(digits === undefined ? total : numberIn(written + decimals, path), unit, kind, path);
}

/**
 * Any text of up to 15 significant digits is its number's own shortest form. Longer text is accepted where it is,
 * as when a program wrote it; otherwise text and number would differ.
 */
function numberIn(decimal: string, path: string): number {
  const value = Number(decimal);
  if (significant(decimal) === significant(plainDecimal(value))) return value;
  return fail('TEXT_TOO_PRECISE', path, 'at most 15 significant digits', decimal, 'Round it as measured.');
}

const significant = (decimal: string) => decimal.replace('.', '').replace(/^[-0]+|0+$/g, '');

/** Thousands or decimals written with a comma, apostrophe, underscore or space. */
const SEPARATORS = /\d[,_]\d|\d\.\d+\.\d|\d['’\s]\d{3}(?![\d/])/;
const WHICH_TON = /(?<![a-z-])(?:[Tt]ons?|TONS?|T)(?![a-z/])/;
const NUMBER_THEN_NAME = /^-?[\d./ ]*\d ?([^\d\s./][^\d\s]*)$/;

/** Says what is wrong with text that is no quantity; speed does not matter here. */
function refuseText(text: string, kind: Kind, path: string): never {
  if (SEPARATORS.test(text)) refuse('AMBIGUOUS_NUMBER', path, kind, text);
  if (WHICH_TON.test(text)) {
    refuse(
      'AMBIGUOUS_UNIT',
      path,
      kind,
      text,
      'Say which ton: short-ton (2000 lb), long-ton (2240 lb) or t (1000 kg).',
    );
  }
  const name = NUMBER_THEN_NAME.exec(text)?.[1];
  if (name !== undefined && !isUnit(name)) {
    const meant = name
      .toLowerCase()
      .replace(/s?\.?$/, '')
      .replace(/^(?:pound|#)$/, 'lb')
      .replace(/^(?:inche?|["”])$/, 'in')
      .replace(/^(?:f[eo]+t|['’])$/, 'ft')
      .replace('tonne', 't');
    const unit = Object.keys(UNITS).find((each) => each.toLowerCase() === meant);
    refuse('UNKNOWN_UNIT', path, kind, text, unit && `Write ${unit}, not ${name}.`);
  }
  refuse('TEXT_NOT_A_QUANTITY', path, kind, text);
}

/** Refuses an input for a kind; without a better remedy the message says how to write one, and lists the units. */
export function refuse(code: RiggingErrorCode, path: string, kind: Kind, received: unknown, remedy?: string): never {
  checkOneOf(kind, kinds(), 'kind');
  const units = unitsOfKind(kind);
  const lengths = kind === 'length' ? ', 3 3/8 in (halves to sixty-fourths) or 16 ft 6 in (inches below 12)' : '';
  const form = `Write 1000.5 ${units[0]}, one space, no separators${lengths}; units: ${units.join(', ')}.`;
  return fail(code, path, `${kind} as text or { value, unit }`, received, remedy ?? form);
}
