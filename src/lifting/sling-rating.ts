import { type AnyGrade, checkChain, type TradeSize } from '../chain/trade-size.js';
import { fail, mapAt } from '../errors.js';
import { checkFlag, checkList, checkObject, checkOneOf } from '../input-checks.js';
import { compare } from '../quantities/arithmetic.js';
import { valueIn } from '../quantities/convert.js';
import { decimalProduct } from '../quantities/decimal.js';
import { compareExact, ratioOf } from '../quantities/exact.js';
import type { Quantity, QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readOptional, readPositive, readQuantity } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { deDin56881986Unsymmetric } from '../tables/generated/de-din5688-1986-unsymmetric.js';
import { slingRules } from '../tables/generated/sling-rules.js';
import { rowOf } from '../tables/rating-table.js';
import type { SlingCell, SlingGradeOf, SlingHitch, SlingRatings, SlingSizeOf } from '../tables/sling-ratings.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import {
  type Check,
  failedCheck,
  metCheck,
  overallVerdict,
  ratioCheck,
  undeterminedCheck,
  type Verdict,
} from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { Provenance } from '../working/source.js';
import { Working } from '../working/step.js';
import { type Angle, compareLean, type ReadAngle, readAngle } from './angle.js';
import { judgeGrade } from './grade-for-lifting.js';
import { heatReduction } from './heat.js';
import { leanAlike, nearlyAlike, spreadOf } from './legs-alike.js';

/** Where the limit of a sling comes from: its tag, the table, or the formula. */
export type SlingBasis = 'marked' | 'table' | 'formula';

export interface SlingRating extends ResultBase<'slingRating'> {
  /**
   * `fail` where the chain or the way it is hung is not for lifting, or the load is over the limit; `undetermined` where a
   * fact is missing. Without a load, `pass` says that the sling has a limit as it is hung.
   */
  readonly verdict: Verdict;
  /** What the whole sling may lift as it is hung; null where it may not be used so, or a fact is missing. */
  readonly workingLoadLimit: Quantity<'lb' | 'kg'> | null;
  readonly basis: SlingBasis | null;
  /** Load over limit; only with a load. */
  readonly utilization?: number | null;
  readonly checks: readonly Check[];
  readonly hitch: SlingHitch;
  /** The table's id. */
  readonly ratings: string;
}

