import { imoCssAnnex132014Friction as friction } from '../../../tables/generated/imo-css-annex13-2014-friction.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import {
  type FrictionCell,
  type FrictionFactor,
  frictionOf,
  frictionOfPair,
  listedPair,
  showFriction,
  unknownFriction,
} from '../../forces/friction.js';
import type { Article } from '../../plan.js';

/** The friction of the caller, else of the pair of surfaces in the annex, which lists timber, steel and rubber alone. */
export function frictionCoefficient(article: Article, working: Working): FrictionFactor {
  const factor = frictionOf(article, (surfaces) => {
    const cell = listedPair<FrictionCell>(friction.rows, surfaces);
    const { load, deck } = surfaces;
    if (cell === undefined) return unknownFriction(note('PAIR_NOT_LISTED', { article: article.id, load, deck }));
    const { source } = friction;
    const read = surfaces.condition !== 'wet' && cell.mu_dry_provenance;
    if (working.shown) working.cite(read ? { ...source, provenance: read } : source);
    return frictionOfPair(cell, surfaces);
  });
  return showFriction(working, article.id, factor, 'CSS Code, Annex 13, section 7.2');
}
