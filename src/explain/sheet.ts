import { fail } from '../errors.js';
import type { Words } from '../words/words.js';
import { findingOf, isNested, isNote, say, sayField, visible, type Wording } from './say.js';

/** One piece of a sheet. The texts are plain; a line break in an item, a field or a cell is all their markup. */
export type Block =
  | { readonly kind: 'heading'; readonly level: number; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: string }
  | { readonly kind: 'fields'; readonly fields: readonly Field[] }
  | { readonly kind: 'list'; readonly numbered: boolean; readonly items: readonly string[] }
  | { readonly kind: 'table'; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };

/** A name with its value, or with fields of its own. */
export interface Field {
  readonly name: string;
  readonly text?: string;
  readonly fields?: readonly Field[];
}

type Fields = Readonly<Record<string, unknown>>;

/** How the values of a sheet are said, and the words around them. */
interface SheetWording extends Wording {
  readonly words: Words;
}

/** Inputs stand as they were given, to the last digit. */
const DIGITS_GIVEN = 15;
const DIGITS_FOUND = 6;

const LISTS = ['steps', 'assumptions', 'cautions', 'sources'];
const OWN_SECTION = ['result', 'verdict', 'inputs', 'checks', 'steps', 'assumptions', 'cautions', 'sources'];
const MOST_COLUMNS = 8;
const LONGEST_LINE = 80;
const LONGEST_CELL = 160;
const MOST_DEPTH = 12;

/** The sheet of any result, told from its data alone; `path` is where it stands, for messages. */
export function sheetOf(value: unknown, words: Words, path = 'result', level = 1): Block[] {
  const result = readResult(value, path);
  const found: SheetWording = { digits: DIGITS_FOUND, name: nameOf, words };
  const { sheet } = words;
  const section = (title: string, blocks: readonly Block[]): readonly Block[] =>
    blocks.length === 0 ? [] : [{ kind: 'heading', level: level + 1, text: title }, ...blocks];
  const list = (items: readonly string[], numbered = false): readonly Block[] =>
    items.length === 0 ? [] : [{ kind: 'list', numbered, items }];
  const title = capital(nameOf(say(result.result)));
  const inputs = fieldsOf(result.inputs, { ...found, digits: DIGITS_GIVEN });
  return [
    { kind: 'heading', level, text: result.verdict === undefined ? title : `${title}: ${say(result.verdict)}` },
    ...section(sheet.inputs, inputs.length === 0 ? [] : [{ kind: 'fields', fields: inputs }]),
    ...section(sheet.answer, answerBlocks(result, found, path, level + 2)),
    ...section(
      sheet.steps,
      list(
        result.steps.map((step) => stepText(step, found)),
        true,
      ),
    ),
    ...section(sheet.checks, checkBlocks(result.checks, result.governing, found, level + 2)),
    ...section(sheet.assumptions, list(result.assumptions.map((note) => say(note)))),
    ...section(sheet.cautions, list(result.cautions.map((note) => say(note)))),
    ...section(sheet.sources, list(result.sources.map((source) => sourceText(source, found)))),
  ];
}

interface ReadResult extends Fields {
  readonly steps: readonly Fields[];
  readonly checks: readonly Fields[];
  readonly assumptions: readonly Fields[];
  readonly cautions: readonly Fields[];
  readonly sources: readonly Fields[];
}

/** Refuses what is no result, and one that lost a part on its way. */
function readResult(value: unknown, path: string): ReadResult {
  if (!isObject(value) || typeof value.result !== 'string') {
    return fail('UNKNOWN_VALUE', path, 'a result of this library', value, 'Give what a calculation returned, whole.');
  }
  const lists = { checks: [], ...value } as Fields;
  for (const key of ['checks', ...LISTS]) {
    const list = lists[key];
    if (!Array.isArray(list) || !list.every(isObject)) {
      fail(
        'MISSING_FIELD',
        `${path}.${key}`,
        'the list that the result came with',
        list,
        'Give what a calculation returned, whole.',
      );
    }
  }
  return lists as ReadResult;
}

