import type { ChainMass } from '../chain/chain-mass.js';
import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { decimalProduct } from '../quantities/decimal.js';
import { compareExact, compareExactSums, type Ratio, ratioOf, stepsToCover } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { LengthUnit, UnitSystem } from '../quantities/units.js';
import { chainStorageVolume } from '../tables/generated/chain-storage-volume.js';
import { en818LinkLimits } from '../tables/generated/en818-link-limits.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { CHAIN_MASS, readWeighedChain } from './weighed-chain.js';

/** Chain to be stowed: what `chainMass` found, or its wire and its length. */
export type StowedChain =
  | ChainMass
  | { readonly wireDiameter: QuantityInput<'length'>; readonly length: QuantityInput<'length'> };

/** Inside dimensions of a box. */
export interface StowageBox {
  readonly length: QuantityInput<'length'>;
  readonly width: QuantityInput<'length'>;
  readonly height: QuantityInput<'length'>;
}

/** A pipe that chain is laid out in, folded where it is longer. */
export interface StowagePipe {
  readonly insideDiameter: QuantityInput<'length'>;
  readonly length: QuantityInput<'length'>;
}

/** A volume to read; there is no arithmetic on volumes here. */
export type Volume = QuantityLike<'in3' | 'L'>;

/** Why it does not go in, or what must be known before it can be decided. */
export type StowageFit =
  | { readonly verdict: 'pass' }
  | { readonly verdict: 'fail'; readonly because: Note }
  | { readonly verdict: 'undetermined'; readonly missing: readonly Note[] };

export type BoxFit = StowageFit & {
  /** Share of the box that the pile takes; above 1 it overflows. */
  readonly filled: { readonly least: number; readonly most: number };
};

export type PipeFit = StowageFit & {
  /** How many times the chain lies side by side. */
  readonly strands: number;
  /** Inside diameter that surely takes them; null for more strands than are decided here. */
  readonly enoughDiameter: Quantity<'in' | 'mm'> | null;
};

export interface Stowage extends ResultBase<'stowage'> {
  /** Of the piled chain: stowed tight, and as clear room to provide. */
  readonly volume: { readonly least: Volume; readonly most: Volume };
  readonly box?: BoxFit;
  readonly pipe?: PipeFit;
}

/**
 * How much room chain takes: its piled volume, whether it goes into a box, and whether it goes into a pipe laid out straight.
 *
 * V = c · d² · L (V in m³, d in mm, L in m) with c = 1.1/100000 for a pile that stowed itself, 1/49000 and 1/48612 for clear room to
 * provide: rules for anchor chain that differ by two, so the answer is a range. A box passes when the most fits, fails when the
 * least does not, and is undetermined between. In a pipe n = ceil(L / (pipe − 2 · d)) strands lie side by side; each stays within a
 * circle of the outside width b of its links, and n circles in a ring need b · (1 + 1/sin(π/n)), one b and seven 3 · b. That
 * is enough; whether strands nest in less is not known.
 *
 * @param input.chain a result of {@link chainMass}, or `{ wireDiameter, length }`
 * @param input.outsideWidth b, measured over the outside of a link, across; omitted: 3.7 · d, the most of a short link
 * @param input.box inside `{ length, width, height }`
 * @param input.pipe `{ insideDiameter, length }`
 * @param input.units `'us'` (in3, in) or `'si'` (L, mm); omitted: the system that all inputs share
 * @throws RiggingError `MISSING_FIELD`, `IMPOSSIBLE_GEOMETRY` (links no wider than two wires, a pipe
 * no longer than two wires), `UNITS_REQUIRED`, `NOT_POSITIVE`, `WRONG_KIND`, `NOT_FINITE`
 * @validity open link chain alone, no fittings; a heap, not chain laid in rows
 * @source rules for classification of seagoing ships, section 18 E, and a handbook of boat mechanical systems, formula 24-6, both
 * read in pages quoting them; outside width: EN 818; circles in a ring: derived
 * @example
 * stowage({
 *   chain: chainMass({ size: '1/4', grade: 30, length: '10 ft' }),
 *   box: { length: '12 in', width: '5 in', height: '8 in' },
 * }).box?.verdict
 * // => 'pass'
 */
