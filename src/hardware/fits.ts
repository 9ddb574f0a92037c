import { type ChainGrade, checkGrade, type TradeSize } from '../chain/trade-size.js';
import { fail } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { compareExact } from '../quantities/exact.js';
import type { QuantityInput } from '../quantities/quantity.js';
import { readOptional } from '../quantities/read.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';

/** A grab hook has a slot that grips one link; a slip hook has an open bowl that a chain runs through. */
export interface Hook {
  readonly kind: 'grab-hook' | 'slip-hook';
  readonly size: TradeSize;
  readonly grade?: ChainGrade;
  readonly latch?: boolean;
  /** Of a slip hook: the clear width between point and shank, under the latch where it has one. */
  readonly opening?: QuantityInput<'length'>;
}

export interface Fit extends ResultBase<'fits'> {
  readonly verdict: 'pass' | 'fail' | 'undetermined';
  /** No rule says this: it is how the trade does it. */
  readonly basis: 'common practice';
  readonly because: Note;
  /** What must be known to decide; only with `undetermined`. */
  readonly missing?: readonly Note[];
}

type Decision = Pick<Fit, 'verdict' | 'because' | 'missing'>;

/** Sizes in order of the wire of common chain; sizes on one line share their wire. */
const ORDER: readonly (readonly TradeSize[])[] = [
  ['1/8', '4 mm'],
  ['3/16', '7/32'],
  ['1/4', '9/32', '7 mm'],
  ['5/16', '8 mm'],
  ['3/8', '10 mm'],
  ['7/16'],
  ['1/2', '13 mm'],
  ['5/8', '16 mm'],
  ['3/4', '20 mm'],
  ['7/8', '22 mm'],
  ['1', '26 mm'],
  ['1-1/4', '32 mm'],
];

/**
 * Whether a hook goes with a chain, or onto an object.
 *
 * A grab hook takes its own trade size and the chain one size larger; one size smaller is held but sits deep; anything
 * further off fails, and so does hooking onto an object. A slip hook lets chain of its size or smaller run through; on an
 * object its opening decides. Steps of size = place of chain − place of hook, in the order of their wire: 9/32 stands with
 * 1/4, 7/32 with 3/16.
 *
 * This is about shape, not strength: a hook larger than its chain makes nothing stronger. For strength see
 * {@link assemblyRating}.
 *
 * @param input.hook kind and trade size; latch, grade and, for a slip hook, the opening where known
 * @param input.chain the chain it goes on, by trade size; exactly one of `chain` and `onto`
 * @param input.onto `'object'`: it is hooked onto something that is no chain
 * @param input.objectThickness of that object where the hook takes hold
 * @throws RiggingError `MISSING_FIELD`, `CONFLICTING_FIELDS` (`chain` and `onto`), `UNKNOWN_SIZE`, `UNKNOWN_GRADE`,
 * `UNKNOWN_VALUE`, `NOT_POSITIVE`, `WRONG_KIND`
 * @validity common sizes of welded chain; the link must be seen to seat fully, and the hook maker's marking governs
 * @source common practice; from memory
 * @example
 * fits({ hook: { kind: 'grab-hook', size: '3/8' }, chain: { size: '3/8' } }).verdict
 * // => 'pass'
 * @example
 * fits({ hook: { kind: 'grab-hook', size: '3/8' }, chain: { size: '1/4' } }).verdict
 * // => 'fail'
 */
