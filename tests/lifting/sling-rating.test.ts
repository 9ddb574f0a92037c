import { describe, expect, it } from 'vitest';
import {
  type Angle,
  deDin5688_1986,
  euEn818_2008,
  type SlingHitch,
  type SlingRating,
  type StatedSling,
  slingRating,
  usAlloySling_2011,
} from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

const us = (hitch: SlingHitch, angle?: Angle, more: object = {}): SlingRating =>
  slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 80, hitch, ...(angle && { angle }), ...more });
const eu = (hitch: SlingHitch, angle?: Angle, more: object = {}): SlingRating =>
  slingRating({ ratings: euEn818_2008, size: '10 mm', grade: '8', hitch, ...(angle && { angle }), ...more });
const limit = ({ workingLoadLimit }: SlingRating) => workingLoadLimit?.value ?? null;
const codes = ({ checks }: SlingRating) =>
  checks.flatMap((check) =>
    'because' in check && check.verdict === 'fail'
      ? [check.because.code]
      : 'missing' in check
        ? check.missing.map(({ code }) => code)
        : [],
  );
const deg = (value: number) => `${value} deg` as const;

describe('table of the OSHA guidance: the next lower angle from the horizontal', () => {
  // 3/8 in grade 80: one leg 7100; two legs 12300, 10000, 7100; three or four 18400, 15100, 10600 (read)
  it.each([
    [90, 12_300],
    [60, 12_300],
    [59.999, 10_000],
    [50, 10_000],
    [45, 10_000],
    [44.999, 7100],
    [30, 7100],
  ])('two legs at %d degrees', (degrees, printed) => {
    expect(limit(us('double', { fromHorizontal: deg(degrees) }))).toBe(printed);
    expect(limit(us('double', { fromHorizontal: { value: degrees, unit: 'deg' } }))).toBe(printed);
  });

  it('takes an angle however it is counted', () => {
    expect(limit(us('quad', { fromVertical: '30 deg' }))).toBe(18_400);
    expect(limit(us('quad', { included: '60 deg' }))).toBe(18_400);
    expect(limit(us('quad', { fromVertical: '30.001 deg' }))).toBe(15_100);
    expect(limit(us('quad', { included: '60.001 deg' }))).toBe(15_100);
    expect(limit(us('triple', { included: '120 deg' }))).toBe(10_600);
    // 100 percent is 45 degrees
    expect(limit(us('triple', { fromHorizontal: '100 percent-grade' }))).toBe(15_100);
  });

  it('credits four legs with three, and says so', () => {
    const four = us('quad', { fromHorizontal: '60 deg' });
    expect(limit(four)).toBe(limit(us('triple', { fromHorizontal: '60 deg' })));
    expect(four.cautions.map(({ code }) => code)).toContain('QUAD_CREDITED');
  });

  it('refuses flatter than 30 degrees, unless a qualified person agrees; then by the formula alone', () => {
    const flat = us('double', { fromHorizontal: '29.999 deg' });
    expect([flat.verdict, limit(flat), codes(flat)]).toEqual(['fail', null, ['TOO_FLAT']]);
    expect(us('double', { fromHorizontal: '30 deg' }).verdict).toBe('pass');
    const asked = { qualifiedPerson: true };
    expect(issueOf(() => us('double', { fromHorizontal: '25 deg' }, asked)).code).toBe('NO_VALUE_IN_TABLE');
    // 2 · 7100 · sin 25 = 14200 · 0.422618 = 6001.2, down to 6000
    const by = us('double', { fromHorizontal: '25 deg' }, { ...asked, method: 'formula' });
    expect([limit(by), by.basis]).toEqual([6000, 'formula']);
  });

  it('takes a basket as two legs, twice one leg while it is within 5 degrees of plumb', () => {
    expect(limit(us('basket', { fromVertical: '5 deg' }))).toBe(14_200);
    expect(limit(us('basket', { fromVertical: '4.999 deg' }))).toBe(14_200);
    expect(limit(us('basket', { fromVertical: '5.001 deg' }))).toBe(12_300);
    expect(limit(us('double-basket', { fromVertical: '5 deg' }))).toBe(18_400);
  });

  it('a single leg hangs plumb, to 5 degrees', () => {
    expect(limit(us('single'))).toBe(7100);
    expect(limit(us('single', { fromVertical: '5 deg' }))).toBe(7100);
    expect(issueOf(() => us('single', { fromVertical: '5.001 deg' }))).toMatchObject({
      code: 'IMPOSSIBLE_GEOMETRY',
      path: 'angle',
    });
  });

  it('shows the kilograms of the printed pounds', () => {
    // 10000 · 0.45359237
    expect(us('double', { fromHorizontal: '45 deg' }, { units: 'si' }).workingLoadLimit).toMatchObject({
      value: 4535.9237,
      unit: 'kg',
    });
  });

  it('marks recalled rows', () => {
    const read = slingRating({ ratings: usAlloySling_2011, size: '1/2', grade: 100, hitch: 'single' });
    const recalled = slingRating({ ratings: usAlloySling_2011, size: '1', grade: 100, hitch: 'single' });
    const ofTable = (rating: SlingRating) => rating.sources.find(({ clause }) => clause === 'Table 2')?.provenance;
    expect([ofTable(read), ofTable(recalled)]).toEqual(['read', 'memory']);
  });
});

