import { fail } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive } from '../quantities/read.js';

/**
 * What one end of a pull chain does. `hook`: into a hook, clevis or hitch. `cylinder`: turns round a post or a log.
 * `rectangle`: turns round a beam, a stack, a loader bucket with its load. `choker`: round a log and through its own
 * hook, with a tail beyond it.
 */
export type ChainEnd =
  | { readonly at: 'hook'; readonly hookBack?: QuantityInput<'length'> }
  | {
      readonly at: 'cylinder';
      readonly diameter: QuantityInput<'length'>;
      /** In halves: 0.5 is a basket, 1 once round. */
      readonly turns: number;
      readonly hookBack?: QuantityInput<'length'>;
    }
  | {
      readonly at: 'rectangle';
      readonly width: QuantityInput<'length'>;
      readonly height: QuantityInput<'length'>;
      /** Whole turns. */
      readonly turns: number;
      readonly hookBack?: QuantityInput<'length'>;
    }
  | {
      readonly at: 'choker';
      readonly diameter: QuantityInput<'length'>;
      readonly tail: QuantityInput<'length'>;
    };

/** The chain that one end takes: meters, and so many times the outside width of the chain, which lies around its load. */
export interface ReadEnd {
  readonly meters: number;
  readonly widths: number;
  readonly expression: string;
  readonly values: Readonly<Record<string, QuantityLike | number>>;
  /** What was given with a unit, for the units of the answer. */
  readonly given: readonly QuantityLike[];
  /** Set where nothing was given for the way back to its own hook. */
  readonly noHookBack: boolean;
}

/** Reads one end; paths in errors start with its own fields. */
export function readEnd(end: ChainEnd): ReadEnd {
  checkObject(end, '', "an end such as { at: 'hook' }");
  checkOneOf(end.at, ['hook', 'cylinder', 'rectangle', 'choker'], 'at');
  if (end.at === 'choker') {
    const D = readPositive(end.diameter, 'length', 'diameter');
    const tail = readPositive(end.tail, 'length', 'tail');
    return around(1, Math.PI * inMeters(D), 'π · (D + b)', { D }, { tail });
  }
  const back = readOptional(end.hookBack, 'length', 'hookBack');
  const added = back && { 'hook-back': back };
  if (end.at === 'hook') return { ...around(0, 0, '0', {}, added), noHookBack: false };
  if (end.at === 'cylinder') {
    const n = readTurns(end.turns, 0.5);
    const D = readPositive(end.diameter, 'length', 'diameter');
    return around(n, Math.PI * inMeters(D), 'n · π · (D + b)', { n, D }, added);
  }
  const n = readTurns(end.turns, 1);
  const width = readPositive(end.width, 'length', 'width');
  const height = readPositive(end.height, 'length', 'height');
  const once = 2 * (inMeters(width) + inMeters(height));
  return around(n, once, 'n · (2 · (width + height) + π · b)', { n, width, height }, added);
}

const inMeters = (length: QuantityLike): number => inUnit(length, 'm').value;

function around(
  turns: number,
  once: number,
  turned: string,
  values: ReadEnd['values'],
  added: Readonly<Record<string, QuantityLike>> = {},
): ReadEnd {
  const lengths = [...Object.values(values), ...Object.values(added)].filter((value) => typeof value !== 'number');
  return {
    meters: turns * once + Object.values(added).reduce((sum, length) => sum + inMeters(length), 0),
    widths: turns * Math.PI,
    expression: [turned, ...Object.keys(added)].join(' + '),
    values: { ...values, ...added },
    given: lengths,
    noHookBack: Object.keys(added).length === 0,
  };
}

/** More turns than this use up a drum of chain. */
const MOST_TURNS = 100;

function readTurns(turns: unknown, step: number): number {
  if (typeof turns === 'number' && turns > 0 && turns <= MOST_TURNS && Number.isInteger(turns / step)) return turns;
  const expected = step === 1 ? 'whole turns' : 'turns, in halves';
  return fail(
    'NOT_A_WHOLE_NUMBER',
    'turns',
    `${expected}, up to ${MOST_TURNS}`,
    turns,
    'Count how often it goes round.',
  );
}
