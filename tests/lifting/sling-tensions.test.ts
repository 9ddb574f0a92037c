import { describe, expect, it } from 'vitest';
import { explain, inWords, type Point, type SlingTensionsInput, slingTensions } from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

const at = (x: number, y: number, z = 0): Point => [`${x} ft`, `${y} ft`, `${z} ft`];
const pair = (more: Partial<SlingTensionsInput> = {}, centerOfGravity = at(0, 0, -1)): SlingTensionsInput => ({
  load: { mass: '1000 lb', centerOfGravity },
  legs: [
    { id: 'front', at: at(3, 0), length: '5 ft' },
    { id: 'rear', at: at(-3, 0), length: '5 ft' },
  ],
  ...more,
});
const four = (stiffness?: readonly number[], lengths: readonly number[] = [5, 5, 5, 5]): SlingTensionsInput => ({
  load: { mass: '1000 lb', centerOfGravity: at(0, 0, -1) },
  legs: [at(3, 0), at(0, 3), at(-3, 0), at(0, -3)].map((pick, index) => ({
    id: `${index}`,
    at: pick,
    length: `${lengths[index]!} ft` as const,
    ...(stiffness && { axialStiffness: { value: stiffness[index]!, unit: 'lbf' as const } }),
  })),
});

describe('slingTensions', () => {
  it('two legs alike: T = W S / (2 H)', () => {
    // 3-4-5: H = 4; 1000 · 5 / 8 = 625; the angle is atan(4/3) = 53.130 degrees
    const { outcome, legs, tilt, lowest, determinate, hook, up } = slingTensions(pair());
    expect([outcome, tilt?.value, lowest, determinate]).toEqual(['rests', 0, null, true]);
    for (const leg of legs) {
      expect(leg.tension.value).toBeCloseTo(625, 9);
      expect(leg.elasticTension?.value).toBeCloseTo(625, 9);
      expect(leg.angle.fromHorizontal.value).toBeCloseTo(53.1301, 4);
      expect([leg.tension.unit, leg.length.value, leg.slack]).toEqual(['lbf', 5, false]);
    }
    expect(hook!.map(({ value }) => Number(value.toFixed(9)))).toEqual([0, 0, 4]);
    expect(up).toEqual([0, 0, 1]);
  });

  it('tilts until the center of gravity hangs below the hook, and names the end that goes down', () => {
    // hook 4 over the middle of the picks, center of gravity 1 below and 0.5 to the front: tilt = atan(0.5 / 5) = 5.7106;
    // by sines: leg front leans 36.87 - 5.71 = 31.16 from plumb, leg rear 42.58:
    // front T = W sin 42.58 / sin(73.74) = 676.6 / 0.96 ... = 0.67661 / 0.96 = 704.8; rear 0.51742 / 0.96 = 539.0
    const { tilt, lowest, legs, cautions } = slingTensions(pair({}, at(0.5, 0, -1)));
    expect(tilt?.value).toBeCloseTo(5.7106, 4);
    expect(lowest).toBe('front');
    expect(legs.map(({ angle }) => Number((90 - angle.fromHorizontal.value).toFixed(2)))).toEqual([31.16, 42.58]);
    expect(legs.map(({ tension }) => Math.round(tension.value))).toEqual([705, 539]);
    expect(cautions.map(({ code }) => code)).toContain('LOAD_TILTS');
  });

  it('a center of gravity that is not below the picks rolls over', () => {
    for (const height of [0, 0.01, 3]) {
      const found = slingTensions(pair({}, at(0, 0, height)));
      expect([found.outcome, found.legs, found.tilt, found.hook]).toEqual(['unstable', [], null, null]);
      expect(found.cautions.map(({ code }) => code)).toContain('LOAD_ROLLS_OVER');
    }
    expect(slingTensions(pair({}, at(0, 0, -0.01))).outcome).toBe('rests');
  });

  it('four legs: the worst case between rigid legs, and the sharing by stretch', () => {
    // alike: a diagonal of two carries all, 625 each; by stretch 312.5 each
    const alike = slingTensions(four());
    expect(alike.determinate).toBe(false);
    for (const { tension, elasticTension } of alike.legs) {
      expect(tension.value).toBeCloseTo(625, 6);
      expect(elasticTension?.value).toBeCloseTo(312.5, 6);
    }
    expect(alike.assumptions.map(({ code }) => code)).toEqual(['LEGS_OF_ONE_STIFFNESS']);
    // one diagonal three times as stiff carries three quarters: 468.75 and 156.25
    const stiff = slingTensions(four([3e6, 1e6, 3e6, 1e6])).legs.map(({ elasticTension }) => elasticTension!.value);
    expect(stiff.map((value) => Number(value.toFixed(2)))).toEqual([468.75, 156.25, 468.75, 156.25]);
  });

  it('four legs: one a hair too long counts in the worst case; its sharing needs every stiffness', () => {
    const hair = four(undefined, [5, 5.01, 5, 5.01]);
    const open = slingTensions(hair);
    expect(open.legs.map(({ elasticTension }) => elasticTension)).toEqual([null, null, null, null]);
    expect(open.missing.map(({ code }) => code)).toEqual(['LEG_STIFFNESS_NOT_STATED']);
    for (const { tension } of open.legs) expect(tension.value).toBeGreaterThan(620);
  });

  it('EN 818-4 lets legs differ by 10 mm up to 2 m: a longer gap is a slack leg', () => {
    const gap = (millimeters: number) => {
      const metric = (length: number): SlingTensionsInput => ({
        load: { mass: '500 kg', centerOfGravity: ['0 m', '0 m', '-1 m'] },
        legs: (['1 m', '0 m', '-1 m'] as const).map((x, index) => ({
          id: `${index}`,
          at: [x, '0 m', '0 m'],
          length: { value: index === 1 ? length : Math.SQRT2, unit: 'm' },
        })),
      });
      // the middle leg hangs straight down from a hook 1 m up
      return slingTensions(metric(1 + millimeters / 1000));
    };
    expect([gap(9.99).outcome, gap(10.01).outcome]).toEqual(['rests', 'leg-slack']);
    expect(gap(10.01).legs.map(({ slack }) => slack)).toEqual([false, true, false]);
    expect(gap(10.01).legs[1]?.tension.value).toBe(0);
    expect(gap(9.99).legs[1]?.tension.value).toBeCloseTo((500 * 9.80665) / 1000, 6);
  });

  it('takes the hook in place of the lengths', () => {
    const by = slingTensions({
      ...pair(),
      legs: pair().legs.map(({ id, at: pick }) => ({ id, at: pick })),
      hook: at(0, 0, 4),
    });
    expect(by.legs.map(({ tension }) => Number(tension.value.toFixed(6)))).toEqual([625, 625]);
  });

  it('is in the units that are asked for, or shared', () => {
    const si = slingTensions(pair({ units: 'si' }));
    // 625 lbf · 4.4482216152605e-3
    expect(si.legs[0]?.tension.value).toBeCloseTo(2.78013851, 7);
    expect([si.legs[0]?.tension.unit, si.legs[0]?.length.unit]).toEqual(['kN', 'm']);
    const mixed = { ...pair(), load: { mass: '500 kg' as const, centerOfGravity: at(0, 0, -1) } };
    expect(issueOf(() => slingTensions(mixed)).code).toBe('UNITS_REQUIRED');
  });

  it('explains itself, and leaves the steps out when told', () => {
    const found = slingTensions(four());
    expect(explain(found, { as: 'text' })).toContain('greatest of every Σ T u = W up with legs slack');
    expect(JSON.stringify(inWords(found))).toContain('which legs carry is not certain');
    expect(slingTensions({ ...four(), working: false }).steps).toEqual([]);
  });

  it.each([
    ['EMPTY_LIST', 'legs', { ...pair(), legs: [] }],
    ['TOO_LARGE', 'legs', { ...pair(), legs: [...four().legs, { id: 'fifth', at: at(1, 1), length: '5 ft' }] }],
    ['DUPLICATE_ID', 'legs[1].id', { ...pair(), legs: [pair().legs[0]!, pair().legs[0]!] }],
    ['MISSING_FIELD', 'legs[0].length', { ...pair(), legs: [{ id: 'a', at: at(0, 0) }] }],
    ['MISSING_FIELD', 'legs[0].at', { ...pair(), legs: [{ id: 'a', length: '1 ft' }] }],
    ['MISSING_FIELD', 'load.centerOfGravity', { ...pair(), load: { mass: '1 lb' } }],
    ['MISSING_FIELD', 'load', { ...pair(), load: undefined }],
    ['CONFLICTING_FIELDS', 'legs[0].length', { ...pair(), hook: at(0, 0, 4) }],
    ['NOT_POSITIVE', 'load.mass', { ...pair(), load: { mass: '0 lb', centerOfGravity: at(0, 0) } }],
    ['WRONG_KIND', 'load.mass', { ...pair(), load: { mass: '5 lbf', centerOfGravity: at(0, 0) } }],
    ['IMPOSSIBLE_GEOMETRY', 'legs[1]', { ...pair(), legs: [pair().legs[0]!, { ...pair().legs[0]!, id: 'b' }] }],
  ] as [string, string, SlingTensionsInput][])('%s at %s', (code, path, input) => {
    expect(issueOf(() => slingTensions(input))).toMatchObject({ code, path });
  });

  it('refuses legs that make no triangle: at, below and above', () => {
    const lengths = (front: string, rear: string) => () =>
      slingTensions({
        ...pair(),
        legs: pair().legs.map((leg, index) => ({ ...leg, length: (index === 0 ? front : rear) as '5 ft' })),
      });
    // picks 6 ft apart
    expect(issueOf(lengths('3 ft', '3 ft')).code).toBe('IMPOSSIBLE_GEOMETRY');
    expect(issueOf(lengths('2.9 ft', '3 ft')).code).toBe('IMPOSSIBLE_GEOMETRY');
    expect(lengths('3.01 ft', '3 ft')().outcome).toBe('rests');
    expect(issueOf(lengths('9 ft', '3 ft')).code).toBe('IMPOSSIBLE_GEOMETRY');
    expect(issueOf(lengths('9.1 ft', '3 ft')).code).toBe('IMPOSSIBLE_GEOMETRY');
    // just a triangle: straight out from the center of gravity over the rear pick the hook is 0.95 ft up and 8.897 ft from
    // the front one, so the short leg carries all, within a millimeter of the long one coming taut
    const flat = lengths('8.9 ft', '3 ft')();
    expect(flat.legs.map(({ tension }) => Number(tension.value.toFixed(6)))).toEqual([0, 1000]);
    expect(flat.legs[1]?.angle.fromHorizontal.value).toBeCloseTo(90, 6);
    const spread = {
      ...four(),
      legs: [...four().legs.slice(0, 2), { id: 'far', at: at(0, 30), length: '24 ft' as const }],
    };
    expect(issueOf(() => slingTensions(spread)).code).toBe('IMPOSSIBLE_GEOMETRY');
  });
});
