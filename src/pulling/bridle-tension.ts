import { fail, within } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit, valueIn } from '../quantities/convert.js';
import type { Quantity, QuantityInput } from '../quantities/quantity.js';
import { readOptional, readPositive, readQuantity } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { STAND_CLEAR } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';

/** Between two equal legs, or of each leg from the line of the pull. */
export type BridleAngles =
  | { readonly included: QuantityInput<'angle'> }
  | { readonly fromPullLine: readonly [QuantityInput<'angle'>, QuantityInput<'angle'>] };

export interface BridleTension extends ResultBase<'bridleTension'> {
  /** Of each leg, in the order of the angles. */
  readonly legs: readonly [Quantity<'lbf' | 'kN'>, Quantity<'lbf' | 'kN'>];
  /** Tension of the leg that carries most over the pull. */
  readonly greatestShare: number;
  /** With `spread` and equal legs: the length of a leg. */
  readonly legLength?: Quantity<'ft' | 'm'>;
}

/**
 * What each leg of a two-legged bridle carries.
 *
 * T_a = P · sin b / sin(a + b), with a and b from the line of the pull; equal legs with θ between them carry
 * P / (2 · cos(θ / 2)), and reach a spread S with a length of S / (2 · sin(θ / 2)).
 *
 * @param input.pull on the point where the legs meet
 * @param input.angles `{ included }` between the legs, or `{ fromPullLine: [a, b] }` on either side of the pull
 * @param input.spread between the two points that equal legs hold
 * @param input.units `'us'` (lbf, ft) or `'si'` (kN, m); omitted: the system that pull and spread share
 * @throws RiggingError `TOO_LARGE` (more than 120 deg between the legs), `IMPOSSIBLE_GEOMETRY` (legs in one line with the
 * pull, a spread without an angle), `CONFLICTING_FIELDS`, `MISSING_FIELD`, `NEGATIVE`, `NOT_POSITIVE`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity two legs that meet in one point and are free to settle; of three or more on a rigid load count two
 * @source balance of forces, derived
 * @example
 * bridleTension({ pull: '1000 lbf', angles: { included: '60 deg' } }).legs[0].value.toFixed(0)
 * // => '577'
 */
export function bridleTension(input: {
  readonly pull: QuantityInput<'force'>;
  readonly angles: BridleAngles;
  readonly spread?: QuantityInput<'length'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): BridleTension {
  checkObject(input, '', '{ pull, angles }');
  const working = new Working(input.working !== false);
  const pull = readPositive(input.pull, 'force', 'pull');
  const spread = readOptional(input.spread, 'length', 'spread');
  const { a, b, equal } = within('angles', () => readAngles(input.angles));
  const units = sharedUnits(input.units, [pull, spread]);
  const P = inUnit(pull, units === 'us' ? 'lbf' : 'kN');
  // equal legs by their own formula, which holds for parallel ones too
  const shares = equal
    ? [1 / (2 * Math.cos(a)), 1 / (2 * Math.cos(a))]
    : [Math.sin(b) / Math.sin(a + b), Math.sin(a) / Math.sin(a + b)];
  const legs = shares.map((share) => inUnit({ value: P.value * share, unit: P.unit }, P.unit));
  const [first, second] = legs as [(typeof legs)[0], (typeof legs)[0]];
  const degrees = (radians: number) => ({ value: (radians * 180) / Math.PI, unit: 'deg' }) as const;
  if (equal) working.step('legs', 'T', 'P / (2 · cos(θ / 2))', { P, θ: degrees(2 * a) }, first);
  else {
    const values = { P, a: degrees(a), b: degrees(b) };
    working.step('first leg', 'T_a', 'P · sin b / sin(a + b)', values, first);
    working.step('second leg', 'T_b', 'P · sin a / sin(a + b)', values, second);
  }
  const legLength = spread && readLegLength(spread, a, equal, units);
  if (legLength) working.step('legs', 'length', 'S / (2 · sin(θ / 2))', { S: spread, θ: degrees(2 * a) }, legLength);
  working.cite(BALANCE);
  if (a + b > Math.PI / 3 + 1e-12) working.cautions.push(WIDE_BRIDLE);
  working.cautions.push(COUNT_TWO_LEGS, STAND_CLEAR);
  const answer = {
    legs: [first, second] as const,
    greatestShare: Math.max(...shares),
    ...(legLength && { legLength }),
  };
  return makeResult('bridleTension', answer, input, working);
}

/** Reads the angles in radians; errors name their own fields. */
export function readAngles(angles: BridleAngles): { readonly a: number; readonly b: number; readonly equal: boolean } {
  checkObject(angles, '', '{ included } or { fromPullLine: [a, b] }');
  const { included, fromPullLine } = angles as { readonly [name: string]: unknown };
  if (included !== undefined && fromPullLine !== undefined) {
    fail('CONFLICTING_FIELDS', '', 'included or fromPullLine', 'both', 'Give one of them.');
  }
  if (fromPullLine === undefined) {
    const theta = readWide(included, 'included');
    refuseWide(theta, 'included');
    return { a: theta / 2, b: theta / 2, equal: true };
  }
  if (!Array.isArray(fromPullLine) || fromPullLine.length !== 2) {
    fail('MISSING_FIELD', 'fromPullLine', 'two angles [a, b]', fromPullLine, 'Give one for each leg.');
  }
  const [a, b] = (fromPullLine as unknown[]).map((angle, index) => readWide(angle, `fromPullLine[${index}]`)) as [
    number,
    number,
  ];
  refuseWide(a + b, 'fromPullLine');
  if (!(a + b > 0))
    fail('IMPOSSIBLE_GEOMETRY', 'fromPullLine', 'legs apart', '0 deg', "Parallel legs: { included: '0 deg' }.");
  return { a, b, equal: a === b };
}

function readWide(input: unknown, path: string): number {
  const angle = readQuantity(input, 'angle', path);
  if (angle.value < 0) fail('NEGATIVE', path, 'an angle of zero or more', `${angle}`, 'Give it without a sign.');
  return valueIn(angle, 'rad');
}

/** A double may come out a hair above two thirds of π for 120 deg. */
function refuseWide(theta: number, path: string): void {
  if (theta <= (2 * Math.PI) / 3 + 1e-12) return;
  const between = `${((theta * 180) / Math.PI).toPrecision(6)} deg between them`;
  fail(
    'TOO_LARGE',
    path,
    'legs up to 120 deg apart',
    between,
    'Beyond, each leg carries more than the pull: lengthen the legs.',
  );
}

function readLegLength(spread: Quantity, half: number, equal: boolean, units: UnitSystem): Quantity<'ft' | 'm'> {
  if (!equal || half === 0) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'spread',
      'equal legs, apart',
      `${spread}`,
      'Leave it out, or give the included angle.',
    );
  }
  const meters = inUnit(spread, 'm').value / (2 * Math.sin(half));
  return inUnit({ value: meters, unit: 'm' }, units === 'us' ? 'ft' : 'm');
}

const BALANCE: SourceRef = { document: 'Balance of forces where two legs meet', provenance: 'derived' };

const WIDE_BRIDLE: Note = /* @__PURE__ */ note('WIDE_BRIDLE');
const COUNT_TWO_LEGS: Note = /* @__PURE__ */ note('COUNT_TWO_LEGS');
