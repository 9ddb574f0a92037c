// A schema of a pull says what the function would say of the same body: the same code at the same path.
import { describe, expect, it, test } from 'vitest';
import type { RiggingErrorCode } from '../../src/errors.js';
import {
  availablePull,
  hitchStability,
  planPull,
  pullChainLength,
  pullResistance,
  shockTension,
  us49cfr393_108_2024,
} from '../../src/index.js';
import {
  availablePullRequestSchema,
  checkJson,
  hitchStabilityRequestSchema,
  planPullRequestSchema,
  pullChainLengthRequestSchema,
  pullResistanceRequestSchema,
  shockTensionRequestSchema,
} from '../../src/schemas/index.js';
import { issueOf } from '../quantities/issue-of.js';

// biome-ignore lint/suspicious/noExplicitAny: bodies are as wrong as a stranger makes them
type Body = any;

const tractor = () => ({ mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' });
const pulls = () => ({
  tractor: tractor(),
  hitch: { kind: 'drawbar', height: '15 in', behindAxle: '-1 in' },
  traction: { coefficient: 0.55, kind: 'net' },
  rolling: { coefficient: 0.05 },
  engine: { power: { hp: 25 }, speed: '3 mph', efficiency: 0.7, thrustLimit: '3000 lbf' },
  chainAngle: { belowTractorLine: '-2 deg' },
});

const FUNCTIONS = {
  availablePull: { schema: availablePullRequestSchema, call: (body: Body) => availablePull(body), good: pulls },
  onSoil: {
    schema: availablePullRequestSchema,
    call: (body: Body) => availablePull(body),
    good: () => ({
      tractor: { ...tractor(), drive: 'all-wheels' },
      hitch: { kind: 'drawbar', height: '15 in' },
      traction: {
        slip: 0.15,
        construction: 'bias',
        coneIndex: { psi: 200 },
        tires: {
          front: { sectionWidth: '8 in', diameter: '24 in', deflectionRatio: 0.2 },
          rear: { sectionWidth: '12 in', diameter: '44 in' },
        },
      },
    }),
  },
  pullResistance: {
    schema: pullResistanceRequestSchema,
    call: (body: Body) => pullResistance(body),
    good: () => ({ kind: 'mired', depth: 'fender', mass: '3300 lb', tackle: { sheaves: 1, mechanicalAdvantage: 2 } }),
  },
  log: {
    schema: pullResistanceRequestSchema,
    call: (body: Body) => pullResistance(body),
    good: () => ({ kind: 'log', lift: 'none', mass: '1400 lb', friction: { coefficient: 0.6 }, chainAngle: '5 deg' }),
  },
  softGround: {
    schema: pullResistanceRequestSchema,
    call: (body: Body) => pullResistance(body),
    good: () => ({ kind: 'soft-ground', surface: 'bog', mass: '1400 lb' }),
  },
  hitchStability: {
    schema: hitchStabilityRequestSchema,
    call: (body: Body) => hitchStability(body),
    good: () => ({
      tractor: { ...tractor(), centerOfGravityHeight: '26 in', trackWidth: '44 in' },
      hitch: { kind: 'attachment', height: '15 in', behindAxle: '20 in', subframeTiedToFrame: true },
      pull: '1500 lbf',
      steeringReserve: 0.2,
      friction: 0.8,
      rearAxleHeight: '22 in',
      sidePull: { fromStraight: '10 deg' },
      sideSlope: '5 deg',
    }),
  },
  shockTension: {
    schema: shockTensionRequestSchema,
    call: (body: Body) => shockTension(body),
    good: () => ({
      towingMass: '3000 kg',
      load: { mass: '2000 kg', breaksLooseAt: '5 kN', resists: '0 kN' },
      takeUp: { slack: '1 m' },
      thrust: '8 kN',
      chain: { wireDiameter: '10 mm', length: '6 m' },
      inSeries: [{ by: '1 mm', under: '10 kN' }],
      workingLoadLimit: '2000 kg',
      proofFactor: 2,
      breakingForce: '80 kN',
      elongationAtBreak: 0.15,
    }),
  },
  pullChainLength: {
    schema: pullChainLengthRequestSchema,
    call: (body: Body) => pullChainLength(body),
    good: () => ({
      ends: [
        { at: 'rectangle', width: '1 ft', height: '1 ft', turns: 2, hookBack: '1 ft' },
        { at: 'cylinder', diameter: '1 ft', turns: 1.5 },
      ],
      standoff: { speed: '3 mph', reactionTime: '1 s', deceleration: '0.2 g' },
      pitch: '1 in',
      wireDiameter: '0.28 in',
      dangerMargin: 1.5,
    }),
  },
  planPull: {
    schema: planPullRequestSchema,
    call: (body: Body) => planPull({ ...body, ratings: us49cfr393_108_2024 }),
    good: () => ({
      ratings: 'us-49cfr393-108-2024',
      ...pulls(),
      load: { kind: 'rolling', mass: '4000 lb', rolling: { surface: 'loose-gravel' } },
      rigging: [{ id: 'chain', kind: 'chain', size: '5/16', grade: 70 }],
      chain: { pitch: '1.1 in', length: '20 ft' },
      ends: [{ at: 'hook' }, { at: 'choker', diameter: '16 in', tail: '1 ft' }],
      standoff: '12 ft',
      bridle: { angles: { fromPullLine: ['20 deg', '30 deg'] } },
      takeUp: { speed: '0 mph' },
      proofFactor: 2,
    }),
  },
};

type Name = keyof typeof FUNCTIONS;
const said = (name: Name, body: unknown) => {
  const check = checkJson(FUNCTIONS[name].schema, body);
  return check.ok ? [] : check.issues.map(({ code, path }) => `${path}: ${code}`);
};

describe('a good body', () => {
  it.each(Object.keys(FUNCTIONS) as Name[])('%s takes it, before and after its schema', (name) => {
    const { schema, call, good } = FUNCTIONS[name];
    expect(said(name, good())).toEqual([]);
    const check = checkJson<(typeof FUNCTIONS)[Name]['schema']>(schema, good());
    expect(check.ok && check.value).toEqual(good());
    expect(call(check.ok && check.value)).toEqual(call(good()));
  });
});

type Case = [name: Name, spoil: (body: Body) => void, code: RiggingErrorCode, path: string];

describe('a bad body', () => {
  const cases: Case[] = [
    ['availablePull', (b) => delete b.tractor, 'MISSING_FIELD', 'tractor'],
    ['availablePull', (b) => delete b.tractor.mass, 'MISSING_FIELD', 'tractor.mass'],
    ['availablePull', (b) => (b.tractor.mass = '2 ton'), 'AMBIGUOUS_UNIT', 'tractor.mass'],
    ['availablePull', (b) => (b.tractor.wheelbase = '0 in'), 'NOT_POSITIVE', 'tractor.wheelbase'],
    ['availablePull', (b) => (b.tractor.drive = 'front-wheels'), 'UNKNOWN_VALUE', 'tractor.drive'],
    ['availablePull', (b) => delete b.tractor.frontAxleMass, 'MISSING_FIELD', 'tractor.frontAxleMass'],
    ['availablePull', (b) => (b.tractor.centerOfGravityAhead = '1 ft'), 'CONFLICTING_FIELDS', 'tractor.frontAxleMass'],
    ['availablePull', (b) => (b.tractor.frontAxleMass = '-1 lb'), 'NEGATIVE', 'tractor.frontAxleMass'],
    ['availablePull', (b) => (b.hitch.kind = 'bumper'), 'UNKNOWN_VALUE', 'hitch.kind'],
    ['availablePull', (b) => delete b.hitch.height, 'MISSING_FIELD', 'hitch.height'],
    ['availablePull', (b) => (b.hitch.aheadOfFrontAxle = '1 ft'), 'CONFLICTING_FIELDS', 'hitch.aheadOfFrontAxle'],
    ['availablePull', (b) => (b.hitch.kind = 'front-hitch'), 'CONFLICTING_FIELDS', 'hitch.behindAxle'],
    ['availablePull', (b) => (b.hitch.subframeTiedToFrame = 'yes'), 'UNKNOWN_VALUE', 'hitch.subframeTiedToFrame'],
    ['availablePull', (b) => delete b.traction, 'MISSING_FIELD', 'traction'],
    ['availablePull', (b) => (b.traction = {}), 'MISSING_FIELD', 'traction'],
    ['availablePull', (b) => (b.traction.surface = 'ice'), 'CONFLICTING_FIELDS', 'traction'],
    ['availablePull', (b) => (b.traction.coefficient = 55), 'TOO_LARGE', 'traction.coefficient'],
    ['availablePull', (b) => (b.traction.coefficient = -1), 'NEGATIVE', 'traction.coefficient'],
    ['availablePull', (b) => (b.traction.coefficient = '0.5'), 'NOT_FINITE', 'traction.coefficient'],
    ['availablePull', (b) => (b.traction.kind = 'brutto'), 'UNKNOWN_VALUE', 'traction.kind'],
    ['availablePull', (b) => (b.traction = { surface: 'mud' }), 'NO_VALUE_IN_TABLE', 'traction.surface'],
    ['availablePull', (b) => (b.rolling = { surface: 'mud' }), 'NO_VALUE_IN_TABLE', 'rolling.surface'],
    ['availablePull', (b) => (b.rolling = { penetration: '-1 in' }), 'NEGATIVE', 'rolling.penetration'],
    ['availablePull', (b) => (b.rolling = { coefficient: 5 }), 'TOO_LARGE', 'rolling.coefficient'],
    ['availablePull', (b) => (b.engine = {}), 'MISSING_FIELD', 'engine.power'],
    ['availablePull', (b) => (b.engine.power = { hp: 25, kW: 18 }), 'CONFLICTING_FIELDS', 'engine.power'],
    ['availablePull', (b) => (b.engine.power.hp = 0), 'NOT_POSITIVE', 'engine.power.hp'],
    ['availablePull', (b) => delete b.engine.speed, 'MISSING_FIELD', 'engine.speed'],
    ['availablePull', (b) => delete b.engine.efficiency, 'MISSING_FIELD', 'engine'],
    ['availablePull', (b) => (b.engine.efficiency = 70), 'TOO_LARGE', 'engine.efficiency'],
    [
      'availablePull',
      (b) => (b.engine.toDrawbar = { tractor: 'tracks', surface: 'concrete' }),
      'CONFLICTING_FIELDS',
      'engine',
    ],
    [
      'availablePull',
      (b) => (b.engine = { ...b.engine, efficiency: undefined, toDrawbar: { tractor: 'x', surface: 'concrete' } }),
      'NO_VALUE_IN_TABLE',
      'engine.toDrawbar.tractor',
    ],
    ['availablePull', (b) => (b.engine.thrustLimit = '3000 lb'), 'WRONG_KIND', 'engine.thrustLimit'],
    ['availablePull', (b) => (b.chainAngle.belowHorizontal = '1 deg'), 'CONFLICTING_FIELDS', 'chainAngle'],
    [
      'availablePull',
      (b) => (b.chainAngle.belowTractorLine = '90 deg'),
      'IMPOSSIBLE_GEOMETRY',
      'chainAngle.belowTractorLine',
    ],
    ['availablePull', (b) => (b.slope = '-90 deg'), 'IMPOSSIBLE_GEOMETRY', 'slope'],
    ['availablePull', (b) => (b.slope = 5), 'NOT_A_QUANTITY', 'slope'],
    ['onSoil', (b) => (b.traction.slip = 15), 'TOO_LARGE', 'traction.slip'],
    ['onSoil', (b) => (b.traction.construction = 'steel'), 'UNKNOWN_VALUE', 'traction.construction'],
    ['onSoil', (b) => (b.traction.coneIndex = { psi: 0 }), 'NOT_POSITIVE', 'traction.coneIndex.psi'],
    ['onSoil', (b) => delete b.traction.tires.front.diameter, 'MISSING_FIELD', 'traction.tires.front.diameter'],
    ['onSoil', (b) => (b.traction.tires.rear.deflectionRatio = 20), 'TOO_LARGE', 'traction.tires.rear.deflectionRatio'],
    ['pullResistance', (b) => delete b.kind, 'MISSING_FIELD', 'kind'],
    ['pullResistance', (b) => (b.kind = 'stuck'), 'UNKNOWN_VALUE', 'kind'],
    ['pullResistance', (b) => (b.depth = 'hub'), 'UNKNOWN_VALUE', 'depth'],
    ['pullResistance', (b) => (b.oppositeToEntry = 1), 'UNKNOWN_VALUE', 'oppositeToEntry'],
    ['pullResistance', (b) => (b.tackle.sheaves = 1.5), 'NOT_A_WHOLE_NUMBER', 'tackle.sheaves'],
    ['pullResistance', (b) => (b.tackle.mechanicalAdvantage = 0), 'NOT_POSITIVE', 'tackle.mechanicalAdvantage'],
    ['pullResistance', (b) => (b.slope = '95 deg'), 'IMPOSSIBLE_GEOMETRY', 'slope'],
    ['log', (b) => (b.lift = 'both'), 'UNKNOWN_VALUE', 'lift'],
    ['log', (b) => (b.friction = {}), 'MISSING_FIELD', 'friction'],
    ['log', (b) => (b.friction = { condition: 'mud' }), 'NO_VALUE_IN_TABLE', 'friction.condition'],
    ['log', (b) => (b.friction.coefficient = 60), 'TOO_LARGE', 'friction.coefficient'],
    ['log', (b) => (b.mass = '1400 lbf'), 'WRONG_KIND', 'mass'],
    ['softGround', (b) => (b.surface = 'lawn'), 'NO_VALUE_IN_TABLE', 'surface'],
    ['hitchStability', (b) => (b.pull = '0 lbf'), 'NOT_POSITIVE', 'pull'],
    ['hitchStability', (b) => (b.steeringReserve = 1), 'TOO_LARGE', 'steeringReserve'],
    ['hitchStability', (b) => (b.steeringReserve = 0), 'NOT_POSITIVE', 'steeringReserve'],
    ['hitchStability', (b) => (b.friction = 2), 'TOO_LARGE', 'friction'],
    ['hitchStability', (b) => (b.rearAxleHeight = '22 lb'), 'WRONG_KIND', 'rearAxleHeight'],
    ['hitchStability', (b) => (b.sidePull = {}), 'MISSING_FIELD', 'sidePull.fromStraight'],
    ['hitchStability', (b) => (b.sideSlope = '90 deg'), 'IMPOSSIBLE_GEOMETRY', 'sideSlope'],
    ['shockTension', (b) => delete b.takeUp, 'MISSING_FIELD', 'takeUp'],
    ['shockTension', (b) => (b.takeUp = 'fast'), 'UNKNOWN_VALUE', 'takeUp'],
    ['shockTension', (b) => (b.takeUp = {}), 'MISSING_FIELD', 'takeUp'],
    ['shockTension', (b) => (b.takeUp.speed = '1 m/s'), 'CONFLICTING_FIELDS', 'takeUp'],
    ['shockTension', (b) => (b.takeUp.slack = '-1 m'), 'NEGATIVE', 'takeUp.slack'],
    ['shockTension', (b) => (b.load = 'stump'), 'UNKNOWN_VALUE', 'load'],
    ['shockTension', (b) => delete b.load.mass, 'MISSING_FIELD', 'load.mass'],
    ['shockTension', (b) => (b.load.resists = '-1 kN'), 'NEGATIVE', 'load.resists'],
    ['shockTension', (b) => (b.thrust = '-1 kN'), 'NEGATIVE', 'thrust'],
    ['shockTension', (b) => (b.chain.length = '6'), 'TEXT_NOT_A_QUANTITY', 'chain.length'],
    ['shockTension', (b) => delete b.inSeries[0].under, 'MISSING_FIELD', 'inSeries[0].under'],
    ['shockTension', (b) => (b.inSeries = 'drawbar'), 'EMPTY_LIST', 'inSeries'],
    ['shockTension', (b) => (b.proofFactor = 1), 'UNKNOWN_VALUE', 'proofFactor'],
    ['shockTension', (b) => (b.proofFactor = 0), 'NOT_POSITIVE', 'proofFactor'],
    ['shockTension', (b) => (b.elongationAtBreak = 15), 'TOO_LARGE', 'elongationAtBreak'],
    ['pullChainLength', (b) => delete b.ends, 'EMPTY_LIST', 'ends'],
    ['pullChainLength', (b) => (b.ends = []), 'EMPTY_LIST', 'ends'],
    ['pullChainLength', (b) => b.ends.push({ at: 'hook' }), 'TOO_LARGE', 'ends'],
    ['pullChainLength', (b) => (b.ends[0].at = 'box'), 'UNKNOWN_VALUE', 'ends[0].at'],
    ['pullChainLength', (b) => (b.ends[0].turns = 1.5), 'NOT_A_WHOLE_NUMBER', 'ends[0].turns'],
    ['pullChainLength', (b) => (b.ends[1].turns = 1.25), 'NOT_A_WHOLE_NUMBER', 'ends[1].turns'],
    ['pullChainLength', (b) => (b.ends[1].turns = 101), 'NOT_A_WHOLE_NUMBER', 'ends[1].turns'],
    ['pullChainLength', (b) => delete b.ends[1].diameter, 'MISSING_FIELD', 'ends[1].diameter'],
    ['pullChainLength', (b) => (b.standoff = 20), 'NOT_A_QUANTITY', 'standoff'],
    ['pullChainLength', (b) => (b.standoff = '0 ft'), 'NOT_POSITIVE', 'standoff'],
    ['pullChainLength', (b) => delete b.standoff.reactionTime, 'MISSING_FIELD', 'standoff.reactionTime'],
    ['pullChainLength', (b) => (b.dangerMargin = 0.5), 'UNKNOWN_VALUE', 'dangerMargin'],
    ['planPull', (b) => delete b.load, 'MISSING_FIELD', 'load'],
    ['planPull', (b) => (b.load.kind = 'stuck'), 'UNKNOWN_VALUE', 'load.kind'],
    ['planPull', (b) => (b.load.rolling.surface = 'mud'), 'NO_VALUE_IN_TABLE', 'load.rolling.surface'],
    ['planPull', (b) => delete b.chain, 'MISSING_FIELD', 'chain'],
    ['planPull', (b) => delete b.chain.pitch, 'MISSING_FIELD', 'chain.pitch'],
    ['planPull', (b) => (b.rigging = []), 'EMPTY_LIST', 'rigging'],
    ['planPull', (b) => (b.rigging[0].size = '5/17'), 'UNKNOWN_SIZE', 'rigging[0].size'],
    ['planPull', (b) => (b.bridle.angles = {}), 'MISSING_FIELD', 'bridle.angles.included'],
    ['planPull', (b) => (b.bridle.angles.included = '60 deg'), 'CONFLICTING_FIELDS', 'bridle.angles'],
    ['planPull', (b) => (b.bridle.angles.fromPullLine = ['20 deg']), 'MISSING_FIELD', 'bridle.angles.fromPullLine'],
    ['planPull', (b) => (b.bridle.angles.fromPullLine[1] = '-20 deg'), 'NEGATIVE', 'bridle.angles.fromPullLine[1]'],
    ['availablePull', (b) => (b.chainAngle = {}), 'MISSING_FIELD', 'chainAngle.belowTractorLine'],
    ['planPull', (b) => (b.takeUp = { speed: '-1 mph' }), 'NEGATIVE', 'takeUp.speed'],
    ['planPull', (b) => (b.units = 'metric'), 'UNKNOWN_VALUE', 'units'],
  ];

  test.each(cases)('%s, case %#', (name, spoil, code, path) => {
    const { call, good } = FUNCTIONS[name];
    const body: Body = good();
    spoil(body);
    expect(issueOf(() => call(structuredClone(body)))).toMatchObject({ code, path });
    expect(said(name, body)).toContain(`${path}: ${code}`);
  });

  it('says every issue at once, and fields that nobody knows', () => {
    const body: Body = FUNCTIONS.planPull.good();
    body.tractor.masss = '1 lb';
    body.traction.kind = 'x';
    body.ends[1].tale = '1 ft';
    body.load.mass = '4,000 lb';
    body.takeUp.slak = '1 ft';
    body.ratings = 'x';
    expect(said('planPull', body).sort()).toEqual(
      [
        'ends[1].tale: UNKNOWN_FIELD',
        'load.mass: AMBIGUOUS_NUMBER',
        'ratings: UNKNOWN_RATING_TABLE',
        'takeUp.slak: UNKNOWN_FIELD',
        'traction.kind: UNKNOWN_VALUE',
        'tractor.masss: UNKNOWN_FIELD',
      ].sort(),
    );
  });
});
