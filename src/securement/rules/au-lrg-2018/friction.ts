import { fail } from '../../../errors.js';
import { checkObject, checkOneOf } from '../../../input-checks.js';
import { auLrg2018Friction } from '../../../tables/generated/au-lrg-2018-friction.js';
import { rowOf } from '../../../tables/rating-table.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { Article } from '../../plan.js';

/** A friction factor, or the fact that is missing for one. */
export type Friction = { readonly mu: number } | { readonly missing: Note };

/**
 * The friction factor of an article, counted in full: the least that its contacts state, else its own, else the low
 * end of the guide's range for its surfaces (from memory). The ranges are for dry surfaces as far as recalled, so
 * wet or frosted ones have none.
 */
export function frictionOf(
  { article, contacts }: { readonly article: Article; readonly contacts: readonly { readonly friction?: number }[] },
  working: Working,
): Friction {
  const own = contacts.map(({ friction }) => friction);
  if (own.length > 0 && own.every((each) => each !== undefined)) return { mu: Math.min(...own) };
  if (article.friction !== undefined) return { mu: article.friction };
  return article.surfaces === undefined ? { missing: note(NOT_STATED) } : fromTable(article.surfaces, working);
}

function fromTable(surfaces: NonNullable<Article['surfaces']>, working: Working): Friction {
  checkObject(surfaces, 'surfaces', '{ load, deck }');
  const { load, deck, condition = 'dry' } = surfaces;
  checkOneOf(condition, ['dry', 'wet', 'frost'], 'surfaces.condition');
  if (typeof load !== 'string')
    fail('MISSING_FIELD', 'surfaces.load', 'a surface by name', load, 'Leave surfaces out.');
  if (typeof deck !== 'string')
    fail('MISSING_FIELD', 'surfaces.deck', 'a surface by name', deck, 'Leave surfaces out.');
  const rows: { readonly [surface: string]: { readonly [against: string]: { readonly mu: number } } } =
    auLrg2018Friction.rows;
  // a pair of surfaces, whichever of the two lies on top
  const row = rowOf(rowOf(rows, load) ?? {}, deck) ?? rowOf(rowOf(rows, deck) ?? {}, load);
  if (row === undefined) return { missing: note(NOT_LISTED, { load, deck }) };
  if (condition !== 'dry') return { missing: note(NOT_DRY, { condition }) };
  if (working.shown) {
    working.cite(auLrg2018Friction.source);
    working.assumptions.push(note(FROM_TABLE, { load, deck, mu: row.mu }));
  }
  return row;
}

const NOT_STATED: Words = [
  'FRICTION_NOT_STATED',
  'Its friction factor, or the surfaces it rests on as the guide names them.',
];
const NOT_LISTED: Words = [
  'FRICTION_NOT_LISTED',
  'Its friction factor: the guide, as recalled, has none for {load} on {deck}.',
];
const NOT_DRY: Words = ['FRICTION_NOT_DRY', 'Its friction factor when {condition}: the table has dry surfaces alone.'];
const FROM_TABLE: Words = [
  'FRICTION_FROM_TABLE',
  '{load} on {deck}: {mu}, the low end of the range, clean and dry (from memory).',
];
