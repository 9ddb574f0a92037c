import type { Vec3 } from '../../statics/vector.js';
import type { PullScene, SceneLoad } from './scene.js';

// Where everything stands, in the axes of a drawing: x forward, z up, in meters, from the ground under the rear axle.
// A slope turns the tractor about that point. Sizes that nobody gave follow from the wheelbase, and are drawn dashed.

/** A line round something or through it, or a circle; `isKnown` where its size was given. */
export type Shape =
  | { readonly points: readonly Vec3[]; readonly isOpen?: boolean; readonly isKnown?: boolean }
  | { readonly center: Vec3; readonly radius: number; readonly isKnown?: boolean };

export interface PullPlaces {
  /** Unit steps forward along the ground of the tractor, and up square to it. */
  readonly along: Vec3;
  readonly up: Vec3;
  readonly rearContact: Vec3;
  readonly frontContact: Vec3;
  readonly centerOfGravity: Vec3;
  readonly hitch: Vec3;
  /** On the ground under the hitch. */
  readonly underHitch: Vec3;
  /** A unit step along the chain, from the hitch to the load. */
  readonly chain: Vec3;
  /** Where the chain meets the load. */
  readonly attachment: Vec3;
  /** A unit step along the ground of the load, away from the tractor. */
  readonly away: Vec3;
  readonly tractor: readonly Shape[];
  readonly load: readonly Shape[];
  readonly loadLength: number;
  readonly ground: readonly Vec3[];
  /** How far the ground of the load lies above that of the tractor, for the chain to reach it. */
  readonly loadAbove: number;
}

const plus = (from: Vec3, ...steps: readonly (readonly [step: Vec3, by: number])[]): Vec3 =>
  steps.reduce<Vec3>(([x, y, z], [step, by]) => [x + step[0] * by, y + step[1] * by, z + step[2] * by], from);

const ORIGIN: Vec3 = [0, 0, 0];

/** Shares of the wheelbase L: what a compact tractor looks like. */
const REAR_RADIUS = 0.36;
const HITCH_BEYOND = 0.4;
const LOAD_LENGTH = 1.6;
const LOAD_HEIGHT = 0.85;
const LOG_LENGTH = 2.4;
const LOG_DIAMETER = 0.25;

/** Hood, seat and fender of a tractor as L wide and as high as its rear wheel stands: its outline from the front round. */
const BODY = [
  [1.24, 0.38],
  [1.24, 0.66],
  [1.14, 0.72],
  [0.42, 0.78],
  [0.34, 0.52],
  [0.16, 0.52],
  [0.1, 0.76],
  [-0.2, 0.76],
  [-0.32, 0.5],
  [-0.2, 0.38],
] as const;
const ROLL_BAR = [
  [-0.1, 0.76],
  [-0.16, 1.24],
] as const;
const TRACK = [
  [1.1, 0],
  [1.22, 0.2],
  [1.1, 0.4],
  [-0.1, 0.4],
  [-0.22, 0.2],
  [-0.1, 0],
] as const;

/** The places of a pull. */
export function placesOf(scene: PullScene): PullPlaces {
  const { slope, tractor, hitch, gap } = scene;
  const L = tractor.wheelbase;
  const along: Vec3 = [Math.cos(slope), 0, Math.sin(slope)];
  const up: Vec3 = [-Math.sin(slope), 0, Math.cos(slope)];
  const at = (forward: number, high: number): Vec3 => plus(ORIGIN, [along, forward], [up, high]);
  const sign = hitch.forward ? 1 : -1;
  const beyond = hitch.beyond ?? HITCH_BEYOND * L;
  const hitchForward = hitch.forward ? L + beyond : -beyond;
  const point = at(hitchForward, hitch.height);
  const chain = plus(ORIGIN, [along, sign * Math.cos(hitch.below)], [up, -Math.sin(hitch.below)]);
  const attachment = plus(point, [chain, gap.meters]);
  const load = loadAt(scene, attachment, sign, hitch.height - gap.meters * Math.sin(hitch.below));
  const rear = radiusOf(scene);
  const far = hitch.forward ? at(-0.6 * L, 0) : at(1.6 * L, 0);
  const underHitch = at(hitchForward, 0);
  return {
    along,
    up,
    rearContact: ORIGIN,
    frontContact: at(L, 0),
    centerOfGravity: at(tractor.ahead, tractor.height ?? 1.5 * rear),
    hitch: point,
    underHitch,
    chain,
    attachment,
    ...load,
    tractor: tractorShapes(scene, at),
    ground: [far, plus(underHitch, [along, sign * Math.min(0.2 * L, gap.meters / 4)]), ...load.ground],
  };
}

