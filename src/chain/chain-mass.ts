import { fail } from '../errors.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact, compareExactSums } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { readSystem, sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { usWeldedChainLinks } from '../tables/generated/us-welded-chain-links.js';
import { rowOf } from '../tables/rating-table.js';
import { note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { Provenance, SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { type ChainGrade, checkGrade, type TradeSize } from './trade-size.js';

/** Density of carbon and alloy steel in kg/m³: EN 1993-1-2:2005, 3.2.2(1), from memory. */
export const STEEL_DENSITY = 7850;

/** Real chain is heavier than its geometry by the flash of its welds, 1 to 3 percent: common practice. */
const MOST_WELD_FLASH = 1.03;

/** A mass of chain, and what it is per length. */
interface MassAnswer {
  readonly mass: Quantity<'lb' | 'kg'>;
  readonly massPerLength: Quantity<'lb/ft' | 'kg/m'>;
}

export interface ChainMass extends ResultBase<'chainMass'>, MassAnswer {
  readonly size: string;
  /** Absent when no grade was given and the heaviest wire of the size was taken. */
  readonly grade?: number;
  /** The wire that was taken. */
  readonly wireDiameter: Quantity<'mm'>;
  /** `least`: at the greatest inside length of a link; `most`: `mass` and 3 percent of weld flash. */
  readonly range: { readonly least: Quantity<'lb' | 'kg'>; readonly most: Quantity<'lb' | 'kg'> };
}

export interface ChainMassFromLink extends ResultBase<'chainMassFromLink'>, MassAnswer {
  /** The steel of one link. */
  readonly linkMass: Quantity<'lb' | 'kg'>;
}

interface Options {
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

interface LinkRow {
  readonly wire_mm: number;
  readonly inside_length_max_in?: number;
  readonly inside_width_min_in?: number;
  readonly wire_provenance?: Provenance;
}

/** Wire, inside length and inside width of a link, in mm. */
interface Link {
  readonly d: number;
  readonly p: number;
  readonly w: number;
}

/**
 * What a length of chain weighs, from its trade size: for handling, freight and the box it goes in.
 *
 * m = L · ρ · (π/4) · d² · (2(p − w) + π(w + d)) / p, where d is the wire (not the trade size, which is thinner),
 * p = 3 d and w = 1.4 d are inside length and width of a short link. A longer link makes lighter chain, so `mass`
 * is the upper bound for round wire of this diameter before weld flash. `range.least` takes the greatest inside
 * length and least inside width of the table, where it has them; `range.most` is `mass` plus 3 percent.
 *
 * @param input.size trade size, such as `'3/8'`; a metric size such as `'8 mm'` is taken as EN short link, whose
 * size is its wire
 * @param input.grade 30, 43, 70, 80 or 100; omitted: the heaviest wire of the size, as an assumption (5/16: 8.7 mm)
 * @param input.length length of the chain, above zero
 * @param input.units `'us'` or `'si'`; omitted: `'us'` for inch sizes, `'si'` for metric ones
 * @throws RiggingError `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `NO_VALUE_IN_TABLE` (a size that is not made in the grade, and grade 120, whose link
 * is often not round), `NOT_POSITIVE`, `WRONG_KIND`
 * @validity open links of round wire, no stud; hooks and other fittings not counted
 * @source wire and links: association specification of 2003, from memory; geometry: derived
 * @example
 * chainMass({ size: '1/2', grade: 70, length: '20 ft', units: 'si' }).massPerLength.value.toFixed(2)
 * // => '3.73'
 */
export function chainMass(
  input: Options & { readonly size: TradeSize; readonly grade?: ChainGrade; readonly length: QuantityInput<'length'> },
): ChainMass {
  const { size, grade } = input;
  const working = new Working(input.working !== false);
  const { assumptions, cautions } = working;
  checkGrade(grade);
  if (grade === 120) {
    fail('NO_VALUE_IN_TABLE', 'grade', 'a grade of round wire', grade, 'Weigh it: the link of grade 120 is often not round.');
  }
  const length = readPositive(input.length, 'length', 'length');
  const metric = isMetric(size);
  const units = readSystem(input.units, metric ? 'si' : 'us');
  const rows = metric ? [{ wire_mm: Number.parseFloat(size) }] : rowsOf(size, grade);
  const row = rows.reduce((heaviest, each) => (each.wire_mm > heaviest.wire_mm ? each : heaviest));

  const subject = `chain ${size}`;
  const answer = massOf(shortLink(row.wire_mm), STEEL_DENSITY, length, units, working, subject);
  const leastPerMeter = Math.min(...rows.map((each) => kgPerMeter(longestLink(each), STEEL_DENSITY)));
  const least = massIn(units, leastPerMeter, length);
  const { value, unit } = answer.mass;
  if (working.shown) {
    working.step({
      subject,
      symbol: 'least m',
      expression: 'L · m/L of the longest link',
      values: { L: length, 'm/L': { value: leastPerMeter, unit: 'kg/m' } },
      result: least,
    });
  }
  const { source } = usWeldedChainLinks;
  working.cite(metric ? METRIC_WIRE : { ...source, provenance: row.wire_provenance ?? source.provenance });
  working.cite(STADIUM);
  assumptions.push(note(STEEL, { density: STEEL_DENSITY }));
  if (grade === undefined) assumptions.push(note(HEAVIEST_WIRE, { wire: { value: row.wire_mm, unit: 'mm' } }));
  if (rows.every((each) => each.inside_length_max_in === undefined)) assumptions.push(note(SHORT_LINK));
  cautions.push(note(WELD_FLASH));
  if ([undefined, 43, 70].includes(grade) && ['1/4', '3/8', '1/2'].includes(size)) cautions.push(note(THICKER_WIRE));
  return makeResult(
    'chainMass',
    {
      ...answer,
      range: { least, most: new Quantity(value * MOST_WELD_FLASH, unit) },
      size,
      ...(grade === undefined ? {} : { grade }),
      wireDiameter: new Quantity(row.wire_mm, 'mm'),
    },
    input,
    working,
  );
}

const STADIUM: SourceRef = { document: 'Geometry of a link: two straight legs, two half circles', provenance: 'derived' };
const STEEL = { code: 'STEEL_DENSITY', text: 'Steel of {density} kg/m3.' };
const WELD_FLASH = {
  code: 'WELD_FLASH',
  text: 'Real chain weighs 1 to 3 percent more, from the flash of its welds; fittings are not counted.',
};
const HEAVIEST_WIRE = { code: 'HEAVIEST_WIRE', text: 'No grade: the heaviest wire of the size is taken, {wire}.' };
const SHORT_LINK = { code: 'SHORT_LINK', text: 'No longest link is tabulated: the least mass is that of a narrow short link.' };
const THICKER_WIRE = {
  code: 'THICKER_WIRE',
  text: 'Grades 43 and 70 also come in wire 1/32 in thicker, 4 to 8 percent heavier.',
};

/** The rows that may be meant: one, or without a grade all of the size. */
function rowsOf(size: string, grade: number | undefined): readonly LinkRow[] {
  const table: { readonly [size: string]: { readonly [grade: number]: LinkRow } } = usWeldedChainLinks.rows;
  const rows = rowOf(table, size);
  if (rows === undefined) {
    return fail('UNKNOWN_SIZE', 'size', `${Object.keys(table).join(', ')}, or such as '8 mm'`, size, 'Free text goes through parseTradeSize.');
  }
  if (grade === undefined) return Object.values(rows);
  const row = rowOf(rows, grade);
  if (row !== undefined) return [row];
  return fail('NO_VALUE_IN_TABLE', 'grade', `a grade that ${size} is made in: ${Object.keys(rows).join(', ')}`, grade, 'Alloy chain is 7/32 and 9/32 where other chain is 3/16 and 1/4.');
}

// The rows `short-link` and `short-link-minimum-width` of reference-tables/chain-link-patterns, kept equal by a test;
// written out so that the whole table does not travel with this function.
const shortLink = (d: number): Link => ({ d, p: 3 * d, w: 1.4 * d });

/** The lightest link a row allows: the longest and narrowest. */
function longestLink({ wire_mm: d, inside_length_max_in: p, inside_width_min_in: w }: LinkRow): Link {
  return p === undefined || w === undefined ? { d, p: 3 * d, w: 1.3 * d } : { d, p: p * 25.4, w: w * 25.4 };
}

const METRIC_WIRE: SourceRef = {
  document: 'EN 818, short link chain for lifting purposes',
  provenance: 'read',
  note: 'read in a page quoting it',
};

/** A metric size above zero. */
function isMetric(size: string): boolean {
  return /^\d{1,2}(\.\d)? mm$/.test(size) && Number.parseFloat(size) > 0;
}

/**
 * What a length of chain weighs, from a link that was measured: two straight legs and two half circles.
 *
 * m = (L/p) · ρ · (π d²/4) · (π(w + d) + 2(p − w)), each link advancing the chain by its inside length p.
 *
 * @param input.length length of the chain, above zero; a part of a link counts in proportion
 * @param input.wireDiameter d, measured on a straight leg away from the weld
 * @param input.pitch p, the inside length of a link
 * @param input.insideWidth w, the inside width of a link
 * @param input.density of the metal; omitted: steel of 7850 kg/m³, as an assumption
 * @param input.units `'us'` or `'si'`; omitted: the system that all inputs share
 * @throws RiggingError `IMPOSSIBLE_GEOMETRY` (a link no wider inside than its wire cannot take the next one; p below w; p
 * not above 2 d), `UNITS_REQUIRED`, `NOT_POSITIVE`, `WRONG_KIND`
 * @validity open links of round wire; not stud link, twisted or square links; weld flash adds 1 to 3 percent
 * @source derived from the geometry of the link
 * @example
 * chainMassFromLink({ length: '1 m', wireDiameter: '10 mm', pitch: '30 mm', insideWidth: '14 mm' }).mass.value.toFixed(3)
 * // => '2.207'
 */
export function chainMassFromLink(
  input: Options & {
    readonly length: QuantityInput<'length'>;
    readonly wireDiameter: QuantityInput<'length'>;
    readonly pitch: QuantityInput<'length'>;
    readonly insideWidth: QuantityInput<'length'>;
    readonly density?: QuantityInput<'density'>;
  },
): ChainMassFromLink {
  const working = new Working(input.working !== false);
  const length = readPositive(input.length, 'length', 'length');
  const wire = readPositive(input.wireDiameter, 'length', 'wireDiameter');
  const pitch = readPositive(input.pitch, 'length', 'pitch');
  const width = readPositive(input.insideWidth, 'length', 'insideWidth');
  const density = input.density === undefined ? undefined : readPositive(input.density, 'density', 'density');
  const units = sharedUnits(input.units, [length, wire, pitch, width, density]);
  if (compareExact(width, wire) <= 0) {
    fail('IMPOSSIBLE_GEOMETRY', 'insideWidth', `more than the wire, ${wire}`, `${width}`, 'The next link must pass through.');
  }
  if (compareExact(pitch, width) < 0) {
    fail('IMPOSSIBLE_GEOMETRY', 'pitch', `at least the inside width, ${width}`, `${pitch}`, 'It is the longer way inside a link.');
  }
  if (compareExactSums([{ quantity: pitch }], [{ quantity: wire, times: [2] }]) <= 0) {
    fail('IMPOSSIBLE_GEOMETRY', 'pitch', `more than twice the wire, ${wire}`, `${pitch}`, 'Both neighbors need room in the link.');
  }
  const link = { d: inUnit(wire, 'mm').value, p: inUnit(pitch, 'mm').value, w: inUnit(width, 'mm').value };
  const rho = density === undefined ? STEEL_DENSITY : inUnit(density, 'kg/m3').value;
  const answer = massOf(link, rho, length, units, working, 'chain');
  const linkMass = massIn(units, kgPerMeter(link, rho), { value: link.p, unit: 'mm' });
  if (density === undefined) working.assumptions.push(note(STEEL, { density: STEEL_DENSITY }));
  working.cite(STADIUM);
  working.cautions.push(note(WELD_FLASH));
  return makeResult('chainMassFromLink', { ...answer, linkMass }, input, working);
}

function massOf(
  link: Link,
  density: number,
  length: QuantityLike,
  units: UnitSystem,
  working: Working,
  subject: string,
): MassAnswer {
  const perMeter = kgPerMeter(link, density);
  const massPerLength = inUnit({ value: perMeter, unit: 'kg/m' }, units === 'us' ? 'lb/ft' : 'kg/m');
  const mass = massIn(units, perMeter, length);
  if (working.shown) {
    const { d, p, w } = link;
    const inMm = (value: number) => ({ value, unit: 'mm' }) as const;
    working.step({
      subject,
      symbol: 'm/L',
      expression: 'ρ · (π/4) · d² · (2(p − w) + π(w + d)) / p',
      values: { ρ: { value: density, unit: 'kg/m3' }, d: inMm(d), p: inMm(p), w: inMm(w) },
      result: massPerLength,
    });
    working.step({ subject, symbol: 'm', expression: 'L · m/L', values: { L: length, 'm/L': massPerLength }, result: mass });
  }
  return { mass, massPerLength };
}

function kgPerMeter({ d, p, w }: Link, density: number): number {
  const centerline = 2 * (p - w) + Math.PI * (w + d);
  return (density * 1e-6 * (Math.PI / 4) * d * d * centerline) / p;
}

function massIn(units: UnitSystem, perMeter: number, length: QuantityLike): Quantity<'lb' | 'kg'> {
  return inUnit({ value: perMeter * inUnit(length, 'm').value, unit: 'kg' }, units === 'us' ? 'lb' : 'kg');
}