describe('EN 818: two ranges from the vertical', () => {
  // 10 mm grade 8: 3150; two legs 4250, 3150; three or four 6700, 4750 (read)
  it.each([
    [0, 4250],
    [45, 4250],
    [45.001, 3150],
    [60, 3150],
  ])('two legs at %d degrees', (degrees, printed) => {
    expect(limit(eu('double', { fromVertical: deg(degrees) }))).toBe(printed);
  });

  it('never goes over 60 degrees, whoever agrees', () => {
    const flat = eu('triple', { fromVertical: '60.001 deg' }, { qualifiedPerson: true, method: 'formula' });
    expect([flat.verdict, limit(flat), codes(flat)]).toEqual(['fail', null, ['TOO_FLAT']]);
  });

  it('has 7 mm of grade 8 from memory', () => {
    const seven = slingRating({
      ratings: euEn818_2008,
      size: '7 mm',
      grade: '8',
      hitch: 'quad',
      angle: { fromVertical: '50 deg' },
    });
    expect(limit(seven)).toBe(2240);
    expect(seven.sources.some(({ provenance }) => provenance === 'memory')).toBe(true);
  });

  it('chokes by the printed columns of grade 4, and by the factor 0.8 where asked', () => {
    const four = (hitch: SlingHitch, angle?: Angle) =>
      slingRating({ ratings: euEn818_2008, size: '20 mm', grade: '4', hitch, ...(angle && { angle }) });
    expect(limit(four('choker'))).toBe(5040);
    expect(limit(four('double-choker', { fromVertical: '45 deg' }))).toBe(7050);
    expect(limit(four('double-choker', { fromVertical: '46 deg' }))).toBe(5040);
    expect(limit(four('endless-choker'))).toBe(10_000);
    expect(issueOf(() => eu('choker')).code).toBe('NO_VALUE_IN_TABLE');
    // 0.8 · 3150 = 2520; 1.6 · 3150 = 5040
    expect(limit(eu('choker', undefined, { method: 'formula' }))).toBe(2520);
    expect(limit(eu('endless-choker', undefined, { method: 'formula' }))).toBe(5040);
  });

  it('leaves the table before the formula, though the formula would give more', () => {
    // 2 · 3150 · cos 20 = 5920; the table prints 4250
    const both = eu('double', { fromVertical: '20 deg' }, { method: 'formula' });
    expect([limit(both), both.basis, both.assumptions.map(({ code }) => code)]).toEqual([
      4250,
      'table',
      expect.arrayContaining(['TABLE_BEFORE_FORMULA']),
    ]);
  });
});

