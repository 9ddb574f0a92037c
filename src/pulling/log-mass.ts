import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { massUnitOf, sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { readChoice, readNumber } from './plain-input.js';

/** Green wood by its basic specific gravity and its moisture, a fraction of the mass of the dry wood. */
export interface GreenWood {
  readonly basicSpecificGravity: number;
  readonly moisture: number;
}

export interface LogMassInput {
  readonly length: QuantityInput<'length'>;
  /** At half its length, or at both ends. */
  readonly diameter:
    | { readonly middle: QuantityInput<'length'> }
    | { readonly ends: readonly [QuantityInput<'length'>, QuantityInput<'length'>] };
  /** Of the green wood, or what it is computed from. */
  readonly density: QuantityInput<'density'> | GreenWood;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

export interface LogMass extends ResultBase<'logMass'> {
  readonly mass: Quantity<'lb' | 'kg'>;
}

/**
 * What a log weighs, for {@link pullResistance}.
 *
 * m = ρ · V. From the middle diameter (Huber) V = π/4 · d² · L; from both ends (Smalian) V = (A₁ + A₂)/2 · L, which reads
 * too much for a log that tapers. Green wood: ρ = 62.4 lb/ft³ · G · (1 + MC).
 *
 * @param input.length L, above zero
 * @param input.diameter `{ middle }` or `{ ends: [one, other] }`, over the bark where it is on
 * @param input.density of the green wood, or `{ basicSpecificGravity, moisture }`: G of oven-dry mass over green volume,
 * MC a fraction of the oven-dry mass, so 0.8, not 80, and above 1 in some wet woods
 * @param input.units `'us'` or `'si'`; omitted: the system that all inputs share
 * @throws RiggingError `NOT_POSITIVE`, `NEGATIVE`, `TOO_LARGE`, `NOT_FINITE`, `MISSING_FIELD`, `CONFLICTING_FIELDS`,
 * `NOT_A_QUANTITY`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity a sound, round log without limbs or mud; no table of densities of species is in the library
 * @source volumes of Huber and Smalian: geometry, derived; density of green wood: wood handbook, from memory
 * @example
 * logMass({ length: '16 ft', diameter: { middle: '16 in' }, density: '63 lb/ft3' }).mass.value.toFixed(0)
 * // => '1407'
 */
export function logMass(input: LogMassInput): LogMass {
  checkObject(input, '', '{ length, diameter, density }');
  const working = new Working(input.working !== false);
  const length = readPositive(input.length, 'length', 'length');
  const diameters = readDiameters(input.diameter);
  const density = readDensity(input.density, working);
  const stated = isGreenWood(input.density) ? undefined : density;
  const unit = massUnitOf(sharedUnits(input.units, [length, ...diameters, stated]));
  const areas = diameters.map((diameter) => (Math.PI / 4) * inUnit(diameter, 'm').value ** 2);
  const section = areas.reduce((sum, area) => sum + area) / areas.length;
  const kilograms = section * inUnit(length, 'm').value * inUnit(density, 'kg/m3').value;
  const mass = inUnit({ value: kilograms, unit: 'kg' }, unit);
  const [expression, names] =
    areas.length === 1 ? ['ρ · π/4 · d² · L', ['d']] : ['ρ · π/8 · (d₁² + d₂²) · L', ['d₁', 'd₂']];
  const values = diameters.map((diameter, at) => [names[at] as string, diameter] as const);
  working.step('log', 'm', expression, [['ρ', density], ...values, ['L', length]], mass);
  working.cite(LOG_VOLUME);
  working.cautions.push(BARK_LIMBS_MUD);
  return makeResult('logMass', { mass }, input, working);
}

function readDiameters(input: LogMassInput['diameter']): readonly QuantityLike[] {
  const choice = readChoice(input, ['middle', 'ends'], 'diameter');
  const { middle, ends } = input as { readonly middle: unknown; readonly ends: readonly unknown[] };
  if (choice === 'middle') return [readPositive(middle, 'length', 'diameter.middle')];
  const [one, other] = Array.isArray(ends) ? ends : [];
  return [readPositive(one, 'length', 'diameter.ends[0]'), readPositive(other, 'length', 'diameter.ends[1]')];
}

const isGreenWood = (density: unknown): density is GreenWood =>
  typeof density === 'object' && density !== null && 'basicSpecificGravity' in density;

/** Pounds of water in a cubic foot, as the formula of the handbook rounds it. */
const WATER = 62.4;

function readDensity(input: LogMassInput['density'], working: Working): QuantityLike {
  if (!isGreenWood(input)) return readPositive(input, 'density', 'density');
  const G = readNumber(input.basicSpecificGravity, 'density.basicSpecificGravity', 0.05, 1.4, 'Such as 0.56.');
  const MC = readNumber(input.moisture, 'density.moisture', 0, 4, 'A fraction of the dry mass: 0.8, not 80.');
  const density = { value: WATER * G * (1 + MC), unit: 'lb/ft3' } as const;
  working.step('log', 'ρ', `${WATER} · G · (1 + MC), in lb/ft³`, { G, MC }, density);
  working.cite(GREEN_WOOD);
  return density;
}

const LOG_VOLUME: SourceRef = { document: 'Volumes of logs by Huber and Smalian', provenance: 'derived' };
const GREEN_WOOD: SourceRef = { document: 'USDA Wood Handbook, density of green wood', provenance: 'memory' };

const BARK_LIMBS_MUD: Note = /* @__PURE__ */ note('BARK_LIMBS_MUD');