/** Single values first, then a table for each list of things, then the sheets of results inside this one. */
function answerBlocks(result: Fields, wording: SheetWording, path: string, level: number): Block[] {
  const fields: Field[] = [];
  const tables: Block[] = [];
  const sheets: Block[] = [];
  for (const [key, value] of Object.entries(result)) {
    if (value === undefined || OWN_SECTION.includes(key)) continue;
    const items = Array.isArray(value) ? value : [value];
    const table = Array.isArray(value) ? tableOf(value, wording) : undefined;
    if (items.length > 0 && items.every(isResult) && level < MOST_DEPTH) {
      for (const [index, item] of items.entries()) {
        const place = `${path}.${key}${Array.isArray(value) ? `[${index}]` : ''}`;
        sheets.push(...sheetOf(item, wording.words, place, level));
      }
    } else if (table !== undefined) {
      tables.push({ kind: 'heading', level, text: capital(nameOf(key)) }, table);
    } else fields.push(fieldOf(capital(nameOf(key)), key, value, wording));
  }
  return [...(fields.length === 0 ? [] : [{ kind: 'fields', fields } as const]), ...tables, ...sheets];
}

function isResult(value: unknown): boolean {
  return isObject(value) && ['result', 'inputs', ...LISTS].every((key) => key in value);
}

/** A table where the items are flat enough to stand side by side. */
function tableOf(items: readonly unknown[], wording: SheetWording): Block | undefined {
  const rows = items.filter((item): item is Fields => isObject(item) && isNested(item) && !isNote(item));
  if (rows.length === 0 || rows.length < items.length) return undefined;
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  if (columns.length === 0 || columns.length > MOST_COLUMNS) return undefined;
  if (rows.some((row) => Object.entries(row).some(([key, value]) => isTooMuch(key, value, wording)))) return undefined;
  return {
    kind: 'table',
    head: columns.map((column) => capital(nameOf(column))),
    rows: rows.map((row) =>
      columns.map((column) => (Object.hasOwn(row, column) ? tell(column, row[column], wording) : '')),
    ),
  };
}

/** More than a cell holds: an object, or a list of them, that fills lines. */
function isTooMuch(key: string, value: unknown, wording: SheetWording): boolean {
  const items = Array.isArray(value) ? value : [value];
  return items.some((item) => isNested(item) && !isNote(item)) && tell(key, value, wording).length > LONGEST_CELL;
}

function fieldsOf(value: unknown, wording: SheetWording, depth = 0): Field[] {
  if (Array.isArray(value)) {
    return value.map((item, index) => {
      if (!isObject(item) || typeof item.id !== 'string') return fieldOf(String(index + 1), '', item, wording, depth);
      const { id, ...rest } = item;
      return fieldOf(visible(item.id), '', rest, wording, depth);
    });
  }
  if (!isObject(value)) return [];
  const hidden = isResult(value) ? ['inputs', ...LISTS] : [];
  return Object.entries(value)
    .filter(([key, item]) => item !== undefined && !hidden.includes(key))
    .map(([key, item]) => fieldOf(capital(nameOf(key)), key, item, wording, depth));
}

/** One line while it is short and flat, else a line for each field in it. */
function fieldOf(name: string, key: string, value: unknown, wording: SheetWording, depth = 0): Field {
  if (Array.isArray(value) && value.some(isNote))
    return { name, text: value.map((item) => say(item, wording)).join('\n') };
  const text = tell(key, value, wording);
  if (!isNested(value) || isNote(value) || depth > MOST_DEPTH) return { name, text };
  const flat = !Array.isArray(value) && !Object.values(value).some(isNested) && text.length <= LONGEST_LINE;
  return flat ? { name, text } : { name, fields: fieldsOf(value, wording, depth + 1) };
}

/** What it is about and its clause; the formula; the same with its numbers; what came out. */
function stepText({ subject, symbol, expression, values, result, clause }: Fields, wording: SheetWording): string {
  const given = new Map<string, string>();
  for (const pair of Array.isArray(values) ? values : []) {
    if (Array.isArray(pair)) given.set(say(pair[0]), sayStep(pair[1], wording));
  }
  const formula = say(expression);
  const filled = fillIn(formula, given);
  const rest = [...given].map(([name, value]) => `${name} = ${value}`).join('; ');
  const value = sayStep(result, wording);
  return [
    clause === undefined ? say(subject) : `${say(subject)} (${say(clause)})`,
    `${say(symbol)} = ${formula}`,
    ...(filled === formula || filled === value ? [] : [`= ${filled}`]),
    ...(rest === '' ? [] : [`${wording.words.sheet.with} ${rest}`]),
    `= ${value}`,
  ].join('\n');
}

