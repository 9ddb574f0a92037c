import { hitchStability, type Tractor } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

// x = 22.4 in ahead of the rear axle: the front carries 22.4 / 64 = 0.35 of 3300 lb = 1155 lb
const tractor = {
  mass: '3300 lb',
  frontAxleMass: '1155 lb',
  wheelbase: '64 in',
  centerOfGravityHeight: '28 in',
  trackWidth: '50 in',
  drive: 'rear-wheels',
} as const satisfies Tractor;
const drawbar = { kind: 'drawbar', height: '15 in' } as const;
const base = { tractor, hitch: drawbar } as const;

const { frontAxleMass: _, ...unweighed } = tractor;
const at = (centerOfGravityAhead: Tractor['centerOfGravityAhead'] & string) => ({ ...unweighed, centerOfGravityAhead });
const checkOf = (result: ReturnType<typeof hitchStability>, id: string) =>
  result.checks.find((each) => each.id === id)!;

describe('hitchStability, fore and aft', () => {
  it('takes P · h / L off the front axle and puts it on the rear one', () => {
    // 1155 − 1500 · 15 / 64 = 1155 − 351.5625 = 803.4375 lbf; 3300 − 803.4375 = 2496.5625 lbf
    const answer = hitchStability({ ...base, pull: '1500 lbf' });
    expect(answer.frontReaction.value).toBeCloseTo(803.4375, 9);
    expect(answer.rearReaction.value).toBeCloseTo(2496.5625, 9);
    expect(answer).toMatchObject({ verdict: 'pass', stance: 'stands', governing: 'axle-lift' });
    expect(answer.frontReaction.unit).toBe('lbf');
  });

  it('lifts the front at W · x / h, and says so at, just below and just above it', () => {
    // 3300 · 22.4 / 16 = 4620 lbf
    const hitch = { kind: 'drawbar', height: '16 in' } as const;
    const lift = hitchStability({ tractor, hitch }).liftPull!;
    expect(lift.value).toBeCloseTo(4620, 9);
    expect(hitchStability({ tractor, hitch, pull: lift })).toMatchObject({ verdict: 'pass' });
    expect(hitchStability({ tractor, hitch, pull: '4619.9 lbf' })).toMatchObject({ verdict: 'pass', stance: 'stands' });
    const over = hitchStability({ tractor, hitch, pull: '4620.1 lbf' });
    expect(over).toMatchObject({ verdict: 'fail', stance: 'front-lifts', governing: 'axle-lift' });
    expect(over.frontReaction.value).toBeLessThan(0);
  });

  it('counts the height from the ground, whatever the axle', () => {
    const low = hitchStability({ ...base, pull: '1500 lbf', rearAxleHeight: '24 in' });
    expect(low.frontReaction.value).toBeCloseTo(803.4375, 9);
    expect(low.hitchToAxle).toBe('below');
    expect(checkOf(low, 'below-axle').verdict).toBe('pass');
    const level = hitchStability({ ...base, rearAxleHeight: '15 in' });
    expect(level.hitchToAxle).toBe('at');
    const high = hitchStability({ ...base, pull: '1500 lbf', rearAxleHeight: '14.9 in' });
    expect(high.hitchToAxle).toBe('above');
    // advice beside the verdict: it does not decide it
    expect(checkOf(high, 'below-axle')).toMatchObject({
      verdict: 'fail',
      weight: 'practice',
      clause: 'common practice',
    });
    expect(high.verdict).toBe('pass');
  });

  it('a chain that goes down to the load presses on the hitch behind the axle', () => {
    // 3-4-5: β = atan(3/4), cos 0.8, sin 0.6; arm = 15 · 0.8 + 20 · 0.6 = 24 in
    // R_f = 1155 − 1000 · 24 / 64 = 780; R_r = 3300 + 600 − 780 = 3120 lbf
    const hitch = { ...drawbar, behindAxle: '20 in' } as const;
    const chainAngle = { belowTractorLine: '75 percent-grade' } as const;
    const answer = hitchStability({ tractor, hitch, chainAngle, pull: '1000 lbf' });
    expect(answer.frontReaction.value).toBeCloseTo(780, 9);
    expect(answer.rearReaction.value).toBeCloseTo(3120, 9);
    // P_lift = 3300 · 22.4 / 24 = 3080; (3080 · 0.8) / (3300 + 3080 · 0.6) = 2464 / 5148
    expect(answer.liftPull!.value).toBeCloseTo(3080, 9);
    expect(answer.frictionToLift).toBeCloseTo(2464 / 5148, 12);
    // h_max: 0 = 1155 · 64 / 1000 − 0.8 h − 12 → h = (73.92 − 12) / 0.8 = 77.4 in
    expect(answer.greatestHeight!.value).toBeCloseTo(77.4, 9);
  });

  it('an angle from the horizontal is that from the line of the tractor on level ground, and less by the slope uphill', () => {
    const hitch = { ...drawbar, behindAxle: '20 in' } as const;
    const run = (more: object) => hitchStability({ tractor, hitch, pull: '1000 lbf', ...more }).frontReaction.value;
    expect(run({ chainAngle: { belowHorizontal: '20 deg' } })).toBeCloseTo(
      run({ chainAngle: { belowTractorLine: '20 deg' } }),
      9,
    );
    // nose up 12 deg: the line to the rear already goes down by 12
    expect(run({ slope: '12 deg', chainAngle: { belowHorizontal: '20 deg' } })).toBeCloseTo(
      run({ slope: '12 deg', chainAngle: { belowTractorLine: '8 deg' } }),
      9,
    );
    // in reverse the line goes up by 12
    const front = { kind: 'front-hitch', height: '20 in', aheadOfFrontAxle: '18 in' } as const;
    const reverse = (chainAngle: object) =>
      hitchStability({ tractor, hitch: front, slope: '12 deg', pull: '500 lbf', chainAngle: chainAngle as never })
        .rearReaction.value;
    expect(reverse({ belowHorizontal: '5 deg' })).toBeCloseTo(reverse({ belowTractorLine: '17 deg' }), 9);
  });

  it('no pull lifts the front where the chain rises steeply enough; then it lifts the rear', () => {
    // β = −atan(3/4): arm = 12 − 0.6 · 40 = −12 in; R_f grows; R_r = 2145 + P (−0.6 + (−12) / 64) = 2145 − 0.7875 P
    const hitch = { ...drawbar, behindAxle: '40 in' } as const;
    const chainAngle = { belowTractorLine: '-75 percent-grade' } as const;
    const answer = hitchStability({ tractor, hitch, chainAngle, pull: '1000 lbf' });
    expect(answer.frontReaction.value).toBeCloseTo(1155 + (1000 * 12) / 64, 9);
    expect(answer.liftPull!.value).toBeCloseTo(2145 / 0.7875, 8);
    expect(answer.frictionToLift).toBeUndefined();
    expect(hitchStability({ tractor, hitch, chainAngle, pull: '2800 lbf' })).toMatchObject({
      verdict: 'fail',
      stance: 'rear-lifts',
    });
  });

  it('lifts or slips first, as friction has it', () => {
    // x / h = 22.4 / 32 = 0.7
    const hitch = { kind: 'drawbar', height: '32 in' } as const;
    const on = (friction: number) => hitchStability({ tractor, hitch, friction });
    expect(on(0.69).first).toBe('slips');
    expect(on(0.71).first).toBe('lifts');
    expect(on(0.71).cautions.map(({ code }) => code)).toContain('LIFTS_BEFORE_SLIPPING');
    expect(on(0.69).cautions.map(({ code }) => code)).not.toContain('LIFTS_BEFORE_SLIPPING');
    expect(hitchStability({ tractor, hitch }).first).toBeUndefined();
  });

  it('keeps a steering reserve only where it is asked for, and says that it was not', () => {
    // 0.2 · 3300 = 660 lbf left: P = (1155 − 660) · 64 / 16 = 1980 lbf
    const hitch = { kind: 'drawbar', height: '16 in' } as const;
    const asked = (pull: '1979.9 lbf' | '1980.1 lbf') => hitchStability({ tractor, hitch, pull, steeringReserve: 0.2 });
    expect(asked('1979.9 lbf')).toMatchObject({ verdict: 'pass', governing: 'steering-reserve' });
    expect(asked('1980.1 lbf')).toMatchObject({ verdict: 'fail', governing: 'steering-reserve', stance: 'stands' });
    expect(asked('1979.9 lbf').cautions.map(({ code }) => code)).not.toContain('NO_STEERING_RESERVE');
    const notAsked = hitchStability({ tractor, hitch, pull: '1980.1 lbf' });
    expect(notAsked.verdict).toBe('pass');
    expect(notAsked.cautions.map(({ code }) => code)).toContain('NO_STEERING_RESERVE');
    // 0.4 · 3300 = 1320 > 1155: not even without a pull; no hitch is low enough
    expect(hitchStability({ tractor, hitch, steeringReserve: 0.4 }).verdict).toBe('fail');
    expect(hitchStability({ tractor, hitch, pull: '10 lbf', steeringReserve: 0.4 }).greatestHeight).toBeNull();
    // the front is up
    const up = hitchStability({ tractor, hitch, pull: '5000 lbf', steeringReserve: 0.2 });
    expect(checkOf(up, 'steering-reserve')).toMatchObject({
      verdict: 'fail',
      because: { code: 'FRONT_CARRIES_NOTHING' },
    });
  });

  it('leaves the verdict open without a pull', () => {
    const answer = hitchStability({ ...base, steeringReserve: 0.2 });
    expect(answer).toMatchObject({ verdict: 'undetermined', stance: 'stands' });
    expect(answer.greatestHeight).toBeUndefined();
    expect(answer.frontReaction.value).toBeCloseTo(1155, 9);
    expect(answer.assumptions.map(({ code }) => code)).toContain('NO_PULL_GIVEN');
  });

  it('a tractor that tips by itself is an outcome, not an error', () => {
    const behind = hitchStability({ tractor: at('-2 in'), hitch: drawbar, pull: '100 lbf' });
    expect(behind).toMatchObject({ verdict: 'fail', stance: 'tips-rearward', liftPull: { value: 0 } });
    // 3300 · (−2) / 64 = −103.125 − 100 · 15 / 64
    expect(behind.frontReaction.value).toBeCloseTo(-103.125 - 23.4375, 9);
    expect(checkOf(behind, 'axle-lift')).toMatchObject({ because: { code: 'TIPS_REARWARD' } });
    expect(hitchStability({ tractor: at('0 in'), hitch: drawbar }).stance).toBe('tips-rearward');
    expect(hitchStability({ tractor: at('0.1 in'), hitch: drawbar }).stance).toBe('stands');
    expect(hitchStability({ tractor: at('63.9 in'), hitch: drawbar }).stance).toBe('stands');
    const ahead = hitchStability({ tractor: at('65 in'), hitch: drawbar, pull: '10 lbf' });
    expect(ahead).toMatchObject({ verdict: 'fail', stance: 'tips-forward' });
    expect(ahead.rearReaction.value).toBeLessThan(0);
  });

  it('tips without a pull from tan α = x / z on', () => {
    // 22.4 / 28 = 80 percent; downhill the other way, from (64 − 22.4) / 28 = 148.57 percent
    const on = (slope: '79.9 percent-grade' | '80.1 percent-grade' | '-148 percent-grade' | '-149 percent-grade') =>
      hitchStability({ ...base, slope }).stance;
    expect(on('79.9 percent-grade')).toBe('stands');
    expect(on('80.1 percent-grade')).toBe('tips-rearward');
    expect(on('-148 percent-grade')).toBe('stands');
    expect(on('-149 percent-grade')).toBe('tips-forward');
    // atan 0.8 = 38.6598 deg
    expect(hitchStability(base).noPullTipAngle!.fromHorizontal.value).toBeCloseTo(38.6598, 4);
  });

  it('a reverse pull unloads the rear axle and never lifts the front', () => {
    // 2145 − 800 · 15 / 64 = 1957.5; lifts the rear at 3300 · 41.6 / 15 = 9152 lbf
    const hitch = { kind: 'front-hitch', height: '15 in' } as const;
    const answer = hitchStability({ tractor, hitch, pull: '800 lbf' });
    expect(answer.rearReaction.value).toBeCloseTo(1957.5, 9);
    expect(answer.frontReaction.value).toBeCloseTo(1342.5, 9);
    expect(answer.liftPull!.value).toBeCloseTo(9152, 8);
    expect(answer.verdict).toBe('pass');
    expect(answer.cautions.map(({ code }) => code)).toContain('REVERSE_PULL');
    expect(hitchStability({ tractor, hitch, pull: '9153 lbf' }).stance).toBe('rear-lifts');
  });

  it('the point of no return lies past upright for a center of gravity below the axle', () => {
    const answer = hitchStability({ ...base, rearAxleHeight: '30 in' });
    // atan2(22.4, −2): 90 + atan(2 / 22.4) = 95.102 deg
    expect(answer.pointOfNoReturn!.fromHorizontal.value).toBeCloseTo(95.102, 3);
  });
});

