import { describe, expect, it } from 'vitest';
import * as library from '../../src/index.js';
import {
  type ChainDefect,
  type CheckLiftInput,
  type CriteriaSet,
  caAlbertaOhs_21,
  checkLift,
  euEn818_2008,
  housePolicy,
  inspectChain,
  type LiftCheck,
  type LiftSling,
  type Part,
  type Point,
  us29cfr1910_184_2011,
  us49cfr393_104_2024,
  usAlloySling_2011,
  usAsmeB30_10_2005,
} from '../../src/index.js';
import { CRITERIA_FOR_SLINGS } from '../../src/lifting/sling-inspection.js';
import { issueOf } from '../quantities/issue-of.js';

const sling: LiftSling = {
  hitch: 'double',
  size: '3/8',
  grade: 80,
  angle: { fromHorizontal: '60 deg' },
  tagLegible: true,
};
const lift = (more: Partial<CheckLiftInput> = {}): LiftCheck =>
  checkLift({
    ratings: usAlloySling_2011,
    load: { mass: '6000 lb' },
    sling,
    machine: { kind: 'hoist', liftCapacity: '8000 lb' },
    ...more,
  });
const check = (found: LiftCheck, id: string) => found.checks.find((each) => each.id === id);
const verdictOf = (found: LiftCheck, id: string) => check(found, id)?.verdict;
const at = (x: number, y: number, z = 0): Point => [`${x} ft`, `${y} ft`, `${z} ft`];

