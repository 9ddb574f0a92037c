import { fail } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { Quantity, type QuantityInput } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { armyRecoveryResistance } from '../tables/generated/army-recovery-resistance.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { readNumber } from './plain-input.js';
import { type LogLoad, log } from './resistance/log.js';
import { gradeOf, type Pulled, type Resistance } from './resistance/pulled.js';
import { type MiredLoad, mired, type RecoveredLoad, recovered } from './resistance/recovery.js';
import { type RollingResistance, readRolling } from './resistance/rolling.js';
import { type SoftGroundLoad, softGround } from './resistance/soft-ground.js';
import { readSlope } from './tractor/tractor.js';

/** A load on its wheels. */
export interface RollingLoad {
  readonly kind: 'rolling';
  readonly rolling: RollingResistance;
}

/** A block and tackle between load and tractor. */
export interface Tackle {
  /** Sheaves of all its blocks. */
  readonly sheaves: number;
  /** Parts of line that pull on the load, for one at the tractor. */
  readonly mechanicalAdvantage: number;
}

export type PullResistanceInput = (RollingLoad | MiredLoad | RecoveredLoad | SoftGroundLoad | LogLoad) & {
  /** With cargo, mud and whatever is stuck to it. */
  readonly mass: QuantityInput<'mass'>;
  /** Of the way it is pulled, uphill positive; left out, level. Not for a machine overturned or in a ditch. */
  readonly slope?: QuantityInput<'angle'>;
  readonly tackle?: Tackle;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
};

type Force = Quantity<'lbf' | 'kN'>;

export interface PullResistance extends ResultBase<'pullResistance'> {
  /** `overruns`: it runs down the slope by itself, which a chain cannot hold back. */
  readonly outcome: 'resists' | 'overruns';
  /** The pull to count on, at the load: the high end where the sources give a range; null where it overruns. */
  readonly pull: Force | null;
  /** The pull at the low end of that range; only where there is one. */
  readonly leastPull?: Force | null;
  /** How hard it pushes down the slope at worst; only where it may overrun. */
  readonly push?: Force;
  /** What one held-up end of a log puts on the hitch, across the slope. */
  readonly onHitch?: Force;
  /** The force on the line at the tractor; only with a tackle. */
  readonly fallLine?: Force | null;
}

const KINDS = ['rolling', 'mired', 'overturned', 'nosed-in-ditch', 'soft-ground', 'log'] as const;

/**
 * The pull that a load takes to move, by what holds it.
 *
 * - `rolling`: f · W · cos α + W · sin α
 * - `mired`: multiple · W · (1 − reductions) + W · sin α; the multiple is 1, 2, 3 for mud to the wheels, fenders, cab and
 *   holds rolling and suction. A pull opposite to the way in takes off 10 percent, driven tracks 40, both 50
 * - `overturned`: W/2 to right it; `nosed-in-ditch`: W
 * - `soft-ground`: fraction · W + W · sin α, while it still rolls
 * - `log`: W · (μ · cos α + sin α) / (cos β + μ · sin β); with one end up μ · W/2 · cos α + W · sin α
 *
 * A tackle of n sheaves adds 10 percent of the resistance for each, then divides: (R + 0.1 · n · R) / MA.
 *
 * @param input what holds the load, its `kind` saying which other fields there are, and what it weighs:
 *   - `kind`: what holds the load; it says which other fields there are
 *   - `mass`: of the load with everything on it, above zero
 *   - `slope`: uphill positive, `deg`, `rad` or `percent-grade`, which is no angle in degrees: 60 percent is 31
 *     degrees; omitted: level
 *   - `rolling`: `{ surface }` of the table, `{ penetration }` of the tires or `{ coefficient }`
 *   - `depth`: `'wheel'`, `'fender'` or `'cab'`
 *   - `lift`: `'none'` or `'one-end'`
 *   - `friction`: `{ condition }` of the table or `{ coefficient }` over the weight on the ground
 *   - `chainAngle`: β, of a chain that rises from a whole log toward the hitch
 *   - `tackle`: `{ sheaves, mechanicalAdvantage }`
 *   - `units`: `'us'` (lbf) or `'si'` (kN); omitted: the system that all inputs share
 * @throws RiggingError `UNKNOWN_VALUE`, `MISSING_FIELD`, `NO_VALUE_IN_TABLE`, `NOT_POSITIVE`, `NEGATIVE`, `TOO_LARGE`,
 * `NOT_FINITE`, `NOT_A_WHOLE_NUMBER`, `CONFLICTING_FIELDS` (driven wheels counted as tracks; a coefficient of another
 * way of dragging), `IMPOSSIBLE_GEOMETRY` (a slope of 90 degrees; a chain that lifts the log), `UNITS_REQUIRED`,
 * `WRONG_KIND`
 * @validity a slow, steady pull. A snatch, a stump or a wheel behind a rock takes more; suction is in the multiple alone
 * @source US Army vehicle recovery doctrine, from memory; rolling resistance of earthmoving texts and FM 5-434, from
 * memory, and of a worksheet that was read; skidding coefficients, from memory; slopes and logs: derived
 * @example
 * pullResistance({ kind: 'mired', depth: 'fender', mass: '3300 lb' }).pull
 * // => 6600 lbf
 */