export function stowage(input: {
  readonly chain: StowedChain;
  readonly outsideWidth?: QuantityInput<'length'>;
  readonly box?: StowageBox;
  readonly pipe?: StowagePipe;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): Stowage {
  checkObject(input, '', '{ chain, box or pipe }');
  const working = new Working(input.working !== false);
  const chain = readChain(input.chain, input.outsideWidth, working);
  const box = input.box === undefined ? undefined : readBox(input.box);
  const pipe = input.pipe === undefined ? undefined : readPipe(input.pipe);
  const given = [...chain.given, ...(box ?? []), ...Object.values(pipe ?? {})];
  const units = sharedUnits(input.units, given);

  const piles = pilesOf(chain);
  const cube = units === 'us' ? { unit: 'in3' as const, mm3: 25.4 ** 3 } : { unit: 'L' as const, mm3: 1e6 };
  const inCubes = ({ mm3 }: Pile): Volume => ({ value: new Quantity(mm3 / cube.mm3, 'mm').value, unit: cube.unit });
  const [least, most] = [piles[0] as Pile, piles[piles.length - 1] as Pile];
  if (working.shown) {
    const values = { d: shown(chain.d, 'si'), L: inMeters(chain.length) };
    for (const { rule, numerator, divisor, mm3 } of piles) {
      working.step(rule, 'V', `${numerator} · d² · L / ${divisor}, in m³`, values, mm3 / 1e9);
    }
  }
  working.cite(chainStorageVolume.source);
  working.cautions.push(TWO_RULES_OF_STOWAGE, CHAIN_ONLY_STOWED);
  return makeResult(
    'stowage',
    {
      volume: { least: inCubes(least), most: inCubes(most) },
      ...(box && { box: fitBox(box, least, most, chain, units, working) }),
      ...(pipe && { pipe: fitPipe(pipe, chain, units, working) }),
    },
    input,
    working,
  );
}

const TWO_RULES_OF_STOWAGE: Note = /* @__PURE__ */ note('TWO_RULES_OF_STOWAGE');
const CHAIN_ONLY_STOWED: Note = /* @__PURE__ */ note('CHAIN_ONLY_STOWED');
const ONLY_IF_STOWED_TIGHT: Note = /* @__PURE__ */ note('ONLY_IF_STOWED_TIGHT');
const CIRCLES = { document: 'Circles of one size in a ring inside a circle', provenance: 'derived' } as const;

type Length = Quantity<LengthUnit>;

/** In mm, to fifteen digits: the decimals that were written. */
interface ReadChain {
  readonly d: number;
  readonly length: number;
  readonly width: number;
  readonly widthMeasured: boolean;
  readonly given: readonly (QuantityLike | undefined)[];
}

const inMm = (length: QuantityLike) => Number(inUnit(length, 'mm').value.toPrecision(15));

function readChain(chain: StowedChain, outsideWidth: QuantityInput<'length'> | undefined, working: Working): ReadChain {
  checkObject(chain, 'chain', 'a result of chainMass, or { wireDiameter, length }');
  const wire = readPositive(chain.wireDiameter, 'length', 'chain.wireDiameter');
  const measured = readOptional(outsideWidth, 'length', 'outsideWidth');
  const weighed = 'massPerLength' in chain ? readWeighedChain(chain, 'chain') : undefined;
  const length = weighed?.length ?? readPositive((chain as { length?: unknown }).length, 'length', 'chain.length');
  const d = inMm(wire);
  const width = measured === undefined ? decimalProduct(widest(), d) : inMm(measured);
  if (width <= 2 * d) {
    fail('IMPOSSIBLE_GEOMETRY', 'outsideWidth', 'more than two wires', `${measured}`, 'Measure over the link, across.');
  }
  if (weighed !== undefined) working.cite(CHAIN_MASS);
  const given = [weighed?.mass ?? wire, length, measured];
  return { d, length: inMm(length), width, widthMeasured: measured !== undefined, given };
}

/** Outside width of a link over its wire, at most. */
const widest = () => en818LinkLimits.rows['short-link'].outside_width_most_over_d;

function readBox(box: StowageBox): Length[] {
  checkObject(box, 'box', '{ length, width, height }');
  const sides = ['length', 'width', 'height'] as const;
  return sides.map((side) => readPositive(box[side], 'length', `box.${side}`));
}

function readPipe(pipe: StowagePipe): { readonly insideDiameter: Length; readonly length: Length } {
  checkObject(pipe, 'pipe', '{ insideDiameter, length }');
  return {
    insideDiameter: readPositive(pipe.insideDiameter, 'length', 'pipe.insideDiameter'),
    length: readPositive(pipe.length, 'length', 'pipe.length'),
  };
}

interface Pile {
  readonly rule: string;
  readonly numerator: number;
  readonly divisor: number;
  readonly mm3: number;
}

/** The pile by each rule, the smallest first. */
function pilesOf({ d, length }: ReadChain): Pile[] {
  return Object.entries(chainStorageVolume.rows)
    .map(([rule, row]) => ({ rule, ...row, mm3: (row.numerator * d * d * length * 1e6) / row.divisor }))
    .sort((one, other) => one.mm3 - other.mm3);
}

function fitBox(
  box: readonly Length[],
  leastPile: Pile,
  mostPile: Pile,
  chain: ReadChain,
  units: UnitSystem,
  working: Working,
): BoxFit {
  const [a, b, c] = box.map(inMm) as [number, number, number];
  const room = a * b * c;
  if (!(room > 0)) fail('NOT_FINITE', 'box', 'a box of a possible size', room, 'Check the numbers.');
  const share = ({ numerator, divisor, mm3 }: Pile): Ratio =>
    ratioOf(mm3, room, () =>
      compareExactSums(
        [{ quantity: { value: chain.length, unit: 'mm' }, times: [chain.d, chain.d, numerator, 1e6] }],
        [{ quantity: { value: a, unit: 'mm' }, times: [b, c, divisor] }],
      ),
    );
  const [least, most] = [share(leastPile), share(mostPile)];
  const filled = { least: least.utilization as number, most: most.utilization as number };
  const show = (symbol: string, { mm3 }: Pile, share: number) => {
    const values = { V: mm3 / 1e9, length: inMeters(a), width: inMeters(b), height: inMeters(c) };
    working.step('box', symbol, 'V / (length · width · height)', values, share);
  };
  show('least filled', leastPile, filled.least);
  show('most filled', mostPile, filled.most);
  if (!least.fits) return { verdict: 'fail', because: OVERFLOWS, filled };
  const narrowest = Math.min(a, b, c);
  if (narrowest < chain.width) {
    const widths = { least: shown(narrowest, units), width: shown(chain.width, units) };
    return { verdict: 'undetermined', missing: [note('BOX_NARROWER_THAN_LINK', widths)], filled };
  }
  if (!most.fits) return { verdict: 'undetermined', missing: [ONLY_IF_STOWED_TIGHT], filled };
  return { verdict: 'pass', filled };
}

const inMeters = (mm: number) => inUnit({ value: mm, unit: 'mm' }, 'm');

const OVERFLOWS: Note = /* @__PURE__ */ note('PILE_OVERFLOWS');

const shown = (mm: number, units: UnitSystem) => inUnit({ value: mm, unit: 'mm' }, units === 'us' ? 'in' : 'mm');

/** Diameter around 1 to 7 equal circles over the diameter of one: 1 + 1/sin(π/n) for a ring, 3 for a ring of six around one. */
const AROUND = [1, 2, 2.1547005383792515, 2.414213562373095, 2.7013016167040798, 3, 3];

function fitPipe(
  { insideDiameter, length }: { readonly insideDiameter: Length; readonly length: Length },
  { d, width, widthMeasured, length: chainLength }: ReadChain,
  units: UnitSystem,
  working: Working,
): PipeFit {
  const run = Number((inMm(length) - 2 * d).toPrecision(15));
  if (!(run > 0)) {
    fail('IMPOSSIBLE_GEOMETRY', 'pipe.length', 'longer than two wires', `${length}`, 'No link goes into it.');
  }
  const strands = stepsToCover({ value: chainLength, unit: 'mm' }, { value: run, unit: 'mm' });
  const around = AROUND[strands - 1];
  const b = { value: width, unit: 'mm' } as const;
  const enough = around === undefined ? null : { value: decimalProduct(around, width), unit: 'mm' as const };
  const enoughDiameter = enough && shown(enough.value, units);
  const values = { L: shown(chainLength, units), pipe: length, d: shown(d, units) };
  working.step('pipe', 'n', 'ceil(L / (pipe − 2 · d))', values, strands);
  if (enoughDiameter !== null) {
    working.step('pipe', 'enough', `${around} · b`, { b: shown(width, units), n: strands }, enoughDiameter);
  }
  working.cite(CIRCLES);
  if (!widthMeasured) {
    working.assumptions.push(note('WIDEST_SHORT_LINK', { width: shown(width, units), times: widest() }));
    working.cite(en818LinkLimits.source);
  }
  const answer = { strands, enoughDiameter };
  if (enough !== null && compareExact(enough, insideDiameter) <= 0) return { verdict: 'pass', ...answer };
  const sizes = { width: shown(width, units), inside: insideDiameter };
  const tooWide = compareExact(b, insideDiameter) > 0;
  if (tooWide && widthMeasured) return { verdict: 'fail', because: note('WIDER_THAN_PIPE', sizes), ...answer };
  const missing = tooWide
    ? note('LINK_NOT_MEASURED', sizes)
    : enoughDiameter === null
      ? note('TOO_MANY_STRANDS', { strands, most: AROUND.length })
      : note('STRANDS_MAY_NEST', { strands, ...sizes, needed: enoughDiameter });
  return { verdict: 'undetermined', missing: [missing], ...answer };
}
