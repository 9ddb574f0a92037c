import { fail, mapAt } from '../../../errors.js';
import { checkList, checkObject, checkOneOf } from '../../../input-checks.js';
import { euEn1219512010Friction } from '../../../tables/generated/eu-en12195-1-2010-friction.js';
import { rowOf } from '../../../tables/rating-table.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { readFriction } from '../../layout.js';
import type { Article, Surfaces } from '../../plan.js';
import { factor, STANDARD } from './cite.js';

/** μ between an article and its deck, or what must be known to say it. */
export interface Friction {
  readonly mu?: number;
  readonly missing: readonly Note[];
}

/**
 * μ: the number that the plan states, else the pair of surfaces in Annex B; of contacts that differ, the least. Frost,
 * ice or snow: no more than 0.2. For a pair that Annex B does not list there is no fallback.
 */
export function frictionOf(article: Article, working: Working): Friction {
  const { id, surfaces, contacts = [] } = article;
  const stated = readFriction(article.friction, 'friction');
  if (surfaces !== undefined) readSurfaces(surfaces);
  const ofArticle = stated ?? (surfaces === undefined ? undefined : listed(surfaces)?.mu);
  if (article.contacts !== undefined) checkList(contacts, 'contacts');
  const ofContacts = mapAt(contacts, 'contacts', (contact) => {
    checkObject(contact, '', 'a contact { at }');
    return readFriction(contact.friction, 'friction') ?? ofArticle;
  });
  const each = ofContacts.length === 0 ? [ofArticle] : ofContacts;
  const known = each.filter((mu) => mu !== undefined);
  if (known.length < each.length) {
    return { missing: [surfaces === undefined ? note(NOT_STATED, { article: id }) : notListed(surfaces, id)] };
  }
  const least = Math.min(...known);
  const frost = surfaces?.condition === 'frost';
  const mu = frost ? Math.min(least, factor(working, 'friction-cap-frost')) : least;
  if (working.shown) {
    if (stated === undefined && surfaces !== undefined) {
      working.cite(euEn1219512010Friction.source);
      if (!frost) working.assumptions.push(note(SWEPT_CLEAN, { article: id }));
    }
    working.step(
      id,
      'μ',
      frost ? 'min(μ, cap for frost, ice and snow)' : 'least of its contacts',
      each.map((value) => ['μ', value ?? null]),
      mu,
      `${STANDARD}, Annex B`,
    );
  }
  return { mu, missing: [] };
}

function readSurfaces(surfaces: Surfaces): void {
  checkObject(surfaces, 'surfaces', '{ load, deck }');
  for (const side of ['load', 'deck'] as const) {
    if (typeof surfaces[side] !== 'string') {
      fail('MISSING_FIELD', `surfaces.${side}`, 'a surface of Annex B', surfaces[side], 'Leave surfaces out.');
    }
  }
  if (surfaces.condition !== undefined) checkOneOf(surfaces.condition, ['dry', 'wet', 'frost'], 'surfaces.condition');
}

type Pairs = { readonly [deck: string]: { readonly mu: number } };

function listed({ load, deck }: Surfaces): { readonly mu: number } | undefined {
  return rowOf(pairsOf(load) ?? {}, deck);
}

const pairsOf = (load: string): Pairs | undefined =>
  rowOf(euEn1219512010Friction.rows as { readonly [load: string]: Pairs }, load);

/** Names what Annex B does list, for the surface of the load where that is known. */
function notListed({ load, deck }: Surfaces, article: string): Note {
  const known = Object.keys(pairsOf(load) ?? euEn1219512010Friction.rows).join(', ');
  return note(NOT_LISTED, { article, load, deck, known });
}

const NOT_STATED: Words = [
  'FRICTION_NOT_STATED',
  'The friction of {article} on its deck: friction as a number, or surfaces of Annex B.',
];
const NOT_LISTED: Words = [
  'FRICTION_NOT_LISTED',
  'The friction of {article} on its deck as a number: Annex B does not list {load} on {deck}, only {known}.',
];
const SWEPT_CLEAN: Words = [
  'SWEPT_CLEAN',
  '{article}: friction of Annex B, for surfaces swept clean and free of frost, ice, snow, grease and oil.',
];
