import { chainSag } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const chain = { span: '20 m', massPerLength: '2 kg/m' } as const;
const W = 2 * 9.80665;

/** The curve from its middle, step by step, as dy/dx = s · w / H, ds = √(1 + y'²) dx: no hyperbolic function. */
function hang(half: number, perTension: number, steps = 200_000) {
  const dx = half / steps;
  let [y, s] = [0, 0];
  for (let step = 0; step < steps; step++) {
    // midpoint rule
    const slope = perTension * s;
    const middle = perTension * (s + (Math.hypot(1, slope) * dx) / 2);
    y += middle * dx;
    s += Math.hypot(1, middle) * dx;
  }
  return { sag: y, length: 2 * s, endOverH: Math.hypot(1, perTension * s) };
}

describe('chainSag', () => {
  it.each([0.05, 0.3, 1, 5])('hangs as the curve integrated step by step, H %d kN', (kN) => {
    const answer = chainSag({ ...chain, horizontalTension: { value: kN, unit: 'kN' } });
    const curve = hang(10, W / (kN * 1000));
    expect(answer.sag.value / 1000 / curve.sag).toBeCloseTo(1, 6);
    expect(answer.length.value / curve.length).toBeCloseTo(1, 6);
    expect(answer.endTension.value / (kN * curve.endOverH)).toBeCloseTo(1, 6);
    expect(answer.slack.value).toBeCloseTo((answer.length.value - 20) * 1000, 6);
  });

  it('a sag tells the tension that gives this sag', () => {
    for (const kN of [0.03, 0.3, 3, 300]) {
      const { sag, slack } = chainSag({ ...chain, horizontalTension: { value: kN, unit: 'kN' } });
      const back = chainSag({ ...chain, sag });
      expect(back.horizontalTension.value / kN).toBeCloseTo(1, 9);
      expect(back.slack.value / slack.value).toBeCloseTo(1, 6);
    }
  });

  it('a parabola comes within 1.3 percent of it at a sag of a tenth of the span', () => {
    // H of the parabola is w · L² / (8 · s), 1.3 percent low at s / L = 0.1
    const { horizontalTension } = chainSag({ ...chain, sag: '2 m' });
    expect((W * 400) / (8 * 2) / (horizontalTension.value * 1000)).toBeCloseTo(0.987, 3);
  });

  it('the slack of a nearly straight chain is that of the parabola, 8 · s² / (3 · L)', () => {
    // 300 kN: s = 19.6133 · 400 / (8 · 300,000) = 3.26888 mm; 8 · 3.26888² / 60,000 = 0.00142475 mm
    const { sag, slack } = chainSag({ ...chain, horizontalTension: '300 kN' });
    expect(sag.value).toBeCloseTo(3.26888, 5);
    expect(slack.value).toBeCloseTo(0.00142475, 7);
    // on either side of where the series takes over, S / 2C = 0.001: H = 196.133 kN
    const near = (kN: number) => chainSag({ ...chain, horizontalTension: { value: kN, unit: 'kN' } }).slack.value;
    expect(near(196.1) / near(196.2)).toBeCloseTo((196.2 / 196.1) ** 2, 6);
  });

  it('refuses half a question, and two', () => {
    const refused = (change: object) => issueOf(() => chainSag({ ...chain, ...change } as never));
    expect(refused({})).toMatchObject({ code: 'MISSING_FIELD', path: 'horizontalTension' });
    expect(refused({ sag: '1 m', horizontalTension: '1 kN' })).toMatchObject({ code: 'CONFLICTING_FIELDS' });
    expect(refused({ sag: '0 m' })).toMatchObject({ code: 'NOT_POSITIVE', path: 'sag' });
    expect(refused({ sag: '1 ft' }).code).toBe('UNITS_REQUIRED');
    expect(refused({ span: '0 m', sag: '1 m' })).toMatchObject({ code: 'NOT_POSITIVE', path: 'span' });
    expect(refused({ massPerLength: '2 kg', sag: '1 m' })).toMatchObject({ code: 'WRONG_KIND', path: 'massPerLength' });
    // tension so small that no chain could hang so
    expect(refused({ horizontalTension: { value: 1e-9, unit: 'kN' } }).code).toBe('NOT_FINITE');
  });
});
