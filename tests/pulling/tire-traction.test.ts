import { tireTraction } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const firm = { soil: 'firm', construction: 'bias', slip: 0.15 } as const;
const tire = { sectionWidth: '0.45 m', diameter: '1.4 m' } as const;
const onCone = { coneIndex: { kPa: 800 }, construction: 'bias', slip: 0.15 } as const;

describe('tireTraction', () => {
  it('has for radial tires the constants of radial tires', () => {
    // from memory; Bn 55, s 0.15: 0.88 (1 − e^−5.5)(1 − e^−1.425) + 0.0325
    // = 0.88 · 0.9959132 · 0.7594915 + 0.0325 = 0.698121; 0.9/55 + 0.0325 + 0.075/7.416198 = 0.058977
    const { grossTractionRatio, motionResistanceRatio } = tireTraction({ ...firm, construction: 'radial' });
    expect(grossTractionRatio).toBeCloseTo(0.698121, 5);
    expect(motionResistanceRatio).toBeCloseTo(0.058977, 5);
  });

  it('takes the wheel numeric from a tire under its load', () => {
    // Bn = 800 · 0.45 · 1.4 / 12 · (1 + 5 · 0.2) / (1 + 3 · 0.45/1.4) = 42 · 2 / 1.964286 = 42.763636
    const result = tireTraction({ ...onCone, tire, load: '12 kN' });
    expect(result.wheelNumeric).toBeCloseTo(42.763636, 5);
    expect(result.assumptions.map(({ code }) => code)).toEqual(['USUAL_DEFLECTION']);
    const stiff = tireTraction({ ...onCone, tire: { ...tire, deflectionRatio: 0 }, load: '12 kN' });
    expect(stiff.wheelNumeric).toBeCloseTo(42 / 1.964286, 4);
    expect(stiff.assumptions).toEqual([]);
    // the load of the axle in place of the wheel halves the numeric
    expect(tireTraction({ ...onCone, tire, load: '24 kN' }).wheelNumeric).toBeCloseTo(42.763636 / 2, 5);
  });

  it('takes the cone index in psi, and that of a soil class', () => {
    // 1 psi = 6.894757 kPa (from memory: SP 811); 116.0302 psi = 800 kPa
    const psi = tireTraction({ ...onCone, coneIndex: { psi: 116.0302 }, tire, load: '12 kN' });
    expect(psi.wheelNumeric).toBeCloseTo(42.763636, 4);
    // firm: 1200 kPa (from memory)
    expect(tireTraction({ ...firm, tire, load: '12 kN' }).wheelNumeric).toBeCloseTo(42.763636 * 1.5, 5);
  });

  it('cannot drive itself without slip: −1/Bn', () => {
    const { netTractionRatio, tractiveEfficiency } = tireTraction({ ...firm, slip: 0 });
    expect(netTractionRatio).toBeCloseTo(-1 / 55, 12);
    expect(tractiveEfficiency).toBeLessThan(0);
  });

  it('refuses percent, and slip past the equations', () => {
    expect(issueOf(() => tireTraction({ ...firm, slip: 15 }))).toMatchObject({ code: 'TOO_LARGE', path: 'slip' });
    expect(tireTraction({ ...firm, slip: 0.3 }).netTractionRatio).toBeGreaterThan(0);
    expect(issueOf(() => tireTraction({ ...firm, slip: 0.301 })).code).toBe('TOO_LARGE');
    expect(issueOf(() => tireTraction({ ...firm, slip: -0.1 })).code).toBe('NEGATIVE');
  });

  it.each([
    [{ construction: 'solid' }, 'UNKNOWN_VALUE', 'construction'],
    [{ construction: undefined }, 'MISSING_FIELD', 'construction'],
    [{ soil: 'concrete' }, 'NO_VALUE_IN_TABLE', 'soil'],
    [{ soil: undefined }, 'MISSING_FIELD', ''],
    [{ coneIndex: { kPa: 800 } }, 'CONFLICTING_FIELDS', ''],
    [{ soil: undefined, coneIndex: { kPa: 800 } }, 'MISSING_FIELD', 'tire'],
    [{ soil: undefined, coneIndex: { kPa: 0 }, tire, load: '12 kN' }, 'NOT_POSITIVE', 'coneIndex.kPa'],
    [{ soil: undefined, coneIndex: { kPa: 800, psi: 116 } }, 'CONFLICTING_FIELDS', 'coneIndex'],
    [{ tire }, 'MISSING_FIELD', 'load'],
    [{ tire, load: '1200 kg' }, 'WRONG_KIND', 'load'],
    [{ tire: { ...tire, deflectionRatio: 20 }, load: '12 kN' }, 'TOO_LARGE', 'tire.deflectionRatio'],
    [{ tire: { ...tire, diameter: '0 m' }, load: '12 kN' }, 'NOT_POSITIVE', 'tire.diameter'],
    [{ tire, load: { value: 5e-324, unit: 'N' } }, 'NOT_FINITE', 'load'],
  ])('refuses %j', (change, code, path) => {
    expect(issueOf(() => tireTraction({ ...firm, ...change } as never))).toMatchObject({ code, path });
  });
});
