import { expect, it } from 'vitest';
import { describe as describeValue, fail, RiggingError } from '../src/errors.js';

it('an error is an Error with its five fields, in its message and in JSON', () => {
  const error = new RiggingError({
    code: 'WRONG_KIND',
    path: 'articles[0].length',
    expected: 'length',
    received: "'20 lb'",
    remedy: 'Give a length.',
  });
  expect(error).toBeInstanceOf(Error);
  expect(error.name).toBe('RiggingError');
  expect(error.message).toBe("articles[0].length: expected length, got '20 lb'. Give a length.");
  expect(JSON.parse(JSON.stringify(error))).toEqual({
    code: 'WRONG_KIND',
    path: 'articles[0].length',
    expected: 'length',
    received: "'20 lb'",
    remedy: 'Give a length.',
  });
});

it('a message without a path starts with what was expected', () => {
  expect(() => fail('EMPTY_LIST', '', 'a list', [], 'Fill it.')).toThrow(
    /^expected a list, got an empty list\. Fill it\.$/,
  );
});

it.each([
  ['5 lb', "'5 lb'"],
  ['x'.repeat(60), `'${'x'.repeat(60)}'`],
  ['x'.repeat(61), `'${'x'.repeat(60)}…'`],
  ['a\nb\u0000\ud800', "'a\uFFFDb\uFFFD\uFFFD'"],
  [`${'x'.repeat(59)}😀`, `'${'x'.repeat(59)}\uFFFD…'`], // cut in the middle of a pair
  [5, '5'],
  [Number.NaN, 'NaN'],
  [true, 'true'],
  [undefined, 'undefined'],
  [null, 'null'],
  [[], 'an empty list'],
  [[1], 'a list'],
  [{}, 'an object'],
  [Object.create(null), 'an object'],
  [5n, 'a bigint'],
  [Symbol('x'), 'a symbol'],
  [() => 5, 'a function'],
])('what came is described without running it (%#)', (value, text) => {
  expect(describeValue(value)).toBe(text);
});

it('what came is described even where it refuses to be looked at', () => {
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  expect(describeValue(proxy)).toBe('an object');
});
