import type { QuantityLike } from '../../../quantities/quantity.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { inForce, type Sum, times, weightUnder } from '../../forces/sums.js';
import type { Article, ReadArticle } from '../../plan.js';
import type { ArticleRequirement, CountOption, DirectionalRequirement, RuleContext } from '../../rule-set.js';
import { type Coefficients, cite, coefficients, factor, STANDARD } from './cite.js';
import { frictionFactor } from './friction.js';

/**
 * What the standard asks of one article before anything is known of the layout: the least number by method, and the
 * force that direct lashing must hold in each direction, m · g · (c − fμ · μ · cz), as if it pulled along the deck.
 * Without a friction factor the whole of m · g · c.
 */
export function requirementOf({ article, mass }: ReadArticle, { working, units }: RuleContext): ArticleRequirement {
  const options = waysToSecure(working);
  const { least: mu, missing } = frictionFactor(article, working);
  if (missing.length > 0) working.assumptions.push(...missing, note('LEAST_FRICTION_COUNTED', { article: article.id }));
  const weight = weightOf(article.id, mass, { working, units });
  const show = inForce(units);
  const fmu = factor(working, 'friction-factor-direct');
  cite(working, 'sliding');
  const perDirection = DIRECTIONS.map(([direction, heading]): DirectionalRequirement => {
    const { c, cz } = coefficients(working, 'sliding', heading) as Coefficients;
    const force = show(times(weight, Math.max(0, c - fmu * mu * cz)));
    working.step(
      `restraint ${direction}`,
      'F',
      'max(0, m · g · (c − fμ · μ · cz))',
      { 'm · g': show(weight), c, fμ: fmu, μ: mu, cz },
      force,
      `${STANDARD}, sliding`,
    );
    return { direction, againstLashingCapacity: force, clause: `${STANDARD}, sliding` };
  });
  const minimumCount = Math.min(...options.map(({ minimumCount: count }) => count));
  return {
    minimumCount,
    recommendedCount: recommendedCount(article, minimumCount, working),
    requiredAggregate: null,
    options,
    perDirection,
  };
}

const DIRECTIONS = [
  ['forward', 'forward'],
  ['rearward', 'rearward'],
  ['lateral', 'left'],
] as const;

/** Two over-top lashings, or two pairs of direct ones. */
export function waysToSecure(working: Working): readonly CountOption[] {
  cite(working, 'over-top lashing');
  cite(working, 'direct lashing');
  return [
    { rule: 'over-top lashing', minimumCount: factor(working, 'over-top-count') },
    { rule: 'direct lashing', minimumCount: 2 * factor(working, 'direct-pair-count') },
  ];
}

/** For a machine two pairs of direct lashings, common practice; never below what the standard asks. */
export function recommendedCount({ kind }: Article, minimumCount: number, working: Working): number {
  return kind === 'general' ? minimumCount : Math.max(minimumCount, 2 * factor(working, 'direct-pair-count'));
}

/** m · g, with the g of the standard. */
export function weightOf(article: string, mass: QuantityLike, { working, units }: RuleContext): Sum {
  const g = factor(working, 'gravity');
  const weight = weightUnder(g, mass);
  working.step(article, 'm · g', 'm · g', { m: mass, g: { value: g, unit: 'm/s2' } }, inForce(units)(weight), STANDARD);
  return weight;
}
