import { fail } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { decimalProduct } from '../quantities/decimal.js';
import type { Quantity, QuantityInput } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import type { DeviceOf, DeviceUse, FractionTable } from '../tables/fraction-table.js';
import { rowOf } from '../tables/rating-table.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';

export interface MaximumSecuringLoad extends ResultBase<'maximumSecuringLoad'> {
  /** For `capacities.maximumSecuringLoad` of a part or tie-down. */
  readonly maximumSecuringLoad: Quantity<'lbf' | 'kN'>;
  /** Its share of the breaking strength. */
  readonly fraction: number;
  readonly ratings: string;
}

/**
 * The maximum securing load of a device without a marked one, from its breaking strength: MSL = fraction · MBF.
 *
 * It is what the codes of the sea offer in place of a mark. No rule set does this by itself, and a capacity of another
 * system (working load limit, lashing capacity, rated strength) is no breaking strength.
 *
 * @param input.ratings a table of shares: {@link imoCtuMslFractions_2014} or {@link imoCssMslFractions_2014}
 * @param input.device what it is, as the table lists it, such as `'chain'` or `'wire-rope'`
 * @param input.use `'single-use'` or `'reusable'`; may be left out only where the table makes no difference
 * @param input.breakingForce its breaking strength as certified, above zero
 * @param input.units `'us'` (lbf) or `'si'` (kN); omitted: the system of the breaking force
 * @throws RiggingError `NO_VALUE_IN_TABLE` for a device or use that the table does not list, `MISSING_FIELD` where the
 * use must be known, `UNKNOWN_VALUE`, `NOT_POSITIVE`, `WRONG_KIND`
 * @validity one sound device by itself; of several in series the least counts
 * @source CTU Code 2014, Annex 7, 2.4; CSS Code, Annex 13 before December 2020, section 4, Table 1
 * @example
 * maximumSecuringLoad({ ratings: imoCtuMslFractions_2014, device: 'chain', breakingForce: '80 kN' }).maximumSecuringLoad
 * // => 40 kN
 */
export function maximumSecuringLoad<Table extends FractionTable>(input: {
  readonly ratings: Table;
  readonly device: DeviceOf<NoInfer<Table>>;
  readonly use?: DeviceUse;
  readonly breakingForce: QuantityInput<'force'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): MaximumSecuringLoad {
  checkObject(input, '', '{ ratings, device, breakingForce }');
  const { ratings, device, use } = input;
  checkObject(ratings?.fractions, 'ratings', 'a table of shares, such as imoCtuMslFractions_2014');
  const fraction = fractionOf(ratings, device, use);
  const breaking = readPositive(input.breakingForce, 'force', 'breakingForce');
  const working = new Working(input.working !== false);
  const unit = sharedUnits(input.units, [breaking]) === 'us' ? 'lbf' : 'kN';
  const load = inUnit({ value: decimalProduct(breaking.value, fraction), unit: breaking.unit }, unit);
  const { source } = ratings.fractions;
  working.step(device, 'MSL', 'fraction · MBF', { fraction, MBF: breaking }, load, source.clause ?? ratings.title);
  working.cite(source);
  working.cautions.push(LEAST_OF_SERIES, FOLLOW_THE_MARK);
  return makeResult(
    'maximumSecuringLoad',
    { maximumSecuringLoad: load, fraction, ratings: ratings.id },
    input,
    working,
  );
}

function fractionOf({ id, fractions: { rows } }: FractionTable, device: string, use: DeviceUse | undefined): number {
  if (use !== undefined) checkOneOf(use, ['single-use', 'reusable'], 'use');
  const shares = rowOf(rows, device);
  if (shares === undefined) {
    return fail(
      'NO_VALUE_IN_TABLE',
      'device',
      `a device of ${id}: ${Object.keys(rows).join(', ')}`,
      device,
      'Nothing stands for another device: state the marked maximum securing load.',
    );
  }
  const uses = Object.keys(shares).join(', ');
  if (shares.any !== undefined) return shares.any.fraction;
  if (use === undefined) fail('MISSING_FIELD', 'use', uses, use, 'Say whether it is used once or again.');
  return (
    shares[use]?.fraction ??
    fail('NO_VALUE_IN_TABLE', 'use', `a use that ${id} lists for ${device}: ${uses}`, use, 'State the marked load.')
  );
}

const LEAST_OF_SERIES: Note = /* @__PURE__ */ note('LEAST_OF_SERIES');