/** A sling as it is hung. */
export interface HungSling {
  /** How it is hung. Two, three or four legs; a basket is a chain under the load, a choker one tight around it. */
  readonly hitch: SlingHitch;
  /** Of the flattest leg, with the way it is counted; not for a single leg, which hangs plumb, nor a choker of one leg. */
  readonly angle?: Angle;
  /** Of every leg, in place of `angle`, where they do not lean alike. */
  readonly legAngles?: readonly Angle[];
  /** Between neighbors, seen from above: one for each leg, 360 degrees in all; the test of three or four legs nearly alike asks for them. */
  readonly planAngles?: readonly QuantityInput<'angle'>[];
  /** Between the two parts of the chain where a choker closes. */
  readonly chokeAngle?: QuantityInput<'angle'>;
  /** Of the chain in use. */
  readonly temperature?: QuantityInput<'temperature'>;
  /** The hottest that the chain has ever been: some of that comes off for good. */
  readonly hottest?: QuantityInput<'temperature'>;
  /** What it is to lift. */
  readonly load?: QuantityInput<'ratedLoad'>;
  /** The angle that the tag rates it at; legs that lean need it beside `markedWll`. */
  readonly markedAt?: Angle;
  /** True where a qualified person has agreed to legs flatter than the document rates. */
  readonly qualifiedPerson?: boolean;
  /** Where the table has no value: by its document's formula, rounded down. Omitted: an error. */
  readonly method?: 'formula';
  /** Units of the result; the table's own when omitted. */
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

/** Input of {@link slingRating} for a sling of chain that the table lists, or of a grade that is not for lifting. */
export interface ListedSling<T extends SlingRatings> extends HungSling {
  readonly ratings: T;
  readonly size: SlingSizeOf<NoInfer<T>>;
  readonly grade: SlingGradeOf<NoInfer<T>> | 30 | 43 | 70;
}

/** Input of {@link slingRating} for a sling that states its limit, or one leg of which has a stated limit: any size and grade. */
export type StatedSling = HungSling & {
  readonly ratings: SlingRatings;
  readonly size?: TradeSize;
  readonly grade?: AnyGrade;
} & (
    | {
        /** The limit on its tag, for this hitch and angle: it governs. */
        readonly markedWll: QuantityInput<'ratedLoad'>;
        readonly singleLegWll?: QuantityInput<'ratedLoad'>;
      }
    | {
        readonly markedWll?: QuantityInput<'ratedLoad'>;
        /** The limit of one leg, plumb, as its maker states it; for the formula, and for a size that the table does not list. */
        readonly singleLegWll: QuantityInput<'ratedLoad'>;
      }
  );

/**
 * What a chain sling may lift as it is hung: the limit on its tag where there is one, else the cell of the named table.
 *
 * Between the angles of a table the next lower one from the horizontal counts, or the range; nothing is interpolated. Where
 * the table is empty, and only if asked, WLL = legs · choke · WLL of one leg · sin(angle from horizontal), rounded down.
 * Heat takes r percent of it. Three legs are credited for four.
 *
 * @param input.ratings a table of sling ratings, such as {@link usAlloySling_2011}
 * @param input.hitch `'single'`, `'double'`, `'triple'`, `'quad'`, `'basket'`, `'double-basket'`, `'choker'`,
 * `'double-choker'`, `'endless-choker'`
 * @param input.angle of the flattest leg, such as `{ fromHorizontal: '60 deg' }`
 * @param input.load mass or force; with it the verdict says whether the sling may lift it
 * @param input.units `'us'` or `'si'`; omitted: the table's own
 * @throws RiggingError `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `NO_VALUE_IN_TABLE`, `MISSING_FIELD`, `CONFLICTING_FIELDS`,
 * `IMPOSSIBLE_GEOMETRY`, `UNKNOWN_VALUE`, `NOT_POSITIVE`, `WRONG_KIND`, `UNKNOWN_RATING_TABLE`
 * @validity a sound sling with a legible tag, load balanced; hooks and links may rate it lower: see {@link checkLift}
 * @source OSHA Guidance on Safe Sling Use; EN 818-4 and 818-5; DIN 5688-1; ASME B30.9 for heat and the formula
 * @example
 * slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 80, hitch: 'double', angle: { fromHorizontal: '50 deg' } }).workingLoadLimit
 * // => 10000 lb
 */
export function slingRating<const T extends SlingRatings>(input: ListedSling<T>): SlingRating;
/**
 * What a sling may lift whose tag states its limit, or one leg of which has a stated limit.
 *
 * @param input `markedWll`, the limit on the tag for this hitch and angle, which governs above or below any table; or
 * `singleLegWll` of one leg, with `method: 'formula'`
 * @throws RiggingError as for a listed sling
 * @source 76 FR 33590 (June 8, 2011): load only to the tag; no tag, no use
 * @example
 * slingRating({ ratings: usAlloySling_2011, grade: 120, hitch: 'single', markedWll: '10600 lb', load: '9000 lb' }).verdict
 * // => 'pass'
 */
export function slingRating(input: StatedSling): SlingRating;
export function slingRating(input: ListedSling<SlingRatings> | StatedSling): SlingRating {
  checkObject(input, '', '{ ratings, size, grade, hitch }');
  const { ratings, hitch, method } = input;
  const size = input.size as string | undefined;
  const grade = input.grade as AnyGrade | undefined;
  checkSlingRatings(ratings);
  checkOneOf(hitch, Object.keys(SHAPES), 'hitch');
  if (size !== undefined) checkChain(size, grade);
  else checkChain('1', grade);
  if (method !== undefined) checkOneOf(method, ['formula'], 'method');
  if (input.qualifiedPerson !== undefined) checkFlag(input.qualifiedPerson, 'qualifiedPerson');
  const unit = massUnitOf(readSystem(input.units, ratings.units));
  const load = readOptional(input.load, 'ratedLoad', 'load');
  const markedWll = 'markedWll' in input ? readOptional(input.markedWll, 'ratedLoad', 'markedWll') : undefined;
  const singleLegWll =
    'singleLegWll' in input ? readOptional(input.singleLegWll, 'ratedLoad', 'singleLegWll') : undefined;
  const legs = readLegs(input);
  const temperature =
    input.temperature === undefined ? undefined : readQuantity(input.temperature, 'temperature', 'temperature');
  const hottest = input.hottest === undefined ? undefined : readQuantity(input.hottest, 'temperature', 'hottest');
  const chokeAngle = readOptional(input.chokeAngle, 'angle', 'chokeAngle');
  const markedAt = input.markedAt === undefined ? undefined : readAngle(input.markedAt, 'markedAt');
  const planAngles = readPlanAngles(input);
  if (chokeAngle !== undefined && compare(chokeAngle, HALF_TURN) > 0) {
    fail('IMPOSSIBLE_GEOMETRY', 'chokeAngle', 'over 0 to 180 deg', `${chokeAngle}`, 'Two parts meet at no more.');
  }
  if (
    singleLegWll !== undefined &&
    grade !== undefined &&
    rowOf(ratings.grades, grade)?.rows[size ?? ''] !== undefined
  ) {
    fail(
      'CONFLICTING_FIELDS',
      'singleLegWll',
      `the size and grade that ${ratings.id} lists, or a limit of one leg`,
      'both',
      'Leave singleLegWll out; a limit on the tag is markedWll.',
    );
  }

  const working = new Working(input.working !== false);
  const checks: Check[] = [];
  const sling: Sling = { ratings, hitch, size, grade, markedWll, singleLegWll, legs, formula: method === 'formula' };
  let limit: QuantityLike | undefined;
  let basis: SlingBasis | null = null;
  if (judgeGrade(grade, markedWll !== undefined, checks, working)) {
    judgeAngle(sling, markedAt, input.qualifiedPerson === true, checks);
    judgeChoke(sling, chokeAngle, checks);
    const percent = heatReduction(ratings, grade, temperature, hottest, checks, working);
    if (isOpen(checks)) {
      const found = baseLimit(sling, working);
      basis = found.basis;
      limit = ofUnlikeLegs(sling, found, planAngles, load, checks, working);
      if (limit !== undefined && percent !== undefined && percent > 0) {
        const left = { value: decimalProduct(limit.value, (100 - percent) / 100), unit: limit.unit };
        working.step('sling', 'WLL', '(1 - r / 100) · WLL', { WLL: limit, r: percent }, ratedLoadIn(left, unit));
        limit = left;
      }
    }
  }
  const answer: { utilization?: number | null } = {};
  if (load !== undefined && limit !== undefined) {
    const held = limit;
    const { fits, utilization } = ratioOf(ratedLoadIn(load, 'kg').value, ratedLoadIn(held, 'kg').value, () =>
      compareExact(load, held),
    );
    const clause = basis === 'marked' ? '76 FR 33590' : ratings.title;
    const about = {
      id: 'load/sling',
      title: 'load within the limit of the sling',
      clause,
      weight: 'requirement',
      subject: 'sling',
    } as const;
    checks.push(ratioCheck(about, fits, load, ratedLoadIn(held, unit), utilization));
    answer.utilization = utilization;
  }
  if (hitch === 'triple' || hitch === 'quad') {
    const { credited } = countedLegs(hitch);
    working.cautions.push(
      note('QUAD_CREDITED', { credited, cautious: slingRules.rows['cautious-legs-of-three-or-four'].value }),
    );
  }
  working.cautions.push(NO_TAG_NO_USE, NO_SHOCK, STAY_CLEAR_OF_LOAD, FOLLOW_THE_MARK);
  return makeResult(
    'slingRating',
    {
      verdict: overallVerdict(checks),
      workingLoadLimit: limit === undefined ? null : ratedLoadIn(limit, unit),
      basis: limit === undefined ? null : basis,
      ...answer,
      checks,
      hitch,
      ratings: ratings.id,
    },
    input,
    working,
  );
}

/** Refuses anything that is no table of sling ratings. */
export function checkSlingRatings(ratings: unknown): asserts ratings is SlingRatings {
  const { ranges, columns, flatter, grades, heat } = (ratings ?? {}) as Partial<SlingRatings>;
  const whole = [columns, flatter, grades, heat?.table].every((each) => typeof each === 'object' && each !== null);
  if (!whole || !Array.isArray(ranges) || ranges.length === 0) {
    fail(
      'UNKNOWN_RATING_TABLE',
      'ratings',
      'a table of sling ratings',
      ratings,
      'Import one, such as usAlloySling_2011.',
    );
  }
}

/** A hitch: how many legs it has, how many count in the formula, and whether their angle matters. */
interface Shape {
  readonly legs: number;
  /** Which row says how many of them count; one leg counts as one. */
  readonly credited?: 'credited-legs-of-two' | 'credited-legs-of-three-or-four';
  readonly leans: boolean;
  readonly chokes: boolean;
}

const SHAPES: { readonly [hitch in SlingHitch]: Shape } = {
  single: { legs: 1, leans: false, chokes: false },
  double: { legs: 2, credited: 'credited-legs-of-two', leans: true, chokes: false },
  triple: { legs: 3, credited: 'credited-legs-of-three-or-four', leans: true, chokes: false },
  quad: { legs: 4, credited: 'credited-legs-of-three-or-four', leans: true, chokes: false },
  basket: { legs: 2, credited: 'credited-legs-of-two', leans: true, chokes: false },
  'double-basket': { legs: 4, credited: 'credited-legs-of-three-or-four', leans: true, chokes: false },
  choker: { legs: 1, leans: false, chokes: true },
  'double-choker': { legs: 2, credited: 'credited-legs-of-two', leans: true, chokes: true },
  'endless-choker': { legs: 1, leans: false, chokes: true },
};

/** How many legs of a hitch count, and whether their angle matters. */
export function countedLegs(hitch: SlingHitch): { readonly credited: number; readonly leans: boolean } {
  const { credited, leans } = SHAPES[hitch];
  return { credited: credited === undefined ? 1 : slingRules.rows[credited].value, leans };
}

interface Sling {
  readonly ratings: SlingRatings;
  readonly hitch: SlingHitch;
  readonly size: string | undefined;
  readonly grade: AnyGrade | undefined;
  readonly markedWll: QuantityLike | undefined;
  readonly singleLegWll: QuantityLike | undefined;
  /** Every leg as stated, the flattest first; none for a sling that hangs plumb. */
  readonly legs: readonly ReadAngle[];
  readonly formula: boolean;
}

/** The angles of the legs, the flattest first. */
function readLegs({ hitch, angle, legAngles }: HungSling): ReadAngle[] {
  const { legs, leans } = SHAPES[hitch];
  if (angle !== undefined && legAngles !== undefined) {
    fail('CONFLICTING_FIELDS', 'legAngles', 'angle or legAngles', 'both', 'Leave one of them out.');
  }
  if (legAngles !== undefined) {
    checkList(legAngles, 'legAngles');
    if (legAngles.length !== legs) {
      fail(
        'CONFLICTING_FIELDS',
        'legAngles',
        `${legs} angles for hitch ${hitch}`,
        legAngles.length,
        'One for each leg.',
      );
    }
  }
  const read =
    legAngles !== undefined
      ? mapAt(legAngles, 'legAngles', (each) => readAngle(each, ''))
      : angle === undefined
        ? []
        : [readAngle(angle, 'angle')];
  if (!leans) {
    const plumb = slingRules.rows['vertical-within'].value;
    if (read.some((each) => compareLean(each, plumb) > 0)) {
      fail(
        'IMPOSSIBLE_GEOMETRY',
        'angle',
        `a leg within ${plumb} deg of the vertical`,
        'a flatter one',
        'A single leg hangs plumb under the hook.',
      );
    }
    return [];
  }
  if (read.length === 0)
    fail('MISSING_FIELD', 'angle', 'the angle of the flattest leg', angle, "Write { fromHorizontal: '60 deg' }.");
  return read.sort((a, b) => b.fromVertical - a.fromVertical);
}

const HALF_TURN = { value: 180, unit: 'deg' } as const;

/** Between neighbors, seen from above: one for each leg, all the way around. */
function readPlanAngles({ hitch, planAngles }: HungSling): readonly number[] | undefined {
  if (planAngles === undefined) return undefined;
  checkList(planAngles, 'planAngles');
  const { legs } = SHAPES[hitch];
  if (planAngles.length !== legs) {
    fail('CONFLICTING_FIELDS', 'planAngles', `${legs} for hitch ${hitch}`, planAngles.length, 'One for each leg.');
  }
  const degrees = mapAt(planAngles, 'planAngles', (each) => valueIn(readPositive(each, 'angle', ''), 'deg'));
  const around = Number(degrees.reduce((sum, each) => sum + each, 0).toFixed(9));
  if (Math.abs(around - 360) > AS_MEASURED) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'planAngles',
      `angles that add up to 360 deg within ${AS_MEASURED}`,
      `${around} deg`,
      'Measure them from leg to leg, all the way around.',
    );
  }
  return degrees;
}

