import { checkRatings } from '../chain/chain-rating.js';
import { byMass, type ListedRating, ratedChains } from '../chain/rated-chains.js';
import { CHAIN_GRADES, type ChainGrade, type TradeSize } from '../chain/trade-size.js';
import { fail, RiggingError, within } from '../errors.js';
import { fits, type Hook } from '../hardware/fits.js';
import { checkList, checkObject, checkOneOf } from '../input-checks.js';
import type { PlannedPull } from '../pulling/plan-pull.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact, compareExactSums } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Article, readArticle, type TieDownPath } from '../securement/plan.js';
import { checkRules, type RuleSet } from '../securement/rule-set.js';
import type { RatingTable } from '../tables/rating-table.js';
import { FOLLOW_THE_MARK, STAND_CLEAR, STRAIGHT_PULL } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { USUAL_FITTINGS } from './kit-demand.js';
import type { FittingKind } from './kit-item.js';

/** Tying a machine down: each of so many chains bears its share of what the rule set asks. */
export interface HaulTask {
  readonly kind: 'haul';
  /** It brings its own table: `ratings` is not given beside it. */
  readonly rules: RuleSet;
  readonly article: Omit<Article, 'id'> & { readonly id?: string };
  /** How many tie-downs share it. */
  readonly tieDowns: number;
  readonly path: TieDownPath;
  /** Of one chain. */
  readonly length: QuantityInput<'length'>;
}

/** Pulling, by the limit that is needed and the length, or as {@link planPull} planned it. */
export type PullTask =
  | {
      readonly kind: 'pull';
      readonly requiredLimit: QuantityInput<'ratedLoad'>;
      readonly length: QuantityInput<'length'>;
    }
  | { readonly kind: 'pull'; readonly pull: PlannedPull };

/** Going round a load, as in a bucket, to keep it there. */
export interface WrapTask {
  readonly kind: 'wrap';
  readonly requiredLimit: QuantityInput<'ratedLoad'>;
  readonly length: QuantityInput<'length'>;
}

export type ChainTask = HaulTask | PullTask | WrapTask;

export interface ChainPrice {
  readonly size: TradeSize;
  readonly grade: ChainGrade;
  /** Of so much chain. */
  readonly price: number;
  readonly per: QuantityInput<'length'>;
}

/** A chain that does the job. */
export interface RankedChain {
  readonly size: string;
  readonly grade: number;
  readonly workingLoadLimit: Quantity<'lb' | 'kg'>;
  /** Of the whole length, without fittings. */
  readonly mass: Quantity<'lb' | 'kg'>;
  /** Required limit over working load limit. */
  readonly utilization: number;
  /** Mass of the whole length over working load limit: lb to carry for each lb of limit. */
  readonly massPerLimit: number;
  /** What it weighs more than the lightest that does. */
  readonly heavierBy: Quantity<'lb' | 'kg'>;
  /** Of the whole length, where the caller prices it. */
  readonly price?: number;
}

/** A chain that does not, with every reason. */
export interface RejectedChain {
  readonly size: string;
  readonly grade: number;
  /** Null where the table lists no such chain. */
  readonly workingLoadLimit: Quantity<'lb' | 'kg'> | null;
  readonly mass: Quantity<'lb' | 'kg'> | null;
  readonly because: readonly Note[];
}

/** What goes onto the chosen chain. */
export interface ChosenFitting {
  readonly kind: FittingKind;
  /** Of hooks: that of the chain, so that it takes its link and counts as strong. */
  readonly size?: string;
  readonly grade?: number;
  readonly latch?: true;
  /** What must be marked on it, at least. */
  readonly markedWll?: Quantity<'lb' | 'kg'>;
  readonly because: Note;
}

export interface ChainChoice extends ResultBase<'chooseChain'> {
  /** `fail` where no chain of the table does; `candidates` is empty then. */
  readonly verdict: 'pass' | 'fail';
  readonly chosen: RankedChain | null;
  readonly requiredLimit: Quantity<'lb' | 'kg'>;
  readonly length: Quantity<'ft' | 'm'>;
  /** Every chain that does, the best first. */
  readonly candidates: readonly RankedChain[];
  readonly rejected: readonly RejectedChain[];
  /** Common practice, not law. */
  readonly fittings: readonly ChosenFitting[];
  readonly ratings: string;
}

