import { checkSecurement, imoCssAnnex13_2014, imoCtu_2014, type Plan, tieDownsRequired } from 'chain-rigging';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { block, corners, flat, over } from '../securement/rules/layouts.js';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from './garbage.js';

const good: Plan = {
  seaArea: 'B',
  articles: [
    block({
      blockedForward: true,
      headboard: 'partial',
      surfaces: { load: 'steel', deck: 'timber', condition: 'wet' },
      shipForces: { longitudinal: '3 kN', transverse: '5 kN' },
    }),
  ],
  tieDowns: [
    ...corners(40, 40, '5 kN').slice(0, 2),
    over('20 kN', { pretension: '2 kN', axialStiffness: '4000 kN' }),
    {
      ...flat('left', '1 kN'),
      capacities: undefined,
      parts: [
        { id: 'chain', kind: 'chain', size: '10 mm', grade: '8', capacities: { maximumSecuringLoad: '63 kN' } },
        { id: 'deck', kind: 'anchor', at: 'vehicle', capacities: { maximumSecuringLoad: '2 t' } },
      ],
    },
  ],
};

describe.each([imoCtu_2014, imoCssAnnex13_2014])('$id', (rules) => {
  it.each([
    ['of JSON', jsonGarbage],
    ['of any type', anyGarbage],
  ] as const)('garbage %s gives a result or a RiggingError', (_, garbage) => {
    fc.assert(
      fc.property(spoiled(good, garbage), fc.boolean(), (plan, working) => {
        givesResultOrIssue(() => checkSecurement({ ...Object(plan), rules, working } as never));
      }),
      { numRuns: 1500 },
    );
    fc.assert(
      fc.property(spoiled(good.articles[0], garbage), (article) => {
        givesResultOrIssue(() => tieDownsRequired({ rules, article } as never));
      }),
      { numRuns: 800 },
    );
  });
});
