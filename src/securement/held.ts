import { fail } from '../errors.js';
import { compareExactSums, type ExactTerm, ratioOf } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readOptional } from '../quantities/read.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Check, type CheckSubject, ratioCheck, undeterminedCheck } from '../working/check.js';
import { type Note, note, type Words } from '../working/note.js';
import { type Heading, holdingBack, pressingDown } from './forces.js';
import type { ArticleLayout, Run, TieDownLayout } from './layout.js';
import type { TieDown } from './plan.js';
import type { TieDownRating } from './rate-tie-down.js';

/** A tie-down with its points and its capacity. */
export interface RatedLayout {
  readonly layout: TieDownLayout;
  readonly rating: TieDownRating;
}

/** The tie-downs that hold an article, with their capacities; one that holds an accessory is no restraint of the machine. */
export function ratedLayouts({ article, tieDowns }: ArticleLayout, ratings: readonly TieDownRating[]): RatedLayout[] {
  return tieDowns.flatMap((layout) => {
    const rating = ratings.find(({ tieDown }) => tieDown === layout.tieDown);
    return rating === undefined || layout.tieDown.holds !== article.id ? [] : [{ layout, rating }];
  });
}

/**
 * What tie-downs hold together, as an exact sum: what is certain, and the most it can be while a fact is missing.
 * The share of a tie-down counts as the decimal that names it, so that what was written in round numbers is compared
 * without rounding.
 */
export interface Held {
  readonly known: readonly ExactTerm[];
  /** Null where nothing bounds it. */
  readonly most: readonly ExactTerm[] | null;
  readonly missing: readonly Note[];
  /** The tie-downs with a share in it: the sum of their runs', null while a point is not known. */
  readonly shares: readonly (readonly [id: string, share: number | null, load: QuantityLike | null])[];
}

/** What direct tie-downs hold back from a heading, sum(capacity · cos α · cos β); runs that would pull the load along are left out. */
export function heldBack(direct: readonly RatedLayout[], heading: Heading): Held {
  return gather(direct, (runs) => sumOf(runs, (run) => Math.max(0, holdingBack(run, heading))), capacityOf);
}

/** What direct tie-downs hold the load down with, sum(capacity · sin α); runs that would lift it are left out. */
export function heldDown(direct: readonly RatedLayout[]): Held {
  return gather(direct, (runs) => sumOf(runs, (run) => Math.max(0, pressingDown(run))), capacityOf);
}

/** What tie-downs over the load press it down with, sum(pretension · sin α) over both runs of each. */
export function pressedDown(over: readonly RatedLayout[]): Held {
  return gather(
    over,
    (runs) => Math.max(0, sumOf(runs, pressingDown)),
    ({ layout }) => pretensionOf(layout.tieDown),
  );
}

/** Several sums as one. */
export function together(...parts: readonly Held[]): Held {
  const bounded = parts.every(({ most }) => most !== null);
  return {
    known: parts.flatMap(({ known }) => known),
    most: bounded ? parts.flatMap(({ most }) => most ?? []) : null,
    missing: parts.flatMap(({ missing }) => missing),
    shares: parts.flatMap(({ shares }) => shares),
  };
}

/** A sum multiplied by a plain number, such as a friction factor. */
export function multiplied({ known, most, missing, shares }: Held, by: number): Held {
  const times = (terms: readonly ExactTerm[]) =>
    terms.map(({ quantity, times = [] }) => ({ quantity, times: [...times, by] }));
  return { known: times(known), most: most && times(most), missing, shares };
}

/** Units that a sum of rated loads is shown in. */
export type SumUnit = 'N' | 'lbf' | 'kg' | 'lb';

/** The unit that a force is shown in. */
export function forceUnitOf(units: UnitSystem): 'N' | 'lbf' {
  return units === 'si' ? 'N' : 'lbf';
}

/** An exact sum as a quantity, for show. */
export function amountOf(terms: readonly ExactTerm[], unit: SumUnit): QuantityLike<SumUnit> {
  const value = terms.reduce(
    (sum, { quantity, times = [] }) =>
      times.reduce((product, by) => product * by, ratedLoadIn(quantity, unit).value) + sum,
    0,
  );
  if (!Number.isFinite(value)) fail('NOT_FINITE', '', 'loads of a possible size', value, 'Check the numbers given.');
  return { value, unit };
}

/**
 * A demand held against what is held, decided exactly: it passes when what is certain is enough, and fails when even
 * the most that the missing facts can add is too little.
 */
export function judgeHeld(about: CheckSubject, demand: readonly ExactTerm[], held: Held, unit: SumUnit): Check {
  const against = (capacity: readonly ExactTerm[]): Check => {
    const asked = amountOf(demand, unit);
    const there = amountOf(capacity, unit);
    const { fits, utilization } = ratioOf(asked.value, there.value, () => compareExactSums(demand, capacity));
    return ratioCheck(about, fits, asked, there, utilization);
  };
  const check = against(held.known);
  if (check.verdict === 'pass' || held.missing.length === 0) return check;
  const best = held.most === null ? undefined : against(held.most);
  return best?.verdict === 'fail' ? best : undeterminedCheck(about, held.missing);
}

/** What a tie-down can be loaded with. */
interface Load {
  readonly known: QuantityLike | null;
  readonly most: QuantityLike | null;
  readonly missing: readonly Note[];
}

const capacityOf = ({ rating: { capacity, atMost, missing } }: RatedLayout): Load => ({
  known: capacity,
  most: capacity ?? atMost,
  missing: capacity === null ? missing : [],
});

/** The stated pretension of a tie-down; nothing guesses or bounds one that is not. */
export function pretensionOf({ id, pretension }: TieDown): Load {
  const known = readOptional(pretension, 'force', 'pretension') ?? null;
  return { known, most: known, missing: known === null ? [note(PRETENSION_NOT_STATED, { tieDown: id })] : [] };
}

function gather(
  tieDowns: readonly RatedLayout[],
  shareOf: (runs: readonly Run[]) => number,
  loadOf: (tieDown: RatedLayout) => Load,
): Held {
  const known: ExactTerm[] = [];
  const most: ExactTerm[] = [];
  const missing: Note[] = [];
  const shares: Held['shares'][number][] = [];
  let bounded = true;
  for (const each of tieDowns) {
    const { tieDown, runs } = each.layout;
    const absent = (tieDown.path === 'vehicle-to-cargo' ? 1 : 2) - runs.length;
    const share = shareOf(runs);
    const load = loadOf(each);
    if ((share === 0 && absent === 0) || load.known?.value === 0) continue;
    if (absent > 0) missing.push(note(POINTS_NOT_STATED, { tieDown: tieDown.id }));
    missing.push(...load.missing);
    shares.push([tieDown.id, absent > 0 ? null : share, load.known]);
    if (load.known !== null) known.push({ quantity: load.known, times: [share] });
    // a run that is not known holds with all of its tension at the most
    if (load.most === null) bounded = false;
    else most.push({ quantity: load.most, times: [share + absent] });
  }
  return { known, most: bounded ? most : null, missing, shares };
}

const sumOf = (runs: readonly Run[], share: (run: Run) => number): number =>
  runs.reduce((sum, run) => sum + share(run), 0);

const POINTS_NOT_STATED: Words = [
  'POINTS_NOT_STATED',
  'Tie-down {tieDown}: where it meets the cargo and where it is fixed, at each end.',
];
const PRETENSION_NOT_STATED: Words = ['PRETENSION_NOT_STATED', 'Tie-down {tieDown}: its pretension.'];
