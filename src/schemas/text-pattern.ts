import type { Kind, Unit } from '../quantities/units.js';

/** A fraction in up to nine digits whose numerator has one of these forms, by its denominator. */
function fraction(numerators: Readonly<Record<number, string>>): string {
  const forms = Object.entries(numerators).map(([denominator, form]) => `(?:${form})/${denominator}`);
  return `(?=[0-9]{1,9}/)0*(?:${forms.join('|')})`;
}

const BELOW_ONE = {
  2: '[01]',
  4: '[0-3]',
  8: '[0-7]',
  16: '[0-9]|1[0-5]',
  32: '[12]?[0-9]|3[01]',
  64: '[1-5]?[0-9]|6[0-3]',
};

/** For inches beside feet. */
const BELOW_TWELVE = {
  2: '1?[0-9]|2[0-3]',
  4: '[1-3]?[0-9]|4[0-7]',
  8: '[1-8]?[0-9]|9[0-5]',
  16: '[1-9]?[0-9]|1[0-8][0-9]|19[01]',
  32: '[1-9]?[0-9]|[12][0-9]{2}|3[0-7][0-9]|38[0-3]',
  64: '[1-9]?[0-9]|[1-6][0-9]{2}|7[0-5][0-9]|76[0-7]',
};

const INCHES = '0*(?:[0-9]|1[01])';

/**
 * The grammar of `parseQuantity` as one pattern, for validators that know only JSON Schema. What it cannot say
 * is whether a number of more than 15 digits is its own shortest form.
 */
export function textPattern(kind: Kind, units: readonly Unit[], sign: 'any' | 'zero or more' | 'positive'): RegExp {
  const unit = `(?:${units.join('|')})`;
  const belowOne = fraction(BELOW_ONE);
  // minus zero is zero
  const minus = sign === 'any' ? '-?' : sign === 'positive' ? '' : '(?:-(?=[0.]+ ))?';
  const number = `${minus}[0-9]+(?:\\.[0-9]+)?|[0-9]{1,9}/(?:2|4|8|16|32|64)|[0-9]{1,9} ${belowOne}`;
  const feet = `|[0-9]{1,9} ft (?:${INCHES}(?:\\.[0-9]+)?|(?=[0-9]{1,9} )${INCHES} ${belowOne}|${fraction(BELOW_TWELVE)}) in`;
  const notZero = sign === 'positive' ? `(?![0. ft]*(?:/[0-9]+)? ${unit}$)` : '';
  return new RegExp(`^${notZero}(?:(?:${number}) ${unit}${kind === 'length' ? feet : ''})$`);
}
