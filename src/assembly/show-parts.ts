import { isForce, ratedLoadIn, STANDARD_GRAVITY } from '../quantities/rated.js';
import { type Note, note } from '../working/note.js';
import type { StepValue, Working } from '../working/step.js';
import type { Part } from './part.js';
import type { PartLimit, RatingLog, SeriesRating } from './rate-part.js';

/** Records the least of the parts, and first each limit that crosses from force to mass. */
export function showSeries(
  working: Working,
  series: SeriesRating,
  parts: readonly Part[],
  subject: string,
  unit: 'lb' | 'kg',
  clause?: string,
): void {
  const values: (readonly [string, StepValue])[] = [];
  for (let index = 0; index < parts.length; index++) {
    const { id } = parts[index] as Part;
    const { workingLoadLimit } = series.limits[index] as PartLimit;
    values.push([id, workingLoadLimit]);
    if (workingLoadLimit !== null && isForce(workingLoadLimit)) {
      working.step(
        `${subject}, ${id}`,
        'WLL',
        'F / g',
        [
          ['F', workingLoadLimit],
          ['g', { value: STANDARD_GRAVITY, unit: 'm/s2' }],
        ],
        ratedLoadIn(workingLoadLimit, unit),
      );
    }
  }
  working.step(subject, 'WLL', 'min(WLL of every part)', values, series.workingLoadLimit, clause);
}
const FITTINGS_AS_CHAIN: Note = /* @__PURE__ */ note('FITTINGS_RATED_AS_CHAIN');
const TAKEN_AS_SOUND: Note = /* @__PURE__ */ note('TAKEN_AS_SOUND');

/** A log for a {@link newRater} of a caller that shows its working. */
export function newLog(): RatingLog {
  return { sources: [], unmarked: [], fittingsAsChain: false, takenAsSound: false };
}

/** What the ratings took for granted, each thing once. */
export function noteAssumptions({ assumptions }: Working, log: RatingLog): void {
  for (const part of log.unmarked) assumptions.push(note('UNMARKED_PART', part));
  if (log.fittingsAsChain) assumptions.push(FITTINGS_AS_CHAIN);
  if (log.takenAsSound) assumptions.push(TAKEN_AS_SOUND);
}
