import type { Part } from '../assembly/part.js';
import type { ChainGrade, TradeSize } from '../chain/trade-size.js';
import { fail, RiggingError, type RiggingIssue } from '../errors.js';
import { fits } from '../hardware/fits.js';
import { checkFlag, checkObject, checkOneOf } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { Quantity, type QuantityInput } from '../quantities/quantity.js';
import { readOptional } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { checkSecurement, type SecurementCheck } from '../securement/check-securement.js';
import { type Plan, readPlan, type TieDown } from '../securement/plan.js';
import { checkRules, type RuleSet } from '../securement/rule-set.js';
import { overallVerdict, type Verdict } from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type Counted, sumOfDecimals, sumOfMasses } from './exact-totals.js';
import { type Demand, type Demands, readDemands, tieDownOf, type WantedTieDown } from './kit-demand.js';
import {
  type ItemFault,
  type ItemSource,
  type KitItem,
  type KitKind,
  PRICE_SCALE,
  type ReadItems,
  readItems,
} from './kit-item.js';
import { type KitObstacle, obstaclesOf } from './kit-obstacles.js';
import { type Piece, type Pieces, partsOf, readPieces } from './kit-pieces.js';
import { type Ceilings, type Chosen, countPieces, type KitObjective, KitSolver, type Solved } from './kit-solver.js';

/** An item in a kit. */
export interface KitLine {
  readonly source: ItemSource;
  readonly id: string;
  readonly kind: KitKind;
  readonly pieces: number;
  /** Of all its pieces. */
  readonly mass: Quantity<'lb' | 'kg'>;
  /** Of one piece and of all; 0 for what is owned, null where no price is stated. */
  readonly price: number | null;
  readonly cost: number | null;
}

/** One tie-down of a kit, by the ids of its items. */
export interface KitTieDown {
  readonly id: string;
  readonly items: readonly { readonly source: ItemSource; readonly id: string; readonly kind: KitKind }[];
  readonly spares: readonly { readonly source: ItemSource; readonly id: string; readonly kind: KitKind }[];
}

/** What a kit comes to, before taxes and freight. */
export interface KitTotals {
  /** Null where a price is not stated. */
  readonly price: number | null;
  /** Null where no row states one. */
  readonly currency: string | null;
  readonly mass: Quantity<'lb' | 'kg'>;
  /** Pieces, spares included; a chain with hooks on it is one. */
  readonly parts: number;
  /** Of those, pieces that are not owned. */
  readonly bought: number;
}

/** A set of items that makes every tie-down. */
export interface KitChoice {
  readonly totals: KitTotals;
  readonly bill: readonly KitLine[];
  readonly tieDowns: readonly KitTieDown[];
}

export interface Kit extends ResultBase<'buildKit'> {
  /** `pass`: this kit, and its plan passes. `fail`: there is none, see `obstacles`. `undetermined`: a fact is missing first. */
  readonly verdict: Verdict;
  readonly objective: KitObjective;
  /** No kit is better by the objective. False where that could not be shown in some seconds; the kit passes all the same. */
  readonly proved: boolean;
  /** Where it is not proved: no kit is below this. A price, a number of pieces, or a mass in the unit of the totals. */
  readonly atLeast: number | null;
  /** Null without a kit. */
  readonly totals: KitTotals | null;
  /** What to hand over, each item once, in the order of the tie-downs. */
  readonly bill: readonly KitLine[];
  readonly tieDowns: readonly KitTieDown[];
  /** The plan with these tie-downs, for {@link checkSecurement}, a drawing or a sheet. */
  readonly plan: Plan | null;
  /** What the rule set says of that plan. */
  readonly check: SecurementCheck | null;
  /** Other kits on the way from the cheapest to the lightest, where they were asked for. */
  readonly alternatives: readonly KitChoice[];
  /** Without a kit: what stands in the way, and how far the nearest is from it. */
  readonly obstacles: readonly KitObstacle[];
  /** Rows that were left out, with `skipBadRows`. */
  readonly faults: readonly ItemFault[];
}

