import type { ChainMass } from '../chain/chain-mass.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { Quantity } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import type { MassUnit } from '../quantities/units.js';
import type { SourceRef } from '../working/source.js';

/** Chain that `chainMass` weighed. */
export interface WeighedChain {
  readonly mass: Quantity<MassUnit>;
  readonly length: Quantity<'ft' | 'm'>;
}

export function readWeighedChain(chain: ChainMass, path: string): WeighedChain {
  checkObject(chain, path, 'a result of chainMass');
  const mass = readPositive(chain.mass, 'mass', `${path}.mass`);
  const perLength = readPositive(chain.massPerLength, 'massPerLength', `${path}.massPerLength`);
  const { value, unit } = inUnit(mass, perLength.unit === 'lb/ft' ? 'lb' : 'kg');
  return { mass, length: new Quantity(value / perLength.value, unit === 'lb' ? 'ft' : 'm', path) };
}

/** The result of `chainMass` names what it rests on itself. */
export const CHAIN_MASS: SourceRef = {
  document: 'chainMass, whose result names its own sources',
  provenance: 'computed',
};
