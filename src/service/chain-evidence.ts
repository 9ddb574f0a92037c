import type { QuantityLike } from '../quantities/quantity.js';
import type { ChainQuantity, HookQuantity } from '../tables/criteria-set.js';
import { type Note, note } from '../working/note.js';
import { counted, difference, type Evidence, growth, loss, mayHaveGrown, percentOf, plain, share } from './evidence.js';
import { inches } from './inches.js';
import type { ReadInspection } from './inspection.js';

/** What was measured of one quantity, and what must be known where that does not decide. */
export interface Measurement {
  readonly evidence: readonly Evidence[];
  readonly missing: Note;
}

/** How much longer the measured section is. */
export function ofSection({ section, pitch }: ReadInspection, bound: Evidence['bound']): readonly Evidence[] {
  if (section === undefined) return [];
  const { links, length, whenNew } = section;
  if (whenNew !== undefined) {
    return [growth(length, whenNew, { bound, expression: '100 · (L − L0) / L0', values: { L: length, L0: whenNew } })];
  }
  if (pitch === undefined) return [];
  const values = { L: length, N: links, p0: pitch };
  return [growth(length, pitch, { times: links, bound, expression: '100 · (L − N · p0) / (N · p0)', values })];
}

/** How much longer the longest link is inside, wear and stretch together. */
export function ofInside({ inside, pitch }: ReadInspection): readonly Evidence[] {
  if (inside === undefined || pitch === undefined) return [];
  return [growth(inside, pitch, { expression: '100 · (p − p0) / p0', values: { p: inside, p0: pitch } })];
}

/** How much longer the longest link is outside, in percent of its pitch: stretch alone. */
export function ofOutside(
  { outside, outsideNew, pitch }: ReadInspection,
  bound: Evidence['bound'],
): readonly Evidence[] {
  if (outside === undefined || outsideNew === undefined || pitch === undefined) return [];
  const values = { o: outside, o0: outsideNew, p0: pitch };
  return [growth(outside, outsideNew, { base: pitch, bound, expression: '100 · (o − o0) / p0', values })];
}

/** Stretch of the longest link at least: its growth inside, less all that the deepest wear could have added at both crowns. */
export function linkBeyondWear(read: ReadInspection, least: QuantityLike | undefined): readonly Evidence[] {
  const { inside, pitch, wire } = read;
  if (inside === undefined || least === undefined || wire === undefined || pitch === undefined) return [];
  return [
    growth(inside, pitch, {
      bound: 'at least',
      without: { wire, diameter: least, times: 2 },
      expression: '100 · (p − p0 − 2 · (d − d1)) / p0',
      values: { p: inside, p0: pitch, d: wire, d1: least },
    }),
  ];
}

/** The same of the section: every crown of it is taken to be worn as deep as the deepest. */
export function sectionBeyondWear(read: ReadInspection, least: QuantityLike | undefined): readonly Evidence[] {
  const { section, pitch, wire } = read;
  const whenNew = section?.whenNew ?? pitch;
  if (section === undefined || least === undefined || wire === undefined || whenNew === undefined) return [];
  const { links, length } = section;
  const L0 = section.whenNew === undefined ? { value: whenNew.value * links, unit: whenNew.unit } : whenNew;
  return [
    growth(length, whenNew, {
      ...(section.whenNew === undefined ? { times: links } : {}),
      bound: 'at least',
      without: { wire, diameter: least, times: 2 * links },
      expression: '100 · (L − L0 − 2 · N · (d − d1)) / L0',
      values: { L: length, L0, N: links, d: wire, d1: least },
    }),
  ];
}

/** Stretch: an unchanged outside clears a chain only where wear is known to explain what it grew inside. */
function ofStretch(read: ReadInspection, least: QuantityLike | undefined): Measurement {
  const { uncertainty, wire } = read;
  const hasGrown = [...ofSection(read, 'equal'), ...ofInside(read)].some((each) => mayHaveGrown(each, uncertainty));
  const isExplained = !hasGrown || (wire !== undefined && least !== undefined);
  return {
    evidence: [
      ...ofOutside(read, isExplained ? 'equal' : 'at least'),
      ...linkBeyondWear(read, least),
      ...sectionBeyondWear(read, least),
      ...(hasGrown ? [] : ofInside(read)), // a longest link that did not grow leaves no room for stretch
    ],
    missing: note(isExplained ? 'OUTSIDE_OF_LINK' : wire === undefined ? 'NOMINAL_WIRE' : 'DIAMETER'),
  };
}

/** What is missing to tell how much longer a section or a link is. */
function missingGrowth({ section, inside, pitch }: ReadInspection, wanted: 'section' | 'link'): Note {
  const measured = wanted === 'link' ? inside !== undefined : section !== undefined || inside !== undefined;
  if (measured && pitch === undefined) return note('PITCH_WHEN_NEW');
  return wanted === 'link' ? note('LONGEST_LINK') : note('SECTION_LENGTH');
}