export interface ChainChoiceInput {
  readonly task: ChainTask;
  /** The table to choose from; not for hauling, where the rule set has its own. */
  readonly ratings?: RatingTable;
  /** The lightest, the cheapest by `prices`, or the least mass for each unit of limit. */
  readonly objective: 'mass' | 'price' | 'mass-per-limit';
  readonly prices?: readonly ChainPrice[];
  /** The most that the owner carries in one go. */
  readonly carryLimit?: QuantityInput<'mass'>;
  /** A hook that is there already and must go with the chain. */
  readonly hook?: Hook;
  /** Grades that are wanted; left out: those that common practice uses for the task. */
  readonly grades?: readonly ChainGrade[];
  readonly units?: UnitSystem;
  readonly working?: boolean;
}

/**
 * The chain for a task: every size and grade of a rating table ranked, with what each that is stronger costs in weight, and
 * why each of the others does not do.
 *
 * Common practice takes the lightest chain that surely does the job. It does where WLL ≥ required limit. For a haul the
 * required limit of each of n tie-downs is required aggregate / (n · credit); for a pull or a wrap it is stated, or that of
 * a planned pull. The mass is that of the whole length without fittings ({@link chainMass}).
 *
 * @param input.task `{ kind: 'haul', rules, article, tieDowns, path, length }`, `{ kind: 'pull', requiredLimit, length }`,
 * `{ kind: 'pull', pull }` or `{ kind: 'wrap', requiredLimit, length }`
 * @param input.ratings the rating table, for a pull or a wrap
 * @param input.objective `'mass'`, `'price'` (with `prices`) or `'mass-per-limit'`
 * @param input.carryLimit a mass; heavier chains are rejected
 * @param input.grades left out: 70 and higher for a haul or a pull, as the trade does, and any for a wrap
 * @param input.units `'us'` or `'si'`; omitted: the table's own
 * @throws RiggingError `UNKNOWN_RULE_SET`, `UNKNOWN_RATING_TABLE`, `CONFLICTING_FIELDS`, `MISSING_FIELD`, `NOT_POSITIVE`,
 * `NOT_A_WHOLE_NUMBER`, `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `UNKNOWN_VALUE`, `NEGATIVE` and what the parser throws
 * @validity a straight, steady pull on sound chain; shares of a haul are equal. The fittings are common practice, from memory
 * @source the rating table; 49 CFR 393.106(d) or the like for a haul; grades and fittings: common practice
 * @example
 * const choice = chooseChain({
 *   task: { kind: 'pull', requiredLimit: '1500 lb', length: '20 ft' },
 *   ratings: us49cfr393_108_2024,
 *   objective: 'mass',
 * });
 * console.log(choice.chosen?.size, choice.chosen?.grade, `${choice.chosen?.workingLoadLimit}`);
 * // => 1/4 70 3150 lb
 */
