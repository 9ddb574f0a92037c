import { formatNumber } from '../quantities/format.js';
import type { QuantityLike } from '../quantities/quantity.js';

/** How values are put into words: significant digits, and what a field is called. */
export interface Wording {
  readonly digits: number;
  readonly name: (key: string) => string;
}

const PLAIN: Wording = { digits: 6, name: visible };

const MOST_DEPTH = 12;
const CHECK_BASE = ['id', 'title', 'clause', 'weight', 'subject', 'verdict'];

type Fields = Readonly<Record<string, unknown>>;

/** What a check found: everything but its name, place and verdict. */
export function findingOf(check: Fields): Fields {
  const found = Object.entries(check).filter(([key]) => !CHECK_BASE.includes(key));
  // that a condition is met is what its verdict says
  return Object.fromEntries(found.filter(([, value]) => (value as { code?: unknown } | null)?.code !== 'MET'));
}

/** Any value in one line; the ids and texts of the caller stay visible and in the line. */
export function say(value: unknown, wording: Wording = PLAIN, depth = 0): string {
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
export function sayField(key: string, value: unknown, wording: Wording = PLAIN, depth = 0): string {
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
