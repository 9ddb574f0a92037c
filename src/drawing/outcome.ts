import { describe, fail, mapAt } from '../errors.js';
import { checkObject } from '../input-checks.js';
import type { Direction } from '../securement/restraint/answer.js';
import type { Check, Verdict } from '../working/check.js';
import type { Note } from '../working/note.js';
import { lineOf } from './svg.js';

/** What a result adds to a drawing, told from its data alone: it may have gone through JSON. */
export interface Outcome {
  /** The verdict in words. */
  readonly verdict: string;
  /** What decides it, in sentences. */
  readonly because: readonly string[];
  /** By the id of a tie-down. */
  readonly tieDowns: ReadonlyMap<string, TieDownOutcome>;
  readonly push?: Push;
}

export interface TieDownOutcome {
  /** In words, for the list. */
  readonly words: string;
  /** Tension over capacity; absent where the result has none. */
  readonly share?: number;
  /** False where its strength is not known. */
  readonly known: boolean;
}

/** The way an article would go. */
export interface Push {
  readonly article: string;
  readonly direction: Direction;
  readonly label: string;
}

/** The ids that a result may name. */
export interface PlanIds {
  readonly articles: readonly string[];
  readonly tieDowns: readonly string[];
}

export const VERDICTS: readonly Verdict[] = ['pass', 'fail', 'not-applicable', 'undetermined'];

const MOST_MISSING = 3;

/** What a result does not know, in sentences. */
export function missingWords(notes: readonly Note[]): string[] {
  const texts = [...new Set(notes.map((note) => lineOf(textOf(note?.text), 200)))];
  const more = texts.length > MOST_MISSING ? [`And ${texts.length - MOST_MISSING} more.`] : [];
  return [...texts.slice(0, MOST_MISSING), ...more];
}

/** A list of objects in a result, read item by item; one that is gone is an error with its place. */
export function itemsAt<Item, Read>(list: readonly Item[], name: string, read: (item: Item) => Read): Read[] {
  return mapAt(listAt(list, name), name, (item) => {
    checkObject(item, '', 'what the result came with');
    return read(item);
  });
}

export function listAt<Item>(list: readonly Item[], name: string): readonly Item[] {
  if (Array.isArray(list)) return [...list]; // a hole becomes an item, which its reader refuses or describes
  return fail('MISSING_FIELD', name, 'the list that the result came with', list, 'Give the whole result.');
}

/** Text as it is; anything else in a place of text is described. */
export const textOf = (value: unknown): string => (typeof value === 'string' ? value : describe(value));

/** Refuses an id that the plan does not have: the result is of another plan. */
export function checkKnown(id: unknown, known: readonly string[], path: string): void {
  if (known.includes(id as string)) return;
  fail('UNKNOWN_REFERENCE', path, 'an id of this plan', id, 'Give the result that was made from this plan.');
}

export const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);

/** A share as whole percent; one that only rounds to 100 or to 0 stays on its side. */
export function percent(share: number): string {
  if (share > 9.99) return 'over 999 %';
  const whole = Math.round(share * 100);
  if (share > 0 && whole === 0) return 'under 1 %';
  return `${share < 1 ? Math.min(whole, 99) : share > 1 ? Math.max(whole, 101) : 100} %`;
}

/** The check that decides; none where nothing does. */
export function decisiveOf(checks: readonly Check[], governing: string | null): Check | undefined {
  const decisive = checks.find(({ id }) => id === governing);
  if (governing === null || decisive !== undefined) return decisive;
  return fail('MISSING_FIELD', 'checks', 'the check that governs', governing, 'Give the whole result.');
}

/** The check that decides, in sentences. */
export function reasonsOf(check: Check): string[] {
  const share =
    'utilization' in check && isNumber(check.utilization) ? `, utilization ${percent(check.utilization)}` : '';
  const about = lineOf(`${textOf(check.title)}: ${textOf(check.subject)} (${textOf(check.clause)})`, 200);
  return [
    `Decides: ${about}${share}.`,
    ...('because' in check ? missingWords(check.verdict === 'pass' ? [] : [check.because]) : []),
    ...('missing' in check ? missingWords(listAt(check.missing, 'checks.missing')) : []),
  ];
}
