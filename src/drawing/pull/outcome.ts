import { mapAt, within } from '../../errors.js';
import { checkObject, checkOneOf } from '../../input-checks.js';
import type { PlannedPull } from '../../pulling/plan-pull.js';
import { inUnit } from '../../quantities/convert.js';
import { formatQuantity } from '../../quantities/format.js';
import type { Quantity } from '../../quantities/quantity.js';
import { readQuantity } from '../../quantities/read.js';
import type { Kind, UnitSystem } from '../../quantities/units.js';
import { decisiveOf, itemsAt, listAt, reasonsOf, textOf, VERDICTS } from '../outcome.js';
import { lineOf, MOST_OF_ID } from '../svg.js';

/** What a result of `planPull` adds to a drawing, told from its data alone: it may have gone through JSON. */
export interface PullOutcome {
  readonly verdict: string;
  readonly because: readonly string[];
  /** Figures of the arrows; absent where there is nothing to draw. */
  readonly pull?: string;
  readonly needed?: string;
  readonly front: Reaction;
  readonly rear: Reaction;
  readonly danger: { readonly meters: number; readonly text: string };
  /** In sentences, line by line. */
  readonly figures: readonly string[];
}

interface Reaction {
  readonly text: string;
  readonly isLifted: boolean;
}

const HEADINGS = {
  pass: 'Passes what was checked',
  fail: 'Do not pull: a check fails',
  undetermined: 'Not determined: a fact is missing',
  'not-applicable': 'Nothing pulls',
};
const MOST_OTHERS = 4;

/** The units that a result answers in. */
export function unitsOfPull({ length }: PlannedPull): UnitSystem {
  return readQuantity(length, 'length', 'length').unit === 'ft' ? 'us' : 'si';
}

/** Reads a result; errors name its fields. */
export function outcomeOfPull(result: PlannedPull): PullOutcome {
  const { verdict, governing, stability, resistance } = result;
  checkOneOf(verdict, VERDICTS, 'verdict');
  const checks = itemsAt(result.checks, 'checks', (check) => check);
  const decisive = decisiveOf(checks, governing);
  const others = checks.filter(
    (check) => check !== decisive && check.weight !== 'practice' && ['fail', 'undetermined'].includes(check.verdict),
  );
  const also = others.slice(0, MOST_OTHERS).map(({ title, verdict }) => {
    return `${verdict === 'fail' ? 'Fails too' : 'Open too'}: ${lineOf(textOf(title), 120)}.`;
  });
  const more = others.length > MOST_OTHERS ? [`And ${others.length - MOST_OTHERS} more.`] : [];
  checkObject(stability, 'stability', 'what the result came with');
  checkObject(resistance, 'resistance', 'what the result came with');
  const pull = sayAt(result.pull, 'force', 'pull');
  const needed = within('resistance', () => sayAt(resistance.fallLine ?? resistance.pull, 'force', 'pull'));
  const danger = readQuantity(result.dangerRadius, 'length', 'dangerRadius');
  return {
    verdict: HEADINGS[verdict],
    because: [...(decisive === undefined ? [] : reasonsOf(decisive)), ...also, ...more],
    ...(pull !== undefined && { pull }),
    ...(needed !== undefined && { needed }),
    front: reactionOf(stability.frontReaction, 'stability.frontReaction'),
    rear: reactionOf(stability.rearReaction, 'stability.rearReaction'),
    danger: { meters: inUnit(danger, 'm').value, text: say(danger) },
    figures: figuresOf(result, needed, pull),
  };
}

/** Four digits are more than anything about a pull is known to. */
const say = (quantity: Quantity): string => formatQuantity(quantity, { digits: 4 });

function sayAt(value: unknown, kind: Kind, path: string): string | undefined {
  return value === null || value === undefined ? undefined : say(readQuantity(value, kind, path));
}

function reactionOf(value: unknown, path: string): Reaction {
  const force = readQuantity(value, 'force', path);
  return { text: say(force), isLifted: force.value <= 0 };
}

function figuresOf(result: PlannedPull, needed: string | undefined, pull: string | undefined): string[] {
  const { available, snatch } = result;
  checkObject(available, 'available', 'what the result came with');
  const can = within('available', () => sayAt(available.pull, 'force', 'pull'));
  const best = available.atBest == null ? undefined : sayAt(available.atBest.pull, 'force', 'available.atBest.pull');
  const ends = available.governs === null ? '' : `, ended by ${plain(available.governs).replaceAll('-', ' ')}`;
  const limit = sayAt(result.riggingLimit, 'ratedLoad', 'riggingLimit');
  const required = sayAt(result.requiredLimit, 'ratedLoad', 'requiredLimit');
  const legs = result.requiredOfLegs === undefined ? [] : listAt(result.requiredOfLegs, 'requiredOfLegs');
  const weakest = result.weakest === undefined ? [] : listAt(result.weakest, 'weakest');
  const peak = snatch == null ? undefined : sayAt(snatch.peakTension, 'force', 'snatch.peakTension');
  const speed = sayAt(result.greatestTakeUpSpeed, 'speed', 'greatestTakeUpSpeed');
  const slack = sayAt(result.permittedSlack, 'length', 'permittedSlack');
  return [
    `The load: ${needed === undefined ? 'it runs by itself, a chain cannot hold it back' : `${needed} to move it`}.`,
    `The tractor: ${can === undefined ? 'no pull' : `${can} to count on${ends}`}${best === undefined ? '' : `, ${best} at best`}.`,
    ...(required === undefined || pull === undefined
      ? []
      : [`On the chain: ${pull}; every part needs a working load limit of ${required}.`]),
    ...(legs.length === 0
      ? []
      : [`Legs of the bridle: ${mapAt(legs, 'requiredOfLegs', (leg) => sayAt(leg, 'ratedLoad', '')).join(', ')}.`]),
    ...(result.weakest === undefined
      ? []
      : [
          `The rigging: ${limit ?? 'not known'}; weakest: ${lineOf(weakest.map(plain).join(', ') || 'not known', 200)}.`,
        ]),
    `Length of chain: ${sayAt(result.length, 'length', 'length')}, ${Number(result.links)} links.`,
    ...(peak === undefined ? [] : [`Peak when it comes tight as planned: up to ${peak}.`]),
    ...(speed === undefined ? [] : [`No faster than ${speed} when it comes tight.`]),
    ...(slack === undefined ? [] : [`Slack permitted: ${slack}.`]),
  ];
}

const plain = (name: unknown): string => lineOf(textOf(name), MOST_OF_ID);
