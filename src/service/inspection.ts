import { type AnyGrade, checkChain, isTradeSize, type TradeSize } from '../chain/trade-size.js';
import { fail, mapAt, within } from '../errors.js';
import { checkFlag, checkList, checkObject, checkOneOf, defined } from '../input-checks.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readFromZero, readOptional, readPositive, readQuantity } from '../quantities/read.js';
import { CHAIN_DEFECTS, type ChainDefect, HOOK_DEFECTS, type HookDefect } from '../tables/criteria-set.js';

/** Sizes of heavy sling chain that wear tables list and no rating table does. */
export const HEAVY_SIZES = ['1-1/8', '1-3/8', '1-1/2', '1-3/4'] as const;

/** A trade size, or one of the heavy sizes of wear tables. */
export type InspectedSize = TradeSize | (typeof HEAVY_SIZES)[number];

/** The chain as it was when new: what every loss and every growth is counted from. */
export interface ChainWhenNew {
  /** Wear tables go by it. A metric size names the wire as well. */
  readonly size?: InspectedSize;
  readonly grade?: AnyGrade;
  /** Nominal diameter d of the wire; not needed beside a metric size. */
  readonly wireDiameter?: QuantityInput<'length'>;
  /** Inside length p of one link: as recorded when new, else nominal, which has a tolerance of its own. */
  readonly pitch?: QuantityInput<'length'>;
  /** Outside length of one link. */
  readonly outsideLength?: QuantityInput<'length'>;
  /** Its hook: the opening of the throat, and the thickness of the section that wears. */
  readonly hook?: { readonly throat?: QuantityInput<'length'>; readonly section?: QuantityInput<'length'> };
  /** `true`: it ends in no hook. Left out: the criteria for hooks wait for one to be inspected. */
  readonly withoutHook?: boolean;
}

/** One place of the chain, best where links bear on each other: one reading, or two at right angles. */
export interface DiameterReading {
  /** Which link and where on it. */
  readonly at?: string;
  readonly readings: readonly QuantityInput<'length'>[];
}

/** What was measured and seen. What is left out was not looked at, and is never taken as sound. */
export interface ChainMeasurements {
  readonly diameters?: readonly DiameterReading[];
  /** Over so many links, from the inner crown of the first to the same point that many links on. */
  readonly section?: {
    readonly links: number;
    readonly length: QuantityInput<'length'>;
    /** The same section when new; left out: links times pitch. */
    readonly whenNew?: QuantityInput<'length'>;
  };
  /** The longest single link. Its inside length grows with wear and stretch, its outside length with stretch alone. */
  readonly link?: { readonly inside?: QuantityInput<'length'>; readonly outside?: QuantityInput<'length'> };
  /** How exact the lengths are: less growth than this is none, where it is no more than 0.5 % of the length. */
  readonly uncertainty?: QuantityInput<'length'>;
  /** The deepest nick, cut or pit. */
  readonly notchDepth?: QuantityInput<'length'>;
  /** How far the most bent link is out of line. */
  readonly bend?: QuantityInput<'length'>;
  /** The hottest it ever was. */
  readonly highestTemperature?: QuantityInput<'temperature'>;
  /** `true`: it was never in heat, as its owner knows it. */
  readonly neverHeated?: boolean;
  /** What a look at every link found; an empty list: all was looked at and nothing found. Left out: not looked. */
  readonly found?: readonly ChainDefect[];
  readonly hook?: {
    /** The opening at its narrowest. */
    readonly throat?: QuantityInput<'length'>;
    /** Out of the plane of the unbent hook. */
    readonly twist?: QuantityInput<'angle'>;
    /** Thickness of the most worn section. */
    readonly section?: QuantityInput<'length'>;
    readonly found?: readonly HookDefect[];
  };
  /** How often it was tensioned since new; only an owner's policy asks. */
  readonly tensionings?: number;
}

/** A chain with what was measured, read. */
export interface ReadInspection {
  readonly size?: InspectedSize;
  readonly grade?: AnyGrade;
  readonly wire?: QuantityLike;
  readonly pitch?: QuantityLike;
  readonly outsideNew?: QuantityLike;
  readonly hookNew?: { readonly throat?: QuantityLike; readonly section?: QuantityLike };
  readonly withoutHook?: boolean;
  readonly diameters: readonly { readonly at: string; readonly readings: readonly QuantityLike[] }[];
  readonly section?: { readonly links: number; readonly length: QuantityLike; readonly whenNew?: QuantityLike };
  readonly inside?: QuantityLike;
  readonly outside?: QuantityLike;
  readonly uncertainty?: QuantityLike;
  readonly notchDepth?: QuantityLike;
  readonly bend?: QuantityLike;
  readonly temperature?: QuantityLike;
  readonly neverHeated?: boolean;
  readonly found?: readonly ChainDefect[];
  readonly hook?: {
    readonly throat?: QuantityLike;
    readonly twist?: QuantityLike;
    readonly section?: QuantityLike;
    readonly found?: readonly HookDefect[];
  };
  readonly tensionings?: number;
}

/** Reads the chain and its measurements, each field by its own path. */
export function readInspection(chain: ChainWhenNew, measurements: ChainMeasurements): ReadInspection {
  checkObject(chain, 'chain', '{ size, wireDiameter, pitch }');
  checkObject(measurements, 'measurements', '{ diameters, section, found }');
  return {
    ...within('chain', () => readChain(chain)),
    ...within('measurements', () => readMeasurements(measurements)),
  };
}

