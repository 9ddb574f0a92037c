// Whether the rule reaches the trip, 49 CFR 390.5: 10,001 lb or more by rating or weight, whichever is greatest,
// unit by unit, in interstate commerce. The plan is checked either way.
import { kg, lb, type Vehicle, type VehicleUnit } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';
import { check, checkLoosely, type Mass, machine, rules, several, throughJson } from './plans.js';

const ask = (vehicle?: Vehicle) =>
  check([machine()], several(2, '8000 lb'), vehicle === undefined ? {} : { vehicle }).applicability;
const power = (more: Partial<VehicleUnit> = {}): VehicleUnit => ({ id: 'truck', kind: 'power', ...more });
const trailer = (more: Partial<VehicleUnit> = {}): VehicleUnit => ({ id: 'trailer', kind: 'towed', ...more });
const interstate = (...units: VehicleUnit[]): Vehicle => ({ units, interstateCommerce: true });

describe('10,001 lb', () => {
  // 10,001 lb = 4,536.377 292 37 kg exactly. The 4,536 kg printed before it is 10,000.17 lb: pounds decide here.
  const at: Mass[] = [
    '10001 lb',
    '4536.37729237 kg',
    '4.53637729237 t',
    '5.0005 short-ton',
    lb(10001),
    kg(4536.37729237),
    throughJson(kg(4536.37729237)),
  ];
  const below: Mass[] = [
    '10000 lb',
    '10000.9999 lb',
    '4536.37729236 kg',
    '4536 kg',
    '5 short-ton',
    lb(10000.99),
    throughJson(kg(4536.3772)),
  ];
  const above: Mass[] = ['10001.0001 lb', '4536.37729238 kg', '26000 lb', lb(10001.01), throughJson(kg(4536.3773))];

  test.each([...at, ...above].map((form) => [form]))('%o: applies', (mass) => {
    expect(ask(interstate(power({ grossWeightRating: mass })))).toMatchObject({
      verdict: 'applies',
      clause: '49 CFR 390.5',
    });
    expect(ask(interstate(power({ grossWeight: mass }))).verdict).toBe('applies');
  });
  test.each(below.map((form) => [form]))('%o: does not apply', (mass) => {
    expect(ask(interstate(power({ grossWeightRating: mass }))).verdict).toBe('does-not-apply');
    expect(ask(interstate(power({ grossWeight: mass }))).verdict).toBe('does-not-apply');
  });
  it('does not say that 10,001 lb is below 10,001 lb', () => {
    const { because } = ask(interstate(power({ grossWeight: '10000.9999 lb' })));
    expect(because.text).not.toMatch(/10001 lb is below/);
  });
});

describe('the greater of rating and weight', () => {
  test.each([
    ['10001 lb', '6000 lb', 'applies'],
    ['6000 lb', '10001 lb', 'applies'],
    ['10000 lb', '10000 lb', 'does-not-apply'],
  ] as const)('rating %s, weight %s: %s', (grossWeightRating, grossWeight, verdict) => {
    expect(ask(interstate(power({ grossWeightRating, grossWeight }))).verdict).toBe(verdict);
  });
  it('across units of measure', () => {
    expect(ask(interstate(power({ grossWeightRating: '10000 lb', grossWeight: '4536.37729237 kg' }))).verdict).toBe(
      'applies',
    );
    expect(ask(interstate(power({ grossWeightRating: '10000 lb', grossWeight: '4536.37729236 kg' }))).verdict).toBe(
      'does-not-apply',
    );
  });
});

