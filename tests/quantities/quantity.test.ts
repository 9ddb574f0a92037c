import { format, inspect } from 'node:util';
import { describe, expect, it } from 'vitest';
import * as constructors from '../../src/quantities/constructors.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import { quantity } from '../../src/quantities/quantity.js';
import type { Unit } from '../../src/quantities/units.js';
import { issueOf } from './issue-of.js';

const { ft, kN, lb, m } = constructors;

describe('operators on quantities', () => {
  // `any` as plain JavaScript would have it: the type checker refuses most of these already.
  // biome-ignore lint/suspicious/noExplicitAny: see above
  const [a, b]: any[] = [lb(2), lb(3)];
  it.each([
    ['a < b', () => a < b],
    ['a > b', () => a > b],
    ['a <= b', () => a <= b],
    ['a >= b', () => a >= b],
    ['a + b', () => a + b],
    ['a - b', () => a - b],
    ['a * 2', () => a * 2],
    ['2 * a', () => 2 * a],
    ['a / b', () => a / b],
    ['a % b', () => a % b],
    ['a ** 2', () => a ** 2],
    ['-a', () => -a],
    ['+a', () => +a],
    ['~a', () => ~a],
    // biome-ignore lint/suspicious/noDoubleEquals: the operator under test
    ['a == 2', () => a == 2],
    // biome-ignore lint/suspicious/noDoubleEquals: the operator under test
    ['a != 2', () => a != 2],
    // biome-ignore lint/suspicious/noDoubleEquals: the operator under test
    ["a == '2 lb'", () => a == '2 lb'],
    // biome-ignore lint/style/useTemplate: the operator under test
    ["a + ''", () => a + ''],
    ['Number(a)', () => Number(a)],
    ['Math.max(a, b)', () => Math.max(a, b)],
  ])('%s throws and names the function to use', (_, operation) => {
    const issue = issueOf(operation);
    expect(issue.code).toBe('OPERATOR_ON_QUANTITY');
    expect(issue.expected).toBe('compare, add, subtract or scale');
    expect(issue.received).toMatch(/on [23] lb/);
  });

  it('leaves text alone', () => {
    expect(`${lb(3150)}`).toBe('3150 lb');
    expect(String(lb(3150))).toBe('3150 lb');
    expect(['at', lb(3150)].join(' ')).toBe('at 3150 lb');
  });
});

describe('a quantity as data', () => {
  it('is value and unit in JSON, and nothing else', () => {
    expect(JSON.stringify({ load: kN(12) })).toBe('{"load":{"value":12,"unit":"kN"}}');
    expect(Object.keys(kN(12))).toEqual(['value', 'unit']);
    expect(structuredClone(kN(12))).toEqual({ value: 12, unit: 'kN' });
    expect({ ...kN(12) }).toEqual({ value: 12, unit: 'kN' });
  });

  it('shows as 12 kN at a console', () => {
    expect(format(kN(12))).toBe('12 kN');
    expect(inspect({ load: kN(12) })).toBe('{ load: 12 kN }');
    expect(format([lb(1), m(-2.5)])).toBe('[ 1 lb, -2.5 m ]');
  });

  it('has no minus zero', () => {
    expect(Object.is(m(-0).value, 0)).toBe(true);
  });
});

describe('a quantity as text', () => {
  it.each([
    [lb(3150), '3150 lb'],
    [m(-0.5), '-0.5 m'],
    [ft(0.1 + 0.2), '0.30000000000000004 ft'],
    [m(1e-7), '0.0000001 m'],
    [m(-1.5e-9), '-0.0000000015 m'],
    [m(1e21), '1000000000000000000000 m'],
    [m(-1.25e22), '-12500000000000000000000 m'],
    [m(123456789012345680000), '123456789012345680000 m'],
  ])('%o', (value, text) => {
    expect(String(value)).toBe(text);
    expect(parseQuantity(text, value.unit === 'lb' ? 'mass' : 'length')).toEqual(value);
  });
});

it('has a constructor for each of the usual units', () => {
  const units: Record<string, Unit> = { inches: 'in', shortTon: 'short-ton', longTon: 'long-ton' };
  for (const [name, make] of Object.entries(constructors)) {
    const unit = units[name] ?? (name as Unit);
    expect(make(7)).toEqual(quantity(7, unit));
  }
});
