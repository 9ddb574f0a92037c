import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import type { CriteriaSet } from '../tables/criteria-set.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { refuseContradictions } from './contradictions.js';
import { amountOf, type CriterionCheck } from './criterion-check.js';
import { type ChainMeasurements, type ChainWhenNew, readInspection } from './inspection.js';
import { type Judging, judgeCriteria, leastReading } from './judge-criteria.js';
import { type Growth, type PastLoad, pastLoadOf, tellApart } from './past-load.js';

export interface ChainInspection extends ResultBase<'inspectChain'> {
  /** `fit`: no criterion of the set is met. `undetermined`: something that the set asks for was not measured or not looked at. */
  readonly verdict: 'fit' | 'remove' | 'undetermined';
  /** The id of the check that decides; for a fit chain the one that is nearest to its limit. */
  readonly governing?: string;
  /** One for each criterion of the set; `fail` is a cause for removal. */
  readonly checks: readonly CriterionCheck[];
  /** What must be measured or looked at before every criterion is decided. */
  readonly missing: readonly Note[];
  /** The growth inside, told apart into wear and stretch, where what was measured tells. */
  readonly growth?: Growth;
  /** What stretch beyond wear says about the past. */
  readonly pastLoad?: PastLoad;
  /** The id of the set. */
  readonly criteria: string;
  readonly standing: CriteriaSet['standing'];
}