export function chooseChain(input: ChainChoiceInput): ChainChoice {
  checkObject(input, '', '{ task, objective }');
  const { task, objective } = input;
  checkObject(task, 'task', "{ kind: 'pull', requiredLimit, length }");
  checkOneOf(task.kind, ['haul', 'pull', 'wrap'], 'task.kind');
  checkOneOf(objective, ['mass', 'price', 'mass-per-limit'], 'objective');
  const working = new Working(input.working !== false);
  const ratings = ratingsOf(input);
  const units = readSystem(input.units, ratings.units);
  const unit = massUnitOf(units);
  const need = within('task', () => needOf(task, units, working));
  const requiredLimit = ratedLoadIn(need.limit, unit);
  const length = inUnit(need.length, units === 'us' ? 'ft' : 'm');
  const carryLimit = readOptional(input.carryLimit, 'mass', 'carryLimit');
  const grades = readGrades(input.grades) ?? usualGrades(task);
  const priceOf = readPrices(input, length);

  const judged = everyChain(ratings, ratedChains(ratings, length, units)).map(({ size, grade, listed }) => {
    const because: Note[] = [];
    if (listed === undefined) because.push(note('NOT_RATED_BY_TABLE', { ratings: ratings.id, size, grade }));
    else if (!need.carriedBy(listed.workingLoadLimit)) {
      because.push(note('TOO_WEAK', { limit: listed.workingLoadLimit, required: requiredLimit }));
    }
    if (!grades.includes(grade)) {
      because.push(
        input.grades === undefined
          ? note('GRADE_NOT_USUAL', { grade, task: task.kind })
          : note('GRADE_NOT_WANTED', { grade }),
      );
    }
    const mass = listed?.mass ?? null;
    if (listed !== undefined && mass === null) because.push(note('MASS_NOT_KNOWN', { size, grade }));
    if (mass !== null && carryLimit !== undefined && compareExact(mass, carryLimit) > 0) {
      because.push(note('TOO_HEAVY_TO_CARRY', { mass, limit: carryLimit }));
    }
    if (input.hook !== undefined && !takes(input.hook, size)) {
      because.push(note('HOOK_DOES_NOT_TAKE', { hook: input.hook.size, size }));
    }
    const price = priceOf(size, grade);
    if (objective === 'price' && price === undefined) because.push(note('PRICE_NOT_STATED', { size, grade }));
    return { size, grade, workingLoadLimit: listed?.workingLoadLimit ?? null, mass, because, price };
  });

  const enough = judged.flatMap(({ because, workingLoadLimit, mass, price, size, grade }) =>
    because.length === 0 && workingLoadLimit !== null && mass !== null
      ? [{ size, grade, workingLoadLimit, mass, price }]
      : [],
  );
  const [lightest] = [...enough].sort(byMass);
  const candidates = enough
    .map(({ price, ...chain }): RankedChain => {
      const { workingLoadLimit, mass } = chain;
      return {
        ...chain,
        utilization: requiredLimit.value / workingLoadLimit.value,
        massPerLimit: mass.value / workingLoadLimit.value,
        heavierBy: new Quantity(mass.value - (lightest?.mass.value ?? 0), unit),
        ...(price !== undefined && { price }),
      };
    })
    .sort(orderOf(objective));
  const [chosen = null] = candidates;
  working.cite(ratings.chain.source);
  working.cite(LIGHTEST_THAT_DOES);
  if (input.grades === undefined && task.kind !== 'wrap')
    working.assumptions.push(note('USUAL_GRADES', { task: task.kind }));
  working.cautions.push(STRAIGHT_PULL, STAND_CLEAR, FOLLOW_THE_MARK);
  if (chosen !== null) {
    working.cautions.push(note('FITTINGS_COUNT_TOO'));
    working.cite(USUAL_FITTINGS_SOURCE);
    working.step(
      'chain',
      'utilization',
      'required limit / WLL',
      { 'required limit': requiredLimit, WLL: chosen.workingLoadLimit },
      chosen.utilization,
    );
  }
  const rejected = judged.flatMap(({ price: _, ...chain }): RejectedChain[] =>
    chain.because.length === 0 ? [] : [chain],
  );
  return makeResult(
    'chooseChain',
    {
      verdict: chosen === null ? ('fail' as const) : ('pass' as const),
      chosen,
      requiredLimit,
      length,
      candidates,
      rejected,
      fittings: chosen === null ? [] : fittingsFor(task, chosen, requiredLimit),
      ratings: ratings.id,
    },
    { ...input, task: echoOf(task) },
    working,
  );
}

const LIGHTEST_THAT_DOES: SourceRef = {
  document: 'Common practice in choosing chain',
  clause: 'the lightest that surely does',
  provenance: 'common practice',
};
const USUAL_FITTINGS_SOURCE: SourceRef = {
  document: 'Common practice with chain fittings',
  provenance: 'common practice',
  note: 'no rule or standard; from memory',
};

/** What a task asks of its chain. */
interface Need {
  readonly limit: QuantityLike;
  readonly length: QuantityLike;
  /** Whether a limit is enough, decided exactly. */
  readonly carriedBy: (limit: QuantityLike) => boolean;
}

