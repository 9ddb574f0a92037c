/**
 * Checked by `tsc`, never run: every line marked `@ts-expect-error` must be a compile error, and every other
 * line must compile.
 */
import { add, compare, scale, subtract, weightOf } from '../../src/quantities/arithmetic.js';
import { ft, kN, lb, lbf, m } from '../../src/quantities/constructors.js';
import { convert } from '../../src/quantities/convert.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import { type Quantity, type QuantityInput, type QuantityLike, quantity } from '../../src/quantities/quantity.js';
import type { Kind, UnitOfKind } from '../../src/quantities/units.js';

function field<K extends Kind>(_kind: K, _input: QuantityInput<K>): void {}
const parsed = JSON.parse('{}') as { text: string; amount: { value: number; unit: string } };

/* What each field takes. */
field('length', '20 ft');
field('length', '5/16 in');
field('length', '3 3/8 in');
field('length', '16 ft 6 in');
field('length', '16 ft 6 1/2 in');
field('length', '-2.5 m');
field('length', ft(20));
field('length', { value: 20, unit: 'ft' });
field('mass', '3940 lb');
field('mass', '2 short-ton');
field('force', '20.9 kN');
field('ratedLoad', '4700 lb');
field('ratedLoad', '2000 daN');
field('ratedLoad', lb(4700));
field('ratedLoad', kN(20));
field('speed', '55 mph');
field('acceleration', '0.435 g');
field('angle', '45 deg');
field('angle', '6 percent-grade');
field('temperature', '-40 F');
field('duration', '8 h');
field('massPerLength', '0.63 lb/ft');
field('density', '120 lb/ft3');

/* Text of another kind. */
// @ts-expect-error a mass is not a length
field('length', '20 lb');
// @ts-expect-error a length is not a mass
field('mass', '20 ft');
// @ts-expect-error feet and inches are not a mass
field('mass', '16 ft 6 in');
// @ts-expect-error a mass is not a force: a pound-force is lbf
field('force', '20 lb');
// @ts-expect-error a force is not a mass
field('mass', '20 lbf');
// @ts-expect-error a length is not a rated load
field('ratedLoad', '5/16 in');
// @ts-expect-error a grade is not an angle until it says percent-grade
field('angle', '6 %');
// @ts-expect-error a speed is not an acceleration
field('acceleration', '5 m/s');

/* Quantity objects of another kind. */
// @ts-expect-error a mass is not a length
field('length', lb(20));
// @ts-expect-error a force is not a mass
field('mass', lbf(20));
// @ts-expect-error a mass is not a force
field('force', lb(20));
// @ts-expect-error a length is not a rated load
field('ratedLoad', ft(20));
// @ts-expect-error a mass is not a length
field('length', { value: 20, unit: 'lb' });

/* What is no quantity. */
// @ts-expect-error a number has no unit
field('mass', 3940);
// @ts-expect-error no unit
field('mass', '3940');
// @ts-expect-error a thousands separator
field('mass', '1,000 lb');
// @ts-expect-error which ton?
field('mass', '2 ton');
// @ts-expect-error a plural
field('mass', '5 lbs');
// @ts-expect-error no space
field('mass', '3940lb');
// @ts-expect-error not a number
field('mass', 'five lb');
// @ts-expect-error nothing
field('mass', '');
// @ts-expect-error an unknown unit
field('mass', { value: 5, unit: 'stone' });
// @ts-expect-error a value in text
field('mass', { value: '5', unit: 'lb' });
// @ts-expect-error no unit
field('mass', { value: 5 });
// @ts-expect-error null
field('mass', null);
// @ts-expect-error a missing value
field('mass', undefined);

/* Plain text and JSON go through the parser. */
// @ts-expect-error text whose form is unknown
field('mass', parsed.text);
// @ts-expect-error a unit whose kind is unknown
field('mass', parsed.amount);
field('mass', parseQuantity(parsed.text, 'mass'));
// @ts-expect-error parsed as another kind
field('mass', parseQuantity(parsed.text, 'length'));

/* Units follow through arithmetic. */
const inFeet: Quantity<'ft'> = add(ft(1), m(1));
const inKilograms: Quantity<'kg'> = convert(lb(1), 'kg');
const weight: QuantityLike<'N' | 'lbf'> = weightOf(lb(1));
const parsedLength: QuantityLike<UnitOfKind['length']> = parseQuantity('1 ft', 'length');
void [inFeet, inKilograms, weight, parsedLength, subtract(ft(1), m(1)), compare(ft(1), m(1))];
// @ts-expect-error the sum is in the unit of the first
const inMeters: Quantity<'m'> = add(ft(1), m(1));
void inMeters;
// @ts-expect-error only a mass has a weight
weightOf(ft(1));
// @ts-expect-error an unknown unit
convert(lb(1), 'lbs');
// @ts-expect-error an unknown unit
quantity(1, 'lbs');
// @ts-expect-error an unknown kind
parseQuantity('5 lb', 'weight');
// @ts-expect-error text is parsed first
add('1 ft', ft(1));
// @ts-expect-error a factor is a plain number
scale(lb(1), lb(2));

/* Operators. Comparing two quantities with `<` does compile, and throws when it runs. */
void (() => lb(1) < lb(2));
// @ts-expect-error
lb(1) + lb(2);
// @ts-expect-error
lb(1) - lb(2);
// @ts-expect-error
lb(1) * 2;
// @ts-expect-error
lb(1) < 2;

/* Quantities do not change. */
// @ts-expect-error
lb(1).value = 2;