describe('DIN 5688, class 5', () => {
  it('has no three legs of 40 and 45 mm, and no formula either', () => {
    for (const size of ['40 mm', '45 mm'] as const) {
      const ask = (method?: 'formula') =>
        slingRating({
          ratings: deDin5688_1986,
          size,
          grade: '5',
          hitch: 'triple',
          angle: { fromVertical: '30 deg' },
          ...(method && { method }),
        });
      expect(issueOf(() => ask()).code).toBe('NO_VALUE_IN_TABLE');
      expect(issueOf(() => ask('formula')).code).toBe('NO_VALUE_IN_TABLE');
    }
  });

  it('counts unlike legs by its own factors of one leg', () => {
    // 10 mm: one leg 2000 kg; three legs to 45: 1.5, over 45: 1; two legs: 1 (read)
    const unlike = (hitch: SlingHitch, ...from: number[]) =>
      limit(
        slingRating({
          ratings: deDin5688_1986,
          size: '10 mm',
          grade: '5',
          hitch,
          legAngles: from.map((value) => ({ fromVertical: deg(value) })),
        }),
      );
    expect(unlike('triple', 15, 30, 45)).toBe(3000);
    expect(unlike('triple', 15, 30, 45.001)).toBe(2000);
    expect(unlike('quad', 15, 30, 45, 40)).toBe(3000);
    expect(unlike('double', 20, 40)).toBe(2000);
  });
});

describe('formula: legs · choke · one leg · sin, down to a whole step', () => {
  const by = (hitch: SlingHitch, singleLegWll: '2000 lb' | '10600 lb', angle?: Angle, more: object = {}) =>
    slingRating({
      ratings: usAlloySling_2011,
      grade: 100,
      hitch,
      singleLegWll,
      method: 'formula',
      ...(angle && { angle }),
      ...more,
    });

  it('rounds down, never up, and not below a value that is whole', () => {
    expect(limit(by('triple', '2000 lb', { fromHorizontal: '30 deg' }))).toBe(3000); // 3 · 2000 · 0.5, whole
    expect(limit(by('double', '2000 lb', { fromHorizontal: '60 deg' }))).toBe(3400); // 3464.1
    expect(limit(by('double', '10600 lb', { fromHorizontal: '45 deg' }))).toBe(14_900); // 14990.7
    expect(limit(by('double-basket', '2000 lb', { fromHorizontal: '90 deg' }))).toBe(6000);
  });

  it('chokes with 0.75 over 120 degrees, as the guidance words it; 120 itself only a standard takes', () => {
    const choke = (chokeAngle?: string) =>
      us('choker', undefined, { method: 'formula', ...(chokeAngle && { chokeAngle }) });
    expect(limit(choke('120.001 deg'))).toBe(5300); // 0.75 · 7100 = 5325
    expect([choke('120 deg').verdict, codes(choke('120 deg'))]).toEqual(['fail', ['CHOKE_TOO_SHARP']]);
    expect(choke('119.999 deg').verdict).toBe('fail');
    expect([choke().verdict, limit(choke()), codes(choke())]).toEqual([
      'undetermined',
      null,
      ['CHOKE_ANGLE_NOT_STATED'],
    ]);
    // a bridle of chokers: 2 · 0.75 · 7100 · sin 60 = 9223.1
    expect(limit(us('double-choker', { fromHorizontal: '60 deg' }, { method: 'formula', chokeAngle: '130 deg' }))).toBe(
      9200,
    );
  });

  it('is used only where it is asked for, and says whose it is', () => {
    const formula = by('double', '2000 lb', { fromHorizontal: '60 deg' });
    expect(formula.basis).toBe('formula');
    expect(formula.sources.some(({ clause }) => clause === 'ASME B30.9, chapter 9-1')).toBe(true);
    expect(issueOf(() => by('double', '2000 lb', { fromHorizontal: '60 deg' }, { method: undefined })).code).toBe(
      'NO_VALUE_IN_TABLE',
    );
    expect(issueOf(() => us('endless-choker', undefined, { method: 'formula', chokeAngle: '130 deg' })).code).toBe(
      'NO_VALUE_IN_TABLE',
    );
  });

  it('refuses a sling that rounds down to nothing', () => {
    const tiny = () =>
      slingRating({ ratings: usAlloySling_2011, grade: 80, hitch: 'single', singleLegWll: '99 lb', method: 'formula' });
    expect(issueOf(tiny).code).toBe('NO_VALUE_IN_TABLE');
  });
});

