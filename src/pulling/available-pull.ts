import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityInput } from '../quantities/quantity.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { STAND_CLEAR } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import type { RollingResistance } from './resistance/rolling.js';
import { type Engine, type ReadEngine, readEngine } from './traction/engine.js';
import { type Grip, type GripRatios, readTraction, type Traction } from './traction/traction.js';
import { type ChainAngle, type Hitch, readHitch } from './tractor/hitch.js';
import { axleLoads, type PullBalance, pullBalance, searchPull, solvePull } from './tractor/pull-balance.js';
import { type Drive, readSlope, readTractor, type Tractor } from './tractor/tractor.js';

export interface AvailablePullInput {
  readonly tractor: Tractor;
  readonly hitch: Hitch;
  readonly traction: Traction;
  /** Of the tractor itself; needed beside a gross coefficient, undriven wheels or an engine. */
  readonly rolling?: RollingResistance;
  readonly engine?: Engine;
  /** Left out, along the ground. */
  readonly chainAngle?: ChainAngle;
  /** What the load puts on the hitch, square to the ground, such as one end of a log; left out, nothing. */
  readonly weightOnHitch?: QuantityInput<'force'>;
  /** Nose up positive; left out, level. */
  readonly slope?: QuantityInput<'angle'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

/** What can end a pull. */
export type PullLimitName = 'traction' | 'engine-power' | 'thrust-limit' | 'front-lift' | 'rear-lift';

type Force = Quantity<'lbf' | 'kN'>;

export interface PullLimit {
  readonly limit: PullLimitName;
  /** Null where it never ends this pull; zero where it leaves nothing to pull with. */
  readonly pull: Force | null;
}

export interface AvailablePull extends ResultBase<'availablePull'> {
  /** `cannot-move-itself`: slope and rolling take all it has. `tips-…`: an axle carries nothing without any pull. */
  readonly outcome: 'pulls' | 'cannot-move-itself' | 'tips-rearward' | 'tips-forward';
  /** Along the chain, to count on: the low end where the sources give a range. Null where it cannot pull. */
  readonly pull: Force | null;
  readonly governs: PullLimitName | null;
  readonly limits: readonly PullLimit[];
  /** At the high end of the range; only where there is one. */
  readonly atBest?: { readonly pull: Force | null; readonly governs: PullLimitName | null };
  /** What the axles carry, square to the ground, under the pull; without one where it cannot pull. */
  readonly frontReaction: Force;
  readonly rearReaction: Force;
}

/**
 * The pull that a tractor can give through a chain: the least of what its wheels grip, what its engine or gear pushes with
 * and what lifts an axle. The rigging is no part of it.
 *
 * Traction, with chain and slope in line: P · cos β = Σ net · R(driven) − Σ f · R(undriven) − W · sin α, where net = μ − f for
 * a gross coefficient. The reactions follow from the pull, R_f = (W · (x · cos α − z · sin α) − P · (h · cos β + c · sin β)) / L
 * and R_r = W · cos α + P · sin β − R_f, so P is solved for, not guessed. Level, rear wheels, chain along the ground:
 * P = W · (net · (1 − x/L) − f · x/L) / (1 − (net + f) · h/L). Power: F = η · P / v on the ground, less rolling and slope.
 * An axle lifts at R = 0.
 *
 * @param input.tractor `{ mass, frontAxleMass or centerOfGravityAhead, wheelbase, drive }`, on a slope with its
 * `centerOfGravityHeight`
 * @param input.hitch kind, and height above the GROUND; `behindAxle` where the chain slopes. On a front hitch the tractor
 * pulls in reverse, with `aheadOfFrontAxle`. Whether a chain may be hooked there is {@link hitchStability}
 * @param input.traction `{ surface }` of the table; `{ coefficient, kind: 'gross' | 'net' }`; or `{ soil, slip, construction,
 * tires? }` by ASABE D497, with `coneIndex` in place of the soil
 * @param input.rolling of the tractor: `{ surface }`, `{ penetration }` or `{ coefficient }`; not beside D497
 * @param input.engine `{ power, speed, efficiency }`, `{ thrustLimit }` or both; omitted: not checked
 * @param input.chainAngle `{ belowTractorLine }` or `{ belowHorizontal }`; omitted: along the ground
 * @param input.weightOnHitch what the load itself puts on the hitch, such as one end of a log; omitted: nothing
 * @param input.slope nose up positive; omitted: level
 * @param input.units `'us'` (lbf) or `'si'` (kN); omitted: the system that all inputs share
 * @throws RiggingError `MISSING_FIELD` (a field; rolling resistance beside a gross coefficient, undriven wheels or an
 * engine; the height of the center of gravity on a slope; `thrustLimit` below 2 km/h), `CONFLICTING_FIELDS`,
 * `NO_VALUE_IN_TABLE`, `UNKNOWN_VALUE`, `NOT_POSITIVE`, `NEGATIVE`, `NOT_FINITE`, `TOO_LARGE` (percent for a fraction),
 * `IMPOSSIBLE_GEOMETRY`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity a slow, steady pull in line; differentials locked or grip alike on both sides: an open one is capped by the
 * wheel with less grip. A jerk is {@link shockTension}. Thrust at the front wheels of all-wheel drive is taken as at the rear
 * @source statics: derived; coefficients of traction: earthmoving texts and FM 5-434, from memory, and worksheets that were
 * read; soil: ASABE D497, from memory
 * @example
 * availablePull({
 *   tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
 *   hitch: { kind: 'drawbar', height: '15 in' },
 *   traction: { coefficient: 0.55, kind: 'net' },
 *   rolling: { coefficient: 0.05 },
 * }).pull?.value.toFixed(0)
 * // => '1306'
 */
export function availablePull(input: AvailablePullInput): AvailablePull {
  checkObject(input, '', '{ tractor, hitch, traction }');
  const working = new Working(input.working !== false);
  const tractor = readTractor(input.tractor, working);
  const slope = readSlope(input.slope, working);
  if (slope !== 0 && tractor.height === undefined) {
    const remedy = 'On a slope it shifts load from axle to axle.';
    fail('MISSING_FIELD', 'tractor.centerOfGravityHeight', 'its height, on a slope', undefined, remedy);
  }
  const chain = readHitch(input, slope, false, working);
  const engine = input.engine === undefined ? undefined : readEngine(input.engine, working);
  const thrustIsGiven = engine?.byPower?.at === 'ground' || engine?.thrustLimit !== undefined;
  const traction = readTraction(input.traction, input.rolling, tractor.drive, thrustIsGiven, working);
  const units = sharedUnits(input.units, [...tractor.given, ...chain.given, ...(engine?.given ?? [])]);
  const unit = units === 'us' ? 'lbf' : 'kN';
  const force = (newtons: number): Force => inUnit({ value: newtons, unit: 'N' }, unit);

  const balance = pullBalance(tractor, chain, slope);
  const { tips } = balance;
  const weakestWith = (grip: Grip | undefined): Weakest | undefined =>
    tips || !grip ? undefined : weakestOf(limitsOf(balance, grip, tractor.drive, chain.forward, engine));
  const least = weakestWith(traction.least);
  const most = weakestWith(traction.most);
  const pull = Math.max(0, least?.pull ?? 0);
  const { near, far } = tips ? balance : axleLoads(balance, pull);
  const [front, rear] = chain.forward ? [near, far] : [far, near];
  if (working.shown && least !== undefined) showLimits(working, least.limits, traction.least, force);
  const frontReaction = force(front);
  const rearReaction = force(rear);
  if (working.shown) {
    const length = (meters: number) => inUnit({ value: meters, unit: 'm' }, units === 'us' ? 'in' : 'mm');
    const W = force(tractor.weight);
    const P = force(pull);
    const α = { value: slope, unit: 'rad' } as const;
    const β = { value: chain.below, unit: 'rad' } as const;
    const x = length(chain.forward ? tractor.wheelbase - tractor.ahead : tractor.ahead);
    const V = chain.press === 0 ? undefined : force(chain.press);
    const places = {
      x,
      ...(tractor.height !== undefined && { z: length(tractor.height) }),
      h: length(chain.height),
      c: length(chain.beyond),
    };
    const values = { W, P, α, β, ...(V && { V }), ...places, L: length(tractor.wheelbase) };
    const [lifted, pressed] = chain.forward ? ['R_r', 'R_f'] : ['R_f', 'R_r'];
    const sign = chain.forward ? '+' : '−';
    const moments = `(W · (x · cos α ${sign} z · sin α)${V ? ' − V · c' : ''} − P · (h · cos β + c · sin β)) / L`;
    working.step('tractor', lifted as string, moments, values, force(far));
    working.step(
      'tractor',
      pressed as string,
      `W · cos α${V ? ' + V' : ''} + P · sin β − ${lifted}`,
      { W, P, α, β, ...(V && { V }) },
      force(near),
    );
  }
  working.cite(STATICS);
  if (engine === undefined) working.assumptions.push(ENGINE_NOT_CHECKED);
  if (least?.governs === 'front-lift' || least?.governs === 'rear-lift') working.cautions.push(LIFT_GOVERNS);
  working.cautions.push(RIGGING_NOT_COUNTED, STEADY_PULL, STAND_CLEAR);
  const answer = (found: Weakest | undefined) => {
    const pulls = found !== undefined && found.pull > 0;
    return { pull: pulls ? force(found.pull) : null, governs: pulls ? found.governs : null };
  };
  return makeResult(
    'availablePull',
    {
      outcome: tips ?? (pull > 0 ? ('pulls' as const) : ('cannot-move-itself' as const)),
      ...answer(least),
      limits: (least?.limits ?? []).map(({ limit, newtons }) => ({
        limit,
        pull: newtons < Number.POSITIVE_INFINITY ? force(Math.max(0, newtons)) : null,
      })),
      ...(most && { atBest: answer(most) }),
      frontReaction,
      rearReaction,
    },
    input,
    working,
  );
}

interface Limit {
  readonly limit: PullLimitName;
  /** Zero or less: nothing is left to pull with. Infinite: it never ends this pull. */
  readonly newtons: number;
}

interface Weakest {
  readonly limits: readonly Limit[];
  /** In newtons. */
  readonly pull: number;
  readonly governs: PullLimitName;
}

/** What is left along the ground of each newton on an axle. */
type Share = (ratios: GripRatios, driven: boolean) => number;

const GRIP: Share = ({ net, freeRolling }, driven) => (driven ? net : -freeRolling);
const ROLLING: Share = ({ drivenRolling, freeRolling }, driven) => -(driven ? drivenRolling : freeRolling);
const NOTHING: Share = () => 0;

function limitsOf(
  balance: PullBalance,
  grip: Grip,
  drive: Drive,
  forward: boolean,
  engine: ReadEngine | undefined,
): Limit[] {
  const pullWith = (thrust: number, share: Share): number => {
    const nearDriven = drive !== 'rear-wheels' || !forward;
    const farDriven = drive !== 'rear-wheels' || forward;
    if ('ratios' in grip) {
      return solvePull(balance, thrust, share(grip.ratios, nearDriven), share(grip.ratios, farDriven));
    }
    const [nearAxle, farAxle] = forward ? (['front', 'rear'] as const) : (['rear', 'front'] as const);
    const of = (axle: 'front' | 'rear', load: number, driven: boolean) =>
      load > 0 ? load * share(grip.ratiosAt(axle, load), driven) : 0;
    return searchPull(balance, (near, far) => thrust + of(nearAxle, near, nearDriven) + of(farAxle, far, farDriven));
  };
  const limits: Limit[] = [{ limit: 'traction', newtons: pullWith(0, GRIP) }];
  if (engine?.byPower !== undefined) {
    const { newtons, at } = engine.byPower;
    limits.push({ limit: 'engine-power', newtons: pullWith(newtons, at === 'ground' ? ROLLING : NOTHING) });
  }
  if (engine?.thrustLimit !== undefined) {
    limits.push({ limit: 'thrust-limit', newtons: pullWith(engine.thrustLimit, ROLLING) });
  }
  const [nearLift, farLift] = forward ? (['front-lift', 'rear-lift'] as const) : (['rear-lift', 'front-lift'] as const);
  limits.push({ limit: farLift, newtons: balance.farLiftsAt });
  if (balance.nearLiftsAt < Number.POSITIVE_INFINITY) limits.push({ limit: nearLift, newtons: balance.nearLiftsAt });
  return limits;
}

/** The least of all; of equal ones the first. */
function weakestOf(limits: readonly Limit[]): Weakest {
  const [first, ...others] = limits as readonly [Limit, ...Limit[]];
  const { limit, newtons } = others.reduce((least, each) => (each.newtons < least.newtons ? each : least), first);
  if (newtons === Number.POSITIVE_INFINITY) {
    const remedy = 'So steep a chain presses the wheels down as fast as it pulls: nothing here ends the pull.';
    fail('IMPOSSIBLE_GEOMETRY', 'chainAngle', 'a chain that is less steep', 'no limit', remedy);
  }
  return { limits, pull: newtons, governs: limit };
}

const EXPRESSIONS: Readonly<Record<PullLimitName, string>> = {
  traction: '(Σ net · R driven − Σ f · R undriven − W · sin α) / cos β',
  'engine-power': '(F less what its own wheels take − W · sin α) / cos β',
  'thrust-limit': '(thrust limit − Σ f · R − W · sin α) / cos β',
  'front-lift': 'the pull at which R_f = 0',
  'rear-lift': 'the pull at which R_r = 0',
};

function showLimits(working: Working, limits: readonly Limit[], grip: Grip, force: (newtons: number) => Force): void {
  for (const { limit, newtons } of limits) {
    if (newtons === Number.POSITIVE_INFINITY) continue;
    const ofGrip = limit === 'traction' && 'ratios' in grip;
    const values = ofGrip ? { net: grip.ratios.net, f: grip.ratios.freeRolling } : {};
    working.step(limit, 'P', EXPRESSIONS[limit], values, force(newtons));
  }
}

const STATICS: SourceRef = { document: 'Statics of a tractor that pulls, about its wheels', provenance: 'derived' };

const ENGINE_NOT_CHECKED: Note = /* @__PURE__ */ note('ENGINE_NOT_CHECKED');
const LIFT_GOVERNS: Note = /* @__PURE__ */ note('LIFT_GOVERNS');
const RIGGING_NOT_COUNTED: Note = /* @__PURE__ */ note('RIGGING_NOT_COUNTED');
const STEADY_PULL: Note = /* @__PURE__ */ note('STEADY_PULL');
