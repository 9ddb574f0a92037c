import { fail, mapAt } from '../../errors.js';
import { checkList, checkObject, checkOneOf } from '../../input-checks.js';
import { rowOf } from '../../tables/rating-table.js';
import { type Note, note } from '../../working/note.js';
import type { Provenance } from '../../working/source.js';
import type { Working } from '../../working/step.js';
import { MOST_FRICTION, readFriction } from '../layout.js';
import type { Article, Surfaces } from '../plan.js';
import { exactly, type Span } from './held.js';

/** A friction factor as far as it is known. */
export interface FrictionFactor extends Span {
  /** Where it comes from, in words for a step. */
  readonly basis: string;
  /** What would settle it; empty where it is known. */
  readonly missing: readonly Note[];
}

/** A pair of surfaces in a friction table. A wet factor that is left out is not given, which is not the same as dry. */
export interface FrictionCell {
  readonly mu_dry: number;
  readonly mu_wet?: number;
  readonly provenance?: Provenance;
  readonly mu_dry_provenance?: Provenance;
}

type Rows<Cell> = { readonly [surface: string]: { readonly [against: string]: Cell } };

/**
 * The friction factor of an article: the least of its contacts. Each counts as it states itself, else as the article
 * does, else as its surfaces say.
 */
export function frictionOf(article: Article, ofSurfaces: (surfaces: Surfaces) => FrictionFactor): FrictionFactor {
  const { contacts = [], surfaces } = article;
  if (surfaces !== undefined) checkSurfaces(surfaces);
  const ofArticle = readFriction(article.friction, 'friction');
  if (article.contacts !== undefined) checkList(contacts, 'contacts');
  const stated = mapAt(contacts, 'contacts', (contact) => {
    checkObject(contact, '', 'a contact { at }');
    return readFriction(contact.friction, 'friction') ?? ofArticle;
  });
  const each = stated.length === 0 ? [ofArticle] : stated;
  const known = each.filter((mu) => mu !== undefined);
  const lowest = Math.min(...known);
  if (known.length === each.length) return knownFriction(lowest, 'as stated');
  const others =
    surfaces === undefined
      ? unknownFriction(note('FRICTION_NOT_STATED', { article: article.id }))
      : ofSurfaces(surfaces);
  return atMost(others, lowest);
}

function checkSurfaces(surfaces: Surfaces): void {
  checkObject(surfaces, 'surfaces', '{ load, deck, condition }');
  checkOneOf(surfaces.condition, CONDITIONS, 'surfaces.condition');
  for (const side of ['load', 'deck'] as const) {
    if (typeof surfaces[side] === 'string') continue;
    fail('MISSING_FIELD', `surfaces.${side}`, 'a surface by name', surfaces[side], 'Leave surfaces out.');
  }
}

const CONDITIONS = [undefined, 'dry', 'wet', 'frost'];

/** A pair of surfaces in a table, whichever of the two lies on top. */
export function listedPair<Cell>(rows: Rows<Cell>, { load, deck }: Surfaces): Cell | undefined {
  return rowOf(rowOf(rows, load) ?? {}, deck) ?? rowOf(rowOf(rows, deck) ?? {}, load);
}

/** The factor of a listed pair in its condition. Where the table gives none, it lies between nothing and the dry one. */
export function frictionOfPair({ mu_dry, mu_wet }: FrictionCell, surfaces: Surfaces): FrictionFactor {
  const { condition } = surfaces;
  const pair = nameOf(surfaces);
  const basis = condition === undefined ? pair : `${pair}, ${condition}`;
  if (condition === 'dry' || (condition === undefined && mu_wet === mu_dry)) return knownFriction(mu_dry, basis);
  if (condition === 'wet' && mu_wet !== undefined) return knownFriction(mu_wet, basis);
  const fact =
    condition === undefined
      ? note('SURFACE_CONDITION_NOT_STATED', { pair })
      : note('FRICTION_NOT_IN_TABLE', { pair, condition });
  return { least: condition === undefined ? (mu_wet ?? 0) : 0, most: mu_dry, basis, missing: [fact] };
}

/** A pair of surfaces in words. */
export const nameOf = ({ load, deck }: Surfaces): string => `${load} on ${deck}`;

export const knownFriction = (mu: number, basis: string): FrictionFactor => ({ ...exactly(mu), basis, missing: [] });

/** A factor of which nothing is known but that it is no more than anybody measures. */
export const unknownFriction = (fact: Note): FrictionFactor => ({
  least: 0,
  most: MOST_FRICTION,
  basis: 'not known',
  missing: [fact],
});

/** A factor that counts up to a cap. */
export function atMost(factor: FrictionFactor, cap: number): FrictionFactor {
  const least = Math.min(factor.least, cap);
  const most = Math.min(factor.most, cap);
  return { ...factor, least, most, missing: least === most ? [] : factor.missing };
}

/** The factor as a step, with its range while it is not known. */
export function showFriction(
  working: Working,
  article: string,
  factor: FrictionFactor,
  clause: string,
): FrictionFactor {
  const { least, most, basis } = factor;
  const known = least === most;
  working.step(article, 'μ', basis, known ? {} : { least, most }, known ? least : null, clause);
  return factor;
}
