// Tie-downs that run flat or upright, so that every cosine is 0 or 1 and a threshold can be hit exactly.
import type { Article, Check, Point, QuantityInput, SecurementCheck, TieDown, TieDownAsWhole } from 'chain-rigging';
import { checkOf } from '../plans.js';

type RatedLoad = QuantityInput<'ratedLoad'>;
export const at = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'm' },
  { value: y, unit: 'm' },
  { value: z, unit: 'm' },
];

/** A block of 1 t on contacts 2 m by 2 m around x = -4 m, its center of gravity 0.5 m high: it slides before it tips. */
export function block(more: Partial<Article> = {}): Article {
  return {
    id: 'block',
    kind: 'general',
    mass: '1 t',
    length: '2 m',
    friction: 0.4,
    centerOfGravity: at(-4, 0, 0.5),
    contacts: [{ at: at(-3, 1, 0) }, { at: at(-3, -1, 0) }, { at: at(-5, 1, 0) }, { at: at(-5, -1, 0) }],
    ...more,
  };
}

const PULLS = { forward: [2, 0], rearward: [-2, 0], left: [0, 2], right: [0, -2] } as const;

/** A direct tie-down that pulls the block flat in one heading, from a point 1 m high in its middle. */
export function flat(
  heading: keyof typeof PULLS,
  maximumSecuringLoad: RatedLoad,
  more: Partial<TieDownAsWhole> = {},
): TieDownAsWhole {
  const [x, y] = PULLS[heading];
  return {
    id: `flat-${heading}`,
    holds: 'block',
    path: 'vehicle-to-cargo',
    capacities: { maximumSecuringLoad },
    attachment: at(-4, 0, 1),
    anchor: at(-4 + x, y, 1),
    ...more,
  };
}

/** A direct tie-down straight down: it holds nothing back in any heading. */
export const upright: TieDown = {
  id: 'upright',
  holds: 'block',
  path: 'vehicle-to-cargo',
  capacities: { maximumSecuringLoad: '50 kN' },
  attachment: at(-4, 0, 1),
  anchor: at(-4, 0, 0),
};

/** A tie-down over the block whose two runs come straight down at its sides, 2 m apart. */
export function over(maximumSecuringLoad: RatedLoad, more: Partial<TieDownAsWhole> = {}): TieDownAsWhole {
  return {
    id: 'over',
    holds: 'block',
    path: 'over-other-side',
    capacities: { maximumSecuringLoad },
    attachment: at(-4, 1, 1),
    anchor: at(-4, 1, 0),
    otherAttachment: at(-4, -1, 1),
    otherAnchor: at(-4, -1, 0),
    ...more,
  };
}

/** Four chains, one at each corner, at α to the deck and β to the length of the vehicle, that pull outward. */
export function corners(alpha: number, beta: number, maximumSecuringLoad: RatedLoad): TieDownAsWhole[] {
  const radians = Math.PI / 180;
  const reach = Math.cos(alpha * radians);
  const [x, y, z] = [reach * Math.cos(beta * radians), reach * Math.sin(beta * radians), Math.sin(alpha * radians)];
  return [
    ['front-left', 1, 1],
    ['front-right', 1, -1],
    ['rear-left', -1, 1],
    ['rear-right', -1, -1],
  ].map(([id, along, across]) => ({
    id: id as string,
    holds: 'block',
    path: 'vehicle-to-cargo' as const,
    capacities: { maximumSecuringLoad },
    attachment: at(-4 + Number(along), Number(across), 1),
    anchor: at(-4 + Number(along) * (1 + x), Number(across) * (1 + y), 1 - z),
  }));
}

/** The numbers of a ratio check. */
export function ratioIn(result: SecurementCheck, id: string) {
  const found: Check = checkOf(result, id);
  if (!('demand' in found)) throw new Error(`${id} is ${found.verdict} without a ratio`);
  const { verdict, demand, capacity, utilization } = found;
  const number = (value: typeof demand) => (typeof value === 'number' ? value : value.value);
  return { verdict, demand: number(demand), capacity: number(capacity), utilization };
}
