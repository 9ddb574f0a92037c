import { chainMass, explain, inWords, type StowageBox, type StowagePipe, stowage } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { readTable } from '../../.config/tables/tables.js';
import { chainStorageVolume } from '../../src/tables/generated/chain-storage-volume.js';
import { en818LinkLimits } from '../../src/tables/generated/en818-link-limits.js';
import { issueOf } from '../quantities/issue-of.js';
import { amount } from '../tables/amount.js';

const codesOf = (notes: readonly { readonly code: string }[] | undefined) => notes?.map(({ code }) => code);
const mm = (value: number) => ({ value, unit: 'mm' }) as const;
const meters = (value: number) => ({ value, unit: 'm' }) as const;

describe('the pile', () => {
  it.each([
    // liters of 20 ft (6.096 m) by 1.1 d² l / 10⁵ and by L s² / 48,612, worked by hand: 7 mm gives 3.29 and 6.14
    ['1/4', 70, 3.3, 6.1],
    ['5/16', 30, 4.3, 8.0],
    ['5/16', 70, 5.1, 9.5],
    ['3/8', 70, 6.7, 12.5],
    ['1/2', 70, 11.3, 21.2],
    ['5/8', 70, 17.2, 32.1],
  ] as const)('of 20 ft of %s grade %d takes %d to %d liters', (size, grade, tight, clear) => {
    const { volume } = stowage({ chain: chainMass({ size, grade, length: '20 ft', units: 'si' }) });
    expect(volume.least.value).toBeCloseTo(tight, 1);
    expect(volume.most.value).toBeCloseTo(clear, 1);
    expect([volume.least.unit, volume.most.unit]).toEqual(['L', 'L']);
  });

  it.each([
    // m³ per 100 m: 1.1 · 15² · 100 / 10⁵ = 0.2475 and 100 · 15² / 48,612 = 0.4629; and so on
    [15, 0.247, 0.463],
    [20, 0.44, 0.823],
    [26, 0.744, 1.391],
    [32, 1.126, 2.106],
  ])('of 100 m of %d mm takes %d to %d m³', (d, tight, clear) => {
    const { volume } = stowage({ chain: { wireDiameter: mm(d), length: '100 m' } });
    expect(Math.abs(volume.least.value / 1000 - tight)).toBeLessThan(0.00051);
    expect(Math.abs(volume.most.value / 1000 - clear)).toBeLessThan(0.00051);
  });

  it('stays above the table of a yard, which is for chain that was stowed in rows (read in a page quoting it)', () => {
    const yard = [0.216, 0.247, 0.315, 0.387, 0.468, 0.558, 0.657, 0.76, 0.873, 0.994];
    for (const [index, printed] of yard.entries()) {
      const d = index === 0 ? 15 : 14 + 2 * index;
      const { volume } = stowage({ chain: { wireDiameter: mm(d), length: '100 m' } });
      expect(volume.least.value / 1000).toBeGreaterThan(printed);
      expect(volume.least.value / 1000).toBeLessThan(printed * 1.15);
    }
  });

  it('is the same by the inch forms of the rules, for the same diameter', () => {
    const ft3 = 0.3048 ** 3;
    const { 'small-craft-handbook': handbook, 'second-class-rule': second } = chainStorageVolume.rows;
    // L s² / 7 ft³, L in ft and s in inches; 0.85 L D² ft³, L in fathoms of 6 ft
    expect(ft3 / 7 / (0.3048 * 25.4 ** 2)).toBeCloseTo(handbook.numerator / handbook.divisor, 8);
    expect((0.85 * ft3) / (6 * 0.3048 * 25.4 ** 2)).toBeCloseTo(second.numerator / second.divisor, 7);
  });

  it('is a range of nearly two, tight below clear', () => {
    const {
      'class-rule': tight,
      'second-class-rule': second,
      'small-craft-handbook': handbook,
    } = chainStorageVolume.rows;
    const factors = [tight, second, handbook].map(({ numerator, divisor }) => numerator / divisor);
    expect([...factors].sort((a, b) => a - b)).toEqual(factors);
    expect((factors[2] as number) / (factors[0] as number)).toBeCloseTo(1.87, 2);
  });

  it('is shown in the system of the chain, or as asked', () => {
    const chain = chainMass({ size: '3/8', length: '20 ft' });
    const us = stowage({ chain }).volume.most;
    expect(us.unit).toBe('in3');
    const si = stowage({ chain, units: 'si' }).volume.most;
    expect((us.value * 25.4 ** 3) / 1e6).toBeCloseTo(si.value, 10);
  });
});

