import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import { imoCtu2014Friction as friction } from '../../../tables/generated/imo-ctu-2014-friction.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import {
  atMost,
  type FrictionCell,
  type FrictionFactor,
  frictionOf,
  frictionOfPair,
  knownFriction,
  listedPair,
  nameOf,
  showFriction,
} from '../../forces/friction.js';
import type { Article, Surfaces } from '../../plan.js';
import { citeTable } from './cite.js';

/**
 * Annex 7, Appendix 2: static friction of the pair of surfaces, or the factor that the caller measured. A pair that is
 * not listed counts 0.3 at most; with frost, ice or snow nothing counts more than 0.2.
 */
export function staticFriction(article: Article, working: Working): FrictionFactor {
  const found = frictionOf(article, (pair) => ofSurfaces(pair, article.id, working));
  let counted = found;
  if (article.surfaces?.condition === 'frost') {
    const cap = factors.rows['friction-cap-frost'].value;
    citeTable(working, factors);
    counted = { ...atMost(found, cap), basis: `min(${cap} for frost, ${found.basis})` };
  }
  return showFriction(working, article.id, counted, 'CTU Code, Annex 7, Appendix 2');
}

function ofSurfaces(surfaces: Surfaces, article: string, working: Working): FrictionFactor {
  const cell = listedPair<FrictionCell>(friction.rows, surfaces);
  const pair = nameOf(surfaces);
  if (cell === undefined) {
    const cap = factors.rows['friction-cap-unlisted'].value;
    citeTable(working, factors);
    working.cautions.push(note('CAP_ON_PAIR_NOT_LISTED', { article, pair, cap }));
    return knownFriction(cap, `${pair}, a pair that is not listed`);
  }
  citeTable(working, friction, cell.provenance);
  if (surfaces.condition !== 'frost') return frictionOfPair(cell, surfaces);
  return knownFriction(Math.min(cell.mu_dry, cell.mu_wet ?? cell.mu_dry), `${pair} without frost`);
}
