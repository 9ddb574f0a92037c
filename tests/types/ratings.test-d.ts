/**
 * Checked by `tsc`, never run: every line marked `@ts-expect-error` must be a compile error, and every other
 * line must compile.
 */
import {
  type Article,
  type AssemblyRating,
  assemblyRating,
  type ChainRating,
  type Check,
  chainRating,
  checkSecurement,
  euEn12195_3_2001,
  ft,
  type GradeOf,
  kg,
  kN,
  lb,
  m,
  type Part,
  type Plan,
  type Quantity,
  type RatingTable,
  type SecurementCheck,
  type SizeOf,
  type TieDown,
  tieDownsRequired,
  us49cfr393_108_2024,
  us49cfr393_2024,
  usWeldedChain_2003,
} from 'chain-rigging';

type Equal<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
function holds<_T extends true>(): void {}

const law = us49cfr393_108_2024;
const welded = usWeldedChain_2003;

/* What each table lists. */
holds<Equal<SizeOf<typeof law>, '1/4' | '5/16' | '3/8' | '7/16' | '1/2' | '5/8'>>();
holds<Equal<GradeOf<typeof law, '5/16'>, 30 | 43 | 70 | 80 | 100>>();
holds<Equal<GradeOf<typeof law, '7/16'>, 30 | 43 | 70>>();
holds<Equal<GradeOf<typeof law, '9/32'>, never>>();
holds<Equal<GradeOf<typeof welded, '9/32'>, 80 | 100>>();
holds<Equal<GradeOf<typeof welded, '1-1/4'>, 80>>();

/* A lashing capacity is no working load limit. */
// @ts-expect-error a table of lashing capacities
chainRating({ ratings: euEn12195_3_2001, size: '10 mm', markedWll: '4 t' });

/* A listed chain. */
holds<Equal<ReturnType<typeof listed>, ChainRating>>();
function listed() {
  return chainRating({ ratings: law, size: '5/16', grade: 70 });
}
chainRating({ ratings: law, size: '7/16', grade: 70 });
chainRating({ ratings: law, size: '3/8' });
chainRating({ ratings: law, size: '3/8', grade: 70, units: 'si', working: false });
chainRating({ ratings: welded, size: '9/32', grade: 80 });
chainRating({ ratings: welded, size: '1-1/4', grade: 80 });

// @ts-expect-error the cell is blank
chainRating({ ratings: law, size: '7/16', grade: 80 });
// @ts-expect-error the cell is blank
chainRating({ ratings: law, size: '7/16', grade: 100 });
// @ts-expect-error no such row in this table, though another has it
chainRating({ ratings: law, size: '9/32', grade: 80 });
// @ts-expect-error no such row in this table, though another has it
chainRating({ ratings: law, size: '3/4', grade: 70 });
// @ts-expect-error unknown size
chainRating({ ratings: law, size: '5/17', grade: 70 });
// @ts-expect-error a unit is no part of a trade size
chainRating({ ratings: law, size: '5/16 in', grade: 70 });
// @ts-expect-error a size is text as written
chainRating({ ratings: law, size: 0.3125, grade: 70 });
// @ts-expect-error unknown grade
chainRating({ ratings: law, size: '5/16', grade: 75 });
// @ts-expect-error grade 120 has its mark only
chainRating({ ratings: law, size: '5/16', grade: 120 });
// @ts-expect-error a grade is a number
chainRating({ ratings: law, size: '5/16', grade: '70' });
// @ts-expect-error the pair is not made in the specification
chainRating({ ratings: welded, size: '1/4', grade: 80 });
// @ts-expect-error no table, no rating
chainRating({ size: '5/16', grade: 70 });
// @ts-expect-error a table is a constant, not its id
chainRating({ ratings: 'us-49cfr393-108-2024', size: '5/16', grade: 70 });
// @ts-expect-error us or si
chainRating({ ratings: law, size: '5/16', grade: 70, units: 'metric' });

/* A marked chain: any trade size and grade. */
chainRating({ ratings: law, size: '7/16', grade: 80, markedWll: '9000 lb' });
chainRating({ ratings: law, size: '9/32', grade: 80, markedWll: lb(3500) });
chainRating({ ratings: law, size: '3/8', grade: 120, markedWll: kN(47) });
chainRating({ ratings: law, size: '8 mm', markedWll: kg(2000) });
chainRating({ ratings: law, size: '3/8', markedWll: { value: 6600, unit: 'lb' } });
// @ts-expect-error still a trade size
chainRating({ ratings: law, size: '5/17', markedWll: '9000 lb' });
// @ts-expect-error still a grade of chain
chainRating({ ratings: law, size: '3/8', grade: 75, markedWll: '9000 lb' });
// @ts-expect-error a length is no load
chainRating({ ratings: law, size: '3/8', markedWll: '9 ft' });
// @ts-expect-error a number without a unit is no load
chainRating({ ratings: law, size: '3/8', markedWll: 9000 });
// @ts-expect-error one number, one unit
chainRating({ ratings: law, size: '3/8', markedWll: '9,000 lb' });

