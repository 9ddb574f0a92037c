import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityInput } from '../quantities/quantity.js';
import { readPositive, readQuantity } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { Kind, UnitOfKind, UnitSystem } from '../quantities/units.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';

export interface TakeUpSpeed extends ResultBase<'takeUpSpeed'> {
  /** Of the pulling machine at the moment when the chain comes tight. */
  readonly speed: Quantity<'mph' | 'm/s'>;
}

/**
 * How fast a machine runs when its chain comes tight, after it has gathered speed over the slack.
 *
 * v = √(2 · a · s); from a thrust, a = T / m.
 *
 * @param input.slack way of the machine until the chain is tight, zero or more
 * @param input.acceleration of the machine over that way: this, or thrust and mass
 * @param input.thrust what drives it, its own rolling and grade resistance taken off
 * @param input.mass of the machine
 * @param input.units `'us'` (mph) or `'si'` (m/s); omitted: the system that slack, thrust and mass share
 * @throws RiggingError `MISSING_FIELD`, `CONFLICTING_FIELDS` (acceleration and thrust), `NEGATIVE`, `NOT_POSITIVE`,
 * `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity from rest, steady acceleration; a start from rolling is faster
 * @source kinematics, derived
 * @example
 * takeUpSpeed({ slack: '3 ft', acceleration: '0.2 g' }).speed.value.toFixed(1)
 * // => '4.2'
 */
export function takeUpSpeed(input: {
  readonly slack: QuantityInput<'length'>;
  readonly acceleration?: QuantityInput<'acceleration'>;
  readonly thrust?: QuantityInput<'force'>;
  readonly mass?: QuantityInput<'mass'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): TakeUpSpeed {
  checkObject(input, '', '{ slack, acceleration } or { slack, thrust, mass }');
  const working = new Working(input.working !== false);
  const slack = readZeroOrMore(input.slack, 'length', 'slack');
  const { acceleration, thrust, mass } = input;
  if (acceleration !== undefined && thrust !== undefined) {
    fail(
      'CONFLICTING_FIELDS',
      'acceleration',
      'acceleration, or thrust and mass',
      'both',
      'One follows from the other.',
    );
  }
  if (acceleration === undefined && thrust === undefined) {
    fail('MISSING_FIELD', 'acceleration', 'acceleration, or thrust and mass', undefined, 'How does it gather speed?');
  }
  const force = thrust === undefined ? undefined : readPositive(thrust, 'force', 'thrust');
  const moved = force && readPositive(mass, 'mass', 'mass');
  const a =
    force && moved ? newtons(force) / inUnit(moved, 'kg').value : readAcceleration(acceleration, 'acceleration');
  const units = sharedUnits(input.units, [slack, force, moved]);
  const unit = units === 'us' ? 'mph' : 'm/s';
  const speed = inUnit({ value: speedAfter(inUnit(slack, 'm').value, a), unit: 'm/s' }, unit);
  const shown = { a: { value: a, unit: 'm/s2' }, s: slack } as const;
  if (force && moved) working.step('machine', 'a', 'T / m', { T: force, m: moved }, shown.a);
  working.step('machine', 'v', '√(2 · a · s)', shown, speed);
  working.cite(KINEMATICS);
  working.cautions.push(TAKE_UP_AT_A_CRAWL);
  return makeResult('takeUpSpeed', { speed }, input, working);
}

/** Speed in m/s after a way in m at an acceleration in m/s². */
export function speedAfter(way: number, acceleration: number): number {
  return Math.sqrt(2 * acceleration * way);
}

const newtons = (force: Quantity): number => inUnit(force, 'N').value;

/** In m/s². */
export function readAcceleration(input: unknown, path: string): number {
  return inUnit(readPositive(input, 'acceleration', path), 'm/s2').value;
}

export function readZeroOrMore<K extends Kind>(input: unknown, kind: K, path: string): Quantity<UnitOfKind[K]> {
  const quantity = readQuantity(input, kind, path);
  if (quantity.value < 0) fail('NEGATIVE', path, 'zero or more', `${quantity}`, 'Give it without a sign.');
  return quantity;
}

const KINEMATICS: SourceRef = { document: 'Kinematics of steady acceleration', provenance: 'derived' };

export const TAKE_UP_AT_A_CRAWL: Note = /* @__PURE__ */ note('TAKE_UP_AT_A_CRAWL');
