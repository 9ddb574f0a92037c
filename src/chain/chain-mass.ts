import { fail } from '../errors.js';
import { valueIn } from '../quantities/convert.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import type { UnitSystem } from '../quantities/units.js';
import { chainLinkPatterns } from '../tables/generated/chain-link-patterns.js';
import { usWeldedChainLinks } from '../tables/generated/us-welded-chain-links.js';
import { rowOf } from '../tables/rating-table.js';
import { note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { Provenance, SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { sharedUnits } from './shared-units.js';
import { type ChainGrade, isTradeSize, type TradeSize } from './trade-size.js';

/** Density of carbon and alloy steel in kg/m³: EN 1993-1-2:2005, 3.2.2(1), from memory. */
export const STEEL_DENSITY = 7850;

/** Real chain is heavier than its geometry by the flash of its welds: 1 to 3 percent, common practice. */
const MOST_WELD_FLASH = 0.03;

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
 * @param input.units `'us'` or `'si'`; omitted: `'us'` for inch sizes, for metric ones the system of the length
 * @throws RiggingError `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `NO_VALUE_IN_TABLE` (a pair that is not made, and grade 120,
 * whose link is often not round), `UNITS_REQUIRED` (a metric size and a length in feet), `NOT_POSITIVE`, `WRONG_KIND`
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
  const length = readPositive(input.length, 'length', 'length');
  const { link, lightest, source } = linkOf(size, grade, working);
  const units = isMetric(size) ? sharedUnits(input.units, [length, { value: link.d, unit: 'mm' }]) : (input.units ?? 'us');
  sharedUnits(units, []);

  const subject = grade === undefined ? `chain ${size}` : `chain ${size} grade ${grade}`;
  const answer = massOf(link, STEEL_DENSITY, length, units, working, subject);
  const lightestPerMeter = Math.min(...lightest.map((other) => kgPerMeter(other, STEEL_DENSITY)));
  const least = massIn(lightestPerMeter * valueIn(length, 'm'), units);
  const most = new Quantity(answer.mass.value * (1 + MOST_WELD_FLASH), answer.mass.unit);
  if (working.shown) {
    working.step({ subject, symbol: 'least m', expression: 'L · m/L at the greatest inside length', values: { L: length, 'm/L': { value: lightestPerMeter, unit: 'kg/m' } }, result: least });
    working.step({ subject, symbol: 'most m', expression: 'm · (1 + weld flash)', values: { m: answer.mass, 'weld flash': MOST_WELD_FLASH }, result: most });
  }
  working.cite(source);
  working.cite(chainLinkPatterns.source);
  working.assumptions.push(note(STEEL, { density: STEEL_DENSITY }));
  working.cautions.push(note(WELD_FLASH));
  if ((grade === undefined || grade === 43 || grade === 70) && (size === '1/4' || size === '3/8' || size === '1/2')) working.cautions.push(note(THICKER_WIRE));
  return makeResult(
    'chainMass',
    { ...answer, range: { least, most }, size, ...(grade === undefined ? {} : { grade }), wireDiameter: new Quantity(link.d, 'mm') },
    input,
    working,
  );
}

const STEEL = { code: 'STEEL_DENSITY', text: 'The chain is steel of {density} kg/m3.' };
const WELD_FLASH = { code: 'WELD_FLASH', text: 'Real chain weighs 1 to 3 percent more than its wire, from the flash of the welds; hooks and fittings are not counted.' };
const HEAVIEST_WIRE = { code: 'HEAVIEST_WIRE', text: 'No grade was given: the heaviest wire sold as {size} is taken, {wire}.' };
const SHORT_LINK = { code: 'SHORT_LINK', text: 'No greatest inside length is tabulated for this chain: the least mass is that of a short link of least width.' };
const THICKER_WIRE = {
  code: 'THICKER_WIRE',
  text: 'Grades 43 and 70 of this size also circulate in wire 1/32 in over the trade size, which weighs 4 to 8 percent more: measure the wire where it matters.',
};

/** The link to weigh, the links that may be lighter, and where the wire stands. */
function linkOf(size: string, grade: number | undefined, working: Working): { link: Link; lightest: Link[]; source: SourceRef } {
  if (grade === 120) {
    return fail('NO_VALUE_IN_TABLE', 'grade', 'a grade of round wire: 30, 43, 70, 80 or 100', grade, "The link of grade 120 chain is often not round: weigh a piece of it, or take the maker's mass per length.");
  }
  const short = chainLinkPatterns.rows['short-link'];
  const narrow = chainLinkPatterns.rows['short-link-minimum-width'];
  const shaped = (d: number, pattern: { pitch_over_d: number; inside_width_over_d: number }): Link => ({
    d,
    p: pattern.pitch_over_d * d,
    w: pattern.inside_width_over_d * d,
  });
  const lighter = ({ wire_mm: d, inside_length_max_in: p, inside_width_min_in: w }: LinkRow): Link => {
    if (p === undefined || w === undefined) working.assumptions.push(note(SHORT_LINK));
    return p === undefined || w === undefined ? shaped(d, narrow) : { d, p: p * 25.4, w: w * 25.4 };
  };

  if (isMetric(size)) {
    const d = Number.parseFloat(size);
    if (!(d > 0)) return fail('UNKNOWN_SIZE', 'size', 'a size above zero', size, 'Give the size as the trade writes it.');
    if (grade !== undefined) checkGrade(grade);
    return { link: shaped(d, short), lightest: [lighter({ wire_mm: d })], source: METRIC_WIRE };
  }
  const rows: { readonly [grade: number]: LinkRow } | undefined = rowOf<{ readonly [grade: number]: LinkRow }>(usWeldedChainLinks.rows, size);
  if (rows === undefined) {
    return fail('UNKNOWN_SIZE', 'size', `a trade size: ${Object.keys(usWeldedChainLinks.rows).join(', ')}, or millimeters such as '8 mm'`, size, 'Free text such as 5/16 in goes through parseTradeSize first.');
  }
  if (grade !== undefined) {
    const row = rowOf(rows, grade);
    if (row === undefined) {
      checkGrade(grade);
      return fail('NO_VALUE_IN_TABLE', 'grade', `a grade that ${size} is made in: ${Object.keys(rows).join(', ')}`, grade, 'Alloy chain is sold as 7/32 and 9/32 where other chain is 3/16 and 1/4. Check the size, or leave the grade out.');
    }
    return { link: shaped(row.wire_mm, short), lightest: [lighter(row)], source: wireSource(row) };
  }
  const all = Object.values(rows);
  const heaviest = all.reduce((one, other) => (other.wire_mm > one.wire_mm ? other : one));
  working.assumptions.push(note(HEAVIEST_WIRE, { size, wire: { value: heaviest.wire_mm, unit: 'mm' } }));
  // rows without an inside length are left to the others: every size has one
  const known = all.filter((row) => row.inside_length_max_in !== undefined);
  return { link: shaped(heaviest.wire_mm, short), lightest: known.map(lighter), source: wireSource(heaviest) };
}

const METRIC_WIRE: SourceRef = { document: 'EN 818, short link chain for lifting purposes', clause: 'nominal size is the wire; inside length 3 d, inside width at least 1.3 d', provenance: 'read', note: 'read in rows quoted from part 3' };

function isMetric(size: unknown): boolean {
  return isTradeSize(size) && size.endsWith(' mm');
}

function wireSource(row: LinkRow): SourceRef {
  const { source } = usWeldedChainLinks;
  return row.wire_provenance === undefined ? source : { ...source, provenance: row.wire_provenance };
}

function checkGrade(grade: number): void {
  if (![30, 43, 70, 80, 100].includes(grade)) fail('UNKNOWN_GRADE', 'grade', 'one of 30, 43, 70, 80, 100', grade, 'Grades are numbers.');
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
  const link = { d: valueIn(wire, 'mm'), p: valueIn(pitch, 'mm'), w: valueIn(width, 'mm') };
  if (!(link.w > link.d)) {
    fail('IMPOSSIBLE_GEOMETRY', 'insideWidth', `more than the wire, ${wire.value} ${wire.unit}`, `${width.value} ${width.unit}`, 'The next link must pass through: give the inside width, and the wire without its weld.');
  }
  if (!(link.p >= link.w)) {
    fail('IMPOSSIBLE_GEOMETRY', 'pitch', `at least the inside width, ${width.value} ${width.unit}`, `${pitch.value} ${pitch.unit}`, 'The pitch is the inside length of a link, its longer way.');
  }
  if (!(link.p > 2 * link.d)) {
    fail('IMPOSSIBLE_GEOMETRY', 'pitch', `more than twice the wire, ${wire.value} ${wire.unit}`, `${pitch.value} ${pitch.unit}`, 'Both neighbors must find room inside the link.');
  }
  const rho = density === undefined ? STEEL_DENSITY : valueIn(density, 'kg/m3');
  const answer = massOf(link, rho, length, units, working, 'chain');
  const linkMass = massIn((kgPerMeter(link, rho) * link.p) / 1000, units);
  if (density === undefined) working.assumptions.push(note(STEEL, { density: STEEL_DENSITY }));
  working.cite({ document: 'Geometry of a link of two straight legs and two half circles', provenance: 'derived' });
  working.cautions.push(note(WELD_FLASH));
  return makeResult('chainMassFromLink', { ...answer, linkMass }, input, working);
}

function massOf(link: Link, density: number, length: QuantityLike, units: UnitSystem, working: Working, subject: string): MassAnswer {
  const perMeter = kgPerMeter(link, density);
  const unit = units === 'us' ? 'lb/ft' : 'kg/m';
  const massPerLength = new Quantity(valueIn({ value: perMeter, unit: 'kg/m' }, unit), unit);
  const mass = massIn(perMeter * valueIn(length, 'm'), units);
  if (working.shown) {
    const { d, p, w } = link;
    working.step({
      subject,
      symbol: 'm/L',
      expression: 'ρ · (π/4) · d² · (2(p − w) + π(w + d)) / p',
      values: { ρ: { value: density, unit: 'kg/m3' }, d: { value: d, unit: 'mm' }, p: { value: p, unit: 'mm' }, w: { value: w, unit: 'mm' } },
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

function massIn(kilograms: number, units: UnitSystem): Quantity<'lb' | 'kg'> {
  const unit = units === 'us' ? 'lb' : 'kg';
  return new Quantity(valueIn({ value: kilograms, unit: 'kg' }, unit), unit);
}
