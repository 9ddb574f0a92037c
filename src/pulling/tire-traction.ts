import { fail } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import type { QuantityInput } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { d497SoilClasses } from '../tables/generated/d497-soil-classes.js';
import { d497TractiveConstants } from '../tables/generated/d497-tractive-constants.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { listed, readAboveZero, readChoice, readNumber } from './plain-input.js';

/** A soil of ASABE D497. */
export type SoilClass = keyof typeof d497SoilClasses.rows;

/** How a cone penetrates the soil, the mean of its top 150 mm (6 in). */
export type ConeIndex = { readonly kPa: number } | { readonly psi: number };

/** One tire as it works. */
export interface Tire {
  /** b, of the unloaded tire. */
  readonly sectionWidth: QuantityInput<'length'>;
  /** d, of the unloaded tire, overall. */
  readonly diameter: QuantityInput<'length'>;
  /** δ/h, how far it gives over its section height; left out, 0.20. */
  readonly deflectionRatio?: number;
}

/** Soil, slip and make of the tires: all that D497 asks for beside their size and load. */
export interface SoilTraction {
  readonly construction: 'bias' | 'radial';
  /** A fraction: 0.15, not 15. */
  readonly slip: number;
  /** A class, for its cone index or, without a size of tire, for its wheel numeric. */
  readonly soil?: SoilClass;
  /** Measured, in place of a class; it needs the size of the tires. */
  readonly coneIndex?: ConeIndex;
}

/** Forces over the load on a wheel. */
export interface TractionRatios {
  /** Bn. */
  readonly wheelNumeric: number;
  /** GTR. */
  readonly grossTractionRatio: number;
  /** MRR. */
  readonly motionResistanceRatio: number;
  /** NTR = GTR − MRR: what is left to pull with; below zero a wheel that slips too little to drive itself. */
  readonly netTractionRatio: number;
}

export interface TireTraction extends ResultBase<'tireTraction'>, TractionRatios {
  /** TE = (1 − s) · NTR / GTR. */
  readonly tractiveEfficiency: number;
}

/** The soil in numbers. */
export interface ReadSoil {
  readonly construction: 'bias' | 'radial';
  readonly slip: number;
  /** In kPa. */
  readonly coneIndex: number;
  /** Of a normally loaded tire; only of a class. */
  readonly wheelNumeric: number | undefined;
}

/** Section width and diameter in meters. */
export interface ReadTire {
  readonly width: number;
  readonly diameter: number;
  readonly deflectionRatio: number;
}

/**
 * What a driven tire gives on soil, by ASABE D497, as forces over the load on it.
 *
 * GTR = 0.88 · (1 − e^(−0.1·Bn)) · (1 − e^(−7.5·s)) + 0.04, MRR = 1/Bn + 0.04 + 0.5 · s/√Bn for bias-ply tires; radial
 * tires have 9.5, 0.0325 and 0.9 for 7.5, 0.04 and 1. Wheel numeric Bn = (CI · b · d / W) · (1 + 5 · δ/h) / (1 + 3 · b/d),
 * W the load on ONE wheel; without a tire, that of the soil class for normally loaded tires.
 *
 * @param input.construction `'bias'` or `'radial'`
 * @param input.slip s, 0 to 0.3, a fraction
 * @param input.soil `'hard'`, `'firm'`, `'tilled'` or `'soft-or-sandy'`
 * @param input.coneIndex `{ kPa }` or `{ psi }`, instead of the soil; with a tire
 * @param input.tire `{ sectionWidth, diameter, deflectionRatio? }`, for the numeric of this tire
 * @param input.load on the one wheel, a force; with a tire
 * @throws RiggingError `MISSING_FIELD`, `CONFLICTING_FIELDS`, `NO_VALUE_IN_TABLE`, `UNKNOWN_VALUE`, `NOT_POSITIVE`, `NEGATIVE`,
 * `NOT_FINITE`, `TOO_LARGE` (slip above 0.3: what is said in percent, or past the equations), `WRONG_KIND`
 * @validity tires on soil with cohesion and friction; not concrete, ice or saturated mud. Best efficiency is at 8 to 15
 * percent of slip, the greatest pull at more
 * @source ASABE D497, Agricultural Machinery Management Data, traction equations, from memory
 * @example
 * tireTraction({ soil: 'firm', construction: 'bias', slip: 0.15 }).netTractionRatio.toFixed(4)
 * // => '0.5636'
 */