describe('the point that the chain is hooked to', () => {
  const verdictOf = (hitch: object) =>
    hitchStability({ tractor, hitch: { height: '15 in', ...hitch } as never, pull: '100 lbf' }).verdict;

  it.each(['three-point-arms', 'quick-hitch', 'top-link', 'axle'])('fails on the %s, whatever the pull', (kind) => {
    // CDC/NIOSH guidance on hitching, 2009: never to the axle, nor to a two- or three-point hitch instead of the drawbar
    expect(verdictOf({ kind })).toBe('fail');
  });

  it.each(['drawbar', 'frame', 'front-hitch'])('passes on the %s', (kind) => {
    expect(verdictOf({ kind })).toBe('pass');
  });

  it('passes on an attachment only where its subframe is tied into the frame', () => {
    // common practice
    expect(verdictOf({ kind: 'attachment', subframeTiedToFrame: true })).toBe('pass');
    expect(verdictOf({ kind: 'attachment', subframeTiedToFrame: false })).toBe('fail');
    expect(verdictOf({ kind: 'attachment' })).toBe('undetermined');
  });

  it('an attachment at the front pulls in reverse', () => {
    const hitch = { kind: 'attachment', height: '15 in', aheadOfFrontAxle: '3 ft', subframeTiedToFrame: true } as const;
    expect(hitchStability({ tractor, hitch, pull: '800 lbf' }).rearReaction.value).toBeCloseTo(1957.5, 9);
  });
});

