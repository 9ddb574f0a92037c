import { axialStiffnessOf } from '../chain/chain-stiffness.js';
import { fail, mapAt, within } from '../errors.js';
import { checkList, checkObject, checkOneOf } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { STAND_CLEAR } from '../working/cautions.js';
import {
  type Check,
  type CheckSubject,
  governingCheck,
  overallVerdict,
  shownCheck,
  undeterminedCheck,
  type Verdict,
} from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { type StepValue, Working } from '../working/step.js';
import { reducedMass, type Snatch, snatchPeak, speedForPeak } from './snatch.js';
import { readAcceleration, readZeroOrMore, speedAfter, TAKE_UP_AT_A_CRAWL } from './take-up-speed.js';

/** A load that is free, or breaks loose. An anchored one, such as a stump, does not give at all. */
export interface LooseLoad {
  readonly mass: QuantityInput<'mass'>;
  /** What it resists with before it moves; omitted: nothing, it rolls freely. */
  readonly breaksLooseAt?: QuantityInput<'force'>;
  /** What it resists with once it moves; omitted: as much as before. */
  readonly resists?: QuantityInput<'force'>;
}

/**
 * How the chain comes tight: `'slow'` from snug with the pull raised slowly; at a speed; or after slack over which the
 * machine gathers speed, by its acceleration or, without one, by the thrust. Slack of zero is a chain snug, and the pull
 * there at once.
 */
export type TakeUp =
  | 'slow'
  | { readonly speed: QuantityInput<'speed'> }
  | { readonly slack: QuantityInput<'length'>; readonly acceleration?: QuantityInput<'acceleration'> };

/** Something springy in line with the chain: it gives by so much under such a force. */
export interface Spring {
  readonly by: QuantityInput<'length'>;
  readonly under: QuantityInput<'force'>;
}

