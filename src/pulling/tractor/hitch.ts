import { fail } from '../../errors.js';
import { checkFlag, checkObject, checkOneOf } from '../../input-checks.js';
import { inUnit } from '../../quantities/convert.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../../quantities/quantity.js';
import { readPositive, readQuantity } from '../../quantities/read.js';
import { type Note, note } from '../../working/note.js';
import type { Working } from '../../working/step.js';
import type { PullOnTractor } from './pull-on-tractor.js';
import { readAngle } from './tractor.js';

/** The first four are where a tractor may be pulled, an attachment on a condition; the others never are. */
export type HitchKind =
  | 'drawbar'
  | 'frame'
  | 'attachment'
  | 'front-hitch'
  | 'three-point-arms'
  | 'quick-hitch'
  | 'top-link'
  | 'axle';

const HITCH_KINDS: readonly HitchKind[] = [
  'drawbar',
  'frame',
  'attachment',
  'front-hitch',
  'three-point-arms',
  'quick-hitch',
  'top-link',
  'axle',
];

/** Where the chain is hooked to the tractor. */
export interface Hitch {
  readonly kind: HitchKind;
  /** Of the point of pull above the ground; not above the axle. */
  readonly height: QuantityInput<'length'>;
  /** Of the point of pull behind the rear axle; needed where the chain slopes or pulls to the side. */
  readonly behindAxle?: QuantityInput<'length'>;
  /** For a front hitch, and an attachment at the front: ahead of the front axle. The tractor pulls in reverse. */
  readonly aheadOfFrontAxle?: QuantityInput<'length'>;
  /** For an attachment: whether its subframe is tied into the frame of the tractor. */
  readonly subframeTiedToFrame?: boolean;
}

/** How far the chain goes down from the hitch to the load; negative where it goes up. Left out: along the ground. */
export type ChainAngle =
  | { readonly belowTractorLine: QuantityInput<'angle'> }
  | { readonly belowHorizontal: QuantityInput<'angle'> };

/** A hitch and its chain, in meters and radians. */
export interface ReadHitch extends Omit<PullOnTractor, 'force' | 'sideways'> {
  readonly kind: HitchKind;
  readonly subframeTiedToFrame: boolean | undefined;
  /** What was given with a unit, for the units of the answer. */
  readonly given: readonly (QuantityLike | undefined)[];
}

/** A tractor that pulls on its front end does so in reverse. */
export function pullsInReverse(hitch: Hitch | undefined): boolean {
  return hitch?.kind === 'front-hitch' || (hitch?.kind === 'attachment' && hitch.aheadOfFrontAxle !== undefined);
}

/** How a tractor is pulled on. */
interface HitchInput {
  readonly hitch: Hitch;
  readonly chainAngle?: ChainAngle;
  readonly weightOnHitch?: QuantityInput<'force'>;
}

/** Reads where a chain pulls and how it leads away; a chain angle left out is noted. */
export function readHitch(
  { hitch, chainAngle, weightOnHitch }: HitchInput,
  slope: number,
  toTheSide: boolean,
  working: Working,
): ReadHitch {
  checkObject(hitch, 'hitch', '{ kind, height }');
  const { kind, behindAxle, aheadOfFrontAxle, subframeTiedToFrame } = hitch;
  checkOneOf(kind, HITCH_KINDS, 'hitch.kind');
  checkFlag(subframeTiedToFrame, 'hitch.subframeTiedToFrame');
  const height = readPositive(hitch.height, 'length', 'hitch.height');
  const forward = pullsInReverse(hitch);
  const [mine, other] = forward
    ? (['aheadOfFrontAxle', 'behindAxle'] as const)
    : (['behindAxle', 'aheadOfFrontAxle'] as const);
  if (hitch[other] !== undefined) {
    fail(
      'CONFLICTING_FIELDS',
      `hitch.${other}`,
      `hitch.${mine} alone`,
      'both or the other',
      'One chain pulls on one end.',
    );
  }
  const given = forward ? aheadOfFrontAxle : behindAxle;
  const beyond = given === undefined ? undefined : readQuantity(given, 'length', `hitch.${mine}`);
  if (chainAngle === undefined) working.assumptions.push(CHAIN_ALONG_GROUND);
  const below = readChainAngle(chainAngle, forward ? slope : -slope);
  const press = weightOnHitch === undefined ? undefined : readPositive(weightOnHitch, 'force', 'weightOnHitch');
  if ((below !== 0 || toTheSide || press !== undefined) && beyond === undefined) {
    fail(
      'MISSING_FIELD',
      `hitch.${mine}`,
      'its distance, for the chain slopes, pulls to the side or carries weight',
      undefined,
      'Measure it along the ground.',
    );
  }
  return {
    kind,
    subframeTiedToFrame,
    height: inUnit(height, 'm').value,
    beyond: beyond === undefined ? 0 : inUnit(beyond, 'm').value,
    forward,
    below,
    press: press === undefined ? 0 : inUnit(press, 'N').value,
    given: [height, beyond, press],
  };
}

/** Below the line of the tractor, in radians; from the horizontal, the slope of that line is added. */
function readChainAngle(angle: ChainAngle | undefined, lineAbove: number): number {
  if (angle === undefined) return 0;
  checkObject(angle, 'chainAngle', '{ belowTractorLine } or { belowHorizontal }');
  const { belowTractorLine, belowHorizontal } = angle as {
    readonly [name: string]: QuantityInput<'angle'> | undefined;
  };
  if (belowTractorLine !== undefined && belowHorizontal !== undefined) {
    fail('CONFLICTING_FIELDS', 'chainAngle', 'belowTractorLine or belowHorizontal', 'both', 'Give one of them.');
  }
  if (belowHorizontal === undefined) {
    return readAngle(belowTractorLine as QuantityInput<'angle'>, 'chainAngle.belowTractorLine');
  }
  const below = readAngle(belowHorizontal, 'chainAngle.belowHorizontal') + lineAbove;
  if (Math.abs(below) < Math.PI / 2 - 1e-9) return below;
  return fail(
    'IMPOSSIBLE_GEOMETRY',
    'chainAngle',
    'a chain that leads away from the tractor',
    `${new Quantity((below * 180) / Math.PI, 'deg')}`,
    'Check it against the slope.',
  );
}

const CHAIN_ALONG_GROUND: Note = /* @__PURE__ */ note('CHAIN_ALONG_GROUND');