/** Angles are measured by hand: so many degrees may be missing or too many, all the way around. */
const AS_MEASURED = 1;

/** True while nothing stands against the sling. */
function isOpen(checks: readonly Check[]): boolean {
  return checks.every(({ weight, verdict }) => weight === 'practice' || verdict === 'pass');
}

const ABOUT = { weight: 'requirement', subject: 'sling' } as const;

/** No flatter than the tag or the document rates. */
function judgeAngle(
  { ratings, legs, markedWll }: Sling,
  markedAt: ReadAngle | undefined,
  agreed: boolean,
  checks: Check[],
): void {
  const [flattest] = legs;
  if (flattest === undefined) return;
  const about = { ...ABOUT, id: 'angle/sling', title: 'angle of the flattest leg' };
  const { rule, qualifiedPersonMay } = ratings.flatter;
  const { clause } = slingRules.rows[rule];
  const angle = { value: flattest.fromVertical, unit: 'deg' } as const;
  if (markedWll !== undefined && markedAt === undefined) {
    checks.push(undeterminedCheck({ ...about, clause: '76 FR 33590' }, [note('TAG_ANGLE_NOT_STATED')]));
    return;
  }
  if (markedWll !== undefined && markedAt !== undefined && isFlatter(flattest, markedAt)) {
    const most = { value: markedAt.fromVertical, unit: 'deg' } as const;
    checks.push(failedCheck({ ...about, clause: '76 FR 33590' }, note('FLATTER_THAN_TAG', { angle, most })));
    return;
  }
  const most = ratings.ranges.at(-1)!.toFromVertical;
  const fits = compareLean(flattest, most) <= 0 || (agreed && qualifiedPersonMay);
  const because = note('TOO_FLAT', { angle, most: { value: most, unit: 'deg' } });
  checks.push(fits ? metCheck({ ...about, clause }) : failedCheck({ ...about, clause }, because));
}

