import { fail, mapAt } from '../errors.js';
import { checkFlag, checkList, checkObject, checkOneOf } from '../input-checks.js';
import type { CriteriaSet } from '../tables/criteria-set.js';
import {
  INSPECTION_KINDS,
  type InspectionKind,
  type IntervalSet,
  SERVICE_CLASSES,
  type ServiceClass,
} from '../tables/interval-set.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type DayNumber, readDate, writeDate } from './calendar.js';
import { amountOf, type LimitCheck, type Measured } from './criterion-check.js';
import { finite } from './evidence.js';
import { type ChainInspection, checkCriteria, inspectChain } from './inspect-chain.js';
import { type ChainMeasurements, type ChainWhenNew, checkCount } from './inspection.js';
import { type InspectionDueOn, inspectionsDue } from './inspections-due.js';
import { crossing, fitLine, type RecordPoint } from './trend.js';

/** One inspection of the chain. */
export interface InspectionRecord {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly measurements: ChainMeasurements;
  /** Left out: thorough. One that leaves something undetermined counts as frequent, if anything was looked at. */
  readonly kind?: InspectionKind;
  /** `true`: a competent person put right, before this inspection, what earlier ones removed the chain for. */
  readonly repaired?: boolean;
}

/** So many tensionings up to a day, since the record before it. */
export interface TensioningRecord {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly count: number;
}

/** What is known of the past of one chain, in any order. */
export interface ChainHistory {
  readonly inspections: readonly InspectionRecord[];
  readonly tensionings?: readonly TensioningRecord[];
}

/** A date and the ends of its 95 percent confidence interval. */
export interface ProjectedDate {
  readonly date: string;
  readonly earliest: string;
  /** Null where it lies beyond the calendar. */
  readonly latest: string | null;
  /** The line met the limit before `asOf`. */
  readonly overdue?: true;
}

/** A total number of tensionings and the ends of its 95 percent confidence interval. */
export interface ProjectedCount {
  readonly count: number;
  readonly fewest: number;
  readonly most: number;
}

/** What one criterion measures, over the records. */
export interface CriterionTrend {
  /** The id of the check, such as `elongation/chain`. */
  readonly id: string;
  readonly title: string;
  readonly clause: string;
  readonly records: number;
  /** In the latest record that has it. */
  readonly measured: Measured;
  readonly limit: Measured;
  /** Change in 365.25 days; null with fewer than three different days. */
  readonly perYear: Measured | null;
  /** When the line meets the limit; null where that does not follow. */
  readonly projected: ProjectedDate | null;
  /** The same over tensionings, where they are recorded. */
  readonly afterTensionings?: ProjectedCount;
  /** Why nothing is projected. */
  readonly because?: Note;
}

/** A number of tensionings after which the owner retires a chain. */
export interface CountLimit {
  readonly limit: number;
  readonly done: number;
  readonly left: number;
  /** The day on which it is reached at the average pace so far; null where there is no pace. */
  readonly date: string | null;
  readonly basis: "owner's policy";
}

export interface RetirementForecast extends ResultBase<'forecastRetirement'> {
  /**
   * The verdict of the latest inspection, the worst of its day: `remove` also where a limit of tensionings is reached, and
   * `undetermined` where an earlier one was `remove` and no repair is stated.
   */
  readonly verdict: ChainInspection['verdict'];
  /** What comes first: the criterion, its day, and the earliest day of its interval. Null where nothing is projected. */
  readonly retire: {
    readonly by: string;
    readonly date: string;
    readonly earliest: string;
    readonly overdue?: true;
  } | null;
  readonly trends: readonly CriterionTrend[];
  readonly countLimit?: CountLimit;
  readonly due: readonly InspectionDueOn[];
  readonly missing: readonly Note[];
  readonly criteria: string;
  readonly intervals?: string;
}

