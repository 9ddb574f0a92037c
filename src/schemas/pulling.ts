import * as z from 'zod';
import type { RiggingErrorCode } from '../errors.js';
import { readAboveZero, readNumber } from '../pulling/plain-input.js';
import { readZeroOrMore } from '../pulling/take-up-speed.js';
import type { HitchKind } from '../pulling/tractor/hitch.js';
import { readAngle } from '../pulling/tractor/tractor.js';
import { readPositive } from '../quantities/read.js';
import { d497DrawbarPower } from '../tables/generated/d497-drawbar-power.js';
import { d497SoilClasses } from '../tables/generated/d497-soil-classes.js';
import { logSkidCoefficients } from '../tables/generated/log-skid-coefficients.js';
import { rollingResistance } from '../tables/generated/rolling-resistance.js';
import { softGroundPullFractions } from '../tables/generated/soft-ground-pull-fractions.js';
import { tractionCoefficients } from '../tables/generated/traction-coefficients.js';
import {
  build,
  choice,
  type Fault,
  fault,
  faultOf,
  fieldOf,
  fields,
  flag,
  list,
  oneOf,
  optional,
  wholeNumber,
  withFaults,
  word,
  wrongWord,
} from './fields.js';
import { force, length, mass, quantitySchema, quantityThat } from './quantity.js';

// The objects that requests about pulling are made of. What only a whole pull can tell, such as rolling resistance that a
// gross coefficient asks for, stays with the functions.

/** A number from one to another; the library's own reader says what is wrong. */
function number(least: number, most: number, remedy: string) {
  return withFaults(
    z.number().min(least).max(most),
    () => [],
    (value) => faultOf(() => readNumber(value, '', least, most, remedy)),
  );
}

function aboveZero(most: number, remedy: string) {
  return withFaults(
    z.number().gt(0).max(most),
    () => [],
    (value) => faultOf(() => readAboveZero(value, '', most, remedy)),
  );
}

/** A plain number that a function takes as it stands: above zero, and so much at most. */
export function plainNumber(
  schema: z.ZodNumber,
  expected: string,
  most: number,
  atZero: RiggingErrorCode = 'NOT_POSITIVE',
) {
  const codeOf = (value: unknown): RiggingErrorCode => {
    if (typeof value !== 'number' || !Number.isFinite(value)) return 'NOT_FINITE';
    return value >= most ? 'TOO_LARGE' : value <= 0 ? atZero : 'UNKNOWN_VALUE';
  };
  return withFaults(schema, (value) => [
    fault(codeOf(value), expected, value, 'Give a plain number, such as 0.2 or 1.5.'),
  ]);
}

/** The name of a row of a table. */
function row<Rows extends object>(rows: Rows) {
  return word(Object.keys(rows) as (keyof Rows & string)[], 'NO_VALUE_IN_TABLE');
}

export const angle = /* @__PURE__ */ build(() => quantityThat('angle', (input) => readAngle(input as never, '')));
const anyLength = /* @__PURE__ */ build(() => quantitySchema('length'));
const coefficientOf = (most: number) => number(0, most, 'Force over weight: 0.6, not 60.');
export const nothingOrMore = <K extends 'length' | 'speed' | 'force' | 'angle'>(kind: K) =>
  quantityThat(kind, (input) => readZeroOrMore(input, kind, ''));

export const tractor = /* @__PURE__ */ build(() => {
  const shape = fields('a tractor', {
    mass,
    frontAxleMass: optional(quantitySchema('mass')),
    centerOfGravityAhead: optional(anyLength),
    wheelbase: length,
    centerOfGravityHeight: optional(length),
    trackWidth: optional(length),
    drive: word(['rear-wheels', 'all-wheels', 'tracks']),
  });
  return withFaults(
    shape,
    () => undefined,
    (value) => {
      if (typeof value !== 'object' || value === null) return [];
      const given = ['frontAxleMass', 'centerOfGravityAhead'].filter((each) => fieldOf(value, each) !== undefined);
      if (given.length === 1) return [];
      return [
        fault(
          given.length === 0 ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS',
          'frontAxleMass or centerOfGravityAhead, one of them',
          given.length === 0 ? undefined : 'both',
          'Weigh the front axle on level ground, or say where the center of gravity is.',
          ['frontAxleMass'],
        ),
      ];
    },
  );
});