function sayStep(value: unknown, wording: SheetWording): string {
  return value === null ? wording.words.sheet.unknown : say(value, wording);
}

/**
 * An expression with values in the place of their names, which leave the map. A name is only taken where it
 * stands alone between signs: the `a` of `a · W` but not the one of `a share`, nor the `L` of `m/L`.
 */
function fillIn(expression: string, given: Map<string, string>): string {
  const pieces = expression.split(/([(),;=<>≤≥·×+−√²³^]|\s[/-]\s|\b(?:sin|cos|tan)\s)/);
  const used = new Set<string>();
  const filled = pieces.map((piece, index) => {
    const name = piece.trim();
    const value = given.get(name);
    if (value === undefined) return piece;
    used.add(name);
    return piece.replace(name, () => (/[²³^]/.test(pieces[index + 1] ?? '') ? `(${value})` : value));
  });
  for (const name of used) given.delete(name);
  return filled.join('');
}

function checkBlocks(checks: readonly Fields[], governing: unknown, wording: SheetWording, level: number): Block[] {
  const { sheet } = wording.words;
  const blocks: Block[] = [];
  for (const practice of [false, true]) {
    const chosen = checks.filter(({ weight }) => (weight === 'practice') === practice);
    if (chosen.length === 0) continue;
    blocks.push(
      { kind: 'heading', level, text: practice ? sheet.practice : sheet.requirements },
      {
        kind: 'table',
        head: [sheet.verdict, sheet.check, sheet.clause, sheet.finding],
        rows: chosen.map((check) => [
          check.id === governing ? `${say(check.verdict)}\n${sheet.governs}` : say(check.verdict),
          `${say(check.title)}: ${say(check.subject)}`,
          say(check.clause),
          findingText(check, wording),
        ]),
      },
    );
  }
  return blocks;
}

/** Demand, capacity and utilization in one line; each reason and each missing fact in its own. */
function findingText(check: Fields, wording: SheetWording): string {
  const figures: string[] = [];
  const reasons: string[] = [];
  for (const [key, value] of Object.entries(findingOf(check))) {
    for (const item of Array.isArray(value) ? value : [value]) {
      if (isNote(item)) reasons.push(`${nameOf(key)}: ${say(item)}`);
      else figures.push(`${nameOf(key)} ${tell(key, item, wording)}`);
    }
  }
  return [...(figures.length === 0 ? [] : [figures.join(', ')]), ...reasons].join('\n');
}

function sourceText(
  { document, edition, clause, provenance, note, columnProvenance }: Fields,
  wording: SheetWording,
): string {
  const place = [document, edition, clause].filter((item) => item !== undefined).map((item) => say(item));
  const columns = Object.entries(columnProvenance ?? {}).map(
    ([column, word]) => `; ${visible(column.replaceAll('_', ' '))} ${tell('provenance', word, wording)}`,
  );
  const how = `${place.join(', ')} (${tell('provenance', provenance, wording)}${columns.join('')})`;
  return note === undefined ? how : `${how}: ${say(note)}`;
}

function tell(key: string, value: unknown, wording: SheetWording): string {
  const { provenance } = wording.words;
  if (key === 'provenance' && typeof value === 'string' && Object.hasOwn(provenance, value)) {
    return provenance[value as keyof typeof provenance];
  }
  return sayField(key, value, wording);
}

/** `workingLoadLimit` as words; a name that is no plain field name, such as a size, stays as it is. */
function nameOf(key: string): string {
  if (!/^[a-z][A-Za-z0-9]*$/.test(key)) return visible(key);
  return key
    .replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replace('tie down', 'tie-down')
    .replace(/\bwll\b/, 'WLL');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function isObject(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