describe('grades for lifting', () => {
  it.each([30, 43, 70] as const)(
    'grade %d fails by the scope of its standard, with practice and regulation beside it',
    (grade) => {
      const low = slingRating({ ratings: usAlloySling_2011, size: '3/8', grade, hitch: 'single', load: '10 lb' });
      expect([low.verdict, low.workingLoadLimit, low.basis]).toEqual(['fail', null, null]);
      expect(low.checks.map(({ id, weight, verdict }) => [id, weight, verdict])).toEqual([
        ['grade/scope', 'requirement', 'fail'],
        ['grade/practice', 'practice', 'fail'],
        ['grade/regulation', 'practice', 'not-applicable'],
      ]);
      expect(low.checks[0]?.clause).toBe('ASTM A413/A413M, scope');
    },
  );

  it('classes 4, 5 and 8 lift where they are tabled', () => {
    expect(slingRating({ ratings: euEn818_2008, size: '8 mm', grade: '4', hitch: 'single' }).verdict).toBe('pass');
    expect(slingRating({ ratings: deDin5688_1986, size: '8 mm', grade: '5', hitch: 'single' }).verdict).toBe('pass');
    expect(eu('single').verdict).toBe('pass');
  });

  it('grade 120 goes by its mark alone', () => {
    const marked = (more: object) =>
      slingRating({ ratings: usAlloySling_2011, grade: 120, hitch: 'single', ...more } as unknown as StatedSling);
    expect(marked({ markedWll: '10600 lb' }).verdict).toBe('pass');
    expect(codes(marked({ size: '3/8' }))).toEqual(['GRADE_BY_MARK_ALONE']);
  });

  it('a tag without a grade leaves it open', () => {
    const open = slingRating({ ratings: usAlloySling_2011, hitch: 'single', markedWll: '7100 lb' });
    expect([open.verdict, open.workingLoadLimit, codes(open)]).toEqual([
      'undetermined',
      null,
      ['SLING_GRADE_NOT_STATED'],
    ]);
  });
});

describe('the tag governs', () => {
  it('above and below the table', () => {
    for (const markedWll of ['5000 lb', '20000 lb'] as const) {
      const marked = us('double', { fromHorizontal: '60 deg' }, { markedWll, markedAt: { fromHorizontal: '60 deg' } });
      expect([limit(marked), marked.basis]).toEqual([Number.parseInt(markedWll, 10), 'marked']);
    }
  });

  it('not for legs flatter than it rates', () => {
    const at = (fromHorizontal: '60 deg' | '59.999 deg', markedAt: Angle) =>
      us('double', { fromHorizontal }, { markedWll: '12300 lb', markedAt });
    expect(at('60 deg', { fromHorizontal: '60 deg' }).verdict).toBe('pass');
    expect(codes(at('59.999 deg', { fromHorizontal: '60 deg' }))).toEqual(['FLATTER_THAN_TAG']);
    expect(at('60 deg', { fromVertical: '30 deg' }).verdict).toBe('pass');
  });

  it('of legs that lean needs the angle it rates', () => {
    const open = us('double', { fromHorizontal: '30 deg' }, { markedWll: '12300 lb', load: '12000 lb' });
    expect([open.verdict, open.workingLoadLimit, codes(open)]).toEqual([
      'undetermined',
      null,
      ['TAG_ANGLE_NOT_STATED'],
    ]);
    expect(us('single', undefined, { markedWll: '7100 lb' }).verdict).toBe('pass');
  });

  it('of a choker does not make a stated angle of choke good', () => {
    const tag = (chokeAngle?: string) =>
      us('choker', undefined, { markedWll: '5300 lb', ...(chokeAngle && { chokeAngle }) });
    expect([tag(), tag('120.001 deg'), tag('180 deg')].map(({ verdict }) => verdict)).toEqual(['pass', 'pass', 'pass']);
    expect([codes(tag('120 deg')), codes(tag('30 deg'))]).toEqual([['CHOKE_TOO_SHARP'], ['CHOKE_TOO_SHARP']]);
    expect(issueOf(() => tag('180.001 deg'))).toMatchObject({ code: 'IMPOSSIBLE_GEOMETRY', path: 'chokeAngle' });
  });

  it('decides the load exactly, mass or force', () => {
    const marked = (load: string) => us('single', undefined, { markedWll: '10 kN', load }).verdict;
    expect(marked('10 kN')).toBe('pass');
    expect(marked('10000.0001 N')).toBe('fail');
    const listed = (load: string) => us('single', undefined, { load }).verdict;
    expect([listed('7100 lb'), listed('7100.0001 lb'), listed('3.55 short-ton'), listed('3220.505827 kg')]).toEqual([
      'pass',
      'fail',
      'pass',
      'pass',
    ]);
    // 7100 lb = 3220.505827 kg exactly
    expect(listed('3220.505828 kg')).toBe('fail');
  });
});