/** Whether one leg leans more than another: exactly where both are counted alike. */
function isFlatter(leg: ReadAngle, than: ReadAngle): boolean {
  if (leg.kind !== than.kind) return leg.fromVertical > than.fromVertical + 1e-9;
  const order = compare(leg.stated, than.stated);
  return leg.kind === 'fromHorizontal' ? order < 0 : order > 0;
}

/** A choker closes no sharper than the document rates. */
function judgeChoke({ ratings, hitch, markedWll }: Sling, angle: QuantityLike | undefined, checks: Check[]): void {
  if (!SHAPES[hitch].chokes || ratings.chokeAngle === undefined) return;
  if (markedWll !== undefined && angle === undefined) return; // the tag rates it as a choker
  const { value, clause } = slingRules.rows[ratings.chokeAngle];
  const least = { value, unit: 'deg' } as const;
  const about = { ...ABOUT, id: 'choke/sling', title: 'angle of choke', clause };
  if (angle === undefined) checks.push(undeterminedCheck(about, [note('CHOKE_ANGLE_NOT_STATED', { least })]));
  else if (compare(angle, least) > 0) checks.push(metCheck(about));
  else checks.push(failedCheck(about, note('CHOKE_TOO_SHARP', { angle, least })));
}

interface BaseLimit {
  readonly limit: QuantityLike;
  readonly basis: SlingBasis;
}

