import { clip } from '../errors.js';
import { formatNumber } from '../quantities/format.js';

type Fields = Readonly<Record<string, unknown>>;

/** A result in one screen, 24 lines of 100 columns at most: its answer, the checks that are not in order, its cautions. */
export function summarize(whole: object): string {
  const {
    result,
    verdict,
    checks = [],
    inputs,
    steps,
    sources,
    assumptions,
    cautions,
    ...answer
  } = whole as {
    readonly [name in 'result' | 'verdict']: unknown;
  } & { readonly [list in 'checks' | 'steps' | 'sources' | 'cautions']: readonly Fields[] } & Fields;
  const open = checks.filter((check) => check.verdict !== 'pass');
  const lines = Object.entries({ ...answer, 'not in order': open, caution: cautions }).flatMap(([key, value]) => {
    const items = [value].flat().map((item) => `${key}: ${say(item)}`);
    return items.length > 4 ? [...items.slice(0, 3), `… ${items.length - 3} more`] : items;
  });
  const title = verdict === undefined ? result : `${result}: ${verdict}`;
  return [title, ...lines.slice(0, 22), `steps ${steps.length}, sources ${sources.length}: explain(result)`]
    .map((line) => clip(String(line), 97))
    .join('\n  ');
}

/** Any value in words: a quantity as text, a sentence as itself, a check by what it found. */
function say(value: unknown): string {
  if (typeof value === 'number') return formatNumber(value);
  if (typeof value !== 'object' || value === null) return String(value ?? '—');
  if (Array.isArray(value)) return value.map(say).join(', ');
  const { id, unit, text, title, clause, weight, subject, ...fields } = value as Fields;
  if (text !== undefined) return String(text);
  if (unit !== undefined) return `${say(fields.value)} ${unit}`;
  const said = Object.entries(fields)
    .map(([key, item]) => `${key} ${say(item)}`)
    .join(', ');
  return id === undefined ? said : `${id}: ${said}`;
}