describe('checkLift', () => {
  it('passes what everything carries', () => {
    const found = lift();
    expect([found.verdict, found.governing, found.workingLoadLimit?.value, found.basis]).toEqual([
      'pass',
      'capacity/machine',
      12_300,
      'table',
    ]);
  });

  it('the machine lifts load and rigging, exactly as much as its maker states', () => {
    const with50 = (liftCapacity: '6050 lb' | '6049.9999 lb') =>
      lift({ riggingMass: '50 lb', machine: { kind: 'hoist', liftCapacity } }).verdict;
    expect([with50('6050 lb'), with50('6049.9999 lb')]).toEqual(['pass', 'fail']);
    expect(lift({ machine: { kind: 'hoist' } }).verdict).toBe('undetermined');
    const { machine: _, ...none } = {
      machine: undefined,
      ratings: usAlloySling_2011,
      load: { mass: '6000 lb' as const },
      sling,
    };
    expect(checkLift(none).verdict).toBe('undetermined');
  });

  it('forks need their maker, a loader is cautioned', () => {
    const by = (kind: 'forks' | 'loader' | 'excavator' | 'crane', makerAllows?: boolean) =>
      lift({ machine: { kind, liftCapacity: '8000 lb', ...(makerAllows !== undefined && { makerAllows }) } });
    expect([by('forks').verdict, by('forks', true).verdict, by('forks', false).verdict]).toEqual([
      'undetermined',
      'pass',
      'fail',
    ]);
    expect([by('loader').verdict, by('loader', false).verdict]).toEqual(['pass', 'fail']);
    expect(by('loader').cautions.map(({ code }) => code)).toContain('MAKER_DECIDES');
    expect(by('excavator').cautions.map(({ code }) => code)).toContain('MAKER_DECIDES');
    expect(by('crane').cautions.map(({ code }) => code)).not.toContain('MAKER_DECIDES');
  });

  it('no legible tag, no use; not stated is not known', () => {
    const tag = (tagLegible?: boolean) => lift({ sling: { ...sling, tagLegible: tagLegible as true } });
    expect([tag(true).verdict, tag(false).verdict, tag().verdict]).toEqual(['pass', 'fail', 'undetermined']);
  });

  it('the condition of the sling, in words or from an inspection', () => {
    const state = (condition: LiftSling['condition']) =>
      lift({ sling: { ...sling, condition: condition as 'sound' } }).verdict;
    expect([
      state('sound'),
      state({ verdict: 'fit', criteria: 'us-asme-b30-9-2010', standing: 'standard' }),
      state('damaged'),
      state({ verdict: 'remove' }),
      state({ verdict: 'undetermined' }),
    ]).toEqual(['pass', 'pass', 'fail', 'fail', 'undetermined']);
    expect(lift().assumptions.map(({ code }) => code)).toContain('TAKEN_AS_SOUND');
  });

  it('fit by criteria for chain slings only', () => {
    const chain = { size: '3/8', wireDiameter: '0.4 in', pitch: '1.2 in' } as const;
    const measurements = {
      neverHeated: true,
      found: [],
      diameters: [{ readings: ['0.4 in'] }],
      section: { links: 10, length: '12 in' },
    } as const;
    const inspected = (criteria: CriteriaSet, found: readonly ChainDefect[] = []) =>
      inspectChain({ criteria, chain: { ...chain, withoutHook: true }, measurements: { ...measurements, found } });
    const by = (condition: LiftSling['condition']) => lift({ sling: { ...sling, condition: condition as 'sound' } });
    const sound = inspected(us29cfr1910_184_2011);
    expect([sound.verdict, by(sound).verdict]).toEqual(['fit', 'pass']);
    // tie-downs, and a policy that says nothing of the mark, under any name
    for (const fit of [
      inspected(us49cfr393_104_2024),
      inspected(housePolicy({ wear: { limit: 0.1, over: true } }), ['mark-missing']),
      inspected(housePolicy({ id: 'us-asme-b30-9-2010', wear: { limit: 0.1, over: true } })),
    ]) {
      expect([fit.verdict, verdictOf(by(fit), 'condition/sling'), by(fit).verdict]).toEqual([
        'fit',
        'undetermined',
        'undetermined',
      ]);
    }
    expect(by({ verdict: 'fit', criteria: usAsmeB30_10_2005.id, standing: 'standard' }).verdict).toBe('undetermined');
    expect(by({ verdict: 'fit' }).verdict).toBe('undetermined');
    // what any set takes out is out
    expect(by({ verdict: 'remove', criteria: us49cfr393_104_2024.id }).verdict).toBe('fail');
  });

  it('knows every set for slings by its id, and it has rows for chain', () => {
    const sets = Object.values(library).filter(
      (each) => typeof each === 'object' && 'removal' in each,
    ) as CriteriaSet[];
    const named = sets.filter(({ id }) => (CRITERIA_FOR_SLINGS as readonly string[]).includes(id));
    expect(named).toHaveLength(CRITERIA_FOR_SLINGS.length);
    for (const { removal } of named) expect(Object.keys(removal.rows.chain ?? {}).length).toBeGreaterThan(0);
    const others = sets.filter((each) => !named.includes(each)).map(({ id }) => id);
    expect(others.sort()).toEqual([
      'eu-en12195-3-2001-criteria',
      'us-49cfr393-104-2024',
      'us-asme-b30-10-2005',
      'us-osha-course-600',
    ]);
  });

  it('chain that was used for towing: a caution, unless a code forbids it', () => {
    const towed = (usedForTowing: boolean | undefined, criteria?: typeof caAlbertaOhs_21) =>
      lift({ sling: { ...sling, usedForTowing: usedForTowing as true }, ...(criteria && { criteria }) });
    expect(towed(true).verdict).toBe('pass');
    expect(towed(true).cautions.map(({ code }) => code)).toContain('TOWED_CHAIN_LIFTS');
    // the trade keeps it out of lifting: advice beside what is required
    expect(check(towed(true), 'towing/sling')).toMatchObject({ weight: 'practice', verdict: 'fail' });
    expect(check(towed(false), 'towing/sling')).toBeUndefined();
    expect([true, false, undefined].map((used) => towed(used, caAlbertaOhs_21).verdict)).toEqual([
      'fail',
      'pass',
      'undetermined',
    ]);
    expect(towed(false, caAlbertaOhs_21).inputs).toMatchObject({
      criteria: 'ca-alberta-ohs-21',
      ratings: 'us-alloy-sling-2011',
    });
  });

  it('people under the load', () => {
    expect([true, false].map((peopleClear) => lift({ peopleClear }).verdict)).toEqual(['pass', 'fail']);
    expect(lift().cautions.map(({ code }) => code)).toContain('STAY_CLEAR_OF_LOAD');
  });

  it('grade 70 fails, and says whose scope', () => {
    const low = lift({ sling: { ...sling, grade: 70 } });
    expect([low.verdict, verdictOf(low, 'grade/scope'), verdictOf(low, 'grade/practice')]).toEqual([
      'fail',
      'fail',
      'fail',
    ]);
  });

  it('the master link carries the whole load, parts of a leg its tension', () => {
    const top = (markedWll: '6000 lb' | '5999.9 lb') =>
      lift({ topParts: [{ id: 'master', kind: 'master-link', markedWll }] });
    expect([top('6000 lb').verdict, top('5999.9 lb').verdict]).toEqual(['pass', 'fail']);
    expect(top('5999.9 lb').governing).toBe('topParts/master');
    // two legs at 60 degrees: 6000 / (2 · 0.8660254) = 3464.1
    const parts = (markedWll: '3464.2 lb' | '3464 lb') =>
      lift({ legParts: [{ id: 'hook', kind: 'slip-hook', markedWll }] });
    expect([parts('3464.2 lb').verdict, parts('3464 lb').verdict]).toEqual(['pass', 'fail']);
    // 5/16 grade 80 counts as one leg of such chain, 4500 lb
    expect(lift({ legParts: [{ id: 'hook', kind: 'slip-hook', size: '5/16', grade: 80 }] }).verdict).toBe('pass');
    expect(
      check(lift({ legParts: [{ id: 'hook', kind: 'slip-hook', size: '5/16', grade: 80 }] }), 'legParts/hook'),
    ).toMatchObject({ capacity: { value: 4500, unit: 'lb' } });
    expect(lift({ topParts: [{ id: 'shackle', kind: 'shackle' }] }).verdict).toBe('undetermined');
    expect(
      lift({
        topParts: [
          { id: 'shackle', kind: 'shackle' },
          { id: 'link', kind: 'master-link', markedWll: '5000 lb' },
        ],
      }).verdict,
    ).toBe('fail');
  });

  it('the master link carries the rigging too, and heat takes from it as from the chain', () => {
    const top = (mass: string, more: Partial<CheckLiftInput> = {}, markedWll = '7100 lb') =>
      lift({
        load: { mass: mass as '1 lb' },
        machine: { kind: 'crane', liftCapacity: '40000 lb' },
        topParts: [{ id: 'master', kind: 'master-link', markedWll: markedWll as '1 lb' }],
        ...more,
      });
    expect(verdictOf(top('7000 lb', { riggingMass: '100 lb' }), 'topParts/master')).toBe('pass');
    expect(verdictOf(top('7000 lb', { riggingMass: '100.001 lb' }), 'topParts/master')).toBe('fail');
    // grade 80 at 900 F: half (from memory)
    const hot = { ...sling, temperature: '900 F' } as const;
    expect(verdictOf(top('3550 lb', { sling: hot }), 'topParts/master')).toBe('pass');
    expect(verdictOf(top('3550.001 lb', { sling: hot }), 'topParts/master')).toBe('fail');
    expect(top('3550 lb', { sling: hot }).assumptions.map(({ code }) => code)).toContain('HEAT_ON_PARTS');
    // two legs at 60 degrees: 3000 / (2 · 0.8660254) = 1732.05 each; 3464.2 · 0.5 = 1732.1
    const hook = (markedWll: '3464.2 lb' | '3464 lb') =>
      verdictOf(
        lift({ load: { mass: '3000 lb' }, sling: hot, legParts: [{ id: 'hook', kind: 'slip-hook', markedWll }] }),
        'legParts/hook',
      );
    expect([hook('3464.2 lb'), hook('3464 lb')]).toEqual(['pass', 'fail']);
    // what heat takes off grade 120 nobody says
    const open = { hitch: 'single', grade: 120, markedWll: '9000 lb', tagLegible: true, temperature: '500 F' } as const;
    expect(verdictOf(top('6000 lb', { sling: open }), 'topParts/master')).toBe('undetermined');
  });

  it('parts that are not made for lifting fail, whatever their mark', () => {
    const part = (more: object) => lift({ legParts: [{ id: 'p', markedWll: '9000 lb', ...more } as unknown as Part] });
    for (const kind of ['binder', 'webbing', 'winch', 'strapping'] as const) {
      expect([part({ kind }).verdict, part({ kind }).governing]).toEqual(['fail', 'legParts/for-lifting/p']);
    }
    const graded = (kind: string, grade?: number) => part({ kind, size: '3/8', ...(grade && { grade }) }).verdict;
    expect([30, 43, 70, 80, 100, 120].map((grade) => graded('chain', grade))).toEqual([
      'fail',
      'fail',
      'fail',
      'pass',
      'pass',
      'pass',
    ]);
    expect([graded('grab-hook', 43), graded('grab-hook', 80), graded('grab-hook'), graded('chain')]).toEqual([
      'fail',
      'pass',
      'pass',
      'undetermined',
    ]);
    expect(part({ kind: 'shackle', size: '3/8' }).verdict).toBe('pass');
    const pair = part({
      kind: 'parallel',
      loadSharing: 'equal',
      legs: [[{ id: 'a', kind: 'shackle', markedWll: '9000 lb' }], [{ id: 'b', kind: 'binder', markedWll: '9000 lb' }]],
      markedWll: undefined,
    });
    expect([pair.verdict, pair.governing]).toEqual(['fail', 'legParts/p/2/for-lifting/b']);
    expect(issueOf(() => part({ kind: 'clevis', grade: 85 }))).toMatchObject({
      code: 'UNKNOWN_GRADE',
      path: 'legParts[0].grade',
    });
  });

  it('European hooks need a mark of their own', () => {
    const europe = lift({
      ratings: euEn818_2008,
      load: { mass: '2000 kg' },
      sling: { hitch: 'double', size: '8 mm', grade: '8', angle: { fromVertical: '45 deg' }, tagLegible: true },
      legParts: [{ id: 'hook', kind: 'slip-hook', size: '8 mm', grade: '8' }],
    });
    expect([europe.verdict, europe.workingLoadLimit?.value]).toEqual(['undetermined', 2800]);
  });
});

