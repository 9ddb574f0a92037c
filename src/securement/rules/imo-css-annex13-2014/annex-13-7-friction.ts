import { imoCssAnnex132014Friction as friction } from '../../../tables/generated/imo-css-annex13-2014-friction.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { ifKnown } from '../../force-checks.js';
import type { Article } from '../../plan.js';
import {
  checkSurfaces,
  type FrictionCell,
  type FrictionFactor,
  frictionOf,
  frictionOfPair,
  listedPair,
  unknownFriction,
} from '../../surface-friction.js';

/** The friction of the caller, else of the pair of surfaces in the annex, which lists timber, steel and rubber alone. */
export function frictionCoefficient(article: Article, working: Working): FrictionFactor {
  if (article.surfaces !== undefined) checkSurfaces(article.surfaces);
  const factor = frictionOf(article, (surfaces) => {
    const cell: FrictionCell | undefined = listedPair(friction.rows, surfaces);
    const { load, deck } = surfaces;
    if (cell === undefined) return unknownFriction(note(PAIR_NOT_LISTED, { article: article.id, load, deck }));
    const { source } = friction;
    const read = surfaces.condition !== 'wet' && cell.mu_dry_provenance;
    if (working.shown) working.cite(read ? { ...source, provenance: read } : source);
    return frictionOfPair(cell, surfaces);
  });
  if (working.shown) {
    const known = factor.least === factor.most;
    working.step(
      article.id,
      'μ',
      factor.basis,
      known ? {} : { least: factor.least, most: factor.most },
      ifKnown(factor, (value) => value),
      'CSS Code, Annex 13, section 7.2',
    );
  }
  return factor;
}

const PAIR_NOT_LISTED: Words = [
  'PAIR_NOT_LISTED',
  'The friction factor of {article}: the annex does not list {load} on {deck}. Measure it and state it.',
];
