import { fail, failAt } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type Article, readArticle } from './plan.js';
import { type ArticleRequirement, type CountRules, checkRules } from './rule-set.js';

export interface TieDownsRequired extends ResultBase<'tieDownsRequired'>, ArticleRequirement {
  readonly rules: string;
}

/**
 * How many tie-downs an article needs under a rule set, and how strong they must be together.
 *
 * The count and the strength are separate tests: more capacity never lowers the count. For a machine that a
 * rule set lets be secured in several ways, `options` lists each way with its count; `minimumCount` is the
 * least of them and `recommendedCount` what the library recommends.
 *
 * @param input.rules a rule set, such as {@link us49cfr393_2024}, or its counting part alone, {@link us49cfr393_110_2024}
 * @param input.article `{ kind, mass, length, blockedForward?, ... }`; the id may be left out
 * @param input.units `'us'` or `'si'`; omitted: the rule set's own
 * @throws RiggingError `UNKNOWN_RULE_SET`, `MISSING_FIELD`, `UNKNOWN_VALUE`, `NOT_POSITIVE`, `WRONG_KIND` and what the parser throws
 * @validity counts and strength only; where and at what angle the tie-downs pull is not looked at here
 * @source the rule set's own clauses; for the US 49 CFR 393.102, 393.106, 393.110, 393.128, 393.130
 * @example
 * tieDownsRequired({
 *   rules: us49cfr393_2024,
 *   article: { kind: 'machinery', mass: '12000 lb', length: '14 ft' },
 * }).minimumCount
 * // => 4
 */
export function tieDownsRequired(input: {
  readonly rules: CountRules;
  readonly article: Omit<Article, 'id'> & { readonly id?: string };
  readonly units?: UnitSystem;
  readonly working?: boolean;
}): TieDownsRequired {
  checkObject(input, '', '{ rules, article }');
  const { rules, article } = input;
  checkRules(rules, 'requirementOf');
  const units = readSystem(input.units, rules.units);
  const working = new Working(input.working !== false);
  let requirement: ArticleRequirement;
  try {
    checkObject(article, '', '{ kind, mass, length }');
    const named = { ...article, id: article.id === undefined ? 'article' : article.id } as Article;
    if (typeof named.id !== 'string' || named.id === '')
      fail('MISSING_FIELD', 'id', 'a name, or no id', named.id, 'Leave it out here.');
    requirement = rules.requirementOf(readArticle(named), { working, units });
  } catch (error) {
    failAt('article', error);
  }
  working.cautions.push(FOLLOW_THE_MARK);
  return makeResult('tieDownsRequired', { rules: rules.id, ...requirement }, input, working);
}
