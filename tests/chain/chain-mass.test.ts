import { describe, expect, it } from 'vitest';
import { chainMass, chainMassFromLink, STEEL_DENSITY } from '../../src/chain/chain-mass.js';
import type { ChainGrade, TradeSize } from '../../src/chain/trade-size.js';
import { inWords } from '../../src/explain/in-words.js';
import { chainLinkPatterns } from '../../src/tables/generated/chain-link-patterns.js';
import { usWeldedChainLinks } from '../../src/tables/generated/us-welded-chain-links.js';
import { issueOf } from '../quantities/issue-of.js';

const codeOf = (run: () => unknown) => issueOf(run).code;

describe('chainMass', () => {
  it('weighs the wire, not the trade size', () => {
    // 1/2 in is 13 mm wire: 0.02207 · 13² = 3.730 kg/m; 20 ft = 6.096 m: 22.74 kg
    const answer = chainMass({ size: '1/2', grade: 70, length: '20 ft', units: 'si' });
    expect(answer.massPerLength.value).toBeCloseTo(3.73, 2);
    expect(answer.massPerLength.unit).toBe('kg/m');
    expect(answer.mass.value).toBeCloseTo(22.74, 2);
    expect(answer.wireDiameter.value).toBe(13);
  });

  it.each([
    // pounds per 100 ft of short link, worked by hand from 9.57 lb/ft per square inch of wire diameter:
    // 9.57 · 0.3937² = 1.483; 9.57 · 0.5118² = 2.507; 9.57 · 0.6299² = 3.797
    ['3/8', 148],
    ['1/2', 251],
    ['5/8', 380],
  ] as const)('gives %s chain about %d lb a hundred feet', (size, pounds) => {
    const { mass } = chainMass({ size, length: '100 ft' });
    expect(mass.unit).toBe('lb');
    expect(Math.round(mass.value)).toBe(pounds);
  });

  it('spans the masses that EN 818-2 prints for short link chain (from memory, rounded to 0.1 kg/m)', () => {
    const printed = {
      '6 mm': 0.8,
      '8 mm': 1.4,
      '10 mm': 2.2,
      '13 mm': 3.8,
      '16 mm': 5.7,
      '20 mm': 9,
      '26 mm': 15.2,
      '32 mm': 23,
    } as const;
    for (const [size, perMeter] of Object.entries(printed)) {
      const { range, mass } = chainMass({ size: size as '8 mm', length: '1 m' });
      expect(mass.unit).toBe('kg');
      expect(range.least.value, size).toBeLessThan(perMeter + 0.05);
      expect(range.most.value, size).toBeGreaterThan(perMeter - 0.05);
    }
  });

  it('takes the heaviest wire where no grade is given, and says so', () => {
    // 5/16: 8.7 mm in grades 43 and 70, 8.0 mm in the others: (8.7 / 8)² = 1.1827
    const unknown = chainMass({ size: '5/16', length: '10 ft' });
    expect(unknown.wireDiameter.value).toBe(8.7);
    expect(unknown.assumptions.map(({ code }) => code)).toContain('HEAVIEST_WIRE');
    const alloy = chainMass({ size: '5/16', grade: 80, length: '10 ft' });
    expect(alloy.assumptions.map(({ code }) => code)).not.toContain('HEAVIEST_WIRE');
    expect(unknown.mass.value / alloy.mass.value).toBeCloseTo(1.1827, 4);
    for (const grade of [30, 43, 70, 80, 100] as const) {
      const known = chainMass({ size: '5/16', grade, length: '10 ft' });
      expect(known.mass.value).toBeLessThanOrEqual(unknown.mass.value);
      expect(unknown.range.least.value).toBeLessThanOrEqual(known.range.least.value);
    }
  });

  it('has its least mass at the greatest inside length', () => {
    // 3/8 grade 70: d = 10 mm, p = 1.38 in = 35.052 mm, w = 1.3 · 10 = 13 mm
    // Lc = 2 · 22.052 + π · 23 = 116.3606 mm; 7850e-6 · 78.5398 · 116.3606 / 35.052 = 2.04669 kg/m
    const { range } = chainMass({ size: '3/8', grade: 70, length: '1 m', units: 'si' });
    expect(range.least.value).toBeCloseTo(2.0467, 4);
    // and the short link: 7850e-6 · 78.5398 · 107.398 / 30 = 2.20717, with 3 percent 2.27338
    expect(range.most.value).toBeCloseTo(2.2734, 4);
  });

  it('keeps least below the mass and the mass below most, for every chain of the table', () => {
    for (const [size, grades] of Object.entries(usWeldedChainLinks.rows)) {
      for (const grade of [undefined, ...Object.keys(grades).map(Number)]) {
        const { mass, range } = chainMass({
          size: size as TradeSize,
          length: '20 ft',
          ...(grade === undefined ? {} : { grade: grade as ChainGrade }),
        });
        expect(range.least.value).toBeLessThan(mass.value);
        expect(mass.value).toBeLessThan(range.most.value);
      }
    }
  });

  it('uses the short link of the link table', () => {
    const { 'short-link': short, 'short-link-minimum-width': narrow } = chainLinkPatterns.rows;
    const { massPerLength, range } = chainMass({ size: '10 mm', length: '1 m' });
    expect(massPerLength.value / 100).toBeCloseTo(short.kg_per_m_per_mm2, 5);
    expect(range.least.value / 100).toBeCloseTo(narrow.kg_per_m_per_mm2, 5);
    expect([short.pitch_over_d, short.inside_width_over_d, narrow.pitch_over_d, narrow.inside_width_over_d]).toEqual([
      3, 1.4, 3, 1.3,
    ]);
  });

  it('falls back on a narrow short link where no inside length is tabulated', () => {
    // 3/8 grade 100, d = 10 mm: Lc = 2 · 17 + π · 23 = 106.257 mm; 7850e-6 · 78.5398 · 106.257 / 30 = 2.18372 kg/m
    const { range, steps } = chainMass({ size: '3/8', grade: 100, length: '1 m', units: 'si' });
    expect(range.least.value).toBeCloseTo(2.1837, 4);
    const lightest = steps.find(({ subject, symbol }) => subject.startsWith('lightest') && symbol === 'm/L');
    expect(lightest?.values).toContainEqual(['p', { value: 30, unit: 'mm' }]);
  });

  it('warns of weld flash and of thicker wire', () => {
    const { cautions } = chainMass({ size: '3/8', grade: 70, length: '1 m' });
    expect(cautions.map(({ code }) => code)).toEqual(['WELD_FLASH']);
    expect(inWords(cautions)[0]?.text).toMatch(/1 to 3 percent.*grades 43, 70.* 4 to 8 more/);
  });

  it('says that wire and links are from memory, and the geometry derived', () => {
    const provenance = (size: TradeSize) =>
      chainMass({ size, length: '1 m' }).sources.map((source) => source.provenance);
    expect(provenance('3/8')).toEqual(['memory', 'derived']);
    expect(provenance('10 mm')).toEqual(['read', 'derived']);
  });

  it('takes its units from the size, and refuses units it does not have', () => {
    expect(chainMass({ size: '3/8', length: '1 m' }).mass.unit).toBe('lb');
    expect(chainMass({ size: '3/8', length: '1 m', units: 'si' }).mass.unit).toBe('kg');
    expect(chainMass({ size: '10 mm', length: '1 m', units: 'us' }).mass.unit).toBe('lb');
    expect(issueOf(() => chainMass({ size: '3/8', length: '1 m', units: 'metric' as 'si' }))).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'units',
    });
  });

  it.each([
    ['3/8', 120, '1 m', 'NO_VALUE_IN_TABLE'],
    ['10 mm', 120, '1 m', 'NO_VALUE_IN_TABLE'],
    ['1/4', 80, '1 m', 'NO_VALUE_IN_TABLE'],
    ['7/16', 100, '1 m', 'NO_VALUE_IN_TABLE'],
    ['3/8', 60, '1 m', 'UNKNOWN_GRADE'],
    ['10 mm', 60, '1 m', 'UNKNOWN_GRADE'],
    ['0.375', 70, '1 m', 'UNKNOWN_SIZE'],
    ['0 mm', undefined, '1 m', 'UNKNOWN_SIZE'],
    ['toString', undefined, '1 m', 'UNKNOWN_SIZE'],
    [undefined, 70, '1 m', 'UNKNOWN_SIZE'],
    [['10 mm'], 70, '1 m', 'UNKNOWN_SIZE'],
    [Object.create(null), 70, '1 m', 'UNKNOWN_SIZE'],
    ['3/8', 'constructor', '1 m', 'UNKNOWN_GRADE'],
    ['3/8', '70', '1 m', 'UNKNOWN_GRADE'],
    ['10 mm', '70', '1 m', 'UNKNOWN_GRADE'],
    ['3/8', 70, '0 m', 'NOT_POSITIVE'],
    ['3/8', 70, '3 kg', 'WRONG_KIND'],
    ['3/8', 70, undefined, 'MISSING_FIELD'],
    ['3/8', 70, { value: 1e308, unit: 'm' }, 'NOT_FINITE'],
  ])('refuses %s grade %s, %j', (size, grade, length, code) => {
    expect(codeOf(() => chainMass({ size: size as '3/8', grade: grade as 70, length: length as '1 m' }))).toBe(code);
  });

  it.each([undefined, null, 5, {}])('refuses %s for its argument', (input) => {
    expect(codeOf(() => chainMass(input as never))).toBe('MISSING_FIELD');
    expect(codeOf(() => chainMassFromLink(input as never))).toBe('MISSING_FIELD');
  });

  it('tells what to do about grade 120', () => {
    expect(() => chainMass({ size: '3/8', grade: 120, length: '1 m' })).toThrow(/Weigh the chain/);
  });
});