const HITCH_KINDS = [
  'drawbar',
  'frame',
  'attachment',
  'front-hitch',
  'three-point-arms',
  'quick-hitch',
  'top-link',
  'axle',
] as const satisfies readonly HitchKind[];

export const hitch = /* @__PURE__ */ build(() => {
  const shape = fields('a hitch', {
    kind: word(HITCH_KINDS),
    height: length,
    behindAxle: optional(anyLength),
    aheadOfFrontAxle: optional(anyLength),
    subframeTiedToFrame: optional(flag()),
  });
  return withFaults(
    shape,
    () => undefined,
    (value) => {
      const [kind, ahead] = [fieldOf(value, 'kind'), fieldOf(value, 'aheadOfFrontAxle') !== undefined];
      const forward = kind === 'front-hitch' || (kind === 'attachment' && ahead);
      const other = forward ? 'behindAxle' : 'aheadOfFrontAxle';
      if (fieldOf(value, other) === undefined) return [];
      return [fault('CONFLICTING_FIELDS', 'one distance', 'both or the other', 'One chain pulls on one end.', [other])];
    },
  );
});

export const chainAngle = /* @__PURE__ */ build(() =>
  choice(
    '{ belowTractorLine } or { belowHorizontal }',
    {
      belowTractorLine: fields('a chain angle', { belowTractorLine: angle }),
      belowHorizontal: fields('a chain angle', { belowHorizontal: angle }),
    },
    'belowTractorLine',
  ),
);

export const rolling = /* @__PURE__ */ build(() =>
  choice('{ surface }, { penetration } or { coefficient }', {
    surface: fields('rolling resistance', { surface: row(rollingResistance.rows) }),
    penetration: fields('rolling resistance', { penetration: nothingOrMore('length') }),
    coefficient: fields('rolling resistance', { coefficient: coefficientOf(1) }),
  }),
);

export const traction = /* @__PURE__ */ build(() => {
  const tire = fields('a tire', {
    sectionWidth: length,
    diameter: length,
    deflectionRatio: optional(number(0, 0.5, 'How far it gives over its section height: about 0.2.')),
  });
  const coneIndex = choice('{ kPa } or { psi }', {
    kPa: fields('a cone index', { kPa: aboveZero(10_000, 'Saturated mud and pavement are no soil for D497.') }),
    psi: fields('a cone index', { psi: aboveZero(1500, 'Saturated mud and pavement are no soil for D497.') }),
  });
  return choice('{ surface }, { coefficient, kind } or { soil, slip, construction }', {
    surface: fields('traction', { surface: row(tractionCoefficients.rows) }),
    coefficient: fields('traction', {
      coefficient: number(0, 2, 'Pull over the weight on what is driven: 0.55, not 55.'),
      kind: word(['gross', 'net']),
    }),
    slip: fields('traction', {
      construction: word(['bias', 'radial']),
      slip: number(0, 0.3, 'A fraction: 0.15, not 15; 0.3 at most.'),
      soil: optional(row(d497SoilClasses.rows)),
      coneIndex: optional(coneIndex),
      tires: optional(fields('tires', { front: tire, rear: tire })),
    }),
  });
});

