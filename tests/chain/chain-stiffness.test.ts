import { describe, expect, it } from 'vitest';
import { chainStiffness } from '../../src/chain/chain-stiffness.js';
import { issueOf } from '../quantities/issue-of.js';

describe('chainStiffness', () => {
  it('is 85.4 d² kN, d in mm', () => {
    // mooring practice for studless chain, from memory: EA = 0.854e8 d² kN with d in m; 10 mm: 0.854e8 · 1e-4 = 8540
    const { axialStiffness } = chainStiffness({ wireDiameter: '10 mm' });
    expect(axialStiffness.value).toBeCloseTo(8540, 9);
    expect(axialStiffness.unit).toBe('kN');
  });

  it('is in pounds-force for a wire in inches', () => {
    // 0.5 in = 12.7 mm; 85.4 · 161.29 = 13,774.166 kN; / 4.4482216152605e-3 kN = 3,096,555 lbf
    const { axialStiffness } = chainStiffness({ wireDiameter: '1/2 in' });
    expect(axialStiffness.unit).toBe('lbf');
    expect(axialStiffness.value / 3_096_555 - 1).toBeCloseTo(0, 6);
  });

  it('never exceeds two solid bars of steel: 2 (π/4) d² · 206 GPa', () => {
    // 8 mm: 2 · 50.2655 mm² · 206 kN/mm² = 20,709.4 kN, in the table rounded to four digits
    const { axialStiffness, mostAxialStiffness } = chainStiffness({ wireDiameter: '8 mm' });
    expect(Math.abs(mostAxialStiffness.value / 20_709.4 - 1)).toBeLessThan(1e-4);
    expect(axialStiffness.value).toBeLessThan(mostAxialStiffness.value);
  });

  it('says what it takes for granted', () => {
    const { assumptions, sources } = chainStiffness({ wireDiameter: '8 mm' });
    expect(assumptions.map(({ code }) => code)).toEqual(['STIFF_AS_MOORING_CHAIN']);
    expect(sources.map(({ provenance }) => provenance)).toEqual(['memory']);
  });

  it('refuses what is no wire', () => {
    expect(issueOf(() => chainStiffness({ wireDiameter: '0 mm' })).code).toBe('NOT_POSITIVE');
    // @ts-expect-error a mass
    expect(issueOf(() => chainStiffness({ wireDiameter: '8 kg' })).code).toBe('WRONG_KIND');
    // @ts-expect-error nothing
    expect(issueOf(() => chainStiffness()).code).toBe('MISSING_FIELD');
  });
});
