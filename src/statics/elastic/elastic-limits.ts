import { fail } from '../../errors.js';
import type { Twist } from '../mechanism.js';
import { checkLoading, type Loading } from '../rigid-load.js';
import { OPEN, slides } from './contact-law.js';
import { type ElasticLoad, type ElasticModel, makeElasticModel, mechanismOf } from './elastic-model.js';
import { followPath, type Stretch, settle } from './elastic-path.js';
import type { ElasticOptions } from './elastic-response.js';

/** Something that happens for the first time as the varying load grows. */
interface FirstEvent {
  readonly factor: number;
  /** Id of the member or contact; the first in the load's list when several come together. */
  readonly id: string;
}

export type ElasticLimits =
  | {
      readonly outcome: 'followed';
      /** A member's tension reaches its capacity. Beyond, the springs go on as if it were stronger. */
      readonly firstAtCapacity: FirstEvent | null;
      /** A contact starts to slide, or would if it did not stick. Without friction null: there is nothing to overcome. */
      readonly firstSlip: FirstEvent | null;
      /** A contact that was pressed at rest loses its force. */
      readonly firstLift: FirstEvent | null;
      /** No stiffness is left against the mechanism given; see `modeOf`. Nothing beyond is known. */
      readonly givesWay: { readonly factor: number; readonly mechanism: Twist } | null;
    }
  | { readonly outcome: 'impossible'; readonly mechanism: Twist }
  | { readonly outcome: 'not-solved' };

/**
 * The factors at which, as the varying load grows from rest, a member first reaches its capacity, a contact first slides,
 * a contact first lifts, and the load gives way; null where it does not happen up to `upTo`. The path of
 * {@link elasticResponse} is straight between its events, so each factor is the root of a linear equation (with
 * `'sticking'`, of the quadratic |friction| = mu N, mu being the contact's own), not a search.
 *
 * @param load as for {@link elasticResponse}
 * @param upTo the greatest factor of interest, above zero
 * @throws as {@link elasticResponse}; NOT_POSITIVE for `upTo`
 */
export function elasticLimits(
  load: ElasticLoad,
  loading: Loading,
  { friction, upTo }: ElasticOptions & { readonly upTo: number },
): ElasticLimits {
  if (!(upTo > 0 && upTo < Number.POSITIVE_INFINITY)) {
    fail('NOT_POSITIVE', 'upTo', 'a finite factor above zero', upTo, 'Say up to which factor to look.');
  }
  checkLoading(loading);
  const model = makeElasticModel(load, friction);
  let firstAtCapacity: FirstEvent | null = null;
  let firstSlip: FirstEvent | null = null;
  let firstLift: FirstEvent | null = null;
  let pressedAtRest: readonly boolean[] | undefined;
  const end = followPath(model, settle(model, loading), loading, upTo, (stretch) => {
    pressedAtRest ??= Array.from(stretch.state.normals, (normal) => normal > 0);
    firstAtCapacity ??= earliest(load.members, (index) => capacityReached(model, stretch, index));
    firstSlip ??= earliest(load.contacts, (index) => slipStarts(model, stretch, index));
    firstLift ??= earliest(load.contacts, (index) =>
      pressedAtRest?.[index] === true && stretch.rates.modes.contacts[index] === OPEN ? stretch.from : undefined,
    );
  });
  if (end.outcome === 'not-solved') return end;
  if (end.outcome === 'impossible')
    return { outcome: 'impossible', mechanism: mechanismOf(model, end.motion, loading.steady) };
  const givesWay =
    end.outcome === 'gives-way'
      ? { factor: end.factor, mechanism: mechanismOf(model, end.motion, loading.varying) }
      : null;
  return { outcome: 'followed', firstAtCapacity, firstSlip, firstLift, givesWay };
}

function earliest(
  parts: readonly { id: string }[],
  factorOf: (index: number) => number | undefined,
): FirstEvent | null {
  let first: FirstEvent | null = null;
  for (const [index, { id }] of parts.entries()) {
    const factor = factorOf(index);
    if (factor !== undefined && (first === null || factor < first.factor)) first = { factor, id };
  }
  return first;
}

/** T + rate * step = capacity. */
function capacityReached({ load }: ElasticModel, { from, length, state, rates }: Stretch, index: number) {
  const missing = load.members[index]!.capacity / load.weight - state.members[index]!;
  if (missing <= 0 && state.members[index]! > 0) return from;
  const step = missing / rates.members[index]!;
  return rates.members[index]! > 0 && step <= length ? from + step : undefined;
}

function slipStarts({ friction, contacts }: ElasticModel, { from, length, state, rates }: Stretch, index: number) {
  if (friction === 'none') return undefined;
  if (friction !== 'sticking') return slides(rates.modes.contacts[index]!) ? from : undefined;
  // |t + t' s|^2 = mu^2 (N + N' s)^2, the least s from 0 to the end of the stretch
  const { friction: mu } = contacts[index]!;
  const [x, y, n] = [state.shears[2 * index]!, state.shears[2 * index + 1]!, mu * Math.max(0, state.normals[index]!)];
  const [dx, dy, dn] = [rates.shears[2 * index]!, rates.shears[2 * index + 1]!, mu * rates.normals[index]!];
  const c = x * x + y * y - n * n;
  if (c > SLIPS * (n * n + SLIPS)) return from;
  const b = x * dx + y * dy - n * dn;
  const a = dx * dx + dy * dy - dn * dn;
  const root = Math.sqrt(b * b - a * c);
  const steps = [(-b - root) / a, (-b + root) / a, -c / (2 * b)].filter((step) => step > 0 && step <= length);
  const step = Math.min(...steps.filter((at) => crossesOut(c, b, a, at)));
  return Number.isFinite(step) ? from + step : undefined;
}

/** Friction this much above what the coefficient allows, relative, is rounding. */
const SLIPS = 1e-9;

/** True when c + 2 b s + a s^2 is zero at s and grows there. */
function crossesOut(c: number, b: number, a: number, at: number): boolean {
  const scale = Math.abs(c) + Math.abs(2 * b * at) + Math.abs(a * at * at);
  return Math.abs(c + 2 * b * at + a * at * at) <= 1e-9 * scale && b + a * at > 0;
}
