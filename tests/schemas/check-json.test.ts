import { describe, expect, it, test } from 'vitest';
import * as z from 'zod';
import { lb } from '../../src/quantities/constructors.js';
import {
  articleSchema,
  checkJson,
  checkSecurementRequestSchema,
  partSchema,
  planSchema,
  readJson,
  tieDownSchema,
  vehicleSchema,
} from '../../src/schemas/index.js';
import { issueOf } from '../quantities/issue-of.js';

/** Everything that is wrong, as `path: CODE`. */
function wrong(schema: z.ZodType, data: unknown): string[] {
  const check = checkJson(schema, data);
  return check.ok ? [] : check.issues.map(({ code, path }) => `${path}: ${code}`);
}

const tractor = { id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft' };
const chain = { id: 'chain', kind: 'chain', size: '5/16', grade: 70 };
const front = { id: 'front', holds: 'tractor', path: 'vehicle-to-cargo', parts: [chain] };
const plan = { articles: [tractor], tieDowns: [front] };

describe('everything that is wrong', () => {
  it('is said at once, in the order of the fields', () => {
    const bad = {
      vehicle: { units: [{ id: 'pickup', kind: 'power', grossWeight: '3 tons' }], interstate: true },
      articles: [{ ...tractor, mass: '3,940 lb', blockedFoward: true }],
      tieDowns: [
        { ...front, holds: 'tracter', parts: [chain, { ...chain, size: '5/17', grade: 71 }] },
        { ...front, capacities: { workingLoadLimit: '3150 ft', wll: '1 lb' }, parts: undefined },
        null,
      ],
    };
    expect(wrong(planSchema, bad)).toEqual([
      'vehicle.units[0].grossWeight: AMBIGUOUS_UNIT',
      'vehicle.interstate: UNKNOWN_FIELD',
      'articles[0].mass: AMBIGUOUS_NUMBER',
      'articles[0].blockedFoward: UNKNOWN_FIELD',
      'tieDowns[0].parts[1].size: UNKNOWN_SIZE',
      'tieDowns[0].parts[1].grade: UNKNOWN_GRADE',
      'tieDowns[0].parts[1].id: DUPLICATE_ID',
      'tieDowns[1].capacities.workingLoadLimit: WRONG_KIND',
      'tieDowns[1].capacities.wll: UNKNOWN_FIELD',
      'tieDowns[2]: MISSING_FIELD',
      'tieDowns[0].holds: UNKNOWN_REFERENCE',
      'tieDowns[1].id: DUPLICATE_ID',
    ]);
  });

  it('comes with what was expected and what to do', () => {
    const check = checkJson(articleSchema, { ...tractor, blockedFoward: true });
    expect(check.ok ? [] : check.issues).toEqual([
      {
        code: 'UNKNOWN_FIELD',
        path: 'blockedFoward',
        expected: expect.stringContaining('blockedForward'),
        received: "'blockedFoward'",
        remedy: 'Check the spelling, or leave it out.',
      },
    ]);
  });

  it('stands in zod too, for who reads zod', () => {
    const { error } = articleSchema.safeParse({ ...tractor, mass: '2 ton' });
    expect(error?.issues).toMatchObject([
      { path: ['mass'], message: expect.stringContaining('short-ton'), params: { code: 'AMBIGUOUS_UNIT' } },
    ]);
  });

  it('is thrown by readJson as its first', () => {
    expect(issueOf(() => readJson(articleSchema, { ...tractor, mass: '2 ton', length: '10 lb' }))).toMatchObject({
      code: 'AMBIGUOUS_UNIT',
      path: 'mass',
    });
    expect(readJson(articleSchema, tractor)).toEqual(tractor);
  });
});

describe('a field that a schema does not know', () => {
  test.each([
    ['a plan', planSchema, plan, 'unit'],
    ['a vehicle', vehicleSchema, { units: [{ id: 'pickup', kind: 'power' }] }, 'unit'],
    ['an article', articleSchema, tractor, 'weight'],
    ['a tie-down', tieDownSchema, front, 'part'],
    ['a part', partSchema, chain, 'Size'],
    ['a request', checkSecurementRequestSchema, { rules: 'us-49cfr393-2024', ...plan }, 'rule'],
  ] as [string, z.ZodType, object, string][])('of %s', (_, schema, good, field) => {
    expect(wrong(schema, good)).toEqual([]);
    expect(wrong(schema, { ...good, [field]: 1 })).toEqual([`${field}: UNKNOWN_FIELD`]);
    expect(wrong(schema, { ...good, constructor: 1 })).toEqual(['constructor: UNKNOWN_FIELD']);
  });

  it('of a kind of part may be a field of another', () => {
    expect(wrong(partSchema, { id: 'hook', kind: 'grab-hook', latch: true })).toEqual([]);
    expect(wrong(partSchema, { ...chain, latch: true })).toEqual(['latch: UNKNOWN_FIELD']);
  });
});

describe('a part', () => {
  it.each([
    { id: 'a', kind: 'chain', size: '8 mm' },
    { id: 'a', kind: 'webbing', width: '1-3/4' },
    { id: 'a', kind: 'wire-rope', size: '3/8', nominalStrength: { value: 64, unit: 'kN' } },
    { id: 'a', kind: 'fiber-rope', size: '1/2', material: 'nylon', condition: 'sound' },
    { id: 'a', kind: 'strapping', width: '1-1/4', thickness: '0.029', condition: { verdict: 'fit' } },
    ...['grab-hook', 'slip-hook', 'connecting-link', 'master-link', 'clevis'].map((kind) => ({
      id: 'a',
      kind,
      size: '3/8',
      grade: 70,
    })),
    ...['binder', 'shackle', 'turnbuckle', 'winch'].map((kind) => ({
      id: 'a',
      kind,
      capacities: { lashingCapacity: '20 kN' },
    })),
    { id: 'a', kind: 'anchor', at: 'cargo', markedWll: lb(4700) },
    { id: 'a', kind: 'parallel', loadSharing: 'one-leg', legs: [[chain], [chain]] },
  ])('$kind', (part) => {
    expect(readJson(partSchema, part)).toEqual(JSON.parse(JSON.stringify(part)));
  });

  it('says what is wrong in a leg, by its place in the data', () => {
    const legs = [[chain], [chain, { ...chain, id: 'more', size: '5/17' }], []];
    expect(wrong(partSchema, { id: 'legs', kind: 'parallel', loadSharing: 'equal', legs })).toEqual([
      'legs[1][1].size: UNKNOWN_SIZE',
      'legs[2]: EMPTY_LIST',
    ]);
  });

  it('keeps of an inspection what it needs', () => {
    const inspected = { ...chain, condition: { result: 'inspectChain', verdict: 'fit', steps: [{ subject: 'wear' }] } };
    expect(readJson(partSchema, inspected)).toEqual({ ...chain, condition: { verdict: 'fit' } });
  });

  it('takes undefined for absent', () => {
    expect(readJson(partSchema, { ...chain, markedWll: undefined })).toEqual(chain);
    expect(partSchema.safeParse({ ...chain, markedWll: undefined }).success).toBe(true);
    expect(wrong(partSchema, { ...chain, grade: null })).toEqual(['grade: UNKNOWN_GRADE']);
  });
});

describe('whatever comes', () => {
  const revocable = Proxy.revocable({}, {});
  revocable.revoke();
  const refusing = new Proxy({}, { get: () => fails(), ownKeys: () => fails(), getPrototypeOf: () => fails() });
  function fails(): never {
    throw new TypeError('not yours');
  }
  const circle: Record<string, unknown> = { id: 'legs', kind: 'parallel', loadSharing: 'equal' };
  circle.legs = [[circle], [circle]];
  const nested = (depth: number) => {
    let part: unknown = chain;
    for (let level = 0; level < depth; level++)
      part = { id: 'legs', kind: 'parallel', loadSharing: 'equal', legs: [[part], [chain]] };
    return part;
  };
  const long = 'x'.repeat(1 << 20);
  const deepList = JSON.parse('['.repeat(10_000) + ']'.repeat(10_000));

  const things: [what: string, thing: unknown][] = [
    ...[undefined, null, true, 0, Number.NaN, 5n, Symbol('x'), '', long, () => plan, []].map(
      (value): [string, unknown] => [typeof value, value],
    ),
    ['a date', new Date(0)],
    ['a map', new Map([['articles', []]])],
    ['a list of two million holes', new Array(2_000_000)],
    ['a circle', circle],
    ['a list in itself', Object.assign([], { 0: circle, 1: deepList })],
    ['parts nested 10,000 deep', nested(10_000)],
    ['lists nested 10,000 deep', deepList],
    ['a revoked proxy', revocable.proxy],
    ['a proxy that refuses', refusing],
    ['a getter that throws', Object.defineProperty({ tieDowns: [] }, 'articles', { enumerable: true, get: fails })],
    ['an object without prototype', Object.create(null)],
    ['a class', new (class Plan {})()],
    ['a long key', { [long]: long }],
    ['__proto__ as a key', JSON.parse('{"__proto__": {"articles": [], "polluted": true}}')],
    ['constructor.prototype', JSON.parse('{"constructor": {"prototype": {"polluted": true}}}')],
  ];

  test.each(things)('%s is a list of issues, short and in words', (_, thing) => {
    for (const schema of [planSchema, partSchema, vehicleSchema, checkSecurementRequestSchema]) {
      for (const data of [
        thing,
        { articles: thing, tieDowns: thing },
        { ...plan, tieDowns: [thing] },
        { units: [thing] },
        { ...chain, capacities: thing, condition: thing },
      ]) {
        const check = checkJson(schema, data);
        if (check.ok) continue;
        for (const { path, expected, received, remedy } of check.issues) {
          expect(`${path}${expected}${received}${remedy}`.length).toBeLessThan(2000);
          expect(remedy).not.toBe('');
        }
      }
    }
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('is copied: what changes afterwards changes nothing', () => {
    const data = structuredClone(plan);
    const read = readJson(planSchema, data);
    data.articles[0]!.mass = '1 lb';
    expect(read.articles[0]!.mass).toBe('3940 lb');
  });

  it('is read once', () => {
    let reads = 0;
    const shifty = {
      ...tractor,
      get mass() {
        return reads++ === 0 ? '3940 lb' : 'x';
      },
    };
    expect(readJson(articleSchema, shifty).mass).toBe('3940 lb');
    expect(reads).toBe(1);
  });

  it('may hold __proto__ as a key: it is refused, and no prototype is set', () => {
    const data = JSON.parse(
      '{"id": "tractor", "kind": "machinery", "mass": "3940 lb", "length": "10 ft", "__proto__": {"blockedForward": true}}',
    );
    expect(wrong(articleSchema, data)).toEqual(['__proto__: UNKNOWN_FIELD']);
    expect(wrong(z.object({}), data)).toEqual(['__proto__: UNKNOWN_FIELD']);
  });

  // Each parallel is three levels of data (the part, its legs, the leg), so sixteen stay within 64.
  it('may be sixteen parallels deep in a plan, not twenty-two', () => {
    const within = (depth: number) => ({
      rules: 'us-49cfr393-2024',
      ...plan,
      tieDowns: [{ ...front, parts: [nested(depth)] }],
    });
    expect(wrong(checkSecurementRequestSchema, within(16))).toEqual([]);
    expect(wrong(checkSecurementRequestSchema, within(22))).toEqual([expect.stringMatching(/: TOO_LARGE$/)]);
    const check = checkJson(partSchema, circle);
    expect(check.ok ? '' : check.issues[0].expected).toBe('data nested at most 64 deep');
  });

  it('may be 64 deep and hold a hundred thousand values, not one more', () => {
    const lists = (depth: number): unknown => (depth === 0 ? [] : [lists(depth - 1)]);
    expect(wrong(z.any(), lists(64))).toEqual([]);
    expect(wrong(z.any(), lists(65))).toEqual([`${'[0]'.repeat(65)}: TOO_LARGE`]);
    // The list itself is a value too.
    expect(wrong(z.any(), new Array(99_999).fill(1))).toEqual([]);
    expect(wrong(z.any(), new Array(100_000).fill(1))).toEqual(['[99999]: TOO_LARGE']);
  });

  it('may be wrong in twenty thousand places: a thousand are said', () => {
    for (const item of [{}, null, { id: 'a' }, { kind: 5 }]) {
      expect(
        wrong(planSchema, { articles: new Array(20_000).fill(item), tieDowns: [front] }).length,
      ).toBeLessThanOrEqual(1000);
      expect(wrong(planSchema, { articles: [tractor], tieDowns: new Array(20_000).fill(item) }).length).toBe(1000);
    }
    const keys = Object.fromEntries(Array.from({ length: 90_000 }, (_, index) => [`key${index}`, 1]));
    expect(wrong(articleSchema, { ...tractor, ...keys }).length).toBe(1000);
    expect(wrong(planSchema, { ...plan, articles: [{ ...tractor, ...keys }] }).length).toBe(1000);
  });

  it('takes a long text in time that grows with its length', () => {
    const start = performance.now();
    for (const text of [
      long,
      `${'0'.repeat(1 << 20)} lb`,
      `${'1 '.repeat(1 << 19)}ft`,
      `0 ft ${'0'.repeat(1 << 20)}`,
    ]) {
      expect(articleSchema.safeParse({ ...tractor, mass: text, length: text }).success).toBe(false);
    }
    expect(performance.now() - start).toBeLessThan(2000);
  });
});

describe('a schema that the application made', () => {
  const withNote = z.strictObject({ plan: planSchema, note: z.string().max(5) });

  it('is checked with the rest', () => {
    expect(wrong(withNote, { plan, note: 'short' })).toEqual([]);
    expect(wrong(withNote, { plan: { ...plan, articles: [] }, note: 'too long', more: 1 })).toEqual([
      'plan.articles: EMPTY_LIST',
      'plan.tieDowns[0].holds: UNKNOWN_REFERENCE',
      'note: UNKNOWN_VALUE',
      ': UNKNOWN_VALUE',
    ]);
  });
});