describe('to the side', () => {
  // Rigid frame: tips at sin 60 deg · P · h = W · t / 2, P = 3300 · 25 / (0.866025 · 15) = 6350.9 lbf.
  // Front axle free to pivot: about the line from the low rear tire to its pin, moments times the length of that line. W holds
  // it by 3300 · 25 · (64 − 22.4) = 3,432,000. The pull, 15 in high and 20 in behind, turns it over by
  // P · (15 · (sin 60 deg · 64 − cos 60 deg · 25) + pin · (cos 60 deg · 25 + sin 60 deg · 20)) = P · (643.896 + 29.8205 · pin):
  // pin on the ground 5330.1 lbf, 14 in high 3,432,000 / 1061.383 = 3233.5, as high as the center of gravity (28 in) 2320.7.
  const steep = { fromStraight: '60 deg' } as const;
  const hitch = { ...drawbar, behindAxle: '20 in' } as const;
  const at = (lbf: number, more: object = {}, drive: Tractor['drive'] = 'rear-wheels') =>
    checkOf(
      hitchStability({
        tractor: { ...tractor, drive },
        hitch,
        sidePull: steep,
        pull: { value: lbf, unit: 'lbf' },
        ...more,
      }),
      'side-tipping',
    );

  it('passes where it stands on a pivoting axle, fails where a rigid frame tips, and is open between', () => {
    expect(at(2320).verdict).toBe('pass');
    expect(at(2321)).toMatchObject({ verdict: 'undetermined', missing: [{ code: 'FRONT_AXLE_PIVOTS' }] });
    expect(at(6350).verdict).toBe('undetermined');
    expect(at(6352)).toMatchObject({ verdict: 'fail', because: { code: 'TIPS_SIDEWAYS' } });
  });

  it('takes the height of the pin where it is told', () => {
    expect(at(3233, { frontPivotHeight: '14 in' }).verdict).toBe('pass');
    expect(at(3234, { frontPivotHeight: '14 in' }).verdict).toBe('undetermined');
    expect(at(6352, { frontPivotHeight: '14 in' }).verdict).toBe('fail');
  });

  it('tracks are rigid across', () => {
    expect(at(6350, {}, 'tracks').verdict).toBe('pass');
    expect(at(6352, {}, 'tracks').verdict).toBe('fail');
  });

  it('a side slope shifts weight to the low side, and tips a rigid frame at tan a = t / 2z', () => {
    // 25 / 28 = 89.29 percent
    const on = (sideSlope: '89 percent-grade' | '90 percent-grade' | '-90 percent-grade') =>
      hitchStability({ ...base, pull: '1 lbf', sideSlope }).verdict;
    expect(on('89 percent-grade')).toBe('undetermined');
    expect(on('90 percent-grade')).toBe('fail');
    expect(on('-90 percent-grade')).toBe('fail');
    const level = hitchStability({ ...base, pull: '1 lbf', sideSlope: '0 deg' });
    expect(level.sides!.high.value).toBeCloseTo(1650, 9);
    expect(level.verdict).toBe('pass');
  });

  it('is open where a fact is missing', () => {
    const { trackWidth: _, ...narrow } = tractor;
    const { centerOfGravityHeight: __, ...flat } = tractor;
    const missing = (more: object) => {
      const check = checkOf(hitchStability({ ...base, ...more } as never), 'side-tipping');
      return 'missing' in check ? check.missing.map(({ code }) => code) : check.verdict;
    };
    expect(missing({ tractor: narrow, sideSlope: '5 deg', pull: '1 lbf' })).toEqual(['TRACK_WIDTH_UNKNOWN']);
    expect(missing({ tractor: flat, sideSlope: '5 deg', pull: '1 lbf' })).toEqual(['CENTER_OF_GRAVITY_HEIGHT_UNKNOWN']);
    expect(missing({ hitch, sidePull: steep })).toEqual(['PULL_UNKNOWN']);
    // on level ground its height is only asked for the pin
    const pulled = { tractor: flat, hitch, sidePull: steep, pull: '1 lbf' };
    expect(missing(pulled)).toEqual(['CENTER_OF_GRAVITY_HEIGHT_UNKNOWN']);
    expect(missing({ ...pulled, frontPivotHeight: '14 in' })).toBe('pass');
    expect(missing({ ...pulled, tractor: { ...flat, drive: 'tracks' } })).toBe('pass');
    // it tips without a pull
    expect(missing({ sideSlope: '45 deg' })).toBe('fail');
  });
});

