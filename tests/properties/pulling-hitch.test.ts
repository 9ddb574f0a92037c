// A tractor under any pull: the balance taken another way, and what must hold whatever the tractor.
import { hitchStability } from 'chain-rigging';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const G = 9.80665;
const RAD = Math.PI / 180;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyTractor = fc.record({
  mass: between(500, 8000),
  wheelbase: between(1.2, 3),
  share: between(0.05, 0.95),
  z: between(0.4, 1.4),
  track: between(0.8, 2.2),
});
const anyPull = fc.record({
  forward: fc.boolean(),
  newtons: between(1, 60_000),
  h: between(0.1, 2),
  c: between(0, 1.5),
  slope: between(-25, 25),
  beta: between(-20, 35),
});

type Tractor = typeof anyTractor extends fc.Arbitrary<infer T> ? T : never;
type Pull = typeof anyPull extends fc.Arbitrary<infer T> ? T : never;

function ask({ mass, wheelbase, share, z, track }: Tractor, pull: Pull, more: object = {}) {
  const { forward, newtons, h, c, slope, beta } = pull;
  const length = (value: number) => ({ value, unit: 'm' }) as const;
  const angle = (value: number) => ({ value, unit: 'deg' }) as const;
  return hitchStability({
    tractor: {
      mass: { value: mass, unit: 'kg' },
      wheelbase: length(wheelbase),
      centerOfGravityAhead: length(share * wheelbase),
      centerOfGravityHeight: length(z),
      trackWidth: length(track),
      drive: 'rear-wheels',
    },
    hitch: forward
      ? { kind: 'front-hitch', height: length(h), aheadOfFrontAxle: length(c) }
      : { kind: 'drawbar', height: length(h), behindAxle: length(c) },
    pull: { value: newtons, unit: 'N' },
    slope: angle(slope),
    chainAngle: { belowTractorLine: angle(beta) },
    ...more,
  });
}

/** Sum of the moments about the center of gravity, nose down positive; thrust from the balance along the ground. */
function momentAboutCenter({ mass, wheelbase: L, share, z }: Tractor, pull: Pull, front: number, rear: number): number {
  const W = mass * G;
  const x = share * L;
  const [fx, fz] = [
    pull.newtons * Math.cos(pull.beta * RAD) * (pull.forward ? 1 : -1),
    -pull.newtons * Math.sin(pull.beta * RAD),
  ];
  const thrust = W * Math.sin(pull.slope * RAD) - fx;
  const hitchAt = (pull.forward ? L + pull.c : -pull.c) - x;
  const moments = [-(L - x) * front, x * rear, -z * thrust, (pull.h - z) * fx - hitchAt * fz];
  return moments.reduce((sum, each) => sum + each, 0);
}

it('balances about the center of gravity and square to the ground', () => {
  fc.assert(
    fc.property(anyTractor, anyPull, (tractor, pull) => {
      const { frontReaction, rearReaction } = ask(tractor, pull);
      const [front, rear] = [frontReaction.value * 1000, rearReaction.value * 1000];
      const W = tractor.mass * G;
      const down = W * Math.cos(pull.slope * RAD) + pull.newtons * Math.sin(pull.beta * RAD);
      expect(Math.abs(front + rear - down) / W).toBeLessThan(1e-9);
      expect(Math.abs(momentAboutCenter(tractor, pull, front, rear)) / (W * tractor.wheelbase)).toBeLessThan(1e-9);
    }),
  );
});

it('an axle lifts at the pull that halving finds', () => {
  fc.assert(
    fc.property(anyTractor, anyPull, (tractor, pull) => {
      const { liftPull, stance } = ask(tractor, { ...pull, newtons: 1 });
      if (stance.startsWith('tips')) {
        expect(liftPull!.value).toBe(0);
        return;
      }
      // front and rear solved from both balances, without the library
      const least = (newtons: number) => {
        const at = { ...pull, newtons };
        const down = tractor.mass * G * Math.cos(pull.slope * RAD) + newtons * Math.sin(pull.beta * RAD);
        const atZero = momentAboutCenter(tractor, at, 0, down);
        const perFront = momentAboutCenter(tractor, at, 1, down - 1) - atZero;
        const front = -atZero / perFront;
        return Math.min(front, down - front);
      };
      let [low, high] = [0, 1e9];
      if (least(high) > 0) {
        expect(liftPull === null || liftPull.value * 1000 > high).toBe(true);
        return;
      }
      for (let step = 0; step < 200; step++) {
        const middle = (low + high) / 2;
        if (least(middle) > 0) low = middle;
        else high = middle;
      }
      expect((liftPull!.value * 1000) / high).toBeCloseTo(1, 6);
    }),
  );
});

it('a higher hitch never leaves more on the front axle under a pull along the ground', () => {
  fc.assert(
    fc.property(anyTractor, anyPull, between(0.01, 1), (tractor, pull, more) => {
      const low = { ...pull, forward: false, beta: 0 };
      const high = { ...low, h: low.h + more };
      expect(ask(tractor, high).frontReaction.value).toBeLessThanOrEqual(ask(tractor, low).frontReaction.value + 1e-9);
    }),
  );
});

