import { fail, mapAt, within } from '../errors.js';
import { checkIds, checkList, checkObject, checkOneOf } from '../input-checks.js';
import type { LiftCheck } from '../lifting/check-lift.js';
import { type SlingTensions, type SlingTensionsInput, slingTensions } from '../lifting/sling-tensions.js';
import { inUnit } from '../quantities/convert.js';
import { formatQuantity } from '../quantities/format.js';
import { type Point, readPoint } from '../quantities/point.js';
import { readPositive, readQuantity } from '../quantities/read.js';
import type { UnitSystem } from '../quantities/units.js';
import { add, cross, dot, lengthOf, scale, subtract, type Vec3 } from '../statics/vector.js';
import { percent, VERDICTS } from './outcome.js';
import { lineOf, MOST_OF_ID } from './svg.js';

/** What is lifted, for a drawing: the input of `slingTensions` or of `checkLift` with legs, and the outline of the load. */
export interface DrawnLift extends Pick<SlingTensionsInput, 'legs' | 'hook'> {
  readonly load: SlingTensionsInput['load'] & {
    /** Two corners of the box around the load, as it stands. */
    readonly outline?: readonly [Point, Point];
  };
}

/** A lift as it hangs, in meters; the center of gravity is the origin and z is plumb. */
export interface LiftScene {
  readonly heading: string;
  readonly units: UnitSystem;
  /** Absent where the load rolls over: then it is drawn as it stands. */
  readonly hook: Vec3 | undefined;
  readonly legs: readonly LiftSceneLeg[];
  /** The eight corners of the outline. */
  readonly corners: readonly Vec3[];
  readonly notes: readonly string[];
}

export interface LiftSceneLeg {
  readonly name: string;
  readonly pick: Vec3;
  /** Beside it, in words; absent where the load rolls over. */
  readonly tension?: string;
  readonly says: string;
  /** Tension over the limit of a leg, where the result holds one against the other. */
  readonly share?: number;
  readonly slack: boolean;
}

type LiftResult = SlingTensions | LiftCheck;

/** Nothing is drawn from farther away, m. */
const MOST_DISTANCE = 1000;

/** Reads a lift and its result, and turns the load as it hangs. */
export function readLift(
  lift: DrawnLift,
  result: LiftResult | null | undefined,
  units: UnitSystem | undefined,
): LiftScene {
  const { load } = lift;
  checkObject(load, 'load', '{ mass, centerOfGravity }');
  const mass = readPositive(load.mass, 'mass', 'load.mass');
  const g = readPoint(load.centerOfGravity, 'load.centerOfGravity');
  checkList(lift.legs, 'legs');
  checkIds(lift.legs, 'legs');
  const picks = mapAt(lift.legs, 'legs', ({ at }) => readPoint(at, 'at'));
  const outline = load.outline === undefined ? undefined : readOutline(load.outline);
  for (const point of [g, ...picks, ...(outline ?? [])]) {
    if (!(lengthOf(subtract(point, g)) <= MOST_DISTANCE)) {
      fail('IMPOSSIBLE_GEOMETRY', 'legs', `points within ${MOST_DISTANCE} m`, 'one farther away', 'Check its units.');
    }
  }
  const drawn = result == null ? undefined : tellApart(lift);
  const found =
    result ??
    slingTensions({
      load: { mass: load.mass, centerOfGravity: load.centerOfGravity },
      legs: lift.legs,
      ...(lift.hook !== undefined && { hook: lift.hook }),
      ...(units !== undefined && { units }),
      working: false,
    });
  return within('result', () => {
    checkObject(found, '', 'a result of slingTensions or checkLift');
    checkOneOf(found.result, ['slingTensions', 'checkLift'], 'result');
    checkOneOf(found.outcome, ['rests', 'leg-slack', 'unstable'], 'outcome');
    if (drawn !== undefined) within('inputs', () => checkOfThis(found.inputs, drawn));
    const hangs = found.outcome !== 'unstable';
    const up: Vec3 = hangs ? readUp(found.up) : [0, 0, 1];
    const turn = (point: Vec3) => turned(subtract(point, g), up);
    const says = hangs
      ? mapAt(lift.legs, 'legs', ({ id }) => sayLeg(found, id))
      : lift.legs.map(() => ({ says: 'carries nothing', slack: false }));
    const hook = hangs ? turn(readPoint(found.hook, 'hook')) : undefined;
    return {
      heading: headingOf(found, `${formatQuantity(mass)}`),
      units: units ?? systemOf(found),
      hook,
      legs: lift.legs.map(({ id }, index) => ({
        name: lineOf(id, MOST_OF_ID),
        pick: turn(picks[index]!),
        ...says[index]!,
      })),
      corners: outline === undefined ? [] : cornersOf(outline).map(turn),
      notes: notesOf(found, hook),
    };
  });
}

/** A result of another lift would be drawn over this one: load, hook and legs must be those that it was told of. */
function checkOfThis(told: unknown, drawn: string): void {
  checkObject(told, '', 'the lift that it was told of');
  if (tellApart(told as DrawnLift) !== drawn) {
    fail('CONFLICTING_FIELDS', '', 'the lift that is drawn', 'another lift', 'Give the result of this lift.');
  }
}

