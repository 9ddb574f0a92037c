// Tie-downs with round angles, in the forms in which people write lengths and loads.
import type { Capacities, Plan, Point, QuantityInput, TieDown, TieDownAsWhole } from 'chain-rigging';

export type Heading = 'forward' | 'rearward' | 'left' | 'right';
export type Load = QuantityInput<'ratedLoad'>;
export type Force = QuantityInput<'force'>;

/** The ways to write a length: inches as text, metric text, objects as JSON has them. */
export const LENGTHS = {
  inches: (whole: number): QuantityInput<'length'> => `${whole * 12} in`,
  'metric text': (whole: number): QuantityInput<'length'> => `${whole} m`,
  JSON: (whole: number): QuantityInput<'length'> => ({ value: whole * 1000, unit: 'mm' }),
} as const;

type Write = (whole: number) => QuantityInput<'length'>;
const meters: Write = LENGTHS['metric text'];

const point = (write: Write, x: number, y: number, z: number): Point => [write(x), write(y), write(z)];

/** The way to the anchor of a tie-down that holds back a heading. */
const BACK: Record<Heading, readonly [number, number]> = {
  forward: [-1, 0],
  rearward: [1, 0],
  left: [0, -1],
  right: [0, 1],
};

/** A direct tie-down that lies flat along an axis: it holds back one heading with all of its load, AE = 1. */
export function flat(
  heading: Heading,
  capacities: Capacities,
  more: Partial<TieDownAsWhole> = {},
  write = meters,
): TieDown {
  const [x, y] = BACK[heading];
  return {
    id: heading,
    holds: 'load',
    path: 'vehicle-to-cargo',
    capacities,
    attachment: point(write, -10 + x, y, 1),
    anchor: point(write, -10 + 7 * x, 7 * y, 1),
    ...more,
  };
}

/** A direct tie-down of 3-4-5: it holds back one heading with 0.8 of its load and presses down with 0.6. */
export function sloped(
  heading: Heading,
  capacities: Capacities,
  more: Partial<TieDownAsWhole> = {},
  write = meters,
): TieDown {
  const [x, y] = BACK[heading];
  return {
    ...flat(heading, capacities),
    capacities,
    parts: undefined,
    attachment: point(write, -10 + x, y, 3),
    anchor: point(write, -10 + 5 * x, 5 * y, 0),
    ...more,
  } as TieDown;
}

/** A tie-down straight up and over the load: it presses down with twice its pretension, AE = 1 on both sides. */
export function upright(
  id: string,
  pretension: Force | undefined,
  more: Partial<TieDown> = {},
  write = meters,
): TieDown {
  return {
    id,
    holds: 'load',
    path: 'over-other-side',
    capacities: { lashingCapacity: '100 kN' },
    ...(pretension !== undefined && { pretension }),
    anchor: point(write, -10, 1, 0),
    attachment: point(write, -10, 1, 2),
    otherAttachment: point(write, -10, -1, 2),
    otherAnchor: point(write, -10, -1, 0),
    ...more,
  } as TieDown;
}

/** The plan as in a mirror: left is right. */
export function mirrored(plan: Plan): Plan {
  const flip = (at: Point | undefined): Point | undefined => {
    if (at === undefined) return undefined;
    const [x, y, z] = at;
    if (typeof y === 'string') return [x, (y.startsWith('-') ? y.slice(1) : `-${y}`) as Point[1], z];
    return [x, { value: -y.value, unit: y.unit }, z];
  };
  const tieDowns = plan.tieDowns.map((tieDown) => {
    const { anchor, attachment, otherAnchor, otherAttachment } = tieDown;
    const points = { anchor, attachment, otherAnchor, otherAttachment };
    const flipped = Object.entries(points).flatMap(([name, at]) => (at === undefined ? [] : [[name, flip(at)]]));
    return { ...tieDown, ...Object.fromEntries(flipped) } as TieDown;
  });
  return { ...plan, tieDowns };
}
