import { fail } from '../errors.js';
import { checkList, checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { Quantity, type QuantityInput } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { massUnitOf, sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { ukHseTeamFactors } from '../tables/generated/uk-hse-team-factors.js';
import { rowOf } from '../tables/rating-table.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';

export interface TeamLimit extends ResultBase<'teamLimit'> {
  /** What the team may lift together. */
  readonly limit: Quantity<'lb' | 'kg'>;
  /** What its members may lift alone, added up: more than the team may. */
  readonly sumAlone: Quantity<'lb' | 'kg'>;
}

/**
 * What two or three people may lift together, from what each of them may lift alone: two thirds or half of the SUM.
 *
 * Two: 2/3 · (m1 + m2); three: 1/2 · (m1 + m2 + m3). Two people with 20 kg each lift about 26.7 kg, not 40.
 *
 * @param input.alone what each may lift alone, two or three masses; the limit of {@link checkCarry} is of another
 * document than this rule
 * @param input.units `'us'` (lb) or `'si'` (kg); omitted: the system that all inputs share
 * @throws RiggingError `EMPTY_LIST` (fewer than two), `NO_VALUE_IN_TABLE` (more than three), `UNITS_REQUIRED`, `NOT_POSITIVE`,
 * `WRONG_KIND`, `MISSING_FIELD`
 * @validity all can take hold of the load and see where they go; no stairs, no soft ground
 * @source Guidance on manual handling, Health and Safety Executive, read in a page quoting it
 * @example
 * teamLimit({ alone: ['20 kg', '20 kg'] }).limit.value.toFixed(1)
 * // => '26.7'
 */
export function teamLimit(input: {
  readonly alone: readonly QuantityInput<'mass'>[];
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): TeamLimit {
  checkObject(input, '', '{ alone: two or three masses }');
  checkList(input.alone, 'alone', 2);
  const people = input.alone.length;
  const share =
    rowOf(ukHseTeamFactors.rows, people) ??
    fail('NO_VALUE_IN_TABLE', 'alone', 'two or three people', people, 'Use a machine or split the load.');
  const working = new Working(input.working !== false);
  const alone = Array.from(input.alone, (mass, index) => readPositive(mass, 'mass', `alone[${index}]`));
  const unit = massUnitOf(sharedUnits(input.units, alone));
  const sumAlone: Quantity<'lb' | 'kg'> = new Quantity(
    alone.reduce((sum, mass) => sum + inUnit(mass, unit).value, 0),
    unit,
  );
  const limit: Quantity<'lb' | 'kg'> = new Quantity((sumAlone.value * share.numerator) / share.denominator, unit);
  const fraction = `${share.numerator}/${share.denominator}`;
  working.step('team', 'limit', `${fraction} · sum`, { people, sum: sumAlone }, limit);
  working.cite(ukHseTeamFactors.source);
  working.cautions.push(TEAM_OF_EQUAL_GRIP);
  return makeResult('teamLimit', { limit, sumAlone }, input, working);
}

const TEAM_OF_EQUAL_GRIP: Note = /* @__PURE__ */ note('TEAM_OF_EQUAL_GRIP');