export interface KitInput {
  readonly rules: RuleSet;
  readonly vehicle?: Plan['vehicle'];
  readonly articles: Plan['articles'];
  readonly tieDowns: readonly WantedTieDown[];
  /** What is owned already; every row with its count. */
  readonly stock?: readonly KitItem[];
  /** What can be bought. */
  readonly catalog?: readonly KitItem[];
  readonly objective: KitObjective;
  /** The most that the kit may cost, weigh and count. */
  readonly limits?: {
    readonly price?: number;
    readonly mass?: QuantityInput<'mass'>;
    readonly parts?: number;
  };
  /** Of all kits only those with the fewest bought pieces come into question. */
  readonly stockFirst?: boolean;
  /** How many kits to show on the curve of price against mass, 2 to 20; left out: none. */
  readonly alternatives?: number;
  /** The currency of the catalog; left out: that of its first price. */
  readonly currency?: string;
  /** Goes on without rows that have a fault; they are listed in `faults`. */
  readonly skipBadRows?: boolean;
  readonly units?: UnitSystem;
  readonly working?: boolean;
}

/**
 * The best set of chains, binders and hooks for a plan, from what is owned and what a dealer has: the cheapest, the
 * lightest or the one of fewest pieces, such that the plan passes its rule set.
 *
 * min sum(price, mass or 1 of every piece), where each tie-down has a chain that is long enough, its fittings go with that
 * chain, every piece is rated by its mark or by the rule set's table, no item is used more often than there is of it, and
 * for every article sum(credit · min(rating of every piece and anchor point)) reaches what the rule set asks. The optimum
 * is proved, unless that would take more than some seconds (`proved`, `atLeast`). Of kits that are equal by it a lighter one is taken (a cheaper one, where mass or pieces are the objective), as
 * far as a short search finds one.
 *
 * What is owned costs nothing; it is used where that is better by the objective. With `stockFirst` the number of bought
 * pieces is made as small as it can be, and the objective decides among those kits alone.
 *
 * @param input.rules a rule set that counts tie-downs and adds up working load limits, such as {@link us49cfr393_2024}
 * @param input.articles what is on the deck, as for {@link checkSecurement}
 * @param input.tieDowns each with `holds`, `path`, `chainLength`, its rated `anchors`, and `fittings` (left out: a binder
 * and two grab hooks)
 * @param input.stock items owned, each with its `count`
 * @param input.catalog items for sale; prices are plain numbers in one currency, and add up as the decimals they show
 * @param input.objective `'price'`, `'mass'` or `'parts'`
 * @param input.limits the most of each: `price`, `mass`, `parts`
 * @param input.units `'us'` or `'si'` for masses in the answer; omitted: the rule set's own
 * @throws RiggingError for the first bad row (see {@link checkItems} for all of them), `UNKNOWN_RULE_SET` (one by forces),
 * `EMPTY_LIST`, `DUPLICATE_ID`, `UNKNOWN_REFERENCE`, `UNKNOWN_VALUE`, `MISSING_FIELD`, `NEGATIVE`, `NOT_A_WHOLE_NUMBER`,
 * `TOO_LARGE` (so many combinations that no kit was found) and what the parts and quantities throw
 * @validity pieces as sold: no chain is cut; taxes and freight are not counted; masses of kits that differ by less than one
 * part in a billion of the heaviest count as equal; which shackle goes onto which point is not looked at
 * @source the rule set's own clauses; hooks as {@link fits}; binder and hooks as usual fittings: common practice
 * @example
 * const anchors = [
 *   { id: 'deck', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
 *   { id: 'tractor', kind: 'anchor', at: 'cargo', markedWll: '5000 lb' },
 * ] as const;
 * const chain = { kind: 'chain', grade: 70, length: '20 ft', includes: ['grab-hook', 'grab-hook'] } as const;
 * const binder = { kind: 'binder', chainSizes: ['1/4', '5/16'] } as const;
 * const kit = buildKit({
 *   rules: us49cfr393_2024,
 *   articles: [{ id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft' }],
 *   tieDowns: ['front', 'rear'].map((id) => ({ id, holds: 'tractor', path: 'vehicle-to-cargo', chainLength: '12 ft', anchors })),
 *   catalog: [
 *     { ...chain, id: 'quarter', size: '1/4', mass: '13 lb', price: 38.5 },
 *     { ...chain, id: 'five-sixteenths', size: '5/16', mass: '21 lb', price: 52 },
 *     { ...binder, id: 'lever', markedWll: '2600 lb', mass: '6 lb', price: 24.95 },
 *   ],
 *   objective: 'price',
 * });
 * console.log(kit.verdict, kit.totals?.price, kit.bill.map(({ id, pieces }) => `${pieces} ${id}`));
 * // => pass 126.9 [ '2 quarter', '2 lever' ]
 */
