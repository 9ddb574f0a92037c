import { mapAt } from '../../errors.js';
import { checkFlag, checkIds, checkList, checkObject, checkOneOf } from '../../input-checks.js';
import { compareExact, type ExactTerm } from '../../quantities/exact.js';
import { Quantity, type QuantityLike } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { readOptional } from '../../quantities/read.js';
import type { MassUnit } from '../../quantities/units.js';
import type { Vehicle, VehicleUnit } from '../plan.js';

/** What a vehicle or combination weighs, or may weigh by its ratings. */
export interface GrossMass {
  /** Of each unit by its id, the greater of rating and weight; null where neither is stated. */
  readonly units: readonly (readonly [id: string, mass: QuantityLike<MassUnit> | null])[];
  /** Those that are stated, as an exact sum. */
  readonly known: readonly ExactTerm[];
  /** What that sum comes to. */
  readonly total: Quantity<'lb' | 'kg'>;
  /** The combination rating on the label of the power unit. */
  readonly label: QuantityLike<MassUnit> | undefined;
}

/** Reads the masses of a vehicle; every field of it that a rule may look at is checked here, once. */
export function readGrossMass(vehicle: Vehicle, unit: 'lb' | 'kg'): GrossMass {
  checkObject(vehicle, 'vehicle', '{ units }');
  const { units, interstateCommerce, combinationRatingOnLabel } = vehicle;
  checkList(units, 'vehicle.units');
  checkIds(units, 'vehicle.units');
  checkFlag(interstateCommerce, 'vehicle.interstateCommerce');
  const read = mapAt(units, 'vehicle.units', heaviest);
  const label = readOptional(combinationRatingOnLabel, 'mass', 'vehicle.combinationRatingOnLabel');
  const known = read.flatMap(([, quantity]) => (quantity === null ? [] : [{ quantity }]));
  const total = known.reduce((sum, { quantity }) => sum + ratedLoadIn(quantity, unit).value, 0);
  return { units: read, known, total: new Quantity(total, unit), label };
}

function heaviest(unit: VehicleUnit): GrossMass['units'][number] {
  checkOneOf(unit.kind, ['power', 'towed'], 'kind');
  const rating = readOptional(unit.grossWeightRating, 'mass', 'grossWeightRating');
  const weight = readOptional(unit.grossWeight, 'mass', 'grossWeight');
  if (rating === undefined || weight === undefined) return [unit.id, rating ?? weight ?? null];
  return [unit.id, compareExact(rating, weight) >= 0 ? rating : weight];
}
