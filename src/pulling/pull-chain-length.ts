import { finely, linksForLength } from '../chain/links.js';
import { fail, mapAt } from '../errors.js';
import { checkList, checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact, ratioOf } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { FOLLOW_THE_MARK, STAND_CLEAR } from '../working/cautions.js';
import { type Check, type CheckSubject, ratioCheck } from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { type ChainEnd, type ReadEnd, readEnd } from './wrap-length.js';

type Length = Quantity<'ft' | 'm'>;

/** The gap between the machines: stated, or what the one behind needs to stop when the one ahead stops dead. */
export type Standoff =
  | QuantityInput<'length'>
  | {
      readonly speed: QuantityInput<'speed'>;
      readonly reactionTime: QuantityInput<'duration'>;
      /** Of the machine behind, on its own brakes. */
      readonly deceleration: QuantityInput<'acceleration'>;
    };

export interface PullChainLength extends ResultBase<'pullChainLength'> {
  readonly standoff?: Length;
  /** What each end takes, in their order. */
  readonly ends: readonly Length[];
  readonly required: Length;
  /** Whole links that cover it. */
  readonly links: number;
  /** Of those links: the length to cut or buy. */
  readonly length: Length;
  /** What that is more than required. */
  readonly spare: Length;
  /** Nobody stands nearer than this to either end of the line. */
  readonly dangerRadius: Length;
  /** Habits of the trade about the gap. */
  readonly checks: readonly Check[];
}

/**
 * The chain that a pull needs: the gap between the machines and what goes round or back at each end.
 *
 * required = standoff + ends. Round a cylinder n · π · (D + b), round a rectangle n · (2 · (width + height) + π · b), a choker
 * π · (D + b) + tail, each with what hooks back; b is the outside width of the chain. The stopping gap is
 * v · t + v² / (2 · a). Rounded up to whole links: n = ceil(required / p). Danger zone: margin · length, from both ends.
 *
 * @param input.ends one end or both, such as `{ at: 'choker', diameter: '16 in', tail: '2 ft' }`
 * @param input.standoff stated, or speed, reaction time and deceleration; omitted: none, where a load is only wrapped
 * @param input.pitch inside length of a link, best measured over several links
 * @param input.wireDiameter d; b is taken as 3.4 d of a short link, as an assumption
 * @param input.outsideWidth b, measured, in place of the wire
 * @param input.dangerMargin multiple of the chain length, 1 or more; omitted: the length itself, as an assumption
 * @param input.units `'us'` (ft) or `'si'` (m); omitted: the system that the lengths share
 * @throws RiggingError `MISSING_FIELD`, `EMPTY_LIST`, `UNKNOWN_VALUE`, `CONFLICTING_FIELDS`, `NOT_A_WHOLE_NUMBER` (turns),
 * `IMPOSSIBLE_GEOMETRY` (no length at all), `NOT_POSITIVE`, `NOT_FINITE`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity chain lying close round its load, corners padded; no credit for friction of the turns
 * @source geometry and kinematics, derived; danger zone: TM 9-2320-356-BD, read in a page quoting it
 * @example
 * pullChainLength({
 *   ends: [{ at: 'hook' }, { at: 'choker', diameter: '16 in', tail: '2 ft' }],
 *   standoff: '20 ft',
 *   pitch: '1.125 in',
 *   wireDiameter: '0.394 in',
 * }).links
 * // => 284
 */
