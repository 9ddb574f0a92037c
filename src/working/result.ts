import { formatNumber } from '../quantities/format.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { Note } from './note.js';
import type { SourceRef } from './source.js';
import type { Step, Working } from './step.js';

/** What every result carries beside its answer. It is plain data: it survives JSON and `structuredClone`. */
export interface ResultBase<Name extends string = string> {
  /** The function that made it. */
  readonly result: Name;
  /** The input as it was understood; rule sets and tables by their id. */
  readonly inputs: unknown;
  readonly steps: readonly Step[];
  readonly sources: readonly SourceRef[];
  readonly assumptions: readonly Note[];
  readonly cautions: readonly Note[];
}

const BESIDE_THE_ANSWER = ['result', 'verdict', 'inputs', 'steps', 'sources', 'assumptions', 'cautions'];

/** A result at a console: one screen, the nested working left to `explain(result)`. */
class Result {
  constructor(fields: object) {
    Object.assign(this, fields);
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return summarize(this as unknown as ResultBase);
  }
}

/** Closes a calculation: the answer first, then the working. */
export function makeResult<Name extends string, Answer extends object>(
  name: Name,
  answer: Answer,
  inputs: unknown,
  working: Working,
): ResultBase<Name> & Answer {
  const { steps, sources, assumptions, cautions } = working;
  const echoed = working.shown ? echo(inputs) : namedOnly(inputs);
  return new Result({ result: name, ...answer, inputs: echoed, steps, sources, assumptions, cautions }) as never;
}

/** A copy of the input for the record, with rule sets and tables as their ids and no `undefined`. */
function echo(value: unknown, depth = 0): unknown {
  if (typeof value !== 'object' || value === null || depth > 12) return value;
  if (Array.isArray(value)) return value.map((item) => echo(item, depth + 1));
  const copy: Record<string, unknown> = {};
  for (const key of Object.keys(value)) {
    const item = (value as Record<string, unknown>)[key];
    if (item === undefined || key === 'working' || key === '__proto__') continue;
    copy[key] = key === 'rules' || key === 'ratings' ? (item as { id: string }).id : echo(item, depth + 1);
  }
  return copy;
}

/** The caller's own input with rule set and table as their ids: what bulk work gets instead of a copy. */
function namedOnly(inputs: unknown): unknown {
  const { working: _, ...rest } = inputs as { working?: unknown; rules?: { id: string }; ratings?: { id: string } };
  if (rest.rules !== undefined) return { ...rest, rules: rest.rules.id };
  return rest.ratings === undefined ? rest : { ...rest, ratings: rest.ratings.id };
}

const SCREEN_LINES = 22;

/** A result in at most one screen of plain text. */
export function summarize(result: ResultBase): string {
  const verdict = 'verdict' in result ? `: ${String(result.verdict)}` : '';
  const lines = [`${result.result}${verdict}`];
  for (const [key, value] of Object.entries(result)) {
    if (BESIDE_THE_ANSWER.includes(key) || value === undefined) continue;
    if (Array.isArray(value) && value.some((item) => typeof item === 'object')) {
      lines.push(`  ${key}:`, ...value.map((item) => `    ${oneLine(item)}`));
    } else lines.push(`  ${key}: ${oneLine(value)}`);
  }
  const notes = result.cautions.map((caution) => `  ! ${caution.text}`);
  const room = SCREEN_LINES - Math.min(notes.length, 3);
  const shown = lines.length > room ? [...lines.slice(0, room - 1), `  … ${lines.length - room + 1} more lines`] : lines;
  const more = notes.length > 3 ? [...notes.slice(0, 2), `  ! … ${notes.length - 2} more cautions`] : notes;
  return [...shown, ...more, `  ${result.steps.length} steps, ${result.sources.length} sources: explain(result)`].join('\n');
}

function oneLine(value: unknown): string {
  if (value === null || typeof value !== 'object') {
    return typeof value === 'number' ? formatNumber(value) : String(value);
  }
  if (Array.isArray(value)) return value.map(oneLine).join(', ');
  if (isQuantityLike(value)) return `${formatNumber(value.value)} ${value.unit}`;
  if ('text' in value) return String(value.text);
  const parts = Object.entries(value)
    .filter(([key, item]) => item !== undefined && key !== 'clause' && key !== 'weight' && key !== 'parts' && key !== 'subject')
    .map(([key, item]) => (key === 'id' ? String(item) : key === 'verdict' ? String(item) : `${key} ${oneLine(item)}`));
  const line = parts.join(' · ');
  return line.length > 110 ? `${line.slice(0, 109)}…` : line;
}

/** True for `{ value, unit }`, a quantity of this library or a bare one. */
export function isQuantityLike(value: unknown): value is QuantityLike {
  return typeof value === 'object' && value !== null && 'value' in value && 'unit' in value && typeof value.value === 'number';
}