export function tireTraction(
  input: SoilTraction & {
    readonly tire?: Tire;
    readonly load?: QuantityInput<'force'>;
    /** `false` leaves the steps out. */
    readonly working?: boolean;
  },
): TireTraction {
  checkObject(input, '', '{ construction, slip, soil }');
  const working = new Working(input.working !== false);
  const soil = readSoil(input, '', working);
  const tire = input.tire === undefined ? undefined : readTire(input.tire, 'tire', working);
  const load = tire === undefined ? undefined : readPositive(input.load, 'force', 'load');
  const numeric = wheelNumeric(soil, tire, load === undefined ? 0 : inUnit(load, 'N').value);
  const ratios = tractionRatios(soil, numeric);
  if (!Number.isFinite(numeric) || !Number.isFinite(ratios.motionResistanceRatio)) {
    fail('NOT_FINITE', 'load', 'a load that a tire can carry', `${load}`, 'Give the load on one wheel.');
  }
  const { construction, slip: s } = soil;
  const { grossTractionRatio: GTR, motionResistanceRatio: MRR, netTractionRatio: NTR } = ratios;
  const k = d497TractiveConstants.rows[construction];
  if (tire !== undefined && load !== undefined) {
    const sizes = { CI: soil.coneIndex, b: tire.width, d: tire.diameter, 'δ/h': tire.deflectionRatio, W: load };
    const expression = `(CI · b · d / W) · (1 + ${k.deflection_factor} · δ/h) / (1 + ${k.width_factor} · b/d), in kPa, m, kN`;
    working.step('tire', 'Bn', expression, sizes, numeric);
  }
  const gross = `${k.gross_most} · (1 − e^(−${k.gross_numeric_rate}·Bn)) · (1 − e^(−${k.gross_slip_rate}·s)) + ${k.gross_offset}`;
  const motion = `${k.motion_numeric}/Bn + ${k.motion_offset} + ${k.motion_slip} · s/√Bn`;
  working.step('tire', 'GTR', gross, { Bn: numeric, s }, GTR);
  working.step('tire', 'MRR', motion, { Bn: numeric, s }, MRR);
  working.step('tire', 'NTR', 'GTR − MRR', { GTR, MRR }, NTR);
  const tractiveEfficiency = ((1 - s) * NTR) / GTR;
  working.step('tire', 'TE', '(1 − s) · NTR / GTR', { s, NTR, GTR }, tractiveEfficiency);
  return makeResult('tireTraction', { ...ratios, tractiveEfficiency }, input, working);
}

/** Past this slip the equations are not used here. */
const MOST_SLIP = 0.3;

/** Reads soil and slip; errors name the field after `path`, which ends with a dot or is empty. */
export function readSoil(input: SoilTraction, path: string, working: Working): ReadSoil {
  checkOneOf(input.construction, ['bias', 'radial'], `${path}construction`);
  const slip = readNumber(input.slip, `${path}slip`, 0, MOST_SLIP, 'A fraction: 0.15, not 15; 0.3 at most.');
  const choice = readChoice(input, ['soil', 'coneIndex'], path === '' ? '' : path.slice(0, -1));
  const { rows, source } = d497SoilClasses;
  working.cite(d497TractiveConstants.source);
  const { construction } = input;
  if (choice === 'coneIndex') {
    const coneIndex = readConeIndex(input.coneIndex, `${path}coneIndex`);
    return { construction, slip, coneIndex, wheelNumeric: undefined };
  }
  const row = listed<(typeof rows)[SoilClass]>(rows, input.soil, `${path}soil`);
  working.cite(source);
  return { construction, slip, coneIndex: row.cone_index_kpa, wheelNumeric: row.wheel_numeric };
}

function readConeIndex(input: ConeIndex | undefined, path: string): number {
  const unit = readChoice(input, ['kPa', 'psi'], path);
  const value = (input as { readonly [unit: string]: unknown })[unit];
  const remedy = 'Saturated mud, near 0, and pavement are no soil for D497.';
  const read = readAboveZero(value, `${path}.${unit}`, unit === 'kPa' ? 10_000 : 1500, remedy);
  // 1 psi = 1 lbf / (1 in)², exact factors
  return unit === 'kPa' ? read : (read * 4.4482216152605) / 0.64516;
}

/** Reads the size of a tire; errors name the field after `path`. */
export function readTire(tire: Tire, path: string, working: Working): ReadTire {
  checkObject(tire, path, 'a tire { sectionWidth, diameter }');
  const width = inUnit(readPositive(tire.sectionWidth, 'length', `${path}.sectionWidth`), 'm').value;
  const diameter = inUnit(readPositive(tire.diameter, 'length', `${path}.diameter`), 'm').value;
  const remedy = 'How far it gives over its section height: about 0.2.';
  if (tire.deflectionRatio === undefined) working.assumptions.push(USUAL_DEFLECTION);
  const deflectionRatio =
    tire.deflectionRatio === undefined
      ? d497TractiveConstants.rows.bias.usual_deflection_ratio
      : readNumber(tire.deflectionRatio, `${path}.deflectionRatio`, 0, 0.5, remedy);
  return { width, diameter, deflectionRatio };
}

/** Bn of a tire under a load in newtons; without a tire, of the soil class. */
export function wheelNumeric(soil: ReadSoil, tire: ReadTire | undefined, newtons: number): number {
  if (tire === undefined) {
    const missing = 'the size of the tires, for a cone index';
    return soil.wheelNumeric ?? fail('MISSING_FIELD', 'tire', missing, undefined, 'Give it, or a soil class.');
  }
  const { deflection_factor, width_factor } = d497TractiveConstants.rows[soil.construction];
  const { width: b, diameter: d, deflectionRatio } = tire;
  const mobility = (soil.coneIndex * b * d) / (newtons / 1000);
  return (mobility * (1 + deflection_factor * deflectionRatio)) / (1 + (width_factor * b) / d);
}

/** The equations of D497; an undriven wheel has the motion resistance of no slip. */
export function tractionRatios({ construction, slip }: ReadSoil, numeric: number): TractionRatios {
  const k = d497TractiveConstants.rows[construction];
  const byNumeric = 1 - Math.exp(-k.gross_numeric_rate * numeric);
  const bySlip = 1 - Math.exp(-k.gross_slip_rate * slip);
  const grossTractionRatio = k.gross_most * byNumeric * bySlip + k.gross_offset;
  const motionResistanceRatio =
    k.motion_numeric / numeric + k.motion_offset + (k.motion_slip * slip) / Math.sqrt(numeric);
  return {
    wheelNumeric: numeric,
    grossTractionRatio,
    motionResistanceRatio,
    netTractionRatio: grossTractionRatio - motionResistanceRatio,
  };
}

const USUAL_DEFLECTION: Note = /* @__PURE__ */ note('USUAL_DEFLECTION');