export function pullResistance(input: PullResistanceInput): PullResistance {
  checkObject(input, '', '{ kind, mass }');
  checkOneOf(input.kind, KINDS, 'kind');
  const working = new Working(input.working !== false);
  const mass = readPositive(input.mass, 'mass', 'mass');
  const onSlope = input.kind !== 'overturned' && input.kind !== 'nosed-in-ditch';
  if (!onSlope && input.slope !== undefined) {
    fail('CONFLICTING_FIELDS', 'slope', 'no slope for this kind', 'both', 'Its multiple holds what the ground does.');
  }
  const slope = onSlope ? readSlope(input.slope, working) : 0;
  const rolling = input.kind === 'rolling' ? readRolling(input.rolling, 'rolling', working) : undefined;
  const unit = sharedUnits(input.units, [mass, rolling?.given]) === 'us' ? 'lbf' : 'kN';
  const force = (value: number): Force => new Quantity(value, unit);
  const pulled: Pulled = { weight: ratedLoadIn(mass, unit).value, slope, force, working };
  working.step('load', 'W', 'm · g', { m: mass }, force(pulled.weight));
  const { low, high, onHitch } = resistanceOf(input, pulled, rolling);

  if (low < 0) working.cautions.push(OVERRUNS);
  const fallLine = input.tackle === undefined ? undefined : fallLineOf(input.tackle, high, pulled);
  const pullAt = (value: number): Force | null => (value < 0 ? null : force(value));
  return makeResult(
    'pullResistance',
    {
      outcome: high < 0 ? ('overruns' as const) : ('resists' as const),
      pull: pullAt(high),
      ...(low !== high && { leastPull: pullAt(low) }),
      ...(low < 0 && { push: force(-low) }),
      ...(onHitch !== undefined && { onHitch: force(onHitch) }),
      ...(fallLine !== undefined && { fallLine: pullAt(fallLine) }),
    },
    input,
    working,
  );
}

type RollingRange = ReturnType<typeof readRolling> | undefined;

function resistanceOf(input: PullResistanceInput, pulled: Pulled, rolling: RollingRange): Resistance {
  switch (input.kind) {
    case 'mired':
      return mired(input, pulled);
    case 'soft-ground':
      return softGround(input, pulled);
    case 'log':
      return log(input, pulled);
    case 'rolling':
      return rolls(rolling as ReturnType<typeof readRolling>, pulled);
    default:
      return recovered(input, pulled);
  }
}

function rolls(range: ReturnType<typeof readRolling>, pulled: Pulled): Resistance {
  const { weight, slope, force, working } = pulled;
  const grade = gradeOf(pulled);
  working.cite(STATICS_ON_A_SLOPE);
  const totalAt = (f: number): number => {
    const total = f * weight * Math.cos(slope) + grade;
    const values = { f, W: force(weight), α: { value: slope, unit: 'rad' }, 'R grade': force(grade) } as const;
    working.step('load', 'R', 'f · W · cos α + R grade', values, force(total));
    return total;
  };
  const low = totalAt(range.low);
  return { low, high: range.high === range.low ? low : totalAt(range.high) };
}

/** The friction of a tackle is counted on the resistance of the load, not on the line that comes off it. */
function fallLineOf(tackle: Tackle, resistance: number, { force, working }: Pulled): number {
  checkObject(tackle, 'tackle', '{ sheaves, mechanicalAdvantage }');
  const { sheaves, mechanicalAdvantage } = tackle;
  if (!Number.isInteger(sheaves) || sheaves < 1 || sheaves > MOST_SHEAVES) {
    const expected = `a whole number from 1 to ${MOST_SHEAVES}`;
    fail('NOT_A_WHOLE_NUMBER', 'tackle.sheaves', expected, sheaves, 'Count the sheaves.');
  }
  // a sheave doubles the pull at most, where each block pulls on the next
  const remedy = 'Count the parts of line that pull on the load.';
  const advantage = readNumber(mechanicalAdvantage, 'tackle.mechanicalAdvantage', 1, 2 ** sheaves, remedy);
  const each = armyRecoveryResistance.rows['tackle-sheave'].multiple;
  const line = (resistance * (1 + each * sheaves)) / advantage;
  const values = { R: force(resistance), n: sheaves, MA: advantage };
  working.step('tackle', 'fall line', `(R + ${each} · n · R) / MA`, values, force(line));
  working.cite(armyRecoveryResistance.source);
  return line;
}

/** Beyond it the friction of a tackle by this rule is more than its load. */
const MOST_SHEAVES = 10;

const STATICS_ON_A_SLOPE: SourceRef = { document: 'Statics of a load on a slope', provenance: 'derived' };

const OVERRUNS: Note = /* @__PURE__ */ note('OVERRUNS');
