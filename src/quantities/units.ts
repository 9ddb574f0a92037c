/**
 * Units and their exact factors.
 *
 * A factor is a whole number of the dimension's base step, chosen so that every unit of the dimension is a
 * whole number of it; only definitions are typed and no factor is a rounded decimal:
 *
 * - length in steps of 0.1 µm: inch = 25.4 mm exactly (international yard and pound agreement, 1959)
 * - mass in steps of 10 µg: avoirdupois pound = 0.453 592 37 kg exactly (same agreement)
 * - force in steps of 1e-13 N: standard gravity = 9.806 65 m/s² exactly (CGPM 1901), so
 *   lbf = 0.453 592 37 × 9.806 65 = 4.448 221 615 260 5 N exactly
 */
export type Dimension =
  | 'length'
  | 'mass'
  | 'force'
  | 'speed'
  | 'acceleration'
  | 'angle'
  | 'temperature'
  | 'duration'
  | 'massPerLength'
  | 'density';

/** The exact size of every unit in base steps of its dimension; messages write the first of each as an example. */
const STEPS = {
  length: {
    ft: 3_048_000,
    in: 254_000,
    yd: 9_144_000,
    mi: 16_093_440_000,
    mm: 1e4,
    cm: 1e5,
    m: 1e7,
    km: 1e10,
  },
  mass: { lb: 45_359_237, 'short-ton': 90_718_474_000, 'long-ton': 101_604_690_880, kg: 1e8, t: 1e11 },
  force: {
    lbf: 44_482_216_152_605,
    kip: 44_482_216_152_605_000,
    N: 1e13,
    daN: 1e14,
    kN: 1e16,
    kgf: 98_066_500_000_000,
  },
  speed: { mph: 804_672, 'ft/s': 548_640, 'm/s': 1_800_000, 'km/h': 500_000 },
  acceleration: { g: 980_665, 'm/s2': 100_000 },
  // 0: not a whole number of degrees (see convert)
  angle: { deg: 1, rad: 0, 'percent-grade': 0 },
  // the size of one degree; the scales start 32 F apart (see convert)
  temperature: { F: 5, C: 9 },
  duration: { min: 60, s: 1, h: 3600 },
  // pound per foot = 0.453 592 37 / 0.3048 kg/m
  massPerLength: { 'lb/ft': 45_359_237, 'kg/m': 30_480_000 },
  // pound per cubic foot = 0.453 592 37 / 0.3048³ kg/m³
  density: { 'lb/ft3': 453_592_370_000, 'kg/m3': 28_316_846_592 },
} as const satisfies Readonly<Record<Dimension, Readonly<Record<string, number>>>>;

type UnitsOf<D extends Dimension> = keyof (typeof STEPS)[D];

/** Any unit the library knows. */
export type Unit = { [D in Dimension]: UnitsOf<D> }[Dimension];

/** Every unit by its name: its dimension and its exact size in base steps. It inherits nothing, so any text may be looked up. */
export const UNITS: Readonly<Record<Unit, { readonly dimension: Dimension; readonly steps: number }>> =
  /* @__PURE__ */ (() => {
    const all = Object.create(null);
    for (const [dimension, units] of Object.entries(STEPS)) {
      for (const [unit, steps] of Object.entries(units)) all[unit] = { dimension, steps };
    }
    return all;
  })();

export type LengthUnit = UnitsOf<'length'>;
export type MassUnit = UnitsOf<'mass'>;
export type ForceUnit = UnitsOf<'force'>;

/**
 * The kinds of quantity a field can ask for. A kind is more than a dimension: a rated load (a working load
 * limit, a lashing capacity) is its own kind, stated in mass or in force units as the trade does.
 */
export interface UnitOfKind {
  length: LengthUnit;
  mass: MassUnit;
  force: ForceUnit;
  ratedLoad: MassUnit | ForceUnit;
  speed: UnitsOf<'speed'>;
  acceleration: UnitsOf<'acceleration'>;
  angle: UnitsOf<'angle'>;
  temperature: UnitsOf<'temperature'>;
  duration: UnitsOf<'duration'>;
  massPerLength: UnitsOf<'massPerLength'>;
  density: UnitsOf<'density'>;
}

export type Kind = keyof UnitOfKind;

/** Every kind by its name. */
export function kinds(): Kind[] {
  return [...(Object.keys(STEPS) as Dimension[]), 'ratedLoad'];
}

/** A system of units for results: `us` (in, ft, lb, lbf, mph) or `si` (mm, m, kg, N, m/s). */
export type UnitSystem = 'us' | 'si';

/** True when a unit measures quantities of a kind. */
export function unitFitsKind(unit: Unit, kind: Kind): boolean {
  const dimension = UNITS[unit]?.dimension;
  if (dimension === 'mass' || dimension === 'force') return kind === dimension || kind === 'ratedLoad';
  return dimension !== undefined && dimension === kind;
}

/** True when a value names a unit; safe on any value. */
export function isUnit(value: unknown): value is Unit {
  return typeof value === 'string' && UNITS[value as Unit] !== undefined;
}

/** The units of a kind, the usual one first; none for a kind that does not exist. */
export function unitsOfKind(kind: Kind): Unit[] {
  return (Object.keys(UNITS) as Unit[]).filter((unit) => unitFitsKind(unit, kind));
}
