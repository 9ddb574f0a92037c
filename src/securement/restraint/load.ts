import type { PartRater } from '../../assembly/rate-part.js';
import { showSeries } from '../../assembly/show-parts.js';
import { fail } from '../../errors.js';
import { Quantity } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { massUnitOf } from '../../quantities/shared-units.js';
import type { UnitSystem } from '../../quantities/units.js';
import type { LimitOptions } from '../../statics/limit/limit-factor.js';
import type { Member, RigidLoad } from '../../statics/rigid-load.js';
import { scale } from '../../statics/vector.js';
import { type CapacitySystem, type CapacityTable, marksAlone } from '../../tables/rating-table.js';
import { type Note, note } from '../../working/note.js';
import type { Working } from '../../working/step.js';
import { absentRuns, runsOver } from '../forces/tie-downs.js';
import type { ArticleLayout, TieDownLayout } from '../layout.js';
import { rateTieDown, ratingUnder, type TieDownRating } from '../rate-tie-down.js';

/** A tie-down as a force in the balance. */
export interface HeldBy extends TieDownLayout {
  readonly rating: TieDownRating;
  /** N; null while it is not known. */
  readonly capacity: number | null;
}

/** Rates every tie-down of an article in one system, and shows how. */
export function rateHeld(
  layout: ArticleLayout,
  system: CapacitySystem,
  ratings: CapacityTable | undefined,
  units: UnitSystem,
  working: Working,
): readonly HeldBy[] {
  const unit = units === 'us' ? 'lbf' : 'N';
  const rateOne = (rater: PartRater, each: TieDownLayout): HeldBy => {
    const rating = rateTieDown(rater, each.tieDown, working);
    const { capacity } = rating;
    const subject = `tie-down ${each.tieDown.id}`;
    if (rating.series !== undefined) {
      showSeries(working, rating.series, each.tieDown.parts ?? [], subject, massUnitOf(units));
    }
    if (capacity !== null) {
      working.step(subject, 'F', 'capacity, as a force', [['capacity', capacity]], ratedLoadIn(capacity, unit));
    }
    return { ...each, rating, capacity: capacity && ratedLoadIn(capacity, 'N').value };
  };
  return ratingUnder(ratings ?? marksAlone(system), working, (rater) =>
    layout.tieDowns.map((each) => rateOne(rater, each)),
  );
}

/**
 * The load as the statics see it. A direct tie-down and each run of a loop is a member with its capacity; one that runs
 * over to the other side only presses, with its pretension on both sides, since nothing fixes it to the cargo.
 */
export function rigidLoadOf(
  layout: ArticleLayout,
  held: readonly HeldBy[],
  capacityOf: (each: HeldBy) => number = ({ capacity }) => capacity ?? 0,
): RigidLoad {
  const { weight, centerOfGravity, contacts } = layout;
  if (centerOfGravity === undefined) {
    return fail('MISSING_FIELD', 'centerOfGravity', 'a point [x, y, z]', undefined, 'Forces act at it: estimate it.');
  }
  if (contacts.length === 0) {
    fail('MISSING_FIELD', 'contacts', 'the points it stands on', undefined, 'Give tires, tracks or pads.');
  }
  return {
    weight,
    centerOfGravity,
    contacts: contacts.map((contact, index) => ({ friction: 0, ...contact, id: `contact ${index + 1}` })),
    members: held.filter((layout) => !runsOver({ layout })).flatMap((each) => membersOf(each, capacityOf(each))),
    pushes: held.filter((layout) => runsOver({ layout })).flatMap(pushesOf),
  };
}

/** Refuses contacts without friction where friction counts. */
export function checkFriction({ contacts }: ArticleLayout, { friction }: LimitOptions): void {
  if (friction !== 'none' && contacts.some((each) => each.friction === undefined)) {
    fail('MISSING_FIELD', 'friction', 'a friction factor', undefined, "Give it, or count with friction: 'none'.");
  }
}

function membersOf({ tieDown, runs, pretension, axialStiffness }: HeldBy, capacity: number): Member[] {
  return runs.map(({ anchor, attachment, length }) => ({
    id: tieDown.id,
    anchor,
    attachment,
    capacity,
    ...(pretension !== undefined && { pretension }),
    ...(axialStiffness !== undefined && { stiffness: axialStiffness / length }),
  }));
}

function pushesOf({ runs, pretension = 0 }: HeldBy) {
  return runs.map(({ attachment, pull }) => ({ at: attachment, force: scale(pull, pretension) }));
}

/** What must be known before every tie-down counts: points, capacity, and the pretension of one that only presses. */
export function missingFacts(held: readonly HeldBy[]): readonly Note[] {
  return held.flatMap((layout) => {
    const { id } = layout.tieDown;
    const facts: Note[] = [...layout.rating.missing];
    if (absentRuns(layout) > 0) facts.push(note('NO_POINTS', { tieDown: id }));
    if (runsOver({ layout }) && layout.pretension === undefined) facts.push(note('NO_PRETENSION', { tieDown: id }));
    return facts;
  });
}

/** The tie-downs whose stiffness must be known before it is known how they share. */
export function missingStiffness({ members }: RigidLoad): readonly Note[] {
  const soft = members.filter(({ capacity, stiffness }) => capacity > 0 && stiffness === undefined);
  return [...new Set(soft.map(({ id }) => id))].map((id) => note('NO_STIFFNESS', { tieDown: id }));
}

/** A force in the units of the result. */
export function forceIn(newtons: number, units: UnitSystem): Quantity<'lbf' | 'N'> {
  return units === 'us' ? ratedLoadIn({ value: newtons, unit: 'N' }, 'lbf') : new Quantity(newtons, 'N');
}
