// Australia, New Zealand and the United Kingdom on random plans: against a second reading of the rules by plain
// trigonometry, under changes that must not matter, and on garbage.
import {
  type Article,
  auLrg_2018,
  type Check,
  checkSecurement,
  nzTlc_2017,
  type Plan,
  type RuleSet,
  type TieDown,
  tieDownsRequired,
  ukDvsa_2024,
} from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from './garbage.js';

const RULES: readonly (readonly [string, RuleSet])[] = [auLrg_2018, nzTlc_2017, ukDvsa_2024].map((rules) => [
  rules.id,
  rules,
]);

/** A run as angles: up from the deck, around from straight ahead, seen from the load to the vehicle. */
interface Drawn {
  readonly down: number;
  readonly around: number;
  readonly length: number;
  readonly newtons: number;
  readonly over: boolean;
}
const drawn: fc.Arbitrary<Drawn> = fc.record({
  down: fc.integer({ min: 0, max: 89 }),
  around: fc.integer({ min: 0, max: 359 }),
  length: fc.integer({ min: 1, max: 6 }),
  newtons: fc.integer({ min: 1, max: 100_000 }),
  over: fc.boolean(),
});
const case_ = fc.record({
  kilograms: fc.integer({ min: 100, max: 20_000 }),
  mu: fc.constantFrom(0, 0.1, 0.3, 0.45, 0.6, 0.9),
  ties: fc.array(drawn, { minLength: 1, maxLength: 6 }),
  blockedForward: fc.boolean(),
});
type Case = typeof case_ extends fc.Arbitrary<infer T> ? T : never;

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const meters = (value: number) => ({ value, unit: 'm' }) as const;
const newtons = (value: number) => ({ value, unit: 'N' }) as const;

function tieDown({ down, around, length, newtons: force, over }: Drawn, index: number): TieDown {
  const shift = -5 - 10 * index; // no two on one point
  const id = `t${index}`;
  const height = length * Math.sin(radians(down));
  const capacities = { lashingCapacity: newtons(force), ratedStrength: newtons(force) };
  if (over) {
    // both runs go down alike, to the left and to the right
    const out = length * Math.cos(radians(down));
    const at = (y: number, z: number) => [meters(shift), meters(y), meters(z)] as const;
    return {
      id,
      holds: 'load',
      path: 'over-other-side',
      capacities,
      pretension: newtons(force),
      attachment: at(1, height),
      anchor: at(1 + out, 0),
      otherAttachment: at(-1, height),
      otherAnchor: at(-1 - out, 0),
    };
  }
  const flat = length * Math.cos(radians(down));
  const x = flat * Math.cos(radians(around));
  const y = flat * Math.sin(radians(around));
  return {
    id,
    holds: 'load',
    path: 'vehicle-to-cargo',
    capacities,
    attachment: [meters(shift), meters(0), meters(height)],
    anchor: [meters(shift + x), meters(y), meters(0)],
  };
}

const planOf = ({ kilograms, mu, ties, blockedForward }: Case): Plan => ({
  articles: [
    {
      id: 'load',
      kind: 'general',
      mass: { value: kilograms, unit: 'kg' },
      length: meters(4),
      friction: mu,
      blockedForward,
    },
  ],
  tieDowns: ties.map(tieDown),
});

const WAYS = { forward: 0, left: 90, rearward: 180, right: 270 } as const;
type Way = keyof typeof WAYS;
const ways = Object.keys(WAYS) as Way[];

/** What the direct ones hold back: F · cos(down) · −cos(angle between their plan and the way), where that is more than nothing. */
const heldBack = (ties: readonly Drawn[], way: Way) =>
  ties
    .filter(({ over }) => !over)
    .map(({ down, around, newtons: force }) => -force * Math.cos(radians(down)) * Math.cos(radians(around - WAYS[way])))
    .filter((share) => share > 0)
    .reduce((sum, share) => sum + share, 0);
const down = (ties: readonly Drawn[], over: boolean) =>
  ties
    .filter((each) => each.over === over)
    .reduce((sum, each) => sum + (over ? 2 : 1) * each.newtons * Math.sin(radians(each.down)), 0);

const find = (checks: readonly Check[], id: string) => checks.find((each) => each.id === `${id}/load`)?.verdict;
/** Where the two sides are this close, trigonometry in doubles does not say which is larger. */
const isClose = (one: number, other: number) => Math.abs(one - other) <= 1e-9 * Math.max(1, one, other);

