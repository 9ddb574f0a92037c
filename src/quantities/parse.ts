import { fail } from '../errors.js';
import { decimalOf } from './decimal.js';
import { Quantity } from './quantity.js';
import {
  EXAMPLE_UNIT,
  isUnit,
  type Kind,
  UNITS,
  type Unit,
  type UnitOfKind,
  unitFitsKind,
  unitsOfKind,
} from './units.js';

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
  if (typeof text !== 'string') return refuse(text, kind, path);
  if (text.length > MAX_LENGTH) {
    return fail('TEXT_TOO_LONG', path, `at most ${MAX_LENGTH} characters`, text, 'Write one number and one unit.');
  }
  // Nearly all text is "decimal unit": read it in one pass, and leave the rest to the full grammar. Up to 15
  // digits, both numbers of the division below are exact, so the quotient is the number that was written.
  const start = text.charCodeAt(0) === 45 ? 1 : 0;
  let at = start;
  let number = 0;
  let scale = 1;
  let code = text.charCodeAt(at);
  while (code >= 48 && code <= 57) {
    number = number * 10 + (code - 48);
    code = text.charCodeAt(++at);
  }
  let digits = at - start;
  if (code === 46 && digits > 0) {
    code = text.charCodeAt(++at);
    const point = at;
    while (code >= 48 && code <= 57) {
      number = number * 10 + (code - 48);
      scale *= 10;
      code = text.charCodeAt(++at);
    }
    if (at === point) return refuse(text, kind, path);
    digits += at - point;
  }
  if (digits === 0 || code !== 32) return parseFraction(text, kind, path);
  const unit = text.slice(at + 1);
  if (!isUnit(unit)) return parseFraction(text, kind, path);
  const size = digits > 15 ? longNumber(text.slice(start, at), path) : number / scale;
  return finish(start === 0 ? size : -size, unit, kind, path);
}

/** The kinds whose values cannot be below zero. Lengths can: a coordinate is a length. */
const NEVER_NEGATIVE: readonly Kind[] = ['mass', 'ratedLoad', 'duration', 'massPerLength', 'density'];

/** Refuses values below zero in the kinds that have none. */
export function checkSign(value: number, kind: Kind, path: string): void {
  if (value < 0 && NEVER_NEGATIVE.includes(kind)) {
    fail('NEGATIVE', path, `${kind} of zero or more`, value, 'Check the sign.');
  }
}

/** Refuses a quantity whose unit measures something else. */
export function wrongKind(value: number, unit: Unit, kind: Kind, path: string): never {
  checkKind(kind);
  const { dimension } = UNITS[unit];
  const massForForce = (dimension === 'mass' && kind === 'force') || (dimension === 'force' && kind === 'mass');
  const remedy = massForForce
    ? 'lb, kg and t are masses; lbf, kgf, N and kN are forces; weightOf(mass) gives the force of a mass.'
    : 'Give the quantity this field asks for.';
  return fail('WRONG_KIND', path, `${kind} (${unitsOfKind(kind)})`, `${value} ${unit}`, remedy);
}

function checkKind(kind: unknown): asserts kind is Kind {
  if (typeof kind !== 'string' || !Object.hasOwn(EXAMPLE_UNIT, kind)) {
    fail(
      'UNKNOWN_VALUE',
      'kind',
      `one of ${Object.keys(EXAMPLE_UNIT).join(', ')}`,
      kind,
      'Name the kind of quantity wanted.',
    );
  }
}

const FRACTION = /^(?:(\d{1,9}) )?(\d{1,9})\/(2|4|8|16|32|64) (\S+)$/;
const FEET_AND_INCHES = /^(\d{1,9}) ft (?:(\d{1,2})(\.\d+)?|(?:(\d{1,2}) )?(\d{1,9})\/(2|4|8|16|32|64)) in$/;

function parseFraction<K extends Kind>(text: string, kind: K, path: string): Quantity<UnitOfKind[K]> {
  const fraction = FRACTION.exec(text);
  if (fraction !== null) {
    const [, whole, numerator, denominator, unit] = fraction;
    const part = Number(numerator) / Number(denominator);
    if (!isUnit(unit) || (whole !== undefined && part >= 1)) return refuse(text, kind, path);
    return finish(Number(whole ?? 0) + part, unit, kind, path);
  }
  const compound = FEET_AND_INCHES.exec(text);
  if (compound !== null) {
    const [, feet, inches, decimals, whole, numerator, denominator] = compound;
    const part = numerator === undefined ? 0 : Number(numerator) / Number(denominator);
    const wholeInches = Number(inches ?? whole ?? 0);
    if (wholeInches + part >= 12 || (whole !== undefined && part >= 1)) return refuse(text, kind, path);
    const total = Number(feet) * 12 + wholeInches;
    return finish(decimals === undefined ? total + part : longNumber(total + decimals, path), 'in', kind, path);
  }
  return refuse(text, kind, path);
}

