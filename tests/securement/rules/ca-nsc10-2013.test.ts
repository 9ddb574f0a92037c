// Canada, NSC Standard 10 of June 2013. Every threshold is tried at the value, just below and just above, in text, in
// metric text and as objects; then the traps, and where a plan is lawful on one side of the border only. Section 22,
// Division 7's four tie-downs and 2,268 kg, the blocking share, the inspections and the chain table are from memory.
import {
  type Article,
  caNsc10_2013,
  caNsc10_chain_2013,
  chainRating,
  cm,
  ft,
  identifyChain,
  inches,
  kg,
  lb,
  m,
  mm,
  type Part,
  type SecurementCheck,
  type TieDown,
  t,
  tieDownsRequired,
  us49cfr393_2024,
  type Vehicle,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../../quantities/issue-of.js';
import {
  check,
  checkLoosely,
  checkOf,
  codes,
  crate,
  type Length,
  type Mass,
  machine,
  missingIn,
  ofParts,
  type RatedLoad,
  rated,
  reasonOf,
  several,
  throughJson,
} from '../plans.js';

const inCanada = (
  articles: readonly Article[],
  tieDowns: readonly TieDown[],
  more: { readonly vehicle?: Vehicle; readonly working?: boolean; readonly units?: 'us' | 'si' } = {},
): SecurementCheck => check(articles, tieDowns, { rules: caNsc10_2013, ...more });

const required = (article: Omit<Article, 'id'>) => tieDownsRequired({ rules: caNsc10_2013, article });
const count = (article: Omit<Article, 'id'>) => required(article).minimumCount;

interface Threshold<Form> {
  readonly at: readonly Form[];
  readonly below: readonly Form[];
  readonly above: readonly Form[];
}

/** Every form below, at and above a threshold, with the count expected of each. */
function expectSteps<Form>(
  { at, below, above }: Threshold<Form>,
  countOf: (form: Form) => number,
  atOrBelow: number,
  over: number,
): void {
  for (const form of [...below, ...at]) expect(countOf(form), JSON.stringify(form)).toBe(atOrBelow);
  for (const form of above) expect(countOf(form), JSON.stringify(form)).toBe(over);
}

// 1.52 m = 152 cm = 1520 mm. 5 ft = 1.524 m is above it. 1.52 m = 59.8425... in: 59 53/64 in = 1.519634 m, 59 27/32 in = 1.520031 m.
const SHORT: Threshold<Length> = {
  at: ['1.52 m', '1520 mm', '152 cm', m(1.52), mm(1520), cm(152), { value: 1.52, unit: 'm' }, throughJson(m(1.52))],
  below: [
    '1.5199999 m',
    '1519.9999 mm',
    '59 53/64 in',
    '4 ft 11 in',
    m(1.5199999),
    inches(59.84),
    throughJson(mm(1519.9)),
  ],
  above: ['1.5200001 m', '1520.0001 mm', '59 27/32 in', '5 ft', '1.524 m', m(1.5200001), ft(5), throughJson(ft(5))],
};

// 500 kg = 0.5 t; 1,100 lb = 498.95 kg is below it, 1,102 lb = 499.858... kg too, 1,103 lb = 500.312... kg is above.
const LIGHT: Threshold<Mass> = {
  at: ['500 kg', '0.5 t', kg(500), t(0.5), { value: 500, unit: 'kg' }, throughJson(kg(500))],
  below: ['499.9999 kg', '0.4999999 t', '1100 lb', '1102 lb', kg(499.9999), lb(1102), throughJson(lb(1102))],
  above: ['500.0001 kg', '0.5000001 t', '1103 lb', kg(500.0001), lb(1103), throughJson(kg(500.0001))],
};

// 3.04 m = 304 cm; 10 ft = 3.048 m is above it. 3.04 m = 119.685... in: 119 11/16 in = 3.0400625 m, 119 43/64 in = 3.0396656 m.
const STEP: Threshold<Length> = {
  at: ['3.04 m', '3040 mm', '304 cm', m(3.04), mm(3040), cm(304), { value: 3.04, unit: 'm' }, throughJson(m(3.04))],
  below: ['3.0399999 m', '3039.9999 mm', '119 43/64 in', '9 ft 11 in', m(3.0399999), throughJson(mm(3039.9))],
  above: ['3.0400001 m', '3040.0001 mm', '119 11/16 in', '10 ft', '3.048 m', ft(10), m(3.0400001), throughJson(ft(10))],
};

// 4,500 kg = 4.5 t. 9,920 lb = 4,499.636... kg is below it, 9,921 lb = 4,500.089... kg is above.
const HEAVY: Threshold<Mass> = {
  at: ['4500 kg', '4.5 t', kg(4500), t(4.5), { value: 4500, unit: 'kg' }, throughJson(kg(4500))],
  below: ['4499.9999 kg', '4.4999999 t', '9920 lb', kg(4499.9999), lb(9920), throughJson(lb(9920))],
  above: [
    '4500.0001 kg',
    '4.5000001 t',
    '9921 lb',
    '9999 lb',
    '10000 lb',
    kg(4500.0001),
    lb(9921),
    throughJson(lb(9921)),
  ],
};

describe('section 22: the number by length and mass', () => {
  it('1.52 m, light: one, else two', () => {
    expectSteps(SHORT, (length) => count({ kind: 'general', mass: '500 kg', length }), 1, 2);
  });
  it('500 kg, short: one, else two', () => {
    expectSteps(LIGHT, (mass) => count({ kind: 'general', mass, length: '1.52 m' }), 1, 2);
  });
  it('3.04 m, not blocked: two, else three', () => {
    expectSteps(STEP, (length) => count({ kind: 'general', mass: '600 kg', length }), 2, 3);
  });
  it('3.04 m, blocked forward: one, else two', () => {
    expectSteps(STEP, (length) => count({ kind: 'general', mass: '600 kg', length, blockedForward: true }), 1, 2);
  });
  test.each([
    // not blocked: 2 + ceil((L − 3.04)/3.04); blocked: ceil(L/3.04)
    ['6.08 m', 3, 2],
    ['6.0800001 m', 4, 3],
    ['9.12 m', 4, 3],
    ['9.1200001 m', 5, 4],
    ['20 ft', 4, 3], // 6.096 m; three and two in the United States
    ['13 m', 6, 5], // 9.96/3.04 = 3.28; 13/3.04 = 4.28
    ['0.3 m', 2, 1],
  ] as const)('%s: %i, blocked %i', (length, free, blocked) => {
    expect(count({ kind: 'general', mass: '600 kg', length })).toBe(free);
    expect(count({ kind: 'general', mass: '600 kg', length, blockedForward: true })).toBe(blocked);
  });
  test.each([
    ['1.52 m', '500 kg', false, '1 for L ≤ 1.52 m and W ≤ 500 kg'],
    ['1.52 m', '501 kg', false, '2 for L ≤ 1.52 m and W > 500 kg'],
    ['3.04 m', '500 kg', false, '2 for 1.52 m < L ≤ 3.04 m'],
    ['3.05 m', '500 kg', false, '2 + ceil((L − 3.04 m) / 3.04 m)'],
    ['3.05 m', '500 kg', true, 'ceil(L / 3.04 m), blocked forward'],
  ] as const)('shows how %s and %s, blocked %s, were counted', (length, mass, blockedForward, expression) => {
    const { steps } = required({ kind: 'general', mass, length, blockedForward });
    expect(steps.find(({ symbol }) => symbol === 'n by length')).toMatchObject({
      expression,
      clause: 'NSC Standard 10, section 22',
    });
  });
  it('takes cargo as not blocked where that is not stated, and says so', () => {
    const { assumptions } = required({ kind: 'general', mass: '600 kg', length: '2 m' });
    expect(codes(assumptions)).toEqual(['NOT_BLOCKED_FORWARD']);
  });
  it('knows no exception for special methods', () => {
    const { minimumCount, assumptions } = required({
      kind: 'general',
      mass: '600 kg',
      length: '7 m',
      specialMethods: true,
    });
    expect(minimumCount).toBe(4); // 2 + ceil(3.96/3.04)
    expect(codes(assumptions)).toContain('SPECIAL_METHODS_NOT_READ');
  });
  it('is cited as from memory', () => {
    const { sources } = required({ kind: 'general', mass: '600 kg', length: '2 m' });
    expect(sources.find(({ clause }) => clause === 'section 22')).toMatchObject({
      edition: '2013',
      provenance: 'memory',
    });
  });
  it('counts tie-downs, not their strength', () => {
    // 7 m: four; three of any strength are too few.
    const three = inCanada([crate({ length: '7 m' })], several(3, '9000 kg', { holds: 'crate' }));
    expect(checkOf(three, 'section 22/crate')).toMatchObject({ verdict: 'fail', demand: 4, capacity: 3 });
    expect(checkOf(three, 'Part 1 aggregate/crate').verdict).toBe('pass');
    expect(three.verdict).toBe('fail');
  });
});

describe('Division 7: heavy over 4,500 kg', () => {
  it('4,500 kg itself is light', () => {
    expectSteps(HEAVY, (mass) => count({ kind: 'machinery', mass, length: '3 m' }), 2, 4);
    expectSteps(HEAVY, (mass) => count({ kind: 'light-vehicle', mass, length: '3 m' }), 2, 4);
    for (const mass of HEAVY.at) {
      expect(required({ kind: 'machinery', mass, length: '3 m' }).options).toEqual([
        { rule: 'section 88(2)', minimumCount: 2 },
      ]);
    }
  });
  it('is about machines and vehicles only', () => {
    expect(count({ kind: 'general', mass: '9000 kg', length: '3 m' })).toBe(2);
  });
  it('takes no fewer than section 22 where a heavy machine is long, as an interpretation', () => {
    // 12.16 m = 4 · 3.04 m: five; 9.12 m: four.
    const four = required({ kind: 'machinery', mass: '9000 kg', length: '9.12 m' });
    expect(four.minimumCount).toBe(4);
    expect(four.sources.map(({ provenance }) => provenance)).not.toContain('interpretation');
    const long = required({ kind: 'machinery', mass: '9000 kg', length: '12.16 m' });
    expect(long.minimumCount).toBe(5);
    expect(long.sources.map(({ provenance }) => provenance)).toContain('interpretation');
  });

  const heavy = (more: Partial<Article> = {}) => machine({ mass: '5000 kg', length: '4 m', ...more });
  const strength = (tieDowns: readonly TieDown[]) =>
    checkOf(inCanada([heavy()], tieDowns), 'Division 7 strength/tractor');

  // 2,268 kg = 2.268 t. 5,000 lb = 2,267.961 85 kg is below it: the handbook of the United States would take it.
  // 22.2415 kN / 9.80665 = 2,268.002 kg; 22.2414 kN = 2,267.992 kg.
  const FLOOR: Threshold<RatedLoad> = {
    at: ['2268 kg', '2.268 t', kg(2268), t(2.268), { value: 2268, unit: 'kg' }, throughJson(kg(2268))],
    below: ['2267.9999 kg', '5000 lb', '22.2414 kN', kg(2267.99), lb(5000), throughJson(lb(5000))],
    above: ['2268.0001 kg', '5001 lb', '22.2415 kN', kg(2268.01), lb(5001), throughJson(lb(5001))],
  };
  it('four tie-downs of 2,268 kg each', () => {
    for (const limit of [...FLOOR.at, ...FLOOR.above]) {
      expect(strength(several(4, limit)), JSON.stringify(limit)).toMatchObject({ verdict: 'pass', capacity: 4 });
    }
    for (const limit of FLOOR.below) {
      expect(strength(several(4, limit)), JSON.stringify(limit)).toMatchObject({ verdict: 'fail', capacity: 0 });
    }
  });
  it('a fifth may be weaker, one of four may not', () => {
    const weak = rated('weak', '500 kg', { end: 'rear' });
    expect(strength([...several(4, '3000 kg'), weak]).verdict).toBe('pass');
    expect(strength([...several(3, '9000 kg'), weak])).toMatchObject({ verdict: 'fail', demand: 4, capacity: 3 });
  });
  it('the floor and the number are for heavy ones', () => {
    const ids = inCanada([machine({ mass: '4500 kg', length: '3 m' })], several(2, '2250 kg')).checks.map(
      ({ id }) => id,
    );
    expect(ids.filter((id) => id.startsWith('Division 7'))).toEqual([]);
  });
  it('is decided without an unknown one where that cannot help, and left open where it can', () => {
    // A chain of 3/8 in grade 70 (2,990 kg) with an unmarked binder may reach 2,268 kg; one of 1/4 in (1,430 kg) may not.
    const open = (size: '3/8' | '1/4') =>
      ofParts(
        'open',
        [
          { id: 'chain', kind: 'chain', size, grade: 70 },
          { id: 'binder', kind: 'binder' },
        ],
        { end: 'rear' },
      );
    expect(missingIn(strength([...several(3, '3000 kg'), open('3/8')]))).toEqual(['RATING_NOT_KNOWN']);
    expect(strength([...several(3, '3000 kg'), open('1/4')]).verdict).toBe('fail');
    expect(strength([...several(4, '3000 kg'), open('3/8')]).verdict).toBe('pass');
    expect(strength([...several(2, '3000 kg'), open('3/8')]).verdict).toBe('fail');
  });
  it('is cited as from memory, the 4,500 kg as read', () => {
    const { sources } = inCanada([heavy()], several(4, '3000 kg'));
    const provenanceOf = (clause: string) => sources.find((each) => each.clause === clause)?.provenance;
    expect(provenanceOf('Division 7, strength')).toBe('memory');
    expect(provenanceOf('Division 7, count')).toBe('memory');
    expect(provenanceOf('section 89')).toBe('read');
  });
});

describe('section 88(2): light vehicles and machines', () => {
  const light = (more: Partial<Article> = {}) => machine({ mass: '1800 kg', length: '4.6 m', ...more });
  it('two, whatever section 22 says', () => {
    // Section 22 would ask 2 + ceil(1.56/3.04) = 3 of 4.6 m, and 1 of 1.5 m and 450 kg.
    for (const kind of ['machinery', 'light-vehicle'] as const) {
      expect(count({ kind, mass: '1800 kg', length: '4.6 m' })).toBe(2);
      expect(count({ kind, mass: '450 kg', length: '1.5 m' })).toBe(2);
    }
    expect(count({ kind: 'general', mass: '1800 kg', length: '4.6 m' })).toBe(3);
  });
  it('that it holds for light machines is an interpretation, with the count by length as advice', () => {
    const tractor = inCanada([light()], several(2, '900 kg'));
    expect(tractor.verdict).toBe('pass');
    expect(checkOf(tractor, 'practice/length/tractor')).toMatchObject({
      verdict: 'fail',
      weight: 'practice',
      demand: 3,
    });
    expect(tractor.sources.some(({ provenance }) => provenance === 'interpretation')).toBe(true);
    const car = inCanada([light({ kind: 'light-vehicle' })], several(2, '900 kg'));
    expect(car.verdict).toBe('pass');
    expect(car.checks.map(({ id }) => id)).not.toContain('practice/length/tractor');
    expect(car.sources.some(({ provenance }) => provenance === 'interpretation')).toBe(false);
    expect(codes(required({ kind: 'machinery', mass: '1800 kg', length: '4.6 m' }).cautions)).toContain(
      'LENGTH_COUNT_WERE_IT_NO_LIGHT_VEHICLE',
    );
    expect(codes(required({ kind: 'light-vehicle', mass: '1800 kg', length: '4.6 m' }).cautions)).not.toContain(
      'LENGTH_COUNT_WERE_IT_NO_LIGHT_VEHICLE',
    );
  });
  it('front and rear', () => {
    const ends = (...held: (TieDown['end'] | undefined)[]) =>
      checkOf(
        inCanada(
          [light()],
          held.map((end, at) => rated(`tie-down-${at}`, '900 kg', end === undefined ? {} : { end })),
        ),
        'section 88(2) ends/tractor',
      );
    expect(ends('front', 'rear').verdict).toBe('pass');
    expect(reasonOf(ends('front', 'front'))).toBe('ONE_END_ONLY');
    expect(ends('front', 'front', 'front').verdict).toBe('fail');
    expect(missingIn(ends('front', undefined))).toEqual(['END_NOT_STATED']);
    expect(ends('front', 'rear', undefined).verdict).toBe('pass');
  });
  it('one tie-down is not enough', () => {
    expect(checkOf(inCanada([light()], several(1, '900 kg')), 'section 88(2)/tractor')).toMatchObject({
      verdict: 'fail',
      demand: 2,
      capacity: 1,
    });
  });
});

describe('Part 1: half of the mass, every path in full', () => {
  test.each(['vehicle-to-cargo', 'over-same-side', 'over-other-side'] as const)('%s counts in full', (path) => {
    const result = inCanada(
      [crate({ mass: '2000 kg', length: '3 m' })],
      several(2, '500 kg', { holds: 'crate', path }),
    );
    expect(result.tieDowns[0]).toMatchObject({ credit: 1, counted: { value: 500, unit: 'kg' } });
    expect(result.articles[0]).toMatchObject({
      requiredAggregate: { value: 1000, unit: 'kg' },
      aggregate: { value: 1000, unit: 'kg' },
    });
    expect(checkOf(result, 'Part 1 aggregate/crate')).toMatchObject({ verdict: 'pass', utilization: 1 });
  });
  it('at half, just below and just above', () => {
    // 2,000 lb = 907.184 74 kg; half of it over two is 226.796 185 kg.
    const verdict = (mass: Mass, limit: RatedLoad) =>
      checkOf(
        inCanada([crate({ mass, length: '3 m' })], several(2, limit, { holds: 'crate' })),
        'Part 1 aggregate/crate',
      ).verdict;
    expect([
      verdict('2000 kg', '499.9999 kg'),
      verdict('2000 kg', '500 kg'),
      verdict('2000 kg', '500.0001 kg'),
    ]).toEqual(['fail', 'pass', 'pass']);
    expect([
      verdict('2000 lb', '226.796184 kg'),
      verdict('2000 lb', '226.796185 kg'),
      verdict('2000 lb', '500 lb'),
    ]).toEqual(['fail', 'pass', 'pass']);
    // 4.903325 kN is the weight of 500 kg: 500 · 9.80665 N.
    expect([verdict('2000 kg', '4.903324 kN'), verdict('2000 kg', '4.903325 kN')]).toEqual(['fail', 'pass']);
    expect(verdict('2000.0001 kg', '500 kg')).toBe('fail');
  });
  it('the loop back to its own side is derived, the others read', () => {
    const provenances = (path: TieDown['path']) =>
      inCanada([crate()], several(2, '9000 kg', { holds: 'crate', path }))
        .sources.filter(({ clause }) => clause === 'aggregate working load limit')
        .map(({ provenance }) => provenance);
    expect(provenances('over-same-side')).toEqual(['derived']);
    expect(provenances('vehicle-to-cargo')).toEqual(['read']);
  });
  it('passes with an unknown one where the rest is enough, fails where it cannot help, else is open', () => {
    const open = (size: '1/2' | '1/4') =>
      ofParts(
        'open',
        [
          { id: 'chain', kind: 'chain', size, grade: 70 },
          { id: 'binder', kind: 'binder' },
        ],
        { holds: 'crate' },
      ); // at most 5,130 kg, or 1,430 kg
    const aggregate = (mass: Mass, size: '1/2' | '1/4') => {
      const result = inCanada(
        [crate({ mass, length: '3 m' })],
        [...several(2, '1000 kg', { holds: 'crate' }), open(size)],
      );
      return [checkOf(result, 'Part 1 aggregate/crate').verdict, checkOf(result, 'Part 1 rating/crate').verdict];
    };
    expect(aggregate('4000 kg', '1/4')).toEqual(['pass', 'not-applicable']); // 2,000 of 2,000
    expect(aggregate('6000 kg', '1/2')).toEqual(['undetermined', 'undetermined']); // 2,000 + up to 5,130 of 3,000
    expect(aggregate('8000 kg', '1/4')[0]).toBe('fail'); // 2,000 + up to 1,430 of 4,000
  });
  it('an anchor point that is not listed is a missing fact', () => {
    const bare: TieDown = {
      id: 'bare',
      holds: 'crate',
      path: 'vehicle-to-cargo',
      parts: [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70 }],
    };
    const result = inCanada([crate({ mass: '400 kg', length: '1 m' })], [bare]);
    expect(missingIn(checkOf(result, 'Part 1 rating/crate'))).toEqual(['ANCHOR_NOT_LISTED', 'ANCHOR_NOT_LISTED']);
    expect(result.verdict).toBe('undetermined');
  });
  it('a damaged part fails the plan and counts zero', () => {
    const damaged = ofParts('old', [{ id: 'chain', kind: 'chain', size: '1/2', grade: 70, condition: 'damaged' }], {
      holds: 'crate',
    });
    const result = inCanada(
      [crate({ mass: '400 kg', length: '1 m' })],
      [damaged, rated('new', '900 kg', { holds: 'crate' })],
    );
    expect(reasonOf(checkOf(result, 'Part 1 condition/tie-downs'))).toBe('DAMAGED_PART');
    expect(result.articles[0]).toMatchObject({ count: 1, aggregate: { value: 900 } });
    expect(result.verdict).toBe('fail');
  });
});

