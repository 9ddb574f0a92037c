import { assemblyRating } from '../../src/assembly/assembly-rating.js';
import type { Part } from '../../src/assembly/part.js';
import { chainMass } from '../../src/chain/chain-mass.js';
import { chainRating } from '../../src/chain/chain-rating.js';
import { identifyChain } from '../../src/chain/identify-chain.js';
import { fits } from '../../src/hardware/fits.js';
import { checkSecurement, type SecurementCheck } from '../../src/securement/check-securement.js';
import type { TieDown } from '../../src/securement/plan.js';
import { us49cfr393_2024 } from '../../src/securement/rules/us-49cfr393-2024/index.js';
import { tieDownsRequired } from '../../src/securement/tie-downs-required.js';
import { us49cfr393_108_2024 } from '../../src/tables/us-49cfr393-108-2024.js';
import type { ResultBase } from '../../src/working/result.js';

const CORNERS = ['front-left', 'front-right', 'rear-left', 'rear-right'];

function directChain(id: string, holds: string, anchored: boolean): TieDown {
  const parts: Part[] = [
    { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
    { id: 'binder', kind: 'binder', markedWll: '5400 lb' },
  ];
  if (anchored) {
    parts.push(
      { id: 'stake pocket', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
      { id: 'tow eye', kind: 'anchor', at: 'cargo', markedWll: '6000 lb' },
    );
  }
  return { id, holds, path: 'vehicle-to-cargo', parts };
}

/** A compact tractor of 3,940 lb on four direct chains of 5/16 grade 70. */
export function tractorPlan(
  options: { anchored?: boolean; article?: string; tieDowns?: readonly string[]; working?: boolean } = {},
): SecurementCheck {
  const { anchored = true, article = 'tractor', tieDowns = CORNERS, working = true } = options;
  return checkSecurement({
    rules: us49cfr393_2024,
    articles: [{ id: article, kind: 'machinery', mass: '3940 lb', length: '10 ft' }],
    tieDowns: tieDowns.map((id) => directChain(id, article, anchored)),
    working,
  });
}

/** Results of many shapes and every verdict. */
export const RESULTS: Readonly<Record<string, ResultBase>> = {
  'a rating from the table': chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 }),
  'a marked rating in force units': chainRating({
    ratings: us49cfr393_108_2024,
    size: '3/8',
    markedWll: { value: 30, unit: 'kN' },
    units: 'si',
  }),
  'a mass': chainMass({ size: '5/16', grade: 70, length: '20 ft' }),
  'an identity': identifyChain({ ratings: us49cfr393_108_2024, mark: '70', wireDiameter: '0.35 in' }),
  'a fit': fits({ hook: { kind: 'grab-hook', size: '5/16' }, chain: { size: '3/8' } }),
  'an assembly with an unmarked binder': assemblyRating({
    ratings: us49cfr393_108_2024,
    parts: [
      { id: 'chain', kind: 'chain', size: '3/8', grade: 70 },
      { id: 'binder', kind: 'binder' },
    ],
    load: '5000 lb',
  }),
  'a requirement': tieDownsRequired({
    rules: us49cfr393_2024,
    article: { kind: 'machinery', mass: '12000 lb', length: '14 ft' },
  }),
  'a plan that passes': tractorPlan(),
  'a plan that is undetermined': tractorPlan({ anchored: false }),
  'a plan that fails': tractorPlan({ tieDowns: ['only'] }),
  'a plan without its working': tractorPlan({ working: false }),
};

/** A result made by hand, for what the calculations of today do not return. */
export function handMade(fields: object): ResultBase {
  return {
    result: 'handMade',
    inputs: {},
    steps: [],
    sources: [],
    assumptions: [],
    cautions: [],
    ...fields,
  } as ResultBase;
}