export interface ShockTensionInput {
  readonly towingMass: QuantityInput<'mass'>;
  readonly load: 'anchored' | LooseLoad;
  readonly takeUp: TakeUp;
  readonly thrust?: QuantityInput<'force'>;
  readonly chain: { readonly wireDiameter: QuantityInput<'length'>; readonly length: QuantityInput<'length'> };
  readonly inSeries?: readonly Spring[];
  readonly workingLoadLimit?: QuantityInput<'ratedLoad'>;
  readonly proofLoad?: QuantityInput<'ratedLoad'>;
  readonly proofFactor?: number;
  readonly breakingForce?: QuantityInput<'force'>;
  readonly elongationAtBreak?: number;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

type Force = Quantity<'lbf' | 'kN'>;
type Speed = Quantity<'mph' | 'm/s'>;

export interface ShockTension extends ResultBase<'shockTension'> {
  /** `pass` only where even the stiffest chain stays within the working load limit. */
  readonly verdict: Verdict;
  /** Id of the check that decides. */
  readonly governing: string | null;
  readonly checks: readonly Check[];
  /** Peak in a chain as stiff as mooring chain. */
  readonly leastPeakTension: Force;
  /** Peak in a chain as stiff as solid bars: no chain gives more. It decides. */
  readonly peakTension: Force;
  /** Of the machine when the chain comes tight; zero for a pull raised slowly. */
  readonly takeUpSpeed: Speed;
  /** With a load that can break loose: whether it does before the peak. */
  readonly breaksLoose?: boolean;
  /**
   * The greatest take-up speed, in the stiffest chain and with the same thrust, within each limit that was given; null
   * where the thrust alone, put on at once, is beyond it.
   */
  readonly greatestTakeUpSpeed: {
    readonly withinWorkingLoadLimit?: Speed | null;
    readonly withinProofLoad?: Speed | null;
  };
  /** In kN m (kJ) or lbf ft. */
  readonly energy: {
    /** Must go somewhere until both run at one speed: m_r · v² / 2. */
    readonly ofSnatch: number;
    /** Stretched into the line at `leastPeakTension`: what a break sets free. */
    readonly stored: number;
    /** At the most that a chain could take in if every link stretched to its end. Not for design. */
    readonly ductileBound?: number;
  };
}

/**
 * The peak tension when a chain comes tight with a jerk, and how slowly it must come tight instead.
 *
 * Anchored load: F = T + √(T² + k · m1 · v²): without thrust v · √(k · m1), and without slack twice the thrust. Between two
 * free masses m_r = m1 · m2 / (m1 + m2) stands for m1. A load that breaks loose at R_s and then resists with R_k:
 * v1² = v² + (2 · T · R_s − R_s²) / (k · m1), F_m = m_r · (T / m1 + R_k / m2), F = F_m + √((R_s − F_m)² + k · m_r · v1²).
 * k = 1 / (L / EA + give of what is in line). A longer chain lowers the peak and stores more energy.
 *
 * How stiff short-link chain is nobody has published: the answer is told for mooring chain and for solid bars, and the
 * stiffer decides. A peak below the breaking force is no pass: only one within the working load limit is.
 *
 * @param input.towingMass of the machine that pulls
 * @param input.load `'anchored'` (a stump; stuck fast), the upper bound of all; or a mass that rolls or breaks loose
 * @param input.takeUp how the chain comes tight: one way must be given
 * @param input.thrust that goes on, rolling and grade resistance of the machine taken off; zero where the driver lets go. Omitted:
 * none after a stated speed, mass times acceleration after an accelerated start; each as an assumption
 * @param input.chain wire diameter (not the trade size: {@link chainMass} tells it) and length
 * @param input.inSeries what else gives in the line, such as a drawbar; omitted: nothing does, as an assumption
 * @param input.workingLoadLimit of the weakest part; omitted: the verdict stays open
 * @param input.proofLoad or `proofFactor`, a multiple of the working load limit; a chain past it is scrap
 * @param input.breakingForce of the weakest part
 * @param input.elongationAtBreak of the chain as a fraction, such as 0.15; with `breakingForce` it gives the ductile bound
 * @param input.units `'us'` (lbf, mph) or `'si'` (kN, m/s); omitted: the system that all inputs share
 * @throws RiggingError `MISSING_FIELD` (no way of taking up; no thrust where it is needed), `CONFLICTING_FIELDS`,
 * `UNKNOWN_VALUE`, `IMPOSSIBLE_GEOMETRY` (a load that resists more once it moves), `NOT_POSITIVE`, `NEGATIVE`, `NOT_FINITE`,
 * `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity two rigid machines on one line, no damping, chain within its elastic range; above that the peak is lower and the
 * chain is spent. A load that catches again, or goes down in mud, is not in it
 * @source energy of two masses and a spring, derived; stiffness: mooring practice, from memory
 * @example
 * shockTension({
 *   towingMass: '3000 kg',
 *   load: 'anchored',
 *   takeUp: { speed: '1 m/s' },
 *   chain: { wireDiameter: '10 mm', length: '6 m' },
 * }).peakTension.value.toFixed(1)
 * // => '127.2'
 */
export function shockTension(input: ShockTensionInput): ShockTension {
  const working = new Working(input?.working !== false);
  const { load, taken, limits, units, length, springs, bending, rigid } = readSnatch(input, working);
  const show = showIn(units);
  const { speed, thrust, slow } = taken;
  const [soft, stiff] = [bending, rigid].map((snatch) => {
    // raised slowly, the tension never exceeds the thrust, whether the load holds or moves
    const found = slow ? { peak: thrust, loose: thrust > load.breaksLooseAt } : snatchPeak(snatch, speed);
    if (working.shown) showSteps(working, snatch, taken, found, length, show);
    return found;
  }) as [ReturnType<typeof snatchPeak>, ReturnType<typeof snatchPeak>];
  const peakTension = show.force(stiff.peak);

  const checks = judge(peakTension, limits);
  const verdict = overallVerdict(checks);
  const speedWithin = (limit: QuantityLike): Speed | null => {
    const greatest = speedForPeak(rigid, inNewtons(ratedLoadIn(limit, 'N')));
    return greatest === undefined ? null : show.speed(greatest);
  };
  const { workingLoadLimit, proofLoad, breakingForce, elongation } = limits;

  working.cite(ENERGY);
  working.assumptions.push(...taken.assumptions);
  if (springs.givePerNewton === 0) working.assumptions.push(NOTHING_ELSE_GIVES);
  if (proofLoad !== undefined && isPast(peakTension, proofLoad)) working.cautions.push(SCRAP_PAST_PROOF);
  if (elongation !== undefined) working.cautions.push(DUCTILE_BOUND_IS_NO_DESIGN);
  working.cautions.push(TAKE_UP_AT_A_CRAWL, BELOW_BREAKING_IS_NO_PASS, STAND_CLEAR);
  return makeResult(
    'shockTension',
    {
      verdict,
      governing: governingCheck(checks, verdict)?.id ?? null,
      leastPeakTension: show.force(soft.peak),
      peakTension,
      takeUpSpeed: show.speed(speed),
      ...(input.load !== 'anchored' && { breaksLoose: stiff.loose }),
      greatestTakeUpSpeed: {
        ...(workingLoadLimit && { withinWorkingLoadLimit: speedWithin(workingLoadLimit) }),
        ...(proofLoad && { withinProofLoad: speedWithin(proofLoad) }),
      },
      energy: {
        ofSnatch: show.energy((reducedMass(bending) * speed * speed) / 2),
        stored: show.energy(soft.peak ** 2 / (2 * bending.stiffness)),
        ...(elongation !== undefined &&
          breakingForce && { ductileBound: show.energy(inNewtons(breakingForce) * elongation * inMeters(length)) }),
      },
      checks,
    },
    input,
    working,
  );
}

/** A snatch in SI, in chain as stiff as mooring chain and as solid bars, with what is held against its peak. */
export function readSnatch(input: ShockTensionInput, working: Working) {
  checkObject(input, '', '{ towingMass, load, takeUp, chain }');
  const mass = readPositive(input.towingMass, 'mass', 'towingMass');
  const load = readLoad(input.load);
  checkObject(input.chain, 'chain', '{ wireDiameter, length }');
  const wire = readPositive(input.chain.wireDiameter, 'length', 'chain.wireDiameter');
  const length = readPositive(input.chain.length, 'length', 'chain.length');
  const springs = readSprings(input.inSeries);
  const limits = readLimits(input);
  const m1 = inUnit(mass, 'kg').value;
  const taken = readTakeUp(input.takeUp, input.thrust, m1);
  const units = sharedUnits(input.units, [
    mass,
    wire,
    length,
    ...load.given,
    ...springs.given,
    ...taken.given,
    limits.workingLoadLimit,
    limits.proofLoad,
    limits.breakingForce,
  ]);
  const { axialStiffness, mostAxialStiffness } = axialStiffnessOf(wire, units === 'us' ? 'lbf' : 'kN', working);
  const pullWith = (EA: QuantityLike): Snatch & { readonly EA: QuantityLike } => ({
    towingMass: m1,
    loadMass: load.mass,
    breaksLooseAt: load.breaksLooseAt,
    resists: load.resists,
    thrust: taken.thrust,
    stiffness: 1 / (inMeters(length) / inNewtons(EA) + springs.givePerNewton),
    EA,
  });
  const [bending, rigid] = [pullWith(axialStiffness), pullWith(mostAxialStiffness)];
  return { load, taken, limits, units, length, springs, bending, rigid };
}

const inMeters = (length: QuantityLike): number => inUnit(length, 'm').value;
const inNewtons = (force: QuantityLike): number => inUnit(force, 'N').value;

/** How the answer shows SI numbers. */
function showIn(units: UnitSystem) {
  const [force, speed] = units === 'us' ? (['lbf', 'mph'] as const) : (['kN', 'm/s'] as const);
  return {
    force: (newtons: number): Force => inUnit({ value: newtons, unit: 'N' }, force),
    speed: (metersPerSecond: number): Speed => inUnit({ value: metersPerSecond, unit: 'm/s' }, speed),
    /** lbf ft: newtons over a foot, in pounds-force. */
    energy: (joules: number): number =>
      units === 'us'
        ? inUnit({ value: joules / 0.3048, unit: 'N' }, 'lbf').value
        : new Quantity(joules / 1000, 'kN').value,
  };
}

interface ReadLoad {
  readonly mass: number;
  readonly breaksLooseAt: number;
  readonly resists: number;
  readonly given: readonly (QuantityLike | undefined)[];
}

function readLoad(load: 'anchored' | LooseLoad): ReadLoad {
  const never = Number.POSITIVE_INFINITY;
  if (typeof load !== 'object' || load === null) {
    checkOneOf(load, ['anchored'], 'load');
    return { mass: never, breaksLooseAt: never, resists: 0, given: [] };
  }
  const mass = readPositive(load.mass, 'mass', 'load.mass');
  const from = readOptional(load.breaksLooseAt, 'force', 'load.breaksLooseAt');
  const moving = load.resists === undefined ? undefined : readZeroOrMore(load.resists, 'force', 'load.resists');
  const breaksLooseAt = from === undefined ? 0 : inNewtons(from);
  const resists = moving === undefined ? breaksLooseAt : inNewtons(moving);
  if (resists > breaksLooseAt) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'load.resists',
      'no more than breaksLooseAt',
      `${moving}`,
      'A load at rest resists most.',
    );
  }
  return { mass: inUnit(mass, 'kg').value, breaksLooseAt, resists, given: [mass, from, moving] };
}