describe('only the working load limit counts', () => {
  it('another capacity is refused as a fact that is missing', () => {
    const others = [
      { lashingCapacity: '50 kN' },
      { maximumSecuringLoad: '50 kN' },
      { ratedStrength: '5000 kg' },
    ] as const;
    for (const capacities of others) {
      const result = inCanada(
        [crate({ length: '1 m' })],
        [{ id: 'whole', holds: 'crate', path: 'over-other-side', capacities }],
      );
      expect(missingIn(checkOf(result, 'Part 1 rating/crate')), JSON.stringify(capacities)).toEqual([
        'CAPACITY_NOT_STATED',
      ]);
      const part = ofParts('part', [{ id: 'strap', kind: 'webbing', capacities }], { holds: 'crate' });
      expect(missingIn(checkOf(inCanada([crate()], [part]), 'Part 1 rating/crate'))).toEqual(['OTHER_CAPACITY_SYSTEM']);
    }
  });
});

describe('section 11(4): what is not marked counts as nothing', () => {
  const small = crate({ mass: '400 kg', length: '1 m' });
  const with1 = (part: Part) => inCanada([small], [ofParts('tie', [part], { holds: 'crate' })]);
  const unmarked: Part[] = [
    { id: 'x', kind: 'chain', size: '1/2' },
    { id: 'x', kind: 'wire-rope', size: '1/2' },
    { id: 'x', kind: 'wire-rope', size: '1/2', nominalStrength: '20000 lbf' },
    { id: 'x', kind: 'fiber-rope', size: '1/2', material: 'nylon' },
    { id: 'x', kind: 'fiber-rope', size: '1/2', material: 'manila' },
    { id: 'x', kind: 'webbing', width: '4' },
    { id: 'x', kind: 'strapping', width: '2', thickness: '0.050' },
  ];
  test.each(unmarked)('%o', (part) => {
    const result = with1(part);
    expect(reasonOf(checkOf(result, 'section 11(4)/tie-downs'))).toBe('UNMARKED_TIE_DOWN');
    expect(result.tieDowns[0]).toMatchObject({
      rating: { value: 0, unit: 'kg' },
      counted: { value: 0 },
      weakest: ['x'],
    });
    expect(result.articles[0]).toMatchObject({ count: 0, aggregate: { value: 0, unit: 'kg' } });
    expect(checkOf(result, 'Part 1 aggregate/crate').verdict).toBe('fail');
    expect(result.verdict).toBe('fail');
  });
  test.each(unmarked)('marked, %o counts as marked', (part) => {
    const result = with1({ ...part, markedWll: '300 kg' } as Part);
    expect(result.tieDowns[0]?.rating).toMatchObject({ value: 300, unit: 'kg' });
    expect(checkOf(result, 'section 11(4)/tie-downs').verdict).toBe('pass');
    expect(result.verdict).toBe('pass');
  });
  it('in a leg side by side too', () => {
    const leg = (id: string, more: object): Part[] => [{ id, kind: 'chain', size: '1/2', ...more }];
    const result = with1({
      id: 'legs',
      kind: 'parallel',
      loadSharing: 'equal',
      legs: [leg('a', { grade: 70 }), leg('b', {})],
    });
    expect(result.tieDowns[0]).toMatchObject({ rating: { value: 0 }, weakest: ['b'] });
  });
  it('zero is decided, whatever else is not known', () => {
    const bare: TieDown = {
      id: 'bare',
      holds: 'crate',
      path: 'vehicle-to-cargo',
      parts: [
        { id: 'x', kind: 'chain', size: '1/2' },
        { id: 'binder', kind: 'binder' },
      ],
    };
    const result = inCanada([small], [bare]);
    expect(result.tieDowns[0]?.rating?.value).toBe(0);
    expect(result.verdict).toBe('fail');
  });
  it('fails the plan even beside enough that are marked, and adds nothing to them', () => {
    const spare = ofParts('spare', [{ id: 'x', kind: 'chain', size: '1/2' }], { holds: 'crate' });
    const result = inCanada([small], [rated('good', '900 kg', { holds: 'crate' }), spare]);
    expect(result.articles[0]).toMatchObject({ count: 1, aggregate: { value: 900 } });
    expect(checkOf(result, 'section 22/crate').verdict).toBe('pass');
    expect(result).toMatchObject({ verdict: 'fail', governing: 'section 11(4)/tie-downs' });
  });
  it('an unmarked binder, hook or anchor point is a missing fact', () => {
    const chain: Part = { id: 'chain', kind: 'chain', size: '3/8', grade: 70 };
    for (const part of [
      { id: 'y', kind: 'binder' },
      { id: 'y', kind: 'grab-hook', size: '3/8' },
      { id: 'y', kind: 'shackle' },
      { id: 'y', kind: 'anchor', at: 'vehicle' },
    ] as Part[]) {
      const result = inCanada([small], [ofParts('tie', [chain, part], { holds: 'crate' })]);
      expect(result.tieDowns[0]?.rating, part.kind).toBeNull();
      expect(result.verdict, part.kind).toBe('undetermined');
    }
  });
});

