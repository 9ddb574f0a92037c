import { fail } from '../errors.js';
import { plainDecimal } from './decimal.js';
import { isUnit, type Kind, UNITS, type Unit, type UnitOfKind } from './units.js';

/** A number with its unit: `{ value: 3150, unit: 'lb' }`. Its JSON is exactly these two fields. */
export interface QuantityLike<U extends string = Unit> {
  readonly value: number;
  readonly unit: U;
}

/**
 * A quantity made by this library: the two fields of {@link QuantityLike}, and a guard against operators.
 * `demand > capacity` on two objects would compile and be false both ways, so it throws instead.
 *
 * @example
 * try { lb(2) < lb(3) } catch (error) { error.code }
 * // => 'OPERATOR_ON_QUANTITY'
 */
export interface Quantity<U extends Unit = Unit> extends QuantityLike<U> {
  /** `'3150 lb'`: the full value, in a form that {@link parseQuantity} reads for any magnitude from 1e-30 to 1e45. */
  toString(): string;
  /** Text where text is meant; throws `OPERATOR_ON_QUANTITY` under an operator. */
  [Symbol.toPrimitive](hint: string): string;
}

/** The class, made by a call marked pure: the name of its last method is itself a call, which would keep it in every bundle. */
export const Quantity: new <U extends Unit>(value: number, unit: U, path?: string) => Quantity<U> =
  /* @__PURE__ */ (() => {
    class Quantity<U extends Unit> implements QuantityLike<U> {
      readonly value: number;
      readonly unit: U;

      /**
       * @param path where the value came from; goes into the error
       * @throws RiggingError `NOT_FINITE`, so that no calculation can hand on NaN or an overflow
       */
      constructor(value: number, unit: U, path = 'value') {
        if (!Number.isFinite(value)) {
          fail('NOT_FINITE', path, 'a finite number', value, 'Leave it out where it is not known.');
        }
        this.value = value + 0; // minus zero becomes zero
        this.unit = unit;
      }

      toString(): string {
        return `${plainDecimal(this.value)} ${this.unit}`;
      }

      [Symbol.toPrimitive](hint: string): string {
        if (hint === 'string') return this.toString();
        return fail(
          'OPERATOR_ON_QUANTITY',
          '',
          'compare, add, subtract or scale',
          `an operator on ${this}`,
          'Call one of them.',
        );
      }

      [Symbol.for('nodejs.util.inspect.custom')](): string {
        return `${this}`;
      }
    }

    return Quantity;
  })();

type Fraction = `${number}/${number}` | `${number} ${number}/${number}`;
type FeetAndInches = `${number} ft ${number} in` | `${number} ft ${Fraction} in`;

/** Text of a kind, as far as a type can tell; the parser is the real guard. */
export type QuantityText<K extends Kind> =
  | `${number} ${UnitOfKind[K]}`
  | (K extends 'length' ? `${Fraction} ${UnitOfKind[K]}` | FeetAndInches : never);

/** What a field of a kind accepts: a quantity, a bare `{ value, unit }`, or strict text. */
export type QuantityInput<K extends Kind> = QuantityLike<UnitOfKind[K]> | QuantityText<K>;

/**
 * Makes a quantity of any unit.
 *
 * @param value a finite number
 * @param unit one of the library's units
 * @throws RiggingError `NOT_FINITE`, `UNKNOWN_UNIT`
 * @example
 * quantity(2.5, 'kg/m')
 * // => 2.5 kg/m
 */
export function quantity<U extends Unit>(value: number, unit: U): Quantity<U> {
  return new Quantity(value, knownUnit(unit));
}

/** A unit of any kind, or a typed error that lists them. */
export function knownUnit<U extends Unit>(unit: U, path = 'unit'): U {
  if (isUnit(unit)) return unit;
  return fail('UNKNOWN_UNIT', path, 'a unit of this library', unit, `Write one of: ${Object.keys(UNITS).join(', ')}.`);
}
