import { decimalOf } from '../quantities/decimal.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { UNITS } from '../quantities/units.js';

/** So many pieces of something. */
export interface Counted<Of> {
  readonly of: Of;
  readonly pieces: number;
}

/** The sum of numbers as the decimals they show, each so many times; rounded once, at the end. */
export function sumOfDecimals(numbers: readonly Counted<number>[]): number {
  return toNumber(exactSum(numbers));
}

/** The sum of masses in a unit, rounded once. */
export function sumOfMasses<U extends 'lb' | 'kg'>(masses: readonly Counted<QuantityLike>[], unit: U): number {
  if (masses.every(({ of }) => of.unit === unit)) {
    return sumOfDecimals(masses.map(({ of, pieces }) => ({ of: of.value, pieces })));
  }
  const { steps } = UNITS[unit];
  // masses are whole numbers of base steps for whole numbers of their unit
  return (
    toNumber(exactSum(masses.map(({ of, pieces }) => ({ of: of.value, pieces: pieces * UNITS[of.unit].steps })))) /
    steps
  );
}

interface Sum {
  readonly digits: bigint;
  readonly exponent: number;
}

function exactSum(numbers: readonly Counted<number>[]): Sum {
  const terms = numbers.map(({ of, pieces }) => ({ ...decimalOf(of), pieces }));
  const exponent = Math.min(0, ...terms.map((term) => term.exponent));
  const digits = terms.reduce(
    (sum, term) => sum + BigInt(term.digits) * BigInt(term.pieces) * 10n ** BigInt(term.exponent - exponent),
    0n,
  );
  return { digits, exponent };
}

const toNumber = ({ digits, exponent }: Sum): number => Number(`${digits}e${exponent}`);