export function buildKit(input: KitInput): Kit {
  checkObject(input, '', '{ rules, articles, tieDowns, catalog, objective }');
  const { rules, objective, stock = [], catalog = [], stockFirst, alternatives } = input;
  checkRules(rules, 'judgePlan');
  checkOneOf(objective, ['price', 'mass', 'parts'], 'objective');
  checkFlag(stockFirst, 'stockFirst');
  checkFlag(input.skipBadRows, 'skipBadRows');
  const limits = readLimits(input.limits);
  const points = readPoints(alternatives);
  const units = readSystem(input.units, rules.units);
  const plan = planOf(input);
  const demands = readDemands(rules, plan, input.tieDowns);
  const prices = objective === 'price' || limits.price !== undefined || points > 0;
  const { items, faults } = readBoth(stock, catalog, { currency: input.currency, prices });
  if (faults.length > 0 && input.skipBadRows !== true) refuseRows(faults);
  const working = new Working(input.working !== false);

  const pieces = readPieces(items, demands);
  const passes = (chosen: Chosen) => {
    const whole = { ...plan, tieDowns: tieDownsOf(demands, chosen) };
    const context = { working: new Working(false), units: rules.units };
    return overallVerdict(rules.judgePlan(whole, readPlan(whole), context).checks) === 'pass';
  };
  const solver = new KitSolver(demands, pieces, passes);
  const possible = demands.unmet.length === 0 && demands.unratedAnchors.length === 0;
  const ceilings = possible && stockFirst === true ? fewestBought(solver, limits) : { ...limits, proved: true };
  const solved = possible && ceilings !== null ? best(solver, objective, ceilings) : null;
  sayAssumptions(working, input, demands);
  const shown = { unit: massUnitOf(units), currency: input.currency ?? currencyOf(items) } as const;
  if (solved === null || ceilings === null) {
    const obstacles = obstaclesOf(demands, pieces, solver, limits);
    const verdict = obstacles.every(({ open }) => open) ? ('undetermined' as const) : ('fail' as const);
    return makeResult(
      'buildKit',
      {
        verdict,
        objective,
        proved: true,
        atLeast: null,
        totals: null,
        bill: [],
        tieDowns: [],
        plan: null,
        check: null,
        alternatives: [],
        obstacles,
        faults,
      },
      input,
      working,
    );
  }
  const { kit: chosen, atLeast } = solved;
  const whole = { ...plan, tieDowns: tieDownsOf(demands, chosen) };
  const check = checkSecurement({ ...whole, rules, units, working: working.shown });
  const kit = choiceOf(demands, chosen, shown);
  const proved = atLeast === null && ceilings.proved;
  if (!proved) working.cautions.push(note('KIT_NOT_PROVED'));
  showTotals(working, kit);
  cautionsOf(working, chosen);
  for (const source of check.sources) working.cite(source);
  working.cautions.push(...check.cautions);
  return makeResult(
    'buildKit',
    {
      verdict: check.verdict,
      objective,
      proved,
      atLeast: atLeast === null ? null : shownAs(objective, atLeast, demands, shown.unit),
      ...kit,
      plan: whole,
      check,
      alternatives: points === 0 ? [] : curve(solver, ceilings, points).map((each) => choiceOf(demands, each, shown)),
      obstacles: [],
      faults,
    },
    input,
    working,
  );
}

