import { auLrg2018Friction as table } from '../../../tables/generated/au-lrg-2018-friction.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import {
  type FrictionFactor,
  frictionOf,
  knownFriction,
  listedPair,
  nameOf,
  unknownFriction,
} from '../../forces/friction.js';
import type { Article } from '../../plan.js';

/**
 * The friction factor of an article, counted in full: as stated, else the low end of the guide's range for its surfaces
 * (from memory). The ranges are for dry surfaces as far as recalled, so wet or frosted ones have none.
 */
export const frictionFactor = (article: Article, working: Working): FrictionFactor =>
  frictionOf(article, (surfaces) => {
    const { load, deck, condition = 'dry' } = surfaces;
    const row = listedPair<{ readonly mu: number }>(table.rows, surfaces);
    if (row === undefined) return unknownFriction(note('FRICTION_FACTOR_NOT_LISTED', { load, deck }));
    if (condition !== 'dry') return unknownFriction(note('FRICTION_NOT_DRY', { condition }));
    if (working.shown) {
      working.cite(table.source);
      working.assumptions.push(note('FRICTION_FROM_TABLE', { load, deck, mu: row.mu }));
    }
    return knownFriction(row.mu, nameOf(surfaces));
  });