/** The limit before heat and unlike legs. */
function baseLimit(sling: Sling, working: Working): BaseLimit {
  const { ratings, hitch, size, grade, markedWll, singleLegWll, legs, formula } = sling;
  const [flattest] = legs;
  if (markedWll !== undefined) {
    working.step('sling', 'WLL', 'limit on the tag', { WLL: markedWll }, markedWll, '76 FR 33590');
    working.cite({
      document: "maker's mark on the tag of the sling",
      provenance: 'read',
      note: 'as the caller states it',
    });
    working.assumptions.push(note('TAG_FOR_THIS_USE'));
    return { limit: markedWll, basis: 'marked' };
  }
  const cell = singleLegWll === undefined ? cellOf(sling) : undefined;
  const source = grade === undefined ? undefined : ratings.grades[grade]?.source;
  const printed = cell && printedLimit(sling, cell, flattest);
  if (printed !== undefined) {
    const { limit, column } = printed;
    working.step(
      'sling',
      'WLL',
      `table(size, grade, ${column})`,
      { size: size ?? '', grade: grade ?? '', hitch },
      limit,
      source?.clause && `${source.document}, ${source.clause}`,
    );
    if (source !== undefined) {
      working.cite({ ...source, provenance: (cell?.provenance as Provenance | undefined) ?? source.provenance });
    }
    if (formula) working.assumptions.push(note('TABLE_BEFORE_FORMULA'));
    return { limit, basis: 'table' };
  }
  const one = singleLegWll ?? (cell && columnOf(sling, cell, 'single'));
  if (!formula || ratings.formula === null || one === undefined) {
    const tooFlat = flattest !== undefined && compareLean(flattest, ratings.ranges.at(-1)!.toFromVertical) > 0;
    return fail(
      'NO_VALUE_IN_TABLE',
      tooFlat ? (legs.length > 1 ? 'legAngles' : 'angle') : 'hitch',
      `a hitch, angle and size that ${ratings.id} prints`,
      tooFlat ? `${flattest.stated}` : hitch,
      formula
        ? 'Give the limit on the tag as markedWll.'
        : "Give the limit on the tag as markedWll, or ask for method: 'formula'.",
    );
  }
  return { limit: byFormula(sling, ratings.formula, one, working), basis: 'formula' };
}