describe('what it says beside the answer', () => {
  it('units: as asked, else as the inputs, else a question', () => {
    expect(hitchStability({ ...base, units: 'si' }).frontReaction.unit).toBe('kN');
    const mixed = issueOf(() => hitchStability({ ...base, pull: '5 kN' }));
    expect(mixed).toMatchObject({ code: 'UNITS_REQUIRED' });
    expect(hitchStability({ ...base, pull: '5 kN', units: 'us' }).liftPull!.unit).toBe('lbf');
  });

  it('names what it takes for granted', () => {
    const codes = hitchStability({ ...base, pull: '1 lbf' }).assumptions.map(({ code }) => code);
    expect(codes).toEqual(['LEVEL_GROUND', 'CHAIN_ALONG_GROUND']);
    const told = { slope: '0 deg', chainAngle: { belowHorizontal: '0 deg' }, pull: '1 lbf' } as const;
    expect(hitchStability({ ...base, ...told }).assumptions).toEqual([]);
    const tracked = { ...tractor, drive: 'tracks' } as const;
    expect(hitchStability({ tractor: tracked, hitch: drawbar, ...told }).assumptions.map(({ code }) => code)).toEqual([
      'TRACK_ENDS_AS_AXLES',
    ]);
  });

  it('leaves the steps out on request', () => {
    expect(hitchStability({ ...base, working: false }).steps).toEqual([]);
    expect(hitchStability({ ...base, pull: '100 lbf' }).steps.map(({ symbol }) => symbol)).toEqual([
      'x',
      'n',
      'R_f',
      'R_r',
      'P_lift',
      'μ',
      'h_max',
    ]);
  });
});