describe('checkLift with legs', () => {
  const square = [at(-2, -1.5), at(2, -1.5), at(2, 1.5), at(-2, 1.5)];
  const legs = square.map((pick, index) => ({ id: `leg-${index}`, at: pick }));
  const { hitch: _, angle: __, ...chain } = sling;
  const hung = (mass: string, x: number, more: Partial<CheckLiftInput> = {}) =>
    lift({
      load: { mass: mass as '1 lb', centerOfGravity: at(x, 0, -1) },
      sling: chain,
      legs,
      hook: at(0, 0, 4),
      machine: { kind: 'crane', liftCapacity: '40000 lb' },
      ...more,
    });

  it('rates by the true angle', () => {
    // S = 4.717, H = 4: 58.0 degrees, so the row of 45: 15100 for four legs
    const found = hung('12000 lb', 0);
    expect([found.verdict, found.workingLoadLimit?.value, found.outcome]).toEqual(['pass', 15_100, 'rests']);
    // the diagonal alone: 12000/2 · 4.717/4 = 7075.5 of 7100; advice, since the table decides
    expect(check(found, 'leg/leg-0')).toMatchObject({ weight: 'practice', verdict: 'pass' });
    expect(check(hung('12100 lb', 0), 'leg/leg-0')).toMatchObject({ weight: 'practice', verdict: 'fail' });
    expect(hung('12100 lb', 0).verdict).toBe('pass');
  });

  it('hooks of legs that carry alike are asked what the table asks of the legs', () => {
    // 15000 / (3 · 0.84800) = 5896.3, not the 8844 of a diagonal by itself
    const hook = (markedWll: '5897 lb' | '5896 lb') =>
      hung('15000 lb', 0, { legParts: [{ id: 'hook', kind: 'slip-hook', markedWll }] }).verdict;
    expect([hook('5897 lb'), hook('5896 lb')]).toEqual(['pass', 'fail']);
    // not alike: the worst case of a front leg, 7098.6 lbf at 12100 lb
    const own = (markedWll: '7100 lb' | '7090 lb') =>
      hung('12100 lb', 0.5, { legParts: [{ id: 'hook', kind: 'slip-hook', markedWll }] }).verdict;
    expect([own('7100 lb'), own('7090 lb')]).toEqual(['pass', 'fail']);
  });

  it('legs that do not carry alike are held one by one', () => {
    const found = hung('12100 lb', 0.5);
    expect([found.verdict, check(found, found.governing ?? '')?.weight]).toEqual(['pass', 'requirement']);
    const heavy = hung('12200 lb', 0.5);
    // worst case of the front legs: 0.5867 of the load, 7157 lbf of 7100
    expect([heavy.verdict, heavy.governing]).toEqual(['fail', 'leg/leg-1']);
    expect(found.tilt?.value).toBeCloseTo(5.7106, 4);
    expect(found.assumptions.map(({ code }) => code)).not.toContain('LEGS_TAKEN_AS_ALIKE');
  });

  it('the limit of a leg comes from the table, from what is stated, or is missing', () => {
    const tag = { grade: 80, tagLegible: true, markedWll: '20000 lb', markedAt: { fromHorizontal: '45 deg' } } as const;
    expect(hung('12000 lb', 0.5, { sling: tag }).verdict).toBe('undetermined');
    expect(hung('12000 lb', 0.5, { sling: { ...tag, singleLegWll: '7100 lb' } }).verdict).toBe('pass');
    expect(hung('12000 lb', 0.5, { sling: { ...tag, singleLegWll: '6000 lb' } }).verdict).toBe('fail');
  });

  it('a low tag is a low limit for each leg', () => {
    // 6000 lb at 60 degrees on two legs: 6000 / (2 · 0.8660254) = 3464.1 lb a leg, where 1/2 in grade 80 carries 12000
    const near = (mass: string) =>
      lift({
        load: { mass: mass as '1 lb', centerOfGravity: at(-0.75, 0, -1) },
        sling: { ...chain, size: '1/2', markedWll: '6000 lb', markedAt: { fromHorizontal: '45 deg' } },
        legs: [
          { id: 'near', at: at(-1, 0) },
          { id: 'far', at: at(3, 0) },
        ],
        hook: at(-0.75, 0, 4),
        machine: { kind: 'crane', liftCapacity: '40000 lb' },
      });
    // tag at 45 degrees: 6000 / (2 · 0.7071068) = 4242.64 lb a leg. The hook stands over the center of gravity: with 1/16
    // and 15/16 of 4 across, T = W · (15/16) · √(16 + 1/16) / 4 = 0.939330 W
    expect(verdictOf(near('4516 lb'), 'leg/near')).toBe('pass'); // 4242.0
    expect(verdictOf(near('4517 lb'), 'leg/near')).toBe('fail'); // 4242.95
    expect([near('4516 lb').verdict, near('4517 lb').verdict, near('4517 lb').governing]).toEqual([
      'pass',
      'fail',
      'leg/near',
    ]);
  });

  it('legs nearly alike are judged as legs alike', () => {
    const [level, off] = [hung('12100 lb', 0), hung('12100 lb', 0.001)];
    expect([level.verdict, off.verdict]).toEqual(['pass', 'pass']);
    for (const found of [level, off]) {
      expect(check(found, 'leg/leg-1')).toMatchObject({ weight: 'practice', verdict: 'fail' });
      expect(found.cautions.map(({ code }) => code)).toContain('DIAGONAL_MAY_CARRY_ALL');
    }
    // a tag over what three such legs carry, 3 · 7100 · sin 45: the pair must carry it by itself
    const tag = { ...chain, markedAt: { fromHorizontal: '45 deg' }, markedWll: '30000 lb' } as const;
    // 18000 / (3 · 0.848) = 7076 of 7100; 18200 / (3 · 0.848) = 7154
    expect(check(hung('18000 lb', 0, { sling: tag }), 'leg/leg-0')?.weight).toBe('practice');
    const over = hung('18200 lb', 0, { sling: tag });
    expect([over.verdict, check(over, 'leg/leg-0')?.weight]).toEqual(['fail', 'requirement']);
  });

  it('Europe takes legs as alike while tensions are within 5 percent and angles within 2 degrees', () => {
    const two = (half: string, x: string) =>
      lift({
        ratings: euEn818_2008,
        load: { mass: '4000 kg', centerOfGravity: [x as '0 m', '0 m', '-1 m'] },
        sling: { size: '10 mm', grade: '8', tagLegible: true },
        legs: [
          { id: 'a', at: [`-${half}` as '0 m', '0 m', '0 m'], length: '3 m' },
          { id: 'b', at: [half as '0 m', '0 m', '0 m'], length: '3 m' },
        ],
      }).workingLoadLimit?.value;
    // legs of 3 m, picks at 2: h = √5 + 1 = 3.236; a tilt of 1 degree, 2 between the legs, at 0.05649 m
    expect([two('2 m', '0.056 m'), two('2 m', '0.057 m')]).toEqual([4250, 2125]);
    // picks at 0.5: sin(α + θ) / sin(α - θ) = 1.05 at tan θ = tan α · 0.05 / 2.05, so 3.958 · 0.0041227 = 0.016318 m
    expect([two('0.5 m', '0.0163 m'), two('0.5 m', '0.01635 m')]).toEqual([4250, 2125]);
  });

  it('Europe takes half where legs are not alike enough', () => {
    const two = (x: string) =>
      lift({
        ratings: euEn818_2008,
        load: { mass: '1200 kg', centerOfGravity: [x as '0 m', '0 m', '-1 m'] },
        sling: { size: '10 mm', grade: '8', tagLegible: true },
        legs: [
          { id: 'a', at: ['-2 m', '0 m', '0 m'], length: '3 m' },
          { id: 'b', at: ['2 m', '0 m', '0 m'], length: '3 m' },
        ],
      });
    // asin(2/3) = 41.8 degrees from plumb: 4250 kg; tilted by 8.8 degrees the flatter leg leans 50.6: 3150, and 33.0
    // against 50.6 is more than 15 apart: half of it
    expect([two('0 m').workingLoadLimit?.value, two('0.5 m').workingLoadLimit?.value]).toEqual([4250, 1575]);
  });

  it('a load that rolls over, or hangs from some of its legs, fails', () => {
    const over = hung('1000 lb', 0, { load: { mass: '1000 lb', centerOfGravity: at(0, 0, 5) } });
    expect([over.verdict, over.governing, over.outcome, over.workingLoadLimit]).toEqual([
      'fail',
      'balance/load',
      'unstable',
      null,
    ]);
    const slack = lift({
      load: { mass: '1000 lb', centerOfGravity: at(0, 0, -1) },
      sling: chain,
      legs: [
        { id: 'left', at: at(-3, 0), length: '5 ft' },
        { id: 'long', at: at(0, 0.5), length: '4.2 ft' },
        { id: 'right', at: at(3, 0), length: '5 ft' },
      ],
    });
    expect([verdictOf(slack, 'balance/load'), slack.outcome]).toEqual(['fail', 'leg-slack']);
  });

  it.each([
    ['CONFLICTING_FIELDS', 'sling.angle', { sling }],
    ['CONFLICTING_FIELDS', 'legs', { sling: { ...chain, hitch: 'double' } }],
    ['MISSING_FIELD', 'load.centerOfGravity', { load: { mass: '1000 lb' } }],
    ['TOO_LARGE', 'legs', { legs: [...legs, { id: 'fifth', at: at(0, 0) }] }],
    ['MISSING_FIELD', 'sling.hitch', { legs: undefined, hook: undefined }],
    ['UNKNOWN_CRITERIA_SET', 'criteria', { criteria: {} }],
    ['MISSING_FIELD', 'sling.condition', { sling: { ...chain, condition: {} as 'sound' } }],
    ['UNKNOWN_CRITERIA_SET', 'criteria', { criteria: us29cfr1910_184_2011 }],
    ['CONFLICTING_FIELDS', 'sling.singleLegWll', { sling: { ...chain, singleLegWll: '7100 lb' } }],
    ['IMPOSSIBLE_GEOMETRY', 'legs[2]', { legs: [...legs.slice(0, 2), { id: 'high', at: at(0, 3, 5) }] }],
    ['UNKNOWN_VALUE', 'machine.kind', { machine: { kind: 'balloon' } }],
    ['UNKNOWN_RATING_TABLE', 'ratings', { ratings: {} }],
  ] as [string, string, Partial<CheckLiftInput>][])('%s at %s', (code, path, more) => {
    expect(issueOf(() => hung('1000 lb', 0, more))).toMatchObject({ code, path });
  });

  it('names the leg whose pick is above the hook', () => {
    const more = { legs: [...legs.slice(0, 2), { id: 'high', at: at(0, 3, 5) }] };
    expect(issueOf(() => hung('1000 lb', 0, more)).expected).toBe('a pick below the hook');
  });

  it('names the sling in what the rating refuses', () => {
    expect(issueOf(() => lift({ sling: { ...sling, size: '7/16' } }))).toMatchObject({
      code: 'UNKNOWN_SIZE',
      path: 'sling.size',
    });
  });
});
