import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  assemblyRating,
  chainRating,
  checkSecurement,
  convert,
  deg,
  evaluateMany,
  forecastRetirement,
  formatQuantity,
  lb,
  linksForLength,
  type RiggingErrorCode,
  us49cfr393_104_2024,
  us49cfr393_108_2024,
  us49cfr393_2024,
  usWeldedChain_2003,
} from 'chain-rigging';
import { criteriaSetById, ratingTableById, ruleSetById } from 'chain-rigging/registry';
import { partSchema, readJson } from 'chain-rigging/schemas';
import { describe, expect, it } from 'vitest';
import { describe as describeValue, fail, RiggingError } from '../src/errors.js';
import { issueOf } from './quantities/issue-of.js';

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

// The codes are read from the text of the type, so that a new one without a case here fails.
const root = fileURLToPath(new URL('../src', import.meta.url));
const union = /export type RiggingErrorCode =([^;]+);/.exec(readFileSync(join(root, 'errors.ts'), 'utf8'))?.[1] ?? '';
const codes = [...union.matchAll(/'([A-Z_]+)'/g)].map(([, code]) => code as RiggingErrorCode);

const law = us49cfr393_108_2024;
const welded = usWeldedChain_2003;
const rules = us49cfr393_2024;
const chain = { id: 'chain', kind: 'chain', size: '3/8', grade: 70 } as const;
const tractor = { id: 'tractor', kind: 'machinery', mass: '8000 lb', length: '10 ft' } as const;
const strap = {
  id: 'strap',
  holds: 'tractor',
  path: 'over-other-side',
  capacities: { workingLoadLimit: '9000 lb' },
} as const;
const check = (more: object) => checkSecurement({ rules, articles: [tractor], tieDowns: [strap], ...more } as never);

/** Lists within lists, and the path to the one that is so deep. */
const nestedLists = (depth: number): unknown => (depth === 0 ? [] : [nestedLists(depth - 1)]);
const placeOf = (depth: number) => '[0]'.repeat(depth + 1);

/** One call for each code, and the place it must name; '' where the whole argument or no field is at fault. */
const cases: Partial<Record<RiggingErrorCode, readonly [call: () => unknown, path: string]>> = {
  TEXT_NOT_A_QUANTITY: [() => check({ articles: [{ ...tractor, length: 'ten feet' }] }), 'articles[0].length'],
  TEXT_TOO_LONG: [() => check({ articles: [{ ...tractor, length: `${'0'.repeat(70)}1 ft` }] }), 'articles[0].length'],
  TEXT_TOO_PRECISE: [
    () => check({ articles: [{ ...tractor, length: '1.2345678901234567890 ft' }] }),
    'articles[0].length',
  ],
  AMBIGUOUS_NUMBER: [() => check({ articles: [{ ...tractor, mass: '8,000 lb' }] }), 'articles[0].mass'],
  AMBIGUOUS_UNIT: [() => check({ articles: [{ ...tractor, mass: '4 ton' }] }), 'articles[0].mass'],
  UNKNOWN_UNIT: [() => check({ articles: [{ ...tractor, mass: '8000 stone' }] }), 'articles[0].mass'],
  WRONG_KIND: [() => check({ articles: [{ ...tractor, length: '20 lb' }] }), 'articles[0].length'],
  NOT_A_QUANTITY: [() => check({ articles: [{ ...tractor, mass: 8000 }] }), 'articles[0].mass'],
  NOT_FINITE: [
    () => check({ articles: [{ ...tractor, mass: { value: Number.NaN, unit: 'lb' } }] }),
    'articles[0].mass',
  ],
  NOT_POSITIVE: [() => check({ articles: [{ ...tractor, mass: '0 lb' }] }), 'articles[0].mass'],
  NEGATIVE: [() => check({ articles: [{ ...tractor, mass: '-1 lb' }] }), 'articles[0].mass'],
  NOT_A_DATE: [
    () =>
      forecastRetirement({ criteria: us49cfr393_104_2024, chain: {}, history: { inspections: [] }, asOf: '1.3.2026' }),
    'asOf',
  ],
  NOT_A_WHOLE_NUMBER: [() => formatQuantity(lb(5), { digits: 2.5 }), 'digits'],
  OPERATOR_ON_QUANTITY: [() => lb(2) < lb(3), ''],
  UNITS_REQUIRED: [() => linksForLength({ length: '20 ft', pitch: '30 mm' }), 'units'],
  UNKNOWN_SIZE: [() => chainRating({ ratings: law, size: '5/17', grade: 70 } as never), 'size'],
  UNKNOWN_GRADE: [() => chainRating({ ratings: law, size: '3/8', grade: 75 } as never), 'grade'],
  NO_VALUE_IN_TABLE: [() => chainRating({ ratings: law, size: '7/16', grade: 80 } as never), 'grade'],
  MISSING_FIELD: [() => chainRating({ ratings: welded, size: '3/8' }), 'grade'],
  UNKNOWN_FIELD: [() => readJson(partSchema, { id: 'binder', kind: 'binder', stile: 'lever' }), 'stile'],
  UNKNOWN_VALUE: [() => check({ articles: [{ ...tractor, kind: 'tractor' }] }), 'articles[0].kind'],
  UNKNOWN_REFERENCE: [() => check({ tieDowns: [{ ...strap, holds: 'trailer' }] }), 'tieDowns[0].holds'],
  UNKNOWN_RULE_SET: [() => ruleSetById('us-49cfr393-1999'), 'id'],
  UNKNOWN_CRITERIA_SET: [() => criteriaSetById('us-29cfr1910-184-1975'), 'id'],
  UNKNOWN_RATING_TABLE: [() => ratingTableById('us-49cfr393-108-1999'), 'id'],
  NOT_ITERABLE: [() => evaluateMany(7 as never, () => 0), 'rows'],
  EMPTY_LIST: [() => assemblyRating({ ratings: law, parts: [] }), 'parts'],
  DUPLICATE_ID: [() => assemblyRating({ ratings: law, parts: [chain, chain] }), 'parts[1].id'],
  TOO_LARGE: [() => readJson(partSchema, nestedLists(65)), placeOf(64)],
  CONFLICTING_FIELDS: [() => check({ tieDowns: [{ ...strap, parts: [chain] }] }), 'tieDowns[0]'],
  IMPOSSIBLE_GEOMETRY: [() => convert(deg(90), 'percent-grade'), ''],
};

describe('every code', () => {
  it('is read from the type', () => {
    expect(codes.length).toBeGreaterThan(20);
    expect(new Set(codes).size).toBe(codes.length);
  });
  it('is thrown somewhere', () => {
    const code = readdirSync(root, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts') && file !== 'errors.ts')
      .map((file) => readFileSync(join(root, file), 'utf8'))
      .join('\n');
    expect(codes.filter((each) => !code.includes(`'${each}'`))).toEqual([]);
  });
  it.each(codes)('%s has a case', (code) => {
    expect(cases[code]).toBeDefined();
  });
  it.each(Object.entries(cases))('%s says where and what to do', (code, [call, path]) => {
    const issue = issueOf(call);
    expect(issue).toMatchObject({ code, path });
    for (const field of [issue.expected, issue.received, issue.remedy]) expect(field.trim()).not.toBe('');
    expect(issue.remedy).toMatch(/\.$/);
  });
});