export function fits(input: {
  readonly hook: Hook;
  readonly chain?: { readonly size: TradeSize; readonly grade?: ChainGrade };
  readonly onto?: 'object';
  readonly objectThickness?: QuantityInput<'length'>;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): Fit {
  checkObject(input, '', "{ hook, chain } or { hook, onto: 'object' }");
  const { hook, chain, onto } = input;
  const working = new Working(input.working !== false);
  checkObject(hook, 'hook', "{ kind: 'grab-hook', size: '3/8' }");
  const { kind } = hook;
  checkOneOf(kind, ['grab-hook', 'slip-hook'], 'hook.kind');
  const hookPlace = placeOf(hook.size, 'hook.size');
  checkGrade(hook.grade, 'hook.grade');
  if ((chain === undefined) === (onto === undefined)) {
    const code = chain === undefined ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS';
    fail(code, 'chain', "either a chain or onto: 'object'", chain && 'both', 'Say what the hook holds.');
  }
  let decision: Decision;
  if (chain !== undefined) {
    checkObject(chain, 'chain', "{ size: '3/8' }");
    const steps = placeOf(chain.size, 'chain.size') - hookPlace;
    checkGrade(chain.grade, 'chain.grade');
    const values = { chain: chain.size, hook: hook.size };
    working.step(kind, 'steps of size', 'chain − hook', values, steps);
    decision = kind === 'grab-hook' ? gripsLink(steps, working) : takesChain(chain.size, steps);
    if (steps < 0) working.cautions.push(note('HOOK_ADDS_NO_STRENGTH'));
    if (hook.grade !== undefined && chain.grade !== undefined && hook.grade !== chain.grade) {
      working.cautions.push(note('GRADES_DIFFER', { hook: hook.grade, chain: chain.grade }));
    }
  } else {
    checkOneOf(onto, ['object'], 'onto');
    decision =
      kind === 'grab-hook'
        ? { verdict: 'fail', because: note('GRAB_HOOK_ON_OBJECT') }
        : takesObject(hook, input.objectThickness, working);
  }
  if (kind === 'slip-hook' && hook.latch !== true) working.cautions.push(note('NO_LATCH'));
  working.cautions.push(FOLLOW_THE_MARK);
  working.cite(PRACTICE);
  return makeResult('fits', { ...decision, basis: 'common practice' as const }, input, working);
}

const PRACTICE: SourceRef = {
  document: 'Common practice with grab and slip hooks',
  provenance: 'common practice',
  note: 'no rule or standard; from memory',
};

function gripsLink(steps: number, working: Working): Decision {
  if (steps > 1) return { verdict: 'fail', because: note('CHAIN_TOO_LARGE', { steps }) };
  if (steps < -1) return { verdict: 'fail', because: note('CHAIN_TOO_SMALL', { steps: -steps }) };
  if (steps === 0) return { verdict: 'pass', because: note('OWN_SIZE') };
  working.cautions.push(note(steps === 1 ? 'SOURCES_DISAGREE' : 'NOT_RATED_FOR_IT'));
  return { verdict: 'pass', because: note(steps === 1 ? 'ONE_SIZE_LARGER' : 'ONE_SIZE_SMALLER') };
}

function takesChain(chain: string, steps: number): Decision {
  return steps <= 0
    ? { verdict: 'pass', because: note('RUNS_THROUGH', { chain }) }
    : { verdict: 'undetermined', because: note('LARGER_THAN_SLIP_HOOK'), missing: [note('HOOK_MARKING')] };
}

function takesObject(hook: Hook, objectThickness: QuantityInput<'length'> | undefined, working: Working): Decision {
  const opening = readOptional(hook.opening, 'length', 'hook.opening');
  const thickness = readOptional(objectThickness, 'length', 'objectThickness');
  if (opening === undefined || thickness === undefined) {
    return { verdict: 'undetermined', because: note('OPENING_DECIDES'), missing: [note('HOOK_OPENING')] };
  }
  const goes = compareExact(thickness, opening) <= 0;
  const values = { thickness, opening };
  working.step(hook.kind, 'goes on', 'thickness ≤ opening', values, goes ? 'yes' : 'no');
  return { verdict: goes ? 'pass' : 'fail', because: note(goes ? 'WITHIN_OPENING' : 'OVER_OPENING', values) };
}

function placeOf(size: TradeSize, path: string): number {
  const place = ORDER.findIndex((sizes) => sizes.includes(size));
  if (place >= 0) return place;
  return fail(
    'UNKNOWN_SIZE',
    path,
    `one of ${ORDER.flat().join(', ')}`,
    size,
    'Free text goes through parseTradeSize.',
  );
}