describe('chainMassFromLink', () => {
  const link = { length: '1 m', wireDiameter: '10 mm', pitch: '30 mm', insideWidth: '14 mm' } as const;

  it('weighs two legs and two half circles', () => {
    // Lc = 2 · 16 + π · 24 = 107.398 mm; link: 7850e-9 · 78.5398 · 107.398 = 0.066215 kg; over 0.03 m: 2.20717 kg/m
    const answer = chainMassFromLink(link);
    expect(answer.linkMass.value).toBeCloseTo(0.066215, 6);
    expect(answer.mass.value).toBeCloseTo(2.20717, 5);
    expect(answer.massPerLength.value).toBeCloseTo(2.20717, 5);
  });

  it('agrees with the centerline and coefficient of every pattern of the link table', () => {
    for (const [name, pattern] of Object.entries(chainLinkPatterns.rows)) {
      const { massPerLength } = chainMassFromLink({
        length: '1 m',
        wireDiameter: '10 mm',
        pitch: { value: pattern.pitch_over_d * 10, unit: 'mm' },
        insideWidth: { value: pattern.inside_width_over_d * 10, unit: 'mm' },
      });
      expect(massPerLength.value / 100, name).toBeCloseTo(pattern.kg_per_m_per_mm2, 5);
    }
  });

  it('agrees with a link integrated in slices', () => {
    // volume of revolution by Simpson's rule: two straight cylinders, and the torus as the sum of thin rings
    const [d, p, w] = [13, 41, 19];
    const slices = 20_000;
    let torus = 0;
    for (let i = 0; i < slices; i++) {
      const y = -d / 2 + ((i + 0.5) * d) / slices;
      torus += 2 * Math.PI * ((w + d) / 2 + y) * 2 * Math.sqrt((d * d) / 4 - y * y) * (d / slices);
    }
    const volume = torus + 2 * (p - w) * (Math.PI / 4) * d * d;
    const { linkMass } = chainMassFromLink({
      length: '1 m',
      wireDiameter: '13 mm',
      pitch: '41 mm',
      insideWidth: '19 mm',
    });
    expect(linkMass.value / (volume * 7850e-9)).toBeCloseTo(1, 6);
  });

  it('takes another density, and only then assumes no steel', () => {
    const aluminum = chainMassFromLink({ ...link, density: '2700 kg/m3' });
    expect(aluminum.mass.value / chainMassFromLink(link).mass.value).toBeCloseTo(2700 / STEEL_DENSITY, 12);
    expect(aluminum.assumptions).toEqual([]);
    expect(chainMassFromLink(link).assumptions.map(({ code }) => code)).toEqual(['STEEL_DENSITY']);
  });

  it('gives the same mass in either system', () => {
    const metric = chainMassFromLink({ ...link, units: 'us' }).mass;
    expect(metric.unit).toBe('lb');
    expect(metric.value * 0.45359237).toBeCloseTo(chainMassFromLink(link).mass.value, 12);
  });

  it.each([
    [{ insideWidth: '10 mm' }, 'IMPOSSIBLE_GEOMETRY'],
    [{ insideWidth: '9.999 mm' }, 'IMPOSSIBLE_GEOMETRY'],
    [{ pitch: '20 mm' }, 'IMPOSSIBLE_GEOMETRY'],
    [{ pitch: '19.999 mm' }, 'IMPOSSIBLE_GEOMETRY'],
    [{ pitch: '30 mm', insideWidth: '30.001 mm' }, 'IMPOSSIBLE_GEOMETRY'],
    [{ wireDiameter: '0 mm' }, 'NOT_POSITIVE'],
    [{ density: '0 kg/m3' }, 'NOT_POSITIVE'],
    [{ length: '3 ft' }, 'UNITS_REQUIRED'],
    [{ pitch: undefined }, 'MISSING_FIELD'],
  ])('checks the link: %j gives %s', (change, code) => {
    expect(codeOf(() => chainMassFromLink({ ...link, ...change } as typeof link))).toBe(code);
  });

  it.each([{ insideWidth: '10.001 mm' }, { pitch: '20.001 mm' }, { pitch: '30 mm', insideWidth: '30 mm' }] as const)(
    'weighs a link that only just goes together: %j',
    (change) => {
      expect(chainMassFromLink({ ...link, ...change }).mass.value).toBeGreaterThan(0);
    },
  );

  it('finds the bound exactly across units: 1 in is twice 12.7 mm', () => {
    expect(
      codeOf(() =>
        chainMassFromLink({ length: '1 m', wireDiameter: '12.7 mm', pitch: '1 in', insideWidth: '13 mm', units: 'si' }),
      ),
    ).toBe('IMPOSSIBLE_GEOMETRY');
  });
});