export function pullChainLength(input: {
  readonly ends: readonly ChainEnd[];
  readonly standoff?: Standoff;
  readonly pitch: QuantityInput<'length'>;
  readonly wireDiameter?: QuantityInput<'length'>;
  readonly outsideWidth?: QuantityInput<'length'>;
  readonly dangerMargin?: number;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): PullChainLength {
  checkObject(input, '', '{ ends, standoff, pitch }');
  const working = new Working(input.working !== false);
  const pitch = readPositive(input.pitch, 'length', 'pitch');
  const wire = readOptional(input.wireDiameter, 'length', 'wireDiameter');
  const outside = readOptional(input.outsideWidth, 'length', 'outsideWidth');
  if (wire !== undefined && outside !== undefined) {
    fail('CONFLICTING_FIELDS', 'outsideWidth', 'wireDiameter or outsideWidth', 'both', 'One is enough.');
  }
  const margin = readMargin(input.dangerMargin);
  checkList(input.ends, 'ends');
  if (input.ends.length > 2) fail('TOO_LARGE', 'ends', 'one end or two', input.ends.length, 'A chain has two.');
  const ends = mapAt(input.ends, 'ends', readEnd);
  const wraps = ends.some(({ widths }) => widths > 0);
  const b = wraps ? (outside ?? widthOf(wire)) : undefined;
  const metersOf = ({ meters, widths }: ReadEnd) => meters + (b === undefined ? 0 : widths * inUnit(b, 'm').value);
  const gap = readStandoff(input.standoff);
  const units = sharedUnits(input.units, [pitch, wire, outside, ...ends.flatMap(({ given }) => given), ...gap.given]);
  const unit = units === 'us' ? 'ft' : 'm';
  const shown = (meters: number): Length => inUnit(finely(meters, units), unit);

  const meters = ends.reduce((sum, end) => sum + metersOf(end), gap.meters ?? 0);
  if (!(meters > 0)) {
    fail('IMPOSSIBLE_GEOMETRY', 'standoff', 'a chain of some length', 'none', 'Give a standoff, or an end that wraps.');
  }
  const standoff = gap.meters === undefined ? undefined : shown(gap.meters);
  if (standoff && gap.values) working.step('gap', 'standoff', 'v · t + v² / (2 · a)', gap.values, standoff);
  for (const [index, end] of ends.entries()) {
    working.step(
      `end ${index + 1}`,
      'length',
      end.expression,
      { ...end.values, ...(b && end.widths > 0 && { b }) },
      shown(metersOf(end)),
    );
    if (end.noHookBack) working.assumptions.push(note('NO_HOOK_BACK', { end: index + 1 }));
  }
  const required = shown(meters);
  working.step('chain', 'required', 'standoff + ends', standoff ? { standoff } : {}, required);
  const { links, bearingLength, takeUp, ...counted } = linksForLength({ length: finely(meters, units), pitch, units });
  if (working.shown) working.steps.push(...counted.steps);
  const length = inUnit(bearingLength, unit);
  const dangerRadius = dangerZone(length, margin, working);

  for (const source of counted.sources) working.cite(source);
  working.cite(DANGER_ZONE);
  if (wraps && outside === undefined) working.assumptions.push(SHORT_LINK_WIDTH);
  if (margin === undefined) working.assumptions.push(NO_DANGER_MARGIN);
  if (gap.meters === undefined) working.assumptions.push(NO_STANDOFF);
  if (wraps) working.cautions.push(WRAP_TO_KEEP_HOOK, TURNS_HOLD_NOTHING);
  working.cautions.push(...counted.cautions, STAND_CLEAR, FOLLOW_THE_MARK);
  return makeResult(
    'pullChainLength',
    {
      ...(standoff && { standoff }),
      ends: ends.map((end) => shown(metersOf(end))),
      required,
      links,
      length,
      spare: inUnit(takeUp, unit),
      dangerRadius,
      checks: standoff ? standoffChecks(gap.stated ?? standoff, unit) : [],
    },
    input,
    working,
  );
}

/** From both ends of a line, as far as it is long. */
export function dangerZone(length: Length, margin = 1, working: Working): Length {
  const radius = new Quantity(length.value * margin, length.unit);
  working.step('danger zone', 'radius', 'margin · length', { margin, length }, radius);
  return radius;
}

/** Outside width of a short link over its wire: 1.4 d inside and the wire on both sides. */
const WIDTH_OVER_WIRE = 3.4;

function widthOf(wire: QuantityLike | undefined): QuantityLike {
  if (wire !== undefined) return new Quantity(wire.value * WIDTH_OVER_WIRE, wire.unit);
  return fail(
    'MISSING_FIELD',
    'wireDiameter',
    'the wire or the outside width of the chain',
    wire,
    'It wraps: give one.',
  );
}

function readMargin(margin: unknown): number | undefined {
  if (margin === undefined || (typeof margin === 'number' && margin >= 1 && margin <= 100)) return margin;
  const isNumber = typeof margin === 'number' && Number.isFinite(margin);
  const code = !isNumber ? 'NOT_FINITE' : margin > 100 ? 'TOO_LARGE' : 'UNKNOWN_VALUE';
  return fail(code, 'dangerMargin', 'a number from 1 to 100', margin, 'Give a plain number, such as 1.5.');
}

interface ReadStandoff {
  readonly meters?: number;
  readonly stated?: QuantityLike;
  readonly values?: Readonly<Record<string, QuantityLike>>;
  readonly given: readonly QuantityLike[];
}

/** The gap, in meters; errors name `standoff`. */
export function readStandoff(standoff: Standoff | undefined): ReadStandoff {
  if (standoff === undefined) return { given: [] };
  if (typeof standoff !== 'object' || standoff === null || !('speed' in standoff)) {
    const stated = readPositive(standoff, 'length', 'standoff');
    return { meters: inUnit(stated, 'm').value, stated, given: [stated] };
  }
  const v = readPositive(standoff.speed, 'speed', 'standoff.speed');
  const t = readPositive(standoff.reactionTime, 'duration', 'standoff.reactionTime');
  const a = readPositive(standoff.deceleration, 'acceleration', 'standoff.deceleration');
  const speed = inUnit(v, 'm/s').value;
  const meters = speed * inUnit(t, 's').value + speed ** 2 / (2 * inUnit(a, 'm/s2').value);
  return { meters, values: { v, t, a }, given: [v] };
}

/** Common practice: from machine to machine at least 15 ft, better 20 ft. */
const STANDOFF_PRACTICE = [
  ['standoff-least', 'At least 15 ft from machine to machine', 15],
  ['standoff-better', 'Better 20 ft from machine to machine', 20],
] as const;

function standoffChecks(standoff: QuantityLike, unit: 'ft' | 'm'): Check[] {
  return STANDOFF_PRACTICE.map(([id, title, feet]) => {
    const about: CheckSubject = { id, title, clause: 'common practice', weight: 'practice', subject: 'standoff' };
    const least = { value: feet, unit: 'ft' } as const;
    const [demand, capacity] = [inUnit(least, unit), inUnit(standoff, unit)];
    const { fits, utilization } = ratioOf(demand.value, capacity.value, () => compareExact(least, standoff));
    return ratioCheck(about, fits, demand, capacity, utilization);
  });
}

const DANGER_ZONE: SourceRef = {
  document: 'TM 9-2320-356-BD',
  provenance: 'read',
  note: 'read in a page quoting it: nobody nearer to the vehicles than the longest line used',
};
const SHORT_LINK_WIDTH: Note = /* @__PURE__ */ note('SHORT_LINK_WIDTH');
const NO_DANGER_MARGIN: Note = /* @__PURE__ */ note('NO_DANGER_MARGIN');
const NO_STANDOFF: Note = /* @__PURE__ */ note('NO_STANDOFF');
const WRAP_TO_KEEP_HOOK: Note = /* @__PURE__ */ note('WRAP_TO_KEEP_HOOK');
const TURNS_HOLD_NOTHING: Note = /* @__PURE__ */ note('TURNS_HOLD_NOTHING');
