// Plans that the tests of this folder vary, and ways to look at what comes back.
import {
  type Article,
  type Check,
  type CheckSecurementInput,
  checkSecurement,
  type Part,
  type QuantityInput,
  type SecurementCheck,
  type TieDown,
  type TieDownAsWhole,
  us49cfr393_2024,
} from 'chain-rigging';

export const rules = us49cfr393_2024;
export type Mass = QuantityInput<'mass'>;
export type Length = QuantityInput<'length'>;
export type RatedLoad = QuantityInput<'ratedLoad'>;

/** A machine on wheels; 8,000 lb and 10 ft unless said otherwise. */
export function machine(more: Partial<Article> = {}): Article {
  return { id: 'tractor', kind: 'machinery', mass: '8000 lb', length: '10 ft', ...more };
}

/** Cargo of no special kind. */
export function crate(more: Partial<Article> = {}): Article {
  return { id: 'crate', kind: 'general', mass: '8000 lb', length: '10 ft', ...more };
}

/** A tie-down rated as a whole, from the vehicle to the tractor. */
export function rated(id: string, workingLoadLimit: RatedLoad, more: Partial<TieDownAsWhole> = {}): TieDownAsWhole {
  return { id, holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit }, ...more };
}

/** So many alike, turn by turn at the front and at the rear. */
export function several(
  count: number,
  workingLoadLimit: RatedLoad,
  more: Partial<TieDownAsWhole> = {},
): TieDownAsWhole[] {
  return Array.from({ length: count }, (_, at) =>
    rated(`tie-down-${at + 1}`, workingLoadLimit, { end: at % 2 === 0 ? 'front' : 'rear', ...more }),
  );
}

/** A tie-down given part by part, both of its anchor points among them. */
export function ofParts(id: string, parts: readonly Part[], more: Partial<TieDown> = {}): TieDown {
  const anchors: Part[] = [
    { id: 'ring', kind: 'anchor', at: 'vehicle', markedWll: '20000 lb' },
    { id: 'lug', kind: 'anchor', at: 'cargo', markedWll: '20000 lb' },
  ];
  return { id, holds: 'tractor', path: 'vehicle-to-cargo', parts: [...parts, ...anchors], ...more } as TieDown;
}

export function check(
  articles: readonly Article[],
  tieDowns: readonly TieDown[],
  more: Partial<CheckSecurementInput> = {},
): SecurementCheck {
  return checkSecurement({ rules, articles, tieDowns, ...more });
}

/** The same call as plain JavaScript makes it. */
export const checkLoosely = checkSecurement as unknown as (input: unknown) => SecurementCheck;

/** The check of that id. */
export function checkOf(result: SecurementCheck, id: string): Check {
  const found = result.checks.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no check ${id} among ${result.checks.map((each) => each.id).join(', ')}`);
  return found;
}

/** The codes of what an undetermined check misses. */
export function missingIn(found: Check): string[] {
  if (found.verdict !== 'undetermined') throw new Error(`${found.id} is ${found.verdict}`);
  return found.missing.map(({ code }) => code);
}

/** The code of the reason of a condition check. */
export function reasonOf(found: Check): string {
  if (!('because' in found)) throw new Error(`${found.id} has no reason`);
  return found.because.code;
}

export const codes = (notes: readonly { readonly code: string }[]): string[] => notes.map(({ code }) => code);

/** What a program would have after the plan went through JSON. */
export function throughJson<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}