/** As high as its rear axle, which is its loaded radius. */
const radiusOf = ({ tractor }: PullScene): number => tractor.rearAxleHeight ?? REAR_RADIUS * tractor.wheelbase;

function tractorShapes(scene: PullScene, at: (forward: number, high: number) => Vec3): Shape[] {
  const L = scene.tractor.wheelbase;
  const rear = radiusOf(scene);
  const line = (points: readonly (readonly [number, number])[]) =>
    points.map(([forward, high]) => at(forward * L, (high / REAR_RADIUS) * rear));
  const body: Shape[] = [{ points: line(ROLL_BAR), isOpen: true }, { points: line(BODY) }];
  if (scene.tractor.drive === 'tracks') return [...body, { points: line(TRACK) }];
  const isKnown = scene.tractor.rearAxleHeight !== undefined;
  const front = 0.6 * rear;
  return [...body, { center: at(0, rear), radius: rear, isKnown }, { center: at(L, front), radius: front }];
}

type LoadPlaces = Pick<PullPlaces, 'away' | 'load' | 'loadLength' | 'ground' | 'loadAbove'>;

/** The load behind the end of the chain; `high` is how far that end is above the ground of the tractor, drawn on. */
function loadAt({ load, tractor, gap }: PullScene, attachment: Vec3, sign: number, high: number): LoadPlaces {
  const L = tractor.wheelbase;
  const away: Vec3 = [sign * Math.cos(load.slope), 0, -Math.sin(load.slope)];
  const up: Vec3 = [sign * Math.sin(load.slope), 0, Math.cos(load.slope)];
  const diameter = load.diameter ?? LOG_DIAMETER * L;
  const isLog = load.kind === 'log';
  const tall = isLog ? diameter : LOAD_HEIGHT * L - sunk(load, L);
  const length = (isLog ? LOG_LENGTH : LOAD_LENGTH) * L;
  // the chain meets the load between its foot and its top; the ground of the load lies where that makes it lie
  const above = load.isLifted ? Math.max(high, diameter / 2) : Math.min(Math.max(high, 0.1 * tall), 0.9 * tall);
  const foot = plus(attachment, [up, -above]);
  const at = (back: number, height: number): Vec3 => plus(foot, [away, back], [up, height]);
  const shapes = isLog ? logShapes(load, diameter, length, above, at) : machineShapes(load, L, length, at);
  return {
    away,
    load: shapes,
    loadLength: length,
    ground: [plus(foot, [away, -Math.min(0.2 * L, gap.meters / 4)]), plus(foot, [away, length + 0.3 * L])],
    loadAbove: high - above,
  };
}

type Place = (back: number, height: number) => Vec3;

function logShapes(load: SceneLoad, diameter: number, length: number, above: number, at: Place): Shape[] {
  const lift = load.isLifted ? above - diameter / 2 : 0;
  return [{ points: [at(0, lift), at(0, lift + diameter), at(length, diameter), at(length, 0)] }];
}

/** How deep the mud takes it down. */
function sunk({ depth }: Pick<SceneLoad, 'depth'>, L: number): number {
  return depth === undefined ? 0 : { wheel: 0.14, fender: 0.3, cab: 0.55 }[depth] * L;
}

function machineShapes(load: SceneLoad, L: number, length: number, at: Place): Shape[] {
  const down = sunk(load, L);
  const radius = 0.15 * L;
  const tall = LOAD_HEIGHT * L;
  const isOver = load.kind === 'overturned';
  const [low, high] = isOver ? [0, tall - 1.2 * radius] : [1.2 * radius - down, tall - down];
  // nosed in, its far end goes down
  const dip = load.kind === 'nosed-in-ditch' ? 0.5 * tall : 0;
  const lean = (back: number, height: number) => at(back, height - (dip * back) / length);
  const wheelAt = isOver ? tall - radius : radius - down;
  return [
    { points: [lean(0, low), lean(0, high), lean(length, high), lean(length, low)] },
    ...[0.22, 0.78].map((share) => ({ center: lean(share * length, wheelAt), radius })),
  ];
}