describe('chain with a grade mark only counts by the table, from memory', () => {
  const ratingOf = (chain: Omit<Part & { kind: 'chain' }, 'id' | 'kind'>) =>
    inCanada(
      [crate({ mass: '400 kg', length: '1 m' })],
      [ofParts('tie', [{ id: 'chain', kind: 'chain', ...chain }], { holds: 'crate' })],
    ).tieDowns[0]?.rating;
  it('in kilograms as printed, not as converted', () => {
    // 5/16 grade 80: 2,000 kg beside 4,500 lb, which are 2,041 kg; below 2,130 kg of grade 70.
    expect(ratingOf({ size: '5/16', grade: 80 })).toMatchObject({ value: 2000, unit: 'kg' });
    expect(ratingOf({ size: '5/16', grade: 70 })).toMatchObject({ value: 2130, unit: 'kg' });
    expect(ratingOf({ size: '3/8', grade: 43 })).toMatchObject({ value: 2450, unit: 'kg' });
  });
  it('a mark beats the table both ways', () => {
    expect(ratingOf({ size: '5/16', grade: 70, markedWll: '2500 kg' })).toMatchObject({ value: 2500 });
    expect(ratingOf({ size: '5/16', grade: 70, markedWll: '1500 kg' })).toMatchObject({ value: 1500 });
  });
  it('what the table does not list is a missing fact, not nothing', () => {
    for (const chain of [
      { size: '7/16', grade: 80 },
      { size: '3/8', grade: 120 },
      { size: '8 mm', grade: '8' },
    ] as const) {
      expect(ratingOf(chain), JSON.stringify(chain)).toBeNull();
    }
  });
  it('says that the table is from memory', () => {
    const { workingLoadLimit, sources } = chainRating({ ratings: caNsc10_chain_2013, size: '3/8', grade: 70 });
    expect(workingLoadLimit).toMatchObject({ value: 2990, unit: 'kg' });
    expect(sources).toEqual([expect.objectContaining({ provenance: 'memory', edition: '2013' })]);
  });
  it('gives an unmarked chain no rating', () => {
    expect(issueOf(() => chainRating({ ratings: caNsc10_chain_2013, size: '3/8' }))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'grade',
    });
    expect(identifyChain({ ratings: caNsc10_chain_2013, wireDiameter: '10 mm' }).countAs).toBe('no credit');
  });
});

