// What the schemas refuse of an inspection, beside what the functions themselves refuse: the same code at the same path.

import { Ajv2020 } from 'ajv/dist/2020.js';
import { forecastRetirement, housePolicy, inspectChain, type RiggingErrorCode } from 'chain-rigging';
import { criteriaSetById, intervalSetById } from 'chain-rigging/registry';
import {
  checkJson,
  forecastRetirementRequestSchema,
  housePolicySchema,
  inspectChainRequestSchema,
} from 'chain-rigging/schemas';
import { describe, expect, it, test } from 'vitest';
import { jsonSchemas } from '../../.config/tasks/json-schema.js';
import { CRITERIA_SET_IDS, INTERVAL_SET_IDS } from '../../src/schemas/inspection.js';
import { issueOf } from '../quantities/issue-of.js';

// biome-ignore lint/suspicious/noExplicitAny: bodies are as wrong as a stranger makes them
type Body = any;

const measurements = () => ({
  diameters: [{ at: 'link 3', readings: ['9.8 mm', { value: 9.7, unit: 'mm' }] }, { readings: ['0.38 in'] }],
  section: { links: 11, length: '331 mm', whenNew: '330 mm' },
  link: { inside: '30.2 mm', outside: '50 mm' },
  uncertainty: '0 mm',
  notchDepth: '0.1 mm',
  bend: '0 mm',
  highestTemperature: '-10 C',
  found: ['gouge'],
  hook: { throat: '1 1/16 in', twist: '-2 deg', section: '19 mm', found: [] },
  tensionings: 0,
});
const chain = () => ({
  size: '3/8',
  grade: 100,
  wireDiameter: '10 mm',
  pitch: '30 mm',
  outsideLength: '50 mm',
  hook: { throat: '1 in', section: '20 mm' },
});
const FUNCTIONS = {
  inspectChain: {
    file: 'inspect-chain',
    schema: inspectChainRequestSchema,
    call: (body: Body) => inspectChain({ ...body, criteria: criteriaSetById(body.criteria) }),
    good: (): Body => ({ criteria: 'us-29cfr1910-184-2011', chain: chain(), measurements: measurements() }),
  },
  forecastRetirement: {
    file: 'forecast-retirement',
    schema: forecastRetirementRequestSchema,
    call: (body: Body) =>
      forecastRetirement({
        ...body,
        criteria: criteriaSetById(body.criteria),
        intervals: intervalSetById(body.intervals),
      }),
    good: (): Body => ({
      criteria: 'eu-en818-6-2000',
      chain: { size: '1-3/4' },
      history: {
        inspections: [{ date: '2026-02-28', measurements: measurements(), kind: 'thorough' }],
        tensionings: [{ date: '2026-01-01', count: 3 }],
      },
      asOf: '2026-03-01',
      intervals: 'us-asme-b30-9-2010',
      service: 'severe',
    }),
  },
  housePolicy: {
    file: 'house-policy',
    schema: housePolicySchema,
    call: (body: Body) => housePolicy(body),
    good: (): Body => ({
      id: 'shop',
      elongation: { limit: 0.03, over: true },
      linkElongation: { limit: 0.03, over: true },
      wear: { limit: 0.1, over: false },
      throatOpening: { limit: 0.05, over: false },
      tensionings: 200,
    }),
  },
};

const ajv = new Ajv2020({ strict: true, allErrors: true });
for (const schema of Object.values(jsonSchemas())) ajv.addSchema(schema);

describe('a good body', () => {
  it.each(Object.entries(FUNCTIONS))('%s takes it, before and after its schema', (_, { file, schema, call, good }) => {
    const check = checkJson(schema, good());
    expect(check).toEqual({ ok: true, value: good() });
    expect(call(check.ok && check.value)).toEqual(call(good()));
    expect([ajv.validate(`chain-rigging/${file}`, good()), ajv.errors]).toEqual([true, null]);
  });
});