describe('a load that leans on the hitch', () => {
  // W 3300 lb, x = 64 · 900 / 3300 = 17.45 in, P 875 lbf at 15 in, V 1750 lbf 30 in behind the axle:
  // R_f = 900 − 875 · 15 / 64 − 1750 · 30 / 64 = 900 − 205.08 − 820.31 = −125.4 lbf, and R_r = 3300 + 1750 + 125.4
  const log = {
    tractor: { mass: '3300 lb', frontAxleMass: '900 lb', wheelbase: '64 in', drive: 'rear-wheels' },
    hitch: { kind: 'drawbar', height: '15 in', behindAxle: '30 in' },
    pull: '875 lbf',
    weightOnHitch: '1750 lbf',
  } as const;

  it('takes weight off the front axle and lifts it', () => {
    const result = hitchStability(log);
    expect(result.frontReaction.value).toBeCloseTo(-125.4, 1);
    expect(result.rearReaction.value).toBeCloseTo(5175.4, 1);
    expect(result.stance).toBe('front-lifts');
    expect(result.verdict).toBe('fail');
  });

  it('leaves so much less pull until the front lifts: (900 · 64 − 1750 · 30) / 15 = 340 lbf', () => {
    expect(hitchStability({ ...log, pull: '100 lbf' }).liftPull!.value).toBeCloseTo(340, 6);
    expect(hitchStability({ ...log, pull: '340 lbf' }).frontReaction.value).toBeCloseTo(0, 6);
  });

  it('needs to know how far behind the axle', () => {
    const hitch = { kind: 'drawbar', height: '15 in' } as const;
    expect(issueOf(() => hitchStability({ ...log, hitch }))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'hitch.behindAxle',
    });
  });
});