describe('the same plan on both sides of the border', () => {
  const both = (articles: readonly Article[], tieDowns: readonly TieDown[]) => [
    inCanada(articles, tieDowns).verdict,
    check(articles, tieDowns, { rules: us49cfr393_2024 }).verdict,
  ];
  const chains = (howMany: number, chain: Part) =>
    Array.from({ length: howMany }, (_, at) =>
      ofParts(`chain-${at}`, [chain], { end: at % 2 === 0 ? 'front' : 'rear' }),
    );

  test.each(['9921 lb', '9960 lb', '9999 lb'] as const)('a machine of %s is heavy in Canada only', (mass) => {
    const two = several(2, '9000 lb');
    expect(both([machine({ mass })], two)).toEqual(['fail', 'pass']);
    expect(inCanada([machine({ mass })], two).articles[0]?.rule).toBe('section 89');
    expect(both([machine({ mass })], several(4, '9000 lb'))).toEqual(['pass', 'pass']);
  });
  test.each([
    ['9920 lb', 'section 88(2)', 2],
    ['10000 lb', 'section 89', 4],
  ] as const)('a machine of %s is the same on both', (mass, rule, needed) => {
    expect(inCanada([machine({ mass })], several(4, '9000 lb')).articles[0]).toMatchObject({
      rule,
      minimumCount: needed,
    });
    expect(check([machine({ mass })], several(4, '9000 lb')).articles[0]?.minimumCount).toBe(needed);
  });
  it('direct chains that are enough in Canada are short by half in the United States', () => {
    // Two of 2,000 lb on 8,000 lb: 4,000 of 4,000 with full credit, 2,000 of 4,000 with half.
    const plan = [[machine()], several(2, '2000 lb')] as const;
    expect(both(...plan)).toEqual(['pass', 'fail']);
    expect(codes(inCanada(...plan).cautions)).toContain('FULL_CREDIT');
    const loop = inCanada([machine()], several(2, '2000 lb', { path: 'over-same-side' }));
    expect(codes(loop.cautions)).toContain('FULL_CREDIT');
    const over = [[crate()], several(2, '2000 lb', { holds: 'crate', path: 'over-other-side' })] as const;
    expect(check(...over).verdict).toBe('pass');
    expect(codes(inCanada(...over).cautions)).not.toContain('FULL_CREDIT');
  });
  it('unmarked chain is lawful in the United States at grade 30 and counts as nothing in Canada', () => {
    // Four 1/2 in: 4 × 4,500/2 = 9,000 of 4,000 lb.
    expect(both([machine()], chains(4, { id: 'chain', kind: 'chain', size: '1/2' }))).toEqual(['fail', 'pass']);
  });
  it('four 5/16 grade 70 on a heavy machine are below the Canadian floor only', () => {
    // 2,130 kg each against 2,268 kg; United States: 4 × 4,700/2 = 9,400 of 6,000 lb.
    const heavy = machine({ mass: '12000 lb' });
    expect(both([heavy], chains(4, { id: 'chain', kind: 'chain', size: '5/16', grade: 70 }))).toEqual(['fail', 'pass']);
    expect(both([heavy], chains(4, { id: 'chain', kind: 'chain', size: '3/8', grade: 70 }))).toEqual(['pass', 'pass']);
  });
  it('10 ft takes two in the United States and three in Canada, 5 ft and 1,100 lb one and two', () => {
    const both2 = (article: Omit<Article, 'id'>) => [
      count(article),
      tieDownsRequired({ rules: us49cfr393_2024, article }).minimumCount,
    ];
    expect(both2({ kind: 'general', mass: '2000 lb', length: '10 ft' })).toEqual([3, 2]);
    expect(both2({ kind: 'general', mass: '1100 lb', length: '5 ft' })).toEqual([2, 1]);
    expect(both2({ kind: 'general', mass: '500 kg', length: '1.52 m' })).toEqual([1, 2]); // 1,102.3 lb
  });
});

