import { type Check, countCheck, undeterminedCheck } from '../../../working/check.js';
import type { Working } from '../../../working/step.js';
import { legsOf, runsOver } from '../../forces/tie-downs.js';
import { aboutRule, factor } from './cite.js';
import type { Lashing } from './lashing.js';

/**
 * The least number: two over-top lashings where nothing else holds the load, else two pairs of direct legs. The two
 * legs of an over-top lashing or of a loop are a pair. A lashing that is damaged is none, and one whose capacity is not
 * known may be none.
 */
export function checkNumber(article: string, lashings: readonly Lashing[], working: Working): Check {
  const about = (words: string, clause: string) => aboutRule(working, 'number', words, article, clause);
  const sound = lashings.filter(({ rating }) => rating.capacity?.value !== 0);
  const known = sound.filter(({ rating }) => rating.capacity !== null);
  const frictional = sound.every(runsOver) && sound.length > 0;
  const least = factor(working, frictional ? 'over-top-count' : 'direct-pair-count');
  const subject = frictional
    ? about('Number of over-top lashings', 'over-top lashing')
    : about('Pairs of legs', 'direct lashing');
  const [certain, possible] = [pairsOf(known), pairsOf(sound)];
  const missing = sound.flatMap(({ rating }) => (rating.capacity === null ? rating.missing : []));
  return certain < least && least <= possible
    ? undeterminedCheck(subject, missing)
    : countCheck(subject, least, possible);
}

/** Whole pairs of legs. */
const pairsOf = (lashings: readonly Lashing[]): number =>
  Math.floor(lashings.reduce((legs, lashing) => legs + legsOf(lashing.layout.tieDown), 0) / 2);
