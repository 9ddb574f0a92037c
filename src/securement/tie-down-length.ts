import { finely, linksForLength } from '../chain/links.js';
import { fail, within } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive, readQuantity } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { lengthOf, subtract } from '../statics/vector.js';
import { FOLLOW_THE_MARK } from '../working/cautions.js';
import { note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type Run, readRuns, type TieDownPoints } from './layout.js';
import { TIE_DOWN_PATHS } from './plan.js';

export interface TieDownLength extends ResultBase<'tieDownLength'> {
  /** Between the points, over the cargo where it runs over it. */
  readonly reach: Quantity<'ft' | 'm'>;
  /** What the chain must have between its bearing points: the reach and all that is added to it. */
  readonly required: Quantity<'ft' | 'm'>;
  /** Whole links that cover it. */
  readonly links: number;
  /** Of those links: the length to cut or buy. */
  readonly length: Quantity<'ft' | 'm'>;
  /** What that is more than required. */
  readonly spare: Quantity<'ft' | 'm'>;
}

/** The tensioner in a tie-down, as far as its length goes. */
export interface TensionerLength {
  /** What it shortens the tie-down by. */
  readonly takeUp: QuantityInput<'length'>;
  /** Its length between hooks when tight, where it joins two pieces of chain; omitted: it gathers slack of one piece. */
  readonly joins?: QuantityInput<'length'>;
}

/**
 * The chain that a tie-down needs between its points, to cut or buy it.
 *
 * required = reach + hook-back + take-up + tail − joined length of the tensioner; reach = |attachment − anchor|, and
 * for one that runs over the cargo both runs and the way between its two edges. Rounded up to whole links:
 * n = ceil(required / p), length = n · p.
 *
 * @param input.tieDown its points, as in a plan; the rest of it is not looked at
 * @param input.pitch inside length of a link, best measured over several links
 * @param input.hookBack chain that passes through or around the points and back to its own hook, both ends together
 * @param input.tensioner what it takes up, and its length where it joins two pieces
 * @param input.tail chain left hanging behind the tensioner
 * @param input.overCargo the way between the two edges of one that runs over, where it is longer than the straight line
 * @param input.units `'us'` (ft) or `'si'` (m); omitted: the system that all inputs share
 * @throws RiggingError `MISSING_FIELD` (a point), `IMPOSSIBLE_GEOMETRY` (points in one place, a way shorter than the straight
 * line, a tensioner longer than the rest), `CONFLICTING_FIELDS`, `NOT_POSITIVE`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity straight runs; the sag of a tight chain is nothing beside a link
 * @source derived from geometry
 * @example
 * const tieDown = { path: 'vehicle-to-cargo', anchor: ['-2 ft', '40 in', '0 in'], attachment: ['-6 ft', '22 in', '24 in'] } as const;
 * tieDownLength({ tieDown, pitch: '1.29 in', hookBack: '1 ft', tensioner: { takeUp: '8 in' } }).links
 * // => 60
 */
