// The published JSON Schemas, held against bodies by a validator that knows nothing of zod.
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it, test } from 'vitest';
import * as z from 'zod';
import { jsonSchemas } from '../../.config/tasks/json-schema.js';
import { planSchema } from '../../src/schemas/index.js';

const schemas = jsonSchemas();
const ajv = new Ajv2020({ strict: true, allErrors: true });
for (const schema of Object.values(schemas)) ajv.addSchema(schema);
const valid = (file: string, body: unknown) => ajv.validate(`chain-rigging/${file}`, body);

const tractor = { id: 'tractor', kind: 'machinery', mass: '3940 lb', length: { value: 10, unit: 'ft' } };
const chain = { id: 'chain', kind: 'chain', size: '5/16', grade: 70 };
const front = { id: 'front', holds: 'tractor', path: 'vehicle-to-cargo', end: 'front', parts: [chain] };
const whole = { id: 'rear', holds: 'tractor', path: 'over-other-side', capacities: { workingLoadLimit: '3150 lb' } };
const plan = { articles: [tractor], tieDowns: [front, whole] };
const machine = { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' };
const drawbar = { kind: 'drawbar', height: '15 in' };
const pulls = {
  tractor: machine,
  hitch: drawbar,
  traction: { coefficient: 0.55, kind: 'net' },
  rolling: { coefficient: 0.05 },
};
const rolls = { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.15 } };
const ends = [{ at: 'hook' }, { at: 'cylinder', diameter: '1 ft', turns: 1.5 }];
const pull = {
  ...pulls,
  ratings: 'us-49cfr393-108-2024',
  load: rolls,
  rigging: [chain],
  chain: { pitch: '0.88 in' },
  ends,
  takeUp: 'slow',
};
const snatch = {
  towingMass: '3 t',
  load: 'anchored',
  takeUp: { speed: '0 mph' },
  chain: { wireDiameter: '10 mm', length: '6 m' },
};
const legs = { id: 'legs', kind: 'parallel', loadSharing: 'equal', legs: [[chain], [chain, chain]] };

