import { formatQuantity } from '../quantities/format.js';
import { readAny } from '../quantities/read.js';
import type { SecurementCheck } from '../securement/check-securement.js';
import type { CountedTieDown } from '../securement/rule-set.js';
import {
  checkKnown,
  decisiveOf,
  itemsAt,
  listAt,
  type Outcome,
  type PlanIds,
  reasonsOf,
  type TieDownOutcome,
  textOf,
} from './outcome.js';
import { lineOf, MOST_OF_ID } from './svg.js';

/** What `checkSecurement` found: the check that decides, and the weakest part of each tie-down. */
export function outcomeOfCheck(result: SecurementCheck, ids: PlanIds): Outcome {
  const { verdict, governing } = result;
  itemsAt(result.articles, 'articles', ({ id }) => checkKnown(id, ids.articles, 'id'));
  const tieDowns = new Map(itemsAt(result.tieDowns, 'tieDowns', (each) => ratingOf(each, ids)));
  const checks = itemsAt(result.checks, 'checks', (check) => check);
  const decisive = decisiveOf(checks, governing);
  const rules = lineOf(textOf(result.rules), MOST_OF_ID);
  const words = {
    pass: `Meets ${rules}`,
    fail: `Does not meet ${rules}`,
    undetermined: `Not determined under ${rules}: a fact is missing`,
    'not-applicable': `${rules} asks nothing here`,
  };
  return { verdict: words[verdict], because: decisive === undefined ? [] : reasonsOf(decisive), tieDowns };
}

function ratingOf({ id, rating, weakest }: CountedTieDown, ids: PlanIds): [string, TieDownOutcome] {
  checkKnown(id, ids.tieDowns, 'id');
  const parts = listAt(weakest, 'weakest').map((part) => lineOf(textOf(part), MOST_OF_ID));
  const rated = rating === null ? 'rating not known' : `rated ${lineOf(formatQuantity(readAny(rating, 'rating')), 30)}`;
  const weak = parts.length === 0 ? '' : `, weakest part: ${lineOf(parts.join(', '), 200)}`;
  return [id, { known: rating !== null, words: `${rated}${weak}` }];
}
