import { fail } from '../../errors.js';
import { checkObject } from '../../input-checks.js';
import { inUnit } from '../../quantities/convert.js';
import { compareExact } from '../../quantities/exact.js';
import type { QuantityInput, QuantityLike } from '../../quantities/quantity.js';
import { readOptional, readPositive } from '../../quantities/read.js';
import { d497DrawbarPower } from '../../tables/generated/d497-drawbar-power.js';
import { type Note, note } from '../../working/note.js';
import type { Working } from '../../working/step.js';
import { listed, readAboveZero, readChoice } from '../plain-input.js';

/** A row and a column of the power relationships of ASABE D497. */
export interface DrawbarPowerCase {
  readonly tractor: keyof typeof d497DrawbarPower.rows;
  readonly surface: 'concrete' | 'firm-soil' | 'tilled-soil' | 'soft-soil';
}

/** What the engine, or the gear behind it, can push with: power and speed, a limit of the drive, or both. */
export interface Engine {
  /** Rated; horsepower of 550 ft · lbf/s. */
  readonly power?: { readonly hp: number } | { readonly kW: number };
  /** Over the ground, in the gear used. Below 2 km/h power says nothing: give `thrustLimit`. */
  readonly speed?: QuantityInput<'speed'>;
  /** Share of the power that is thrust on the ground times this speed, such as 0.8. */
  readonly efficiency?: number;
  /** In place of an efficiency: PTO power to drawbar power by ASABE D497, own rolling resistance taken off. */
  readonly toDrawbar?: DrawbarPowerCase;
  /** The most that gear, clutch or hydrostatic relief let the wheels or tracks push with. */
  readonly thrustLimit?: QuantityInput<'force'>;
}

/** Limits in newtons. */
export interface ReadEngine {
  /** What power gives at this speed: at the ground, or at the drawbar on level ground. */
  readonly byPower: { readonly newtons: number; readonly at: 'ground' | 'drawbar' } | undefined;
  readonly thrustLimit: number | undefined;
  readonly given: readonly (QuantityLike | undefined)[];
}

/** Below this speed power over speed is no limit: the formula has no end, the gear has one. */
const LEAST_SPEED: QuantityLike = { value: 2, unit: 'km/h' };

/** Watts of one horsepower: 550 ft · lbf/s, exact factors. */
const WATTS_PER_HP = 745.6998715822702;

/** Reads the engine; errors name the field after `engine.`. */
export function readEngine(engine: Engine, working: Working): ReadEngine {
  checkObject(engine, 'engine', '{ power, speed, efficiency } or { thrustLimit }');
  const limit = readOptional(engine.thrustLimit, 'force', 'engine.thrustLimit');
  const thrustLimit = limit && inUnit(limit, 'N').value;
  if (engine.power === undefined) {
    const remedy = 'Give power, speed and efficiency, or the limit of gear, clutch or relief.';
    if (limit === undefined) fail('MISSING_FIELD', 'engine.power', 'power or thrustLimit', undefined, remedy);
    return { byPower: undefined, thrustLimit, given: [limit] };
  }
  const unit = readChoice(engine.power, ['hp', 'kW'], 'engine.power');
  const path = `engine.power.${unit}`;
  const power = readAboveZero((engine.power as { readonly [unit: string]: unknown })[unit], path, 1e5, 'As rated.');
  const speed = readPositive(engine.speed, 'speed', 'engine.speed');
  const given = [limit, speed];
  const share = readShare(engine, working);
  if (compareExact(speed, LEAST_SPEED) < 0) {
    if (limit === undefined) {
      const remedy = 'Below 2 km/h gear, clutch or hydrostatic relief are the limit, not the power.';
      fail('MISSING_FIELD', 'engine.thrustLimit', 'the limit of the gear at so slow a speed', undefined, remedy);
    }
    working.assumptions.push(TOO_SLOW_FOR_POWER);
    return { byPower: undefined, thrustLimit, given };
  }
  const watts = power * (unit === 'hp' ? WATTS_PER_HP : 1000);
  const newtons = (share * watts) / inUnit(speed, 'm/s').value;
  const shown = inUnit({ value: newtons, unit: 'N' }, unit === 'hp' ? 'lbf' : 'kN');
  const values = { η: share, [`P in ${unit}`]: power, v: speed };
  working.step('engine', 'F', 'η · P / v', values, shown);
  return { byPower: { newtons, at: engine.toDrawbar === undefined ? 'ground' : 'drawbar' }, thrustLimit, given };
}

function readShare(engine: Engine, working: Working): number {
  const choice = readChoice(engine, ['efficiency', 'toDrawbar'], 'engine');
  if (choice === 'efficiency') {
    return readAboveZero(engine.efficiency, 'engine.efficiency', 1, 'Share of the power: 0.8, not 80.');
  }
  checkObject(engine.toDrawbar, 'engine.toDrawbar', '{ tractor, surface }');
  const { tractor, surface } = engine.toDrawbar as DrawbarPowerCase;
  const { rows, source } = d497DrawbarPower;
  type Row = { readonly [surface: string]: { readonly drawbar_over_pto: number } };
  const row = listed<Row>(rows, tractor, 'engine.toDrawbar.tractor');
  const { drawbar_over_pto: share } = listed(row, surface, 'engine.toDrawbar.surface');
  working.cite(source);
  working.assumptions.push(PTO_POWER_AT_BEST_SLIP);
  return share;
}

const TOO_SLOW_FOR_POWER: Note = /* @__PURE__ */ note('TOO_SLOW_FOR_POWER');
const PTO_POWER_AT_BEST_SLIP: Note = /* @__PURE__ */ note('PTO_POWER_AT_BEST_SLIP');