describe('heat and cold', () => {
  const hot = (temperature: string, grade: 80 | 100 = 80) =>
    slingRating({ ratings: usAlloySling_2011, size: '3/8', grade, hitch: 'single', temperature: temperature as '1 F' });
  it('ASME: nothing below 400 F, the next higher row between, out of service over 1000 F', () => {
    // from memory: grade 80 10, 15 ... 60 percent at 400, 500 ... 1000 F; grade 100 15 ... 70
    expect(limit(hot('399.9 F'))).toBe(7100);
    expect(limit(hot('400 F'))).toBe(6390); // 7100 · 0.9
    expect(limit(hot('400.1 F'))).toBe(6035); // 7100 · 0.85
    expect(limit(hot('1000 F'))).toBe(2840); // 7100 · 0.4
    expect([hot('1000.1 F').verdict, codes(hot('1000.1 F'))]).toEqual(['fail', ['TOO_HOT']]);
    expect(limit(hot('400 F', 100))).toBe(7480); // 8800 · 0.85
    expect(limit(hot('250 C'))).toBe(6035); // 482 F: row 500
  });

  it('ASME: some comes off for good', () => {
    const once = (hottest: string) => us('single', undefined, { temperature: '70 F', hottest });
    expect(limit(once('599 F'))).toBe(6745); // row 600: 5 percent
    expect(limit(once('500 F'))).toBe(7100);
    expect(limit(once('900 F'))).toBe(5680); // 20 percent
    expect(codes(once('1001 F'))).toEqual(['TOO_HOT']);
  });

  it('what comes off now and what came off for good both count, one after the other', () => {
    // grade 80 at 900 F: 50 percent now, 20 for good (from memory): 7100 · 0.5 · 0.8 = 2840
    const both = us('single', undefined, { temperature: '900 F', hottest: '900 F' });
    expect([limit(both), both.assumptions.map(({ code }) => code)]).toEqual([
      2840,
      expect.arrayContaining(['HEAT_TAKEN_TWICE']),
    ]);
    expect(both.sources.some(({ provenance }) => provenance === 'interpretation')).toBe(true);
    // 500 F takes nothing for good
    const once = us('single', undefined, { temperature: '900 F', hottest: '500 F' });
    expect([limit(once), once.assumptions.some(({ code }) => code === 'HEAT_TAKEN_TWICE')]).toEqual([3550, false]);
  });

  it('EN: a range includes its upper end', () => {
    const at = (temperature: string) => eu('single', undefined, { temperature });
    expect(limit(at('200 C'))).toBe(3150);
    expect(limit(at('200.1 C'))).toBe(2835); // 10 percent
    expect(limit(at('300 C'))).toBe(2835);
    expect(limit(at('300.1 C'))).toBe(2362.5); // 25 percent
    expect(limit(at('400 C'))).toBe(2362.5);
    expect(codes(at('400.1 C'))).toEqual(['TOO_HOT']);
    expect(limit(at('752 F'))).toBe(2362.5); // 400 C
  });

  it('cold: each grade has its limit', () => {
    expect(hot('-40 F').verdict).toBe('pass');
    expect(codes(hot('-40.1 F'))).toEqual(['TOO_COLD']);
    expect(hot('-20 F', 100).verdict).toBe('pass');
    expect(codes(hot('-20.1 F', 100))).toEqual(['TOO_COLD']);
    expect(eu('single', undefined, { temperature: '-40 C' }).verdict).toBe('pass');
    expect(codes(eu('single', undefined, { temperature: '-40.1 C' }))).toEqual(['TOO_COLD']);
  });

  it('a grade without rows is open', () => {
    const open = slingRating({
      ratings: usAlloySling_2011,
      grade: 120,
      hitch: 'single',
      markedWll: '9 kip',
      temperature: '500 F',
    });
    expect([open.verdict, codes(open)]).toEqual(['undetermined', ['HEAT_NOT_LISTED']]);
  });
});

