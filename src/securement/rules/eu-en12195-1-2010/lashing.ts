import type { QuantityLike } from '../../../quantities/quantity.js';
import { readOptional } from '../../../quantities/read.js';
import { note } from '../../../working/note.js';
import type { FrictionFactor } from '../../forces/friction.js';
import { type Sum, shownLoad } from '../../forces/sums.js';
import {
  byCapacity,
  byTension,
  type CountedForce,
  knownLoad,
  lesserOf,
  type RatedLayout,
  runsOver,
  shareOfLoad,
} from '../../forces/tie-downs.js';
import type { ArticleLayout } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import { factor, STANDARD } from './cite.js';
import { standardTensionForce } from './tensioner.js';

/** A lashing with what each of its legs counts. Over-top lashing holds by friction and pretension, the rest is direct. */
export interface Lashing extends RatedLayout {
  /** LC of each leg. */
  readonly capacity: CountedForce;
  /** FT of each leg; of over-top lashing only. */
  readonly tension?: CountedForce;
}

/** An article as the checks of the standard look at it. */
export interface Load {
  readonly layout: ArticleLayout;
  /** m · g with the g of the standard. */
  readonly weight: Sum;
  readonly friction: FrictionFactor;
  readonly lashings: readonly Lashing[];
}

/** LC by the least part and anchor point, FT by the pretension stated or the STF of the tensioner. */
export function readLashing(tieDown: RatedLayout, context: RuleContext): Lashing {
  const { layout, rating } = tieDown;
  const capacity = byCapacity(tieDown);
  return { layout, rating, capacity, ...(runsOver(tieDown) && { tension: tensionOf(tieDown, capacity, context) }) };
}

/**
 * FT = min(pretension or STF, 0.5 · LC): what stands in each leg of an over-top lashing, however strong it is. A
 * pretension that is stated goes before the STF on the tag.
 */
function tensionOf({ layout, rating }: RatedLayout, capacity: CountedForce, context: RuleContext): CountedForce {
  const { working, units } = context;
  const { tieDown } = layout;
  const pretension = readOptional(tieDown.pretension, 'force', 'pretension');
  const stated: QuantityLike | undefined = pretension ?? standardTensionForce(tieDown, working);
  const tension = byTension(layout, stated, note('PRETENSION_OR_STF_NOT_STATED', { tieDown: tieDown.id }));
  const share = factor(working, 'tension-share-of-lc');
  const force = lesserOf(tension.force, shareOfLoad(share, capacity.force));
  if (working.shown) {
    const name = pretension === undefined ? 'STF' : 'pretension';
    working.step(
      `tie-down ${tieDown.id}`,
      'FT',
      `min(${name}, ${share} · LC)`,
      { [name]: shownLoad(stated, units), LC: shownLoad(knownLoad(capacity.force), units) },
      shownLoad(knownLoad(force), units),
      `${STANDARD}, over-top lashing`,
    );
  }
  const facts = rating.capacity === null ? rating.missing : [];
  return { layout, force, missing: [...tension.missing, ...facts] };
}

/** LC of lashings. */
export const capacities = (lashings: readonly Lashing[]): CountedForce[] => lashings.map(({ capacity }) => capacity);

/** FT of the over-top lashings among them. */
export const tensions = (lashings: readonly Lashing[]): CountedForce[] =>
  lashings.flatMap(({ tension }) => tension ?? []);
