import { newRater } from '../../../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../../../assembly/show-parts.js';
import { mapAt } from '../../../errors.js';
import { ratioOf } from '../../../quantities/exact.js';
import { Quantity } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { us49cfr393102Criteria as criteria } from '../../../tables/generated/us-49cfr393-102-criteria.js';
import { type CapacityTable, marksAlone } from '../../../tables/rating-table.js';
import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import { type Check, ratioCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import { type CountedRun, HEADINGS, heldDirectly, pressingDown } from '../../forces.js';
import { type ArticleLayout, readLayout, type TieDownLayout } from '../../layout.js';
import type { Plan } from '../../plan.js';
import { rateTieDown, type TieDownRating } from '../../rate-tie-down.js';
import type { ArticleOutcome, PlanOutcome, RuleContext } from '../../rule-set.js';
import { applicability } from './390-5-applicability.js';
import { inspections } from './392-9-inspection.js';
import { aboutRule, cite } from './cite.js';

/** Each paragraph of the performance criteria with the strength it looks at. */
const TESTS = [
  { paragraph: '393.102(a)(2)', column: 'g_against_wll', strength: 'working load limit' },
  { paragraph: '393.102(a)(1)', column: 'g_against_breaking_strength', strength: 'breaking strength' },
] as const;

type Test = (typeof TESTS)[number];

const ROW = { forward: 'forward', rearward: 'rearward', left: 'lateral', right: 'lateral' } as const;

/**
 * The force check of 393.102, an engineering look at the directions that the counting rules do not take:
 *
 *     sum(T · cos α · cos β) + μ · (W + sum(T0 · sin α)) ≥ a · W, the first sum over those that pull against the movement
 *
 * with T0 the pretension where it is stated, T the working load limit and a of (a)(2), and again with T the breaking strength and a of (a)(1); for (b)
 * sum(T · sin α) ≥ 0.2 · W with the working load limit, which is the cautious reading. μ is 0 unless the article states it. A
 * tie-down that runs over to the other side holds nothing back by its strength and is left out.
 *
 * The sum takes for granted that the tie-downs share the load; a short stiff one reaches its limit first.
 */
export function checkForces(plan: Plan, context: RuleContext): PlanOutcome {
  const { working } = context;
  const layouts = readLayout(plan);
  const checks: Check[] = [];
  cite(working, '393.102(a)-(b)');
  const byLimit = rated(plan, us49cfr393_108_2024, context);
  const byStrength = rated(plan, marksAlone('breakingStrength'), context);
  const articles = mapAt(layouts, 'articles', (layout): ArticleOutcome => {
    checks.push(...checksOf(layout, byLimit, TESTS[0], context), ...checksOf(layout, byStrength, TESTS[1], context));
    checks.push(checkDownward(layout, byLimit, context));
    const count = layout.tieDowns.length;
    const { id } = layout.article;
    return {
      id,
      rule: '393.102',
      count,
      minimumCount: 0,
      recommendedCount: 0,
      requiredAggregate: null,
      aggregate: null,
      options: [],
    };
  });
  if (layouts.some(({ article }) => article.friction === undefined)) working.assumptions.push(NO_FRICTION);
  working.cautions.push(SHARED_EVENLY);
  return {
    applicability: applicability(plan.vehicle, working),
    articles,
    tieDowns: plan.tieDowns.map(({ id, holds, path }) => {
      const rating = byLimit.get(id)?.capacity ?? null;
      return {
        id,
        holds,
        path,
        counts: 'workingLoadLimit',
        rating,
        credit: 1,
        counted: rating,
        weakest: byLimit.get(id)?.weakest ?? [],
      };
    }),
    checks,
    inspections: inspections(working),
  };
}

function rated({ tieDowns }: Plan, table: CapacityTable, { working }: RuleContext): Map<string, TieDownRating> {
  const log = working.shown ? newLog() : undefined;
  const rater = newRater(table, log);
  const all = mapAt(tieDowns, 'tieDowns', (tieDown) => [tieDown.id, rateTieDown(rater, tieDown, working)] as const);
  if (log !== undefined) {
    for (const source of log.sources) working.cite(source);
    noteAssumptions(working, log);
  }
  return new Map(all);
}

/** The four headings under one test. */
function checksOf(
  layout: ArticleLayout,
  ratings: ReadonlyMap<string, TieDownRating>,
  { paragraph, column, strength }: Test,
  { working, units }: RuleContext,
): Check[] {
  const { article, weight } = layout;
  const mu = article.friction ?? 0;
  const pressed = pretensionDown(layout);
  const { runs, missing } = countedRuns(layout, ratings);
  return HEADINGS.map((heading): Check => {
    const row = criteria.rows[ROW[heading]];
    const about = aboutRule(
      working,
      paragraph,
      `Force ${heading}, against the ${strength}`,
      `${heading}/${article.id}`,
      'interpretation',
    );
    const demand = row[column] * weight;
    const held = heldDirectly(runs, heading, 0) + mu * (weight + pressed);
    const { fits, utilization } = ratioOf(demand, held, () => compare(demand, held));
    const unit = units === 'si' ? 'N' : 'lbf';
    const shown = (newtons: number) => ratedLoadIn(new Quantity(newtons, 'N'), unit);
    working.step(
      `${article.id}, ${heading}, against the ${strength}`,
      'R',
      'sum(T · cos α · cos β) + μ · (W + sum(T0 · sin α))',
      [
        ...runs.map(({ force }, index) => [`T${index + 1}`, shown(force)] as const),
        ['μ', mu],
        ['W', shown(weight)],
        ['sum(T0 · sin α)', shown(pressed)],
      ],
      shown(held),
      about.clause,
    );
    if (!fits && missing.length > 0) return undeterminedCheck(about, missing);
    return ratioCheck(about, fits, shown(demand), shown(held), utilization);
  });
}

/** 393.102(b): a downward force of a fifth of the weight, where the vehicle does not contain the cargo. */
function checkDownward(
  layout: ArticleLayout,
  ratings: ReadonlyMap<string, TieDownRating>,
  { working, units }: RuleContext,
): Check {
  const { article, weight } = layout;
  const { runs, missing } = countedRuns(layout, ratings, true);
  const about = aboutRule(
    working,
    '393.102(b)',
    'Downward force, against the working load limit',
    article.id,
    'interpretation',
  );
  const demand = criteria.rows.vertical.g_against_wll * weight;
  const held = runs.reduce((sum, { run, force }) => sum + force * Math.max(0, pressingDown(run)), 0);
  const { fits, utilization } = ratioOf(demand, held, () => compare(demand, held));
  if (!fits && missing.length > 0) return undeterminedCheck(about, missing);
  const shown = (newtons: number) => ratedLoadIn(new Quantity(newtons, 'N'), units === 'si' ? 'N' : 'lbf');
  return ratioCheck(about, fits, shown(demand), shown(held), utilization);
}

/** What the stated pretensions press the load down with. */
function pretensionDown({ tieDowns }: ArticleLayout): number {
  return tieDowns.reduce(
    (sum, { runs, pretension = 0 }) =>
      runs.reduce((down, run) => down + pretension * Math.max(0, pressingDown(run)), sum),
    0,
  );
}

const compare = (demand: number, held: number): -1 | 0 | 1 => (demand < held ? -1 : demand > held ? 1 : 0);

/** The runs that hold by their strength, and what is missing of the rest. */
function countedRuns(
  { tieDowns }: ArticleLayout,
  ratings: ReadonlyMap<string, TieDownRating>,
  overToo = false,
): { readonly runs: readonly CountedRun[]; readonly missing: readonly Note[] } {
  const runs: CountedRun[] = [];
  const missing: Note[] = [];
  for (const { tieDown, runs: its } of tieDowns as readonly TieDownLayout[]) {
    if (tieDown.path === 'over-other-side' && !overToo) continue;
    const rating = ratings.get(tieDown.id);
    if (its.length === 0) missing.push(note(NO_POINTS, { tieDown: tieDown.id }));
    if (rating === undefined || rating.capacity === null) missing.push(...(rating?.missing ?? []));
    else {
      const force = ratedLoadIn(rating.capacity, 'N').value;
      for (const run of its) runs.push({ run, force });
    }
  }
  return { runs, missing };
}

const NO_POINTS: Words = ['NO_POINTS', 'Tie-down {tieDown}: the points it runs between.'];
const NO_FRICTION: Note = /* @__PURE__ */ note(['NO_FRICTION', 'Friction that is not stated counts nothing.']);
const SHARED_EVENLY: Note = /* @__PURE__ */ note([
  'SHARED_EVENLY',
  'A sum of forces takes for granted that the tie-downs share the load; a short stiff one reaches its limit first.',
]);