/**
 * Everything that is wrong with a catalog or a stock list, row by row: sizes, marks and masses that do not read, ids used
 * twice, prices below zero or in two currencies.
 *
 * @param input.stock items owned, each with its `count`
 * @param input.catalog items for sale
 * @param input.currency the currency wanted; omitted: that of the first price
 * @param input.prices true where every row for sale needs a price, as for `objective: 'price'`
 * @throws RiggingError `EMPTY_LIST` for what is no list; whatever is wrong with a row is returned
 * @example
 * checkItems({
 *   catalog: [
 *     { id: 'chain', kind: 'chain', size: '5/16', grade: 70, length: '20 ft', mass: '21 lb', price: -52 },
 *     { id: 'chain', kind: 'binder', chainSizes: ['5/16'], markedWll: '17 ft' as never, mass: '9 lb' },
 *   ],
 * }).map(({ row, path, code }) => `row ${row}, ${path}: ${code}`)
 * // => [
 * //      'row 1, catalog[0].price: NEGATIVE',
 * //      'row 2, catalog[1].id: DUPLICATE_ID',
 * //      'row 2, catalog[1].markedWll: WRONG_KIND'
 * //    ]
 */
export function checkItems(input: {
  readonly stock?: readonly KitItem[];
  readonly catalog?: readonly KitItem[];
  readonly currency?: string;
  readonly prices?: boolean;
}): readonly ItemFault[] {
  checkObject(input, '', '{ stock, catalog }');
  const { stock = [], catalog = [], currency, prices = false } = input;
  return readBoth(stock, catalog, { currency, prices }).faults;
}

function readBoth(
  stock: readonly KitItem[],
  catalog: readonly KitItem[],
  needs: { readonly currency: string | undefined; readonly prices: boolean },
): ReadItems {
  const owned = readItems(stock, 'stock', needs);
  const sold = readItems(catalog, 'catalog', needs);
  return { items: [...owned.items, ...sold.items], faults: [...owned.faults, ...sold.faults] };
}

function refuseRows(faults: readonly ItemFault[]): never {
  const { row: _, ...issue } = faults[0] as ItemFault;
  const more = faults.length === 1 ? '' : ` ${faults.length - 1} more faults: checkItems lists them all.`;
  throw new RiggingError({ ...(issue as RiggingIssue), remedy: `${issue.remedy}${more} skipBadRows goes on without.` });
}

function planOf({ vehicle, articles }: KitInput): Pick<Plan, 'vehicle' | 'articles'> {
  return { ...(vehicle !== undefined && { vehicle }), articles };
}

function readLimits(limits: KitInput['limits'] = {}): Ceilings {
  checkObject(limits, 'limits', '{ price, mass, parts }');
  const { price, parts } = limits;
  if (price !== undefined && !(Number.isFinite(price) && price >= 0)) {
    fail('NEGATIVE', 'limits.price', 'a sum of money, 0 or more', price, 'Leave it out where there is no limit.');
  }
  if (parts !== undefined && !(Number.isSafeInteger(parts) && parts >= 0)) {
    fail('NOT_A_WHOLE_NUMBER', 'limits.parts', 'a number of pieces', parts, 'Leave it out where there is no limit.');
  }
  const mass = readOptional(limits.mass, 'mass', 'limits.mass');
  return {
    ...(price !== undefined && { price }),
    ...(mass !== undefined && { mass }),
    ...(parts !== undefined && { parts }),
  };
}

const MOST_POINTS = 20;

function readPoints(alternatives: unknown): number {
  if (alternatives === undefined) return 0;
  const points = alternatives as number;
  if (Number.isInteger(points) && points >= 2 && points <= MOST_POINTS) return points;
  return fail('NOT_A_WHOLE_NUMBER', 'alternatives', `2 to ${MOST_POINTS}`, alternatives, 'Leave it out for none.');
}

