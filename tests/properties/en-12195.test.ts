// EN 12195-1 against its published closed formulas, which know angles and numbers of lashings but no points.
import { type Check, checkSecurement, type Plan, type RatioCheck, type TieDown, tieDownsRequired } from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkOf } from '../securement/plans.js';
import {
  across,
  anchor,
  at,
  corners,
  direct,
  judge,
  load,
  overTop,
  rules,
} from '../securement/rules/en-12195-plans.js';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from './garbage.js';

const G = 9.81;
const RADIAN = Math.PI / 180;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const tonnes = between(0.1, 40);
const mu = between(0, 0.7);
const slope = between(2, 85);
const HEADINGS = ['forward', 'rearward', 'left', 'right'] as const;
/** c of sliding on the road. */
const C = { forward: 0.8, rearward: 0.5, left: 0.5, right: 0.5 } as const;
const FS = { forward: 1.25, rearward: 1.1, left: 1.1, right: 1.1 } as const;

const heavy = (mass: number, friction: number) => load({ mass: { value: mass, unit: 't' }, friction });

describe('closed formulas', () => {
  it('two chains for each heading: FR = m · g · (c − 0.75 · μ) / (2 · (cos α · cos β + 0.75 · μ · sin α))', () => {
    fc.assert(
      fc.property(tonnes, mu, slope, between(2, 88), (mass, friction, alpha, beta) => {
        const result = judge(heavy(mass, friction), corners('50 kN', { alpha, beta }), { working: false });
        for (const heading of HEADINGS) {
          const check = checkOf(result, `sliding-${heading}/load`) as RatioCheck;
          const c = C[heading];
          if (friction >= c) {
            expect(check.verdict).toBe('pass'); // friction alone holds it
            continue;
          }
          const along = Math.cos((heading === 'forward' || heading === 'rearward' ? beta : 90 - beta) * RADIAN);
          const share = Math.cos(alpha * RADIAN) * along + 0.75 * friction * Math.sin(alpha * RADIAN);
          const needed = (mass * G * (c - 0.75 * friction)) / (2 * share); // kN
          expect(check.utilization! / (needed / 50)).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  it('over-top: n ≥ fs · (c − μ) · m · g / (2 · μ · sin α · FT)', () => {
    fc.assert(
      fc.property(
        tonnes,
        between(0.05, 0.7),
        between(5, 90),
        fc.integer({ min: 1, max: 12 }),
        (mass, friction, alpha, count) => {
          const result = judge(heavy(mass, friction), across(count, alpha), { working: false });
          for (const heading of HEADINGS) {
            const check = checkOf(result, `sliding-${heading}/load`) as RatioCheck;
            const n =
              (FS[heading] * (C[heading] - friction) * mass * G) / (2 * friction * Math.sin(alpha * RADIAN) * 4);
            if (Math.abs(n / count - 1) > 1e-9) expect(check.verdict).toBe(n < count ? 'pass' : 'fail');
          }
        },
      ),
    );
  });
});

const way = fc.record({
  alpha: between(0, 89),
  beta: between(0, 90),
  x: fc.constantFrom<1 | -1>(1, -1),
  y: fc.constantFrom<1 | -1>(1, -1),
});
const lashing = fc.oneof(
  fc.tuple(way, fc.integer({ min: 1, max: 100 })).map(([where, kN]) => direct('x', `${kN} kN`, where)),
  between(1, 90).map((alpha) => overTop('x', alpha)),
);
const lashings = fc
  .array(lashing, { minLength: 1, maxLength: 6 })
  .map((all) => all.map((each, index) => ({ ...each, id: `lashing ${index}` }) as TieDown));

describe('any layout', () => {
  const sliding = (checks: readonly Check[]) => checks.filter(({ id }) => id.startsWith('sliding'));

  it('one more lashing that presses down never turns a pass against sliding into something else', () => {
    fc.assert(
      fc.property(tonnes, mu, lashings, lashing, (mass, friction, all, more) => {
        const before = sliding(judge(heavy(mass, friction), all).checks);
        const after = sliding(judge(heavy(mass, friction), [...all, { ...more, id: 'one more' }]).checks);
        for (const [index, { verdict }] of before.entries()) {
          if (verdict === 'pass') expect(after[index]?.verdict).toBe('pass');
        }
      }),
    );
  });

  it('what is not known of one lashing never turns into a pass that knowing it would refute', () => {
    fc.assert(
      fc.property(
        tonnes,
        mu,
        lashings,
        fc.constantFrom('points', 'capacity', 'friction'),
        (mass, friction, all, what) => {
          const [first, ...others] = all as [TieDown, ...TieDown[]];
          const { anchor: _, attachment: __, otherAnchor: ___, otherAttachment: ____, ...bare } = first;
          const less = what === 'points' ? bare : what === 'capacity' ? { ...first, capacities: {} } : first;
          const { friction: _____, ...article } = heavy(mass, friction);
          const known = judge(heavy(mass, friction), all).checks;
          const open = judge(what === 'friction' ? article : heavy(mass, friction), [
            less as TieDown,
            ...others,
          ]).checks;
          for (const [index, { verdict, id }] of open.entries()) {
            if (verdict === 'pass' || verdict === 'fail') expect(known[index]?.verdict, id).toBe(verdict);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('mass and forces grow together: the same ratios', () => {
    fc.assert(
      fc.property(tonnes, mu, lashings, (mass, friction, all) => {
        const doubled = all.map((each) => {
          const { lashingCapacity, standardTensionForce } = each.capacities as Record<string, `${number} kN`>;
          const twice = (force: string) => `${2 * Number.parseFloat(force)} kN`;
          return {
            ...each,
            capacities: {
              lashingCapacity: twice(lashingCapacity!),
              ...(standardTensionForce && { standardTensionForce: twice(standardTensionForce) }),
            },
          } as TieDown;
        });
        const one = judge(heavy(mass, friction), all).checks;
        const two = judge(heavy(2 * mass, friction), doubled).checks;
        for (const [index, check] of one.entries()) {
          const [a, b] = [check, two[index]] as RatioCheck[];
          expect(b!.verdict).toBe(a!.verdict);
          const used = a!.utilization;
          // beyond 1e300 the double of what next to nothing holds may be infinite, which is shown as no ratio
          if (typeof used !== 'number' || used > 1e300) continue;
          expect(Math.abs(b!.utilization! - used)).toBeLessThanOrEqual(1e-9 * Math.max(1, used));
        }
      }),
    );
  });
});

describe('garbage', () => {
  const good: Plan = {
    vehicle: { units: [{ id: 'truck', kind: 'power', grossWeightRating: '12 t' }] },
    seaArea: 'A',
    articles: [
      load({
        surfaces: { load: 'steel-crate', deck: 'plywood', condition: 'frost' },
        headboard: 'adequate',
        accessories: [{ id: 'bucket' }],
      }),
    ],
    tieDowns: [
      overTop('strap', 80, { pretension: '3 kN', axialStiffness: '500 kN' }),
      {
        ...direct('chain', '1 kN', { alpha: 30, beta: 40, x: 1, y: 1 }),
        capacities: undefined,
        parts: [
          { id: 'chain', kind: 'chain', size: '10 mm', grade: '8' },
          {
            id: 'tensioner',
            kind: 'turnbuckle',
            capacities: { lashingCapacity: '63 kN', standardTensionForce: '16 kN' },
          },
          anchor('ring', 'vehicle', '20 kN'),
          anchor('lug', 'cargo', '40 kN'),
        ],
      } as TieDown,
      {
        ...direct('bucket chain', '5 kN', { alpha: 30, beta: 40, x: -1, y: 1 }),
        holds: 'bucket',
        anchor: at(-8, 2, 0),
      },
    ],
  };

  it('starts from a plan that is good', () => {
    expect(() => checkSecurement({ rules, ...good })).not.toThrow();
  });

  it.each([
    ['of JSON', jsonGarbage],
    ['of any type', anyGarbage],
  ] as const)('%s gives a result or a RiggingError', (_, garbage) => {
    fc.assert(
      fc.property(spoiled(good, garbage), fc.boolean(), (plan, working) => {
        givesResultOrIssue(() => checkSecurement({ ...Object(plan), rules, working } as never));
      }),
      { numRuns: 2000 },
    );
    fc.assert(
      fc.property(spoiled(good.articles[0], garbage), (article) => {
        givesResultOrIssue(() => tieDownsRequired({ rules, article } as never));
      }),
      { numRuns: 500 },
    );
  });
});
