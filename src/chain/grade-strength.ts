import { fail } from '../errors.js';
import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityInput } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import type { ChainGrade, EuropeanChainClass } from './trade-size.js';

export interface BreakingForceOfGrade extends ResultBase<'breakingForceOfGrade'> {
  /** A figure of the manufacturing test. Never a limit for use. */
  readonly breakingForce: Quantity<'lbf' | 'kN'>;
  /** Over both bar sections of a link, in N/mm². */
  readonly meanStress: number;
}

/**
 * The force that a grade stands for: what a new link of round wire must reach before it breaks.
 *
 * MBF = 2 · (π/4) · d² · σ, or in kN with d in mm: 0.005 · π · G · d², where G is the grade number and the mean
 * stress σ over both bar sections is 10 · G N/mm² (100 times the number of a European class).
 *
 * It is a manufacturing test, no criterion for service or design. For grades 30 to 70 it does not lead to a working
 * load limit either: the published limits fit thicker wire than the trade quotes. Look limits up with {@link chainRating}.
 *
 * @param input.grade 30, 43, 70, 80 or 100, or a European class `'4'`, `'5'`, `'8'`
 * @param input.wireDiameter d of the round wire, above zero; not the trade size
 * @param input.units `'us'` (lbf) or `'si'` (kN); omitted: the system of the wire diameter
 * @throws RiggingError `UNKNOWN_GRADE`, `NO_VALUE_IN_TABLE` (grade 120, whose link is often not round), `NOT_POSITIVE`,
 * `WRONG_KIND`
 * @validity new chain of round wire
 * @source ASTM A413/A413M, A391/A391M and A973/A973M, 2021, section 1
 * @example
 * breakingForceOfGrade({ grade: 80, wireDiameter: '10 mm' }).breakingForce.value.toFixed(1)
 * // => '125.7'
 */
export function breakingForceOfGrade(input: {
  readonly grade: Exclude<ChainGrade, 120> | EuropeanChainClass;
  readonly wireDiameter: QuantityInput<'length'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): BreakingForceOfGrade {
  const number = gradeNumber(input?.grade);
  const working = new Working(input.working !== false);
  const wire = readPositive(input.wireDiameter, 'length', 'wireDiameter');
  const unit = sharedUnits(input.units, [wire]) === 'us' ? 'lbf' : 'kN';
  const d = inUnit(wire, 'mm').value;
  const kilonewtons = 0.005 * Math.PI * number * d * d;
  const breakingForce = inUnit({ value: kilonewtons, unit: 'kN' }, unit);
  working.step(
    `grade ${input.grade}`,
    'MBF',
    '0.005 · π · G · d², in kN with d in mm',
    { G: number, d: { value: d, unit: 'mm' } },
    breakingForce,
    'ASTM A413/A413M-21 section 1',
  );
  working.cite({
    document: 'ASTM A413/A413M, A391/A391M and A973/A973M',
    edition: '2021',
    clause: 'section 1',
    provenance: 'read',
    note: 'read in a page quoting it; European classes: EN 818-3, Annex A',
  });
  working.cautions.push(MANUFACTURING_TEST, ROUND_WIRE_ONLY);
  return makeResult('breakingForceOfGrade', { breakingForce, meanStress: number * 10 }, input, working);
}

const MANUFACTURING_TEST: Note = /* @__PURE__ */ note('MANUFACTURING_TEST');
const ROUND_WIRE_ONLY: Note = /* @__PURE__ */ note('ROUND_WIRE_ONLY');

function gradeNumber(grade: unknown): number {
  switch (grade) {
    case 30:
    case 43:
    case 70:
    case 80:
    case 100:
      return grade;
    case '4':
    case '5':
    case '8':
      return Number(grade) * 10;
    case 120:
      return fail(
        'NO_VALUE_IN_TABLE',
        'grade',
        'a grade of round wire',
        grade,
        "The link of grade 120 is often not round, so a caliper does not give its section: take the maker's figure.",
      );
    default:
      return fail(
        'UNKNOWN_GRADE',
        'grade',
        "30, 43, 70, 80, 100, or a European class '4', '5', '8'",
        grade,
        'US grades are numbers, European classes text.',
      );
  }
}
