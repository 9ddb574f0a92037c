import { formatNumber } from '../quantities/format.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { ResultBase } from './result.js';

/** How values are put into words: significant digits, and what a field is called. */
export interface Wording {
  readonly digits: number;
  readonly name: (key: string) => string;
}

/** Fields of their own names, as a programmer reads them back from the object. */
const CONSOLE: Wording = { digits: 5, name: visible };

const MOST_LINES = 24;
const MOST_COLUMNS = 100;
const MOST_CAUTIONS = 3;
const MOST_ITEMS = 5;
/** Lines that checks may take when the answer itself wants the whole screen. */
const LINES_FOR_CHECKS = 9;
const MOST_DEPTH = 12;

const NOT_ANSWER = ['result', 'verdict', 'inputs', 'steps', 'sources', 'assumptions', 'cautions'];
const CHECK_BASE = ['id', 'title', 'clause', 'weight', 'subject', 'verdict'];

type Fields = Readonly<Record<string, unknown>>;

/** A result in at most one screen of plain text: 24 lines of 100 columns. */
export function summarize(result: ResultBase): string {
  const { verdict, checks, governing } = result as unknown as Fields;
  const judged = Array.isArray(checks) && checks.length > 0 ? checkLines(checks, governing) : [];
  const hidden = judged.length > 0 ? [...NOT_ANSWER, 'checks', 'governing'] : NOT_ANSWER;
  const answer = Object.entries(result).filter(([key, value]) => value !== undefined && !hidden.includes(key));
  const cautions = capped(
    result.cautions.map((caution) => `  ! ${say(caution)}`),
    MOST_CAUTIONS,
  );

  const room = MOST_LINES - 2 - cautions.length;
  const shown = answer.flatMap(([key, value]) => answerLines(key, value));
  const decided = capped(judged, Math.max(LINES_FOR_CHECKS, room - shown.length));
  return [
    verdict === undefined ? say(result.result) : `${say(result.result)}: ${say(verdict)}`,
    ...capped(shown, room - decided.length),
    ...decided,
    ...cautions,
    `  ${counted(result.steps.length, 'step')}, ${counted(result.sources.length, 'source')}: explain(result)`,
  ]
    .map((line) => clip(line))
    .join('\n');
}

/** One line; a list of objects takes one more for each of its first items. */
function answerLines(key: string, value: unknown): readonly string[] {
  const name = `  ${visible(key)}:`;
  if (!Array.isArray(value) || !value.some(isNested)) return [`${name} ${sayField(key, value)}`];
  const items = value.map((item) => `    ${say(item)}`);
  return [name, ...capped(items, MOST_ITEMS)];
}

/** How many came out which way, the one that decides, then what is not passed: requirements before practice. */
function checkLines(checks: readonly Fields[], governing: unknown): string[] {
  const tally: Record<string, number> = {};
  for (const { verdict } of checks) tally[say(verdict)] = (tally[say(verdict)] ?? 0) + 1;
  const open = ['fail', 'undetermined', 'not-applicable'].flatMap((verdict) =>
    checks.filter((check) => check.verdict === verdict && check.weight !== 'practice' && check.id !== governing),
  );
  const advice = checks.filter(({ verdict, weight }) => verdict === 'fail' && weight === 'practice');
  return [
    `  ${counted(checks.length, 'check')}: ${Object.entries(tally)
      .map(([verdict, count]) => `${count} ${verdict}`)
      .join(', ')}`,
    ...checks.filter(({ id }) => id === governing).map((check) => `  governing: ${checkLine(check)}`),
    ...[...open, ...advice].map((check) => `  ${checkLine(check)}`),
  ];
}

function checkLine(check: Fields): string {
  return `${say(check.verdict)} ${clip(say(check.id), 40)}: ${say(findingOf(check))}`;
}

/** What a check found: everything but its name, place and verdict. */
export function findingOf(check: Fields): Fields {
  return Object.fromEntries(Object.entries(check).filter(([key]) => !CHECK_BASE.includes(key)));
}

/** Any value in one line; the ids and texts of the caller stay visible and in the line. */
export function say(value: unknown, wording = CONSOLE, depth = 0): string {
  if (value === null || value === undefined) return '—';
  if (typeof value === 'number') return sayNumber(value, wording.digits);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'object') return visible(String(value));
  if (isQuantityLike(value)) return `${sayNumber(value.value, wording.digits)} ${visible(value.unit)}`;
  if (isNote(value)) return visible(value.text);
  if (depth > MOST_DEPTH) return '…';
  if (Array.isArray(value)) {
    const items = value.map((item) => say(item, wording, depth + 1));
    if (value.some(isNested)) return items.join('; ');
    const line = items.join(', ') || 'none';
    return depth > 0 && items.length > 1 ? `(${line})` : line;
  }
  const { id, ...rest } = value as Fields;
  const parts = Object.entries(rest)
    .filter(([, item]) => item !== undefined)
    .map(([key, item]) => {
      const said = sayField(key, item, wording, depth + 1);
      return key === 'verdict' ? said : `${wording.name(key)} ${said}`;
    });
  const line = parts.join(', ');
  if (id === undefined) return line || 'none';
  return line === '' ? say(id) : `${say(id)}: ${line}`;
}

/** The value of a named field: a utilization reads as a percentage. */
export function sayField(key: string, value: unknown, wording = CONSOLE, depth = 0): string {
  return key === 'utilization' && typeof value === 'number' ? sayPercent(value) : say(value, wording, depth);
}

/** A ratio to four digits; one that only rounds to 100 says on which side it lies. */
function sayPercent(ratio: number): string {
  const percent = formatNumber(ratio * 100, 4);
  if (percent !== '100' || ratio === 1) return `${percent} %`;
  return ratio > 1 ? 'over 100 %' : 'under 100 %';
}

function sayNumber(value: number, digits: number): string {
  return Number.isFinite(value) ? formatNumber(value, digits) : String(value);
}

/** Text that stays in its line: control and direction characters are written out as `\u{1b}`. */
export function visible(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{NChar}\p{Zl}\p{Zp}]/gu, (sign) => `\\u{${sign.codePointAt(0)?.toString(16)}}`)
    .replace(/\s+/g, ' ')
    .trim();
}

/** True for `{ value, unit }`, a quantity of this library or a bare one. */
function isQuantityLike(value: unknown): value is QuantityLike {
  if (typeof value !== 'object' || value === null) return false;
  const { value: number, unit } = value as Fields;
  return typeof number === 'number' && typeof unit === 'string';
}

/** True for a sentence with its code. */
export function isNote(value: unknown): value is { readonly text: string } {
  if (typeof value !== 'object' || value === null) return false;
  const { code, text } = value as Fields;
  return typeof code === 'string' && typeof text === 'string';
}

/** True for an object that is more than a quantity, and for a list of such. */
export function isNested(value: unknown): value is object {
  if (Array.isArray(value)) return value.some(isNested);
  return typeof value === 'object' && value !== null && !isQuantityLike(value);
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}

/** So many lines at most, the last one saying how many are left out. */
function capped(lines: readonly string[], most: number): readonly string[] {
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), `    … ${lines.length - most + 1} more`];
}

function clip(line: string, columns = MOST_COLUMNS): string {
  const signs = [...line];
  return signs.length > columns ? `${signs.slice(0, columns - 1).join('')}…` : line;
}