function ratingsOf({ task, ratings }: ChainChoiceInput): RatingTable {
  if (task.kind !== 'haul') {
    checkRatings(ratings);
    return ratings;
  }
  checkRules(task.rules, 'judgePlan');
  if (ratings !== undefined) {
    fail(
      'CONFLICTING_FIELDS',
      'ratings',
      'no table beside the rule set',
      ratings.id,
      'The rule set counts by its own.',
    );
  }
  const own = task.rules.ratings;
  if (own?.system === 'workingLoadLimit') return own as RatingTable;
  return fail(
    'UNKNOWN_RULE_SET',
    'task.rules',
    'a rule set that counts working load limits',
    task.rules.id,
    'Work the load of each tie-down out first, and choose a chain of that rating.',
  );
}

function needOf(task: ChainTask, units: UnitSystem, working: Working): Need {
  if (task.kind === 'haul') return needOfHaul(task, units, working);
  if (task.kind === 'pull' && 'pull' in task) {
    const { pull } = task;
    checkObject(pull, 'pull', 'a result of planPull');
    const limit = pull.requiredLimit;
    if (limit == null || !(limit.value > 0)) {
      return fail('MISSING_FIELD', 'pull.requiredLimit', 'a pull on the chain', limit, 'Nothing pulls in this plan.');
    }
    const length = readPositive(pull.length, 'length', 'pull.length');
    return { limit, length, carriedBy: (each) => compareExact(each, limit) >= 0 };
  }
  const limit = readPositive(task.requiredLimit, 'ratedLoad', 'requiredLimit');
  const length = readPositive(task.length, 'length', 'length');
  return { limit, length, carriedBy: (each) => compareExact(each, limit) >= 0 };
}

/** The share of one of n alike: required aggregate / (n · credit of the path). */
function needOfHaul({ rules, article, tieDowns, path, length }: HaulTask, units: UnitSystem, working: Working): Need {
  if (!Number.isSafeInteger(tieDowns) || tieDowns < 1) {
    fail('NOT_A_WHOLE_NUMBER', 'tieDowns', 'how many tie-downs share it', tieDowns, 'See tieDownsRequired.');
  }
  const id = article?.id ?? 'article';
  const read = within('article', () => readArticle({ ...article, id }));
  const quiet = { working: new Working(false), units: rules.units };
  const { requiredAggregate: aggregate, minimumCount } = rules.requirementOf(read, quiet);
  const tieDown = { id: 'tie-down', holds: id, path, capacities: { workingLoadLimit: ANY_LIMIT } };
  const plan = { articles: [read.article], tieDowns: [tieDown] };
  const [counted] = rules.judgePlan(plan, [read], quiet).tieDowns;
  if (aggregate === null || counted === undefined) {
    return fail(
      'UNKNOWN_RULE_SET',
      'rules',
      'a rule set that adds up working load limits',
      rules.id,
      'Work the load of each tie-down out first, and choose a chain of that rating.',
    );
  }
  if (tieDowns < minimumCount) working.cautions.push(note('FEWER_THAN_REQUIRED', { count: minimumCount }));
  const { credit } = counted;
  const unit = massUnitOf(units);
  const limit = { value: ratedLoadIn(aggregate, unit).value / (tieDowns * credit), unit };
  working.step(
    id,
    'required WLL',
    'required aggregate / (n · credit)',
    { 'required aggregate': aggregate, n: tieDowns, credit },
    limit,
  );
  working.assumptions.push(note('EQUAL_SHARES', { count: tieDowns }));
  return {
    limit,
    length: readPositive(length, 'length', 'length'),
    carriedBy: (each) =>
      compareExactSums([{ quantity: each, times: [tieDowns, credit] }], [{ quantity: aggregate }]) >= 0,
  };
}

const ANY_LIMIT = { value: 1, unit: 'lb' } as const;

/** Every size with every grade of the table, those among them that it does not list. */
function everyChain(ratings: RatingTable, listed: readonly ListedRating[]) {
  const grades = CHAIN_GRADES.filter((grade) => listed.some((each) => each.grade === grade));
  const sizes = Object.keys(ratings.chain.rows);
  return sizes.flatMap((size) =>
    grades.map((grade) => ({
      size,
      grade,
      listed: listed.find((each) => each.size === size && each.grade === grade),
    })),
  );
}

