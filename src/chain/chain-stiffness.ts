import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { chainAxialStiffness } from '../tables/generated/chain-axial-stiffness.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';

export interface ChainStiffness extends ResultBase<'chainStiffness'> {
  /** E · A: the force that would stretch the chain by its own length, were it to stay elastic. */
  readonly axialStiffness: Quantity<'lbf' | 'kN'>;
  /** The same of two solid bars: no chain is stiffer. */
  readonly mostAxialStiffness: Quantity<'lbf' | 'kN'>;
}

/**
 * How stiff a chain is: what a layout of tie-downs or a snatch is solved with. Over a length L the chain is a spring
 * of k = EA / L.
 *
 * EA = 85.4 · d², in kN with d in mm. Links bend, so chain is about a quarter as stiff as two solid bars, for which
 * EA = 323.6 · d². Where a stiffer chain is the worse case, as in a snatch, solve with both.
 *
 * @param input.wireDiameter d of the round wire, above zero; not the trade size: {@link chainMass} tells it
 * @param input.units `'us'` (lbf) or `'si'` (kN); omitted: the system of the wire diameter
 * @throws RiggingError `NOT_POSITIVE`, `WRONG_KIND`, `MISSING_FIELD`
 * @validity sound chain of round wire, within its proof load; hooks, tensioners and anchors give way too and are not in it
 * @source mooring practice for studless chain, from memory; that short-link chain is as stiff is an assumption
 * @example
 * chainStiffness({ wireDiameter: '8 mm' }).axialStiffness.value.toFixed(0)
 * // => '5466'
 */
export function chainStiffness(input: {
  readonly wireDiameter: QuantityInput<'length'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): ChainStiffness {
  const wire = readPositive(input?.wireDiameter, 'length', 'wireDiameter');
  const working = new Working(input.working !== false);
  const unit = sharedUnits(input.units, [wire]) === 'us' ? 'lbf' : 'kN';
  const stiffness = axialStiffnessOf(wire, unit, working);
  working.cautions.push(CHAIN_ALONE);
  return makeResult('chainStiffness', stiffness, input, working);
}

/** EA of chain of a wire, as mooring chain and as solid bars, with its steps, source and assumption. */
export function axialStiffnessOf<U extends 'lbf' | 'kN' | 'N'>(wire: QuantityLike, unit: U, working: Working) {
  const d = inUnit(wire, 'mm').value;
  const { bending, rigid } = chainAxialStiffness.rows;
  const stiffnessOf = (symbol: string, factor: number) => {
    const result = inUnit({ value: factor * d * d, unit: 'kN' }, unit);
    const expression = `${factor} · d², in kN with d in mm`;
    working.step('chain', symbol, expression, { d: { value: d, unit: 'mm' } }, result);
    return result;
  };
  working.cite(chainAxialStiffness.source);
  working.assumptions.push(AS_MOORING_CHAIN);
  return {
    axialStiffness: stiffnessOf('EA', bending.ea_over_d2_kn_per_mm2),
    mostAxialStiffness: stiffnessOf('EA of solid bars', rigid.ea_over_d2_kn_per_mm2),
  };
}

const AS_MOORING_CHAIN: Note = /* @__PURE__ */ note('STIFF_AS_MOORING_CHAIN');
const CHAIN_ALONE: Note = /* @__PURE__ */ note('STIFFNESS_OF_CHAIN_ALONE');
