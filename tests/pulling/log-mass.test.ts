import { type LogMassInput, logMass } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

describe('logMass', () => {
  const log = { length: '4 m', diameter: { middle: '400 mm' }, density: '1000 kg/m3' } as const;

  it('is density times the volume by the middle diameter', () => {
    // π/4 · 0.4² · 4 = 0.502655 m³
    expect(logMass(log).mass.value).toBeCloseTo(502.6548, 4);
    expect(logMass(log).mass.unit).toBe('kg');
  });

  it('is that by the mean of both end areas, either end first', () => {
    // π/4 · (0.5² + 0.3²)/2 · 4 = 0.534071 m³
    const by = (ends: readonly [`${number} mm`, `${number} mm`]) => logMass({ ...log, diameter: { ends } }).mass.value;
    expect(by(['500 mm', '300 mm'])).toBeCloseTo(534.0708, 4);
    expect(by(['300 mm', '500 mm'])).toBe(by(['500 mm', '300 mm']));
    expect(by(['400 mm', '400 mm'])).toBeCloseTo(logMass(log).mass.value, 9);
  });

  it('brackets a cone: both ends read too much, the middle too little', () => {
    // frustum, exactly: π/12 · (0.5² + 0.5 · 0.3 + 0.3²) · 4 = 0.513127 m³; Huber 0.502655, Smalian 0.534071
    const frustum = 1000 * (Math.PI / 12) * (0.25 + 0.15 + 0.09) * 4;
    expect(logMass(log).mass.value).toBeLessThan(frustum);
    expect(logMass({ ...log, diameter: { ends: ['500 mm', '300 mm'] } }).mass.value).toBeGreaterThan(frustum);
  });

  it('takes the density from basic specific gravity and moisture', () => {
    // from memory: 62.4 · 0.56 · 1.8 = 62.8992 lb/ft³; a cube foot of it: π/4 · d² · 1 ft with d² = 4/π
    const result = logMass({ ...log, density: { basicSpecificGravity: 0.56, moisture: 0.8 }, units: 'us' });
    const cubicFeet = 0.5026548 / 0.3048 ** 3;
    expect(result.mass.value).toBeCloseTo(62.8992 * cubicFeet, 3);
    expect(result.sources.map(({ provenance }) => provenance)).toEqual(['memory', 'derived']);
  });

  it('is in the system of what was given', () => {
    const green = { basicSpecificGravity: 0.5, moisture: 1 };
    expect(logMass({ length: '10 ft', diameter: { middle: '12 in' }, density: green }).mass.unit).toBe('lb');
    expect(logMass({ ...log, density: green }).mass.unit).toBe('kg');
    expect(issueOf(() => logMass({ ...log, density: '60 lb/ft3' })).code).toBe('UNITS_REQUIRED');
  });

  it.each([
    [{ length: '0 m' }, 'NOT_POSITIVE', 'length'],
    [{ diameter: undefined }, 'MISSING_FIELD', 'diameter'],
    [{ diameter: { middle: '40 cm', ends: ['40 cm', '40 cm'] } }, 'CONFLICTING_FIELDS', 'diameter'],
    [{ diameter: { ends: ['40 cm'] } }, 'MISSING_FIELD', 'diameter.ends[1]'],
    [{ diameter: { ends: '40 cm' } }, 'MISSING_FIELD', 'diameter.ends[0]'],
    [{ density: undefined }, 'MISSING_FIELD', 'density'],
    [{ density: '63 lb' }, 'WRONG_KIND', 'density'],
    [{ density: { basicSpecificGravity: 0.5 } }, 'MISSING_FIELD', 'density.moisture'],
    [{ density: { basicSpecificGravity: 0.5, moisture: 80 } }, 'TOO_LARGE', 'density.moisture'],
    [{ density: { basicSpecificGravity: 0.5, moisture: -0.1 } }, 'NEGATIVE', 'density.moisture'],
    [{ density: { basicSpecificGravity: 500, moisture: 0.8 } }, 'TOO_LARGE', 'density.basicSpecificGravity'],
    [{ density: { basicSpecificGravity: '0.5', moisture: 0.8 } }, 'NOT_FINITE', 'density.basicSpecificGravity'],
  ])('refuses %j', (change, code, path) => {
    expect(issueOf(() => logMass({ ...log, ...change } as LogMassInput))).toMatchObject({ code, path });
  });
});
