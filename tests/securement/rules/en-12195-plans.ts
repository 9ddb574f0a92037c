// Plans for EN 12195-1 that lay lashings by their angles: α to the deck, β between plan and lengthwise direction.
import {
  type Article,
  type CheckSecurementInput,
  checkSecurement,
  euEn12195_1_2010,
  type Part,
  type Point,
  type SecurementCheck,
  type TieDown,
  type TieDownAsWhole,
} from 'chain-rigging';

export const rules = euEn12195_1_2010;

export const at = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'm' },
  { value: y, unit: 'm' },
  { value: z, unit: 'm' },
];

/** A load of 4 m by 2 m that stands low: nothing tilts it. */
export function load(more: Partial<Article> = {}): Article {
  return {
    id: 'load',
    kind: 'general',
    mass: '8 t',
    length: '4 m',
    friction: 0.3,
    centerOfGravity: at(-4, 0, 0.5),
    contacts: [at(-2, 1, 0), at(-2, -1, 0), at(-6, 1, 0), at(-6, -1, 0)].map((point) => ({ at: point })),
    ...more,
  };
}

/** Which way a lashing runs from the load: `x` 1 forward, -1 rearward; `y` 1 left, -1 right. */
export interface Way {
  readonly alpha: number;
  readonly beta: number;
  readonly x: 1 | -1;
  readonly y: 1 | -1;
}

/** The anchor of a run of 2 m that leaves a point. */
export function anchorOf([x, y, z]: readonly [number, number, number], way: Way): Point {
  const [a, b] = [(way.alpha * Math.PI) / 180, (way.beta * Math.PI) / 180];
  const [back, across, down] = [2 * Math.cos(a) * Math.cos(b), 2 * Math.cos(a) * Math.sin(b), 2 * Math.sin(a)];
  return at(x + way.x * back, y + way.y * across, z - down);
}

/** A direct lashing, rated as a whole. */
export function direct(id: string, lashingCapacity: `${number} kN`, way: Way, more: Partial<TieDown> = {}): TieDown {
  const attachment = [way.x > 0 ? -2 : -6, way.y, 1] as const;
  return {
    id,
    holds: 'load',
    path: 'vehicle-to-cargo',
    capacities: { lashingCapacity },
    attachment: at(...attachment),
    anchor: anchorOf(attachment, way),
    ...more,
  } as TieDown;
}

/** Four alike, one from each corner: two hold in each heading. */
export const corners = (lashingCapacity: `${number} kN`, angles: { readonly alpha: number; readonly beta: number }) =>
  ([1, -1] as const).flatMap((x) =>
    ([1, -1] as const).map((y) => direct(`corner ${x} ${y}`, lashingCapacity, { ...angles, x, y })),
  );

/** A lashing over the load, straight across, its legs at α. */
export function overTop(id: string, alpha: number, more: Partial<TieDownAsWhole> = {}): TieDownAsWhole {
  const leg = (y: 1 | -1) => ({
    attachment: at(-4, y, 2),
    anchor: anchorOf([-4, y, 2], { alpha, beta: 90, x: 1, y }),
  });
  const [left, right] = [leg(1), leg(-1)];
  return {
    id,
    holds: 'load',
    path: 'over-other-side',
    capacities: { lashingCapacity: '25 kN', standardTensionForce: '4 kN' },
    ...left,
    otherAttachment: right.attachment,
    otherAnchor: right.anchor,
    ...more,
  };
}

/** So many over the load, alike. */
export const across = (count: number, alpha: number, more: Partial<TieDownAsWhole> = {}): TieDownAsWhole[] =>
  Array.from({ length: count }, (_, index) => overTop(`strap ${index + 1}`, alpha, more));

/** A loop from the left side around the load and back to the left: both legs run straight across at α. */
export function halfLoop(id: string, alpha: number, more: Partial<TieDown>): TieDown {
  const leg = (x: number) => ({
    attachment: at(x, 1, 2),
    anchor: anchorOf([x, 1, 2], { alpha, beta: 90, x: 1, y: 1 }),
  });
  const [front, rear] = [leg(-3), leg(-5)];
  return {
    id,
    holds: 'load',
    path: 'over-same-side',
    ...front,
    otherAttachment: rear.attachment,
    otherAnchor: rear.anchor,
    ...more,
  } as TieDown;
}

/** An anchor point as a part. */
export const anchor = (id: string, where: 'vehicle' | 'cargo', lashingCapacity: `${number} kN`): Part => ({
  id,
  kind: 'anchor',
  at: where,
  capacities: { lashingCapacity },
});

export const judge = (
  article: Article,
  tieDowns: readonly TieDown[],
  more: Partial<CheckSecurementInput> = {},
): SecurementCheck => checkSecurement({ rules, articles: [article], tieDowns, ...more });