export interface ForecastRetirementInput {
  readonly criteria: CriteriaSet;
  readonly chain: ChainWhenNew;
  readonly history: ChainHistory;
  /** Today, as YYYY-MM-DD: the library reads no clock. */
  readonly asOf: string;
  /** How often to inspect; left out: nothing is said of it. */
  readonly intervals?: IntervalSet;
  readonly service?: ServiceClass;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

/** A record, judged. */
interface Inspected {
  readonly day: DayNumber;
  readonly kind: InspectionKind | undefined;
  readonly repaired: boolean;
  /** Whether the chain or its hook was looked over. */
  readonly looked: boolean;
  /** Tensionings since new, up to that day. */
  readonly tensioned: number;
  readonly result: ChainInspection;
}

/**
 * When a chain will come to a limit of its criteria, by a straight line through its records, and when it is to be inspected
 * next.
 *
 * Every record is judged as {@link inspectChain} does. What a criterion measures is fitted over the days by least squares,
 * y = ȳ + b · (x − x̄), and meets its limit L at x = x̄ + (L − ȳ) / b. Its 95 percent confidence interval is that of Fieller:
 * all x for which |ȳ + b · (x − x̄) − L| ≤ t · s · √(1/n + (x − x̄)² / Sxx), with Student's t for n − 2 degrees of freedom.
 * Days are rounded down. The same is done over tensionings where they are recorded. With fewer than three different days
 * nothing is projected, nor where the slope does not differ from zero with the same confidence, nor further ahead than three
 * times as long as the records span. Records before a repair are of another chain and not in the line. Tensionings are those
 * recorded, or those that an inspection states with what was recorded after it, whichever is more.
 *
 * @param input.criteria a set such as {@link euEn12195_3_2001_criteria}, or {@link housePolicy} with a number of tensionings
 * @param input.chain as it was when new, as for {@link inspectChain}
 * @param input.history `{ inspections: [{ date, measurements, kind?, repaired? }], tensionings?: [{ date, count }] }`, dates as YYYY-MM-DD
 * @param input.asOf today, YYYY-MM-DD; no record may lie after it
 * @param input.intervals such as {@link us29cfr1910_184_2011_intervals}, with the class of `service` where the set has classes
 * @throws RiggingError `NOT_A_DATE`, `EMPTY_LIST`, `CONFLICTING_FIELDS` (a record after `asOf`), `UNKNOWN_VALUE` and what
 * {@link inspectChain} throws
 * @validity a chain used as before; an overload ends any forecast
 * @source the document of each set; a limit of tensionings is the owner's policy: no standard found sets one
 * @example
 * const inspected = (date: string, length: '331 mm' | '332 mm' | '333 mm') => ({
 *   date,
 *   measurements: { section: { links: 11, length }, found: [] },
 * });
 * forecastRetirement({
 *   criteria: housePolicy({ elongation: { limit: 0.02, over: true } }),
 *   chain: { pitch: '30 mm' },
 *   history: {
 *     inspections: [inspected('2024-01-01', '331 mm'), inspected('2025-01-01', '332 mm'), inspected('2026-01-02', '333 mm')],
 *   },
 *   asOf: '2026-03-01',
 * }).retire?.date
 * // => '2029-08-11'
 */
export function forecastRetirement(input: ForecastRetirementInput): RetirementForecast {
  checkObject(input, '', '{ criteria, chain, history, asOf }');
  const { criteria, chain, history, intervals, service } = input;
  checkCriteria(criteria);
  checkObject(history, 'history', '{ inspections }');
  if (service !== undefined) checkOneOf(service, SERVICE_CLASSES, 'service');
  const working = new Working(input.working !== false);
  const asOf = readDate(input.asOf, 'asOf');
  const tensionings = readTensionings(history, asOf);
  const records = readRecords(history, asOf);
  const countUpTo = counterOf(tensionings, records);
  const inspections = judgeRecords(criteria, chain, records, countUpTo);

  const countLimit = countUpTo && countLimitOf(criteria, countUpTo(asOf), tensionings[0]?.day, asOf, working);
  const standing = standingOf(inspections, countLimit);
  const trends = trendsOf(sinceRepair(inspections), countUpTo !== undefined, input.asOf, working);
  const due = intervals === undefined ? [] : dueOf(input, intervals, inspections, asOf, working);
  const missing = [
    ...standing.missing,
    ...trends.flatMap(({ because }) => (because?.code === 'THREE_RECORDS' ? [because] : [])),
    ...(trends.length === 0 ? [note('THREE_RECORDS', { title: criteria.title, records: 0 })] : []),
    ...due.flatMap(({ because }) => (because?.code === 'LAST_NOT_RECORDED' ? [because] : [])),
    ...(intervals === undefined ? [] : intervalsNotListed(intervals, service, due)),
  ];
  for (const source of standing.by.result.sources) working.cite(source);
  if (inspections.some(({ kind }) => kind === undefined)) working.assumptions.push(note('TAKEN_AS_THOROUGH'));
  if (trends.some(({ projected }) => projected !== null)) {
    working.assumptions.push(note('STRAIGHT_LINE'), note('INTERVAL_OF_SCATTER'));
  }
  if (countLimit !== undefined) working.cautions.push(note('OWNERS_POLICY'));
  else if (tensionings.length > 0) working.cautions.push(note('NO_COUNT_IN_STANDARDS'));
  working.cautions.push(FORECAST_IS_NO_PERMISSION, FOLLOW_THE_MARK);
  return makeResult(
    'forecastRetirement',
    {
      verdict: standing.verdict,
      retire: firstOf(standing, trends, countLimit, input.asOf),
      trends,
      ...(countLimit === undefined ? {} : { countLimit }),
      due,
      missing,
      criteria: criteria.id,
      ...(intervals === undefined ? {} : { intervals: intervals.id }),
    },
    input,
    working,
  );
}

const FORECAST_IS_NO_PERMISSION: Note = /* @__PURE__ */ note('FORECAST_IS_NO_PERMISSION');

interface Tensioned {
  readonly day: DayNumber;
  readonly count: number;
}

function readTensionings({ tensionings = [] }: ChainHistory, asOf: DayNumber): readonly Tensioned[] {
  checkList(tensionings, 'history.tensionings', 0);
  return mapAt(tensionings, 'history.tensionings', (record) => {
    checkObject(record, '', '{ date, count }');
    checkCount(record.count, 'count', 0);
    return { day: readPastDate(record.date, asOf), count: record.count };
  }).sort((a, b) => a.day - b.day);
}

function readPastDate(text: unknown, asOf: DayNumber): DayNumber {
  const day = readDate(text, 'date');
  if (day > asOf) fail('CONFLICTING_FIELDS', 'date', 'a day up to asOf', text, 'Check the date, and asOf.');
  return day;
}

/** A record as it was read. */
interface ReadRecord {
  readonly day: DayNumber;
  readonly record: InspectionRecord;
}

function readRecords(history: ChainHistory, asOf: DayNumber): readonly ReadRecord[] {
  checkList(history.inspections, 'history.inspections');
  return mapAt(history.inspections, 'history.inspections', (record) => {
    checkObject(record, '', '{ date, measurements }');
    const { date, measurements, kind, repaired } = record;
    if (kind !== undefined) checkOneOf(kind, INSPECTION_KINDS, 'kind');
    checkFlag(repaired, 'repaired');
    checkObject(measurements, 'measurements', '{ diameters, section, found }');
    const { tensionings } = measurements;
    if (tensionings !== undefined) checkCount(tensionings, 'measurements.tensionings', 0);
    return { day: readPastDate(date, asOf), record };
  });
}

/** Tensionings since new up to a day, whichever record says most; undefined where none says anything. */
function counterOf(
  tensionings: readonly Tensioned[],
  records: readonly ReadRecord[],
): ((day: DayNumber) => number) | undefined {
  const stated = records.flatMap(({ day, record: { measurements } }): Tensioned[] =>
    measurements.tensionings === undefined ? [] : [{ day, count: measurements.tensionings }],
  );
  if (tensionings.length === 0 && stated.length === 0) return undefined;
  const recorded = (after: DayNumber, upTo: DayNumber) =>
    tensionings.reduce((sum, { day, count }) => (day > after && day <= upTo ? sum + count : sum), 0);
  return (upTo) =>
    stated.reduce(
      (most, { day, count }) => (day > upTo ? most : Math.max(most, count + recorded(day, upTo))),
      recorded(0, upTo),
    );
}

/** Every record judged, the earliest first. */
function judgeRecords(
  criteria: CriteriaSet,
  chain: ChainWhenNew,
  records: readonly ReadRecord[],
  countUpTo: ((day: DayNumber) => number) | undefined,
): readonly Inspected[] {
  return mapAt(records, 'history.inspections', ({ day, record: { measurements, kind, repaired = false } }) => {
    const tensioned = countUpTo?.(day) ?? 0;
    const counted = countUpTo === undefined ? measurements : { ...measurements, tensionings: tensioned };
    const looked = measurements.found !== undefined || measurements.hook?.found !== undefined;
    const result = inspectChain({ criteria, chain, measurements: counted, working: false });
    return { day, kind, repaired, looked, tensioned, result };
  }).sort((a, b) => a.day - b.day);
}

/** From the last repair on. */
function sinceRepair(inspections: readonly Inspected[]): readonly Inspected[] {
  const repair = inspections.filter(({ repaired }) => repaired).at(-1);
  return repair === undefined ? inspections : inspections.filter(({ day }) => day >= repair.day);
}

/** What the records say of the chain today. */
interface Standing {
  readonly verdict: ChainInspection['verdict'];
  /** The inspection that decides. */
  readonly by: Inspected;
  readonly missing: readonly Note[];
}

/** The worst of the latest day; a chain that was to be removed before stays so until a repair is stated. */
function standingOf(inspections: readonly Inspected[], countLimit: CountLimit | undefined): Standing {
  const lastDay = inspections.at(-1)?.day;
  const ofLastDay = inspections.filter(({ day }) => day === lastDay);
  const having = (verdict: Standing['verdict']) => ofLastDay.filter(({ result }) => result.verdict === verdict);
  const [worst = []] = [having('remove'), having('undetermined'), having('fit')].filter(({ length }) => length > 0);
  const by = worst[0] as Inspected;
  const missing = [...new Map(worst.flatMap(({ result }) => result.missing).map((each) => [each.text, each])).values()];
  const isUsedUp = countLimit !== undefined && countLimit.left <= 0;
  if (isUsedUp || by.result.verdict === 'remove') return { verdict: 'remove', by, missing };
  const removed = inspections.filter(({ result }) => result.verdict === 'remove').at(-1);
  const isRepaired = removed !== undefined && inspections.some(({ day, repaired }) => repaired && day > removed.day);
  if (removed === undefined || isRepaired) return { verdict: by.result.verdict, by, missing };
  const open = note('REPAIR_NOT_STATED', { date: writeDate(removed.day) ?? '', check: removed.result.governing ?? '' });
  return { verdict: 'undetermined', by: removed, missing: [...missing, open] };
}

/** Wear and growth go on; a temperature or a twist does not, and stretch that is seen is growth once more. */
function isTrended(check: ChainInspection['checks'][number]): check is LimitCheck {
  if (!('limit' in check) || check.bound !== undefined || check.id === 'visible-stretch/chain') return false;
  return typeof check.measured !== 'number' && (check.measured.unit === '%' || check.measured.unit === 'in');
}

function trendsOf(
  inspections: readonly Inspected[],
  withTensionings: boolean,
  asOf: string,
  working: Working,
): readonly CriterionTrend[] {
  const series = new Map<string, { readonly record: Inspected; readonly check: LimitCheck }[]>();
  for (const record of inspections) {
    for (const check of record.result.checks.filter(isTrended)) {
      series.set(check.id, [...(series.get(check.id) ?? []), { record, check }]);
    }
  }
  return [...series.values()].map((records) => {
    // of one day the worst comes last and is the one that is shown
    records.sort((a, b) => a.record.day - b.record.day || amountOf(b.check.left) - amountOf(a.check.left));
    const { check } = records.at(-1) as (typeof records)[number];
    const over = (x: (record: Inspected) => number): readonly RecordPoint[] =>
      records.map(({ record, check }) => ({ x: x(record), y: amountOf(check.measured) }));
    if (isNear(check)) {
      const [measured, limit] = [check.measured, check.limit].map((each) => Number(amountOf(each).toPrecision(4)));
      working.cautions.push(note('NEAR_LIMIT', { title: check.title, measured: measured ?? 0, limit: limit ?? 0 }));
    }
    return trendOf(
      check,
      over(({ day }) => day),
      withTensionings ? over(({ tensioned }) => tensioned) : [],
      asOf,
      working,
    );
  });
}

/** Nine tenths of a limit from below, or a hundredth over a least value: of the tenth that sources leave, nine tenths too. */
function isNear({ verdict, measured, limit, removedWhen }: LimitCheck): boolean {
  const [now, end] = [amountOf(measured), amountOf(limit)];
  return verdict === 'pass' && (removedWhen === '<' ? 100 * now <= 101 * end : 10 * now >= 9 * end);
}

const DAYS_PER_YEAR = 365.25;

function trendOf(
  check: LimitCheck,
  overDays: readonly RecordPoint[],
  overCounts: readonly RecordPoint[],
  asOf: string,
  working: Working,
): CriterionTrend {
  const { id, title, clause, measured, limit, removedWhen } = check;
  const line = fitLine(overDays);
  const { projected, because } = projectedDate(check, overDays, asOf, working);
  const counts = projection(overCounts, amountOf(limit), removedWhen);
  return {
    id,
    title,
    clause,
    records: overDays.length,
    measured,
    limit,
    perYear: line === undefined ? null : inUnitOf(limit, line.slope * DAYS_PER_YEAR),
    projected,
    ...(typeof counts === 'object'
      ? {
          afterTensionings: {
            count: whole(counts.at),
            fewest: whole(counts.from),
            most: whole(counts.to),
          },
        }
      : {}),
    ...(because === undefined ? {} : { because }),
  };
}

const inUnitOf = (like: Measured, value: number): Measured =>
  typeof like === 'number' ? finite(value) : { value: finite(value), unit: like.unit };

/** Rounded down, but for the last digits of the arithmetic: a line through whole days meets 300 and not 299.9999999. */
const whole = (value: number): number => Math.floor(Number(value.toFixed(6)));

/** Where the line through the records meets the limit, or the code that says why it does not. */
function projection(points: readonly RecordPoint[], limit: number, removedWhen: LimitCheck['removedWhen']) {
  const line = fitLine(points);
  if (line === undefined) return 'THREE_RECORDS';
  const toward = removedWhen === '<' ? -line.slope : line.slope;
  if (!(toward > 0)) return 'NO_TREND';
  const found = crossing(line, limit);
  if (found === undefined) return 'TREND_NOT_CLEAR';
  const all = points.map(({ x }) => x);
  const [first, last] = [Math.min(...all), Math.max(...all)];
  return whole(found.at) - last > REACH * (last - first) ? 'TREND_TOO_SHORT' : found;
}

/** A line is drawn on no further than so many times the span of its records: a choice, no rule. */
const REACH = 3;

function projectedDate(
  { title, subject, limit, removedWhen, verdict, clause }: LimitCheck,
  points: readonly RecordPoint[],
  asOf: string,
  working: Working,
): { readonly projected: ProjectedDate | null; readonly because?: Note } {
  if (verdict === 'fail') return { projected: null, because: note('PAST_LIMIT') };
  const found = projection(points, amountOf(limit), removedWhen);
  if (found === 'THREE_RECORDS') {
    return { projected: null, because: note('THREE_RECORDS', { title, records: points.length }) };
  }
  if (found === 'TREND_TOO_SHORT') return { projected: null, because: note(found, { times: REACH }) };
  if (typeof found === 'string') return { projected: null, because: note(found) };
  const [date, earliest, latest] = [found.at, found.from, found.to].map((day) => writeDate(whole(day)));
  if (date === undefined || earliest === undefined) return { projected: null, because: note('BEYOND_CALENDAR') };
  const line = fitLine(points);
  const values = {
    'mean day': writeDate(whole(line?.meanX ?? 0)) ?? '',
    'mean measured': line?.meanY ?? 0,
    limit: amountOf(limit),
    'slope a day': line?.slope ?? 0,
  };
  working.step(
    subject,
    `${title}: day of the limit`,
    'mean day + (limit − mean measured) / slope a day',
    values,
    date,
    clause,
  );
  const isOverdue = date < asOf; // written so that text sorts as time does
  if (isOverdue) working.cautions.push(note('LIMIT_OVERDUE', { title, date }));
  return { projected: { date, earliest, latest: latest ?? null, ...(isOverdue ? { overdue: true } : {}) } };
}

function countLimitOf(
  { removal }: CriteriaSet,
  done: number,
  since: DayNumber | undefined,
  asOf: DayNumber,
  working: Working,
): CountLimit | undefined {
  const limit = removal.rows.chain?.tensionings?.limit;
  if (limit === undefined) return undefined;
  const left = limit - done;
  const days = since === undefined ? 0 : asOf - since;
  const pace = days > 0 ? done / days : 0;
  const date = left > 0 && pace > 0 ? (writeDate(asOf + Math.floor(left / pace)) ?? null) : null;
  if (date !== null) {
    working.assumptions.push(note('AVERAGE_PACE'));
    working.step('chain', 'days left', 'left / (done / days)', { left, done, days }, Math.floor(left / pace));
  }
  return { limit, done, left, date, basis: "owner's policy" };
}

function dueOf(
  { service }: ForecastRetirementInput,
  intervals: IntervalSet,
  inspections: readonly Inspected[],
  asOf: DayNumber,
  working: Working,
): readonly InspectionDueOn[] {
  if (typeof intervals?.due?.rows !== 'object' || intervals.due.rows === null) {
    const remedy = 'Import one, such as us29cfr1910_184_2011_intervals.';
    fail('UNKNOWN_CRITERIA_SET', 'intervals', 'a set of inspection intervals', intervals, remedy);
  }
  const last: { [kind in InspectionKind]?: DayNumber } = {};
  for (const inspected of inspections) {
    const kind = countsAs(inspected);
    if (kind !== undefined) last[kind] = inspected.day; // the earliest first, so the latest stays
    if (
      kind !== (inspected.kind ?? 'thorough') &&
      !working.cautions.some(({ code }) => code === 'OPEN_IS_NOT_THOROUGH')
    )
      working.cautions.push(note('OPEN_IS_NOT_THOROUGH'));
  }
  return inspectionsDue(intervals, service, last, asOf, working);
}

/** A thorough inspection decides everything that its criteria ask for; one that was no more than a look is a frequent one. */
function countsAs({ kind = 'thorough', looked, result: { verdict } }: Inspected): InspectionKind | undefined {
  if (verdict !== 'undetermined') return kind;
  if (!looked) return undefined;
  return kind === 'thorough' ? 'frequent' : kind;
}

/** Where a source has intervals of a kind for some classes of service, and none of them is this one. */
function intervalsNotListed(
  { due: { rows }, title }: IntervalSet,
  service: ServiceClass | undefined,
  due: readonly InspectionDueOn[],
): readonly Note[] {
  const isAbsent = Object.entries(rows).some(([item, classes]) =>
    Object.values(classes)
      .flatMap((kinds) => Object.keys(kinds))
      .some((kind) => !due.some((each) => each.item === item && each.kind === kind)),
  );
  if (!isAbsent) return [];
  return [service === undefined ? note('SERVICE_NOT_STATED', { title }) : note('INTERVAL_NOT_LISTED', { title })];
}

/** What ends the chain first. One that is past a limit ends now. */
function firstOf(
  { verdict, by: { result } }: Standing,
  trends: readonly CriterionTrend[],
  countLimit: CountLimit | undefined,
  asOf: string,
): RetirementForecast['retire'] {
  if (result.verdict === 'remove') return { by: result.governing ?? '', date: asOf, earliest: asOf };
  if (verdict === 'remove') return { by: 'tensionings/chain', date: asOf, earliest: asOf };
  const all = trends.flatMap(({ id, projected }): NonNullable<RetirementForecast['retire']>[] => {
    if (projected === null) return [];
    const { date, earliest, overdue } = projected;
    return [{ by: id, date, earliest, ...(overdue === undefined ? {} : { overdue }) }];
  });
  if (countLimit?.date != null) all.push({ by: 'tensionings/chain', date: countLimit.date, earliest: countLimit.date });
  return all.reduce<RetirementForecast['retire']>(
    (first, each) => (first === null || each.date < first.date ? each : first), // written so that text sorts as time does
    null,
  );
}
