import type { AnchorPart } from '../assembly/part.js';
import { newRater, type PartRater, rateSeries } from '../assembly/rate-part.js';
import { fail, mapAt } from '../errors.js';
import { checkIds, checkList, checkObject, checkOneOf } from '../input-checks.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readPositive } from '../quantities/read.js';
import { massUnitOf } from '../quantities/shared-units.js';
import { type Plan, readPlan, type TieDown, type TieDownPath } from '../securement/plan.js';
import type { RuleSet } from '../securement/rule-set.js';
import { marksAlone, type RatingTable } from '../tables/rating-table.js';
import { type Check, overallVerdict } from '../working/check.js';
import { Working } from '../working/step.js';
import { FITTING_KINDS, type FittingKind, type KitKind } from './kit-item.js';

/** A tie-down that a kit is wanted for. */
export interface WantedTieDown {
  readonly id: string;
  /** The id of the article it holds, or of an accessory mounted on one. */
  readonly holds: string;
  readonly path: TieDownPath;
  readonly end?: 'front' | 'rear';
  /** The chain it needs, such as the `length` of {@link tieDownLength}. */
  readonly chainLength: QuantityInput<'length'>;
  /** The points it is fixed to, each with its rating: they count in the tie-down, and no kit makes up for them. */
  readonly anchors: readonly AnchorPart[];
  /** What it has beside its chain; left out: a binder and two grab hooks, as haulers do. */
  readonly fittings?: readonly FittingKind[];
  /** Of these one more of a sort that would do in its place; of `'chain'` one more of the same. */
  readonly spares?: readonly KitKind[];
}

/** A wanted tie-down, read, with what the rule set makes of it. */
export interface Demand {
  readonly wanted: WantedTieDown;
  readonly chainLength: QuantityLike;
  readonly fittings: readonly FittingKind[];
  readonly spares: readonly KitKind[];
  /** The least rating of its anchor points, in the unit of the rule set. */
  readonly anchorLimit: number;
  /** Which sum of the rule set it adds to; undefined where it holds an accessory. */
  readonly sum: number | undefined;
  readonly credit: number;
}

/** What the rule set asks beside the strength of what is bought. */
export interface Demands {
  readonly demands: readonly Demand[];
  readonly articles: readonly string[];
  /** By article, in the unit of the rule set. */
  readonly required: readonly number[];
  readonly unit: 'lb' | 'kg';
  readonly ratings: RatingTable;
  /** What no kit can meet: requirements that fail or are open however strong the tie-downs are. */
  readonly unmet: readonly Check[];
  /** Tie-downs whose own anchor points are not rated. */
  readonly unratedAnchors: readonly string[];
}

/** A binder and a grab hook at either end: common practice. */
export const USUAL_FITTINGS: readonly FittingKind[] = ['binder', 'grab-hook', 'grab-hook'];

/** More than any tie-down has. */
const MOST_FITTINGS = 12;
/** Beyond any tie-down, yet far from the end of what a double holds. */
const STRONGER_THAN_ANY = { value: 1e12, unit: 'lb' } as const;

/** Reads what is wanted, and asks the rule set what it would say of tie-downs that never fail. */
export function readDemands(
  rules: RuleSet,
  plan: Pick<Plan, 'vehicle' | 'seaArea' | 'articles'>,
  wanted: readonly WantedTieDown[],
): Demands {
  checkList(wanted, 'tieDowns');
  checkIds(wanted, 'tieDowns');
  const rater = newRater(rules.ratings ?? marksAlone('workingLoadLimit'));
  const read = mapAt(wanted, 'tieDowns', (each) => readWanted(each, rater));
  const tieDowns: TieDown[] = wanted.map((each) => tieDownOf(each, [UNBREAKABLE]));
  const probe: Plan = { ...plan, tieDowns };
  const articles = readPlan(probe);
  const outcome = rules.judgePlan(probe, articles, { working: new Working(false), units: rules.units });
  const { ratings } = rules;
  const sums = outcome.articles.map(({ requiredAggregate }) => requiredAggregate);
  if (ratings?.system !== 'workingLoadLimit' || sums.includes(null)) {
    return fail(
      'UNKNOWN_RULE_SET',
      'rules',
      'a rule set that counts tie-downs and adds up working load limits',
      rules.id,
      'Where forces decide, lay the tie-downs out first and check the plan with checkSecurement.',
    );
  }
  const unit = massUnitOf(rules.units);
  const ids = outcome.articles.map(({ id }) => id);
  const unratedAnchors = outcome.tieDowns.filter(({ rating }) => rating === null).map(({ id }) => id);
  const open = overallVerdict(outcome.checks) !== 'pass';
  return {
    demands: read.map((each, index): Demand => {
      const { rating, credit, holds } = outcome.tieDowns[index] as (typeof outcome.tieDowns)[number];
      const sum = ids.indexOf(holds);
      const anchorLimit = rating === null ? 0 : ratedLoadIn(rating, unit).value;
      return { ...each, anchorLimit, credit, sum: sum < 0 ? undefined : sum };
    }),
    articles: ids,
    required: sums.map((each) => ratedLoadIn(each as QuantityLike, unit).value),
    unit,
    ratings: ratings as RatingTable,
    unmet: open ? outcome.checks.filter(isOpen) : [],
    unratedAnchors,
  };
}

const isOpen = ({ weight, verdict }: Check): boolean =>
  weight === 'requirement' && (verdict === 'fail' || verdict === 'undetermined');

const UNBREAKABLE = { id: 'kit', kind: 'binder', markedWll: STRONGER_THAN_ANY } as const;

type Parts = Extract<TieDown, { parts: readonly unknown[] }>['parts'];

/** The tie-down of a plan: its parts, and the points it is fixed to. */
export function tieDownOf({ id, holds, path, end, anchors }: WantedTieDown, parts: Parts): TieDown {
  return { id, holds, path, ...(end !== undefined && { end }), parts: [...parts, ...anchors] };
}

function readWanted(wanted: WantedTieDown, rater: PartRater) {
  checkObject(wanted, '', 'a tie-down { id, holds, path, chainLength, anchors }');
  const { fittings = USUAL_FITTINGS, spares = [], anchors } = wanted;
  checkList(fittings, 'fittings', 0);
  checkList(spares, 'spares', 0);
  checkList(anchors, 'anchors', 0);
  if (fittings.length + spares.length > MOST_FITTINGS) {
    fail(
      'TOO_LARGE',
      'fittings',
      `at most ${MOST_FITTINGS} with spares`,
      fittings.length + spares.length,
      'Name fewer.',
    );
  }
  fittings.forEach((each, index) => {
    checkOneOf(each, FITTING_KINDS, `fittings[${index}]`);
  });
  spares.forEach((each, index) => {
    checkOneOf(each, ['chain', ...fittings], `spares[${index}]`);
  });
  anchors.forEach((each, index) => {
    if (each?.kind !== 'anchor') {
      fail('UNKNOWN_VALUE', `anchors[${index}].kind`, 'anchor', each?.kind, 'Only anchor points are listed here.');
    }
  });
  if (anchors.length > 0) rateSeries(rater, anchors, 'anchors'); // what is wrong with one is said where it stands
  return { wanted, chainLength: readPositive(wanted.chainLength, 'length', 'chainLength'), fittings, spares };
}