function finish<K extends Kind>(value: number, unit: Unit, kind: K, path: string): Quantity<UnitOfKind[K]> {
  if (!unitFitsKind(unit, kind)) return wrongKind(value, unit, kind, path);
  checkSign(value, kind, path);
  return new Quantity(value, unit as UnitOfKind[K]);
}

/**
 * Up to 15 significant digits a number holds exactly what was written. Longer text is accepted only where it
 * is the number's own shortest form, as when a program wrote it; otherwise text and number would differ.
 */
function longNumber(written: string, path: string): number {
  const value = +written;
  const digits = significant(written.replace('.', ''));
  if (digits.length > 15 && digits !== significant(decimalOf(value).digits)) {
    fail('TEXT_TOO_PRECISE', path, 'at most 15 significant digits', written, 'Round the number as it was measured.');
  }
  return value;
}

const significant = (digits: string) => digits.replace(/^0+/, '').replace(/0+$/, '');

/** What people often write, in lower case and without a plural s, for a unit of this library. */
const ALSO_WRITTEN: { readonly [U in Unit]?: string } = {
  lb: 'pound #',
  kg: 'kilogram',
  t: 'tonne',
  in: 'inch inche " ”',
  ft: "foot feet ' ’",
  yd: 'yard',
  m: 'meter',
  'km/h': 'kph',
  deg: 'degree °',
  'percent-grade': '%',
};

/** Thousands or decimals written with a comma, apostrophe, underscore or space. */
const SEPARATORS = /\d[,_]\d|\d\.\d+\.\d|\d['’\s]\d{3}(?![\d/])/;
const CONTAINS_TON = /(?:^|[\s\d])tons?(?:[\s-]|$)/i;
const CAPITAL_T = /\d ?T$/;
const NUMBER_THEN_NAME = /^-?\d+(?:\.\d+)?(?:(?: \d+)?\/\d+)? ?((?!['"’”′″].)[^\d\s.,/+-]\S*)$/;

/** What to do about a mistake of form; the first that applies is said. */
const HINTS: readonly (readonly [mistake: RegExp, remedy: string])[] = [
  [/^$/, 'Leave the field out when the value is not known.'],
  [/ ft | ?['"’”]/, 'Write feet and inches as 16 ft 6 in, with the inches below 12.'],
  [/\d\/\d|[¼-¾⅐-⅞]/, 'Write fractions as halves to sixty-fourths below one: 5/16 in, 3 3/8 in.'],
];

/** Says what is wrong with text that is no quantity; speed does not matter here. */
function refuse(text: unknown, kind: Kind, path: string): never {
  checkKind(kind);
  const units = `Units for a ${kind}: ${unitsOfKind(kind)}.`;
  const example = EXAMPLE_UNIT[kind];
  if (typeof text !== 'string') return fail('NOT_A_QUANTITY', path, 'text', text, units);
  if (SEPARATORS.test(text)) {
    return fail(
      'AMBIGUOUS_NUMBER',
      path,
      'a number without separators',
      text,
      `Write 1000 ${example}, not 1,000 ${example}; decimals take a point: 2.5 ${example}.`,
    );
  }
  if (CONTAINS_TON.test(text) || CAPITAL_T.test(text)) {
    return fail(
      'AMBIGUOUS_UNIT',
      path,
      'short-ton, long-ton or t',
      text,
      'Say which ton: short-ton (2000 lb), long-ton (2240 lb) or t (1000 kg).',
    );
  }
  const hint = HINTS.find(([mistake]) => mistake.test(text))?.[1];
  const name = NUMBER_THEN_NAME.exec(text)?.[1];
  if (name !== undefined && !isUnit(name)) {
    const better = betterUnit(name);
    return fail(
      'UNKNOWN_UNIT',
      path,
      `a unit of kind ${kind}`,
      text,
      better === undefined ? `Write one of: ${unitsOfKind(kind)}.` : `Write ${better}, not ${name}.`,
    );
  }
  return fail(
    'TEXT_NOT_A_QUANTITY',
    path,
    `one number, one space, one unit, such as '3 ${example}'`,
    text,
    hint ?? units,
  );
}

function betterUnit(name: string): string | undefined {
  const written = name.toLowerCase().replace(/s?\.?$/, '');
  const sameLetters = Object.keys(UNITS).find((unit) => unit.toLowerCase() === written);
  return sameLetters ?? Object.entries(ALSO_WRITTEN).find(([, names]) => names.split(' ').includes(written))?.[0];
}