describe('a box', () => {
  // d = 10 mm, L = 48.612 m: clear room 100 · 48.612 / 48,612 = 0.1 m³; tight 1.1 · 100 · 48.612 / 10⁵ = 0.0534732 m³
  const chain = { wireDiameter: '10 mm', length: '48.612 m' } as const;
  const boxOf = (height: number) =>
    stowage({ chain, box: { length: '1 m', width: '1 m', height: meters(height) } }).box;

  it('at the hitch, 12 x 5 x 8 in inside, is less than half full with 10 ft of 1/4 in (common practice)', () => {
    const { box } = stowage({
      chain: chainMass({ size: '1/4', length: '10 ft' }),
      box: { length: '12 in', width: '5 in', height: '8 in' },
    });
    expect(box?.verdict).toBe('pass');
    expect(box?.filled.most).toBeLessThan(0.5);
    // by hand: 49 · 3.048 / 48.612 = 3.0723 L of 480 in³ = 7.8658 L
    expect(box?.filled.most).toBeCloseTo(0.3906, 4);
  });

  it.each([
    [0.1001, 'pass', undefined],
    [0.1, 'pass', undefined],
    [0.0999999, 'undetermined', ['ONLY_IF_STOWED_TIGHT']],
    [0.0534733, 'undetermined', ['ONLY_IF_STOWED_TIGHT']],
    [0.0534732, 'undetermined', ['ONLY_IF_STOWED_TIGHT']],
  ] as const)('of 1 m² and %d m high: %s', (height, verdict, missing) => {
    const box = boxOf(height);
    expect(box?.verdict).toBe(verdict);
    expect(box?.verdict === 'undetermined' ? codesOf(box.missing) : undefined).toEqual(missing);
  });

  it('is full to the brim at exactly 1', () => {
    expect(boxOf(0.1)?.filled.most).toBe(1);
    expect(boxOf(0.0534732)?.filled.least).toBe(1);
  });

  it('overflows when even a tight pile does not fit', () => {
    const box = boxOf(0.0534731);
    expect(box).toMatchObject({ verdict: 'fail', because: { code: 'PILE_OVERFLOWS' } });
    expect(box?.filled.least).toBeGreaterThan(1);
  });

  it.each([
    // widest short link: 3.7 · 10 = 37 mm
    ['36.9 mm', undefined, 'undetermined'],
    ['37 mm', undefined, 'pass'],
    ['37.1 mm', undefined, 'pass'],
    ['33.9 mm', '34 mm', 'undetermined'],
    ['34 mm', '34 mm', 'pass'],
  ] as const)('%s across, links of %s: %s, however empty', (width, outsideWidth, verdict) => {
    const box = { length: '9 m', width, height: '9 m' } as StowageBox;
    const fit = stowage({ chain: { ...chain, length: '1 m' }, box, ...(outsideWidth && { outsideWidth }) }).box;
    expect(fit?.verdict).toBe(verdict);
    if (fit?.verdict === 'undetermined') {
      expect(codesOf(fit.missing)).toEqual(['BOX_NARROWER_THAN_LINK']);
      expect(inWords(fit.missing)[0]?.text).toMatch(/box is 3\d\.9 mm across/);
    }
  });
});

