// A lift that takes nothing off the load constant, and what a test changes about it.
import type { CarryInput } from 'chain-rigging';

const easy = {
  us: {
    origin: { horizontal: '10 in', height: '30 in', asymmetry: '0 deg' },
    destination: { control: false, height: '40 in' },
  },
  si: {
    origin: { horizontal: '25 cm', height: '75 cm', asymmetry: '0 deg' },
    destination: { control: false, height: '100 cm' },
  },
} as const;

const common = { frequency: 0.2, duration: 'short', coupling: 'good' } as const;

/** Changes of {@link easyLift}; the origin field by field. */
export type LiftChange = Partial<Omit<CarryInput, 'origin'>> & { readonly origin?: object };

export function easyLift(system: 'us' | 'si', change: LiftChange = {}): CarryInput {
  const { origin, destination } = easy[system];
  const load = system === 'us' ? '20 lb' : '10 kg';
  const lift: object = { load, destination, ...common, ...change, origin: { ...origin, ...change.origin } };
  return lift as CarryInput;
}
