import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import { imoCtu2014Friction as friction } from '../../../tables/generated/imo-ctu-2014-friction.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { exactly, ifKnown } from '../../force-checks.js';
import type { Article, Surfaces } from '../../plan.js';
import {
  atMost,
  checkSurfaces,
  type FrictionFactor,
  frictionOf,
  frictionOfPair,
  listedPair,
} from '../../surface-friction.js';
import { citeTable } from './cite.js';

const CLAUSE = 'CTU Code, Annex 7, Appendix 2';

/**
 * Annex 7, Appendix 2: static friction of the pair of surfaces, or the factor that the caller measured. A pair that is
 * not listed counts 0.3 at most; with frost, ice or snow nothing counts more than 0.2.
 */
export function staticFriction(article: Article, working: Working): FrictionFactor {
  const { surfaces } = article;
  if (surfaces !== undefined) checkSurfaces(surfaces);
  const factor = frictionOf(article, (pair) => ofSurfaces(pair, article.id, working));
  const frosty = surfaces?.condition === 'frost';
  if (frosty) citeTable(working, factors);
  const counted = frosty ? atMost(factor, factors.rows['friction-cap-frost'].value) : factor;
  if (working.shown) {
    working.step(
      article.id,
      'μ',
      frosty ? `min(${factors.rows['friction-cap-frost'].value} for frost, ${factor.basis})` : factor.basis,
      factor.most === factor.least ? { factor: factor.most } : { least: factor.least, most: factor.most },
      ifKnown(counted, (value) => value),
      CLAUSE,
    );
  }
  return counted;
}

function ofSurfaces(surfaces: Surfaces, article: string, working: Working): FrictionFactor {
  const cell = listedPair(friction.rows, surfaces);
  const pair = `${surfaces.load} on ${surfaces.deck}`;
  if (cell === undefined) {
    const cap = factors.rows['friction-cap-unlisted'].value;
    citeTable(working, factors);
    working.cautions.push(note(PAIR_NOT_LISTED, { article, pair, cap }));
    return { ...exactly(cap), basis: `${pair}, a pair that is not listed`, missing: [] };
  }
  citeTable(working, friction, cell.provenance);
  if (surfaces.condition !== 'frost') return frictionOfPair(cell, surfaces);
  return { ...exactly(Math.min(cell.mu_dry, cell.mu_wet ?? cell.mu_dry)), basis: `${pair} without frost`, missing: [] };
}

const PAIR_NOT_LISTED: Words = [
  'PAIR_NOT_LISTED',
  '{article}: {pair} is not in the table, and {cap} is the most that may count without a test. Where a listed pair that is more slippery comes near it, state that; where it was measured, state the friction.',
];
