import type { Part } from '../assembly/part.js';
import { newRater, rateSeries } from '../assembly/rate-part.js';
import { newLog, noteAssumptions, showSeries } from '../assembly/show-parts.js';
import type { AnyGrade, TradeSize } from '../chain/trade-size.js';
import { fail, within } from '../errors.js';
import { checkFlag, checkList, checkObject, checkOneOf } from '../input-checks.js';
import { add } from '../quantities/arithmetic.js';
import { decimalProduct } from '../quantities/decimal.js';
import { compareExactSums, ratioOf } from '../quantities/exact.js';
import type { Point } from '../quantities/point.js';
import type { Quantity, QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readOptional, readPositive, readQuantity } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type CapacityTable, marksAlone } from '../tables/rating-table.js';
import type { SlingHitch, SlingRatings } from '../tables/sling-ratings.js';
import {
  type Check,
  type CheckSubject,
  failedCheck,
  governingCheck,
  metCheck,
  overallVerdict,
  ratioCheck,
  undeterminedCheck,
  type Verdict,
} from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type Angle, readAngle } from './angle.js';
import { heatReduction } from './heat.js';
import { checkLiftCriteria, type LiftCriteria } from './lift-criteria.js';
import { judgePartsForLifting } from './parts-for-lifting.js';
import { isForSlings, type SlingCondition } from './sling-inspection.js';
import {
  checkSlingRatings,
  countedLegs,
  type HungSling,
  type SlingBasis,
  type SlingRating,
  slingRating,
} from './sling-rating.js';
import { type LegTension, type SlingLeg, type SlingTensions, slingTensions } from './sling-tensions.js';

/** The sling of a lift. */
export interface LiftSling extends Omit<HungSling, 'hitch' | 'load' | 'units' | 'working'> {
  /** How it is hung; may be left out where the legs are given: one leg for each. */
  readonly hitch?: SlingHitch;
  readonly size?: TradeSize;
  readonly grade?: AnyGrade;
  readonly markedWll?: QuantityInput<'ratedLoad'>;
  readonly singleLegWll?: QuantityInput<'ratedLoad'>;
  readonly tagLegible?: boolean;
  /** In words, or the result of an inspection by criteria for slings; left out, it is taken as inspected and sound. */
  readonly condition?: SlingCondition;
  /** True where the chain was ever used for towing or tie-down. */
  readonly usedForTowing?: boolean;
}

/** What lifts. */
export interface LiftingMachine {
  readonly kind: 'crane' | 'hoist' | 'excavator' | 'loader' | 'forks' | 'other';
  /** What its maker lets it lift at this height and reach, attachment included. */
  readonly liftCapacity?: QuantityInput<'ratedLoad'>;
  /** Whether its maker lets it lift a load that hangs from a sling. */
  readonly makerAllows?: boolean;
}