/** The row of the sling's chain, or a typed error that says what the table has. */
function cellOf({ ratings, size, grade }: Sling): SlingCell {
  const table = grade === undefined ? undefined : rowOf(ratings.grades, grade);
  const remedy = 'Give the limit on the tag as markedWll.';
  if (table === undefined) {
    return fail(
      'UNKNOWN_GRADE',
      'grade',
      `a grade of ${ratings.id}: ${Object.keys(ratings.grades).join(', ')}`,
      grade,
      remedy,
    );
  }
  const sizes = Object.keys(table.rows).join(', ');
  return (
    rowOf(table.rows, size ?? '') ??
    fail('UNKNOWN_SIZE', 'size', `a size that ${ratings.id} lists for grade ${grade}: ${sizes}`, size, remedy)
  );
}

function columnOf(
  { ratings: { units } }: Sling,
  cell: SlingCell,
  column: string,
): QuantityLike<'lb' | 'kg'> | undefined {
  const unit = massUnitOf(units);
  const value = cell[`${column}_${unit}`];
  return typeof value === 'number' ? { value, unit } : undefined;
}

/** The printed cell of a hitch at the flattest of its legs. */
function printedLimit(sling: Sling, cell: SlingCell, flattest: ReadAngle | undefined) {
  const { ratings, hitch } = sling;
  const plumb = ratings.plumbBasket && slingRules.rows[ratings.plumbBasket];
  if (hitch === 'basket' && plumb !== undefined && flattest !== undefined && compareLean(flattest, plumb.value) <= 0) {
    const one = columnOf(sling, cell, 'single');
    return one && { limit: { value: 2 * one.value, unit: one.unit }, column: 'twice one leg, plumb' };
  }
  const stem = ratings.columns[hitch];
  if (stem === undefined) return undefined;
  const range = flattest && ratings.ranges.find(({ toFromVertical }) => compareLean(flattest, toFromVertical) <= 0);
  if (flattest !== undefined && range === undefined) return undefined;
  const column = range === undefined ? stem : `${stem}_${range.column}`;
  const limit = columnOf(sling, cell, column);
  return limit && { limit, column };
}

