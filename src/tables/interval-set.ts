import type { Provenance } from '../working/source.js';

/** The classes of service that the sources tell apart; `special` is what none of them foresees. */
export type ServiceClass = (typeof SERVICE_CLASSES)[number];

/**
 * Every {@link ServiceClass}.
 *
 * @example
 * SERVICE_CLASSES.includes('severe')
 * // => true
 */
export const SERVICE_CLASSES = ['light', 'normal', 'heavy', 'severe', 'special'] as const;

/** How closely is looked: thorough ones are recorded, frequent ones by eye, and a crack test finds what no eye does. */
export type InspectionKind = (typeof INSPECTION_KINDS)[number];

/**
 * Every {@link InspectionKind} of a record.
 *
 * @example
 * INSPECTION_KINDS.includes('thorough')
 * // => true
 */
export const INSPECTION_KINDS = ['thorough', 'frequent', 'crack-test'] as const;

export type CalendarUnit = 'day' | 'week' | 'month';

/** The time from one inspection to the next; without `most` it is not the calendar that decides. */
export interface Interval {
  /** The shorter end where the source gives a range. */
  readonly least?: number;
  readonly least_unit?: CalendarUnit;
  readonly most?: number;
  readonly most_unit?: CalendarUnit;
  readonly clause: string;
  readonly provenance?: Provenance;
}

/** How often one source has chain gear inspected, by item, class of service and kind of inspection. */
export interface IntervalSet {
  readonly id: string;
  readonly title: string;
  readonly document: string;
  readonly short: string;
  readonly asOf: string;
  readonly due: {
    readonly rows: {
      readonly [item: string]: {
        readonly [service in ServiceClass | 'any']?: { readonly [kind in InspectionKind | 'each-use']?: Interval };
      };
    };
  };
}
