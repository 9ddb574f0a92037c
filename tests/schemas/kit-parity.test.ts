// A schema says what the library would say of the same body: the same code at the same path.
import { describe, expect, it, test } from 'vitest';
import type { RiggingErrorCode } from '../../src/errors.js';
import { buildKit } from '../../src/index.js';
import { ratingTableById, ruleSetById } from '../../src/registry.js';
import { buildKitRequestSchema, checkJson, chooseChainRequestSchema } from '../../src/schemas/index.js';
import { chooseChain } from '../../src/selection/choose-chain.js';
import { issueOf } from '../quantities/issue-of.js';

// biome-ignore lint/suspicious/noExplicitAny: bodies are as wrong as a stranger makes them
type Body = any;

const FUNCTIONS = {
  buildKit: {
    schema: buildKitRequestSchema,
    call: (body: Body) => buildKit({ ...body, rules: ruleSetById('us-49cfr393-2024') }),
    good: () => ({
      rules: 'us-49cfr393-2024',
      articles: [{ id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft' }],
      tieDowns: ['front', 'rear'].map((end) => ({
        id: `${end} chain`,
        holds: 'tractor',
        path: 'vehicle-to-cargo',
        end,
        chainLength: '12 ft',
        anchors: [
          { id: 'deck', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
          { id: 'machine', kind: 'anchor', at: 'cargo', markedWll: '5000 lb' },
        ],
        fittings: ['binder', 'grab-hook'],
        spares: ['binder'],
      })),
      stock: [{ id: 'chain', kind: 'chain', size: '5/16', grade: 70, length: '20 ft', mass: '21 lb', count: 1 }],
      catalog: [
        {
          id: 'chain',
          kind: 'chain',
          size: '1/4',
          grade: 70,
          length: '20 ft',
          includes: ['grab-hook'],
          mass: '15 lb',
          price: 42.5,
          currency: 'USD',
        },
        { id: 'hook', kind: 'grab-hook', size: '5/16', grade: 70, mass: '1.5 lb', price: 4, currency: 'USD', count: 9 },
        {
          id: 'binder',
          kind: 'binder',
          chainSizes: ['1/4', '5/16'],
          markedWll: '2600 lb',
          mass: '6 lb',
          price: 25,
          currency: 'USD',
        },
      ],
      objective: 'price',
      limits: { price: 500, mass: '200 lb', parts: 20 },
      alternatives: 3,
      stockFirst: true,
    }),
  },
  chooseChain: {
    schema: chooseChainRequestSchema,
    call: ({ task, ...body }: Body) =>
      task?.kind === 'haul'
        ? chooseChain({ ...body, task: { ...task, rules: ruleSetById('us-49cfr393-2024') } })
        : chooseChain({ ...body, task, ratings: ratingTableById('us-49cfr393-108-2024') }),
    good: () => ({
      task: {
        kind: 'haul',
        rules: 'us-49cfr393-2024',
        article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' },
        tieDowns: 2,
        path: 'vehicle-to-cargo',
        length: '16 ft',
      },
      objective: 'price',
      prices: [{ size: '1/4', grade: 70, price: 2.1, per: '1 ft' }],
      carryLimit: '40 lb',
      hook: { kind: 'grab-hook', size: '1/4' },
      grades: [70],
    }),
  },
};

const said = (name: keyof typeof FUNCTIONS, body: unknown) => {
  const check = checkJson(FUNCTIONS[name].schema, body);
  return check.ok ? [] : check.issues.map(({ code, path }) => `${path}: ${code}`);
};

describe('a good body', () => {
  it.each(['buildKit', 'chooseChain'] as const)('%s takes it, before and after its schema', (name) => {
    const { schema, call, good } = FUNCTIONS[name];
    expect(said(name, good())).toEqual([]);
    const check = checkJson(schema, good());
    const answer = call(check.ok && check.value);
    expect(answer.verdict).toBe('pass');
    expect(answer).toEqual(call(good()));
  });
});

describe('a bad body', () => {
  type Case = [
    what: string,
    name: keyof typeof FUNCTIONS,
    spoil: (body: Body) => void,
    code: RiggingErrorCode,
    path: string,
  ];
  const cases: Case[] = [
    ['no tie-downs', 'buildKit', (b) => delete b.tieDowns, 'EMPTY_LIST', 'tieDowns'],
    ['a tie-down without id', 'buildKit', (b) => delete b.tieDowns[0].id, 'MISSING_FIELD', 'tieDowns[0].id'],
    ['two of one id', 'buildKit', (b) => (b.tieDowns[1].id = 'front chain'), 'DUPLICATE_ID', 'tieDowns[1].id'],
    [
      'one that holds nothing',
      'buildKit',
      (b) => (b.tieDowns[1].holds = 'x'),
      'UNKNOWN_REFERENCE',
      'tieDowns[1].holds',
    ],
    ['no length', 'buildKit', (b) => delete b.tieDowns[0].chainLength, 'MISSING_FIELD', 'tieDowns[0].chainLength'],
    ['no anchors', 'buildKit', (b) => delete b.tieDowns[0].anchors, 'EMPTY_LIST', 'tieDowns[0].anchors'],
    [
      'a chain for an anchor',
      'buildKit',
      (b) => (b.tieDowns[0].anchors[0].kind = 'chain'),
      'UNKNOWN_VALUE',
      'tieDowns[0].anchors[0].kind',
    ],
    [
      'an anchor nowhere',
      'buildKit',
      (b) => (b.tieDowns[0].anchors[0].at = 'deck'),
      'UNKNOWN_VALUE',
      'tieDowns[0].anchors[0].at',
    ],
    [
      'a mark in feet',
      'buildKit',
      (b) => (b.tieDowns[0].anchors[1].markedWll = '5 ft'),
      'WRONG_KIND',
      'tieDowns[0].anchors[1].markedWll',
    ],
    [
      'two anchors of one id',
      'buildKit',
      (b) => (b.tieDowns[0].anchors[1].id = 'deck'),
      'DUPLICATE_ID',
      'tieDowns[0].anchors[1].id',
    ],
    [
      'an unknown fitting',
      'buildKit',
      (b) => (b.tieDowns[0].fittings[1] = 'strap'),
      'UNKNOWN_VALUE',
      'tieDowns[0].fittings[1]',
    ],
    [
      'a spare of what it has not',
      'buildKit',
      (b) => (b.tieDowns[0].spares[0] = 'shackle'),
      'UNKNOWN_VALUE',
      'tieDowns[0].spares[0]',
    ],
    ['a catalog that is no list', 'buildKit', (b) => (b.catalog = {}), 'EMPTY_LIST', 'catalog'],
    ['a row that is none', 'buildKit', (b) => (b.catalog[0] = null), 'MISSING_FIELD', 'catalog[0]'],
    ['a row without id', 'buildKit', (b) => (b.catalog[0].id = ''), 'MISSING_FIELD', 'catalog[0].id'],
    ['two rows of one id', 'buildKit', (b) => (b.catalog[1].id = 'chain'), 'DUPLICATE_ID', 'catalog[1].id'],
    ['an unknown kind', 'buildKit', (b) => (b.catalog[1].kind = 'hook'), 'UNKNOWN_VALUE', 'catalog[1].kind'],
    ['no kind', 'buildKit', (b) => delete b.catalog[1].kind, 'MISSING_FIELD', 'catalog[1].kind'],
    ['a hook without size', 'buildKit', (b) => delete b.catalog[1].size, 'MISSING_FIELD', 'catalog[1].size'],
    ['a size nobody makes', 'buildKit', (b) => (b.catalog[0].size = '5/17'), 'UNKNOWN_SIZE', 'catalog[0].size'],
    ['a grade nobody makes', 'buildKit', (b) => (b.catalog[0].grade = 71), 'UNKNOWN_GRADE', 'catalog[0].grade'],
    ['a binder for no chain', 'buildKit', (b) => delete b.catalog[2].chainSizes, 'EMPTY_LIST', 'catalog[2].chainSizes'],
    [
      'a binder for an odd chain',
      'buildKit',
      (b) => (b.catalog[2].chainSizes[1] = '1/3'),
      'UNKNOWN_SIZE',
      'catalog[2].chainSizes[1]',
    ],
    ['a mark of zero', 'buildKit', (b) => (b.catalog[2].markedWll = '0 lb'), 'NOT_POSITIVE', 'catalog[2].markedWll'],
    ['a chain without length', 'buildKit', (b) => delete b.catalog[0].length, 'MISSING_FIELD', 'catalog[0].length'],
    [
      'hooks on a hook',
      'buildKit',
      (b) => (b.catalog[1].includes = ['binder']),
      'CONFLICTING_FIELDS',
      'catalog[1].includes',
    ],
    [
      'a chain with a chain on it',
      'buildKit',
      (b) => (b.catalog[0].includes[0] = 'chain'),
      'UNKNOWN_VALUE',
      'catalog[0].includes[0]',
    ],
    ['no mass', 'buildKit', (b) => delete b.catalog[0].mass, 'MISSING_FIELD', 'catalog[0].mass'],
    ['no price', 'buildKit', (b) => delete b.catalog[1].price, 'MISSING_FIELD', 'catalog[1].price'],
    ['a price below zero', 'buildKit', (b) => (b.catalog[1].price = -1), 'NEGATIVE', 'catalog[1].price'],
    ['a price as text', 'buildKit', (b) => (b.catalog[1].price = '4.00'), 'NOT_FINITE', 'catalog[1].price'],
    ['a price too high', 'buildKit', (b) => (b.catalog[1].price = 1e10), 'TOO_LARGE', 'catalog[1].price'],
    ['a price too fine', 'buildKit', (b) => (b.catalog[1].price = 4.00001), 'TEXT_TOO_PRECISE', 'catalog[1].price'],
    ['two currencies', 'buildKit', (b) => (b.catalog[1].currency = 'EUR'), 'CONFLICTING_FIELDS', 'catalog[1].currency'],
    ['a price of no currency', 'buildKit', (b) => delete b.catalog[2].currency, 'MISSING_FIELD', 'catalog[2].currency'],
    [
      'a currency that is a number',
      'buildKit',
      (b) => (b.catalog[1].currency = 4),
      'UNKNOWN_VALUE',
      'catalog[1].currency',
    ],
    ['half a piece', 'buildKit', (b) => (b.catalog[1].count = 0.5), 'NOT_A_WHOLE_NUMBER', 'catalog[1].count'],
    ['stock without a count', 'buildKit', (b) => delete b.stock[0].count, 'MISSING_FIELD', 'stock[0].count'],
    ['stock below zero', 'buildKit', (b) => (b.stock[0].count = -1), 'NOT_A_WHOLE_NUMBER', 'stock[0].count'],
    ['no objective', 'buildKit', (b) => delete b.objective, 'MISSING_FIELD', 'objective'],
    ['a limit below zero', 'buildKit', (b) => (b.limits.price = -1), 'NEGATIVE', 'limits.price'],
    ['a mass of zero', 'buildKit', (b) => (b.limits.mass = '0 lb'), 'NOT_POSITIVE', 'limits.mass'],
    ['half a part', 'buildKit', (b) => (b.limits.parts = 0.5), 'NOT_A_WHOLE_NUMBER', 'limits.parts'],
    ['one alternative', 'buildKit', (b) => (b.alternatives = 1), 'NOT_A_WHOLE_NUMBER', 'alternatives'],
    ['yes for true', 'buildKit', (b) => (b.stockFirst = 'yes'), 'UNKNOWN_VALUE', 'stockFirst'],
    ['another task', 'chooseChain', (b) => (b.task.kind = 'lift'), 'UNKNOWN_VALUE', 'task.kind'],
    ['no task', 'chooseChain', (b) => delete b.task, 'MISSING_FIELD', 'task'],
    ['half a tie-down', 'chooseChain', (b) => (b.task.tieDowns = 0.5), 'NOT_A_WHOLE_NUMBER', 'task.tieDowns'],
    [
      'an article of nothing',
      'chooseChain',
      (b) => (b.task.article.mass = '0 lb'),
      'NOT_POSITIVE',
      'task.article.mass',
    ],
    ['no length', 'chooseChain', (b) => delete b.task.length, 'MISSING_FIELD', 'task.length'],
    [
      'a pull of nothing',
      'chooseChain',
      (b) => (b.task = { kind: 'pull', requiredLimit: '0 lb', length: '9 ft' }),
      'NOT_POSITIVE',
      'task.requiredLimit',
    ],
    ['no objective', 'chooseChain', (b) => delete b.objective, 'MISSING_FIELD', 'objective'],
    ['a price below zero', 'chooseChain', (b) => (b.prices[0].price = -1), 'NEGATIVE', 'prices[0].price'],
    ['a price per pound', 'chooseChain', (b) => (b.prices[0].per = '1 lb'), 'WRONG_KIND', 'prices[0].per'],
    ['no prices', 'chooseChain', (b) => (b.prices = []), 'EMPTY_LIST', 'prices'],
    ['a hook of no size', 'chooseChain', (b) => (b.hook.size = '1/3'), 'UNKNOWN_SIZE', 'hook.size'],
    ['a grade nobody makes', 'chooseChain', (b) => (b.grades[0] = 75), 'UNKNOWN_GRADE', 'grades[0]'],
  ];
  test.each(cases)('with %s (%s)', (_, name, spoil, code, path) => {
    const { call, good } = FUNCTIONS[name];
    const body: Body = good();
    spoil(body);
    expect(issueOf(() => call(structuredClone(body)))).toMatchObject({ code, path });
    expect(said(name, body)).toContain(`${path}: ${code}`);
  });
});