describe('a pipe', () => {
  // d = 10 mm, links 34 mm wide; a pipe of 1.02 m takes runs of 1 m
  const pipeOf = (length: string, inside: number, outsideWidth: string | undefined = '34 mm') =>
    stowage({
      chain: { wireDiameter: '10 mm', length } as never,
      pipe: { insideDiameter: mm(inside), length: '1.02 m' },
      ...(outsideWidth && { outsideWidth: outsideWidth as '34 mm' }),
    }).pipe;

  it.each([
    ['0.5 m', 1],
    ['1 m', 1],
    ['1.0001 m', 2],
    ['2 m', 2],
    ['6.9 m', 7],
    ['7.0001 m', 8],
  ])('takes %s in %d strands', (length, strands) => {
    expect(pipeOf(length, 500)?.strands).toBe(strands);
  });

  it.each([
    // around n circles: 1, 2, 1 + 2/√3 = 2.1547, 1 + √2 = 2.4142, 1 + 1/sin 36° = 2.7013, 3, 3 (times 34 mm)
    [1, 34],
    [2, 68],
    [3, 73.2598],
    [4, 82.0833],
    [5, 91.8443],
    [6, 102],
    [7, 102],
  ])('takes %d strands at %d mm', (strands, enough) => {
    const length = `${strands} m`;
    expect(pipeOf(length, 500)?.enoughDiameter?.value).toBeCloseTo(enough, 4);
    expect(pipeOf(length, enough + 0.001)?.verdict).toBe('pass');
    if (Number.isInteger(enough)) expect(pipeOf(length, enough)?.verdict).toBe('pass');
    expect(pipeOf(length, enough - 0.001)?.verdict).toBe(strands === 1 ? 'fail' : 'undetermined');
  });

  it('has room for strands that keep apart: their centers, placed one by one', () => {
    for (let strands = 2; strands <= 7; strands++) {
      const radius = (pipeOf(`${strands} m`, 500)?.enoughDiameter?.value as number) / 2 - 17;
      const onRing = strands === 7 ? 6 : strands;
      const centers = Array.from({ length: onRing }, (_, index) => {
        const angle = (2 * Math.PI * index) / onRing;
        return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
      });
      if (strands === 7) centers.push([0, 0]);
      const gaps = centers.flatMap(([x, y], index) =>
        centers.slice(index + 1).map(([u, v]) => Math.hypot(x - u, y - v)),
      );
      expect(Math.min(...gaps), `${strands}`).toBeGreaterThanOrEqual(34 - 1e-9);
      expect(Math.min(...gaps), `${strands}`).toBeLessThan(34 + 1e-9);
    }
  });

  it('guesses nothing where strands might nest, or there are many', () => {
    const nested = pipeOf('2 m', 67.9);
    expect(nested?.verdict === 'undetermined' && codesOf(nested.missing)).toEqual(['STRANDS_MAY_NEST']);
    const many = pipeOf('8 m', 5000);
    expect(many?.verdict === 'undetermined' && codesOf(many.missing)).toEqual(['TOO_MANY_STRANDS']);
    expect(many?.enoughDiameter).toBeNull();
  });

  it('narrower than a link fails, where the link was measured', () => {
    expect(pipeOf('1 m', 33.9)).toMatchObject({ verdict: 'fail', because: { code: 'WIDER_THAN_PIPE' } });
    expect(pipeOf('9 m', 33.9)).toMatchObject({ verdict: 'fail', because: { code: 'WIDER_THAN_PIPE' } });
    const unknown = pipeOf('1 m', 36.9, '');
    expect(unknown?.verdict === 'undetermined' && codesOf(unknown.missing)).toEqual(['LINK_NOT_MEASURED']);
    expect(pipeOf('1 m', 37, '')?.verdict).toBe('pass');
  });

  it('says how wide it took the links to be', () => {
    const { assumptions } = stowage({
      chain: { wireDiameter: '10 mm', length: '1 m' },
      pipe: { insideDiameter: '40 mm', length: '2 m' },
    });
    expect(assumptions).toMatchObject([
      { code: 'WIDEST_SHORT_LINK', params: { width: { value: 37, unit: 'mm' }, times: 3.7 } },
    ]);
  });

  it('takes links at least as wide as any in the table of welded chain', () => {
    const widest = en818LinkLimits.rows['short-link'].outside_width_most_over_d;
    const rows = readTable('us-welded-chain').rows.filter((row) => row.inside_width_max_in !== '');
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) {
      const d = Number(row.wire_mm);
      const outside = amount(row.inside_width_max_in as string) * 25.4 + 2 * d;
      expect(outside, `${row.size} grade ${row.grade}`).toBeLessThan(widest * d);
    }
  });
});