function readSprings(springs: readonly Spring[] = []): {
  readonly givePerNewton: number;
  readonly given: QuantityLike[];
} {
  checkList(springs, 'inSeries', 0);
  const read = mapAt(springs, 'inSeries', (spring) => {
    checkObject(spring, '', '{ by, under }');
    return [readPositive(spring.by, 'length', 'by'), readPositive(spring.under, 'force', 'under')] as const;
  });
  const givePerNewton = read.reduce((sum, [by, under]) => sum + inMeters(by) / inNewtons(under), 0);
  return { givePerNewton, given: read.flat() };
}

interface TakenUp {
  /** In m/s and N. */
  readonly speed: number;
  readonly thrust: number;
  readonly slow: boolean;
  readonly slack?: QuantityLike;
  readonly acceleration?: number;
  readonly given: readonly (QuantityLike | undefined)[];
  readonly assumptions: readonly Note[];
}

function readTakeUp(takeUp: TakeUp, given: QuantityInput<'force'> | undefined, mass: number): TakenUp {
  const stated = given === undefined ? undefined : readZeroOrMore(given, 'force', 'thrust');
  const thrust = stated === undefined ? 0 : inNewtons(stated);
  const base = { thrust, slow: false, given: [stated], assumptions: [] };
  if (typeof takeUp !== 'object' || takeUp === null) {
    checkOneOf(takeUp, ['slow'], 'takeUp');
    if (!(thrust > 0)) fail('MISSING_FIELD', 'thrust', 'the pull that is raised slowly', `${stated}`, 'Give it.');
    return { ...base, speed: 0, slow: true };
  }
  return within('takeUp', () => {
    const { speed, slack, acceleration } = takeUp as { readonly [name: string]: unknown };
    if ((speed === undefined) === (slack === undefined)) {
      fail(
        speed === undefined ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS',
        '',
        'a speed, or slack and how the machine gathers speed over it',
        speed === undefined ? undefined : 'both',
        "Give one of { speed }, { slack, acceleration }, { slack } with a thrust, or 'slow'.",
      );
    }
    if (speed !== undefined) {
      const stopped = readZeroOrMore(speed, 'speed', 'speed');
      if (stopped.value === 0 && thrust === 0) {
        fail('NOT_POSITIVE', 'speed', 'a speed, or a thrust', `${stopped}`, 'Without either nothing pulls.');
      }
      return {
        ...base,
        speed: inUnit(stopped, 'm/s').value,
        given: [stated, stopped],
        assumptions: stated === undefined ? [NO_THRUST_AFTER] : [],
      };
    }
    const way = readZeroOrMore(slack, 'length', 'slack');
    if (acceleration === undefined && !(thrust > 0)) {
      fail('MISSING_FIELD', 'acceleration', 'an acceleration, or a thrust', undefined, 'How does it gather speed?');
    }
    const a = acceleration === undefined ? thrust / mass : readAcceleration(acceleration, 'acceleration');
    return {
      ...base,
      speed: speedAfter(inMeters(way), a),
      thrust: stated === undefined ? mass * a : thrust,
      slack: way,
      acceleration: a,
      given: [stated, way],
      assumptions: stated === undefined ? [THRUST_GOES_ON] : [],
    };
  });
}