/** Mass, center of gravity, hook and legs of a lift as text: two lifts alike have one, in whatever units they are written. */
function tellApart({ load, legs, hook }: DrawnLift): string {
  checkObject(load, 'load', '{ mass, centerOfGravity }');
  checkList(legs, 'legs');
  checkIds(legs, 'legs');
  const read = mapAt(legs, 'legs', (leg) => {
    checkObject(leg, '', '{ id, at, length }');
    const { id, at, length, axialStiffness } = leg;
    const long = length === undefined ? null : inUnit(readPositive(length, 'length', 'length'), 'm').value;
    const stiff = axialStiffness === undefined ? null : readPositive(axialStiffness, 'force', 'axialStiffness');
    return [id, readPoint(at, 'at'), long, stiff && inUnit(stiff, 'N').value];
  });
  const mass = inUnit(readPositive(load.mass, 'mass', 'load.mass'), 'kg').value;
  const over = hook === undefined ? null : readPoint(hook, 'hook');
  return JSON.stringify([mass, readPoint(load.centerOfGravity, 'load.centerOfGravity'), over, read]);
}

/** Rotates by the smallest turn that brings `up` to the vertical. */
function turned(point: Vec3, up: Vec3): Vec3 {
  const axis = cross(up, [0, 0, 1]); // its length is the sine, up[2] the cosine
  // Rodrigues: p cos + axis x p + axis (axis . p) / (1 + cos)
  return add(add(scale(point, up[2]), cross(axis, point)), scale(axis, dot(axis, point) / (1 + up[2])));
}

function readUp(up: unknown): Vec3 {
  if (Array.isArray(up) && up.length === 3 && up.every((each) => Number.isFinite(each))) {
    const way = up as unknown as Vec3;
    if (Math.abs(lengthOf(way) - 1) < 1e-6 && way[2] > 0) return way;
  }
  return fail('MISSING_FIELD', 'up', 'a unit vector that points upward', up, 'Give the whole result.');
}

function readOutline(outline: unknown): readonly [Vec3, Vec3] {
  checkList(outline as readonly unknown[], 'load.outline', 2);
  const [one, other] = outline as readonly unknown[];
  return [readPoint(one, 'load.outline[0]'), readPoint(other, 'load.outline[1]')];
}

function cornersOf([a, b]: readonly [Vec3, Vec3]): Vec3[] {
  return [0, 1, 2, 3, 4, 5, 6, 7].map((bits) => [(bits & 1 ? a : b)[0], (bits & 2 ? a : b)[1], (bits & 4 ? a : b)[2]]);
}

function sayLeg(found: LiftResult, id: string): Omit<LiftSceneLeg, 'name' | 'pick'> {
  checkList(found.legs, 'legs');
  const leg = found.legs.find((each) => each?.id === id);
  if (leg === undefined) fail('UNKNOWN_REFERENCE', 'legs', `leg ${id}`, undefined, 'Give the result of this lift.');
  const force = readQuantity(leg.tension, 'force', 'tension');
  const angle = readQuantity(leg.angle?.fromHorizontal, 'angle', 'angle.fromHorizontal');
  const tension = formatQuantity(force, { digits: 4 });
  const elastic = leg.elasticTension == null ? undefined : readQuantity(leg.elasticTension, 'force', 'elasticTension');
  const worst = found.legs.some((each) => each?.elasticTension?.value !== each?.tension?.value);
  const share = shareOf(found, id);
  return {
    tension,
    says: [
      leg.slack === true ? 'hangs slack' : `${worst ? 'at most ' : ''}${tension}`,
      ...(worst && elastic !== undefined ? [`${formatQuantity(elastic, { digits: 4 })} by stretch`] : []),
      `${formatQuantity(angle, { digits: 3 })} from horizontal`,
      ...(share === undefined ? [] : [`${percent(share)} of one leg`]),
    ].join(', '),
    ...(share !== undefined && { share }),
    slack: leg.slack === true,
  };
}

function shareOf(found: LiftResult, id: string): number | undefined {
  if (found.result !== 'checkLift') return undefined;
  checkList(found.checks, 'checks', 0);
  const check = found.checks.find((each) => each?.id === `leg/${id}`);
  const share = check !== undefined && 'utilization' in check ? check.utilization : undefined;
  return typeof share === 'number' && Number.isFinite(share) ? share : undefined;
}

function headingOf(found: LiftResult, mass: string): string {
  if (found.result === 'slingTensions') return found.outcome === 'unstable' ? `${mass}, unstable` : `${mass}`;
  checkOneOf(found.verdict, VERDICTS, 'verdict');
  const { governing } = found;
  return typeof governing === 'string'
    ? `${mass}: ${found.verdict}, by ${lineOf(governing, MOST_OF_ID)}`
    : `${mass}: ${found.verdict}`;
}

function systemOf({ legs }: LiftResult): UnitSystem {
  return legs?.[0]?.tension?.unit === 'kN' ? 'si' : 'us';
}

function notesOf(found: LiftResult, hook: Vec3 | undefined): string[] {
  if (hook === undefined)
    return ['The center of gravity is not below the picks: the load rolls over. It is drawn as it stands.'];
  const tilt = readQuantity(found.tilt, 'angle', 'tilt');
  const { lowest } = found;
  if (tilt.value === 0 || typeof lowest !== 'string') return ['It hangs as it stood.'];
  return [
    `It hangs turned by ${formatQuantity(tilt, { digits: 3 })}; the pick of ${lineOf(lowest, MOST_OF_ID)} goes down most.`,
  ];
}