describe('a combination', () => {
  it('adds up unit by unit, each at its greatest', () => {
    // Truck rated 6,000 and loaded to 6,500; trailer rated 3,501 and loaded to 3,000: 6,500 + 3,501 = 10,001.
    const truck = power({ grossWeightRating: '6000 lb', grossWeight: '6500 lb' });
    const ask2 = (rating: Mass) =>
      ask(interstate(truck, trailer({ grossWeightRating: rating, grossWeight: '3000 lb' }))).verdict;
    expect([ask2('3501 lb'), ask2('3500.99 lb')]).toEqual(['applies', 'does-not-apply']);
  });
  it('neither the sum of ratings nor the sum of weights alone would reach it', () => {
    // Ratings 6,000 + 3,900 = 9,900; weights 6,500 + 3,000 = 9,500; unit by unit 6,500 + 3,900 = 10,400.
    const truck = power({ grossWeightRating: '6000 lb', grossWeight: '6500 lb' });
    expect(ask(interstate(truck, trailer({ grossWeightRating: '3900 lb', grossWeight: '3000 lb' }))).verdict).toBe(
      'applies',
    );
  });
  it('shows the sum as a step', () => {
    const { steps } = check([machine()], several(2, '8000 lb'), {
      vehicle: interstate(power({ grossWeightRating: '7300 lb' }), trailer({ grossWeightRating: '5000 lb' })),
    });
    expect(steps.find(({ symbol }) => symbol === 'gross')).toMatchObject({
      result: { value: 12300, unit: 'lb' },
      clause: '49 CFR 390.5',
    });
  });
  it('counts two trailers', () => {
    const second = (mass: Mass): VehicleUnit => ({ id: 'second', kind: 'towed', grossWeight: mass });
    const verdict = (mass: Mass) =>
      ask(interstate(power({ grossWeight: '6000 lb' }), trailer({ grossWeight: '2000 lb' }), second(mass))).verdict;
    expect([verdict('2001 lb'), verdict('2000 lb')]).toEqual(['applies', 'does-not-apply']);
  });
});

describe('the combination rating on the label', () => {
  const labeled = (label: Mass, ...units: VehicleUnit[]): Vehicle => ({
    units,
    combinationRatingOnLabel: label,
    interstateCommerce: true,
  });

  it('counts while something is towed', () => {
    const units = [power({ grossWeightRating: '6000 lb' }), trailer({ grossWeightRating: '2000 lb' })];
    expect(ask(labeled('10001 lb', ...units)).verdict).toBe('applies');
    expect(ask(labeled('10000 lb', ...units)).verdict).toBe('does-not-apply');
  });
  it('makes no vehicle commercial that tows nothing', () => {
    expect(ask(labeled('20000 lb', power({ grossWeightRating: '9900 lb' }))).verdict).toBe('does-not-apply');
  });
  it('does not lower the sum over the units', () => {
    expect(
      ask(labeled('9000 lb', power({ grossWeightRating: '7300 lb' }), trailer({ grossWeightRating: '5000 lb' })))
        .verdict,
    ).toBe('applies');
  });
  it('decides where a unit is not known', () => {
    expect(ask(labeled('10001 lb', power(), trailer({ grossWeightRating: '2000 lb' }))).verdict).toBe('applies');
    expect(ask(labeled('10000 lb', power(), trailer({ grossWeightRating: '2000 lb' }))).verdict).toBe('undetermined');
  });
});

describe('interstate commerce', () => {
  const heavy = [power({ grossWeightRating: '26000 lb' })];
  it('decides, and is not assumed', () => {
    expect(ask({ units: heavy, interstateCommerce: true }).verdict).toBe('applies');
    expect(ask({ units: heavy, interstateCommerce: false })).toMatchObject({
      verdict: 'does-not-apply',
      because: { code: 'NOT_INTERSTATE' },
    });
    expect(ask({ units: heavy })).toMatchObject({ verdict: 'undetermined', because: { code: 'COMMERCE_NOT_STATED' } });
  });
  it('does not matter below the threshold', () => {
    expect(ask({ units: [power({ grossWeightRating: '9000 lb' })] })).toMatchObject({
      verdict: 'does-not-apply',
      because: { code: 'BELOW_WEIGHT_THRESHOLD' },
    });
  });
  it('not being it is enough, whatever the units weigh', () => {
    expect(ask({ units: [power()], interstateCommerce: false }).verdict).toBe('does-not-apply');
  });
  it('is true or false', () => {
    for (const interstateCommerce of ['no', 'yes', 0, null]) {
      const issue = issueOf(() =>
        checkLoosely({
          rules,
          articles: [machine()],
          tieDowns: several(2, '8000 lb'),
          vehicle: { units: heavy, interstateCommerce },
        }),
      );
      expect(issue, String(interstateCommerce)).toMatchObject({
        code: 'UNKNOWN_VALUE',
        path: 'vehicle.interstateCommerce',
      });
    }
  });
});