export const engine = /* @__PURE__ */ build(() => {
  const surfaces = ['concrete', 'firm-soil', 'tilled-soil', 'soft-soil'] as const;
  const power = choice('{ hp } or { kW }', {
    hp: fields('power', { hp: aboveZero(1e5, 'As rated.') }),
    kW: fields('power', { kW: aboveZero(1e5, 'As rated.') }),
  });
  const shape = fields('an engine', {
    power: optional(power),
    speed: optional(quantitySchema('speed', { positive: true })),
    efficiency: optional(aboveZero(1, 'Share of the power: 0.8, not 80.')),
    toDrawbar: optional(
      fields('power at the drawbar', {
        tractor: row(d497DrawbarPower.rows),
        surface: word(surfaces, 'NO_VALUE_IN_TABLE'),
      }),
    ),
    thrustLimit: optional(force),
  });
  return withFaults(shape, () => undefined, engineFaults);
});

/** Power says something only with a speed and a share of it. */
function engineFaults(value: unknown): readonly Fault[] {
  if (typeof value !== 'object' || value === null) return [];
  const has = (name: string) => fieldOf(value, name) !== undefined;
  if (!has('power')) {
    const remedy = 'Give power, speed and efficiency, or the limit of gear, clutch or relief.';
    return has('thrustLimit') ? [] : [fault('MISSING_FIELD', 'power or thrustLimit', undefined, remedy, ['power'])];
  }
  const shares = ['efficiency', 'toDrawbar'].filter(has);
  return [
    ...(has('speed') ? [] : [fault('MISSING_FIELD', 'a speed', undefined, 'In the gear used.', ['speed'])]),
    ...(shares.length === 1
      ? []
      : [
          fault(
            shares.length === 0 ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS',
            'efficiency or toDrawbar',
            shares.length === 0 ? undefined : 'both',
            'Give one of them.',
          ),
        ]),
  ];
}

/** What holds a load, and its mass; `extra` are fields of what it is part of. */
export function load<const Extra extends z.ZodRawShape>(extra: Extra) {
  const tackle = fields('a tackle', {
    sheaves: wholeNumber(1, 10, 'a whole number from 1 to 10', 'Count the sheaves.'),
    mechanicalAdvantage: number(1, 2 ** 10, 'Count the parts of line that pull on the load.'),
  });
  const base = { mass, slope: optional(angle), tackle: optional(tackle), ...extra };
  const friction = choice('{ condition } or { coefficient }', {
    condition: fields('friction', { condition: row(logSkidCoefficients.rows) }),
    coefficient: fields('friction', { coefficient: coefficientOf(2) }),
  });
  const loads = [
    fields('a rolling load', { kind: z.literal('rolling'), rolling, ...base }),
    fields('a mired load', {
      kind: z.literal('mired'),
      depth: word(['wheel', 'fender', 'cab']),
      runningGear: optional(word(['wheels', 'tracks'])),
      powerOnTracks: optional(flag()),
      oppositeToEntry: optional(flag()),
      ...base,
    }),
    fields('a load to recover', { kind: z.literal(['overturned', 'nosed-in-ditch']), ...base }),
    fields('a load on soft ground', {
      kind: z.literal('soft-ground'),
      surface: row(softGroundPullFractions.rows),
      ...base,
    }),
    fields('a log', {
      kind: z.literal('log'),
      lift: word(['none', 'one-end']),
      friction,
      chainAngle: optional(angle),
      ...base,
    }),
  ] as const;
  return withFaults(z.discriminatedUnion('kind', loads), (value, issue) =>
    issue.code === 'invalid_union'
      ? [
          {
            ...wrongWord((issue.options as string[]).join(', '), 'UNKNOWN_VALUE', fieldOf(value, 'kind')),
            at: ['kind'],
          },
        ]
      : [fault('MISSING_FIELD', 'a load { kind, mass, ... }', value, 'Give the load with its fields.')],
  );
}