describe('a friction mat', () => {
  const under = (frictionMat: Article['frictionMat'] & object) =>
    inCanada([crate({ mass: '800 kg', length: '1 m', frictionMat })], several(2, '900 kg', { holds: 'crate' }));
  const resistance = ({ steps }: SecurementCheck) => steps.find(({ symbol }) => symbol === 'mat resistance')?.result;
  it('without a mark counts as nothing; in the United States as half of the weight on it', () => {
    const result = under({ massOnMat: '600 kg' });
    expect(resistance(result)).toEqual({ value: 0, unit: 'kg' });
    expect(codes(result.cautions)).toContain('FRICTION_MAT_NOT_MARKED');
    const us = check(
      [crate({ mass: '800 lb', length: '1 m', frictionMat: { massOnMat: '600 lb' } })],
      several(2, '900 lb', { holds: 'crate' }),
    );
    expect(resistance(us)).toMatchObject({ value: 300, unit: 'lb' });
  });
  it('with a mark is shown as marked; neither adds to the aggregate', () => {
    const result = under({ massOnMat: '600 kg', ratedResistance: '250 kg' });
    expect(resistance(result)).toMatchObject({ value: 250, unit: 'kg' });
    expect(codes(result.cautions)).toContain('FRICTION_MAT_NOT_COUNTED');
    for (const each of [result, under({ massOnMat: '600 kg' })]) {
      expect(each.articles[0]?.aggregate).toEqual({ value: 1800, unit: 'kg' });
    }
  });
  it('cannot bear more than the whole weight', () => {
    expect(() => under({ massOnMat: '800 kg' })).not.toThrow();
    expect(issueOf(() => under({ massOnMat: '800.0001 kg' }))).toMatchObject({
      code: 'CONFLICTING_FIELDS',
      path: 'articles[0].frictionMat.massOnMat',
    });
  });
});