describe('legs that are not alike', () => {
  const pair = (one: string, other: string, load?: string): SlingRating =>
    eu('double', undefined, { legAngles: [{ fromVertical: one }, { fromVertical: other }], ...(load && { load }) });

  // EN 818-6, from memory: load under 80 % of the limit, every leg 15 degrees or more, within 15 of each other
  it('EN: at, below and above each limit of the test', () => {
    expect(limit(pair('15 deg', '30 deg', '3399.9 kg'))).toBe(4250); // 0.8 · 4250 = 3400
    expect(limit(pair('15 deg', '30 deg', '3400 kg'))).toBe(2125); // half
    expect(limit(pair('14.999 deg', '29 deg', '1000 kg'))).toBe(2125);
    expect(limit(pair('15.1 deg', '30.1 deg', '1000 kg'))).toBe(4250);
    expect(limit(pair('15 deg', '30.001 deg', '1000 kg'))).toBe(2125);
    expect(limit(pair('15 deg', '30 deg'))).toBe(2125); // the load is not known
    expect(limit(pair('30 deg', '30 deg'))).toBe(4250); // alike
  });

  it('EN: three legs also in plan', () => {
    const three = (planAngles?: string[]) =>
      eu('triple', undefined, {
        legAngles: [{ fromVertical: '20 deg' }, { fromVertical: '25 deg' }, { fromVertical: '30 deg' }],
        load: '1000 kg',
        ...(planAngles && { planAngles }),
      });
    // 10 mm three legs: 6700 kg
    expect(limit(three(['115 deg', '120 deg', '125 deg']))).toBe(6700);
    expect(limit(three(['112 deg', '120 deg', '127 deg']))).toBe(6700);
    expect(limit(three(['112 deg', '120 deg', '127.001 deg']))).toBe(3350);
    expect(limit(three())).toBe(3350);
  });

  it('legs that lean alike but are not spread alike in plan', () => {
    const three = (...planAngles: string[]) =>
      eu('triple', { fromVertical: '30 deg' }, { load: '1000 kg', planAngles });
    expect(limit(three('120 deg', '120 deg', '120 deg'))).toBe(6700);
    expect(limit(three('112.5 deg', '120 deg', '127.5 deg'))).toBe(6700); // 15 apart
    expect(limit(three('112.4 deg', '120 deg', '127.6 deg'))).toBe(3350);
    const two = (...planAngles: string[]) => us('double', { fromHorizontal: '60 deg' }, { planAngles });
    expect([limit(two('180 deg', '180 deg')), codes(two('170 deg', '190 deg'))]).toEqual([12_300, ['LEGS_NOT_ALIKE']]);
    // measured by hand: a degree more or less all around
    expect(limit(three('119 deg', '120 deg', '120 deg'))).toBe(6700);
    for (const around of ['118.999 deg', '121.001 deg']) {
      expect(issueOf(() => three(around, '120 deg', '120 deg'))).toMatchObject({
        code: 'IMPOSSIBLE_GEOMETRY',
        path: 'planAngles',
      });
    }
  });

  it('United States: nobody rates them, the tension of each leg can be told', () => {
    const unlike = us('double', undefined, { legAngles: [{ fromHorizontal: '60 deg' }, { fromHorizontal: '50 deg' }] });
    expect([unlike.verdict, unlike.workingLoadLimit, codes(unlike)]).toEqual([
      'undetermined',
      null,
      ['LEGS_NOT_ALIKE'],
    ]);
  });
});

