import { fail } from '../../errors.js';
import { checkFlag, checkOneOf } from '../../input-checks.js';
import { armyRecoveryReductions } from '../../tables/generated/army-recovery-reductions.js';
import { armyRecoveryResistance } from '../../tables/generated/army-recovery-resistance.js';
import { type Note, note } from '../../working/note.js';
import { gradeOf, type Pulled, type Resistance } from './pulled.js';

/** A machine buried in mud. The multiple holds rolling and suction: neither is added again. */
export interface MiredLoad {
  readonly kind: 'mired';
  /** How deep: to the hubs or road wheels, to the top of the wheels, or to the cab. */
  readonly depth: 'wheel' | 'fender' | 'cab';
  /** What it runs on; needed with `powerOnTracks`. */
  readonly runningGear?: 'wheels' | 'tracks';
  /** It drives its own tracks while it is pulled; never counted for wheels, which spin and dig. */
  readonly powerOnTracks?: boolean;
  /** It is pulled out the way it went in. */
  readonly oppositeToEntry?: boolean;
}

/** A machine on its side or its roof that is to be righted, or one nosed in a ditch. */
export interface RecoveredLoad {
  readonly kind: 'overturned' | 'nosed-in-ditch';
}

const DEPTHS = ['wheel', 'fender', 'cab'] as const;

/** R = multiple · W · (1 − reductions) + W · sin α. */
export function mired(load: MiredLoad, pulled: Pulled): Resistance {
  checkOneOf(load.depth, DEPTHS, 'depth');
  const removed = reductionOf(load);
  const { weight, force, working } = pulled;
  const { multiple } = armyRecoveryResistance.rows[`mired-${load.depth}-depth`];
  const mire = multiple * weight * (1 - removed);
  const values = { multiple, W: force(weight), ...(removed > 0 && { removed }) };
  const expression = removed > 0 ? 'multiple · W · (1 − removed)' : 'multiple · W';
  working.step('load', 'R mire', expression, values, force(mire));
  working.cite(armyRecoveryResistance.source);
  if (removed > 0) working.cite(armyRecoveryReductions.source);
  working.cautions.push(DIG_OUT_FIRST, BREAKS_FREE);
  const total = mire + gradeOf(pulled);
  return { low: total, high: total };
}

/** Both reductions together are their sum, as doctrine has it, not a product. */
function reductionOf({ runningGear, powerOnTracks, oppositeToEntry }: MiredLoad): number {
  checkFlag(powerOnTracks, 'powerOnTracks');
  checkFlag(oppositeToEntry, 'oppositeToEntry');
  if (runningGear !== undefined || powerOnTracks) checkOneOf(runningGear, ['wheels', 'tracks'], 'runningGear');
  if (powerOnTracks && runningGear !== 'tracks') {
    fail(
      'CONFLICTING_FIELDS',
      'powerOnTracks',
      'tracks',
      runningGear,
      'Driven wheels spin and dig: nothing is taken off.',
    );
  }
  const { rows } = armyRecoveryReductions;
  if (powerOnTracks) return rows[oppositeToEntry ? 'both' : 'power-on-tracks'].fraction_removed;
  return oppositeToEntry ? rows['pull-opposite-to-entry'].fraction_removed : 0;
}

/** R = multiple · W, whatever the ground. */
export function recovered({ kind }: RecoveredLoad, { weight, force, working }: Pulled): Resistance {
  const { multiple } = armyRecoveryResistance.rows[kind];
  const total = multiple * weight;
  working.step('load', 'R', 'multiple · W', { multiple, W: force(weight) }, force(total));
  working.cite(armyRecoveryResistance.source);
  working.cautions.push(kind === 'overturned' ? PAST_BALANCE : BREAKS_FREE);
  return { low: total, high: total };
}

const DIG_OUT_FIRST: Note = /* @__PURE__ */ note('DIG_OUT_FIRST');
const BREAKS_FREE: Note = /* @__PURE__ */ note('BREAKS_FREE');
const PAST_BALANCE: Note = /* @__PURE__ */ note('PAST_BALANCE');
