import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityInput } from '../quantities/quantity.js';
import { STANDARD_GRAVITY } from '../quantities/rated.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';

export interface ChainSag extends ResultBase<'chainSag'> {
  readonly sag: Quantity<'in' | 'mm'>;
  readonly horizontalTension: Quantity<'lbf' | 'kN'>;
  /** At the ends, where it is greatest. */
  readonly endTension: Quantity<'lbf' | 'kN'>;
  /** Along the curve. */
  readonly length: Quantity<'ft' | 'm'>;
  /** What the curve is longer than the span: the way until the chain is straight. */
  readonly slack: Quantity<'in' | 'mm'>;
}

/**
 * How a chain hangs between two points of equal height: its sag under a tension, or the tension that a sag shows.
 *
 * A catenary, with C = H / w: sag = C · (cosh(S / 2C) − 1), length = 2 · C · sinh(S / 2C), end tension = H · cosh(S / 2C), where w
 * is the weight per length and S the span.
 *
 * @param input.span between the two ends
 * @param input.massPerLength of the chain: {@link chainMass} tells it
 * @param input.horizontalTension H: this, or the sag
 * @param input.sag at the middle, measured
 * @param input.units `'us'` (lbf, in, ft) or `'si'` (kN, mm, m); omitted: the system that all inputs share
 * @throws RiggingError `MISSING_FIELD`, `CONFLICTING_FIELDS` (both or neither of tension and sag), `NOT_POSITIVE`, `NOT_FINITE`,
 * `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity a uniform chain at rest, free along its length; it never hangs quite straight
 * @source catenary, derived
 * @example
 * chainSag({ span: '20 ft', massPerLength: '1.46 lb/ft', horizontalTension: '500 lbf' }).sag.value.toFixed(2)
 * // => '1.75'
 */
export function chainSag(input: {
  readonly span: QuantityInput<'length'>;
  readonly massPerLength: QuantityInput<'massPerLength'>;
  readonly horizontalTension?: QuantityInput<'force'>;
  readonly sag?: QuantityInput<'length'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): ChainSag {
  checkObject(input, '', '{ span, massPerLength, horizontalTension }');
  const working = new Working(input.working !== false);
  const span = readPositive(input.span, 'length', 'span');
  const perLength = readPositive(input.massPerLength, 'massPerLength', 'massPerLength');
  const tension = readOptional(input.horizontalTension, 'force', 'horizontalTension');
  const measured = readOptional(input.sag, 'length', 'sag');
  if ((tension === undefined) === (measured === undefined)) {
    const code = tension === undefined ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS';
    fail(code, 'horizontalTension', 'horizontalTension or sag, one of them', tension && 'both', 'One tells the other.');
  }
  const units = sharedUnits(input.units, [span, perLength, tension, measured]);
  const [forceUnit, shortUnit, longUnit] =
    units === 'us' ? (['lbf', 'in', 'ft'] as const) : (['kN', 'mm', 'm'] as const);
  const S = inUnit(span, 'm').value;
  const w = inUnit(perLength, 'kg/m').value * STANDARD_GRAVITY;
  const half =
    measured === undefined
      ? (w * S) / (2 * inUnit(tension as Quantity<'N'>, 'N').value)
      : halfAngleOf(inUnit(measured, 'm').value / S);
  const C = S / (2 * half);
  const force = (newtons: number) => inUnit({ value: newtons, unit: 'N' }, forceUnit);
  const short = (meters: number) => inUnit({ value: meters, unit: 'm' }, shortUnit);
  const sag = measured === undefined ? short(2 * C * Math.sinh(half / 2) ** 2) : inUnit(measured, shortUnit);
  // of a nearly straight chain the difference would be lost in the digits of the length
  const slack = S * (half < 1e-3 ? half ** 2 / 6 : Math.sinh(half) / half - 1);
  const H = force(w * C);
  const endTension = force(w * C * Math.cosh(half));
  const length = inUnit({ value: S + slack, unit: 'm' }, longUnit);
  const values = { S: span, w: perLength, ...(measured ? { sag: measured } : { H }) };
  if (measured) working.step('chain', 'H', 'w · C, with sag = C · (cosh(S / 2C) − 1)', values, H);
  else working.step('chain', 'sag', 'C · (cosh(S / 2C) − 1), C = H / w', values, sag);
  working.step('chain', 'length', '2 · C · sinh(S / 2C)', {}, length);
  working.step('chain', 'T', 'H · cosh(S / 2C)', {}, endTension);
  working.cite(CATENARY);
  working.cautions.push(NEVER_LEAN_ON_CHAIN);
  return makeResult('chainSag', { sag, horizontalTension: H, endTension, length, slack: short(slack) }, input, working);
}

/** u = S / 2C of a catenary with this sag over span, (cosh u − 1) / 2u: growing in u, so halving finds it. */
function halfAngleOf(ratio: number): number {
  let [low, high] = [0, 1];
  const sagOver = (u: number) => Math.sinh(u / 2) ** 2 / u;
  while (sagOver(high) < ratio) high *= 2;
  for (let middle = high / 2; low < middle && middle < high; middle = (low + high) / 2) {
    if (sagOver(middle) < ratio) low = middle;
    else high = middle;
  }
  return high;
}

const CATENARY: SourceRef = { document: 'Catenary of a uniform chain', provenance: 'derived' };

const NEVER_LEAN_ON_CHAIN: Note = /* @__PURE__ */ note('NEVER_LEAN_ON_CHAIN');