/** Evidence of every numeric quantity of a chain; the wear tables come from the criteria. */
export function measureChain(
  quantity: ChainQuantity,
  read: ReadInspection,
  least: QuantityLike | undefined,
): Measurement | undefined {
  const { diameters, wire, pitch, inside } = read;
  switch (quantity) {
    case 'least-diameter':
      return { evidence: least === undefined ? [] : [plain(least, 'in', 'least reading')], missing: note('DIAMETER') };
    case 'wear-depth': {
      const size = sizeInInches(read);
      const known = least !== undefined && size !== undefined;
      return {
        evidence: known ? [difference(size, least, 'in', 'size − d1', { size, d1: least })] : [],
        missing: least === undefined ? note('DIAMETER') : note('SIZE_NOT_STATED'),
      };
    }
    case 'wear':
      return {
        evidence: least === undefined || wire === undefined ? [] : [loss(wire, [least], 'equal')],
        missing: wire === undefined ? note('NOMINAL_WIRE') : note('DIAMETER'),
      };
    case 'mean-diameter':
    case 'mean-wear': {
      const pairs = diameters.filter(({ readings }) => readings.length === 2);
      const judge = quantity === 'mean-diameter' ? share : loss;
      const all = pairs.length === diameters.length;
      return {
        evidence:
          wire === undefined ? [] : pairs.map(({ readings }) => judge(wire, readings, all ? 'equal' : 'at least')),
        missing: wire === undefined ? note('NOMINAL_WIRE') : note('TWO_DIAMETERS'),
      };
    }
    case 'elongation':
      return {
        evidence: [...ofSection(read, 'equal'), ...ofInside(read), ...ofOutside(read, 'at least')],
        missing: missingGrowth(read, 'section'),
      };
    case 'link-elongation':
      return {
        evidence: [...ofInside(read), ...ofSection(read, 'at least'), ...ofOutside(read, 'at least')],
        missing: missingGrowth(read, 'link'),
      };
    case 'link-elongation-beyond-wear': {
      const known = inside !== undefined && pitch !== undefined && wire !== undefined && least !== undefined;
      const values = known ? { t: inside, t0: pitch, d0: wire, d: least } : {};
      const expression = '100 · (t − t0 − (d0 − d)) / t0';
      return {
        evidence: known
          ? [growth(inside, pitch, { without: { wire, diameter: least, times: 1 }, expression, values })]
          : [],
        missing:
          wire === undefined
            ? note('NOMINAL_WIRE')
            : least === undefined
              ? note('DIAMETER')
              : missingGrowth(read, 'link'),
      };
    }
    case 'stretch':
      return ofStretch(read, least);
    case 'notch-depth':
      return depthOf(read.notchDepth, 'gouge', 'notch depth', read, least);
    case 'bend':
      return depthOf(read.bend, 'bent-link', 'bend', read, least);
    case 'highest-temperature':
    case 'temperature-class-4':
    case 'temperature-class-8': {
      const { temperature } = read;
      const unit = quantity === 'highest-temperature' ? 'F' : 'C';
      return {
        evidence: temperature === undefined ? [] : [plain(temperature, unit, 'highest temperature')],
        missing: note('TEMPERATURE'),
      };
    }
    case 'tensionings':
      return {
        evidence: read.tensionings === undefined ? [] : [counted(read.tensionings, 'tensionings')],
        missing: note('TENSIONINGS_NOT_STATED'),
      };
    default:
      return undefined;
  }
}

/** A depth in percent of the remaining diameter; where all was looked at and no such thing found, it is none. */
function depthOf(
  depth: QuantityLike | undefined,
  defect: 'gouge' | 'bent-link',
  name: string,
  { found }: ReadInspection,
  least: QuantityLike | undefined,
): Measurement {
  const none = found !== undefined && !found.includes(defect);
  const measured = depth ?? (none ? { value: 0, unit: 'mm' as const } : undefined);
  const known = measured !== undefined && least !== undefined;
  return {
    evidence: known ? [percentOf(measured, least, `100 · ${name} / d1`, { [name]: measured, d1: least })] : [],
    missing: measured === undefined ? note('DEPTH', { name }) : note('DIAMETER'),
  };
}

/** The trade size as a length: wear tables of the United States count wear from it, though the wire runs over it. */
function sizeInInches({ size }: ReadInspection): QuantityLike | undefined {
  return size === undefined || size.endsWith(' mm') ? undefined : inches(size);
}

/** Evidence of every numeric quantity of a hook. */
export function measureHook(quantity: HookQuantity, { hook, hookNew }: ReadInspection): Measurement | undefined {
  switch (quantity) {
    case 'throat-opening':
    case 'throat-increase': {
      const now = hook?.throat;
      const before = hookNew?.throat;
      const known = now !== undefined && before !== undefined;
      const values = known ? { t: now, t0: before } : {};
      const evidence = !known
        ? []
        : quantity === 'throat-opening'
          ? [growth(now, before, { expression: '100 · (t − t0) / t0', values })]
          : [difference(now, before, 'in', 't − t0', values)];
      return { evidence, missing: now === undefined ? note('THROAT') : note('THROAT_WHEN_NEW') };
    }
    case 'twist': {
      const none = hook?.found !== undefined && !hook.found.includes('bend-or-twist');
      const twist = hook?.twist ?? (none ? { value: 0, unit: 'deg' as const } : undefined);
      return { evidence: twist === undefined ? [] : [plain(twist, 'deg', 'twist')], missing: note('TWIST') };
    }
    case 'wear': {
      const before = hookNew?.section;
      const known = hook?.section !== undefined && before !== undefined;
      return { evidence: known ? [loss(before, [hook.section], 'equal')] : [], missing: note('HOOK_SECTION') };
    }
    default:
      return undefined;
  }
}