function readChain(chain: ChainWhenNew): Partial<ReadInspection> {
  const { size, grade, wireDiameter, pitch, outsideLength, hook, withoutHook } = chain;
  const heavy = HEAVY_SIZES.includes(size as (typeof HEAVY_SIZES)[number]);
  if (size !== undefined && !heavy) checkChain(size, grade);
  else if (grade !== undefined) checkChain('1/4', grade);
  const stated = readOptional(wireDiameter, 'length', 'wireDiameter');
  const named = isTradeSize(size) && size.endsWith(' mm') ? readPositive(size, 'length', 'size') : undefined;
  if (hook !== undefined) checkObject(hook, 'hook', '{ throat, section }');
  checkFlag(withoutHook, 'withoutHook');
  if (hook !== undefined) checkNotBoth(withoutHook, 'withoutHook', 'hook');
  return defined({
    size,
    grade,
    wire: stated ?? named,
    pitch: readOptional(pitch, 'length', 'pitch'),
    outsideNew: readOptional(outsideLength, 'length', 'outsideLength'),
    hookNew:
      hook &&
      defined({
        throat: readOptional(hook.throat, 'length', 'hook.throat'),
        section: readOptional(hook.section, 'length', 'hook.section'),
      }),
    withoutHook,
  });
}

function readMeasurements(given: ChainMeasurements): Pick<ReadInspection, 'diameters'> & Partial<ReadInspection> {
  const { diameters = [], section, link, highestTemperature, neverHeated, found, hook, tensionings } = given;
  checkList(diameters, 'diameters', 0);
  for (const [value, path] of [
    [section, 'section'],
    [link, 'link'],
    [hook, 'hook'],
  ] as const) {
    if (value !== undefined) checkObject(value, path, 'its measurements');
  }
  if (section !== undefined) checkCount(section.links, 'section.links', 1);
  checkFlag(neverHeated, 'neverHeated');
  if (highestTemperature !== undefined) checkNotBoth(neverHeated, 'neverHeated', 'highestTemperature');
  if (tensionings !== undefined) checkCount(tensionings, 'tensionings', 0);
  return {
    diameters: mapAt(diameters, 'diameters', (place, index) => {
      checkObject(place, '', '{ at, readings }');
      const { at, readings } = place;
      checkList(readings, 'readings');
      if (readings.length > 2) {
        fail('TOO_LARGE', 'readings', 'one reading or two at right angles', readings, 'List other places apart.');
      }
      if (at !== undefined && typeof at !== 'string') fail('UNKNOWN_VALUE', 'at', 'a place', at, 'Name the link.');
      return {
        at: at ?? `place ${index + 1}`,
        readings: mapAt(readings, 'readings', (reading) => readPositive(reading, 'length', '')),
      };
    }),
    ...defined({
      section: section && {
        links: section.links,
        length: readPositive(section.length, 'length', 'section.length'),
        ...defined({ whenNew: readOptional(section.whenNew, 'length', 'section.whenNew') }),
      },
      inside: readOptional(link?.inside, 'length', 'link.inside'),
      outside: readOptional(link?.outside, 'length', 'link.outside'),
      uncertainty: readFromZero(given.uncertainty, 'length', 'uncertainty'),
      notchDepth: readFromZero(given.notchDepth, 'length', 'notchDepth'),
      bend: readFromZero(given.bend, 'length', 'bend'),
      temperature:
        highestTemperature === undefined
          ? undefined
          : readQuantity(highestTemperature, 'temperature', 'highestTemperature'),
      neverHeated,
      found: readDefects(found, CHAIN_DEFECTS, 'found'),
      hook:
        hook &&
        defined({
          throat: readOptional(hook.throat, 'length', 'hook.throat'),
          twist: readTwist(hook.twist),
          section: readOptional(hook.section, 'length', 'hook.section'),
          found: readDefects(hook.found, HOOK_DEFECTS, 'hook.found'),
        }),
      tensionings,
    }),
  };
}

/** Tells whether something is a whole number, so many or more. */
export function checkCount(count: unknown, path: string, least: number): void {
  if (!Number.isSafeInteger(count) || (count as number) < least) {
    fail('NOT_A_WHOLE_NUMBER', path, `a whole number, ${least} or more`, count, 'Count them.');
  }
}

/** Refuses a flag that says there is no such thing beside the thing itself. */
function checkNotBoth(flag: boolean | undefined, path: string, other: string): void {
  if (flag === true) fail('CONFLICTING_FIELDS', path, `${path} or ${other}`, 'both', 'Give the one that is true.');
}

/** A twist to either side is the same twist. */
function readTwist(input: unknown): QuantityLike | undefined {
  if (input === undefined) return undefined;
  const { value, unit } = readQuantity(input, 'angle', 'hook.twist');
  return { value: Math.abs(value), unit };
}

function readDefects<Defect>(
  list: readonly Defect[] | undefined,
  known: readonly Defect[],
  path: string,
): readonly Defect[] | undefined {
  if (list === undefined) return undefined;
  checkList(list, path, 0);
  return mapAt(list, path, (each) => {
    checkOneOf(each, known, '');
    return each;
  });
}