describe('against a second reading', () => {
  it('Australia', () => {
    fc.assert(
      fc.property(case_, (drawnCase) => {
        const { kilograms, mu, ties, blockedForward } = drawnCase;
        const { checks } = checkSecurement({ rules: auLrg_2018, ...planOf(drawnCase), working: false });
        const weight = kilograms * 9.80665;
        let relying = false;
        for (const way of ways) {
          if (way === 'forward' && blockedForward) {
            expect(find(checks, way)).toBe('not-applicable');
            continue;
          }
          const asked = (way === 'forward' ? 0.8 : 0.5) * weight;
          const back = heldBack(ties, way);
          const withFriction = back + mu * (weight + down(ties, true));
          if (isClose(asked, back) || isClose(asked, withFriction)) return;
          if (back < asked && mu > 0) relying = true;
          expect(find(checks, way), way).toBe(Math.max(back, withFriction) >= asked ? 'pass' : 'fail');
        }
        const upright = down(ties, true) + down(ties, false);
        if (isClose(upright, 0.2 * weight)) return;
        expect(find(checks, 'up')).toBe(relying ? (upright >= 0.2 * weight ? 'pass' : 'fail') : 'not-applicable');
      }),
    );
  });

  it('the United Kingdom', () => {
    fc.assert(
      fc.property(case_, (drawnCase) => {
        const { kilograms, ties, blockedForward } = drawnCase;
        const { checks } = checkSecurement({ rules: ukDvsa_2024, ...planOf(drawnCase), working: false });
        for (const way of ways) {
          const asked = (way === 'forward' ? 1 : 0.5) * kilograms * 9.80665;
          const back = heldBack(ties, way);
          if (isClose(asked, back)) continue;
          const open = ties.some(({ over }) => over) || (way === 'forward' && blockedForward);
          expect(find(checks, way), way).toBe(back >= asked ? 'pass' : open ? 'undetermined' : 'fail');
        }
        expect(checks.find(({ id }) => id === 'anchorages/tie-downs')?.verdict).toBe('pass');
      }),
    );
  });

  it('New Zealand', () => {
    fc.assert(
      fc.property(case_, (drawnCase) => {
        const { kilograms, ties, blockedForward } = drawnCase;
        const { checks } = checkSecurement({ rules: nzTlc_2017, ...planOf(drawnCase), working: false });
        const multiple = ties.reduce((sum, each) => sum + each.newtons, 0) / (kilograms * 9.80665);
        if (isClose(multiple, 1) || isClose(multiple, 2)) return;
        const least = blockedForward && multiple >= 1 ? 'undetermined' : 'fail';
        expect(find(checks, 'rated-strength')).toBe(multiple >= 2 ? 'pass' : least);
      }),
    );
  });
});

describe.each(RULES)('%s', (_, rules) => {
  const requirements = (plan: Plan, units?: 'us') =>
    checkSecurement({ rules, ...plan, ...(units && { units }) })
      .checks.filter(({ weight }) => weight === 'requirement')
      .map(({ id, verdict }) => `${id} ${verdict}`)
      .sort();

  it('does not look at the order of tie-downs, nor at the units shown', () => {
    fc.assert(
      fc.property(case_, (drawnCase) => {
        const plan = planOf(drawnCase);
        const turned = { ...plan, tieDowns: [...plan.tieDowns].reverse() };
        expect(requirements(turned)).toEqual(requirements(plan));
        expect(requirements(plan, 'us')).toEqual(requirements(plan));
      }),
      { numRuns: 40 },
    );
  });

  it('takes no pass away for one more direct tie-down', () => {
    fc.assert(
      fc.property(case_, drawn, (drawnCase, extra) => {
        const plan = planOf(drawnCase);
        const { verdict } = checkSecurement({ rules, ...plan, working: false });
        fc.pre(verdict === 'pass');
        const more = { ...drawnCase, ties: [...drawnCase.ties, { ...extra, over: false }] };
        expect(checkSecurement({ rules, ...planOf(more), working: false }).verdict).toBe('pass');
      }),
      { numRuns: 40 },
    );
  });

  const good: { readonly articles: readonly Article[]; readonly tieDowns: readonly TieDown[] } = {
    articles: [
      {
        id: 'load',
        kind: 'machinery',
        mass: '2 t',
        length: '4 m',
        surfaces: { load: 'smooth-steel', deck: 'timber', condition: 'dry' },
        headboard: 'partial',
        contacts: [{ at: ['-3 m', '1 m', '0 m'] }, { at: ['-5 m', '-1 m', '0 m'] }],
        accessories: [{ id: 'bucket', lowered: true }],
      },
    ],
    tieDowns: [
      tieDown({ down: 30, around: 45, length: 2, newtons: 40_000, over: false }, 0),
      tieDown({ down: 60, around: 0, length: 2, newtons: 9000, over: true }, 1),
      {
        id: 'parts',
        holds: 'load',
        path: 'vehicle-to-cargo',
        attachment: ['-3 m', '1 m', '1 m'],
        anchor: ['-2 m', '1.2 m', '0 m'],
        pretension: '750 kgf',
        axialStiffness: '5000 kN',
        parts: [
          { id: 'chain', kind: 'chain', size: '8 mm', grade: 70 },
          {
            id: 'binder',
            kind: 'binder',
            style: 'ratchet',
            capacities: { lashingCapacity: '40 kN', ratedStrength: '8 t' },
          },
          { id: 'ring', kind: 'anchor', at: 'vehicle', capacities: { lashingCapacity: '40 kN', ratedStrength: '8 t' } },
          { id: 'lug', kind: 'anchor', at: 'cargo', capacities: { lashingCapacity: '40 kN', ratedStrength: '8 t' } },
        ],
      },
    ],
  };

  it('starts from a plan that is good', () => {
    expect(['pass', 'fail', 'undetermined']).toContain(checkSecurement({ rules, ...good }).verdict);
  });

  it.each([
    ['JSON', jsonGarbage],
    ['anything', anyGarbage],
  ] as const)('%s in a plan gives a result or a RiggingError', (_kind, garbage) => {
    fc.assert(
      fc.property(spoiled(good, garbage), fc.boolean(), (plan, working) => {
        givesResultOrIssue(() => checkSecurement({ ...(plan as Plan), rules, working }));
      }),
      { numRuns: 400 },
    );
    fc.assert(
      fc.property(spoiled(good.articles[0], garbage), (article) => {
        givesResultOrIssue(() => tieDownsRequired({ rules, article: article as Article }));
      }),
      { numRuns: 400 },
    );
  });
});
