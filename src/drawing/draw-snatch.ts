import { fail } from '../errors.js';
import { readSnatch, type ShockTensionInput, shockTension } from '../pulling/shock-tension.js';
import { type Snatch, snatchPeak, speedForPeak } from '../pulling/snatch.js';
import { inUnit } from '../quantities/convert.js';
import { formatQuantity } from '../quantities/format.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readOptional } from '../quantities/read.js';
import { Working } from '../working/step.js';
import { lineRow } from './line-row.js';
import { decisiveOf, reasonsOf } from './outcome.js';
import { PAGE, paragraph, stack } from './paper.js';
import { drawPlot, type Level, ticksTo } from './plot.js';
import { type DrawingOptions, readOptions, standalone } from './standalone.js';
import { INK, type LineStyle } from './symbols.js';

export interface SnatchPlotOptions extends Pick<DrawingOptions, 'id'> {
  /** Where the axis of speeds ends at least; omitted: past the take-up and past every limit that is given. */
  readonly upTo?: QuantityInput<'speed'>;
}

/**
 * The peak tension over the take-up speed, as a plot: one curve for chain as stiff as mooring chain, one for solid bars,
 * which no chain exceeds and which decides, with lines at the working load limit, the proof load and the breaking force
 * where they are given. The take-up of the input is marked on both curves.
 *
 * The curves are those of {@link shockTension}, F = T + √(T² + k · m1 · v²) for an anchored load, with the same thrust at
 * every speed. Raised slowly, the tension is the thrust alone; a snug chain with the thrust on it at once sees twice that,
 * where the load holds.
 *
 * It returns a standalone SVG as {@link drawSecurement} does. Curves and lines differ by width and dashes; the same words
 * and figures stand under the plot, and in its description.
 *
 * @param input the input of {@link shockTension}, such as `snatch.inputs` of what `planPull` returned
 * @param input.units `'us'` (lbf, mph) or `'si'` (kN, m/s) for the axes; omitted: the system that all inputs share
 * @param options.upTo the speed that the axis shows at least, 100 m/s at most
 * @param options.id a letter, then letters, digits, `-` or `_`, at most 64
 * @throws RiggingError those of {@link shockTension}; `NOT_POSITIVE` or `TOO_LARGE` for `upTo`; `UNKNOWN_VALUE` for an `id`
 * that cannot be
 * @validity that of {@link shockTension}: past the proof load a chain yields, and the curves are no longer true
 * @source as {@link shockTension}
 * @example
 * const svg = drawSnatch({
 *   towingMass: '3300 lb',
 *   load: 'anchored',
 *   takeUp: { speed: '2 mph' },
 *   chain: { wireDiameter: '0.276 in', length: '18 ft' },
 *   workingLoadLimit: '3150 lb',
 * });
 * /<title [^>]*>(.*?)<\/title>/.exec(svg)?.[1]
 * // => 'Peak tension over take-up speed: Beyond a limit'
 */
