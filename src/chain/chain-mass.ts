import { fail } from '../errors.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact, compareExactSums } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { readSystem, sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { usWeldedChainLinks } from '../tables/generated/us-welded-chain-links.js';
import { rowOf } from '../tables/rating-table.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { CHAIN_GRADES, type ChainGrade, type TradeSize } from './trade-size.js';

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
  /** `least`: a narrow link of the greatest inside length; `most`: `mass` and 3 percent of weld flash. */
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
 * is the upper bound for round wire of this diameter before weld flash. `range.least` is a link 1.3 d wide inside, as
 * long as the table lets it be, or 3 d where it does not say; `range.most` is `mass` plus 3 percent of weld flash; thicker wire than the listed one lies beyond it.
 *
 * @param input.size trade size, such as `'3/8'`; a metric size such as `'8 mm'` is taken as EN short link, whose
 * size is its wire
 * @param input.grade 30, 43, 70, 80 or 100; omitted: the heaviest wire of the size, as an assumption (5/16: 8.7 mm)
 * @param input.length length of the chain, above zero
 * @param input.units `'us'` or `'si'`; omitted: `'us'` for inch sizes, `'si'` for metric ones
 * @throws RiggingError `UNKNOWN_SIZE`, `UNKNOWN_GRADE`, `NO_VALUE_IN_TABLE` (a size that is not made in the grade, and grade 120, whose link
 * is often not round), `NOT_POSITIVE`, `WRONG_KIND`
 * @validity open links of round wire, no stud; hooks and other fittings not counted
 * @source wire and greatest inside length: association specification of 2003, from memory; geometry: derived
 * @example
 * chainMass({ size: '1/2', grade: 70, length: '20 ft', units: 'si' }).massPerLength.value.toFixed(2)
 * // => '3.73'
 */
export function chainMass(
  input: Options & { readonly size: TradeSize; readonly grade?: ChainGrade; readonly length: QuantityInput<'length'> },
): ChainMass {
  const length = readPositive(input?.length, 'length', 'length');
  const { size, grade } = input;
  const working = new Working(input.working !== false);
  const metric = metricRows(size);
  const units = readSystem(input.units, metric ? 'si' : 'us');
  const made = metric ?? inchRows(size);
  const rows = grade === undefined ? Object.values(made) : [madeIn(made, grade)];

  const d = Math.max(...rows.map(({ wire_mm }) => wire_mm));
  const [lightest] = rows.map(longestLink).sort((a, b) => kgPerMeter(a) - kgPerMeter(b)) as [Link];
  const answer = massOf(working, `chain ${size}`, { d, p: 3 * d, w: 1.4 * d }, length, units);
  const least = massOf(working, `lightest chain ${size}`, lightest, length, units).mass;
  const most = new Quantity(answer.mass.value * MOST_WELD_FLASH, answer.mass.unit);

  working.cite(metric ? METRIC_WIRE : usWeldedChainLinks.source);
  working.cite(LINK_GEOMETRY);
  if (grade === undefined) working.assumptions.push(HEAVIEST_WIRE);
  working.cautions.push(WELD_FLASH);
  return makeResult(
    'chainMass',
    { ...answer, range: { least, most }, size, ...(grade && { grade }), wireDiameter: new Quantity(d, 'mm') },
    input,
    working,
  );
}

const LINK_GEOMETRY: SourceRef = { document: 'Geometry of a link', provenance: 'derived' };
const METRIC_WIRE: SourceRef = { document: 'EN 818, short link chain', provenance: 'read' };

const HEAVIEST_WIRE: Note = /* @__PURE__ */ note('HEAVIEST_WIRE');
const WELD_FLASH: Note = /* @__PURE__ */ note('WELD_FLASH');

type Rows = { readonly [grade: number]: LinkRow };

function inchRows(size: string): Rows {
  const table: { readonly [size: string]: Rows } = usWeldedChainLinks.rows;
  const sizes = `${Object.keys(table).join(', ')}, or as '8 mm'`;
  return rowOf(table, size) ?? fail('UNKNOWN_SIZE', 'size', sizes, size, 'Free text goes through parseTradeSize.');
}

/** A metric size is the wire, in every grade; none for other sizes. */
function metricRows(size: string): Rows | undefined {
  const metric = typeof size === 'string' && /^\d{1,2}(\.\d)? mm$/.test(size);
  const row = { wire_mm: metric ? Number.parseFloat(size) : 0 };
  return row.wire_mm > 0 ? { 30: row, 43: row, 70: row, 80: row, 100: row } : undefined;
}

