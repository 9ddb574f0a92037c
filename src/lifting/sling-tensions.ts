import { fail, mapAt } from '../errors.js';
import { checkIds, checkList, checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { type Point, readPoint } from '../quantities/point.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { STANDARD_GRAVITY } from '../quantities/rated.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type HangingLeg, hang, type Rest, type Sharing, shareLoad } from '../statics/hanging-load.js';
import { GREATEST_RESIDUAL } from '../statics/residual.js';
import { cross, dot, lengthOf, subtract, type Vec3 } from '../statics/vector.js';
import { euEn81841996LegLength as legLength } from '../tables/generated/eu-en818-4-1996-leg-length.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';

/** A load that is lifted. Its points are measured from any point of it, as it stands: x forward, y left, z up. */
export interface LiftedLoad {
  readonly mass: QuantityInput<'mass'>;
  readonly centerOfGravity: Point;
}

/** One leg of a sling. */
export interface SlingLeg {
  readonly id: string;
  /** The pick point: where it is fixed to the load. */
  readonly at: Point;
  /** From the bearing point in the hook to the pick point; left out where the hook is given. */
  readonly length?: QuantityInput<'length'>;
  /**
   * E · A, the force that would stretch the leg by its own length: see {@link chainStiffness}. It decides only how legs
   * share that balance alone leaves open; left out for all, they are taken as alike.
   */
  readonly axialStiffness?: QuantityInput<'force'>;
}

/** One leg at rest. */
export interface LegTension {
  readonly id: string;
  /** The greatest that it may have to carry, between rigid legs and a rigid load: what it must be rated for. */
  readonly tension: Quantity<'lbf' | 'kN'>;
  /** With legs that stretch by their stiffness, at their stated lengths; null where a stiffness is missing. */
  readonly elasticTension: Quantity<'lbf' | 'kN'> | null;
  /** True angle at rest, in degrees. */
  readonly angle: { readonly fromHorizontal: Quantity<'deg'> };
  readonly length: Quantity<'ft' | 'm'>;
  /** True when it hangs slack: longer than the way to the hook by more than legs may differ. */
  readonly slack: boolean;
}

export interface SlingTensions extends ResultBase<'slingTensions'> {
  /**
   * `rests`: every leg may carry. `leg-slack`: it rests on some of the legs, the others carry nothing. `unstable`: the
   * center of gravity is not below the picks that would carry it, and the load rolls over.
   */
  readonly outcome: 'rests' | 'leg-slack' | 'unstable';
  /** Empty where it is unstable. */
  readonly legs: readonly LegTension[];
  /** True where balance alone says what each leg carries; false where more legs than that are taut. */
  readonly determinate: boolean | null;
  /** How far the load turns from the way it stood until it hangs at rest, 0 to 90 degrees. */
  readonly tilt: Quantity<'deg'> | null;
  /** The leg whose pick point has gone down most; null where the load hangs as it stood. */
  readonly lowest: string | null;
  /** Where the hook is, in the axes of the load. */
  readonly hook: readonly Quantity<'ft' | 'm'>[] | null;
  /** The true vertical in the axes of the load, a unit vector. */
  readonly up: readonly number[] | null;
  readonly missing: readonly Note[];
}