export const ends = /* @__PURE__ */ build(() => {
  const turns = (step: number, expected: string) =>
    withFaults(z.number().gt(0).max(100).multipleOf(step), (value) => [
      fault('NOT_A_WHOLE_NUMBER', expected, value, 'Count how often it goes round.'),
    ]);
  const hookBack = optional(length);
  const shapes = [
    fields('an end', { at: z.literal('hook'), hookBack }),
    fields('an end', {
      at: z.literal('cylinder'),
      diameter: length,
      turns: turns(0.5, 'turns, in halves, up to 100'),
      hookBack,
    }),
    fields('an end', {
      at: z.literal('rectangle'),
      width: length,
      height: length,
      turns: turns(1, 'whole turns, up to 100'),
      hookBack,
    }),
    fields('an end', { at: z.literal('choker'), diameter: length, tail: length }),
  ] as const;
  const end = withFaults(z.discriminatedUnion('at', shapes), (value, issue) =>
    issue.code === 'invalid_union'
      ? [{ ...wrongWord((issue.options as string[]).join(', '), 'UNKNOWN_VALUE', fieldOf(value, 'at')), at: ['at'] }]
      : [fault('MISSING_FIELD', "an end such as { at: 'hook' }", value, 'Give the end with its fields.')],
  );
  const both = list(end, 1, 'one end or two').max(2);
  return withFaults(both, (value, issue) =>
    issue.code === 'too_big'
      ? [fault('TOO_LARGE', 'one end or two', (value as readonly unknown[]).length, 'A chain has two.')]
      : undefined,
  );
});

export const standoff = /* @__PURE__ */ build(() => {
  const stopping = fields('a gap to stop in', {
    speed: quantitySchema('speed', { positive: true }),
    reactionTime: quantitySchema('duration', { positive: true }),
    deceleration: quantitySchema('acceleration', { positive: true }),
  });
  return oneOf([length, stopping], (value) => {
    if (fieldOf(value, 'speed') !== undefined) return stopping;
    return faultOf(() => readPositive(value, 'length', ''));
  });
});

export const takeUp = /* @__PURE__ */ build(() => {
  const bySpeed = fields('a take-up', { speed: nothingOrMore('speed') });
  const bySlack = fields('a take-up', {
    slack: nothingOrMore('length'),
    acceleration: optional(quantitySchema('acceleration', { positive: true })),
  });
  return oneOf([z.literal('slow'), bySpeed, bySlack], (value) => {
    if (typeof value !== 'object' || value === null) return [wrongWord("'slow' or an object", 'UNKNOWN_VALUE', value)];
    const [speed, slack] = [fieldOf(value, 'speed') !== undefined, fieldOf(value, 'slack') !== undefined];
    if (speed !== slack) return speed ? bySpeed : bySlack;
    return [
      fault(
        speed ? 'CONFLICTING_FIELDS' : 'MISSING_FIELD',
        'a speed, or slack and how the machine gathers speed over it',
        speed ? 'both' : undefined,
        "Give one of { speed }, { slack, acceleration }, { slack } with a thrust, or 'slow'.",
      ),
    ];
  });
});

export const bridle = /* @__PURE__ */ build(() => {
  const each = nothingOrMore('angle');
  const pair = withFaults(z.tuple([each, each]), (value) => [
    fault('MISSING_FIELD', 'the angles of two legs', value, "Write ['30 deg', '30 deg']."),
  ]);
  const shapes = {
    included: fields('a bridle', { included: each }),
    fromPullLine: fields('a bridle', { fromPullLine: pair }),
  };
  return choice('{ included } or { fromPullLine }', shapes, 'included');
});

/** A load that is anchored, or one that gives. */
export const snatchedLoad = /* @__PURE__ */ build(() => {
  const loose = fields('a load', {
    mass,
    breaksLooseAt: optional(force),
    resists: optional(nothingOrMore('force')),
  });
  return oneOf([z.literal('anchored'), loose], (value) =>
    typeof value === 'object' && value !== null
      ? loose
      : [wrongWord("'anchored' or { mass, ... }", 'UNKNOWN_VALUE', value)],
  );
});
