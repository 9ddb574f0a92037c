import { compareExact } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import {
  CHAIN_DEFECTS,
  type ChainDefect,
  type ChainQuantity,
  type CriteriaSet,
  type Criterion,
  HOOK_DEFECTS,
  type HookDefect,
  type HookQuantity,
} from '../tables/criteria-set.js';
import { removalCriteriaCommonPractice } from '../tables/generated/removal-criteria-common-practice.js';
import { rowOf } from '../tables/rating-table.js';
import { failedCheck, metCheck, notApplicableCheck, undeterminedCheck } from '../working/check.js';
import { type Note, note } from '../working/note.js';
import type { Working } from '../working/step.js';
import { type Measurement, measureChain, measureHook } from './chain-evidence.js';
import {
  amountOf,
  anyGrowthCheck,
  type CriterionCheck,
  decide,
  limitCheck,
  type Subject,
  withGround,
} from './criterion-check.js';
import { inches } from './inches.js';
import type { ReadInspection } from './inspection.js';

/** One chain under one set. */
export interface Judging {
  readonly criteria: CriteriaSet;
  readonly read: ReadInspection;
  /** The least single reading of all places. */
  readonly least: QuantityLike | undefined;
  readonly working: Working;
}

/** What a quantity is called: `least-diameter` is the least diameter. */
function titleOf(quantity: string): string {
  return quantity.charAt(0).toUpperCase() + quantity.slice(1).replaceAll('-', ' ');
}

/** Every criterion of the set, and what common practice adds to each: damage, and stretch that is seen. */
export function judgeCriteria(judging: Judging): CriterionCheck[] {
  const { chain, hook } = judging.criteria.removal.rows;
  const common = removalCriteriaCommonPractice.rows;
  const checks: CriterionCheck[] = [];
  for (const [name, criterion] of Object.entries(chain ?? {})) {
    checks.push(
      chainCheck(
        judging,
        subjectOf(judging, name as ChainQuantity, 'chain', criterion),
        name as ChainQuantity,
        criterion,
      ),
    );
  }
  if (chain !== undefined) {
    const stretch = common.chain['visible-stretch'];
    checks.push(visibleStretch(judging, commonSubject(judging, 'visible-stretch', 'chain'), stretch));
    if (chain.damage === undefined) {
      checks.push(seen(commonSubject(judging, 'damage', 'chain'), judging.read.found, damageUnder(judging.criteria)));
    }
  }
  for (const [name, criterion] of Object.entries(hook ?? {})) {
    checks.push(
      hookCheck(judging, subjectOf(judging, name as HookQuantity, 'hook', criterion), name as HookQuantity, criterion),
    );
  }
  if (hook !== undefined && hook.damage === undefined) {
    checks.push(hookCheck(judging, commonSubject(judging, 'damage', 'hook'), 'damage', common.hook.damage));
  }
  // a set of hooks alone does not ask for the chain, and damage that was seen there counts all the same
  const seenOnChain = [...damageUnder(judging.criteria), 'visible-stretch'];
  if (chain === undefined && judging.read.found?.some((defect) => seenOnChain.includes(defect))) {
    checks.push(seen(commonSubject(judging, 'damage', 'chain'), judging.read.found, seenOnChain));
  }
  return checks;
}

/** True where the chain was seen to be stretched. */
function seenStretched({ found }: ReadInspection): boolean {
  return found?.includes('visible-stretch') === true;
}

function subjectOf(
  judging: Judging,
  quantity: ChainQuantity | HookQuantity,
  item: 'chain' | 'hook',
  { clause, provenance = 'read' }: Criterion,
): Subject {
  const { short, document, asOf, standing } = judging.criteria;
  const ground = wearRow(judging)?.[quantity === 'wear-depth' ? 'wear_provenance' : 'minimum_provenance'];
  const own = fromWearTable(quantity) ? (ground ?? provenance) : provenance;
  judging.working.cite({
    document,
    ...(asOf === '' ? {} : { edition: asOf }),
    ...(clause === '' ? {} : { clause }),
    provenance: own,
    ...(standing === 'policy' ? { note: 'as the caller states it' } : {}),
  });
  return {
    id: `${quantity}/${item}`,
    title: titleOf(quantity),
    clause: clause === '' ? short : `${short} ${clause}`,
    weight: 'requirement',
    subject: item,
    provenance: own,
  };
}

function commonSubject({ working }: Judging, quantity: ChainQuantity, item: 'chain' | 'hook'): Subject {
  const provenance = 'common practice';
  working.cite({ document: provenance, provenance });
  return {
    id: `${quantity}/${item}`,
    title: titleOf(quantity),
    clause: provenance,
    weight: 'requirement',
    subject: item,
    provenance,
  };
}

function chainCheck(judging: Judging, about: Subject, quantity: ChainQuantity, criterion: Criterion): CriterionCheck {
  const { read, least, criteria } = judging;
  if (quantity === 'damage') return seen(about, read.found, damageUnder(criteria));
  const measurement = measureChain(quantity, read, least);
  if (measurement === undefined) return seen(about, read.found, [quantity]);
  const check = /temperature/.test(quantity)
    ? temperatureCheck(judging, about, quantity, criterion, measurement)
    : criterion.comparison === 'any'
      ? anyGrowthCheck(about, measurement, read.uncertainty)
      : held(judging, about, criterion, criterion.limit ?? tableLimit(judging, quantity), measurement);
  // stretch that everybody sees is past every limit, measured or not
  const isLength = /elongation|^stretch/.test(quantity);
  return check.verdict === 'undetermined' && isLength && seenStretched(read)
    ? withGround(failedCheck(about, stretchSeen()), about)
    : check;
}