describe('errors', () => {
  it.each([
    ['UNKNOWN_RATING_TABLE', 'ratings', () => us('single', undefined, { ratings: {} })],
    ['UNKNOWN_RATING_TABLE', 'ratings', () => us('single', undefined, { ratings: { ranges: [] } })],
    [
      'UNKNOWN_RATING_TABLE',
      'ratings',
      () => us('single', undefined, { ratings: { ...usAlloySling_2011, ranges: [] } }),
    ],
    ['UNKNOWN_RATING_TABLE', 'ratings', () => us('single', undefined, { ratings: { ...usAlloySling_2011, heat: {} } })],
    ['EMPTY_LIST', 'planAngles', () => us('triple', { fromVertical: '5 deg' }, { planAngles: [] })],
    ['EMPTY_LIST', 'planAngles', () => us('triple', { fromVertical: '5 deg' }, { planAngles: {} })],
    [
      'CONFLICTING_FIELDS',
      'planAngles',
      () => us('triple', { fromVertical: '5 deg' }, { planAngles: ['180 deg', '180 deg'] }),
    ],
    [
      'NOT_POSITIVE',
      'planAngles[0]',
      () => us('double', { fromVertical: '5 deg' }, { planAngles: ['0 deg', '360 deg'] }),
    ],
    [
      'CONFLICTING_FIELDS',
      'singleLegWll',
      () => us('double', { fromVertical: '30 deg' }, { singleLegWll: '20000 lb', method: 'formula' }),
    ],
    ['NO_VALUE_IN_TABLE', 'angle', () => us('double', { fromHorizontal: '20 deg' }, { qualifiedPerson: true })],
    ['UNKNOWN_VALUE', 'hitch', () => us('bridle' as 'single')],
    ['UNKNOWN_SIZE', 'size', () => us('single', undefined, { size: '7/16' })],
    ['UNKNOWN_SIZE', 'size', () => us('single', undefined, { size: 'constructor' })],
    ['UNKNOWN_GRADE', 'grade', () => us('single', undefined, { grade: '8' })],
    ['UNKNOWN_GRADE', 'grade', () => us('single', undefined, { grade: 85 })],
    ['MISSING_FIELD', 'angle', () => us('double')],
    ['MISSING_FIELD', 'angle', () => us('double', {} as Angle)],
    ['CONFLICTING_FIELDS', 'angle', () => us('double', { fromVertical: '5 deg', fromHorizontal: '85 deg' } as Angle)],
    ['CONFLICTING_FIELDS', 'legAngles', () => us('double', { fromVertical: '5 deg' }, { legAngles: [] })],
    ['CONFLICTING_FIELDS', 'legAngles', () => us('double', undefined, { legAngles: [{ fromVertical: '5 deg' }] })],
    ['IMPOSSIBLE_GEOMETRY', 'angle.fromHorizontal', () => us('double', { fromHorizontal: '0 deg' })],
    ['IMPOSSIBLE_GEOMETRY', 'angle.fromHorizontal', () => us('double', { fromHorizontal: '90.001 deg' })],
    ['IMPOSSIBLE_GEOMETRY', 'angle.fromVertical', () => us('double', { fromVertical: '90 deg' })],
    ['IMPOSSIBLE_GEOMETRY', 'angle.included', () => us('double', { included: '180 deg' })],
    ['WRONG_KIND', 'angle.fromVertical', () => us('double', { fromVertical: '5 ft' as '5 deg' })],
    ['NOT_POSITIVE', 'load', () => us('single', undefined, { load: '0 lb' })],
    ['NOT_POSITIVE', 'markedWll', () => us('single', undefined, { markedWll: '0 lb' })],
    ['WRONG_KIND', 'temperature', () => us('single', undefined, { temperature: '5 deg' })],
    ['UNKNOWN_VALUE', 'method', () => us('single', undefined, { method: 'guess' })],
  ] as const)('%s at %s', (code, path, call) => {
    expect(issueOf(call as () => unknown)).toMatchObject({ code, path });
  });
});
