import { formatNumber } from '../quantities/format.js';
import type { Note } from './note.js';

const MOST_LINES = 24;
const MOST_COLUMNS = 100;

type Fields = Readonly<Record<string, unknown>>;

/** A result in at most one screen of plain text: its answer, the checks that are not passed, its cautions. */
export function summarize(result: object): string {
  const { result: name, verdict, checks, inputs, steps, sources, assumptions, cautions, ...answer } = result as Fields & {
    readonly [list in 'steps' | 'sources' | 'cautions']: readonly Note[];
  } & { readonly checks?: readonly Fields[] };
  const judged = checks?.filter((check) => check.verdict !== 'pass' && (check.verdict === 'fail' || check.weight !== 'practice')) ?? [];
  const end = [
    ...(checks === undefined ? [] : [`${checks.length} checks, ${checks.length - judged.length} of them in order`]),
    ...some(judged.map(({ verdict, id, because, missing, demand, capacity }) => `${verdict} ${id}: ${short(because ?? missing ?? { demand, capacity })}`), 7),
    ...some(cautions.map((caution) => `! ${short(caution)}`), 3),
    `${steps.length} steps, ${sources.length} sources: explain(result)`,
  ];
  const lines = Object.entries(answer).flatMap(([key, value]) =>
    Array.isArray(value) && typeof value[0] === 'object'
      ? [`${key}:`, ...some(value.map(short), 5).map((line) => `  ${line}`)]
      : [`${key}: ${short(value)}`],
  );
  const title = verdict === undefined ? String(name) : `${name}: ${verdict}`;
  return [title, ...[...some(lines, MOST_LINES - 1 - end.length), ...end].map((line) => `  ${line}`)].map(fit).join('\n');
}

/** Any value in a line: a quantity as text, a sentence as itself, a thing with an id by its name. */
function short(value: unknown): string {
  if (typeof value === 'number') return formatNumber(value);
  if (typeof value !== 'object' || value === null) return String(value);
  if (Array.isArray(value)) return value.map(short).join(', ');
  const { id, unit, text, ...rest } = value as Fields;
  if (text !== undefined) return String(text);
  if (unit !== undefined) return `${short(rest.value)} ${unit}`;
  const said = Object.entries(rest).flatMap(([key, item]) => (item === undefined ? [] : `${key} ${short(item)}`)).join(', ');
  return id === undefined ? said : `${id}: ${said}`;
}

/** So many lines at most, the last one saying how many are left out. */
function some(lines: readonly string[], most: number): readonly string[] {
  return lines.length <= most ? lines : [...lines.slice(0, most - 1), `… ${lines.length - most + 1} more`];
}

/** One line of the screen, whatever the caller's texts contain. */
function fit(line: string): string {
  const plain = line.replace(/[\p{C}\n]/gu, '?');
  return plain.length > MOST_COLUMNS ? `${plain.slice(0, MOST_COLUMNS - 1)}…` : plain;
}
