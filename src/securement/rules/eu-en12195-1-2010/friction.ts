import { euEn1219512010Friction as table } from '../../../tables/generated/eu-en12195-1-2010-friction.js';
import { rowOf } from '../../../tables/rating-table.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import {
  atMost,
  type FrictionFactor,
  frictionOf,
  knownFriction,
  listedPair,
  nameOf,
  showFriction,
  unknownFriction,
} from '../../forces/friction.js';
import type { Article, Surfaces } from '../../plan.js';
import { factor, STANDARD } from './cite.js';

/**
 * μ: the number that the plan states, else the pair of surfaces in Annex B, alike dry and wet. Frost, ice or snow: no
 * more than 0.2. For a pair that Annex B does not list there is no fallback.
 */
export function frictionFactor(article: Article, working: Working): FrictionFactor {
  const { id, surfaces } = article;
  const frost = surfaces?.condition === 'frost';
  const found = frictionOf(article, (pair) => {
    const row = listedPair<{ readonly mu: number }>(table.rows, pair);
    if (row === undefined) return unknownFriction(notListed(pair, id));
    if (working.shown) {
      working.cite(table.source);
      if (!frost) working.assumptions.push(note('SWEPT_CLEAN', { article: id }));
    }
    return knownFriction(row.mu, nameOf(pair));
  });
  let counted = found;
  // a cap does not make known what is not
  if (frost && found.missing.length === 0) {
    const cap = factor(working, 'friction-cap-frost');
    counted = { ...atMost(found, cap), basis: `min(${cap} for frost, ice and snow, ${found.basis})` };
  }
  return showFriction(working, id, counted, `${STANDARD}, Annex B`);
}

/** Names what Annex B does list, for the surface of the load where that is known. */
function notListed({ load, deck }: Surfaces, article: string): Note {
  const rows: { readonly [load: string]: object } = table.rows;
  const known = Object.keys(rowOf(rows, load) ?? rows).join(', ');
  return note('FRICTION_NOT_LISTED', { article, load, deck, known });
}