export function drawSnatch(input: ShockTensionInput, options: SnatchPlotOptions = {}): string {
  const { id } = readOptions(options);
  const result = shockTension({ ...input, working: false });
  const { limits, units, bending, rigid, taken } = readSnatch(input, new Working(false));
  const [force, speed] = units === 'us' ? (['lbf', 'mph'] as const) : (['kN', 'm/s'] as const);
  const shownForce = (newtons: number): number => inUnit({ value: newtons, unit: 'N' }, force).value;
  const shownSpeed = (metersPerSecond: number): number => inUnit({ value: metersPerSecond, unit: 'm/s' }, speed).value;
  const held = [
    { name: 'working load limit', tag: 'WLL', limit: limits.workingLoadLimit, line: WORKING_LOAD_LIMIT },
    { name: 'proof load', tag: 'proof', limit: limits.proofLoad, line: PROOF_LOAD },
    { name: 'breaking force', tag: 'breaks', limit: limits.breakingForce, line: BREAKING_FORCE },
  ].flatMap(({ limit, ...rest }) => (limit === undefined ? [] : [{ ...rest, limit, newtons: newtonsOf(limit) }]));
  const asked = lastSpeed(
    options?.upTo,
    taken.speed,
    bending,
    held.map(({ newtons }) => newtons),
  );
  // the curves go on to the end of the axis
  const end = ticksTo(shownSpeed(asked)).at(-1) as number;
  const last = inUnit({ value: end, unit: speed }, 'm/s').value;

  const curveOf = (snatch: Snatch) =>
    speedsTo(last).map((each) => [shownSpeed(each), shownForce(snatchPeak(snatch, each).peak)] as const);
  const [bars, mooring] = [curveOf(rigid), curveOf(bending)];
  const tallest = Math.max(...bars.map(([, peak]) => peak), ...held.map(({ newtons }) => shownForce(newtons)));
  const planned = shownSpeed(taken.speed);
  const levels: Level[] = held.map(({ tag, line, newtons }) => ({ name: tag, line, value: shownForce(newtons) }));
  const say = (quantity: QuantityLike) => formatQuantity(quantity, { digits: 4 });
  const at = taken.slow ? 'Raised slowly' : `At ${say(result.takeUpSpeed)}`;
  const rows: readonly (readonly [string, LineStyle])[] = [
    [`Solid bars, which no chain exceeds. ${at}: ${say(result.peakTension)}.`, SOLID_BARS],
    [`As stiff as mooring chain. ${at}: ${say(result.leastPeakTension)}.`, MOORING_CHAIN],
    ...held.map(({ name, limit, line, newtons }) => {
      const greatest = speedForPeak(rigid, newtons);
      const within =
        greatest === undefined
          ? 'the thrust put on at once is beyond it'
          : `solid bars reach it at ${say({ value: shownSpeed(greatest), unit: speed })}`;
      return [`${name[0]?.toUpperCase()}${name.slice(1)} ${say(limit)}: ${within}.`, line] as const;
    }),
  ];
  const decisive = decisiveOf(result.checks, result.governing);
  const because = decisive === undefined ? [] : reasonsOf(decisive);
  const notes = [
    `${input.load === 'anchored' ? 'A load that does not give' : 'A load that gives'}. ${thrustWords(taken.thrust, say({ value: shownForce(taken.thrust), unit: force }))}`,
    'The dots mark the take-up that was asked for. Only a peak within the working load limit is a pass.',
  ];
  const heading = HEADINGS[result.verdict];
  const page = stack(PAGE.margin - 4, [
    (top) => paragraph(heading, top, true),
    ...because.map((text) => (top: number) => paragraph(text, top)),
    (top) =>
      drawPlot(
        {
          across: { title: `Take-up speed, ${speed}`, most: end },
          up: { title: `Peak tension, ${force}`, most: tallest },
          curves: [
            { name: 'solid bars', line: SOLID_BARS, points: bars },
            { name: 'mooring chain', line: MOORING_CHAIN, points: mooring },
          ],
          levels,
          marks: [
            { at: [planned, result.leastPeakTension.value], full: false },
            { at: [planned, result.peakTension.value], full: true },
          ],
        },
        top + 6,
      ),
    ...rows.map(
      ([text, line]) =>
        (top: number) =>
          lineRow(text, line, top + 3),
    ),
    ...notes.map((text) => (top: number) => paragraph(text, top + 4)),
  ]);
  return standalone('snatch', {
    title: `Peak tension over take-up speed: ${heading}`,
    description: [...because, ...rows.map(([text]) => text), ...notes].join(' '),
    page: { markup: page.markup, bottom: page.bottom + PAGE.margin - 4 },
    id,
  });
}

const HEADINGS = {
  pass: 'Within the working load limit',
  fail: 'Beyond a limit',
  undetermined: 'Not determined: no working load limit',
  'not-applicable': 'Nothing to hold it against',
};

const SOLID_BARS: LineStyle = { color: INK, width: 2.75 };
const MOORING_CHAIN: LineStyle = { color: '#0b4f8a', width: 2, dash: '7 4' };
const WORKING_LOAD_LIMIT: LineStyle = { color: '#8a4b00', width: 1.5, dash: '12 3' };
const PROOF_LOAD: LineStyle = { color: '#8a4b00', width: 1.5, dash: '8 3 2 3' };
const BREAKING_FORCE: LineStyle = { color: '#b00020', width: 1.5, dash: '2 2' };

const newtonsOf = (limit: QuantityLike): number => ratedLoadIn(limit, 'N').value;

function thrustWords(newtons: number, said: string): string {
  return newtons > 0 ? `${said} of thrust goes on.` : 'No thrust goes on.';
}

/** A brisk walk, where nothing else says how far the axis goes. */
const WALK = 1.4;
/** No chain is taken up faster. */
const FASTEST = 100;

/** In m/s. */
function lastSpeed(
  asked: QuantityInput<'speed'> | undefined,
  planned: number,
  softer: Snatch,
  limits: readonly number[],
): number {
  const upTo = readOptional(asked, 'speed', 'upTo');
  if (upTo !== undefined) {
    const last = inUnit(upTo, 'm/s').value;
    if (last > FASTEST)
      fail('TOO_LARGE', 'upTo', `at most ${FASTEST} m/s`, `${upTo}`, 'Check the number and its unit.');
    return Math.max(last, planned);
  }
  const reached = limits.map((limit) => speedForPeak(softer, limit) ?? 0);
  return Math.max(1.25 * planned, ...reached.map((each) => 1.1 * each)) || WALK;
}

const POINTS = 96;

const speedsTo = (last: number): number[] => Array.from({ length: POINTS + 1 }, (_, index) => (last * index) / POINTS);