export interface InspectChainInput {
  /** The set to judge by; sources differ by a factor of two and are never mixed. */
  readonly criteria: CriteriaSet;
  readonly chain: ChainWhenNew;
  readonly measurements: ChainMeasurements;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

/**
 * Whether a used chain, with its hook, may stay in service under the criteria of one named source: fit or removed, never
 * derated.
 *
 * Growth of the inside length, in percent: 100 · (L − N · p0) / (N · p0) over N links, 100 · (p − p0) / p0 of one. Wear, in
 * percent: 100 · (d − d1) / d, or with the mean of two diameters at right angles, as the source has it. Each is held
 * against its limit exactly, with the comparator that the source prints. A link that wears by w at each crown grows by 2w
 * inside and not at all outside, so that growth outside is stretch; stretch beyond wear means that the chain once carried
 * more than its proof force.
 *
 * @param input.criteria a set such as {@link us29cfr1910_184_2011}, {@link euEn12195_3_2001_criteria}, or {@link housePolicy}
 * @param input.chain as it was when new: `{ size?, grade?, wireDiameter?, pitch?, outsideLength?, hook? }`
 * @param input.measurements `{ diameters?, section?, link?, uncertainty?, notchDepth?, bend?, highestTemperature?, found?,
 * hook?, tensionings? }`; what is left out was not looked at
 * @throws RiggingError `UNKNOWN_CRITERIA_SET`, `MISSING_FIELD`, `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `UNKNOWN_VALUE`,
 * `NOT_POSITIVE`, `NEGATIVE`, `NOT_A_WHOLE_NUMBER`, `EMPTY_LIST`, `TOO_LARGE` (three readings of one place), `WRONG_KIND`,
 * `CONFLICTING_FIELDS` (a hook beside `withoutHook`, wire far from its size, a longest link below the mean of the section),
 * `IMPOSSIBLE_GEOMETRY` (a length more than 3 % below new)
 * @validity open-link chain of round wire. A size that a wear table lacks is undetermined: nothing is interpolated, ask the
 * maker
 * @source the document of each set; visible stretch and damage: common practice
 * @example
 * inspectChain({
 *   criteria: euEn12195_3_2001_criteria,
 *   chain: { size: '10 mm', grade: '8', pitch: '30 mm' },
 *   measurements: { diameters: [{ readings: ['9.6 mm'] }], section: { links: 11, length: '341 mm' }, found: [] },
 * }).verdict
 * // => 'remove'
 */
export function inspectChain(input: InspectChainInput): ChainInspection {
  checkObject(input, '', '{ criteria, chain, measurements }');
  const { criteria } = input;
  checkCriteria(criteria);
  const read = readInspection(input.chain, input.measurements);
  refuseContradictions(read);
  const working = new Working(input.working !== false);
  const judging: Judging = { criteria, read, least: leastReading(read.diameters), working };
  const checks = judgeCriteria(judging);
  const growth = tellApart(judging);
  const visible = checks.some(({ id, verdict }) => id === 'visible-stretch/chain' && verdict === 'fail');
  const pastLoad = pastLoadOf(judging, visible && growth === undefined);
  addCautions(judging, growth);
  const verdict = verdictOf(checks);
  const governing = governingId(checks, verdict);
  return makeResult(
    'inspectChain',
    {
      verdict,
      ...(governing === undefined ? {} : { governing }),
      checks,
      missing: missingOf(checks),
      ...(growth === undefined ? {} : { growth }),
      ...(pastLoad === undefined ? {} : { pastLoad }),
      criteria: criteria.id,
      standing: criteria.standing,
    },
    input,
    working,
  );
}

/** Refuses anything that is not a set of criteria. */
export function checkCriteria(criteria: unknown): asserts criteria is CriteriaSet {
  const { removal } = (criteria ?? {}) as Partial<CriteriaSet>;
  if (typeof removal?.rows !== 'object' || removal.rows === null) {
    const remedy = 'Import one, such as us29cfr1910_184_2011.';
    fail('UNKNOWN_CRITERIA_SET', 'criteria', 'a set of removal criteria', criteria, remedy);
  }
}

/** What a set has no criterion for, so that a chain it calls fit may be out under another. */
function silentOn({ removal: { rows } }: CriteriaSet): readonly string[] {
  const quantities = Object.keys(rows.chain ?? {});
  const has = (pattern: RegExp) => quantities.some((quantity) => pattern.test(quantity));
  return [
    ...(has(/^(wear|mean-|least-)/) ? [] : ['wear']),
    ...(has(/elongation|^stretch/) ? [] : ['growth in length']),
  ];
}

const NOT_DERATED: Note = /* @__PURE__ */ note('NOT_DERATED');
const WHERE_TO_MEASURE: Note = /* @__PURE__ */ note('WHERE_TO_MEASURE');

/** What the reader of the result should know beside its checks. */
function addCautions({ criteria, read, working: { cautions } }: Judging, growth: Growth | undefined): void {
  const { standing, title } = criteria;
  const { section, inside, outside, pitch } = read;
  if (standing === 'policy') cautions.push(note('OWNERS_POLICY'));
  else if (standing !== 'regulation' && standing !== 'standard') cautions.push(note('NO_RULE', { standing }));
  for (const silent of silentOn(criteria)) cautions.push(note('SAYS_NOTHING_OF', { title, of: silent }));
  cautions.push(NOT_DERATED, WHERE_TO_MEASURE);
  if (section !== undefined && inside === undefined && outside === undefined) cautions.push(note('WORST_LINK'));
  if (section !== undefined && section.whenNew === undefined && pitch !== undefined)
    cautions.push(note('NOMINAL_PITCH'));
  if ((section !== undefined || inside !== undefined) && growth === undefined) cautions.push(note('NOT_TOLD_APART'));
  cautions.push(FOLLOW_THE_MARK);
}

function verdictOf(checks: readonly CriterionCheck[]): ChainInspection['verdict'] {
  if (checks.some(({ verdict }) => verdict === 'fail')) return 'remove';
  const decided = checks.some(({ verdict }) => verdict === 'pass');
  return decided && checks.every(({ verdict }) => verdict !== 'undetermined') ? 'fit' : 'undetermined';
}

function governingId(checks: readonly CriterionCheck[], verdict: ChainInspection['verdict']): string | undefined {
  const wanted = verdict === 'fit' ? 'pass' : verdict === 'remove' ? 'fail' : 'undetermined';
  let governing: CriterionCheck | undefined;
  let highest = Number.NEGATIVE_INFINITY;
  for (const check of checks) {
    if (check.verdict !== wanted) continue;
    const rank = rankOf(check);
    if (rank > highest) {
      governing = check;
      highest = rank;
    }
  }
  return governing?.id;
}

/** How much of its limit a check has used up; what was only seen comes before every figure, or after. */
function rankOf(check: CriterionCheck): number {
  if (!('limit' in check)) return check.verdict === 'fail' ? Number.MAX_VALUE : -Number.MAX_VALUE;
  const [measured, limit] = [amountOf(check.measured), amountOf(check.limit)];
  return check.removedWhen === '<' ? limit / measured : measured / limit;
}

/** What is missing, each thing once. */
function missingOf(checks: readonly CriterionCheck[]): readonly Note[] {
  const all = new Map<string, Note>();
  for (const check of checks) {
    if (check.verdict === 'undetermined') for (const each of check.missing) all.set(each.text, each);
  }
  return [...all.values()];
}