export interface SlingTensionsInput {
  readonly load: LiftedLoad;
  /** One to four legs that meet in one hook. */
  readonly legs: readonly SlingLeg[];
  /** Where the hook is over the load as it stands, in place of the lengths of the legs. */
  readonly hook?: Point;
  /** `'us'` (lbf, ft) or `'si'` (kN, m); omitted: the system that all inputs share. */
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

/**
 * What each leg of a sling carries, and how the load hangs: one to four legs of given lengths, picks at any heights,
 * the center of gravity anywhere.
 *
 * Under a hook the load turns until its center of gravity G hangs straight below the hook h, as deep as the legs let
 * it: |h - G| is greatest while |h - P| <= S for every leg. There Σ T u = W up, u the direction of a leg from its pick
 * P to the hook. Up to three legs that do not lie in one plane are told by balance alone. Beyond that, `tension` is
 * the greatest over all states in which a leg hangs slack, as the length of a leg is never exact (with four legs alike
 * over a rectangle two in a diagonal carry all), and `elasticTension` shares by stretch, T = (E A / S) · stretch.
 *
 * @param input.load `{ mass, centerOfGravity: [x, y, z] }`, as it stands before the lift
 * @param input.legs `{ id, at: [x, y, z], length, axialStiffness? }`, one to four; no two at one point
 * @param input.hook `[x, y, z]` in place of the lengths; where it is not over the center of gravity the load still tilts
 * @param input.units `'us'` or `'si'`
 * @throws RiggingError `EMPTY_LIST`, `TOO_LARGE`, `DUPLICATE_ID`, `MISSING_FIELD`, `CONFLICTING_FIELDS`, `NOT_POSITIVE`,
 * `WRONG_KIND`, `UNITS_REQUIRED`, `IMPOSSIBLE_GEOMETRY` where no hook is within reach of every leg, or a leg is so long
 * that it can never come taut
 * @validity a rigid load at rest and straight legs, weightless beside it; swing, snatch and wind add to it
 * @source statics; EN 818-4:1996 Table 2 for how much legs may differ in length
 * @example
 * slingTensions({
 *   load: { mass: '6000 lb', centerOfGravity: ['0 ft', '0 ft', '-1 ft'] },
 *   legs: [{ id: 'near', at: ['-2 ft', '0 ft', '0 ft'] }, { id: 'far', at: ['6 ft', '0 ft', '0 ft'] }],
 *   hook: ['0 ft', '0 ft', '6 ft'],
 * }).legs.map(({ tension }) => tension.value.toFixed(1))
 * // => [ '4743.4', '2121.3' ]
 */
export function slingTensions(input: SlingTensionsInput): SlingTensions {
  checkObject(input, '', '{ load, legs }');
  const { load } = input;
  checkObject(load, 'load', '{ mass, centerOfGravity }');
  const mass = readPositive(load.mass, 'mass', 'load.mass');
  const centerOfGravity = readPoint(load.centerOfGravity, 'load.centerOfGravity');
  const given: QuantityLike[] = [mass];
  const legs = readLegs(input, given);
  const us = sharedUnits(input.units, given) === 'us';
  const length = (meters: number) => inUnit({ value: meters, unit: 'm' }, us ? 'ft' : 'm');
  const force = (newtons: number) => inUnit({ value: newtons, unit: 'N' }, us ? 'lbf' : 'kN');

  const working = new Working(input.working !== false);
  working.cautions.push(AT_REST, STAY_CLEAR);
  const weight = inUnit(mass, 'kg').value * STANDARD_GRAVITY;
  working.step('load', 'W', 'm · g', { m: mass, g: { value: STANDARD_GRAVITY, unit: 'm/s2' } }, force(weight));
  const hanging = { weight, centerOfGravity, legs };
  const found = hang(hanging);
  if (found.outcome === 'does-not-close') {
    return fail(
      'IMPOSSIBLE_GEOMETRY',
      'legs',
      'legs long enough to meet in one hook',
      'legs that do not meet',
      REMEASURE,
    );
  }
  if (found.outcome === 'rolls-over') {
    working.cautions.push(note('LOAD_ROLLS_OVER'));
    const nothing = { determinate: null, tilt: null, lowest: null, hook: null, up: null, missing: [] };
    return makeResult('slingTensions', { outcome: 'unstable' as const, legs: [], ...nothing }, input, working);
  }

  const { hook, up, gaps } = found;
  const allowance = allowedDifference(legs);
  const sharing = shareLoad(hanging, found, allowance);
  if (!(sharing.residual <= GREATEST_RESIDUAL)) {
    return fail('IMPOSSIBLE_GEOMETRY', 'legs', 'legs whose balance can be told', 'legs almost in line', REMEASURE);
  }
  const answers = legs.map(({ id, at, length: long }, index): LegTension => {
    const elastic = sharing.elastic?.[index];
    return {
      id,
      tension: force(sharing.greatest[index]!),
      elasticTension: elastic === undefined ? null : force(elastic),
      angle: { fromHorizontal: new Quantity(angleOf(subtract(hook, at), up), 'deg') },
      length: length(long),
      slack: gaps[index]! > allowance,
    };
  });
  const tilt = degreesOf(Math.atan2(Math.hypot(up[0], up[1]), up[2]));
  const tilted = tilt > LEVEL;
  const risen = legs.map(({ at }) => dot(up, at) - at[2]);
  const lowest = legs.find((_, index) => risen[index]! <= Math.min(...risen) + ROUNDING)!.id;
  const hookAt = hook.map((coordinate) => length(tidy(coordinate)));
  const depth = length(lengthOf(subtract(hook, centerOfGravity)));
  if (working.shown) showRest(working, answers, found, sharing, { tilt, depth, hook: hookAt });
  const missing: Note[] = [];
  if (!sharing.determinate) {
    working.cautions.push(note('LEGS_SHARE_BY_A_HAIR', { allowance: length(allowance) }));
    working.cite(legLength.source);
    if (sharing.elastic === undefined) missing.push(note('LEG_STIFFNESS_NOT_STATED'));
    else if (legs.every(({ axialStiffness }) => axialStiffness === undefined)) {
      working.assumptions.push(note('LEGS_OF_ONE_STIFFNESS'));
    }
  }
  if (tilted) working.cautions.push(note('LOAD_TILTS', { tilt: new Quantity(tilt, 'deg'), leg: lowest }));
  const slack = answers.some((leg) => leg.slack);
  return makeResult(
    'slingTensions',
    {
      outcome: slack ? ('leg-slack' as const) : ('rests' as const),
      legs: answers,
      determinate: sharing.determinate,
      tilt: new Quantity(tilted ? tilt : 0, 'deg'),
      lowest: tilted ? lowest : null,
      hook: hookAt,
      up: up.map(tidy),
      missing,
    },
    input,
    working,
  );
}

interface ReadLeg extends HangingLeg {
  readonly id: string;
}

/** Reads the legs; every quantity that has a unit system goes to `given`. */
function readLegs({ legs, hook }: SlingTensionsInput, given: QuantityLike[]): ReadLeg[] {
  checkList(legs, 'legs');
  checkIds(legs, 'legs');
  if (legs.length > MOST_LEGS) {
    fail('TOO_LARGE', 'legs', `at most ${MOST_LEGS} legs`, legs.length, 'Two slings have two hooks.');
  }
  const over = hook === undefined ? undefined : readPoint(hook, 'hook');
  const read = mapAt(legs, 'legs', (leg): ReadLeg => {
    const at = readPoint(leg.at, 'at');
    const stiffness = readOptional(leg.axialStiffness, 'force', 'axialStiffness');
    const rest = stiffness === undefined ? {} : { axialStiffness: inUnit(stiffness, 'N').value };
    if (over !== undefined) {
      if (leg.length !== undefined) {
        fail('CONFLICTING_FIELDS', 'length', 'the hook or the lengths of the legs', 'both', 'Leave one of them out.');
      }
      const length = lengthOf(subtract(over, at));
      if (length === 0) fail('IMPOSSIBLE_GEOMETRY', 'at', 'a pick apart from the hook', 'one point', REMEASURE);
      return { id: leg.id, at, length, ...rest };
    }
    const length = readPositive(leg.length, 'length', 'length');
    given.push(length);
    return { id: leg.id, at, length: inUnit(length, 'm').value, ...rest };
  });
  for (let index = 1; index < read.length; index++) {
    for (let other = 0; other < index; other++) checkTriangle(read[index]!, read[other]!, index);
  }
  return read;
}

const MOST_LEGS = 4;

/** Two legs and the line between their picks make a triangle, or they do not meet, or one of them never comes taut. */
function checkTriangle(leg: ReadLeg, other: ReadLeg, index: number): void {
  const apart = lengthOf(subtract(leg.at, other.at));
  const [least, most] = [Math.abs(leg.length - other.length), leg.length + other.length];
  if (apart > least + ROUNDING && apart < most - ROUNDING) return;
  const wanted = `a pick from ${least} to ${most} m away from that of ${other.id}, so that both legs can come taut`;
  fail('IMPOSSIBLE_GEOMETRY', `legs[${index}]`, wanted, `${apart} m`, REMEASURE);
}

const REMEASURE = 'Measure the legs and the pick points again.';

/** How much the legs of one sling may differ in length, mechanically joined, m. */
function allowedDifference(legs: readonly HangingLeg[]): number {
  const { short_mm, long_mm_per_m } = legLength.rows.mechanical;
  const longest = Math.max(...legs.map(({ length }) => length));
  return Math.max(short_mm, long_mm_per_m * longest) / 1000;
}

/** The angle of a leg from the horizontal. */
function angleOf(leg: Vec3, up: Vec3): number {
  return degreesOf(Math.atan2(dot(leg, up), lengthOf(cross(leg, up))));
}

const degreesOf = (radians: number) => (radians * 180) / Math.PI;

/** A smaller tilt is rounding, degrees. */
const LEVEL = 1e-6;

/** A smaller length is rounding, m. */
const ROUNDING = 1e-9;

const tidy = (value: number) => (Math.abs(value) < ROUNDING ? 0 : value);

function showRest(
  working: Working,
  answers: readonly LegTension[],
  { up }: Rest,
  { determinate }: Sharing,
  shown: { readonly tilt: number; readonly depth: QuantityLike; readonly hook: readonly QuantityLike[] },
): void {
  const [x, y, z] = shown.hook as [QuantityLike, QuantityLike, QuantityLike];
  working.step('load', '|h - G|', 'greatest with |h - P| <= S for every leg, at h', { x, y, z }, shown.depth);
  const values = { x: tidy(up[0]), y: tidy(up[1]), z: up[2] };
  working.step('load', 'tilt', 'atan(√(x² + y²) / z), of the true vertical', values, {
    value: shown.tilt,
    unit: 'deg',
  });
  const expression = determinate ? 'Σ T u = W up' : 'greatest of every Σ T u = W up with legs slack';
  for (const { id, tension, angle, length } of answers) {
    working.step(`leg ${id}`, 'T', expression, { S: length, 'angle from horizontal': angle.fromHorizontal }, tension);
  }
}

const AT_REST: Note = /* @__PURE__ */ note('TENSIONS_AT_REST');
const STAY_CLEAR: Note = /* @__PURE__ */ note('STAY_CLEAR_OF_LOAD');
