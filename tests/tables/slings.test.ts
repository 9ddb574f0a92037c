// The sling tables by a second route: the factor of the hitch times one leg, and the chain of another table.
import { describe, expect, it } from 'vitest';
import { type Row, readTable } from '../../.config/tables/tables.js';
import { amount } from './amount.js';

const rowsOf = (id: string): readonly Row[] => readTable(id).rows;
const num = (row: Row, column: string): number => amount(row[column] ?? '');

describe('United States: the nearest hundred of legs · one leg · sin(angle)', () => {
  const cells = (grade: number) =>
    rowsOf(`us-osha-slings-2011-grade-${grade}`).flatMap((row) =>
      (['double', 'triple'] as const).flatMap((hitch) =>
        [60, 45, 30].map((angle) => {
          const sine = angle === 30 ? 0.5 : Math.sin((angle * Math.PI) / 180);
          const plain = (hitch === 'double' ? 2 : 3) * num(row, 'single_lb') * sine;
          return { name: `${grade} ${row.size} ${hitch} ${angle}`, printed: num(row, `${hitch}_${angle}_lb`), plain };
        }),
      ),
    );

  it('but for the cells that the source prints otherwise', () => {
    const all = [...cells(80), ...cells(100)];
    expect(all.length).toBe(120);
    const off = all.filter(({ printed, plain }) => Math.abs(printed - plain) > 50);
    // 7/32: 3 · 2100 · 0.7071 = 4454.8, printed 4400; 5/8: 2 · 18100 · 0.8660 = 31350.1, printed 31300;
    // 1 in: 2 · 47700 · 0.7071 = 67458, printed 67400. All three on the safe side
    expect(off.map(({ name }) => name).sort()).toEqual(['80 1 double 45', '80 5/8 double 60', '80 7/32 triple 45']);
    for (const { printed, plain } of off) expect(printed).toBeLessThan(plain);
  });

  it('halves between two hundreds go either way', () => {
    const halves = cells(80).filter(({ plain }) => plain % 100 === 50);
    expect(halves.some(({ printed, plain }) => printed > plain)).toBe(true);
    expect(halves.some(({ printed, plain }) => printed < plain)).toBe(true);
    for (const { printed, plain } of halves) expect(Math.abs(printed - plain)).toBe(50);
  });

  it('one leg is the chain by itself', () => {
    const welded = rowsOf('us-welded-chain');
    let compared = 0;
    for (const grade of [80, 100]) {
      for (const row of rowsOf(`us-osha-slings-2011-grade-${grade}`)) {
        const chain = welded.find((each) => each.size === row.size && each.grade === String(grade));
        if (chain === undefined) continue;
        expect(row.single_lb, `${row.size} grade ${grade}`).toBe(chain.wll_lb);
        compared++;
      }
    }
    expect(compared).toBe(18); // grade 100 chain is listed to 7/8
  });
});

describe('Europe: 1.4, 1, 2.1 and 1.5 times one leg, rounded to preferred numbers', () => {
  const FACTORS = { double_45_kg: 1.4, double_60_kg: 1, triple_45_kg: 2.1, triple_60_kg: 1.5 };
  const cells = ['eu-en818-4-2008-grade-8', 'eu-en818-5-2008-grade-4', 'de-din5688-1986-grade-5'].flatMap((id) =>
    rowsOf(id).flatMap((row) =>
      Object.entries(FACTORS)
        .filter(([column]) => row[column] !== '')
        .map(([column, factor]) => ({
          name: `${id.slice(-7)} ${row.size} ${column}`,
          over: num(row, column) / (factor * num(row, 'single_kg')) - 1,
        })),
    ),
  );

  it('from 4.8 percent below to 5.4 above; three cells are above by more than a rounding', () => {
    expect(cells.length).toBe(16 * 4 + 13 * 4 + 14 * 4 - 4);
    for (const { name, over } of cells) {
      expect(over, name).toBeGreaterThan(-0.048);
      expect(over, name).toBeLessThan(0.054);
    }
    expect(
      cells
        .filter(({ over }) => over > 0.021)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['grade-4 23 mm double_45_kg', 'grade-4 23 mm triple_60_kg', 'grade-5 26 mm double_45_kg']);
  });

  it('chokers: 0.8 of one leg and of two, 1.6 endless', () => {
    for (const id of ['eu-en818-4-2008-grade-8', 'eu-en818-5-2008-grade-4']) {
      for (const row of rowsOf(id).filter((each) => each.choke_single_kg !== '')) {
        const one = num(row, 'single_kg');
        const name = `${id} ${row.size}`;
        expect(num(row, 'choke_single_kg') / one, name).toBeCloseTo(0.8, 9);
        expect(num(row, 'choke_double_60_kg') / one, name).toBeCloseTo(0.8, 9);
        // down to ten kilograms
        expect(Math.abs(num(row, 'choke_double_45_kg') - 1.12 * one), name).toBeLessThan(10);
        // 10 and 32 mm 1.5625, 23 mm 1.65
        expect(Math.abs(num(row, 'endless_choke_kg') / one / 1.6 - 1), name).toBeLessThan(0.032);
      }
    }
  });

  it('one leg of grade 8 is a quarter of 800 N/mm² over two sections, to preferred numbers', () => {
    for (const row of rowsOf('eu-en818-4-2008-grade-8')) {
      const d = amount(row.size ?? '');
      const quarter = (800 * 2 * (Math.PI / 4) * d * d) / 4 / 9.80665;
      // farthest: 7 mm, 1500 of 1569.9
      expect(Math.abs(num(row, 'single_kg') / quarter - 1), row.size).toBeLessThan(0.045);
    }
  });
});
