import { formatNumber, formatQuantity } from '../../quantities/format.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { sayLength } from '../words.js';
import type { PullOutcome } from './outcome.js';
import type { PullPlaces } from './places.js';
import { DEPTHS, LOADS, type PullScene } from './scene.js';

/** Everything a drawing of a pull says in words: the page shows them, and a screen reader reads them. */
export interface PullWords {
  readonly heading: string;
  readonly because: readonly string[];
  readonly figures: readonly string[];
  /** What was measured, and what is not drawn to scale. */
  readonly notes: readonly string[];
  readonly hitch: string;
  readonly chain: string;
  readonly load: string;
  readonly gap: string;
  readonly ground: string;
  /** Of the tractor, as a force. */
  readonly weight: string;
}

export function pullWordsOf(scene: PullScene, places: PullPlaces, outcome: PullOutcome | undefined): PullWords {
  const { hitch, load, gap, units, slope } = scene;
  const length = (meters: number) => sayLength(meters, units);
  const kind = hitch.kind.replaceAll('-', ' ');
  const holds = load.depth === undefined ? LOADS[load.kind] : DEPTHS[load.depth];
  const down = Math.abs(hitch.below) < 1e-9 ? '' : `, ${sayAngle(hitch.below)} ${hitch.below > 0 ? 'down' : 'up'}`;
  const gapText = { standoff: 'standoff', chain: 'whole chain', unknown: 'distance not known' }[gap.is];
  return {
    heading: outcome?.verdict ?? `${kind}, load ${holds}`,
    because: outcome?.because ?? [],
    figures: outcome?.figures ?? [],
    hitch: `${kind}, ${length(hitch.height)} up`,
    chain: `chain${down === '' ? ' along the ground' : down}`,
    load: `${holds}, ${formatQuantity(load.mass, { digits: 4 })}`,
    gap: gap.is === 'unknown' ? gapText : `${gapText} ${length(gap.meters)}`,
    ground: slope === 0 ? 'level ground' : `ground ${sayAngle(slope)} nose ${slope > 0 ? 'up' : 'down'}`,
    weight: formatQuantity(ratedLoadIn(scene.tractor.mass, units === 'us' ? 'lbf' : 'kN'), { digits: 4 }),
    notes: [...measures(scene, length), ...schematic(scene, places, length)],
  };
}

const sayAngle = (radians: number): string => `${formatNumber(Math.round(Math.abs((radians * 1800) / Math.PI)) / 10)}°`;

/** All of it in sentences. */
export function describePull({ because, figures, notes, hitch, chain, load, gap, ground }: PullWords): string {
  const seen = `From the left, front at the left: ${ground}; hitch: ${hitch}; ${chain}; ${gap}; load: ${load}.`;
  return [seen, ...because, ...figures, ...notes].join(' ');
}

function measures({ tractor, hitch }: PullScene, length: (meters: number) => string): string[] {
  const { wheelbase, ahead, height } = tractor;
  const where = `${length(Math.abs(ahead))} ${ahead < 0 ? 'behind' : 'ahead of'} the rear axle`;
  const high = height === undefined ? '' : `, ${length(height)} up`;
  const beyond =
    hitch.beyond === undefined
      ? ''
      : ` Hitch ${length(Math.abs(hitch.beyond))} ${hitch.forward ? 'ahead of the front' : 'behind the rear'} axle.`;
  return [`Wheelbase ${length(wheelbase)}; center of gravity ${where}${high}.${beyond}`];
}

function schematic(scene: PullScene, { loadAbove }: PullPlaces, length: (meters: number) => string): string[] {
  const { tractor, hitch, gap } = scene;
  const assumed = [
    ...(tractor.height === undefined ? ['the height of the center of gravity'] : []),
    ...(hitch.beyond === undefined ? [`how far the hitch is ${hitch.forward ? 'ahead' : 'behind'}`] : []),
    ...(gap.is === 'unknown' ? ['how far away the load is'] : []),
  ];
  const gapIs = gap.is === 'chain' ? ['No standoff given: the load is drawn a whole chain away.'] : [];
  const lies =
    Math.abs(loadAbove) > 0.005
      ? [
          `At this angle the chain ends where the ground lies about ${length(Math.abs(loadAbove))} ${loadAbove > 0 ? 'higher' : 'lower'}.`,
        ]
      : [];
  return [
    `Dashed is only about right: ${['the body of the tractor and the load', ...assumed].join('; ')}. Arrows show place and direction, their figures the size.`,
    'W: weight of the tractor. P: pull on the chain. R front, R rear: what the axles carry. R: what holds the load.',
    ...gapIs,
    ...lies,
  ];
}
