import { compareExact } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { Check } from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { sumOfDecimals, sumOfMasses } from './exact-totals.js';
import type { Demands } from './kit-demand.js';
import type { FittingKind } from './kit-item.js';
import type { Piece, Pieces } from './kit-pieces.js';
import type { Ceilings, KitObjective, KitSolver, Solved } from './kit-solver.js';

/** Something that keeps a kit from being made. */
export interface KitObstacle {
  /** The tie-down or article it is about, or `'kit'`. */
  readonly subject: string;
  readonly because: Note;
  /** What is asked, and the nearest that can be had. */
  readonly needed: QuantityLike | number | null;
  readonly nearest: QuantityLike | number | null;
  /** A fact is missing: it may be no obstacle once that is known. */
  readonly open: boolean;
  /** The requirement of the rule set, where it is one. */
  readonly check?: Check;
}

/** Why there is no kit: the first kind of reason that applies, with all that it says. */
export function obstaclesOf(
  demands: Demands,
  pieces: Pieces,
  solver: KitSolver,
  limits: Ceilings,
): readonly KitObstacle[] {
  const stages = [
    () => ofRules(demands),
    () => ofTieDowns(demands, pieces),
    () => ofCounts(demands, solver),
    () => ofStrength(demands, solver),
    () => ofLimits(demands, solver, limits),
  ];
  for (const stage of stages) {
    const found = stage();
    if (found.length > 0) return found;
  }
  // each requirement can be met, but not all of them by one kit
  return [obstacle('kit', note('NOT_ALL_TOGETHER'))];
}

function obstacle(
  subject: string,
  because: Note,
  needed: KitObstacle['needed'] = null,
  nearest: KitObstacle['nearest'] = null,
): KitObstacle {
  return { subject, because, needed, nearest, open: false };
}

/** What no kit can meet: the number of tie-downs, the ends they hold, locks, points that are not rated. */
function ofRules({ unmet, unratedAnchors }: Demands): KitObstacle[] {
  return [
    ...unmet.map((check): KitObstacle => {
      const { subject, title, clause, verdict } = check;
      const [needed, nearest] = 'demand' in check ? [check.demand, check.capacity] : [];
      const because = note('NO_KIT_MEETS', { title, clause });
      return { ...obstacle(subject, because, needed, nearest), open: verdict === 'undetermined', check };
    }),
    ...unratedAnchors.map((tieDown) => ({ ...obstacle(tieDown, note('ANCHORS_NOT_RATED', { tieDown })), open: true })),
  ];
}

/** Chain that is long enough and rated, fittings of every kind that go with it. */
function ofTieDowns({ demands }: Demands, pieces: Pieces): KitObstacle[] {
  const { chains, lengths, goesWith } = pieces;
  return demands.flatMap(({ wanted: { id }, chainLength, fittings, spares }): KitObstacle[] => {
    const reach = lengths.findIndex((each) => compareExact(each, chainLength) === 0) + 1;
    const enough = chains.filter((chain) => chain.reach >= reach && chain.count > 0);
    if (enough.length === 0) {
      const longest = longestOf(pieces);
      return [obstacle(id, note('NO_CHAIN_LONG_ENOUGH', { tieDown: id }), chainLength, longest)];
    }
    const kinds = new Set<FittingKind>([...fittings, ...spares.filter((kind) => kind !== 'chain')]);
    const lacking = [...kinds].filter(
      (kind) => !enough.some((chain) => includes(chain, kind) || some(pieces, kind, (each) => goesWith(each, chain))),
    );
    if (lacking.length > 0) return lacking.map((kind) => obstacle(id, note('NO_FITTING', { tieDown: id, kind })));
    const whole = enough.some((chain) =>
      [...kinds].every((kind) => includes(chain, kind) || some(pieces, kind, (each) => goesWith(each, chain))),
    );
    return whole ? [] : [obstacle(id, note('NOTHING_GOES_TOGETHER', { tieDown: id }))];
  });
}

const includes = ({ item }: Piece, kind: FittingKind): boolean => item.includes?.includes(kind) === true;

function some({ fittings }: Pieces, kind: FittingKind, is: (piece: Piece) => boolean): boolean {
  return fittings.get(kind)?.some((piece) => piece.count > 0 && is(piece)) === true;
}

function longestOf({ rated }: Pieces): QuantityLike | null {
  return rated
    .filter(({ item, count }) => item.kind === 'chain' && count > 0)
    .reduce<QuantityLike | null>(
      (longest, { length }) =>
        length !== undefined && (longest === null || compareExact(length, longest) > 0) ? length : longest,
      null,
    );
}

/** Whether there are pieces enough for all of them at once, however strong. */
function ofCounts({ demands }: Demands, solver: KitSolver): KitObstacle[] {
  const solved = solver.solve('unmade', {});
  const made = solved?.kit.filter((pieces) => pieces.length > 0).length ?? 0;
  if (made === demands.length) return [];
  return [obstacle('kit', note('NOT_ENOUGH_PIECES', { made, wanted: demands.length }), demands.length, made)];
}

/** How strong the tie-downs of each article can be made. */
function ofStrength({ articles, required, demands, unit }: Demands, solver: KitSolver): KitObstacle[] {
  return articles.flatMap((article, sum) => {
    const { kit } = solver.solve({ strength: sum }, {}) as Solved;
    const most = kit.reduce((total, pieces, index) => {
      const demand = demands[index] as (typeof demands)[number];
      if (demand.sum !== sum) return total;
      return total + demand.credit * Math.min(demand.anchorLimit, ...pieces.map(({ rating }) => rating));
    }, 0);
    const needed = required[sum] as number;
    if (most >= needed) return [];
    const because = note('NOT_STRONG_ENOUGH', { article });
    return [obstacle(article, because, { value: needed, unit }, { value: most, unit })];
  });
}

/** The least of each limited thing, while the other limits hold. */
function ofLimits({ unit }: Demands, solver: KitSolver, limits: Ceilings): KitObstacle[] {
  return (['price', 'mass', 'parts'] as const).flatMap((what: KitObjective): KitObstacle[] => {
    const limit = limits[what];
    if (limit === undefined) return [];
    const { [what]: _, ...others } = limits;
    const solved = solver.solve(what, others);
    if (solved === null) return [];
    const pieces = solved.kit.flat().map((of) => ({ of, pieces: 1 }));
    const least =
      what === 'price'
        ? sumOfDecimals(pieces.map(({ of, pieces: count }) => ({ of: of.price ?? 0, pieces: count })))
        : what === 'mass'
          ? {
              value: sumOfMasses(
                pieces.map(({ of, pieces: count }) => ({ of: of.mass, pieces: count })),
                unit,
              ),
              unit,
            }
          : pieces.length;
    return [obstacle('kit', note('LIMIT_TOO_LOW', { what }), limit, least)];
  });
}
