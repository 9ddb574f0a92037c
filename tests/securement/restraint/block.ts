// The block that the tests of this folder hold, and a chain on it.
import type { Point } from '../../../src/quantities/point.js';
import type { TieDown } from '../../../src/securement/plan.js';

export const m = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'm' },
  { value: y, unit: 'm' },
  { value: z, unit: 'm' },
];

/** 1000 kg (9806.65 N) on four contacts 2 m apart each way, its center 0.5 m up, 5 m behind the front edge. */
export const block = {
  id: 'block',
  kind: 'machinery',
  mass: '1000 kg',
  length: '2 m',
  friction: 0.4,
  centerOfGravity: m(-5, 0, 0.5),
  contacts: [m(-4, 1, 0), m(-4, -1, 0), m(-6, 1, 0), m(-6, -1, 0)].map((at) => ({ at })),
} as const;
export const W = 9806.65;

/** Of 10 kN and 5000 kN of axial stiffness, unless said otherwise. */
export const chain = (id: string, anchor: Point, attachment: Point, more: object = {}): TieDown => ({
  id,
  holds: 'block',
  path: 'vehicle-to-cargo',
  anchor,
  attachment,
  capacities: { lashingCapacity: '10 kN' },
  axialStiffness: '5000 kN',
  ...more,
});
