import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { compareExactSums, stepsToCover } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';

type ShortLength = Quantity<'in' | 'mm'>;

export interface LengthOfLinks extends ResultBase<'lengthOfLinks'> {
  /** Between the bearing points of the first and the last link. */
  readonly bearingLength: ShortLength;
  /** Over the outside of both end links; only where the wire was given. */
  readonly outsideLength?: ShortLength;
}

export interface LinksForLength extends ResultBase<'linksForLength'> {
  readonly links: number;
  /** Of those links, between bearing points. */
  readonly bearingLength: ShortLength;
  /** What the chain is longer than asked: the tensioner takes it up, or it hangs slack. */
  readonly takeUp: ShortLength;
}

interface Options {
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

const GEOMETRY: SourceRef = {
  document: 'Geometry of a chain: each link advances it by its inside length',
  provenance: 'derived',
};

const MEASURED_PITCH: Note = /* @__PURE__ */ note('MEASURED_PITCH');

/**
 * How long a number of links is.
 *
 * Bearing length = n · p; outside length = n · p + 2 · d. The pitch p is the inside length of a link.
 *
 * @param input.links a whole number, 1 or more
 * @param input.pitch inside length of a link, best measured over several links
 * @param input.wireDiameter d; gives the outside length as well
 * @param input.units `'us'` (in) or `'si'` (mm); omitted: the system that all inputs share
 * @throws RiggingError `NOT_A_WHOLE_NUMBER`, `NOT_POSITIVE`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity a straight, untwisted chain without load
 * @source derived from the geometry of the link
 * @example
 * lengthOfLinks({ links: 10, pitch: '30 mm', wireDiameter: '10 mm' }).outsideLength
 * // => 320 mm
 */
export function lengthOfLinks(
  input: Options & {
    readonly links: number;
    readonly pitch: QuantityInput<'length'>;
    readonly wireDiameter?: QuantityInput<'length'>;
  },
): LengthOfLinks {
  checkObject(input, '', '{ links, pitch }');
  const { links } = input;
  const working = new Working(input.working !== false);
  if (!Number.isSafeInteger(links) || links < 1) {
    fail('NOT_A_WHOLE_NUMBER', 'links', 'a whole number of links, 1 or more', links, 'Count the links.');
  }
  const pitch = readPositive(input.pitch, 'length', 'pitch');
  const wire = readOptional(input.wireDiameter, 'length', 'wireDiameter');
  const units = sharedUnits(input.units, [pitch, wire]);
  const bearingLength = inShort(times(pitch, links), units);
  const outsideLength =
    wire === undefined
      ? undefined
      : decimal(bearingLength.value + inShort(times(wire, 2), units).value, bearingLength.unit);
  const values = { n: links, p: pitch };
  working.step('chain', 'bearing length', 'n · p', values, bearingLength);
  if (wire !== undefined && outsideLength !== undefined) {
    const expression = 'n · p + 2 · d';
    working.step('chain', 'outside length', expression, { ...values, d: wire }, outsideLength);
  }
  working.cite(GEOMETRY);
  working.cautions.push(MEASURED_PITCH);
  return makeResult(
    'lengthOfLinks',
    { bearingLength, ...(outsideLength === undefined ? {} : { outsideLength }) },
    input,
    working,
  );
}

/**
 * The fewest whole links that reach a length, and what is left over for the tensioner.
 *
 * n = ceil(L / p); take-up = n · p − L. With `keepFlat` the links go in pairs, n = 2 · ceil(L / 2p): neighboring
 * links stand across each other, so an odd step gives the chain half a twist. Decided exactly: 30 ft at 1.2 in is
 * 300 links, not 301.
 *
 * @param input.length reach between bearing points, above zero
 * @param input.pitch inside length of a link, best measured: the greatest inside length of a table gives the fewest links
 * @param input.keepFlat `true` steps by two links so that every link lies as before
 * @param input.units `'us'` (in) or `'si'` (mm); omitted: the system that all inputs share
 * @throws RiggingError `NOT_POSITIVE`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity a straight chain without load, taken up link by link, as a grab hook does
 * @source derived from the geometry of the link
 * @example
 * linksForLength({ length: '1 m', pitch: '30 mm' }).takeUp
 * // => 20 mm
 */
export function linksForLength(
  input: Options & {
    readonly length: QuantityInput<'length'>;
    readonly pitch: QuantityInput<'length'>;
    readonly keepFlat?: boolean;
  },
): LinksForLength {
  const length = readPositive(input?.length, 'length', 'length');
  const working = new Working(input.working !== false);
  const pitch = readPositive(input.pitch, 'length', 'pitch');
  const units = sharedUnits(input.units, [length, pitch]);
  const step = input.keepFlat === true ? 2 : 1;
  const links = step * stepsToCover(length, { value: pitch.value * step, unit: pitch.unit });
  const bearingLength = inShort(times(pitch, links), units);
  const exact = compareExactSums([{ quantity: pitch, times: [links] }], [{ quantity: length }]) === 0;
  const takeUp = exact
    ? decimal(0, bearingLength.unit)
    : decimal(bearingLength.value - inShort(length, units).value, bearingLength.unit);
  const values = { L: length, p: pitch };
  const expression = step === 2 ? '2 · ceil(L / 2p)' : 'ceil(L / p)';
  working.step('chain', 'n', expression, values, links);
  working.step('chain', 'take-up', 'n · p − L', { n: links, ...values }, takeUp);
  working.cite(GEOMETRY);
  working.cautions.push(MEASURED_PITCH);
  return makeResult('linksForLength', { links, bearingLength, takeUp }, input, working);
}

function inShort(length: QuantityLike, units: UnitSystem): ShortLength {
  const { value, unit } = inUnit(length, units === 'us' ? 'in' : 'mm');
  return decimal(value, unit);
}

function times(length: QuantityLike, count: number): QuantityLike {
  return decimal(length.value * count, length.unit);
}

/** Fifteen digits name a length better than any tape; they keep 10 × 1.38 in from reading 13.799999999999999 in. */
function decimal<U extends QuantityLike['unit']>(value: number, unit: U): Quantity<U> {
  return new Quantity(Number(value.toPrecision(15)), unit);
}

/**
 * Meters in inches or millimeters to ten decimals: a sum, or the square root in a distance, keeps 60 in from reading
 * 59.99999999999999 in, and asks for no link more than it needs.
 */
export function finely(meters: number, units: UnitSystem): ShortLength {
  const { value, unit } = inUnit({ value: meters, unit: 'm' }, units === 'us' ? 'in' : 'mm');
  return new Quantity(Number(value.toFixed(10)), unit);
}