describe('blocking', () => {
  it('needs half of the mass: shown, held against nothing, from memory', () => {
    const blocked = crate({ mass: '900 kg', length: '3 m', blockedForward: true });
    const result = inCanada([blocked], several(1, '450 kg', { holds: 'crate' }));
    expect(result.verdict).toBe('pass'); // ceil(3/3.04) = 1
    expect(result.cautions.find(({ code }) => code === 'BLOCKING_NOT_CHECKED')?.params.required).toEqual({
      value: 450,
      unit: 'kg',
    });
    expect(result.sources.find(({ clause }) => clause === 'Part 1, blocking')?.provenance).toBe('memory');
    expect(
      codes(required({ kind: 'general', mass: '900 kg', length: '3 m', blockedForward: true }).cautions),
    ).toContain('BLOCKING_NOT_CHECKED');
  });
  it('is not spoken of where nothing blocks', () => {
    expect(codes(inCanada([crate()], several(4, '9000 kg', { holds: 'crate' })).cautions)).not.toContain(
      'BLOCKING_NOT_CHECKED',
    );
  });
});

describe('performance criteria', () => {
  it('0.8 forward, 0.5 rearward and sideways, against the working load limit', () => {
    // 1,000 kg weigh 9,806.65 N: 7,845.32 N and 4,903.325 N.
    const { perDirection } = required({ kind: 'general', mass: '1000 kg', length: '2 m' });
    expect(perDirection.map(({ direction }) => direction)).toEqual(['forward', 'rearward', 'lateral']);
    const forces = perDirection.map(({ againstWorkingLoadLimit }) => againstWorkingLoadLimit);
    expect(forces.map((force) => force?.unit)).toEqual(['N', 'N', 'N']);
    for (const [at, newtons] of [7845.32, 4903.325, 4903.325].entries()) {
      expect(forces[at]?.value).toBeCloseTo(newtons, 9);
    }
    expect(perDirection.some((each) => 'againstBreakingStrength' in each)).toBe(false);
  });
  it('in pounds-force where asked', () => {
    const { perDirection } = tieDownsRequired({
      rules: caNsc10_2013,
      article: { kind: 'general', mass: '1000 lb', length: '2 m' },
      units: 'us',
    });
    expect(perDirection[0]?.againstWorkingLoadLimit).toEqual({ value: 800, unit: 'lbf' });
  });
});