export function tieDownLength(input: {
  readonly tieDown: TieDownPoints;
  readonly pitch: QuantityInput<'length'>;
  readonly hookBack?: QuantityInput<'length'>;
  readonly tensioner?: TensionerLength;
  readonly tail?: QuantityInput<'length'>;
  readonly overCargo?: QuantityInput<'length'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): TieDownLength {
  checkObject(input, '', '{ tieDown, pitch }');
  const { tieDown, tensioner } = input;
  checkObject(tieDown, 'tieDown', 'a tie-down { path, anchor, attachment }');
  const working = new Working(input.working !== false);
  const runs = within('tieDown', () => runsOf(tieDown));
  const pitch = readPositive(input.pitch, 'length', 'pitch');
  if (tensioner !== undefined) checkObject(tensioner, 'tensioner', '{ takeUp }');
  const added = {
    'hook-back': readOptional(input.hookBack, 'length', 'hookBack'),
    'take-up': tensioner && readPositive(tensioner.takeUp, 'length', 'tensioner.takeUp'),
    tail: readOptional(input.tail, 'length', 'tail'),
  };
  const joins = readOptional(tensioner?.joins, 'length', 'tensioner.joins');
  const overCargo = readOptional(input.overCargo, 'length', 'overCargo');
  const units = sharedUnits(input.units, [pitch, ...lengthsOf(tieDown), ...Object.values(added), joins, overCargo]);
  const unit = units === 'us' ? 'ft' : 'm';
  const shown = (meters: number) => inUnit(finely(meters, units), unit);

  const reach = reachOf(runs, overCargo, working, shown);
  const more = Object.entries(added).flatMap(([name, length]) =>
    length === undefined ? [] : [[name, length] as const],
  );
  const meters =
    more.reduce((sum, [, length]) => sum + inMeters(length), reach) - (joins === undefined ? 0 : inMeters(joins));
  if (!(meters > 0)) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'tensioner.joins',
      'a tensioner shorter than the tie-down',
      `${joins}`,
      'Check the points and the tensioner.',
    );
  }
  const required = shown(meters);
  working.step(
    'tie-down',
    'required',
    `reach${more.map(([name]) => ` + ${name}`).join('')}${joins === undefined ? '' : ' − joined'}`,
    [['reach', shown(reach)], ...more, ...(joins === undefined ? [] : [['joined', joins] as const])],
    required,
  );
  const { links, bearingLength, takeUp, ...counted } = linksForLength({ length: finely(meters, units), pitch, units });
  working.steps.push(...(working.shown ? counted.steps : []));
  for (const source of counted.sources) working.cite(source);
  for (const [name, length] of Object.entries(added)) {
    if (length === undefined) working.assumptions.push(note('NOTHING_FOR', { name }));
  }
  working.cautions.push(...counted.cautions, FOLLOW_THE_MARK);
  return makeResult(
    'tieDownLength',
    { reach: shown(reach), required, links, length: inUnit(bearingLength, unit), spare: inUnit(takeUp, unit) },
    input,
    working,
  );
}

const inMeters = (length: QuantityLike): number => inUnit(length, 'm').value;

/** The runs of the tie-down, all that its path has. */
function runsOf(tieDown: TieDownPoints): readonly [Run, ...Run[]] {
  checkOneOf(tieDown.path, TIE_DOWN_PATHS, 'path');
  const [first, ...others] = readRuns(tieDown);
  if (first === undefined) {
    return fail('MISSING_FIELD', 'anchor', 'the points of the tie-down', undefined, 'Give anchor and attachment.');
  }
  if (others.length === 0 && tieDown.path !== 'vehicle-to-cargo') {
    fail('MISSING_FIELD', 'otherAnchor', 'the other end too', undefined, 'It runs over the cargo: give both ends.');
  }
  return [first, ...others];
}

/** The lengths its points are given in, for the units of the answer; they were read before. */
function lengthsOf({ anchor, attachment, otherAnchor, otherAttachment }: TieDownPoints): readonly QuantityLike[] {
  const points = [anchor, attachment, otherAnchor, otherAttachment].filter((point) => point !== undefined);
  return points.flat().map((each) => readQuantity(each, 'length', ''));
}

function reachOf(
  runs: readonly [Run, ...Run[]],
  overCargo: QuantityLike | undefined,
  working: Working,
  shown: (meters: number) => QuantityLike,
): number {
  const [first, other] = runs;
  const straight = other === undefined ? 0 : lengthOf(subtract(first.attachment, other.attachment));
  const over = overCargo === undefined ? straight : inMeters(overCargo);
  if (over < straight) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'overCargo',
      `at least ${shown(straight)}`,
      `${overCargo}`,
      'It is not shorter than the straight line.',
    );
  }
  const reach = runs.reduce((sum, { length }) => sum + length, over);
  working.step(
    'tie-down',
    'reach',
    other === undefined ? '|attachment − anchor|' : 'run + over the cargo + other run',
    [
      ['run', shown(first.length)],
      ...(other === undefined
        ? []
        : ([
            ['over the cargo', shown(over)],
            ['other run', shown(other.length)],
          ] as const)),
    ],
    shown(reach),
  );
  return reach;
}