interface Limits {
  readonly workingLoadLimit: QuantityLike | undefined;
  readonly proofLoad: QuantityLike | undefined;
  readonly breakingForce: QuantityLike | undefined;
  readonly elongation: number | undefined;
}

function readLimits(input: ShockTensionInput): Limits {
  const { proofFactor, elongationAtBreak: elongation } = input;
  const workingLoadLimit = readOptional(input.workingLoadLimit, 'ratedLoad', 'workingLoadLimit');
  const breakingForce = readOptional(input.breakingForce, 'force', 'breakingForce');
  const stated = readOptional(input.proofLoad, 'ratedLoad', 'proofLoad');
  checkNumber(proofFactor, 'proofFactor', 1, 10);
  checkNumber(elongation, 'elongationAtBreak', 0, 1);
  if (stated !== undefined && proofFactor !== undefined) {
    fail('CONFLICTING_FIELDS', 'proofFactor', 'proofLoad or proofFactor', 'both', 'Give one of them.');
  }
  if (proofFactor !== undefined && workingLoadLimit === undefined) {
    fail(
      'MISSING_FIELD',
      'workingLoadLimit',
      'the limit that the factor multiplies',
      undefined,
      'Give it, or proofLoad.',
    );
  }
  if (elongation !== undefined && breakingForce === undefined) {
    fail(
      'MISSING_FIELD',
      'breakingForce',
      'the force at which it breaks',
      undefined,
      'Give it, or leave the elongation out.',
    );
  }
  const proofLoad =
    proofFactor === undefined || workingLoadLimit === undefined
      ? stated
      : new Quantity(workingLoadLimit.value * proofFactor, workingLoadLimit.unit);
  return { workingLoadLimit, proofLoad, breakingForce, elongation };
}

