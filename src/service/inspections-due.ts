import { fail } from '../errors.js';
import type { InspectionKind, Interval, IntervalSet, ServiceClass } from '../tables/interval-set.js';
import { rowOf } from '../tables/rating-table.js';
import { type Note, note } from '../working/note.js';
import type { Provenance } from '../working/source.js';
import type { Working } from '../working/step.js';
import { type DayNumber, later, writeDate } from './calendar.js';

/** An inspection that comes next. */
export interface InspectionDueOn {
  readonly item: string;
  readonly kind: InspectionKind | 'each-use';
  /** The last of its kind in the history. */
  readonly last?: string;
  /** Where the source gives a range, its earlier end. */
  readonly from?: string;
  /** The day by which it is due; left out where the calendar does not decide. */
  readonly by?: string;
  readonly overdue?: boolean;
  /** Why there is no day. */
  readonly because?: Note;
  readonly clause: string;
  readonly provenance: Provenance;
}

/** The days on which something was inspected, by the kind of inspection. */
export type LastInspections = { readonly [kind in InspectionKind]?: DayNumber };

/** What is due next under a set of intervals, for a class of service. */
export function inspectionsDue(
  intervals: IntervalSet,
  service: ServiceClass | undefined,
  last: LastInspections,
  asOf: DayNumber,
  working: Working,
): readonly InspectionDueOn[] {
  const found: InspectionDueOn[] = [];
  for (const [item, classes] of Object.entries(intervals.due.rows)) {
    const own = service === undefined ? undefined : rowOf(classes as Readonly<Record<string, Kinds>>, service);
    for (const kinds of [classes.any, own]) {
      for (const [kind, interval] of Object.entries(kinds ?? {})) {
        found.push(dueOn(intervals, item, kind as InspectionKind, interval, last, asOf, working));
      }
    }
  }
  return found;
}

type Kinds = { readonly [kind in InspectionKind | 'each-use']?: Interval };

function dueOn(
  { short, document, asOf: edition }: IntervalSet,
  item: string,
  kind: InspectionKind | 'each-use',
  { least, least_unit, most, most_unit, clause, provenance = 'read' }: Interval,
  inspected: LastInspections,
  asOf: DayNumber,
  working: Working,
): InspectionDueOn {
  working.cite({ document, ...(edition === '' ? {} : { edition }), clause, provenance });
  const about = { item, kind };
  const ground = { clause: `${short} ${clause}`, provenance };
  if (kind === 'each-use') return { ...about, because: note('BEFORE_EACH_USE'), ...ground };
  // a thorough inspection looks at all that a frequent one does
  const last = kind === 'frequent' ? Math.max(inspected.thorough ?? 0, inspected.frequent ?? 0) : inspected[kind];
  const lastDay = last === undefined || last === 0 ? undefined : writeDate(last);
  const known = lastDay === undefined ? {} : { last: lastDay };
  if (most === undefined || most_unit === undefined) {
    return { ...about, ...known, because: note('QUALIFIED_PERSON'), ...ground };
  }
  if (last === undefined || lastDay === undefined) {
    return { ...about, because: note('LAST_NOT_RECORDED', { kind }), ...ground };
  }
  const day = later(last, most, most_unit);
  const by = writtenDay(day);
  working.step(
    item,
    `next ${kind}`,
    'last + interval',
    { last: lastDay, interval: `${most} ${most_unit}` },
    by,
    ground.clause,
  );
  return {
    ...about,
    ...known,
    ...(least === undefined || least_unit === undefined ? {} : { from: writtenDay(later(last, least, least_unit)) }),
    by,
    overdue: day < asOf,
    ...ground,
  };
}

function writtenDay(day: DayNumber): string {
  return writeDate(day) ?? fail('NOT_A_DATE', 'history', 'a day before the year 10000', day, 'Check the dates.');
}