/** What a kit must keep to, and whether that itself was proved. */
type Kept = Ceilings & { readonly proved: boolean };

/** The ceilings with the fewest pieces that must be bought; null where there is no kit. */
function fewestBought(solver: KitSolver, limits: Ceilings): Kept | null {
  const solved = solver.solve('bought', limits);
  if (solved === null) return null;
  const bought = solved.kit.flat().filter(({ source }) => source === 'catalog').length;
  return { ...limits, bought, proved: solved.atLeast === null };
}

/** The best by the objective; of those that are equal by it a better one beside it. */
function best(solver: KitSolver, objective: KitObjective, ceilings: Ceilings): Solved | null {
  const solved = solver.solve(objective, ceilings);
  return solved && { ...solved, kit: solver.refine(solved.kit, objective, ceilings) };
}

/** A bound in the unit of the answer. */
function shownAs(objective: KitObjective, bound: number, { unit: own }: Demands, unit: 'lb' | 'kg'): number {
  if (objective === 'mass') return inUnit({ value: bound, unit: own }, unit).value;
  return objective === 'price' ? bound / PRICE_SCALE : Math.ceil(bound - 1e-6);
}

/** Kits from the cheapest to the lightest, at even steps of mass between the two; each is the cheapest so light. */
function curve(solver: KitSolver, ceilings: Ceilings, points: number): Chosen[] {
  const ends = (['price', 'mass'] as const).map((each) => (best(solver, each, ceilings) as Solved).kit);
  const [cheapest, lightest] = ends.map((kit) => massOf(kit)) as [number, number];
  const unit = solver.unit;
  const kits = ends.slice(0, 1);
  for (let step = 1; step < points - 1; step++) {
    const mass = { value: cheapest + ((lightest - cheapest) * step) / (points - 1), unit };
    const solved = best(solver, 'price', { ...ceilings, mass });
    if (solved !== null) kits.push(solved.kit);
  }
  kits.push(...ends.slice(1));
  const seen = new Set<string>();
  return kits.filter((kit) => {
    const name = `${massOf(kit)} ${kit.flat().reduce((sum, { price = 0 }) => sum + price, 0)}`;
    return seen.has(name) ? false : seen.add(name);
  });
}

const massOf = (kit: Chosen): number => kit.flat().reduce((sum, { weight }) => sum + weight, 0);

/** What is used of a tie-down and what is spare, in the order in which an assembly lists its pieces. */
function splitPieces(demand: Demand, pieces: readonly Piece[]): { used: readonly Piece[]; spare: readonly Piece[] } {
  const spareChains = demand.spares.filter((each) => each === 'chain').length;
  const [chain, ...rest] = pieces;
  const others = rest.slice(spareChains);
  const spareFittings = demand.spares.length - spareChains;
  const fittings = others.length - spareFittings;
  return {
    used: [chain as Piece, ...others.slice(0, fittings)],
    spare: [...rest.slice(0, spareChains), ...others.slice(fittings)],
  };
}

/** The tie-downs of the plan, part by part. */
function tieDownsOf({ demands }: Demands, chosen: Chosen): TieDown[] {
  return demands.map((demand, index) => {
    const { used } = splitPieces(demand, chosen[index] as readonly Piece[]);
    const taken = new Set(demand.wanted.anchors.map(({ id }) => id));
    const parts: Part[] = [];
    for (const { item, kind } of used) {
      for (const part of partsOf(item, kind)) {
        let id = part.kind;
        for (let more = 2; taken.has(id); more++) id = `${part.kind} ${more}` as typeof id;
        taken.add(id);
        parts.push({ ...part, id } as Part);
      }
    }
    return tieDownOf(demand.wanted, parts);
  });
}

interface Shown {
  readonly unit: 'lb' | 'kg';
  readonly currency: string | undefined;
}