function checkNumber(value: unknown, path: string, above: number, most: number): void {
  if (value === undefined || (typeof value === 'number' && value > above && value <= most)) return;
  const isNumber = typeof value === 'number' && Number.isFinite(value);
  const code = !isNumber ? 'NOT_FINITE' : value <= 0 ? 'NOT_POSITIVE' : value > most ? 'TOO_LARGE' : 'UNKNOWN_VALUE';
  fail(code, path, `a number above ${above}, up to ${most}`, value, 'Give a plain number.');
}

function judge(peak: Force, { workingLoadLimit, proofLoad, breakingForce }: Limits): Check[] {
  const against = (id: string, title: string, limit: QuantityLike): Check => {
    return shownCheck(about(id, title), peak, ratedLoadIn(limit, peak.unit));
  };
  const within = 'The peak stays within the working load limit';
  return [
    workingLoadLimit === undefined
      ? undeterminedCheck(about('working-load-limit', within), [LIMIT_UNKNOWN])
      : against('working-load-limit', within, workingLoadLimit),
    ...(proofLoad === undefined ? [] : [against('proof-load', 'The peak stays within the proof load', proofLoad)]),
    ...(breakingForce === undefined ? [] : [against('breaking-force', 'The peak stays below breaking', breakingForce)]),
  ];
}

function about(id: string, title: string): CheckSubject {
  return { id, title, clause: 'energy balance, derived', weight: 'requirement', subject: 'chain' };
}

const isPast = (peak: Force, limit: QuantityLike): boolean => peak.value > ratedLoadIn(limit, peak.unit).value;

function showSteps(
  working: Working,
  snatch: Snatch & { readonly EA: QuantityLike },
  { slack, acceleration, speed, slow }: TakenUp,
  { peak, loose }: ReturnType<typeof snatchPeak>,
  length: QuantityLike,
  show: ReturnType<typeof showIn>,
): void {
  const { towingMass, loadMass, breaksLooseAt, resists, thrust, stiffness, EA } = snatch;
  const kg = (value: number): StepValue => ({ value, unit: 'kg' });
  const T = show.force(thrust);
  const v = show.speed(speed);
  if (slack !== undefined && acceleration !== undefined) {
    working.step('machine', 'v', '√(2 · a · s)', { a: { value: acceleration, unit: 'm/s2' }, s: slack }, v);
  }
  working.step('chain', 'k', '1 / (L / EA + give of the rest), in kN/m', { L: length, EA }, stiffness / 1000);
  const values: Record<string, StepValue> = { T, k: stiffness / 1000, m1: kg(towingMass), v };
  if (!loose) {
    working.step('chain', 'F', slow ? 'T, raised slowly' : 'T + √(T² + k · m1 · v²)', values, show.force(peak));
    return;
  }
  const m_r = kg(reducedMass(snatch));
  working.step('chain', 'm_r', 'm1 · m2 / (m1 + m2)', { m1: kg(towingMass), m2: kg(loadMass) }, m_r);
  working.step(
    'chain',
    'F',
    slow
      ? 'T, raised slowly'
      : 'F_m + √((R_s − F_m)² + k · m_r · v1²), F_m = m_r · (T / m1 + R_k / m2), v1² = v² + (2 · T · R_s − R_s²) / (k · m1)',
    { ...values, m2: kg(loadMass), m_r, R_s: show.force(breaksLooseAt), R_k: show.force(resists) },
    show.force(peak),
  );
}

const ENERGY: SourceRef = { document: 'Energy of two masses and a spring', provenance: 'derived' };

const LIMIT_UNKNOWN: Note = /* @__PURE__ */ note('LIMIT_UNKNOWN');
const NO_THRUST_AFTER: Note = /* @__PURE__ */ note('NO_THRUST_AFTER');
const THRUST_GOES_ON: Note = /* @__PURE__ */ note('THRUST_GOES_ON');
const NOTHING_ELSE_GIVES: Note = /* @__PURE__ */ note('NOTHING_ELSE_GIVES');
const SCRAP_PAST_PROOF: Note = /* @__PURE__ */ note('SCRAP_PAST_PROOF');
const DUCTILE_BOUND_IS_NO_DESIGN: Note = /* @__PURE__ */ note('DUCTILE_BOUND_IS_NO_DESIGN');
const BELOW_BREAKING_IS_NO_PASS: Note = /* @__PURE__ */ note('BELOW_BREAKING_IS_NO_PASS');
