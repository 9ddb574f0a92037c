import type { QuantityLike } from '../quantities/quantity.js';
import type { Unit } from '../quantities/units.js';
import type { Criterion } from '../tables/criteria-set.js';
import {
  type CheckSubject,
  type ConditionCheck,
  failedCheck,
  metCheck,
  type NotApplicableCheck,
  type UndeterminedCheck,
  undeterminedCheck,
} from '../working/check.js';
import { note } from '../working/note.js';
import type { Provenance } from '../working/source.js';
import type { Measurement } from './chain-evidence.js';
import { type Evidence, mayHaveGrown } from './evidence.js';

/** A percentage, a quantity, or a count. */
export type Measured = QuantityLike<Unit | '%'> | number;

/** The number of a measured value, in its own unit. */
export function amountOf(measured: Measured): number {
  return typeof measured === 'number' ? measured : measured.value;
}

/** A measured value held against a limit, with the comparator that the source prints. */
export interface LimitCheck extends CheckSubject {
  readonly verdict: 'pass' | 'fail';
  readonly measured: Measured;
  /** `at least`: what the source asks for is this or more. */
  readonly bound?: 'at least';
  /** Removed when `measured` compares so with `limit`, decided exactly. */
  readonly removedWhen: '<' | '>' | '>=';
  readonly limit: Measured;
  /** What is left until the limit; below zero past it. */
  readonly left: Measured;
  readonly provenance: Provenance;
}

/** One criterion of a set, applied. `pass`: no cause for removal. */
export type CriterionCheck =
  | LimitCheck
  | ((ConditionCheck | NotApplicableCheck | UndeterminedCheck) & { readonly provenance: Provenance });

export interface Subject extends CheckSubject {
  readonly provenance: Provenance;
}

export function withGround<C extends object>(
  check: C,
  { provenance }: Subject,
): C & { readonly provenance: Provenance } {
  return { ...check, provenance };
}

/** Whether a value that compares so with its limit is a cause for removal. */
function removes(comparison: Criterion['comparison'], order: -1 | 0 | 1): boolean {
  return comparison === '<' ? order < 0 : comparison === '>' ? order > 0 : order >= 0;
}

/** The evidence that decides a limit, and how it compares. */
export interface Decided {
  readonly evidence: Evidence;
  readonly order: -1 | 0 | 1;
  readonly fails: boolean;
}

/** The worst of what was measured: one that is past the limit whatever it is, else one that is no mere bound. */
export function decide(criterion: Criterion, limit: number, all: readonly Evidence[]): Decided | undefined {
  const sign = criterion.comparison === '<' ? -1 : 1;
  const decided = all
    .map((evidence): Decided => {
      const order = evidence.against(limit);
      return { evidence, order, fails: removes(criterion.comparison, order) };
    })
    .filter(({ evidence, fails }) => fails || evidence.bound === 'equal');
  const worst = (list: readonly Decided[]) =>
    list.reduce<Decided | undefined>(
      (most, each) =>
        most === undefined || sign * (each.evidence.measured - most.evidence.measured) > 0 ? each : most,
      undefined,
    );
  return worst(decided.filter(({ fails }) => fails)) ?? worst(decided);
}

/** A decided criterion with its figures, which never contradict the exact comparison. */
export function limitCheck(
  about: Subject,
  criterion: Criterion,
  limit: number,
  { evidence, order, fails }: Decided,
): LimitCheck {
  const { id, title, clause, weight, subject, provenance } = about;
  const comparison = criterion.comparison as '<' | '>' | '>=';
  const measured = onSide(evidence.measured, limit, order);
  const quantity = (value: number): Measured =>
    criterion.unit === undefined ? value : { value: value + 0, unit: criterion.unit };
  return {
    id,
    title,
    clause,
    weight,
    subject,
    verdict: fails ? 'fail' : 'pass',
    measured: quantity(measured),
    ...(evidence.bound === 'equal' ? {} : { bound: evidence.bound }),
    removedWhen: comparison,
    limit: quantity(limit),
    left: quantity(comparison === '<' ? measured - limit : limit - measured),
    provenance,
  };
}

/** The double that lies on the side of the limit where the exact comparison has it. */
function onSide(value: number, limit: number, order: -1 | 0 | 1): number {
  if (order === 0) return limit;
  if (order < 0 ? value < limit : value > limit) return value;
  const step = Math.max(Math.abs(limit), Number.MIN_VALUE) * Number.EPSILON;
  return limit + order * step;
}

/** A growth of which any is too much: found, not found, or lost in what the measuring can tell. */
export function anyGrowthCheck(
  about: Subject,
  { evidence, missing }: Measurement,
  uncertainty: QuantityLike | undefined,
): CriterionCheck {
  const grown = evidence
    .filter(({ exceeds }) => exceeds?.(uncertainty))
    .reduce((most, { measured }) => Math.max(most, measured), 0);
  if (grown > 0) {
    const percent = Number(grown.toPrecision(4));
    const check =
      uncertainty === undefined
        ? undeterminedCheck(about, [note('UNCERTAINTY_NOT_STATED', { percent })])
        : failedCheck(about, note('LONGER_THAN_NEW', { percent }));
    return withGround(check, about);
  }
  const lost = evidence.filter((each) => mayHaveGrown(each, uncertainty));
  if (lost.length > 0) {
    const percent = Number(Math.max(...lost.map(({ measured }) => measured)).toPrecision(4));
    return withGround(undeterminedCheck(about, [note('UNCERTAINTY_TOO_LARGE', { percent })]), about);
  }
  const known = evidence.some(({ bound }) => bound === 'equal');
  return withGround(known ? metCheck(about) : undeterminedCheck(about, [missing]), about);
}
