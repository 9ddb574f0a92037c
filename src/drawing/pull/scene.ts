import { fail } from '../../errors.js';
import { checkObject, checkOneOf } from '../../input-checks.js';
import type { PullPlan } from '../../pulling/plan-pull.js';
import { readStandoff } from '../../pulling/pull-chain-length.js';
import { type HitchKind, pullsInReverse, readHitch } from '../../pulling/tractor/hitch.js';
import { type Drive, readAngle, readTractor } from '../../pulling/tractor/tractor.js';
import { inUnit } from '../../quantities/convert.js';
import type { Quantity, QuantityLike } from '../../quantities/quantity.js';
import { readOptional, readPositive } from '../../quantities/read.js';
import { sharedUnits } from '../../quantities/shared-units.js';
import type { UnitSystem } from '../../quantities/units.js';
import { Working } from '../../working/step.js';
import { FARTHEST } from '../scene.js';

/** What of a pull has a measure, in meters and radians: along the ground from the rear axle, and square to the ground. */
export interface PullScene {
  readonly units: UnitSystem;
  /** Nose up positive. */
  readonly slope: number;
  readonly tractor: SceneTractor;
  readonly hitch: SceneHitch;
  readonly load: SceneLoad;
  /** From the hitch to the load, along the chain. */
  readonly gap: SceneGap;
}

interface SceneTractor {
  readonly mass: Quantity;
  readonly wheelbase: number;
  /** Center of gravity ahead of the rear axle. */
  readonly ahead: number;
  readonly height?: number;
  readonly rearAxleHeight?: number;
  readonly trackWidth?: number;
  readonly drive: Drive;
}

interface SceneHitch {
  readonly kind: HitchKind;
  readonly height: number;
  /** Beyond the axle that is nearest to it; absent where the plan does not say. */
  readonly beyond?: number;
  /** The chain leads ahead, and the tractor pulls in reverse. */
  readonly forward: boolean;
  /** Of the chain below the line of the tractor. */
  readonly below: number;
}

export interface SceneLoad {
  readonly kind: PullPlan['load']['kind'];
  readonly mass: Quantity;
  /** Of its ground, up toward the tractor. */
  readonly slope: number;
  /** Mired: how deep. */
  readonly depth?: 'wheel' | 'fender' | 'cab';
  /** A log with one end held up. */
  readonly isLifted: boolean;
  /** Of what the chain goes round. */
  readonly diameter?: number;
}

interface SceneGap {
  readonly is: 'standoff' | 'chain' | 'unknown';
  readonly meters: number;
}

/** What holds a load, in words by its kind. */
export const LOADS = {
  rolling: 'on its wheels',
  mired: 'mired',
  overturned: 'overturned',
  'nosed-in-ditch': 'nosed in a ditch',
  'soft-ground': 'on soft ground',
  log: 'a log',
};
export const DEPTHS = { wheel: 'mired to the hubs', fender: 'mired to the fenders', cab: 'mired to the cab' };

/** Reads what can be drawn of a pull; `asked` are the units of the drawing, where somebody says. */
export function readPullScene(plan: PullPlan, asked: UnitSystem | undefined): PullScene {
  checkObject(plan, '', '{ tractor, hitch, load, chain }');
  const working = new Working(false);
  const given = readTractor(plan.tractor, working);
  const slope = plan.slope === undefined ? 0 : readAngle(plan.slope, 'slope') * (pullsInReverse(plan.hitch) ? -1 : 1);
  const hitch = readHitch(
    { hitch: plan.hitch, ...(plan.chainAngle && { chainAngle: plan.chainAngle }) },
    slope,
    false,
    working,
  );
  const axle = readOptional(plan.rearAxleHeight, 'length', 'rearAxleHeight');
  const gap = readGap(plan, given.wheelbase);
  const load = readLoad(plan);
  const { wheelbase, ahead, height, track, drive } = given;
  const farthest = {
    tractor: Math.max(wheelbase, Math.abs(ahead), height ?? 0, track ?? 0),
    hitch: Math.max(Math.abs(hitch.beyond), hitch.height),
    rearAxleHeight: axle === undefined ? 0 : metersOf(axle),
    [gap.is === 'standoff' ? gap.is : 'chain.length']: gap.meters,
    ends: load.diameter ?? 0,
  };
  for (const [path, meters] of Object.entries(farthest)) {
    if (meters <= FARTHEST) continue;
    fail('IMPOSSIBLE_GEOMETRY', path, `at most ${FARTHEST} m`, `${meters} m`, 'Check the number and its unit.');
  }
  const { behindAxle, aheadOfFrontAxle } = plan.hitch;
  return {
    units: sharedUnits(asked, [...given.given, ...hitch.given, axle, ...gap.given, load.mass]),
    slope,
    tractor: {
      mass: readPositive(plan.tractor.mass, 'mass', 'tractor.mass'),
      wheelbase,
      ahead,
      ...(height !== undefined && { height }),
      ...(axle && { rearAxleHeight: metersOf(axle) }),
      ...(track !== undefined && { trackWidth: track }),
      drive,
    },
    hitch: {
      kind: hitch.kind,
      height: hitch.height,
      ...((behindAxle ?? aheadOfFrontAxle) !== undefined && { beyond: hitch.beyond }),
      forward: hitch.forward,
      below: hitch.below,
    },
    load,
    gap: { is: gap.is, meters: gap.meters },
  };
}

const metersOf = (length: QuantityLike): number => inUnit(length, 'm').value;

/** The standoff; without one the whole chain, and where that is not known either, twice the wheelbase. */
function readGap(
  { standoff, chain }: PullPlan,
  wheelbase: number,
): SceneGap & { readonly given: readonly QuantityLike[] } {
  const stated = readStandoff(standoff);
  if (stated.meters !== undefined) return { is: 'standoff', meters: stated.meters, given: stated.given };
  const length = chain === undefined ? undefined : readOptional(chain.length, 'length', 'chain.length');
  return length === undefined
    ? { is: 'unknown', meters: 2 * wheelbase, given: [] }
    : { is: 'chain', meters: metersOf(length), given: [length] };
}

function readLoad({ load, ends }: PullPlan): SceneLoad {
  checkObject(load, 'load', '{ kind, mass }');
  checkOneOf(load.kind, Object.keys(LOADS), 'load.kind');
  if (load.kind === 'mired') checkOneOf(load.depth, Object.keys(DEPTHS), 'load.depth');
  const onSlope = load.kind !== 'overturned' && load.kind !== 'nosed-in-ditch' && load.slope !== undefined;
  const around = Array.isArray(ends) ? ends.findIndex((end) => end?.at === 'choker' || end?.at === 'cylinder') : -1;
  const end = around < 0 ? undefined : (ends[around] as { readonly diameter?: unknown });
  return {
    kind: load.kind,
    mass: readPositive(load.mass, 'mass', 'load.mass'),
    slope: onSlope ? readAngle(load.slope, 'load.slope') : 0,
    ...(load.kind === 'mired' && { depth: load.depth }),
    isLifted: load.kind === 'log' && load.lift === 'one-end',
    ...(end && { diameter: metersOf(readPositive(end.diameter, 'length', `ends[${around}].diameter`)) }),
  };
}