describe('what it refuses', () => {
  const { centerOfGravityHeight: __, ...flat } = tractor;
  const sloping = { chainAngle: { belowTractorLine: '10 deg' } };
  it.each<[code: string, path: string, change: object]>([
    ['MISSING_FIELD', 'tractor', { tractor: undefined }],
    ['MISSING_FIELD', 'tractor.mass', { tractor: { ...tractor, mass: undefined } }],
    ['NOT_POSITIVE', 'tractor.mass', { tractor: { ...tractor, mass: '0 lb' } }],
    ['MISSING_FIELD', 'tractor.frontAxleMass', { tractor: unweighed }],
    ['CONFLICTING_FIELDS', 'tractor.frontAxleMass', { tractor: { ...tractor, centerOfGravityAhead: '20 in' } }],
    ['NEGATIVE', 'tractor.frontAxleMass', { tractor: { ...tractor, frontAxleMass: '-1 lb' } }],
    ['IMPOSSIBLE_GEOMETRY', 'tractor.frontAxleMass', { tractor: { ...tractor, frontAxleMass: '3300.1 lb' } }],
    ['NOT_POSITIVE', 'tractor.wheelbase', { tractor: { ...tractor, wheelbase: '0 in' } }],
    ['UNKNOWN_VALUE', 'tractor.drive', { tractor: { ...tractor, drive: 'wings' } }],
    ['MISSING_FIELD', 'tractor.centerOfGravityHeight', { tractor: flat, slope: '5 deg' }],
    ['IMPOSSIBLE_GEOMETRY', 'slope', { slope: '90 deg' }],
    ['WRONG_KIND', 'slope', { slope: '5 ft' }],
    ['IMPOSSIBLE_GEOMETRY', 'sideSlope', { slope: '50 deg', sideSlope: '50 deg' }],
    ['MISSING_FIELD', 'hitch', { hitch: undefined }],
    ['UNKNOWN_VALUE', 'hitch.kind', { hitch: { ...drawbar, kind: 'bumper' } }],
    ['NOT_POSITIVE', 'hitch.height', { hitch: { ...drawbar, height: '0 in' } }],
    ['CONFLICTING_FIELDS', 'hitch.aheadOfFrontAxle', { hitch: { ...drawbar, aheadOfFrontAxle: '1 ft' } }],
    ['CONFLICTING_FIELDS', 'hitch.behindAxle', { hitch: { ...drawbar, kind: 'front-hitch', behindAxle: '1 ft' } }],
    ['MISSING_FIELD', 'hitch.behindAxle', sloping],
    ['MISSING_FIELD', 'hitch.behindAxle', { sidePull: { fromStraight: '10 deg' } }],
    ['NOT_POSITIVE', 'frontPivotHeight', { frontPivotHeight: '0 in' }],
    ['MISSING_FIELD', 'hitch.aheadOfFrontAxle', { hitch: { ...drawbar, kind: 'front-hitch' }, ...sloping }],
    ['MISSING_FIELD', 'chainAngle.belowTractorLine', { chainAngle: {} }],
    ['CONFLICTING_FIELDS', 'chainAngle', { chainAngle: { belowTractorLine: '1 deg', belowHorizontal: '1 deg' } }],
    ['IMPOSSIBLE_GEOMETRY', 'chainAngle', { slope: '-30 deg', chainAngle: { belowHorizontal: '70 deg' } }],
    ['NOT_POSITIVE', 'pull', { pull: '0 lbf' }],
    ['WRONG_KIND', 'pull', { pull: '100 lb' }],
    ['NOT_POSITIVE', 'steeringReserve', { steeringReserve: 0 }],
    ['TOO_LARGE', 'steeringReserve', { steeringReserve: 20 }],
    ['NOT_FINITE', 'friction', { friction: Number.NaN }],
    ['NOT_POSITIVE', 'rearAxleHeight', { rearAxleHeight: '0 in' }],
    ['MISSING_FIELD', 'sidePull', { sidePull: '5 deg' }],
    ['IMPOSSIBLE_GEOMETRY', 'sidePull.fromStraight', { sidePull: { fromStraight: '90 deg' } }],
  ])('%s at %s', (code, path, change) => {
    expect(issueOf(() => hitchStability({ ...base, ...change } as never))).toMatchObject({ code, path });
  });

  it('nothing at all', () => {
    expect(issueOf(() => hitchStability(undefined as never)).code).toBe('MISSING_FIELD');
  });
});