describe('the answer', () => {
  it('has a box or a pipe only when asked', () => {
    expect(Object.keys(stowage({ chain: { wireDiameter: '10 mm', length: '1 m' } }))).not.toContain('box');
  });

  it('explains itself', () => {
    const sheet = explain(
      stowage({
        chain: chainMass({ size: '1/4', length: '10 ft' }),
        box: { length: '12 in', width: '5 in', height: '8 in' },
        pipe: { insideDiameter: '3 in', length: '4 ft' },
      }),
      { as: 'text' },
    );
    expect(sheet).toMatch(/Filled: least 0\.2\d+, most 0\.39/);
    expect(sheet).toMatch(/anchor chain, which differ by two/);
  });

  it('reads the length of a weighed chain back exactly: 21 ft fill three runs of 7 ft', () => {
    // a pipe of 7 ft and two wires of 10 mm: 2133.6 + 20 mm
    const pipe = { insideDiameter: '200 mm', length: '2153.6 mm' } as StowagePipe;
    for (const units of ['us', 'si'] as const) {
      const { pipe: fit } = stowage({ chain: chainMass({ size: '3/8', length: '21 ft', units }), pipe, units });
      expect(fit?.strands).toBe(3);
    }
  });
});

describe('wrong input', () => {
  const chain = { wireDiameter: '10 mm', length: '1 m' };
  const box = { length: '1 m', width: '1 m', height: '1 m' };
  const pipe = { insideDiameter: '40 mm', length: '1 m' };

  it.each([
    [undefined, 'MISSING_FIELD', ''],
    [{}, 'MISSING_FIELD', 'chain'],
    [{ chain: {} }, 'MISSING_FIELD', 'chain.wireDiameter'],
    [{ chain: { wireDiameter: '10 mm' } }, 'MISSING_FIELD', 'chain.length'],
    [{ chain: { ...chain, length: '0 m' } }, 'NOT_POSITIVE', 'chain.length'],
    [{ chain: { ...chain, length: '1 kg' } }, 'WRONG_KIND', 'chain.length'],
    [{ chain: { ...chain, massPerLength: '2 kg/m' } }, 'MISSING_FIELD', 'chain.mass'],
    [{ chain, outsideWidth: '20 mm' }, 'IMPOSSIBLE_GEOMETRY', 'outsideWidth'],
    [{ chain, box: 5 }, 'MISSING_FIELD', 'box'],
    [{ chain, box: { ...box, height: undefined } }, 'MISSING_FIELD', 'box.height'],
    [{ chain, box: { ...box, width: '-1 m' } }, 'NOT_POSITIVE', 'box.width'],
    [{ chain, pipe: null }, 'MISSING_FIELD', 'pipe'],
    [{ chain, pipe: { ...pipe, length: '20 mm' } }, 'IMPOSSIBLE_GEOMETRY', 'pipe.length'],
    [{ chain, pipe: { ...pipe, insideDiameter: undefined } }, 'MISSING_FIELD', 'pipe.insideDiameter'],
    [{ chain, box: { ...box, height: '10 in' } }, 'UNITS_REQUIRED', 'units'],
    [{ chain: { wireDiameter: '1 mm', length: { value: 1e308, unit: 'm' } } }, 'NOT_FINITE', 'value'],
  ])('%j gives %s at %s', (input, code, path) => {
    expect(issueOf(() => stowage(input as never))).toMatchObject({ code, path });
  });

  it('takes links only just wider than two wires', () => {
    expect(stowage({ chain: chain as never, outsideWidth: '20.001 mm' }).volume.least.value).toBeGreaterThan(0);
    expect(
      stowage({ chain: chain as never, pipe: { insideDiameter: '40 mm', length: '20.001 mm' } }).pipe?.strands,
    ).toBe(1_000_000);
  });
});
