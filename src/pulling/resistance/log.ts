import { fail } from '../../errors.js';
import { checkOneOf } from '../../input-checks.js';
import type { QuantityInput } from '../../quantities/quantity.js';
import { logSkidCoefficients } from '../../tables/generated/log-skid-coefficients.js';
import { type Note, note } from '../../working/note.js';
import type { SourceRef } from '../../working/source.js';
import { listed, readChoice, readNumber } from '../plain-input.js';
import { readAngle } from '../tractor/tractor.js';
import { gradeOf, type Pulled, type Resistance } from './pulled.js';

/** How a log is dragged in the table of skidding coefficients. */
export type LogCondition = keyof typeof logSkidCoefficients.rows;

/** A log dragged along the ground: see {@link logMass} for its mass. */
export interface LogLoad {
  readonly kind: 'log';
  /** The whole log on the ground, or one end held up at the hitch. */
  readonly lift: 'none' | 'one-end';
  /** From the table, or friction over the weight that the ground carries. */
  readonly friction: { readonly condition: LogCondition } | { readonly coefficient: number };
  /** How far the chain rises above the ground from a whole log to the hitch; left out, it is along the ground. */
  readonly chainAngle?: QuantityInput<'angle'>;
}

/**
 * Whole: P = W · (μ · cos α + sin α) / (cos β + μ · sin β). One end up: the ground carries half of a uniform log, so
 * P = μ · W/2 · cos α + W · sin α and the hitch carries the other half.
 */
export function log(load: LogLoad, pulled: Pulled): Resistance {
  checkOneOf(load.lift, ['none', 'one-end'], 'lift');
  pulled.working.cautions.push(CATCHES_ON_A_STUMP);
  pulled.working.cite(STATICS_OF_A_LOG);
  return load.lift === 'none' ? whole(load, pulled) : oneEndUp(load, pulled);
}

function whole(load: LogLoad, { weight, slope, force, working }: Pulled): Resistance {
  const friction = readFriction(load, working);
  const β = load.chainAngle === undefined ? 0 : readAngle(load.chainAngle, 'chainAngle');
  if (load.chainAngle === undefined) working.assumptions.push(LOG_CHAIN_ALONG_GROUND);
  const pullAt = (μ: number): number => {
    const along = Math.cos(β) + μ * Math.sin(β);
    const pull = (weight * (μ * Math.cos(slope) + Math.sin(slope))) / along;
    const lifted = Math.cos(slope) * weight - pull * Math.sin(β) < 0;
    if (!(along > 1e-9) || lifted) {
      const remedy = lifted ? 'So steep a chain lifts the log.' : 'So steep a chain presses the log into the ground.';
      fail('IMPOSSIBLE_GEOMETRY', 'chainAngle', 'a chain that drags the log', load.chainAngle, remedy);
    }
    const values = {
      W: force(weight),
      μ,
      α: { value: slope, unit: 'rad' },
      β: { value: β, unit: 'rad' },
    } as const;
    working.step('log', 'P', 'W · (μ · cos α + sin α) / (cos β + μ · sin β)', values, force(pull));
    return pull;
  };
  const low = pullAt(friction.low);
  return { low, high: friction.high === friction.low ? low : pullAt(friction.high) };
}

function oneEndUp(load: LogLoad, pulled: Pulled): Resistance {
  const { weight, slope, force, working } = pulled;
  const friction = readFriction(load, working);
  if (load.chainAngle !== undefined) {
    fail(
      'CONFLICTING_FIELDS',
      'chainAngle',
      'no chain angle with one end up',
      load.chainAngle,
      'The hitch holds the end up, so it carries the upward part: see onHitch.',
    );
  }
  const across = weight * Math.cos(slope);
  const rubs = friction.ofFullWeight ? across : across / 2;
  const grade = gradeOf(pulled);
  const expression = friction.ofFullWeight ? 'μ · W · cos α + R grade' : 'μ · W/2 · cos α + R grade';
  const pullAt = (μ: number): number => {
    const pull = μ * rubs + grade;
    const values = { μ, W: force(weight), α: { value: slope, unit: 'rad' }, 'R grade': force(grade) } as const;
    working.step('log', 'P', expression, values, force(pull));
    return pull;
  };
  working.assumptions.push(UNIFORM_LOG);
  const low = pullAt(friction.low);
  return { low, high: friction.high === friction.low ? low : pullAt(friction.high), onHitch: across / 2 };
}

interface Friction {
  readonly low: number;
  readonly high: number;
  /** Over the full weight of the log, not over what the ground carries. */
  readonly ofFullWeight: boolean;
}

/** A coefficient over the full weight is for the one way of dragging it was found with. */
function readFriction({ friction, lift }: LogLoad, working: Pulled['working']): Friction {
  const choice = readChoice(friction, ['condition', 'coefficient'], 'friction');
  const { condition, coefficient } = friction as { readonly condition: LogCondition; readonly coefficient: unknown };
  if (choice === 'coefficient') {
    const μ = readNumber(coefficient, 'friction.coefficient', 0, 2, 'Friction over weight: 0.6, not 60.');
    return { low: μ, high: μ, ofFullWeight: false };
  }
  const { rows, source } = logSkidCoefficients;
  const path = 'friction.condition';
  const row = listed<(typeof rows)[LogCondition]>(rows, condition, path);
  const ofFullWeight = row.basis === 'full log weight';
  if (ofFullWeight && (condition === 'one-end-lifted') !== (lift === 'one-end')) {
    const expected = lift === 'none' ? 'a condition of a whole log' : 'one-end-lifted or bare-soil-design';
    fail('CONFLICTING_FIELDS', path, expected, condition, 'It is over the full weight of a log dragged the other way.');
  }
  working.cite(source);
  return { low: row.low, high: row.high, ofFullWeight };
}

const STATICS_OF_A_LOG: SourceRef = { document: 'Statics of a log dragged up a slope', provenance: 'derived' };

const CATCHES_ON_A_STUMP: Note = /* @__PURE__ */ note('CATCHES_ON_A_STUMP');
const LOG_CHAIN_ALONG_GROUND: Note = /* @__PURE__ */ note('LOG_CHAIN_ALONG_GROUND');
const UNIFORM_LOG: Note = /* @__PURE__ */ note('UNIFORM_LOG');
