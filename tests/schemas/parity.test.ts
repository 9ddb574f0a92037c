// A schema says what the library would say of the same body: the same code at the same path.
import { describe, expect, it, test } from 'vitest';
import { assemblyRating } from '../../src/assembly/assembly-rating.js';
import { chainRating } from '../../src/chain/chain-rating.js';
import type { RiggingErrorCode, RiggingIssue } from '../../src/errors.js';
import { capacityTableById, ratingTableById, ruleSetById } from '../../src/registry.js';
import {
  assemblyRatingRequestSchema,
  chainRatingRequestSchema,
  checkJson,
  checkSecurementRequestSchema,
  tieDownsRequiredRequestSchema,
} from '../../src/schemas/index.js';
import { CAPACITY_TABLE_IDS, RATING_TABLE_IDS, RULE_SET_IDS } from '../../src/schemas/requests.js';
import { checkSecurement } from '../../src/securement/check-securement.js';
import { tieDownsRequired } from '../../src/securement/tie-downs-required.js';
import { issueOf } from '../quantities/issue-of.js';

// biome-ignore lint/suspicious/noExplicitAny: bodies are as wrong as a stranger makes them
type Body = any;

const FUNCTIONS = {
  checkSecurement: {
    schema: checkSecurementRequestSchema,
    call: (body: Body) => checkSecurement({ ...body, rules: ruleSetById('us-49cfr393-2024') }),
    good: () => ({
      rules: 'us-49cfr393-2024',
      vehicle: {
        units: [
          { id: 'pickup', kind: 'power', grossWeightRating: '10000 lb' },
          { id: 'trailer', kind: 'towed', grossWeight: { value: 3, unit: 't' } },
        ],
        combinationRatingOnLabel: '18000 lb',
        interstateCommerce: true,
      },
      articles: [
        {
          id: 'tractor',
          kind: 'machinery',
          mass: '3940 lb',
          length: { value: 10, unit: 'ft' },
          blockedForward: false,
          accessories: [{ id: 'loader', lowered: true, locked: true }, { id: 'mower' }],
          frictionMat: { massOnMat: '1000 lb' },
        },
      ],
      tieDowns: [
        {
          id: 'front',
          holds: 'tractor',
          path: 'vehicle-to-cargo',
          end: 'front',
          parts: [
            { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
            { id: 'binder', kind: 'binder', markedWll: '5400 lb', style: 'ratchet' },
            { id: 'rope', kind: 'wire-rope', size: '3/8', nominalStrength: '14400 lbf' },
          ],
        },
        {
          id: 'rear',
          holds: 'tractor',
          path: 'vehicle-to-cargo',
          end: 'rear',
          capacities: { workingLoadLimit: '3150 lb' },
        },
      ],
    }),
  },
  tieDownsRequired: {
    schema: tieDownsRequiredRequestSchema,
    call: (body: Body) => tieDownsRequired({ ...body, rules: ruleSetById('us-49cfr393-2024') }),
    good: () => ({ rules: 'us-49cfr393-2024', article: { kind: 'machinery', mass: '12000 lb', length: '14 ft' } }),
  },
  assemblyRating: {
    schema: assemblyRatingRequestSchema,
    call: (body: Body) => assemblyRating({ ...body, ratings: ratingTableById('us-49cfr393-108-2024') }),
    good: () => ({
      ratings: 'us-49cfr393-108-2024',
      parts: [
        { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
        { id: 'hook', kind: 'grab-hook', size: '5/16', grade: 70, condition: { verdict: 'fit' } },
      ],
      load: '1000 lb',
    }),
  },
  chainRating: {
    schema: chainRatingRequestSchema,
    call: (body: Body) => chainRating({ ...body, ratings: ratingTableById('us-49cfr393-108-2024') }),
    good: () => ({ ratings: 'us-49cfr393-108-2024', size: '5/16', grade: 70 }),
  },
};

type Case = [
  what: string,
  name: keyof typeof FUNCTIONS,
  spoil: (body: Body) => void,
  code: RiggingErrorCode,
  path: string,
];

const issuesOf = (schema: Parameters<typeof checkJson>[0], body: unknown): readonly RiggingIssue[] => {
  const check = checkJson(schema, body);
  return check.ok ? [] : check.issues;
};

const said = (issues: readonly RiggingIssue[]) => issues.map(({ code, path }) => `${path}: ${code}`);

describe('a good body', () => {
  it.each(Object.entries(FUNCTIONS))('%s takes it, before and after its schema', (_, { schema, call, good }) => {
    expect(issuesOf(schema, good())).toEqual([]);
    const check = checkJson(schema, good());
    expect(check.ok && check.value).toEqual(good());
    expect(call(check.ok && check.value)).toEqual(call(good()));
  });
});

describe('a bad body', () => {
  const cases: Case[] = [
    ['no articles', 'checkSecurement', (b) => delete b.articles, 'EMPTY_LIST', 'articles'],
    ['an empty list of articles', 'checkSecurement', (b) => (b.articles = []), 'EMPTY_LIST', 'articles'],
    ['an object for a list', 'checkSecurement', (b) => (b.articles = {}), 'EMPTY_LIST', 'articles'],
    ['no tie-downs', 'checkSecurement', (b) => (b.tieDowns = []), 'EMPTY_LIST', 'tieDowns'],
    ['an article without id', 'checkSecurement', (b) => delete b.articles[0].id, 'MISSING_FIELD', 'articles[0].id'],
    ['an empty id', 'checkSecurement', (b) => (b.articles[0].id = ''), 'MISSING_FIELD', 'articles[0].id'],
    ['a number for an id', 'checkSecurement', (b) => (b.articles[0].id = 1), 'MISSING_FIELD', 'articles[0].id'],
    [
      'an unknown kind of article',
      'checkSecurement',
      (b) => (b.articles[0].kind = 'machine'),
      'UNKNOWN_VALUE',
      'articles[0].kind',
    ],
    ['no mass', 'checkSecurement', (b) => delete b.articles[0].mass, 'MISSING_FIELD', 'articles[0].mass'],
    [
      'a bare number for a mass',
      'checkSecurement',
      (b) => (b.articles[0].mass = 3940),
      'NOT_A_QUANTITY',
      'articles[0].mass',
    ],
    ['null for a mass', 'checkSecurement', (b) => (b.articles[0].mass = null), 'NOT_A_QUANTITY', 'articles[0].mass'],
    [
      'a separator',
      'checkSecurement',
      (b) => (b.articles[0].mass = '1,000 lb'),
      'AMBIGUOUS_NUMBER',
      'articles[0].mass',
    ],
    ['which ton', 'checkSecurement', (b) => (b.articles[0].mass = '2 ton'), 'AMBIGUOUS_UNIT', 'articles[0].mass'],
    [
      'a mass for a length',
      'checkSecurement',
      (b) => (b.articles[0].length = '10 lb'),
      'WRONG_KIND',
      'articles[0].length',
    ],
    [
      'a force for a mass',
      'checkSecurement',
      (b) => (b.articles[0].mass = { value: 5, unit: 'kN' }),
      'WRONG_KIND',
      'articles[0].mass',
    ],
    ['below zero', 'checkSecurement', (b) => (b.articles[0].mass = '-5 lb'), 'NEGATIVE', 'articles[0].mass'],
    [
      'a length below zero',
      'checkSecurement',
      (b) => (b.articles[0].length = '-5 ft'),
      'NOT_POSITIVE',
      'articles[0].length',
    ],
    ['zero', 'checkSecurement', (b) => (b.articles[0].mass = '0 lb'), 'NOT_POSITIVE', 'articles[0].mass'],
    [
      'NaN',
      'checkSecurement',
      (b) => (b.articles[0].mass = { value: Number.NaN, unit: 'lb' }),
      'NOT_FINITE',
      'articles[0].mass',
    ],
    [
      'a number out of range in JSON',
      'checkSecurement',
      (b) => (b.articles[0].mass = JSON.parse('{"value":1e999,"unit":"lb"}')),
      'NOT_FINITE',
      'articles[0].mass',
    ],
    ['a plural unit', 'checkSecurement', (b) => (b.articles[0].mass = '3940 lbs'), 'UNKNOWN_UNIT', 'articles[0].mass'],
    [
      'a unit that is none',
      'checkSecurement',
      (b) => (b.articles[0].length.unit = 'feet'),
      'UNKNOWN_UNIT',
      'articles[0].length',
    ],
    [
      'no text of a quantity',
      'checkSecurement',
      (b) => (b.articles[0].length = 'ten feet'),
      'TEXT_NOT_A_QUANTITY',
      'articles[0].length',
    ],
    [
      'a text without end',
      'checkSecurement',
      (b) => (b.articles[0].length = '1'.repeat(1 << 20)),
      'TEXT_TOO_LONG',
      'articles[0].length',
    ],
    [
      'too many digits',
      'checkSecurement',
      (b) => (b.articles[0].length = '10.12345678901234567 ft'),
      'TEXT_TOO_PRECISE',
      'articles[0].length',
    ],
    [
      'yes for true',
      'checkSecurement',
      (b) => (b.articles[0].blockedForward = 'yes'),
      'UNKNOWN_VALUE',
      'articles[0].blockedForward',
    ],
    [
      '1 for true in an accessory',
      'checkSecurement',
      (b) => (b.articles[0].accessories[1].lowered = 1),
      'UNKNOWN_VALUE',
      'articles[0].accessories[1].lowered',
    ],
    [
      'accessories that are no list',
      'checkSecurement',
      (b) => (b.articles[0].accessories = 'loader'),
      'EMPTY_LIST',
      'articles[0].accessories',
    ],
    [
      'an accessory without id',
      'checkSecurement',
      (b) => delete b.articles[0].accessories[0].id,
      'MISSING_FIELD',
      'articles[0].accessories[0].id',
    ],
    [
      'an accessory named as its article',
      'checkSecurement',
      (b) => (b.articles[0].accessories[0].id = 'tractor'),
      'DUPLICATE_ID',
      'articles[0].accessories[0].id',
    ],
    [
      'two accessories of one name',
      'checkSecurement',
      (b) => (b.articles[0].accessories[1].id = 'loader'),
      'DUPLICATE_ID',
      'articles[0].accessories[1].id',
    ],
    [
      'two articles of one name',
      'checkSecurement',
      (b) => b.articles.push({ ...b.articles[0], accessories: [] }),
      'DUPLICATE_ID',
      'articles[1].id',
    ],
    [
      'two tie-downs of one name',
      'checkSecurement',
      (b) => (b.tieDowns[1].id = 'front'),
      'DUPLICATE_ID',
      'tieDowns[1].id',
    ],
    [
      'a tie-down named as an article',
      'checkSecurement',
      (b) => (b.tieDowns[1].id = 'tractor'),
      'DUPLICATE_ID',
      'tieDowns[1].id',
    ],
    [
      'a tie-down that holds nothing',
      'checkSecurement',
      (b) => (b.tieDowns[1].holds = 'tracter'),
      'UNKNOWN_REFERENCE',
      'tieDowns[1].holds',
    ],
    [
      'a tie-down that holds a tie-down',
      'checkSecurement',
      (b) => (b.tieDowns[1].holds = 'front'),
      'UNKNOWN_REFERENCE',
      'tieDowns[1].holds',
    ],
    ['an unknown path', 'checkSecurement', (b) => (b.tieDowns[0].path = 'direct'), 'UNKNOWN_VALUE', 'tieDowns[0].path'],
    ['an unknown end', 'checkSecurement', (b) => (b.tieDowns[0].end = 'left'), 'UNKNOWN_VALUE', 'tieDowns[0].end'],
    [
      'neither parts nor capacities',
      'checkSecurement',
      (b) => delete b.tieDowns[1].capacities,
      'CONFLICTING_FIELDS',
      'tieDowns[1]',
    ],
    [
      'parts and capacities',
      'checkSecurement',
      (b) => (b.tieDowns[0].capacities = {}),
      'CONFLICTING_FIELDS',
      'tieDowns[0]',
    ],
    ['no parts', 'checkSecurement', (b) => (b.tieDowns[0].parts = []), 'EMPTY_LIST', 'tieDowns[0].parts'],
    [
      'two parts of one name',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[1].id = 'chain'),
      'DUPLICATE_ID',
      'tieDowns[0].parts[1].id',
    ],
    [
      'an unknown kind of part',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[0].kind = 'strap'),
      'UNKNOWN_VALUE',
      'tieDowns[0].parts[0].kind',
    ],
    [
      'a size nobody makes',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[0].size = '5/17'),
      'UNKNOWN_SIZE',
      'tieDowns[0].parts[0].size',
    ],
    [
      'a grade nobody makes',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[0].grade = 71),
      'UNKNOWN_GRADE',
      'tieDowns[0].parts[0].grade',
    ],
    [
      'a grade as text',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[0].grade = '7O'),
      'UNKNOWN_GRADE',
      'tieDowns[0].parts[0].grade',
    ],
    [
      'a length for a limit',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[1].markedWll = '5 ft'),
      'WRONG_KIND',
      'tieDowns[0].parts[1].markedWll',
    ],
    [
      'a limit of zero',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[1].markedWll = '0 lb'),
      'NOT_POSITIVE',
      'tieDowns[0].parts[1].markedWll',
    ],
    [
      'a mass for a strength',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[2].nominalStrength = '5 lb'),
      'WRONG_KIND',
      'tieDowns[0].parts[2].nominalStrength',
    ],
    [
      'an unknown condition',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[0].condition = 'worn'),
      'UNKNOWN_VALUE',
      'tieDowns[0].parts[0].condition',
    ],
    [
      'a limit of the whole below zero',
      'checkSecurement',
      (b) => (b.tieDowns[1].capacities.workingLoadLimit = '-1 lb'),
      'NEGATIVE',
      'tieDowns[1].capacities.workingLoadLimit',
    ],
    ['a vehicle without units', 'checkSecurement', (b) => (b.vehicle.units = []), 'EMPTY_LIST', 'vehicle.units'],
    [
      'an unknown kind of unit',
      'checkSecurement',
      (b) => (b.vehicle.units[1].kind = 'trailer'),
      'UNKNOWN_VALUE',
      'vehicle.units[1].kind',
    ],
    [
      'a rating of zero',
      'checkSecurement',
      (b) => (b.vehicle.units[0].grossWeightRating = '0 lb'),
      'NOT_POSITIVE',
      'vehicle.units[0].grossWeightRating',
    ],
    [
      'a force on the label',
      'checkSecurement',
      (b) => (b.vehicle.combinationRatingOnLabel = '80 kN'),
      'WRONG_KIND',
      'vehicle.combinationRatingOnLabel',
    ],
    [
      'nothing on the mat',
      'checkSecurement',
      (b) => (b.articles[0].frictionMat.massOnMat = '0 lb'),
      'NOT_POSITIVE',
      'articles[0].frictionMat.massOnMat',
    ],
    ['no article', 'tieDownsRequired', (b) => (b.article.kind = 'cat'), 'UNKNOWN_VALUE', 'article.kind'],
    ['no length', 'tieDownsRequired', (b) => delete b.article.length, 'MISSING_FIELD', 'article.length'],
    ['no parts', 'assemblyRating', (b) => delete b.parts, 'EMPTY_LIST', 'parts'],
    ['a part without id', 'assemblyRating', (b) => delete b.parts[1].id, 'MISSING_FIELD', 'parts[1].id'],
    [
      'an unknown verdict',
      'assemblyRating',
      (b) => (b.parts[1].condition.verdict = 'ok'),
      'UNKNOWN_VALUE',
      'parts[1].condition',
    ],
    ['a load of zero', 'assemblyRating', (b) => (b.load = '0 lb'), 'NOT_POSITIVE', 'load'],
    [
      'one leg',
      'assemblyRating',
      (b) => (b.parts[1] = { id: 'legs', kind: 'parallel', loadSharing: 'equal', legs: [[b.parts[0]]] }),
      'EMPTY_LIST',
      'parts[1].legs',
    ],
    ['null for a vehicle', 'checkSecurement', (b) => (b.vehicle = null), 'MISSING_FIELD', 'vehicle'],
    [
      'null for a mat',
      'checkSecurement',
      (b) => (b.articles[0].frictionMat = null),
      'MISSING_FIELD',
      'articles[0].frictionMat',
    ],
    [
      'null for a grade',
      'checkSecurement',
      (b) => (b.tieDowns[0].parts[0].grade = null),
      'UNKNOWN_GRADE',
      'tieDowns[0].parts[0].grade',
    ],
    ['units nobody uses', 'checkSecurement', (b) => (b.units = 'metric'), 'UNKNOWN_VALUE', 'units'],
    [
      'yes for interstate commerce',
      'checkSecurement',
      (b) => (b.vehicle.interstateCommerce = 'yes'),
      'UNKNOWN_VALUE',
      'vehicle.interstateCommerce',
    ],
    [
      'a size nobody makes in a leg',
      'assemblyRating',
      (b) =>
        (b.parts[1] = {
          id: 'legs',
          kind: 'parallel',
          loadSharing: 'equal',
          legs: [[b.parts[0]], [b.parts[0], { id: 'more', kind: 'chain', size: '5/17' }]],
        }),
      'UNKNOWN_SIZE',
      'parts[1].legs[1][1].size',
    ],
    [
      'an anchor nowhere',
      'assemblyRating',
      (b) => (b.parts[1] = { id: 'ring', kind: 'anchor', at: 'Cargo', markedWll: '5000 lb' }),
      'UNKNOWN_VALUE',
      'parts[1].at',
    ],
    [
      'an unknown kind of part with a mark',
      'assemblyRating',
      (b) => (b.parts[1] = { id: 'strap', kind: 'strap', markedWll: '5000 lb' }),
      'UNKNOWN_VALUE',
      'parts[1].kind',
    ],
    [
      'two marked limits',
      'assemblyRating',
      (b) =>
        (b.parts[1] = { id: 'binder', kind: 'binder', markedWll: '1 lb', capacities: { workingLoadLimit: '2 lb' } }),
      'CONFLICTING_FIELDS',
      'parts[1].capacities.workingLoadLimit',
    ],
    [
      'an unknown sharing',
      'assemblyRating',
      (b) => (b.parts[1] = { id: 'legs', kind: 'parallel', loadSharing: 'half', legs: [[b.parts[0]], [b.parts[0]]] }),
      'UNKNOWN_VALUE',
      'parts[1].loadSharing',
    ],
    ['a size nobody makes', 'chainRating', (b) => (b.size = '5/17'), 'UNKNOWN_SIZE', 'size'],
    ['a grade nobody makes', 'chainRating', (b) => (b.grade = 75), 'UNKNOWN_GRADE', 'grade'],
    ['a limit below zero', 'chainRating', (b) => (b.markedWll = { value: -1, unit: 'lb' }), 'NEGATIVE', 'markedWll'],
  ];

  test.each(cases)('with %s (%s)', (_, name, spoil, code, path) => {
    const { schema, call, good } = FUNCTIONS[name];
    const body: Body = good();
    spoil(body);
    expect(issueOf(() => call(structuredClone(body)))).toMatchObject({ code, path });
    expect(said(issuesOf(schema, body))).toContain(`${path}: ${code}`);
  });

  // Where a word is absent both say that it is missing. A size is looked up: the library says which sizes there are.
  const absent: [name: keyof typeof FUNCTIONS, spoil: (body: Body) => void, path: string][] = [
    ['checkSecurement', (b) => delete b.articles[0].kind, 'articles[0].kind'],
    ['checkSecurement', (b) => delete b.tieDowns[0].path, 'tieDowns[0].path'],
    ['checkSecurement', (b) => delete b.tieDowns[0].holds, 'tieDowns[0].holds'],
    ['checkSecurement', (b) => delete b.tieDowns[0].parts[0].kind, 'tieDowns[0].parts[0].kind'],
    ['checkSecurement', (b) => delete b.tieDowns[0].parts[0].size, 'tieDowns[0].parts[0].size'],
    ['checkSecurement', (b) => delete b.vehicle.units[0].kind, 'vehicle.units[0].kind'],
    ['assemblyRating', (b) => (b.parts[1] = { id: 'ring', kind: 'anchor', markedWll: '5000 lb' }), 'parts[1].at'],
    [
      'assemblyRating',
      (b) => (b.parts[1] = { id: 'legs', kind: 'parallel', legs: [[b.parts[0]], [b.parts[0]]] }),
      'parts[1].loadSharing',
    ],
    ['chainRating', (b) => delete b.size, 'size'],
  ];
  test.each(absent)('%#: a word is missing (%s)', (name, spoil, path) => {
    const { schema, call, good } = FUNCTIONS[name];
    const body: Body = good();
    spoil(body);
    const issue = issueOf(() => call(structuredClone(body)));
    expect(issue.path).toBe(path);
    if (!path.endsWith('size')) expect(issue.code).toBe('MISSING_FIELD');
    expect(said(issuesOf(schema, body))).toEqual([`${path}: MISSING_FIELD`]);
  });
});

describe('ids of rule sets and rating tables', () => {
  it('are those that the registry knows', () => {
    expect(issueOf(() => ruleSetById('x')).expected).toBe(RULE_SET_IDS.join(', '));
    expect(issueOf(() => capacityTableById('x')).expected).toBe(CAPACITY_TABLE_IDS.join(', '));
    expect(issueOf(() => ratingTableById('x')).expected).toBe(RATING_TABLE_IDS.join(', '));
  });

  it('have codes of their own', () => {
    expect(issueOf(() => ruleSetById('x')).code).toBe('UNKNOWN_RULE_SET');
    expect(said(issuesOf(tieDownsRequiredRequestSchema, { ...FUNCTIONS.tieDownsRequired.good(), rules: 'x' }))).toEqual(
      ['rules: UNKNOWN_RULE_SET'],
    );
    expect(issueOf(() => ratingTableById('x')).code).toBe('UNKNOWN_RATING_TABLE');
    expect(said(issuesOf(chainRatingRequestSchema, { ...FUNCTIONS.chainRating.good(), ratings: 'x' }))).toEqual([
      'ratings: UNKNOWN_RATING_TABLE',
    ]);
  });
});
