import { clip } from '../errors.js';
import { formatNumber } from '../quantities/format.js';

type Fields = Readonly<Record<string, unknown>>;

interface Shown {
  readonly result: string;
  readonly verdict?: string;
  readonly checks?: readonly Fields[];
  readonly inputs: unknown;
  readonly steps: readonly unknown[];
  readonly sources: readonly unknown[];
  readonly assumptions: unknown;
  readonly cautions: readonly unknown[];
}

/**
 * A result in one screen, 24 lines of 100 columns at most: its answer, the checks that are not in order and its
 * cautions. The full sheet is {@link explain}.
 */
export function summarize(whole: object): string {
  const { result, verdict, checks = [], inputs, steps, sources, assumptions, cautions, ...answer } = whole as Shown;
  const open = checks.filter((check) => check.verdict === 'fail' || (check.verdict !== 'pass' && check.weight !== 'practice'));
  return [
    verdict === undefined ? result : `${result}: ${verdict}`,
    ...some(12, Object.entries(answer).flatMap(([key, value]) => some(5, itemsOf(value).map((item) => `${key}: ${say(item)}`)))),
    ...some(6, open.map(({ verdict, id, because, missing, demand, capacity }) => `${verdict} ${id}: ${say(because ?? missing ?? { demand, capacity })}`)),
    ...some(4, cautions.map((caution) => `! ${say(caution)}`)),
    `${steps.length} steps, ${sources.length} sources: explain(result)`,
  ]
    .map((line) => clip(line, 97))
    .join('\n  ');
}

/** So many lines at most, the last one saying how many are left out. */
function some(most: number, lines: readonly string[]): readonly string[] {
  return lines.length <= most ? lines : [...lines.slice(0, most - 1), `… ${lines.length - most + 1} more`];
}

/** A list of things gets a line for each. */
function itemsOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) && typeof value[0] === 'object' ? value : [value];
}

/** Any value in words: a quantity as text, a sentence as itself, a thing with an id by its name. */
function say(value: unknown): string {
  if (typeof value === 'number') return formatNumber(value);
  if (typeof value !== 'object' || value === null) return String(value ?? '—');
  if (Array.isArray(value)) return value.map(say).join(', ') || 'none';
  const { id, unit, text, ...fields } = value as Fields;
  if (text !== undefined) return String(text);
  if (unit !== undefined) return `${say(fields.value)} ${unit}`;
  const said = Object.entries(fields).map(([key, item]) => `${key} ${say(item)}`);
  return (id === undefined ? '' : `${id}: `) + said.join(', ');
}