describe('accessory equipment and articulation, 89(2), an open question', () => {
  const ties = several(4, '3000 kg');
  const arm = rated('arm', '3000 kg', { holds: 'bucket' });
  const accessory = (mass: Mass, more: object, tieDowns: readonly TieDown[] = ties) =>
    inCanada([machine({ mass, length: '3 m', accessories: [{ id: 'bucket', ...more }] })], tieDowns);
  const heldIn = (result: SecurementCheck) => result.checks.find(({ subject }) => subject === 'bucket');

  test.each([
    [{ lowered: true }, true, 'pass'],
    [{ lowered: true, locked: true }, true, 'pass'],
    [{ lowered: true, locked: true }, false, 'undetermined'],
    [{ locked: true }, false, 'undetermined'],
    [{ lowered: false, locked: true }, false, 'undetermined'],
    [{ lowered: false }, true, 'undetermined'],
    [{}, true, 'undetermined'],
    [{}, false, 'undetermined'],
    [{ lowered: true, locked: false }, false, 'undetermined'],
    [{ lowered: false, locked: false }, false, 'fail'],
    [{ locked: false }, false, 'fail'],
  ] as const)('heavy: %o, tied %s: %s', (more, tied, verdict) => {
    const result = accessory('5000 kg', more, tied ? [...ties, arm] : ties);
    expect(heldIn(result)).toMatchObject({ id: 'section 89(2) equipment/bucket', weight: 'requirement', verdict });
    expect(result.verdict).toBe(verdict);
  });
  test.each([
    [{}, true, 'pass'],
    [{ locked: true }, false, 'pass'],
    [{}, false, 'undetermined'],
    [{ lowered: true }, false, 'undetermined'],
    [{ lowered: true, locked: false }, false, 'undetermined'],
    [{ locked: false }, false, 'fail'],
  ] as const)('light: %o, tied %s: %s', (more, tied, verdict) => {
    const result = accessory('4500 kg', more, tied ? [...ties, arm] : ties);
    expect(heldIn(result)).toMatchObject({ id: 'Part 1 equipment/bucket', verdict });
  });
  it('its tie-down counts neither in the number nor in the aggregate of the machine', () => {
    const result = accessory('5000 kg', { lowered: true }, [...several(3, '3000 kg'), arm]);
    expect(result.articles[0]).toMatchObject({ count: 3, aggregate: { value: 9000, unit: 'kg' } });
    expect(result.tieDowns.at(-1)).toMatchObject({ id: 'arm', credit: 0, rating: { value: 3000 } });
  });
  it('an unmarked chain on it holds nothing', () => {
    const chain = ofParts('arm', [{ id: 'x', kind: 'chain', size: '1/2' }], { holds: 'bucket' });
    expect(heldIn(accessory('5000 kg', { lowered: false, locked: false }, [...ties, chain]))?.verdict).toBe('fail');
  });
  it('says what is open', () => {
    const missing = (more: object, tieDowns: readonly TieDown[]) => {
      const found = heldIn(accessory('5000 kg', more, tieDowns));
      return found && missingIn(found);
    };
    expect(missing({ locked: true }, ties)).toEqual(['INTERPRETATION_OPEN']);
    expect(missing({ lowered: false }, [...ties, arm])).toEqual(['INTERPRETATION_OPEN']);
    expect(missing({}, [...ties, arm])).toEqual(['LOWERED_NOT_STATED']);
    expect(missing({}, ties)).toEqual(['LOCK_NOT_STATED']);
    expect(missing({ lowered: true, locked: false }, ties)).toEqual(['LOWERED_ONLY']);
  });
  it('one of unknown rating may hold it', () => {
    const open = ofParts('arm', [{ id: 'binder', kind: 'binder' }], { holds: 'bucket' });
    const found = heldIn(accessory('5000 kg', { lowered: true, locked: false }, [...ties, open]));
    expect(found && missingIn(found)).toEqual(['RATING_NOT_KNOWN']);
  });
  test.each([
    ['5000 kg', true, 'requirement', 'pass'],
    ['5000 kg', false, 'requirement', 'undetermined'],
    ['5000 kg', undefined, 'requirement', 'undetermined'],
    ['4500 kg', true, 'practice', 'pass'],
    ['4500 kg', false, 'practice', 'fail'],
    ['4500 kg', undefined, 'practice', 'undetermined'],
  ] as const)('articulated, %s, locked %s: %s, %s', (mass, locked, weight, verdict) => {
    const article = machine({
      mass,
      length: '3 m',
      articulated: true,
      ...(locked === undefined ? {} : { articulationLocked: locked }),
    });
    const result = inCanada([article], ties);
    expect(result.checks.find(({ title }) => title === 'Articulation locked')).toMatchObject({ weight, verdict });
    expect(result.verdict).toBe(weight === 'practice' ? 'pass' : verdict);
  });
  it('is not asked of a machine without a joint', () => {
    const titles = inCanada([machine({ mass: '5000 kg' })], ties).checks.map(({ title }) => title);
    expect(titles).not.toContain('Articulation locked');
  });
});

describe('practice never decides', () => {
  it('grade 70, four tie-downs, both ends of a heavy machine', () => {
    const chain: Part = { id: 'chain', kind: 'chain', size: '1/2', grade: 43 };
    const front = [1, 2, 3, 4].map((at) => ofParts(`chain-${at}`, [chain], { end: 'front' }));
    const result = inCanada([machine({ mass: '5000 kg' })], front);
    expect(result.verdict).toBe('pass');
    for (const about of ['ends', 'grade']) {
      expect(checkOf(result, `practice/${about}/tractor`)).toMatchObject({ verdict: 'fail', weight: 'practice' });
    }
    const transport = ofParts('transport', [{ id: 'chain', kind: 'chain', size: '1/2', grade: 70 }]);
    expect(checkOf(inCanada([machine()], [transport]), 'practice/grade/tractor').verdict).toBe('pass');
    const light = inCanada([machine()], several(2, '9000 kg'));
    expect(light.verdict).toBe('pass');
    expect(checkOf(light, 'practice/count/tractor')).toMatchObject({ verdict: 'fail', demand: 4, capacity: 2 });
  });
});

describe('whether the standard reaches the vehicle', () => {
  const ask = (vehicle?: Vehicle) =>
    inCanada([machine()], several(4, '9000 kg'), vehicle === undefined ? {} : { vehicle }).applicability;
  const truck = (grossWeight: Mass): Vehicle => ({ units: [{ id: 'truck', kind: 'power', grossWeight }] });
  it('over 4,500 kg by rating or weight; 4,500 kg itself is not over', () => {
    for (const mass of HEAVY.above) {
      expect(ask(truck(mass)).verdict, JSON.stringify(mass)).toBe('applies');
      expect(ask({ units: [{ id: 'truck', kind: 'power', grossWeightRating: mass }] }).verdict).toBe('applies');
    }
    for (const mass of [...HEAVY.at, ...HEAVY.below]) {
      expect(ask(truck(mass)).verdict, JSON.stringify(mass)).toBe('does-not-apply');
    }
  });
  it('adds up unit by unit, each at its greatest', () => {
    // 2,400 + 2,100.0001: over; the ratings alone are 4,300, the weights alone 4,400.0001 kg.
    const rig = (weight: Mass): Vehicle => ({
      units: [
        { id: 'pickup', kind: 'power', grossWeightRating: '2400 kg', grossWeight: '2300 kg' },
        { id: 'trailer', kind: 'towed', grossWeightRating: '1900 kg', grossWeight: weight },
      ],
    });
    expect([ask(rig('2100 kg')).verdict, ask(rig('2100.0001 kg')).verdict]).toEqual(['does-not-apply', 'applies']);
  });
  it('neither a label nor interstate commerce enters', () => {
    const vehicle: Vehicle = { ...truck('4000 kg'), combinationRatingOnLabel: '9000 kg', interstateCommerce: true };
    expect(ask(vehicle).verdict).toBe('does-not-apply');
    expect(ask({ ...truck('5000 kg'), interstateCommerce: false }).verdict).toBe('applies');
  });
  it('a vehicle or unit that is not stated leaves it open, unless the rest is enough', () => {
    expect(ask()).toMatchObject({ verdict: 'undetermined', because: { code: 'RULE_TAKEN_TO_REACH_VEHICLE' } });
    const units = (mass: Mass): Vehicle => ({
      units: [
        { id: 'pickup', kind: 'power' },
        { id: 'trailer', kind: 'towed', grossWeight: mass },
      ],
    });
    expect(ask(units('4500 kg'))).toMatchObject({ verdict: 'undetermined', because: { code: 'UNIT_MASS_NOT_STATED' } });
    expect(ask(units('4501 kg')).verdict).toBe('applies');
  });
  it('mistakes say where', () => {
    const issue = (vehicle: unknown) =>
      issueOf(() =>
        checkLoosely({ rules: caNsc10_2013, articles: [machine()], tieDowns: several(2, '900 kg'), vehicle }),
      );
    expect(issue({ units: [] })).toMatchObject({ code: 'EMPTY_LIST', path: 'vehicle.units' });
    expect(issue({ units: [{ id: 'a', kind: 'boat' }] })).toMatchObject({ path: 'vehicle.units[0].kind' });
    expect(issue({ units: [{ id: 'a', kind: 'power', grossWeight: '0 kg' }] })).toMatchObject({
      code: 'NOT_POSITIVE',
      path: 'vehicle.units[0].grossWeight',
    });
    expect(issue({ ...truck('4000 kg'), combinationRatingOnLabel: '9 kN' })).toMatchObject({
      code: 'WRONG_KIND',
      path: 'vehicle.combinationRatingOnLabel',
    });
    expect(issue({ ...truck('4000 kg'), interstateCommerce: 'yes' })).toMatchObject({ code: 'UNKNOWN_VALUE' });
  });
});