export interface CheckLiftInput {
  readonly ratings: SlingRatings;
  readonly load: { readonly mass: QuantityInput<'mass'>; readonly centerOfGravity?: Point };
  readonly sling: LiftSling;
  /** Where the legs are fixed and how long they are: then each leg and the tilt are told, see {@link slingTensions}. */
  readonly legs?: readonly SlingLeg[];
  readonly hook?: Point;
  /** Hooks, links and shackles of one leg, in series; each leg has its like. Heat takes from them what it takes from the chain. */
  readonly legParts?: readonly Part[];
  /** Master link, shackles and hook above the legs: they carry the whole load and the rigging. */
  readonly topParts?: readonly Part[];
  /** Of sling, beams and hook block; the machine and the parts above the legs carry it too. */
  readonly riggingMass?: QuantityInput<'mass'>;
  readonly machine?: LiftingMachine;
  /** False where somebody is under the load or beside it. */
  readonly peopleClear?: boolean;
  /** What a code says beyond the sling. */
  readonly criteria?: LiftCriteria;
  /** `'us'` or `'si'`; omitted: the table's own. */
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

export interface LiftCheck extends ResultBase<'checkLift'> {
  readonly verdict: Verdict;
  /** The id of the requirement that decides. */
  readonly governing: string | null;
  readonly checks: readonly Check[];
  /** What the whole sling may lift as it is hung; null where it may not be used so, or a fact is missing. */
  readonly workingLoadLimit: Quantity<'lb' | 'kg'> | null;
  readonly basis: SlingBasis | null;
  /** With legs: as in {@link SlingTensions}. */
  readonly outcome: SlingTensions['outcome'] | null;
  readonly legs: readonly LegTension[];
  readonly tilt: Quantity<'deg'> | null;
  readonly lowest: string | null;
  readonly hook: SlingTensions['hook'];
  readonly up: SlingTensions['up'];
  readonly ratings: string;
}

/**
 * Whether a lift may be made: the least of what the sling may lift as it is hung, what each leg, hook, link and shackle is
 * rated for, and what the maker lets the machine lift.
 *
 * - the sling, by {@link slingRating}, at the flattest true angle;
 * - each leg by its own tension where the legs do not carry alike, by {@link slingTensions}; legs whose tensions are within
 *   5 percent and their angles within 2 degrees are rated as alike, and a pair that may carry all is advice beside it;
 * - parts of a leg: T <= WLL of the weakest; parts above the legs: load + rigging <= WLL of the weakest;
 * - the machine: load + rigging <= what its maker states, the caller's number.
 *
 * @param input.ratings a table of sling ratings, such as {@link usAlloySling_2011}
 * @param input.load `{ mass, centerOfGravity? }`
 * @param input.sling `{ hitch, size, grade, angle, tagLegible, ... }`
 * @param input.legs `{ id, at, length }` for the true geometry; then the angle is not stated but told
 * @param input.legParts with `topParts`, in series; hooks and links marked with grade and size alone are rated as such chain
 * @param input.machine `{ kind, liftCapacity, makerAllows? }`
 * @param input.units `'us'` or `'si'`; omitted: the table's own
 * @throws RiggingError what {@link slingRating} and {@link slingTensions} throw; `CONFLICTING_FIELDS` where the hitch has
 * another number of legs than are given, or angles are stated beside legs; `IMPOSSIBLE_GEOMETRY` for a leg that does not
 * hang below the hook; `UNKNOWN_CRITERIA_SET`
 * @validity a rigid load at rest; a code, a maker or a qualified person may ask for more
 * @source 29 CFR 1910.184 and 76 FR 33590; OSHA letter of October 22, 1999; the table's own document
 * @example
 * checkLift({
 *   ratings: usAlloySling_2011,
 *   load: { mass: '6000 lb' },
 *   sling: { hitch: 'double', size: '3/8', grade: 80, angle: { fromHorizontal: '60 deg' }, tagLegible: true },
 *   machine: { kind: 'hoist', liftCapacity: '8000 lb' },
 * }).verdict
 * // => 'pass'
 */
export function checkLift(input: CheckLiftInput): LiftCheck {
  checkObject(input, '', '{ ratings, load, sling }');
  const { ratings, load, sling, legs, criteria } = input;
  checkSlingRatings(ratings);
  checkObject(load, 'load', '{ mass }');
  checkObject(sling, 'sling', '{ hitch, size, grade }');
  if (criteria !== undefined) checkLiftCriteria(criteria);
  const mass = readPositive(load.mass, 'mass', 'load.mass');
  const hitch = hitchOf(sling, legs);
  const working = new Working(input.working !== false);
  const checks: Check[] = [];
  judgeState(sling, criteria, checks, working);
  if (input.peopleClear !== undefined) judgePeople(input.peopleClear, checks);

  const tensions = legs === undefined ? undefined : legTensions(input, legs);
  if (tensions !== undefined) {
    take(working, tensions);
    judgeBalance(tensions, checks);
    checkBelowHook(tensions.legs);
  }
  const exactly = tensions === undefined || carryAlike(tensions.legs, ROUNDING);
  const alike = exactly || carryAlike(tensions.legs, NEARLY);
  let rating: SlingRating | undefined;
  let tension: QuantityLike | undefined;
  if (tensions?.outcome !== 'unstable') {
    const hung = tensions === undefined ? sling : { ...sling, ...angleOfLegs(ratings, tensions.legs, alike) };
    const asHung = { ...hung, hitch, ratings, load: mass, units: input.units, working: input.working };
    rating = within('sling', () => slingRating(asHung as Parameters<typeof slingRating>[0]));
    take(working, tensions === undefined ? rating : { ...rating, assumptions: rating.assumptions.filter(notTold) });
    checks.push(...rating.checks);
    const share = shareOfLeg(hung, hitch, mass);
    const open = tensions?.determinate === false;
    // hooks of legs that carry alike are asked what the table asks of the legs
    tension = exactly || (alike && open) ? share : greatestOf(tensions);
    if (tensions !== undefined && (open || !exactly)) {
      const limit = limitOfOneLeg(input, hitch);
      // the limit of a tag may count on more than three legs of this chain
      const credited = rating.basis !== 'marked' || limit === undefined || share === undefined || fits([share], limit);
      const advice = open && alike && credited;
      judgeLegs(tensions.legs, limit, advice ? 'practice' : 'requirement', checks);
      if (advice) working.cautions.push(note('DIAGONAL_MAY_CARRY_ALL', { tension: greatestOf(tensions)! }));
    }
  }
  judgeParts(input, tension, mass, checks, working);
  judgeMachine(input, mass, checks, working);

  const verdict = overallVerdict(checks);
  return makeResult(
    'checkLift',
    {
      verdict,
      governing: governingCheck(checks, verdict)?.id ?? null,
      checks,
      workingLoadLimit: rating?.workingLoadLimit ?? null,
      basis: rating?.basis ?? null,
      outcome: tensions?.outcome ?? null,
      legs: tensions?.legs ?? [],
      tilt: tensions?.tilt ?? null,
      lowest: tensions?.lowest ?? null,
      hook: tensions?.hook ?? null,
      up: tensions?.up ?? null,
      ratings: ratings.id,
    },
    input,
    working,
  );
}

/** Legs whose geometry is known are taken as nothing. */
const notTold = ({ code }: Note) => code !== 'LEGS_TAKEN_AS_ALIKE';

/** What one calculation found out is part of the working of the whole; each thing is said once. */
function take(
  working: Working,
  { steps, sources, assumptions, cautions }: Omit<ResultBase, 'result' | 'inputs'>,
): void {
  working.steps.push(...steps);
  for (const source of sources) working.cite(source);
  for (const [said, more] of [
    [working.assumptions, assumptions],
    [working.cautions, cautions],
  ] as const) {
    said.push(...more.filter(({ text }) => !said.some((other) => other.text === text)));
  }
}

const LEGS_OF_HITCH: { readonly [hitch in SlingHitch]?: number } = { single: 1, double: 2, triple: 3, quad: 4 };

/** The hitch as stated, or the one of so many legs; both must agree. */
function hitchOf({ hitch, angle, legAngles }: LiftSling, legs: CheckLiftInput['legs']): SlingHitch {
  if (legs === undefined) {
    return (
      hitch ??
      fail('MISSING_FIELD', 'sling.hitch', 'how the sling is hung', hitch, "Such as 'double', or give the legs.")
    );
  }
  if (angle !== undefined || legAngles !== undefined) {
    fail(
      'CONFLICTING_FIELDS',
      'sling.angle',
      'the angles or the legs',
      'both',
      'The legs tell their angles: leave them out.',
    );
  }
  checkList(legs, 'legs');
  const count = legs.length;
  const own = (Object.keys(LEGS_OF_HITCH) as SlingHitch[]).find((each) => LEGS_OF_HITCH[each] === count);
  if (hitch !== undefined && own !== undefined && LEGS_OF_HITCH[hitch] !== count) {
    fail(
      'CONFLICTING_FIELDS',
      'legs',
      `the legs of hitch ${hitch}`,
      `${count} legs`,
      'Legs are told for single, double, triple, quad.',
    );
  }
  return own ?? 'quad'; // another number is refused by slingTensions
}

function legTensions(
  { ratings, load, hook, units, working }: CheckLiftInput,
  legs: readonly SlingLeg[],
): SlingTensions {
  const { mass, centerOfGravity } = load;
  if (centerOfGravity === undefined) {
    fail(
      'MISSING_FIELD',
      'load.centerOfGravity',
      'the center of gravity of the load',
      undefined,
      'Legs are told only with it.',
    );
  }
  return slingTensions({
    load: { mass, centerOfGravity },
    legs,
    ...(hook !== undefined && { hook }),
    ...(working !== undefined && { working }),
    units: readSystem(units, ratings.units),
  });
}

/** A leg pulls upward, or it is no leg of a lift. */
function checkBelowHook(legs: readonly LegTension[]): void {
  const index = legs.findIndex((leg) => degreesOf(leg) <= 0);
  if (index < 0) return;
  const stands = `one ${-degreesOf(legs[index]!)} deg above the horizontal through it`;
  fail('IMPOSSIBLE_GEOMETRY', `legs[${index}]`, 'a pick below the hook', stands, 'Take a higher hook or longer legs.');
}

/** Legs that lean alike and carry alike within a spread, by stretch where balance leaves it open. */
function carryAlike(legs: readonly LegTension[], { share, degrees }: typeof NEARLY): boolean {
  const tensions = legs.map(({ tension, elasticTension }) => (elasticTension ?? tension).value);
  const angles = legs.map(degreesOf);
  return (
    Math.max(...tensions) <= Math.min(...tensions) * (1 + share) && Math.max(...angles) - Math.min(...angles) <= degrees
  );
}

const ROUNDING = { share: 1e-6, degrees: 1e-4 };

/**
 * Legs are nearly alike while the greatest tension is up to 5 percent over the least and they lean within 2 degrees: the
 * third that four legs credited as three have in reserve covers it. Our reading: no document found sets it.
 */
const NEARLY = { share: 0.05, degrees: 2 };

/** Freed of what rounding adds, so that a leg built for 45 degrees is rated at 45. */
const degreesOf = ({ angle }: LegTension) => Number(angle.fromHorizontal.value.toFixed(6));

/** How the legs lean, as {@link slingRating} takes it: each, where the table rates legs that are not alike; else the flattest. */
function angleOfLegs(
  { unlike }: SlingRatings,
  legs: readonly LegTension[],
  alike: boolean,
): { angle?: Angle; legAngles?: Angle[] } {
  const angles = legs.map((leg): Angle => ({ fromHorizontal: { value: degreesOf(leg), unit: 'deg' } }));
  if (!alike && unlike !== 'not rated' && legs.length > 1) return { legAngles: angles };
  return { angle: { fromHorizontal: { value: Math.min(...legs.map(degreesOf)), unit: 'deg' } } };
}

const ON_SLING = { weight: 'requirement', subject: 'sling' } as const;

/** The tag, the condition and the past of the sling. */
function judgeState(
  { tagLegible, condition, usedForTowing }: LiftSling,
  criteria: LiftCriteria | undefined,
  checks: Check[],
  working: Working,
): void {
  const tag = { ...ON_SLING, id: 'tag/sling', title: 'legible tag on the sling', clause: '76 FR 33590' };
  if (tagLegible === undefined) checks.push(undeterminedCheck(tag, [note('TAG_NOT_STATED')]));
  else {
    checkFlag(tagLegible, 'sling.tagLegible');
    checks.push(tagLegible ? metCheck(tag) : failedCheck(tag, note('TAG_NOT_LEGIBLE')));
  }
  working.cite({
    document: '76 FR 33590',
    edition: 'June 8, 2011',
    provenance: 'read',
    note: 'slings are loaded to their tag; no tag, no use',
  });

  const inspection = typeof condition === 'object' && condition !== null ? condition : undefined;
  const state = inspection === undefined ? condition : inspection.verdict;
  if (condition === undefined) working.assumptions.push(note('TAKEN_AS_SOUND'));
  else {
    checkOneOf(state, ['sound', 'damaged', 'fit', 'remove', 'undetermined'], 'sling.condition');
    const about = { ...ON_SLING, id: 'condition/sling', title: 'sling fit for service', clause: '29 CFR 1910.184(d)' };
    if (state === 'undetermined') checks.push(undeterminedCheck(about, [note('SLING_CONDITION_OPEN')]));
    else if (state === 'damaged' || state === 'remove') checks.push(failedCheck(about, note('SLING_DAMAGED')));
    else if (inspection === undefined || isForSlings(inspection)) checks.push(metCheck(about));
    else {
      const { criteria: by } = inspection;
      const missing = typeof by === 'string' ? note('INSPECT_AS_SLING', { criteria: by }) : note('INSPECTED_BY_WHAT');
      checks.push(undeterminedCheck(about, [missing]));
    }
  }

  if (usedForTowing !== undefined) checkFlag(usedForTowing, 'sling.usedForTowing');
  if (criteria === undefined) {
    if (usedForTowing === true) {
      working.cautions.push(note('TOWED_CHAIN_LIFTS'));
      const habit = {
        ...ON_SLING,
        id: 'towing/sling',
        title: 'rigging never used for towing',
        weight: 'practice',
      } as const;
      checks.push(failedCheck({ ...habit, clause: 'common practice' }, note('KEEP_TOWED_CHAIN_OUT')));
    }
    return;
  }
  const { clause, provenance } = criteria.towedMayNotLift;
  working.cite({ document: criteria.title, clause, provenance });
  const towed = {
    ...ON_SLING,
    id: 'towing/sling',
    title: 'rigging never used for towing',
    clause: `${criteria.title}, ${clause}`,
  };
  if (usedForTowing === undefined) checks.push(undeterminedCheck(towed, [note('TOWING_NOT_STATED')]));
  else checks.push(usedForTowing ? failedCheck(towed, note('USED_FOR_TOWING')) : metCheck(towed));
}

function judgePeople(clear: boolean, checks: Check[]): void {
  checkFlag(clear, 'peopleClear');
  const about: CheckSubject = {
    id: 'people/load',
    title: 'people clear of the load',
    clause: '29 CFR 1910.184(c)',
    weight: 'requirement',
    subject: 'load',
  };
  checks.push(clear ? metCheck(about) : failedCheck(about, note('PEOPLE_UNDER_LOAD')));
}

/** The load hangs from every leg and does not roll over. */
function judgeBalance({ outcome, legs }: SlingTensions, checks: Check[]): void {
  const about: CheckSubject = {
    id: 'balance/load',
    title: 'load hangs stable from all legs',
    clause: 'statics',
    weight: 'requirement',
    subject: 'load',
  };
  const slack = legs.find((leg) => leg.slack);
  if (outcome === 'unstable') checks.push(failedCheck(about, note('LOAD_ROLLS_OVER')));
  else
    checks.push(slack === undefined ? metCheck(about) : failedCheck(about, note('LEG_HANGS_SLACK', { leg: slack.id })));
}

/**
 * What one leg may carry by itself, heat taken off: by the table or as stated, and no more than its part of the limit on
 * the tag, WLL / (legs · sin(angle from horizontal of the tag)). Undefined where neither a figure nor a row of the table says.
 */
function limitOfOneLeg({ ratings, sling, units }: CheckLiftInput, hitch: SlingHitch): QuantityLike | undefined {
  const { size, grade, singleLegWll, markedWll, markedAt, temperature, hottest } = sling;
  const listed = grade !== undefined && size !== undefined && ratings.grades[grade]?.rows[size] !== undefined;
  if (singleLegWll === undefined && !listed) return undefined;
  const plumb = { ratings, hitch: 'single', size, grade, temperature, hottest, units, working: false };
  const limitOf = (stated: object) =>
    slingRating({ ...plumb, ...stated } as Parameters<typeof slingRating>[0]).workingLoadLimit ?? undefined;
  const own = limitOf(singleLegWll === undefined ? {} : { singleLegWll, method: 'formula' });
  if (own === undefined || markedWll === undefined || (markedAt === undefined && countedLegs(hitch).leans)) return own;
  const share = shareOfLeg({ angle: markedAt }, hitch, readPositive(markedWll, 'ratedLoad', 'sling.markedWll'));
  const byTag = limitOf({ markedWll: share });
  return byTag === undefined || fits([own], byTag) ? own : byTag;
}

function judgeLegs(
  legs: readonly LegTension[],
  limit: QuantityLike | undefined,
  weight: Check['weight'],
  checks: Check[],
): void {
  for (const { id, tension } of legs) {
    const about: CheckSubject = {
      id: `leg/${id}`,
      title: 'tension within the limit of one leg',
      clause: 'statics',
      weight,
      subject: id,
    };
    checks.push(
      limit === undefined
        ? undeterminedCheck(about, [note('LEG_LIMIT_NOT_KNOWN')])
        : loadCheck(about, [tension], limit),
    );
  }
}

/** Loads together, or a tension, against a limit, mass or force. */
function loadCheck(about: CheckSubject, loads: readonly QuantityLike[], capacity: QuantityLike): Check {
  const demand = loads.reduce((sum, each) => add(sum, each));
  const { fits, utilization } = ratioFor(loads, capacity);
  return ratioCheck(about, fits, demand, capacity, utilization);
}

function fits(loads: readonly QuantityLike[], capacity: QuantityLike): boolean {
  return ratioFor(loads, capacity).fits;
}

function ratioFor(loads: readonly QuantityLike[], capacity: QuantityLike) {
  const terms = loads.map((quantity) => ({ quantity }));
  const all = loads.reduce((sum, each) => sum + ratedLoadIn(each, 'kg').value, 0);
  return ratioOf(all, ratedLoadIn(capacity, 'kg').value, () => compareExactSums(terms, [{ quantity: capacity }]));
}

function greatestOf(tensions: SlingTensions | undefined): QuantityLike | undefined {
  const [first, ...others] = (tensions?.legs ?? []).map(({ tension }) => tension);
  return others.reduce((most, each) => (first !== undefined && each.value > most!.value ? each : most), first);
}

/** The tension of a leg of a sling whose legs are alike, T = W / (legs · sin(angle from horizontal)); three count of four. */
function shareOfLeg(
  { angle, legAngles }: { readonly angle?: Angle | undefined; readonly legAngles?: readonly Angle[] },
  hitch: SlingHitch,
  mass: QuantityLike,
): QuantityLike | undefined {
  if (legAngles !== undefined) return undefined;
  const { credited, leans } = countedLegs(hitch);
  const sine = leans ? Math.cos((readAngle(angle, 'sling.angle').fromVertical * Math.PI) / 180) : 1;
  const weight = ratedLoadIn(mass, 'lbf');
  return { value: weight.value / (credited * sine), unit: weight.unit };
}

/** The weakest part of a leg against its tension, the weakest above the legs against the load. */
function judgeParts(
  { ratings, sling, legParts, topParts, riggingMass, units }: CheckLiftInput,
  tension: QuantityLike | undefined,
  mass: QuantityLike,
  checks: Check[],
  working: Working,
): void {
  if (legParts === undefined && topParts === undefined) working.assumptions.push(note('HARDWARE_OF_THE_TAG'));
  else working.assumptions.push(note('PARTS_IN_LINE'));
  const log = newLog();
  const own = new Working(working.shown);
  const rater = newRater(ratingsOfParts(ratings), log);
  const unit = massUnitOf(readSystem(units, ratings.units));
  const rigging = readOptional(riggingMass, 'mass', 'riggingMass');
  const heat = legParts === undefined && topParts === undefined ? 0 : heatOnParts(ratings, sling);
  if (heat !== undefined && heat > 0) {
    working.assumptions.push(note('HEAT_ON_PARTS', { percent: heat }));
    const { document } = ratings.heat.table.source;
    working.cite({ document, clause: 'heat on hooks and links', provenance: 'interpretation' });
  }
  for (const [parts, name, demand] of [
    [legParts, 'legParts', tension && [tension]],
    [topParts, 'topParts', rigging === undefined ? [mass] : [mass, rigging]],
  ] as const) {
    if (parts === undefined) continue;
    const series = rateSeries(rater, parts, name);
    judgePartsForLifting(parts, name, checks);
    if (working.shown)
      showSeries(own, series, parts, name === 'legParts' ? 'parts of a leg' : 'parts above the legs', unit);
    const title =
      name === 'legParts' ? 'tension within the weakest part of a leg' : 'load within the weakest part above the legs';
    const about: CheckSubject = {
      ...ON_SLING,
      id: `${name}/${series.weakest.join('+') || 'sling'}`,
      title,
      clause: '29 CFR 1910.184(e)(2)',
    };
    const { workingLoadLimit, atMost } = series;
    const missing = [...series.missing, ...(heat === undefined ? [note('HEAT_ON_PARTS_NOT_KNOWN')] : [])];
    if (demand === undefined) checks.push(undeterminedCheck(about, [note('LEGS_NOT_ALIKE')]));
    else {
      const most = atMost === null ? undefined : loadCheck(about, demand, afterHeat(atMost, heat));
      const known = workingLoadLimit !== null && heat !== undefined;
      checks.push(most !== undefined && (known || most.verdict === 'fail') ? most : undeterminedCheck(about, missing));
    }
  }
  for (const source of log.sources) own.cite(source);
  noteAssumptions(own, log);
  take(working, own);
}

/** What heat takes off hooks and links, in percent: as off the chain; undefined where it is not known. */
function heatOnParts(ratings: SlingRatings, { grade, temperature, hottest }: LiftSling): number | undefined {
  const read = (given: LiftSling['temperature'], path: string) =>
    given === undefined ? undefined : readQuantity(given, 'temperature', path);
  const now = read(temperature, 'sling.temperature');
  return heatReduction(ratings, grade, now, read(hottest, 'sling.hottest'), [], new Working(false));
}

function afterHeat(limit: QuantityLike, percent = 0): QuantityLike {
  return percent === 0 ? limit : { value: decimalProduct(limit.value, (100 - percent) / 100), unit: limit.unit };
}

/** Hooks and links that carry grade and size alone are rated as one leg of such chain; European ones need a mark of their own. */
function ratingsOfParts({ id, units, grades }: SlingRatings): CapacityTable {
  const marks = marksAlone('workingLoadLimit', id);
  if (units === 'si') return marks;
  const rows: { [size: string]: { [grade: string]: { wll_lb: number } } } = {};
  let source = marks.chain.source;
  for (const [grade, table] of Object.entries(grades)) {
    source = table.source;
    for (const [size, { single_lb }] of Object.entries(table.rows)) {
      if (typeof single_lb === 'number') rows[size] = { ...rows[size], [grade]: { wll_lb: single_lb } };
    }
  }
  return { ...marks, units, chain: { source, rows } };
}

/** What lifts, and whether its maker lets it. */
function judgeMachine(
  { machine, riggingMass }: CheckLiftInput,
  mass: QuantityLike,
  checks: Check[],
  working: Working,
): void {
  const about = { weight: 'requirement', subject: 'machine' } as const;
  const capacity = {
    ...about,
    id: 'capacity/machine',
    title: 'load and rigging within what the maker states',
    clause: "maker's statement",
  };
  if (machine === undefined) {
    checks.push(undeterminedCheck(capacity, [note('MACHINE_NOT_STATED')]));
    return;
  }
  checkObject(machine, 'machine', '{ kind, liftCapacity }');
  const { kind, makerAllows } = machine;
  checkOneOf(kind, ['crane', 'hoist', 'excavator', 'loader', 'forks', 'other'], 'machine.kind');
  const limit = readOptional(machine.liftCapacity, 'ratedLoad', 'machine.liftCapacity');
  const rigging = readOptional(riggingMass, 'mass', 'riggingMass');
  if (rigging === undefined) working.assumptions.push(note('RIGGING_MASS_NOT_COUNTED'));
  if (limit === undefined) checks.push(undeterminedCheck(capacity, [note('MACHINE_CAPACITY_NOT_STATED')]));
  else checks.push(loadCheck(capacity, rigging === undefined ? [mass] : [mass, rigging], limit));
  if (kind === 'forks' || kind === 'loader' || kind === 'excavator') working.cautions.push(note('MAKER_DECIDES'));
  const allowed = {
    ...about,
    id: 'maker/machine',
    title: 'maker lets it lift a hanging load',
    clause: '29 CFR 1910.178(a)(4), letter of October 22, 1999',
  };
  if (makerAllows !== undefined) {
    checkFlag(makerAllows, 'machine.makerAllows');
    checks.push(makerAllows ? metCheck(allowed) : failedCheck(allowed, note('MAKER_DOES_NOT_ALLOW')));
  } else if (kind === 'forks') checks.push(undeterminedCheck(allowed, [note('MAKER_MUST_ALLOW_FORKS')]));
}