function choiceOf({ demands }: Demands, chosen: Chosen, { unit, currency }: Shown): KitChoice {
  const counted = [...countPieces(chosen.flat())].map(([of, pieces]) => ({ of, pieces }));
  const priced = counted.every(({ of }) => of.price !== undefined);
  const parts = chosen.flat();
  const named = ({ source, item: { id }, kind }: Piece) => ({ source, id, kind });
  return {
    totals: {
      price: priced ? sumOfDecimals(counted.map(priceOf)) : null,
      currency: currency ?? null,
      mass: massIn(counted, unit),
      parts: parts.length,
      bought: parts.filter(({ source }) => source === 'catalog').length,
    },
    bill: counted.map((each): KitLine => {
      const { of, pieces } = each;
      const { price } = of;
      return {
        ...named(of),
        pieces,
        mass: massIn([each], unit),
        price: price ?? null,
        cost: price === undefined ? null : sumOfDecimals([priceOf(each)]),
      };
    }),
    tieDowns: demands.map((demand, index) => {
      const { used, spare } = splitPieces(demand, chosen[index] as readonly Piece[]);
      return { id: demand.wanted.id, items: used.map(named), spares: spare.map(named) };
    }),
  };
}

const priceOf = ({ of, pieces }: Counted<Piece>): Counted<number> => ({ of: of.price ?? 0, pieces });

function massIn(counted: readonly Counted<Piece>[], unit: 'lb' | 'kg'): Quantity<'lb' | 'kg'> {
  const masses = counted.map(({ of, pieces }) => ({ of: of.mass, pieces }));
  return new Quantity(sumOfMasses(masses, unit), unit);
}

function currencyOf(items: Pieces['unrated']): string | undefined {
  return items.find(({ source, price }) => source === 'catalog' && price !== undefined)?.item.currency;
}

function showTotals(working: Working, { totals, bill }: KitChoice): void {
  if (!working.shown) return;
  const { mass, price } = totals;
  const lines = <Value>(value: (line: KitLine) => Value) =>
    bill.map((line) => [`${line.source} ${line.id}, ${line.pieces}`, value(line)] as const);
  working.step(
    'kit',
    'mass',
    'sum(mass of all pieces)',
    lines((line) => line.mass),
    mass,
  );
  if (price !== null) {
    working.step(
      'kit',
      'price',
      'sum(price of all pieces)',
      lines((line) => line.cost),
      price,
    );
  }
}

function sayAssumptions(working: Working, { stock = [], catalog = [] }: KitInput, { demands }: Demands): void {
  if (demands.some(({ wanted }) => wanted.fittings === undefined)) {
    working.assumptions.push(note('USUAL_FITTINGS'));
    working.cite({
      document: 'Common practice in tying down',
      clause: 'a binder and a grab hook at either end',
      provenance: 'common practice',
    });
  }
  if (stock.length > 0) working.assumptions.push(note('OWNED_COSTS_NOTHING'));
  if (catalog.some((item) => item?.count === undefined)) working.assumptions.push(note('CATALOG_NOT_COUNTED'));
  working.assumptions.push(note('WITHOUT_TAX'));
}

/** What is to be said of the hooks that were taken. */
function cautionsOf(working: Working, chosen: Chosen): void {
  const said = new Map<string, Note>();
  for (const [chain, ...others] of chosen) {
    for (const { item, kind } of others) {
      if (kind === 'shackle' || kind === 'master-link') said.set('JOINT_NOT_CHECKED', note('JOINT_NOT_CHECKED'));
      if (kind !== 'grab-hook' && kind !== 'slip-hook') continue;
      const fit = fits({
        hook: { kind, size: item.size as TradeSize, ...gradeOf(item) },
        chain: { size: (chain as Piece).item.size as TradeSize, ...gradeOf((chain as Piece).item) },
        working: false,
      });
      for (const caution of fit.cautions) said.set(caution.text, caution);
    }
  }
  working.cautions.push(...said.values());
}

/** The grade, where it is one that hooks are compared by. */
function gradeOf({ grade }: KitItem): { readonly grade?: ChainGrade } {
  return typeof grade === 'number' ? { grade } : {};
}