describe('a bad body', () => {
  type Case = [keyof typeof FUNCTIONS, spoil: (body: Body) => void, RiggingErrorCode, path: string];
  const cases: Case[] = [
    ['inspectChain', (b) => (b.criteria = 'us-osha'), 'UNKNOWN_CRITERIA_SET', 'criteria'],
    ['inspectChain', (b) => delete b.chain, 'MISSING_FIELD', 'chain'],
    ['inspectChain', (b) => delete b.measurements, 'MISSING_FIELD', 'measurements'],
    ['inspectChain', (b) => (b.chain.size = '5/17'), 'UNKNOWN_SIZE', 'chain.size'],
    ['inspectChain', (b) => (b.chain.grade = 75), 'UNKNOWN_GRADE', 'chain.grade'],
    ['inspectChain', (b) => (b.chain.pitch = '0 mm'), 'NOT_POSITIVE', 'chain.pitch'],
    ['inspectChain', (b) => (b.chain.hook.throat = '1 kg'), 'WRONG_KIND', 'chain.hook.throat'],
    ['inspectChain', (b) => (b.chain.withoutHook = true), 'CONFLICTING_FIELDS', 'chain.withoutHook'],
    ['inspectChain', (b) => (b.chain.withoutHook = 'no'), 'UNKNOWN_VALUE', 'chain.withoutHook'],
    ['inspectChain', (b) => (b.measurements.neverHeated = true), 'CONFLICTING_FIELDS', 'measurements.neverHeated'],
    ['inspectChain', (b) => (b.measurements.diameters = 5), 'EMPTY_LIST', 'measurements.diameters'],
    [
      'inspectChain',
      (b) => (b.measurements.diameters[0].readings = []),
      'EMPTY_LIST',
      'measurements.diameters[0].readings',
    ],
    [
      'inspectChain',
      (b) => b.measurements.diameters[0].readings.push('9 mm'),
      'TOO_LARGE',
      'measurements.diameters[0].readings',
    ],
    [
      'inspectChain',
      (b) => (b.measurements.diameters[0].readings[1] = '9,8 mm'),
      'AMBIGUOUS_NUMBER',
      'measurements.diameters[0].readings[1]',
    ],
    ['inspectChain', (b) => (b.measurements.section.links = 2.5), 'NOT_A_WHOLE_NUMBER', 'measurements.section.links'],
    ['inspectChain', (b) => (b.measurements.section.links = 0), 'NOT_A_WHOLE_NUMBER', 'measurements.section.links'],
    ['inspectChain', (b) => delete b.measurements.section.length, 'MISSING_FIELD', 'measurements.section.length'],
    ['inspectChain', (b) => (b.measurements.uncertainty = '-0.1 mm'), 'NEGATIVE', 'measurements.uncertainty'],
    ['inspectChain', (b) => (b.measurements.bend = { value: -1, unit: 'mm' }), 'NEGATIVE', 'measurements.bend'],
    ['inspectChain', (b) => (b.measurements.found = ['cracks']), 'UNKNOWN_VALUE', 'measurements.found[0]'],
    ['inspectChain', (b) => (b.measurements.hook.found = 'crack'), 'EMPTY_LIST', 'measurements.hook.found'],
    [
      'inspectChain',
      (b) => (b.measurements.highestTemperature = '20'),
      'TEXT_NOT_A_QUANTITY',
      'measurements.highestTemperature',
    ],
    ['inspectChain', (b) => (b.measurements.tensionings = -1), 'NOT_A_WHOLE_NUMBER', 'measurements.tensionings'],
    ['forecastRetirement', (b) => (b.asOf = '2026-02-29'), 'NOT_A_DATE', 'asOf'],
    ['forecastRetirement', (b) => delete b.asOf, 'NOT_A_DATE', 'asOf'],
    ['forecastRetirement', (b) => (b.history.inspections = []), 'EMPTY_LIST', 'history.inspections'],
    [
      'forecastRetirement',
      (b) => (b.history.inspections[0].date = '28.2.2026'),
      'NOT_A_DATE',
      'history.inspections[0].date',
    ],
    [
      'forecastRetirement',
      (b) => (b.history.inspections[0].kind = 'quick'),
      'UNKNOWN_VALUE',
      'history.inspections[0].kind',
    ],
    [
      'forecastRetirement',
      (b) => (b.history.inspections[0].measurements.link.inside = '0 mm'),
      'NOT_POSITIVE',
      'history.inspections[0].measurements.link.inside',
    ],
    [
      'forecastRetirement',
      (b) => (b.history.tensionings[0].count = 0.5),
      'NOT_A_WHOLE_NUMBER',
      'history.tensionings[0].count',
    ],
    ['forecastRetirement', (b) => (b.service = 'hard'), 'UNKNOWN_VALUE', 'service'],
    ['housePolicy', (b) => delete b.elongation.over, 'MISSING_FIELD', 'elongation.over'],
    ['housePolicy', (b) => (b.elongation.over = 1), 'UNKNOWN_VALUE', 'elongation.over'],
    ['housePolicy', (b) => (b.wear.limit = 3), 'TOO_LARGE', 'wear.limit'],
    ['housePolicy', (b) => (b.wear.limit = '3 %'), 'NOT_FINITE', 'wear.limit'],
    ['housePolicy', (b) => (b.tensionings = 0), 'NOT_A_WHOLE_NUMBER', 'tensionings'],
  ];
  test.each(cases)('%#: %s', (name, spoil, code, path) => {
    const { schema, call, good } = FUNCTIONS[name];
    const body = good();
    spoil(body);
    const check = checkJson(schema, body);
    expect(check.ok ? [] : check.issues.map((issue) => `${issue.path}: ${issue.code}`)).toEqual([`${path}: ${code}`]);
    const issue = issueOf(() => call(structuredClone(body)));
    expect(issue.code).toBe(code);
    if (code !== 'UNKNOWN_CRITERIA_SET') expect(issue.path).toBe(path); // the registry asks for an id
  });

  it('has all its faults said at once, unknown fields among them', () => {
    const body = FUNCTIONS.inspectChain.good();
    body.chain.gread = 70;
    body.measurements.section.links = 'eleven';
    body.measurements.found = ['cracks', 'gouge', 5];
    const check = checkJson(inspectChainRequestSchema, body);
    expect(check.ok ? [] : check.issues.map(({ path, code }) => `${path}: ${code}`).sort()).toEqual([
      'chain.gread: UNKNOWN_FIELD',
      'measurements.found[0]: UNKNOWN_VALUE',
      'measurements.found[2]: UNKNOWN_VALUE',
      'measurements.section.links: NOT_A_WHOLE_NUMBER',
    ]);
    expect(ajv.validate('chain-rigging/inspect-chain', body)).toBe(false);
  });
});

describe('ids of criteria and intervals', () => {
  it('are those that the registry knows', () => {
    expect(issueOf(() => criteriaSetById('x')).expected).toBe(CRITERIA_SET_IDS.join(', '));
    expect(issueOf(() => intervalSetById('x')).expected).toBe(INTERVAL_SET_IDS.join(', '));
    for (const id of CRITERIA_SET_IDS) expect(criteriaSetById(id).id).toBe(id);
    for (const id of INTERVAL_SET_IDS) expect(intervalSetById(id).id).toBe(id);
  });
});
