import { mapAt } from '../../errors.js';
import { checkFlag, checkIds, checkList, checkObject, checkOneOf } from '../../input-checks.js';
import { compareExact } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import { readOptional } from '../../quantities/read.js';
import type { MassUnit } from '../../quantities/units.js';
import type { Vehicle, VehicleUnit } from '../plan.js';

/** What a vehicle or combination weighs, or may weigh by its ratings. */
export interface GrossMass {
  /** Of each unit, in the order of the vehicle, the greater of rating and weight; undefined where neither is stated. */
  readonly units: readonly (QuantityLike<MassUnit> | undefined)[];
  /** The combination rating on the label of the power unit. */
  readonly label: QuantityLike<MassUnit> | undefined;
}

/** Reads the masses of a vehicle; every field of it that a rule may look at is checked here, once. */
export function readGrossMass(vehicle: Vehicle): GrossMass {
  checkObject(vehicle, 'vehicle', '{ units }');
  const { units, interstateCommerce, combinationRatingOnLabel } = vehicle;
  checkList(units, 'vehicle.units');
  checkIds(units, 'vehicle.units');
  checkFlag(interstateCommerce, 'vehicle.interstateCommerce');
  return {
    units: mapAt(units, 'vehicle.units', heaviest),
    label: readOptional(combinationRatingOnLabel, 'mass', 'vehicle.combinationRatingOnLabel'),
  };
}

function heaviest(unit: VehicleUnit): QuantityLike<MassUnit> | undefined {
  checkOneOf(unit.kind, ['power', 'towed'], 'kind');
  const rating = readOptional(unit.grossWeightRating, 'mass', 'grossWeightRating');
  const weight = readOptional(unit.grossWeight, 'mass', 'grossWeight');
  if (rating === undefined || weight === undefined) return rating ?? weight;
  return compareExact(rating, weight) >= 0 ? rating : weight;
}
