import { fail, type RiggingErrorCode } from '../errors.js';
import { compareExactSums } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { inches } from './inches.js';
import type { ReadInspection } from './inspection.js';

// What cannot all be true of one chain. Tolerances are percentages and wide: they find slips of the pen, not wear.

/** Nominal pitch is true to about 3 % (EN 818-2, from memory), and chain does not shrink. */
const PITCH_TOLERANCE = 3;
/** Wire of a metric size may be stated as it was measured when new: about 5 % (EN 818-2, from memory). */
const WIRE_TOLERANCE = 5;
/** Wire of an inch size runs over it, most of all in small sizes: 4.0 mm at 1/8 in, a quarter more. */
const WIRE_OVER_INCH_SIZE = 30;
/** The longest link by caliper beside the mean of a section by tape. */
const LINK_BELOW_MEAN = 1;

/** Refuses an inspection whose fields contradict each other, or lengths that no chain has. */
export function refuseContradictions(read: ReadInspection): void {
  const { size, wire, pitch, section, inside, outside, outsideNew, found, notchDepth, bend, hook, withoutHook } = read;
  if (withoutHook && hook !== undefined) {
    fail('CONFLICTING_FIELDS', 'measurements.hook', 'no hook, as chain.withoutHook says', hook, REMEDY);
  }
  for (const [defect, depth, path] of [
    ['gouge', notchDepth, 'notchDepth'],
    ['bent-link', bend, 'bend'],
  ] as const) {
    if (depth?.value === 0 && found?.includes(defect)) {
      fail(
        'CONFLICTING_FIELDS',
        `measurements.${path}`,
        `more than none, as ${defect} was found`,
        shown(depth),
        REMEDY,
      );
    }
  }
  if (size !== undefined && wire !== undefined) {
    const isMetric = size.endsWith(' mm');
    const named = isMetric ? readPositive(size, 'length', 'chain.size') : inches(size);
    const over = isMetric ? WIRE_TOLERANCE : WIRE_OVER_INCH_SIZE;
    holdWithin(wire, named, 1, [WIRE_TOLERANCE, over], 'CONFLICTING_FIELDS', 'chain.wireDiameter');
  }
  if (section?.whenNew !== undefined && pitch !== undefined) {
    const both = [PITCH_TOLERANCE, PITCH_TOLERANCE] as const;
    holdWithin(section.whenNew, pitch, section.links, both, 'CONFLICTING_FIELDS', 'measurements.section.whenNew');
  }
  const before = section?.whenNew ?? pitch;
  const times = section?.whenNew === undefined ? (section?.links ?? 1) : 1;
  for (const [now, whenNew, many, path] of [
    [section?.length, before, times, 'section.length'],
    [inside, pitch, 1, 'link.inside'],
    [outside, outsideNew, 1, 'link.outside'],
  ] as const) {
    if (now !== undefined && whenNew !== undefined) {
      holdWithin(now, whenNew, many, [PITCH_TOLERANCE], 'IMPOSSIBLE_GEOMETRY', `measurements.${path}`);
    }
  }
  if (
    section !== undefined &&
    inside !== undefined &&
    isBelow(inside, section.links, section.length, LINK_BELOW_MEAN)
  ) {
    const expected = `no less than the mean of the section, ${shown(section.length)} over ${section.links} links`;
    fail('CONFLICTING_FIELDS', 'measurements.link.inside', expected, shown(inside), 'Measure the longest link.');
  }
}

const REMEDY = 'Give what is true.';

const shown = ({ value, unit }: QuantityLike): string => `${value} ${unit}`;

/** Whether so many times a length is more than some percent below another. */
function isBelow(length: QuantityLike, times: number, other: QuantityLike, percent: number): boolean {
  return (
    compareExactSums([{ quantity: length, times: [100, times] }], [{ quantity: other, times: [100 - percent] }]) < 0
  );
}

/** Refuses a length that is further from so many times another than some percent below, and above where that is given. */
function holdWithin(
  length: QuantityLike,
  nominal: QuantityLike,
  times: number,
  [below, above]: readonly [number, number?],
  code: RiggingErrorCode,
  path: string,
): void {
  const against = (percent: number) =>
    compareExactSums([{ quantity: length, times: [100] }], [{ quantity: nominal, times: [times, percent] }]);
  if (against(100 - below) >= 0 && (above === undefined || against(100 + above) <= 0)) return;
  const range = above === undefined ? `no more than ${below} % below` : `from ${below} % below to ${above} % above`;
  const of = times === 1 ? shown(nominal) : `${times} times ${shown(nominal)}`;
  fail(code, path, `${range} ${of}`, shown(length), 'Check the numbers, the units and the count of links.');
}
