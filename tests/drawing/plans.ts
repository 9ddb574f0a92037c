// A plan whose drawing can be checked by hand, and results for it.
//
// The deck is 8.1 m long and the page gives 360 - 2 · 18 = 324 units to it: 40 units to the meter. Nothing else
// reaches past the deck, and at 2 m and 1.5 m the views are lower than the 240 units that would ask for a smaller scale.
import type { Point } from '../../src/quantities/point.js';
import type { Article, Plan, TieDown } from '../../src/securement/plan.js';
import type { Restraint } from '../../src/securement/restraint/answer.js';

export const SCALE = 40;
/** The front of the deck, the frontmost of all, in units from the left edge. */
export const FRONT = 18;

const m = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'm' },
  { value: y, unit: 'm' },
  { value: z, unit: 'm' },
];

export const machine: Article = {
  id: 'machine',
  kind: 'machinery',
  mass: '1800 kg',
  length: '3 m',
  outline: [m(-2, -0.7, 0), m(-5, 0.7, 1.5)],
  centerOfGravity: m(-3.8, 0.1, 0.6),
  contacts: [{ at: m(-2.5, 0.5, 0) }, { at: m(-4.5, -0.5, 0) }],
};

export function direct(id: string, anchor: Point, attachment: Point, more: Partial<TieDown> = {}): TieDown {
  const capacities = { workingLoadLimit: '2000 kg' } as const;
  return { id, holds: 'machine', path: 'vehicle-to-cargo', capacities, anchor, attachment, ...more } as TieDown;
}

export const TIE_DOWNS: readonly TieDown[] = [
  direct('front left', m(-1, 1, 0), m(-2.5, 0.5, 0.5)),
  direct('front right', m(-1, -1, 0), m(-2.5, -0.5, 0.5)),
  direct('rear left', m(-7, 1, 0), m(-4.8, 0.4, 0.8)),
  direct('strap', m(-3, -1, 0), m(-3, -0.7, 1.2), {
    path: 'over-other-side',
    otherAttachment: m(-3, 0.7, 1.2),
    otherAnchor: m(-3, 1, 0),
  }),
];

export const VEHICLE: NonNullable<Plan['vehicle']> = {
  units: [{ id: 'trailer', kind: 'towed' }],
  deck: { length: '8.1 m', width: '2 m' },
};

export const PLAN: Plan = { vehicle: VEHICLE, articles: [machine], tieDowns: TIE_DOWNS };

export interface Share {
  readonly id: string;
  readonly utilization: number | null;
}

export const tension = (id: string, utilization: number | null): Share => ({ id, utilization });

/** The way that decides, of a result made by hand: its limit answer and whatever else is given. */
export function direction(fields: object = {}, limit: object = {}) {
  return {
    direction: 'forward',
    acceleration: { value: 0.8, unit: 'g' },
    verdict: 'fail',
    limit: { outcome: 'limited', factor: 0.83, mode: 'slides', tensions: [], governing: [], residual: 0, ...limit },
    elastic: null,
    withoutOne: [],
    ifOff: [],
    ...fields,
  };
}

export const elastic = (tensions: readonly Share[], firstAtCapacity: object | null = null) => ({
  outcome: 'solved',
  verdict: 'pass',
  tensions,
  firstAtCapacity,
  firstSlip: null,
  firstLift: null,
  residual: 0,
});

/** A result of `solveRestraint` made by hand, of the fields that a drawing reads. */
export function restraint(fields: object = {}): Restraint {
  const tensions = [
    tension('front left', 0),
    tension('front right', 0.3),
    tension('rear left', 1),
    tension('strap', 0.62),
  ];
  return {
    result: 'solveRestraint',
    verdict: 'fail',
    article: 'machine',
    governing: 'forward',
    directions: [
      direction({}, { tensions, governing: ['rear left'] }),
      direction({ direction: 'up', verdict: 'pass' }, { outcome: 'unbounded', factor: null, mode: null }),
    ],
    missing: [],
    inputs: {},
    steps: [],
    sources: [],
    assumptions: [],
    cautions: [],
    ...fields,
  } as unknown as Restraint;
}
