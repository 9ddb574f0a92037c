import type { Quantity } from '../../quantities/quantity.js';
import type { Working } from '../../working/step.js';

/** What every kind of resistance starts from: the weight in the unit of the answer, the slope in radians, uphill positive. */
export interface Pulled {
  readonly weight: number;
  readonly slope: number;
  /** A number as a force in that unit. */
  readonly force: (value: number) => Quantity<'lbf' | 'kN'>;
  readonly working: Working;
}

/** A resistance in the same unit, from one end of what the sources give to the other; below zero the load pushes. */
export interface Resistance {
  readonly low: number;
  readonly high: number;
  /** What the load puts on the hitch, across the slope. */
  readonly onHitch?: number;
}

/** W · sin α, with its step; downhill below zero. */
export function gradeOf({ weight, slope, force, working }: Pulled): number {
  const grade = weight * Math.sin(slope);
  if (slope !== 0) {
    const values = { W: force(weight), α: { value: slope, unit: 'rad' } } as const;
    working.step('load', 'R grade', 'W · sin α', values, force(grade));
  }
  return grade;
}
