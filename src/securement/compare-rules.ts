import { fail } from '../errors.js';
import { checkList, checkObject } from '../input-checks.js';
import { formatNumber } from '../quantities/format.js';
import type { UnitSystem } from '../quantities/units.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import type { Check, Verdict } from '../working/check.js';
import { type Note, type NoteWith, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { checkSecurement, type SecurementCheck } from './check-securement.js';
import type { Plan } from './plan.js';
import type { Applicability, RuleSet } from './rule-set.js';

/** What one rule set makes of the plan. */
export interface RuleSetVerdict {
  readonly rules: string;
  readonly jurisdiction: string;
  readonly verdict: Verdict;
  readonly applies: Applicability['verdict'];
  /** The check that decides; null when nothing applied. */
  readonly governing: Check | null;
  /** The requirements that fail, and those that a missing fact leaves open. */
  readonly failed: readonly string[];
  readonly open: readonly string[];
}

export interface RulesComparison extends ResultBase<'compareRules'> {
  /** In the order of the rule sets given. */
  readonly verdicts: readonly RuleSetVerdict[];
  /** What the rule sets see otherwise in one and the same plan. */
  readonly differences: readonly Note[];
}

/**
 * One plan under several rule sets, side by side: the verdict of each, what decides it, and what they count otherwise.
 *
 * Each rule set is asked by itself through {@link checkSecurement}, takes its own capacity and knows nothing of the
 * others. No verdict is drawn from all of them: the road that is driven decides which one binds.
 *
 * @param input.rules two or more rule sets
 * @param input.articles as in {@link checkSecurement}, as are `tieDowns` and `vehicle`
 * @param input.units `'us'` or `'si'` for the figures shown; omitted: each rule set's own
 * @throws RiggingError `EMPTY_LIST` for fewer than two, `DUPLICATE_ID` for the same one twice, and as {@link checkSecurement}
 * @validity as each rule set says of itself
 * @source none of its own
 * @example
 * const chain = { holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '2000 lb' } } as const;
 * const front = { ...chain, end: 'front' } as const;
 * const rear = { ...chain, end: 'rear' } as const;
 * const plan = {
 *   articles: [{ id: 'tractor', kind: 'machinery', mass: '9900 lb', length: '10 ft' }],
 *   tieDowns: [{ ...front, id: 'a' }, { ...front, id: 'b' }, { ...rear, id: 'c' }, { ...rear, id: 'd' }],
 * } as const;
 * compareRules({ rules: [us49cfr393_2024, caNsc10_2013], ...plan }).verdicts.map(({ verdict }) => verdict)
 * // => [ 'fail', 'pass' ]
 */
export function compareRules(
  input: Plan & {
    readonly rules: readonly RuleSet[];
    readonly units?: UnitSystem;
    /** `false` leaves the steps out. */
    readonly working?: boolean;
  },
): RulesComparison {
  checkObject(input, '', '{ rules, articles, tieDowns }');
  const { rules, ...plan } = input;
  checkList(rules, 'rules', 2);
  rules.forEach((each, index) => {
    if (rules.indexOf(each) !== index) {
      fail('DUPLICATE_ID', `rules[${index}]`, 'each rule set once', each?.id, 'Leave the second one out.');
    }
  });
  const working = new Working(input.working !== false);
  const results = rules.map((each) => checkSecurement({ ...plan, rules: each }));
  for (const { sources } of results) for (const source of working.shown ? sources : []) working.cite(source);
  const verdicts = results.map((result, index) => verdictOf(result, rules[index] as RuleSet, working));
  working.cautions.push(THE_ROAD_DECIDES, FOLLOW_THE_MARK);
  return makeResult('compareRules', { verdicts, differences: differencesOf(results) }, input, working);
}

function verdictOf(result: SecurementCheck, { jurisdiction }: RuleSet, working: Working): RuleSetVerdict {
  const { rules, verdict, checks } = result;
  const binding = checks.filter(({ weight }) => weight === 'requirement');
  const idsOf = (wanted: Verdict) => binding.filter((check) => check.verdict === wanted).map(({ id }) => id);
  const governing = checks.find(({ id }) => id === result.governing) ?? null;
  working.step(
    rules,
    'verdict',
    'its own checks, requirements only',
    binding.map(({ id, verdict: each }) => [id, each] as const),
    verdict,
    governing?.clause,
  );
  return {
    rules,
    jurisdiction,
    verdict,
    applies: result.applicability.verdict,
    governing,
    failed: idsOf('fail'),
    open: idsOf('undetermined'),
  };
}

/** What differs between the results: which capacity counts, how much of it, whether it is known, how many are asked. */
function differencesOf(results: readonly SecurementCheck[]): Note[] {
  const tieDowns = results.map((result) => result.tieDowns);
  const articles = results.map((result) => result.articles);
  const rules = results.map((result) => result.rules);
  return [
    ...differences('COUNTS_ANOTHER_CAPACITY', rules, tieDowns, ({ counts }) => counts),
    ...differences('CREDITS_ANOTHER_SHARE', rules, tieDowns, ({ credit }) => formatNumber(credit, 4)),
    ...differences('RATES_OTHERWISE', rules, tieDowns, ({ rating }) => (rating === null ? 'not known' : 'known')),
    ...differences('ASKS_ANOTHER_COUNT', rules, articles, ({ minimumCount }) =>
      minimumCount === 0 ? 'no number' : `${minimumCount}`,
    ),
  ];
}

/** One sentence for all things of which the same is said: `lists` has one list for each rule set. */
function differences<Item extends { readonly id: string }>(
  words: NoteWith<'ids' | 'said'>,
  rules: readonly string[],
  lists: readonly (readonly Item[])[],
  saidOf: (item: Item) => string,
): Note[] {
  const idsBySaid = new Map<string, string[]>();
  lists[0]?.forEach(({ id }, index) => {
    const said = lists.map((list) => saidOf(list[index] as Item));
    if (new Set(said).size < 2) return;
    const sentence = said.map((each, at) => `${rules[at]} ${each}`).join(', ');
    idsBySaid.set(sentence, [...(idsBySaid.get(sentence) ?? []), id]);
  });
  return [...idsBySaid].map(([said, ids]) => note(words, { ids: ids.join(', '), said }));
}
const THE_ROAD_DECIDES: Note = /* @__PURE__ */ note('THE_ROAD_DECIDES');