describe('what stands beside the verdict', () => {
  it('inspections: 80 km, then 240 km or 3 h, from memory', () => {
    const { inspections, sources } = inCanada([machine()], several(4, '9000 kg'));
    expect(inspections).toEqual([
      { when: 'first-check', distance: { value: 80, unit: 'km' }, clause: 'NSC Standard 10, inspection' },
      {
        when: 're-check',
        distance: { value: 240, unit: 'km' },
        time: { value: 3, unit: 'h' },
        clause: 'NSC Standard 10, inspection',
      },
    ]);
    expect(sources.find(({ clause }) => clause === 'inspection')?.provenance).toBe('memory');
  });
  it('a caution that direction is not looked at', () => {
    expect(codes(inCanada([machine()], several(4, '9000 kg')).cautions)).toEqual(
      expect.arrayContaining(['DIRECTION_NOT_CHECKED', 'COUNTING_NOT_LOOKED_AT', 'STRAIGHT_PULL', 'FOLLOW_THE_MARK']),
    );
  });

  const whole = (more: { readonly working?: boolean; readonly units?: 'us' | 'si' } = {}) =>
    inCanada(
      [
        machine({
          mass: '5000 kg',
          accessories: [
            { id: 'bucket', lowered: true },
            { id: 'hoe', locked: true },
          ],
          articulated: true,
          blockedForward: true,
          frictionMat: { massOnMat: '400 kg' },
        }),
        crate(),
      ],
      [
        ...several(4, '3000 kg'),
        ofParts('unknown', [{ id: 'binder', kind: 'binder' }]),
        ofParts('bare', [{ id: 'x', kind: 'chain', size: '3/8' }], { holds: 'crate' }),
      ],
      more,
    );
  it('ids that are used once, and clauses of the standard', () => {
    const { checks } = whole();
    const ids = checks.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { clause, weight } of checks) {
      expect(clause).toMatch(weight === 'practice' ? /^common practice$|^section 22$/ : /^NSC Standard 10, /);
    }
  });
  it('the same answer without working', () => {
    const [full, bare] = [whole(), whole({ working: false })];
    expect([bare.steps, bare.sources, bare.assumptions]).toEqual([[], [], []]);
    for (const key of [
      'verdict',
      'governing',
      'articles',
      'tieDowns',
      'checks',
      'applicability',
      'inspections',
      'cautions',
    ] as const) {
      expect(throughJson(bare[key]), key).toEqual(throughJson(full[key]));
    }
  });
  it('the same verdicts in pounds', () => {
    const verdicts = (result: SecurementCheck) => result.checks.map(({ id, verdict }) => [id, verdict]);
    const pounds = whole({ units: 'us' });
    expect(verdicts(pounds)).toEqual(verdicts(whole()));
    // 2,500 kg / 0.453 592 37 = 5,511.5566 lb
    expect(pounds.articles[0]?.requiredAggregate).toMatchObject({ unit: 'lb' });
    expect(pounds.articles[0]?.requiredAggregate?.value).toBeCloseTo(5511.5566, 3);
  });
  it('the same in any order of tie-downs', () => {
    const ties = [rated('a', '900 kg', { end: 'front' }), rated('b', '300 kg', { end: 'rear' }), rated('c', '50 kg')];
    const verdicts = (order: readonly TieDown[]) =>
      inCanada([machine({ mass: '2500 kg' })], order).checks.map(({ id, verdict }) => [id, verdict]);
    expect(verdicts([...ties].reverse())).toEqual(verdicts(ties));
  });
  it('the same mirrored left and right', () => {
    const across = (sign: 1 | -1): TieDown => ({
      id: 'a',
      holds: 'crate',
      path: 'over-other-side',
      capacities: { workingLoadLimit: '900 kg' },
      anchor: ['-1 m', { value: sign * 1.2, unit: 'm' }, '0 m'],
      attachment: ['-1 m', { value: sign * 0.5, unit: 'm' }, '1 m'],
      otherAttachment: ['-1 m', { value: sign * -0.5, unit: 'm' }, '1 m'],
      otherAnchor: ['-1 m', { value: sign * -1.2, unit: 'm' }, '0 m'],
    });
    const small = crate({ mass: '400 kg', length: '1 m' });
    const [left, right] = [inCanada([small], [across(1)]), inCanada([small], [across(-1)])];
    expect(left.verdict).toBe('pass');
    expect(left.checks).toEqual(right.checks);
  });
  it('leaves no choice of rule: what another set was asked for is passed over', () => {
    const article = machine({ mass: '1800 kg', length: '3 m', securedUnder: '393.130' });
    expect(inCanada([article], several(2, '900 kg')).articles[0]?.rule).toBe('section 88(2)');
  });
});