/* What comes back. */
function chain(rating: ChainRating): void {
  holds<Equal<typeof rating.workingLoadLimit, Quantity<'lb' | 'kg'>>>();
  holds<Equal<typeof rating.basis, 'marked' | 'table' | 'unmarked'>>();
  // @ts-expect-error not every table knows it
  rating.minimumBreakingForce.value;
  // @ts-expect-error results are read-only
  rating.size = '1/4';
}
function assembly(rating: AssemblyRating): void {
  // @ts-expect-error null while a part is unknown
  rating.workingLoadLimit.value;
  rating.workingLoadLimit?.value;
}
function check(each: Check): void {
  // @ts-expect-error only an undetermined check misses something
  each.missing;
  if (each.verdict === 'undetermined') each.missing;
  if (each.verdict === 'not-applicable') each.because.text;
  if ('utilization' in each) holds<Equal<typeof each.utilization, number | null>>();
}
function securement(result: SecurementCheck): void {
  holds<Equal<typeof result.verdict, 'pass' | 'fail' | 'not-applicable' | 'undetermined'>>();
  // @ts-expect-error null while a rating is unknown
  result.articles[0]?.aggregate.value;
}
export const used = [chain, assembly, check, securement];

/* A function over any table takes any table. */
function anyTable(ratings: RatingTable, parts: readonly Part[]): AssemblyRating {
  return assemblyRating({ ratings, parts });
}
anyTable(law, []);
anyTable(welded, []);

/* Parts. */
const parts: Part[] = [
  { id: 'a', kind: 'chain', size: '3/8', grade: 70, condition: 'sound' },
  { id: 'b', kind: 'chain', size: '9/32', condition: { verdict: 'fit' } },
  { id: 'c', kind: 'grab-hook', size: '3/8', grade: 70, latch: true },
  { id: 'd', kind: 'binder', style: 'ratchet', markedWll: '5400 lb' },
  { id: 'e', kind: 'anchor', at: 'vehicle', capacities: { workingLoadLimit: '5000 lb', lashingCapacity: '20 kN' } },
  { id: 'f', kind: 'webbing', width: '2' },
  { id: 'g', kind: 'wire-rope', nominalStrength: '26600 lbf' },
  {
    id: 'h',
    kind: 'parallel',
    loadSharing: 'equal',
    legs: [[{ id: 'i', kind: 'shackle' }], [{ id: 'j', kind: 'shackle' }]],
  },
];
assemblyRating({ ratings: law, parts, load: '4000 lb' });
// @ts-expect-error a chain has a size
const sizeless: Part = { id: 'a', kind: 'chain', grade: 70 };
// @ts-expect-error a part has a name
const nameless: Part = { kind: 'binder' };
// @ts-expect-error an anchor is on the vehicle or on the cargo
const adrift: Part = { id: 'a', kind: 'anchor' };
// @ts-expect-error no such kind
const unknownKind: Part = { id: 'a', kind: 'rope' };
// @ts-expect-error a strength is a force
const heavyRope: Part = { id: 'a', kind: 'wire-rope', nominalStrength: '26600 lb' };
// @ts-expect-error fit, remove or undetermined
const judged: Part = { id: 'a', kind: 'binder', condition: { verdict: 'pass' } };
// @ts-expect-error how the legs share must be said
const legs: Part = { id: 'a', kind: 'parallel', legs: [] };
export const mistakes = [sizeless, nameless, adrift, unknownKind, heavyRope, judged, legs];

/* Articles and tie-downs. */
const rules = us49cfr393_2024;
tieDownsRequired({ rules, article: { kind: 'machinery', mass: '3940 lb', length: '10 ft 6 in' } });
tieDownsRequired({
  rules,
  article: { id: 'tractor', kind: 'machinery', mass: kg(1800), length: m(3.2), blockedForward: true },
});
// @ts-expect-error a mass is not a length
tieDownsRequired({ rules, article: { kind: 'machinery', mass: '3940 lb', length: '20 lb' } });
// @ts-expect-error a length is not a mass
tieDownsRequired({ rules, article: { kind: 'machinery', mass: ft(10), length: '10 ft' } });
// @ts-expect-error a force is not a mass
tieDownsRequired({ rules, article: { kind: 'machinery', mass: '3940 lbf', length: '10 ft' } });
// @ts-expect-error which ton
tieDownsRequired({ rules, article: { kind: 'machinery', mass: '2 ton', length: '10 ft' } });
// @ts-expect-error no length
tieDownsRequired({ rules, article: { kind: 'machinery', mass: '3940 lb' } });
// @ts-expect-error no such kind
tieDownsRequired({ rules, article: { kind: 'tractor', mass: '3940 lb', length: '10 ft' } });
// @ts-expect-error a field that is spelled wrong
tieDownsRequired({ rules, article: { kind: 'machinery', mass: '3940 lb', length: '10 ft', blockedForwards: true } });
// @ts-expect-error a rule set is a constant, not its id
tieDownsRequired({ rules: 'us-49cfr393-2024', article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' } });
// @ts-expect-error in a plan an article has a name
const unnamed: Article = { kind: 'machinery', mass: '3940 lb', length: '10 ft' };

const direct: TieDown = { id: 'a', holds: 'tractor', path: 'vehicle-to-cargo', end: 'front', parts };
const whole: TieDown = {
  id: 'b',
  holds: 'tractor',
  path: 'over-other-side',
  capacities: { workingLoadLimit: '4000 lb' },
};
// @ts-expect-error parts or capacities
const neither: TieDown = { id: 'c', holds: 'tractor', path: 'vehicle-to-cargo' };
// @ts-expect-error parts or capacities, not both
const both: TieDown = { id: 'd', holds: 'tractor', path: 'vehicle-to-cargo', parts, capacities: {} };
// @ts-expect-error the path is one of three
const direction: TieDown = { id: 'e', holds: 'tractor', path: 'direct', parts };
export const plans: Plan[] = [{ articles: [unnamed], tieDowns: [direct, whole, neither, both, direction] }];
// @ts-expect-error a plan names its rule set when it is checked
checkSecurement({ articles: [], tieDowns: [] });