describe('the files', () => {
  it('are these, in the dialect of 2020-12, with plain ids', () => {
    expect(Object.keys(schemas)).toEqual([
      'plan',
      'part',
      'chain-rating',
      'assembly-rating',
      'tie-downs-required',
      'check-securement',
      'compare-rules',
      'solve-restraint',
      'propose-tie-downs',
      'kit-item',
      'build-kit',
      'choose-chain',
      'tie-down-length',
      'chain-measurements',
      'chain-history',
      'inspect-chain',
      'forecast-retirement',
      'house-policy',
      'plan-pull',
      'available-pull',
      'pull-resistance',
      'hitch-stability',
      'shock-tension',
      'pull-chain-length',
    ]);
    for (const [file, schema] of Object.entries(schemas)) {
      expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
      expect(schema.$id).toBe(`chain-rigging/${file}`);
      const text = JSON.stringify(schema);
      expect(text.match(/https?:\/\/[^"]*/g)).toEqual(['https://json-schema.org/draft/2020-12/schema']);
      expect(text).not.toContain('__schema');
    }
  });

  it('name what they use twice', () => {
    expect(Object.keys(schemas.plan!.$defs!).sort()).toEqual(
      [
        'any-grade',
        'article',
        'capacities',
        'force',
        'length',
        'mass',
        'part',
        'point',
        'rated-load',
        'tie-down',
        'trade-size',
        'vehicle',
      ].sort(),
    );
  });

  it('are what zod makes of a schema without help', () => {
    const { $schema: _, ...plain } = z.toJSONSchema(planSchema, { io: 'input' });
    const alone = new Ajv2020({ strict: true }).compile(plain);
    expect(alone(plan)).toBe(true);
    expect(alone({ ...plan, tieDowns: [{ ...front, parts: [legs] }] })).toBe(true);
    expect(alone({ ...plan, articles: [{ ...tractor, mass: '2 ton' }] })).toBe(false);
  });
});

describe('a body', () => {
  const good: [file: string, what: string, body: unknown][] = [
    ['plan', 'a plan', plan],
    [
      'plan',
      'with a vehicle',
      { ...plan, vehicle: { units: [{ id: 'pickup', kind: 'power', grossWeight: '3 t' }], interstateCommerce: false } },
    ],
    [
      'plan',
      'with accessories',
      { ...plan, articles: [{ ...tractor, accessories: [{ id: 'loader', lowered: true }] }] },
    ],
    ['part', 'a chain', chain],
    ['part', 'a metric chain', { ...chain, size: '8 mm' }],
    ['part', 'an anchor', { id: 'ring', kind: 'anchor', at: 'vehicle', markedWll: { value: 22.2, unit: 'kN' } }],
    ['part', 'legs in legs', { ...legs, legs: [[legs], [chain]] }],
    ['part', 'an inspected part', { ...chain, condition: { verdict: 'fit', steps: [] } }],
    ['chain-rating', 'a chain', { ratings: 'us-49cfr393-108-2024', size: '5/16', grade: 70, units: 'si' }],
    ['chain-rating', 'a marked chain', { ratings: 'us-welded-chain-2003', size: '10 mm', markedWll: '5/2 t' }],
    [
      'assembly-rating',
      'parts',
      { ratings: 'us-49cfr393-108-2024', parts: [chain, legs], load: '1000 lb', working: false },
    ],
    [
      'tie-downs-required',
      'an article without id',
      { rules: 'us-49cfr393-2024', article: { kind: 'general', mass: '1100 lb', length: '16 ft 6 in' } },
    ],
    ['check-securement', 'a plan with rules', { rules: 'us-49cfr393-2024', ...plan }],
    ['available-pull', 'a tractor', pulls],
    ['available-pull', 'a tractor on soil', { ...pulls, traction: { soil: 'firm', slip: 0.15, construction: 'bias' } }],
    ['plan-pull', 'a whole pull', pull],
    [
      'plan-pull',
      'a gap to stop in',
      { ...pull, standoff: { speed: '3 mph', reactionTime: '1 s', deceleration: '0.2 g' } },
    ],
    ['pull-resistance', 'a log', { kind: 'log', mass: '1 t', lift: 'none', friction: { coefficient: 0.5 } }],
    [
      'hitch-stability',
      'a pull to the side',
      { tractor: machine, hitch: drawbar, pull: '1500 lbf', sidePull: { fromStraight: '10 deg' } },
    ],
    ['shock-tension', 'an anchored load', snatch],
    ['shock-tension', 'slack', { ...snatch, takeUp: { slack: '1 ft' }, thrust: '0 lbf' }],
    ['pull-chain-length', 'two ends', { ends, pitch: '1 in', outsideWidth: '1 in' }],
  ];
  test.each(good)('%s takes %s', (file, _, body) => {
    expect([valid(file, body), ajv.errors]).toEqual([true, null]);
  });

  const bad: [file: string, what: string, body: unknown][] = [
    ['plan', 'nothing', undefined],
    ['plan', 'a list', [plan]],
    ['plan', 'no articles', { tieDowns: [front] }],
    ['plan', 'an empty list', { ...plan, tieDowns: [] }],
    ['plan', 'an unknown field', { ...plan, articles: [{ ...tractor, blockedFoward: true }] }],
    ['plan', 'a separator', { ...plan, articles: [{ ...tractor, mass: '1,000 lb' }] }],
    ['plan', 'which ton', { ...plan, articles: [{ ...tractor, mass: '2 ton' }] }],
    ['plan', 'a length for a mass', { ...plan, articles: [{ ...tractor, mass: '2 ft' }] }],
    ['plan', 'zero', { ...plan, articles: [{ ...tractor, mass: '0 lb' }] }],
    ['plan', 'zero as a number', { ...plan, articles: [{ ...tractor, mass: { value: 0, unit: 'lb' } }] }],
    ['plan', 'a unit of another kind', { ...plan, articles: [{ ...tractor, length: { value: 10, unit: 'lb' } }] }],
    ['plan', 'text for true', { ...plan, articles: [{ ...tractor, blockedForward: 'yes' }] }],
    ['plan', 'an unknown path', { ...plan, tieDowns: [{ ...front, path: 'direct' }] }],
    ['plan', 'parts and capacities', { ...plan, tieDowns: [{ ...front, capacities: {} }] }],
    ['plan', 'neither parts nor capacities', { ...plan, tieDowns: [{ ...front, parts: undefined }] }],
    ['part', 'an unknown kind', { ...chain, kind: 'strap' }],
    ['part', 'an unknown size', { ...chain, size: '5/17' }],
    ['part', 'a size with its unit', { ...chain, size: '5/16 in' }],
    ['part', 'a grade as text', { ...chain, grade: '70' }],
    ['part', 'a field of another kind of part', { ...chain, latch: true }],
    ['part', 'one leg', { ...legs, legs: [[chain]] }],
    ['part', 'a bad part in a leg', { ...legs, legs: [[chain], [{ ...chain, grade: 71 }]] }],
    ['chain-rating', 'an unknown table', { ratings: 'us-1999', size: '5/16' }],
    ['assembly-rating', 'no parts', { ratings: 'us-49cfr393-108-2024', parts: [] }],
    ['tie-downs-required', 'no rules', { article: tractor }],
    ['check-securement', 'units nobody uses', { rules: 'us-49cfr393-2024', ...plan, units: 'metric' }],
    [
      'available-pull',
      'two ways of gripping',
      { ...pulls, traction: { coefficient: 0.5, kind: 'net', surface: 'ice' } },
    ],
    ['available-pull', 'percent for a fraction', { ...pulls, traction: { coefficient: 55, kind: 'net' } }],
    ['plan-pull', 'a load of no kind', { ...pull, load: { mass: '1 t' } }],
    ['plan-pull', 'three ends', { ...pull, ends: [...ends, ...ends] }],
    ['pull-resistance', 'a depth that is none', { kind: 'mired', mass: '1 t', depth: 'hub' }],
    ['hitch-stability', 'a hitch that is none', { tractor: machine, hitch: { kind: 'bumper', height: '15 in' } }],
    ['shock-tension', 'a speed and slack', { ...snatch, takeUp: { speed: '1 mph', slack: '1 ft' } }],
    [
      'pull-chain-length',
      'a third of a turn',
      { ends: [{ at: 'cylinder', diameter: '1 ft', turns: 1 / 3 }], pitch: '1 in' },
    ],
  ];
  test.each(bad)('%s refuses %s', (file, _, body) => {
    expect(valid(file, JSON.parse(JSON.stringify(body ?? null)))).toBe(false);
  });
});