function hookCheck(judging: Judging, about: Subject, quantity: HookQuantity, criterion: Criterion): CriterionCheck {
  const { hook, withoutHook } = judging.read;
  if (withoutHook) return withGround(notApplicableCheck(about, note('NO_HOOK')), about);
  if (hook === undefined) return withGround(undeterminedCheck(about, [note('HOOK_NOT_INSPECTED')]), about);
  if (quantity === 'damage') return seen(about, hook.found, HOOK_DEFECTS);
  const measurement = measureHook(quantity, judging.read);
  return measurement === undefined
    ? seen(about, hook.found, [quantity])
    : held(judging, about, criterion, criterion.limit ?? note('HOOK_NOT_INSPECTED'), measurement);
}

/** A measurement held against a limit, or what is missing for either. */
function held(
  { working }: Judging,
  about: Subject,
  criterion: Criterion,
  limit: number | Note,
  { evidence, missing }: Measurement,
): CriterionCheck {
  if (typeof limit !== 'number') return withGround(undeterminedCheck(about, [limit]), about);
  const decided = decide(criterion, limit, evidence);
  if (decided === undefined) return withGround(undeterminedCheck(about, [missing]), about);
  const check = limitCheck(about, criterion, limit, decided);
  const { expression, values } = decided.evidence;
  const symbol = criterion.unit === undefined ? about.title : `${about.title}, ${criterion.unit}`;
  working.step(about.subject, symbol, expression, values, amountOf(check.measured), about.clause);
  return check;
}

/** Heat: chain that was never heated is clear; of European chain each class has its own limit. */
function temperatureCheck(
  judging: Judging,
  about: Subject,
  quantity: ChainQuantity,
  criterion: Criterion,
  measurement: Measurement,
): CriterionCheck {
  const { read, criteria } = judging;
  const isFour = read.grade === '4';
  if (quantity === 'temperature-class-4' && !isFour) {
    return withGround(notApplicableCheck(about, note('CLASS_4_ONLY')), about);
  }
  if (quantity === 'temperature-class-8' && isFour) {
    return withGround(notApplicableCheck(about, note('NOT_CLASS_4')), about);
  }
  if (read.neverHeated) return withGround(metCheck(about), about);
  const check = held(judging, about, criterion, criterion.limit ?? note('TEMPERATURE'), measurement);
  const ofFour = criteria.removal.rows.chain?.['temperature-class-4'];
  const open = check.verdict === 'fail' && read.grade === undefined && ofFour?.limit !== undefined;
  const sparesFour = open && decide(ofFour, ofFour.limit, measurement.evidence)?.fails === false;
  return sparesFour ? withGround(undeterminedCheck(about, [note('GRADE_FOR_HEAT')]), about) : check;
}

/** What counts as damage under a set: everything seen but a missing mark, stretch, and what the set measures. */
function damageUnder({ removal }: CriteriaSet): readonly ChainDefect[] {
  const { 'notch-depth': notches, bend } = removal.rows.chain ?? {};
  const apart: ChainDefect[] = ['mark-missing', 'visible-stretch'];
  if (notches !== undefined) apart.push('gouge');
  if (bend !== undefined) apart.push('bent-link');
  return CHAIN_DEFECTS.filter((defect) => !apart.includes(defect));
}

function seen(
  about: Subject,
  found: readonly (ChainDefect | HookDefect)[] | undefined,
  causes: readonly string[],
): CriterionCheck {
  const names = found?.filter((each) => causes.includes(each)) ?? [];
  if (names.length > 0) return withGround(failedCheck(about, note('FOUND', { defects: names.join(', ') })), about);
  return withGround(found === undefined ? undeterminedCheck(about, [note('NOT_LOOKED_AT')]) : metCheck(about), about);
}

function visibleStretch(judging: Judging, about: Subject, criterion: Criterion): CriterionCheck {
  const { read, least } = judging;
  if (seenStretched(read)) return withGround(failedCheck(about, stretchSeen()), about);
  const missing = note('NOT_LOOKED_AT');
  const measured = measureChain('link-elongation', read, least);
  const check = held(judging, about, criterion, criterion.limit ?? missing, { evidence: [], ...measured, missing });
  return check.verdict === 'undetermined' && read.found !== undefined ? withGround(metCheck(about), about) : check;
}

function stretchSeen(): Note {
  return note('STRETCH_SEEN', { percent: removalCriteriaCommonPractice.rows.chain['visible-stretch'].limit });
}

function fromWearTable(quantity: ChainQuantity | HookQuantity): boolean {
  return quantity === 'least-diameter' || quantity === 'wear-depth';
}

function wearRow({ criteria: { wearTable }, read: { size } }: Judging) {
  return wearTable === undefined || size === undefined ? undefined : rowOf(wearTable.rows, size);
}

/** The limit of the wear table for the size, or what is missing. Nothing is interpolated. */
function tableLimit(judging: Judging, quantity: ChainQuantity): number | Note {
  const { criteria, read } = judging;
  if (read.size === undefined) return note('SIZE_NOT_STATED');
  const row = wearRow(judging);
  const printed = quantity === 'wear-depth' ? row?.wear_in : row?.minimum_in;
  return printed === undefined
    ? note('SIZE_NOT_IN_WEAR_TABLE', { size: read.size, document: criteria.document })
    : inches(printed).value;
}

/** The least single reading of all places. */
export function leastReading(diameters: ReadInspection['diameters']): QuantityLike | undefined {
  let least: QuantityLike | undefined;
  for (const { readings } of diameters) {
    for (const reading of readings) if (least === undefined || compareExact(reading, least) < 0) least = reading;
  }
  return least;
}
