import { inUnit } from '../../quantities/convert.js';
import type { QuantityInput, QuantityLike } from '../../quantities/quantity.js';
import { readQuantity } from '../../quantities/read.js';
import { rollingResistance } from '../../tables/generated/rolling-resistance.js';
import { tirePenetrationResistance } from '../../tables/generated/tire-penetration-resistance.js';
import type { Provenance } from '../../working/source.js';
import type { Working } from '../../working/step.js';
import { listed, readChoice, readNumber } from '../plain-input.js';

/** A surface of the table of rolling resistance. */
export type RollingSurface = keyof typeof rollingResistance.rows;

/**
 * How hard wheels roll: by the surface, by how deep the tires sink in, or as a coefficient, which is resistance over
 * weight. 20 lb per short ton is a coefficient of 0.01.
 */
export type RollingResistance =
  | { readonly surface: RollingSurface }
  | { readonly penetration: QuantityInput<'length'> }
  | { readonly coefficient: number };

/** Coefficients of rolling resistance: the two ends of what the sources give. */
export interface ReadRolling {
  readonly low: number;
  readonly high: number;
  /** What was given with a unit, for the units of the answer. */
  readonly given: QuantityLike | undefined;
}

const POUNDS_PER_SHORT_TON = 2000;

interface Row {
  readonly low_lb_per_short_ton: number;
  readonly high_lb_per_short_ton: number;
  readonly provenance?: Provenance;
}

/** Reads how hard wheels roll and records where the coefficient is from; errors name the field after `path`. */
export function readRolling(rolling: RollingResistance, path: string, working: Working): ReadRolling {
  const choice = readChoice(rolling, ['surface', 'penetration', 'coefficient'], path);
  const { surface, penetration, coefficient } = rolling as { readonly [field: string]: unknown };
  if (choice === 'coefficient') {
    const f = readNumber(coefficient, `${path}.coefficient`, 0, 1, 'Resistance over weight: 0.05, not 5.');
    return { low: f, high: f, given: undefined };
  }
  return choice === 'surface'
    ? bySurface(surface as string, `${path}.surface`, working)
    : byPenetration(penetration, `${path}.penetration`, working);
}

/** Where several sources list a surface, the widest range of them all. */
function bySurface(surface: string, path: string, working: Working): ReadRolling {
  const { rows, source } = rollingResistance;
  const found = listed<{ readonly [origin: string]: Row }>(rows, surface, path);
  const entries = Object.values(found);
  const low = Math.min(...entries.map((row) => row.low_lb_per_short_ton));
  const high = Math.max(...entries.map((row) => row.high_lb_per_short_ton));
  for (const { provenance = source.provenance } of entries) working.cite({ ...source, provenance });
  return { low: ofWeight('least f', low, working), high: ofWeight('f', high, working), given: undefined };
}

function byPenetration(input: unknown, path: string, working: Working): ReadRolling {
  const depth = readQuantity(input, 'length', path);
  const { rows, source } = tirePenetrationResistance;
  const base = rows['level-firm-ground'].lb_per_short_ton;
  const each = rows['each-inch-of-penetration'].lb_per_short_ton;
  const deepest = (POUNDS_PER_SHORT_TON - base) / each; // there it would take the whole weight
  const p = readNumber(inUnit(depth, 'in').value, path, 0, deepest, 'In inches; so deep it is mired, not rolling.');
  const pounds = base + each * p;
  working.step('rolling', 'RR', `${base} + ${each} · p, in lb per short ton with p in inches`, { p }, pounds);
  working.cite(source);
  const f = ofWeight('f', pounds, working);
  return { low: f, high: f, given: depth };
}

function ofWeight(symbol: string, pounds: number, working: Working): number {
  const f = pounds / POUNDS_PER_SHORT_TON;
  working.step('rolling', symbol, 'RR / 2000', { RR: pounds }, f);
  return f;
}
