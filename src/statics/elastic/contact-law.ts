import type { Vec3 } from '../vector.js';
import type { ContactSpring, FrictionPolygon } from './elastic-model.js';

/**
 * What a contact does while the load moves a little: -1 is open, 0 sticks (or is pressed without friction), 2 j + 1
 * slides on facet j of the friction polygon, 2 j + 2 slides at its corner j.
 */
export type ContactMode = number;
export const OPEN: ContactMode = -1;
export const STICKS: ContactMode = 0;
export const slides = (mode: ContactMode): boolean => mode > STICKS;

/** The three rates of a contact: of friction along x and y, and of the normal force. */
export type ContactRate = [x: number, y: number, normal: number];

/**
 * Dry friction as a spring in series with a slider (elastic-plastic friction, not associated: it does not rise when it
 * slides; as in textbooks on contact mechanics, from memory). With k the shear stiffness, u the motion of the contact,
 * and a polygon of m N apothem round the origin, the friction follows -k u and is brought back to the nearest point of
 * the polygon, which itself grows with N.
 *
 * Which mode follows from a small motion u, of a contact that is pressed and touches the facets `touching` (none: its
 * friction is inside the polygon), or, with `touching` undefined, of one that is about to be pressed or to open and has
 * no force yet.
 */
export function contactModeOf(
  contact: ContactSpring,
  polygon: FrictionPolygon,
  touching: readonly number[] | undefined,
  motion: ContactRate,
): ContactMode {
  const normal = -contact.normalStiffness * motion[2];
  if (touching === undefined && !(normal > 0)) return OPEN;
  if (contact.shearStiffness === 0 || polygon.corners.length === 0) return STICKS;
  const x = -contact.shearStiffness * motion[0];
  const y = -contact.shearStiffness * motion[1];
  const radius = contact.friction * normal;
  return touching === undefined ? modeFromApex(polygon, radius, x, y) : modeFromFacets(polygon, touching, radius, x, y);
}

/** Friction that starts from nothing, in a polygon that starts from nothing: sticks inside, else the nearest point. */
function modeFromApex(
  { corners, normals, apothem }: FrictionPolygon,
  radius: number,
  x: number,
  y: number,
): ContactMode {
  const sides = corners.length;
  const turn = Math.atan2(y, x) / (2 * Math.PI);
  const facet = Math.min(Math.floor((turn < 0 ? turn + 1 : turn) * sides), sides - 1);
  const [nx, ny] = normals[facet]!;
  if (x * nx + y * ny <= radius * apothem) return STICKS;
  const along = y * nx - x * ny;
  const half = radius * Math.sqrt(1 - apothem * apothem);
  if (along > half) return cornerMode((facet + 1) % sides);
  return along < -half ? cornerMode(facet) : facetMode(facet);
}

/** Friction that touches one facet, or the two of a corner: each is a wall that moves out with N. */
function modeFromFacets(
  { normals, apothem, corners }: FrictionPolygon,
  touching: readonly number[],
  radius: number,
  x: number,
  y: number,
): ContactMode {
  const excess = (facet: number, px: number, py: number) =>
    px * normals[facet]![0] + py * normals[facet]![1] - radius * apothem;
  const passed = touching.filter((facet) => excess(facet, x, y) > 0);
  if (passed.length === 0) return STICKS;
  for (const facet of passed) {
    const by = excess(facet, x, y);
    const [px, py] = [x - by * normals[facet]![0], y - by * normals[facet]![1]];
    const tolerance = 1e-12 * (Math.abs(x) + Math.abs(y) + Math.abs(radius));
    if (touching.every((other) => other === facet || excess(other, px, py) <= tolerance)) return facetMode(facet);
  }
  return cornerMode(cornerBetween(touching, corners.length));
}

/** The corner of two facets: facet j ends at corner j + 1, where facet j + 1 starts. */
export function cornerBetween(touching: readonly number[], sides: number): number {
  const [first, second] = touching as [number, number];
  return (first + 1) % sides === second ? second : first;
}

export const facetMode = (facet: number): ContactMode => 2 * facet + 1;
const cornerMode = (corner: number): ContactMode => 2 * corner + 2;

/** The facets that a contact slides on: two at a corner. */
export function facetsOf(mode: ContactMode, sides: number): number[] {
  if (mode <= STICKS) return [];
  return isOnFacet(mode) ? [facetOf(mode)] : [(cornerOf(mode) + sides - 1) % sides, cornerOf(mode)];
}

const isOnFacet = (mode: ContactMode): boolean => mode > 0 && mode % 2 === 1;
const facetOf = (mode: ContactMode): number => (mode - 1) / 2;
const cornerOf = (mode: ContactMode): number => (mode - 2) / 2;

const NO_CONTACT = [0, 0, 0, 0, 0, 0, 0, 0, 0] as const;

/** How the forces of a contact change with its motion in a mode: rate = -D u, D by rows. */
export function contactStiffness(
  contact: ContactSpring,
  polygon: FrictionPolygon,
  mode: ContactMode,
): readonly number[] {
  const { normalStiffness: kn, shearStiffness: ks, friction } = contact;
  if (mode === OPEN) return polygon.corners.length === 0 ? [ks, 0, 0, 0, ks, 0, 0, 0, 0] : NO_CONTACT;
  if (mode === STICKS) return [ks, 0, 0, 0, ks, 0, 0, 0, kn];
  if (isOnFacet(mode)) {
    // along the facet it sticks; across, the friction keeps to the facet, which moves with N
    const [x, y] = polygon.normals[facetOf(mode)] as Vec3;
    const out = friction * polygon.apothem * kn;
    return [ks * y * y, -ks * x * y, out * x, -ks * x * y, ks * x * x, out * y, 0, 0, kn];
  }
  const [x, y] = polygon.corners[cornerOf(mode)] as Vec3;
  return [0, 0, friction * kn * x, 0, 0, friction * kn * y, 0, 0, kn];
}

/** By how much the friction stays inside each facet, in the unit of the normal force: m N - friction . normal. */
export function facetSlack(
  { normals, apothem }: FrictionPolygon,
  radius: number,
  facet: number,
  x: number,
  y: number,
): number {
  return radius * apothem - x * normals[facet]![0] - y * normals[facet]![1];
}