function orderOf(objective: ChainChoiceInput['objective']) {
  return (one: RankedChain, other: RankedChain): number => {
    const first =
      objective === 'price'
        ? (one.price as number) - (other.price as number)
        : objective === 'mass-per-limit'
          ? one.massPerLimit - other.massPerLimit
          : 0;
    return first || byMass(one, other);
  };
}

function readGrades(grades: ChainChoiceInput['grades']): readonly number[] | undefined {
  if (grades === undefined) return undefined;
  checkList(grades, 'grades');
  grades.forEach((grade, index) => {
    if (!CHAIN_GRADES.includes(grade)) {
      fail(
        'UNKNOWN_GRADE',
        `grades[${index}]`,
        `one of ${CHAIN_GRADES.join(', ')}`,
        grade,
        'Leave it out for the usual.',
      );
    }
  });
  return grades;
}

/** Grade 70 and higher where something may break loose; common practice, from memory. Any grade goes round a load. */
function usualGrades({ kind }: ChainTask): readonly number[] {
  return kind === 'wrap' ? CHAIN_GRADES : CHAIN_GRADES.filter((grade) => grade >= 70);
}

/** The price of the whole length of a chain, where one is stated. */
function readPrices({ prices, objective }: ChainChoiceInput, length: QuantityLike) {
  if (prices === undefined) {
    if (objective === 'price') fail('MISSING_FIELD', 'prices', 'prices by length', prices, 'Give the prices.');
    return () => undefined;
  }
  checkList(prices, 'prices');
  const perLength = prices.map((each, index) => {
    const path = `prices[${index}]`;
    checkObject(each, path, '{ size, grade, price, per }');
    const { size, grade, price, per } = each;
    if (!Number.isFinite(price) || price < 0)
      fail('NEGATIVE', `${path}.price`, 'a price, 0 or more', price, 'Check it.');
    const ratio = inUnit(length, 'm').value / inUnit(readPositive(per, 'length', `${path}.per`), 'm').value;
    return { size, grade, price: price * ratio };
  });
  return (size: string, grade: number) => perLength.find((each) => each.size === size && each.grade === grade)?.price;
}

function takes(hook: Hook, size: string): boolean {
  try {
    return fits({ hook, chain: { size: size as TradeSize }, working: false }).verdict === 'pass';
  } catch (error) {
    // a size of the table whose hooks nobody has compared; a hook that does not read is the caller's fault
    if (error instanceof RiggingError && error.path === 'chain.size') return false;
    throw error;
  }
}

/** Ends and tensioner for a use: common practice, from memory. */
function fittingsFor(task: ChainTask, chosen: RankedChain, required: Quantity<'lb' | 'kg'>): ChosenFitting[] {
  const { size, grade } = chosen;
  const hook = (kind: 'grab-hook' | 'slip-hook', because: Note): ChosenFitting => ({
    kind,
    size,
    grade,
    ...(kind === 'slip-hook' && { latch: true as const }),
    because,
  });
  switch (task.kind) {
    case 'haul':
      return USUAL_FITTINGS.map((kind) =>
        kind === 'grab-hook'
          ? hook(kind, note('GRAB_HOOK_HOLDS_LINK'))
          : { kind, markedWll: required, because: note('BINDER_MARKED_FOR_CHAIN', { size }) },
      );
    case 'pull':
      return [hook('grab-hook', note('GRAB_HOOK_SETS_LENGTH')), hook('slip-hook', note('SLIP_HOOK_ON_LOAD'))];
    default:
      return [hook('grab-hook', note('GRAB_HOOK_KEEPS_WRAP'))];
  }
}

/** The task as the result shows it: the rule set by its id, the planned pull by what it gave. */
function echoOf(task: ChainTask): object {
  if (task.kind === 'haul') return { ...task, rules: task.rules.id };
  return 'pull' in task ? { kind: task.kind, requiredLimit: task.pull.requiredLimit, length: task.pull.length } : task;
}