describe('what is missing', () => {
  it('a unit without rating or weight leaves it open, unless the others are enough', () => {
    expect(ask(interstate(power(), trailer({ grossWeight: '9000 lb' })))).toMatchObject({
      verdict: 'undetermined',
      because: { code: 'UNIT_MASS_NOT_STATED' },
    });
    expect(ask(interstate(power(), trailer({ grossWeight: '10001 lb' }))).verdict).toBe('applies');
  });
  it('a vehicle that is not stated leaves it open, and the plan is checked as if it applied', () => {
    const result = check([machine()], several(2, '8000 lb'));
    expect(result.applicability).toMatchObject({
      verdict: 'undetermined',
      because: { code: 'RULE_TAKEN_TO_REACH_VEHICLE' },
    });
    expect(result.verdict).toBe('pass');
  });
  it('the plan is checked where the rule does not apply', () => {
    const vehicle = interstate(power({ grossWeightRating: '9000 lb' }));
    expect(check([machine()], several(2, '8000 lb'), { vehicle }).verdict).toBe('pass');
    expect(check([machine()], several(2, '100 lb'), { vehicle }).verdict).toBe('fail');
  });
});

describe('mistakes', () => {
  const issue = (vehicle: unknown) =>
    issueOf(() => checkLoosely({ rules, articles: [machine()], tieDowns: several(2, '8000 lb'), vehicle }));
  it('say where', () => {
    expect(issue({ units: [] })).toMatchObject({ code: 'EMPTY_LIST', path: 'vehicle.units' });
    expect(issue({})).toMatchObject({ code: 'EMPTY_LIST', path: 'vehicle.units' });
    for (const [kind, code] of [
      [undefined, 'MISSING_FIELD'],
      ['trailer', 'UNKNOWN_VALUE'],
    ]) {
      expect(issue({ units: [{ id: 'truck', kind }] })).toMatchObject({ code, path: 'vehicle.units[0].kind' });
    }
    expect(issue({ units: [power(), null] })).toMatchObject({ path: expect.stringContaining('vehicle.units[1]') });
    expect(issue({ units: [power({ grossWeight: '0 lb' })] })).toMatchObject({
      code: 'NOT_POSITIVE',
      path: 'vehicle.units[0].grossWeight',
    });
    expect(issue({ units: [power(), trailer({ grossWeightRating: '5 ft' as never })] })).toMatchObject({
      code: 'WRONG_KIND',
      path: 'vehicle.units[1].grossWeightRating',
    });
  });
  it('a label that is none, towing or not', () => {
    const alone = [power({ grossWeight: '9000 lb' })];
    for (const units of [alone, [...alone, trailer({ grossWeight: '9000 lb' })]]) {
      for (const [label, code] of [
        ['0 lb', 'NOT_POSITIVE'],
        ['-1 lb', 'NEGATIVE'],
        ['80 kN', 'WRONG_KIND'],
        ['18,000 lb', 'AMBIGUOUS_NUMBER'],
        [18000, 'NOT_A_QUANTITY'],
        [{ value: Number.NaN, unit: 'lb' }, 'NOT_FINITE'],
      ]) {
        expect(issue({ units, combinationRatingOnLabel: label }), String(label)).toMatchObject({
          code,
          path: 'vehicle.combinationRatingOnLabel',
        });
      }
    }
  });
  it('a unit without a name', () => {
    for (const id of [undefined, '', 5, null]) {
      expect(issue({ units: [{ ...power({ grossWeight: '9000 lb' }), id }] }), String(id)).toMatchObject({
        code: 'MISSING_FIELD',
        path: 'vehicle.units[0].id',
      });
    }
  });
  it('two units of one name', () => {
    expect(
      issue({ units: [power({ grossWeight: '9000 lb' }), { ...trailer({ grossWeight: '9000 lb' }), id: 'truck' }] }),
    ).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'vehicle.units[1].id',
    });
  });
  it('a vehicle that is none', () => {
    for (const vehicle of [null, 'truck', 5]) {
      expect(() =>
        checkLoosely({ rules, articles: [machine()], tieDowns: several(2, '8000 lb'), vehicle }),
      ).toThrowError(expect.objectContaining({ name: 'RiggingError' }));
    }
  });
});