function madeIn(rows: Rows, grade: ChainGrade): LinkRow {
  const known = CHAIN_GRADES.includes(grade);
  const row = known ? rowOf(rows, grade) : undefined;
  const code = known ? 'NO_VALUE_IN_TABLE' : 'UNKNOWN_GRADE';
  const grades = `one of ${Object.keys(rows).join(', ')}`;
  return row ?? fail(code, 'grade', grades, grade, 'Weigh the chain, or leave the grade out.');
}

/**
 * The lightest link a row allows: as long as it may be, and narrow. This and the short link above are the rows
 * `short-link-minimum-width` and `short-link` of reference-tables/chain-link-patterns, kept equal by a test; written
 * out so that the whole table does not travel with this function.
 */
function longestLink({ wire_mm: d, inside_length_max_in: inches }: LinkRow): Link {
  return { d, p: inches === undefined ? 3 * d : inches * 25.4, w: 1.3 * d };
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
  const length = readPositive(input?.length, 'length', 'length');
  const working = new Working(input.working !== false);
  const wire = readPositive(input.wireDiameter, 'length', 'wireDiameter');
  const pitch = readPositive(input.pitch, 'length', 'pitch');
  const width = readPositive(input.insideWidth, 'length', 'insideWidth');
  const density = readOptional(input.density, 'density', 'density');
  const units = sharedUnits(input.units, [length, wire, pitch, width, density]);
  if (compareExact(width, wire) <= 0) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'insideWidth',
      `more than the wire, ${wire}`,
      `${width}`,
      'The next link must pass through.',
    );
  }
  if (compareExact(pitch, width) < 0) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'pitch',
      `at least the inside width, ${width}`,
      `${pitch}`,
      'It is the longer way inside a link.',
    );
  }
  if (compareExactSums([{ quantity: pitch }], [{ quantity: wire, times: [2] }]) <= 0) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'pitch',
      `more than twice the wire, ${wire}`,
      `${pitch}`,
      'Both neighbors need room in the link.',
    );
  }
  const link = { d: inUnit(wire, 'mm').value, p: inUnit(pitch, 'mm').value, w: inUnit(width, 'mm').value };
  const rho = density === undefined ? STEEL_DENSITY : inUnit(density, 'kg/m3').value;
  const answer = massOf(working, 'chain', link, length, units, rho);
  const linkMass = inUnit({ value: kgPerMeter(link, rho) * link.p * 1e-3, unit: 'kg' }, answer.mass.unit);
  if (density === undefined) working.assumptions.push(STEEL);
  working.cite(LINK_GEOMETRY);
  working.cautions.push(WELD_FLASH);
  return makeResult('chainMassFromLink', { ...answer, linkMass }, input, working);
}

const STEEL: Note = /* @__PURE__ */ note('STEEL_DENSITY', { density: { value: STEEL_DENSITY, unit: 'kg/m3' } });

function massOf(
  working: Working,
  subject: string,
  link: Link,
  length: QuantityLike,
  units: UnitSystem,
  density = STEEL_DENSITY,
): MassAnswer {
  const [unit, perLength] = units === 'us' ? (['lb', 'lb/ft'] as const) : (['kg', 'kg/m'] as const);
  const perMeter = kgPerMeter(link, density);
  const massPerLength = inUnit({ value: perMeter, unit: 'kg/m' }, perLength);
  const mass = inUnit({ value: perMeter * inUnit(length, 'm').value, unit: 'kg' }, unit);
  const { d, p, w } = link;
  const inMm = (value: number) => ({ value, unit: 'mm' }) as const;
  working.step(
    subject,
    'm/L',
    'ρ · π/4 · d² · (2(p − w) + π(w + d)) / p',
    { ρ: { value: density, unit: 'kg/m3' }, d: inMm(d), p: inMm(p), w: inMm(w) },
    massPerLength,
  );
  working.step(subject, 'm', 'L · m/L', { L: length, 'm/L': massPerLength }, mass);
  return { mass, massPerLength };
}

function kgPerMeter({ d, p, w }: Link, density = STEEL_DENSITY): number {
  const centerline = 2 * (p - w) + Math.PI * (w + d);
  return (density * 1e-6 * (Math.PI / 4) * d * d * centerline) / p;
}