/** legs · choke · WLL of one leg · sin(angle from horizontal), down to a whole step. */
function byFormula(
  sling: Sling,
  formula: NonNullable<SlingRatings['formula']>,
  one: QuantityLike,
  working: Working,
): QuantityLike {
  const { ratings, hitch, legs } = sling;
  const { chokes } = SHAPES[hitch];
  const { credited } = countedLegs(hitch);
  const rule = hitch === 'endless-choker' ? formula.endlessChoker : formula.choker;
  if (chokes && rule === undefined) {
    fail(
      'NO_VALUE_IN_TABLE',
      'hitch',
      `a hitch that ${ratings.id} has a factor for`,
      hitch,
      'Give the limit on the tag as markedWll.',
    );
  }
  const choke = chokes && rule !== undefined ? slingRules.rows[rule] : undefined;
  const [flattest] = legs;
  const sine = flattest === undefined ? 1 : Math.cos((flattest.fromVertical * Math.PI) / 180);
  const unit = massUnitOf(ratings.units);
  const plain = credited * (choke?.value ?? 1) * sine * ratedLoadIn(one, unit).value;
  // 3 · 2000 · sin 30 is 2999.9999999999995 in doubles
  const limit = { value: Math.floor((plain / formula.step) * (1 + 1e-12)) * formula.step, unit };
  if (limit.value === 0)
    fail(
      'NO_VALUE_IN_TABLE',
      'singleLegWll',
      `a sling of ${formula.step} ${unit} or more`,
      `${plain} ${unit}`,
      'Give the limit on the tag as markedWll.',
    );
  const values = {
    legs: credited,
    choke: choke?.value ?? 1,
    'WLL of one leg': one,
    'sin(angle from horizontal)': sine,
  };
  working.step(
    'sling',
    'WLL',
    `legs · choke · WLL of one leg · sin, down to ${formula.step} ${unit}`,
    values,
    limit,
    formula.clause,
  );
  working.cite({ document: ratings.title, clause: formula.clause, provenance: formula.provenance });
  if (choke !== undefined)
    working.cite({
      document: 'factors of choke',
      clause: choke.clause,
      provenance: ('provenance' in choke ? choke.provenance : 'read') as Provenance,
    });
  working.cautions.push(note('FORMULA_NOT_ON_TAG'));
  return limit;
}

/** What counts where the legs do not lean alike; undefined where nobody has said. */
function ofUnlikeLegs(
  sling: Sling,
  { limit, basis }: BaseLimit,
  planAngles: readonly number[] | undefined,
  load: QuantityLike | undefined,
  checks: Check[],
  working: Working,
): QuantityLike | undefined {
  const { ratings, hitch, legs } = sling;
  if (legs.length === 1) working.assumptions.push(note('LEGS_TAKEN_AS_ALIKE'));
  if (legs.length === 0 || (leanAlike(legs) && (planAngles === undefined || spreadOf(planAngles) === 0))) return limit;
  const about = { ...ABOUT, id: 'legs/sling', title: 'legs alike', clause: 'EN 818-6' };
  if (ratings.unlike === 'not rated') {
    checks.push(undeterminedCheck({ ...about, clause: ratings.title }, [note('LEGS_NOT_ALIKE')]));
    return undefined;
  }
  working.cite({
    document: 'EN 818-6',
    clause: 'legs not alike',
    provenance: slingRules.rows['symmetric-spread'].provenance,
  });
  if (nearlyAlike(legs, SHAPES[hitch].legs, planAngles, load, limit)) {
    working.assumptions.push(note('TAKEN_AS_ALIKE'));
    return limit;
  }
  if (ratings.unlike === 'factors' && basis === 'table') {
    const [flattest] = legs as [ReadAngle];
    const { source, rows } = deDin56881986Unsymmetric;
    const row = hitch === 'double' ? rows.double : rows.triple;
    const { factor } = compareLean(flattest, 45) <= 0 ? row[45] : row[60];
    const one = columnOf(sling, cellOf(sling), 'single')!;
    const counted = { value: decimalProduct(one.value, factor), unit: one.unit };
    working.step(
      'sling',
      'WLL',
      'factor of unlike legs · WLL of one leg',
      { factor, 'WLL of one leg': one },
      counted,
      source.clause,
    );
    working.cite(source);
    return counted;
  }
  const share = slingRules.rows['unsymmetric-share'].value;
  const half = { value: decimalProduct(limit.value, share), unit: limit.unit };
  working.step('sling', 'WLL', 'half, legs not alike', { WLL: limit }, half, 'EN 818-6');
  working.cautions.push(note('HALF_FOR_UNLIKE_LEGS'));
  return half;
}

const NO_TAG_NO_USE: Note = /* @__PURE__ */ note('NO_TAG_NO_USE');
const NO_SHOCK: Note = /* @__PURE__ */ note('NO_SHOCK');
const STAY_CLEAR_OF_LOAD: Note = /* @__PURE__ */ note('STAY_CLEAR_OF_LOAD');
