import { fail } from '../../errors.js';
import { checkObject, checkOneOf } from '../../input-checks.js';
import { tractionCoefficients } from '../../tables/generated/traction-coefficients.js';
import { type Note, note } from '../../working/note.js';
import type { Provenance } from '../../working/source.js';
import type { Working } from '../../working/step.js';
import { listed, readChoice, readNumber } from '../plain-input.js';
import { type RollingResistance, readRolling } from '../resistance/rolling.js';
import {
  type ReadTire,
  readSoil,
  readTire,
  type SoilTraction,
  type Tire,
  tractionRatios,
  wheelNumeric,
} from '../tire-traction.js';
import type { Drive } from '../tractor/tractor.js';

/** A surface of the table of coefficients of traction. */
export type TractionSurface = keyof typeof tractionCoefficients.rows;

/** How the wheels or tracks grip: by the table, by a coefficient of your own, or on soil by ASABE D497. */
export type Traction =
  | { readonly surface: TractionSurface }
  | {
      /** Pull over the weight on what is driven. */
      readonly coefficient: number;
      /** `gross`: the rolling resistance of what is driven is still to be taken off; `net`: it is off. */
      readonly kind: 'gross' | 'net';
    }
  | (SoilTraction & {
      /** Two alike on each axle; left out, the wheel numeric of the soil class. */
      readonly tires?: { readonly front: Tire; readonly rear: Tire };
    });

/** Forces over the load on an axle. */
export interface GripRatios {
  /** Of a driven axle: thrust less its own rolling resistance. */
  readonly net: number;
  /** Rolling resistance of a driven axle, and of one that is not. */
  readonly drivenRolling: number;
  readonly freeRolling: number;
}

/** One end of what the sources give. */
export type Grip =
  | { readonly ratios: GripRatios }
  /** Where the ratios depend on the load on the axle, in newtons. */
  | { readonly ratiosAt: (axle: 'front' | 'rear', newtons: number) => GripRatios };

export interface ReadTraction {
  /** What to count on. */
  readonly least: Grip;
  /** The other end of the range; only where there is one. */
  readonly most: Grip | undefined;
}

/**
 * Reads the grip; the low end of traction goes with the high end of rolling resistance.
 * `thrustIsGiven`: an engine or gear is held against it too, which has to overcome the rolling of all wheels.
 */
export function readTraction(
  traction: Traction,
  rolling: RollingResistance | undefined,
  drive: Drive,
  thrustIsGiven: boolean,
  working: Working,
): ReadTraction {
  const choice = readChoice(traction, ['surface', 'coefficient', 'slip'], 'traction');
  if (choice === 'slip') return onSoil(traction as SoilTraction, rolling, drive, working);
  const { low, high, gross } =
    choice === 'surface'
      ? bySurface((traction as { readonly surface: string }).surface, drive, working)
      : byCoefficient(traction as { readonly coefficient: unknown; readonly kind: unknown });
  const needed = gross || drive === 'rear-wheels' || thrustIsGiven;
  const remedy = 'The coefficient leaves it out. Give { coefficient: 0 } where nothing rolls hard.';
  if (needed && rolling === undefined) {
    fail('MISSING_FIELD', 'rolling', 'the rolling resistance of the tractor', undefined, remedy);
  }
  const rolls = rolling === undefined ? { low: 0, high: 0 } : readRolling(rolling, 'rolling', working);
  const grip = (μ: number, f: number): Grip => ({
    ratios: { net: gross ? μ - f : μ, drivenRolling: f, freeRolling: f },
  });
  const ranges = low !== high || rolls.low !== rolls.high;
  return { least: grip(low, rolls.high), most: ranges ? grip(high, rolls.low) : undefined };
}

interface Coefficients {
  readonly low: number;
  readonly high: number;
  readonly gross: boolean;
}

function bySurface(surface: string, drive: Drive, working: Working): Coefficients {
  const { rows, source } = tractionCoefficients;
  const gear = drive === 'tracks' ? 'tracks' : 'rubber-tires';
  type Row = { readonly low: number; readonly high: number; readonly provenance?: Provenance };
  // the rows of this gear alone, so that a refusal names the surfaces it has
  const ofGear = Object.entries<{ readonly [gear: string]: Row }>(rows).flatMap(([name, gears]) => {
    const row = gears[gear];
    return row === undefined ? [] : [[name, row] as const];
  });
  const row = listed<Row>(Object.fromEntries(ofGear), surface, 'traction.surface');
  const { low, high, provenance = source.provenance } = row;
  working.cite({ ...source, provenance });
  return { low, high, gross: true };
}

function byCoefficient({ coefficient, kind }: { readonly coefficient: unknown; readonly kind: unknown }): Coefficients {
  checkOneOf(kind, ['gross', 'net'], 'traction.kind');
  const remedy = 'Pull over the weight on what is driven: 0.55, not 55.';
  const μ = readNumber(coefficient, 'traction.coefficient', 0, 2, remedy);
  return { low: μ, high: μ, gross: kind === 'gross' };
}

function onSoil(
  traction: SoilTraction & { readonly tires?: { readonly front: Tire; readonly rear: Tire } },
  rolling: RollingResistance | undefined,
  drive: Drive,
  working: Working,
): ReadTraction {
  if (drive === 'tracks') {
    fail('CONFLICTING_FIELDS', 'traction', 'a surface or a coefficient', 'slip', 'D497 is used for tires, not tracks.');
  }
  if (rolling !== undefined) {
    const remedy = 'D497 has a motion resistance of its own: it is not taken off twice.';
    fail('CONFLICTING_FIELDS', 'rolling', 'no rolling resistance beside soil and slip', 'both', remedy);
  }
  const soil = readSoil(traction, 'traction.', working);
  const still = { ...soil, slip: 0 };
  const ratiosOf = (tire: ReadTire | undefined, newtons: number): GripRatios => {
    const numeric = wheelNumeric(soil, tire, newtons);
    const driven = tractionRatios(soil, numeric);
    return {
      net: driven.netTractionRatio,
      drivenRolling: driven.motionResistanceRatio,
      freeRolling: tractionRatios(still, numeric).motionResistanceRatio,
    };
  };
  const { tires } = traction;
  if (tires === undefined) {
    if (soil.wheelNumeric === undefined) {
      const remedy = 'Give the front and rear tires, or a soil class.';
      fail('MISSING_FIELD', 'traction.tires', 'the size of the tires, for a cone index', undefined, remedy);
    }
    working.assumptions.push(NORMALLY_LOADED_TIRES);
    return { least: { ratios: ratiosOf(undefined, 0) }, most: undefined };
  }
  checkObject(tires, 'traction.tires', '{ front, rear }');
  const read = {
    front: readTire(tires.front, 'traction.tires.front', working),
    rear: readTire(tires.rear, 'traction.tires.rear', working),
  };
  working.assumptions.push(TWO_TIRES_ON_AN_AXLE);
  return { least: { ratiosAt: (axle, newtons) => ratiosOf(read[axle], newtons / 2) }, most: undefined };
}

const NORMALLY_LOADED_TIRES: Note = /* @__PURE__ */ note('NORMALLY_LOADED_TIRES');
const TWO_TIRES_ON_AN_AXLE: Note = /* @__PURE__ */ note('TWO_TIRES_ON_AN_AXLE');