it('at its greatest height the front keeps just the reserve', () => {
  fc.assert(
    fc.property(anyTractor, anyPull, between(0.05, 0.4), (tractor, pull, reserve) => {
      const behind = { ...pull, forward: false };
      const { greatestHeight } = ask(tractor, behind, { steeringReserve: reserve });
      if (greatestHeight === null || greatestHeight === undefined) return;
      const there = ask(tractor, { ...behind, h: greatestHeight.value / 1000 }, { steeringReserve: reserve });
      expect(Math.abs(there.frontReaction.value * 1000 - reserve * tractor.mass * G)).toBeLessThan(
        1e-5 * tractor.mass * G,
      );
    }),
  );
});

it('says the same in pounds and inches as in kilograms and meters', () => {
  fc.assert(
    fc.property(anyTractor, anyPull, ({ mass, wheelbase, share, z }, { newtons, h }) => {
      const us = hitchStability({
        tractor: {
          mass: { value: mass / 0.45359237, unit: 'lb' },
          frontAxleMass: { value: (mass * share) / 0.45359237, unit: 'lb' },
          wheelbase: { value: wheelbase / 0.0254, unit: 'in' },
          centerOfGravityHeight: { value: z / 0.3048, unit: 'ft' },
          drive: 'all-wheels',
        },
        hitch: { kind: 'drawbar', height: { value: h / 0.0254, unit: 'in' } },
        pull: { value: newtons / 4.4482216152605, unit: 'lbf' },
      });
      const si = ask({ mass, wheelbase, share, z, track: 1 }, { forward: false, newtons, h, c: 0, slope: 0, beta: 0 });
      expect((us.frontReaction.value * 4.4482216152605) / 1000).toBeCloseTo(si.frontReaction.value, 6);
      expect(us.stance).toBe(si.stance);
      expect((us.liftPull!.value * 4.4482216152605) / 1000 / si.liftPull!.value).toBeCloseTo(1, 9);
    }),
  );
});

/** What the high rear wheel carries of a tractor whose front axle pivots on a pin: six balances, thrust at the low wheel. */
function highWheelOnPivot(
  { mass, wheelbase: L, share, z, track }: Tractor,
  pull: Pull,
  sideSlope: number,
  psi: number,
  pin: number,
): number {
  const W = mass * G;
  const [rearward, aside] = [Math.sin(pull.slope * RAD), Math.sin(sideSlope * RAD)];
  const b = pull.beta * RAD;
  const ahead = pull.newtons * Math.cos(b) * Math.cos(psi * RAD) * (pull.forward ? 1 : -1);
  // along, to the low side (y), up; the origin is in the middle of the rear axle, on the ground
  const gravity = [-W * rearward, W * aside, -W * Math.sqrt(1 - rearward ** 2 - aside ** 2)] as const;
  const chain = [ahead, pull.newtons * Math.cos(b) * Math.sin(psi * RAD), -pull.newtons * Math.sin(b)] as const;
  const hitchAt = pull.forward ? L + pull.c : -pull.c;
  const thrust = -(gravity[0] + chain[0]);
  // pitch
  const front = (gravity[0] * z + chain[0] * pull.h - gravity[2] * share * L - chain[2] * hitchAt) / L;
  // yaw: what the front tires push sideways, handed on at the pin
  const pushed = ((track / 2) * thrust - gravity[1] * share * L - chain[1] * hitchAt) / L;
  // roll, and the sum of the rear wheels
  const roll = gravity[1] * z + chain[1] * pull.h + pushed * pin;
  return (-gravity[2] - chain[2] - front - (2 * roll) / track) / 2;
}

it('to the side: passes only where the high wheel carries on a pivot at any height, fails only on a rigid frame', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(
      anyTractor,
      anyPull,
      between(0, 40),
      between(1, 80),
      fc.option(between(0.1, 0.8), { nil: undefined }),
      (tractor, pull, sideSlope, psi, pin) => {
        const { checks, sides } = ask(tractor, pull, {
          sideSlope: { value: sideSlope, unit: 'deg' },
          sidePull: { fromStraight: { value: psi, unit: 'deg' } },
          ...(pin !== undefined && { frontPivotHeight: { value: pin, unit: 'm' } }),
        });
        const { verdict } = checks.find(({ id }) => id === 'side-tipping')!;
        const heights = pin === undefined ? [0, 0.25, 0.5, 0.75, 1].map((part) => part * tractor.z) : [pin];
        const carried = heights.map((height) => highWheelOnPivot(tractor, pull, sideSlope, psi, height));
        const margin = Math.min(...carried) / (tractor.mass * G);
        if (Math.abs(margin) < 1e-9) return;
        seen.add(verdict);
        if (verdict === 'fail') expect(sides!.high.value).toBeLessThan(0);
        else expect(verdict).toBe(margin > 0 ? 'pass' : 'undetermined');
      },
    ),
    { numRuns: 500 },
  );
  expect(seen.size).toBe(3);
});
