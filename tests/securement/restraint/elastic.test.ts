import { describe, expect, it } from 'vitest';
import type { TieDown } from '../../../src/securement/plan.js';
import { type SolveRestraintInput, solveRestraint } from '../../../src/securement/restraint/solve-restraint.js';
import { block, chain, m, W } from './block.js';

// How springs share: k = EA / L, and for a shift along their common line T_i / sum(T) = k_i / sum(k). Worked out beside
// each case; contacts are frictionless so that nothing else holds.

/** Level and straight back at the height of the center of gravity, so long, so far aside. */
const back = (id: string, length: number, y: number, more: object = {}): TieDown =>
  chain(id, m(-6 - length, y, 0.5), m(-6, y, 0.5), more);

const solve = (tieDowns: readonly TieDown[], more: Partial<SolveRestraintInput> = {}) =>
  solveRestraint({
    articles: [block],
    tieDowns,
    accelerations: { forward: '1 g' },
    capacity: 'lashingCapacity',
    friction: 'none',
    ...more,
  });

const tensionsOf = (result: ReturnType<typeof solve>) =>
  result.directions[0]?.elastic?.tensions.map(({ tension }) => tension.value);

describe('the elastic answer', () => {
  it('lets the short chain load first', () => {
    // in one line, one above the other about the center: 1 m and 4 m share as 4 to 1 of W: 7845.3 N and 1961.3 N
    const short = { ...back('short', 1, 0) };
    const long = { ...back('long', 4, 0) };
    const result = solve([short, long]);
    const [first, second] = tensionsOf(result)!;
    expect(first! / W).toBeCloseTo(0.8, 5);
    expect(second! / W).toBeCloseTo(0.2, 5);
    // the short one is at 10 kN when 0.8 f W is: f = 10,000 / (0.8 · 9806.65) = 1.27465
    const { elastic, limit } = result.directions[0]!;
    expect(elastic?.firstAtCapacity?.id).toBe('short');
    expect(elastic?.firstAtCapacity?.factor).toBeCloseTo(10_000 / (0.8 * W), 4);
    // the limit answer shares as is best: 20,000 N
    expect(limit.factor).toBeCloseTo(20_000 / W, 9);
    expect(elastic?.residual).toBeLessThan(1e-9);
  });

  it('fails where the stiff one is at its capacity though both together would do', () => {
    const result = solve([back('short', 1, 0), back('long', 4, 0)], { accelerations: { forward: '1.5 g' } });
    expect(result.directions[0]).toMatchObject({
      verdict: 'fail',
      limit: { verdict: 'pass' },
      elastic: { verdict: 'fail' },
    });
  });

  it('lets a slack chain do nothing and a tight pair keep its pretension', () => {
    const ahead: TieDown = {
      ...back('ahead', 2, 0),
      anchor: m(-2, 0, 0.5),
      attachment: m(-4, 0, 0.5),
      pretension: '1 kN',
    };
    const behind = back('behind', 2, 0, { pretension: '1 kN' });
    // k alike: the pair gives way together until the front one is slack at a force of 2 · 1 kN; beyond, the rear one alone
    const gentle = solve([ahead, behind], { accelerations: { forward: '0.1 g' } });
    const [front, rear] = tensionsOf(gentle)!;
    expect(front).toBeCloseTo(1000 - 0.05 * W, 2);
    expect(rear).toBeCloseTo(1000 + 0.05 * W, 2);
    const hard = solve([ahead, behind], { accelerations: { forward: '0.5 g' } });
    expect(tensionsOf(hard)![0]).toBeCloseTo(0, 6);
    expect(tensionsOf(hard)![1]).toBeCloseTo(0.5 * W, 2);
  });

  it('says when friction is overcome: at μ W', () => {
    // everything at the height of the deck, so that no contact is relieved before the others
    const flat = { ...block, centerOfGravity: m(-5, 0, 0) };
    const chain: TieDown = { ...back('chain', 2, 0), anchor: m(-8, 0, 0), attachment: m(-6, 0, 0) };
    const [forward] = solve([chain], { articles: [flat], friction: 'full' }).directions;
    expect(forward?.elastic?.firstSlip).toBeCloseTo(0.4, 6);
    // afterward the chain takes what friction does not: W − 0.4 W
    expect(forward?.elastic?.tensions[0]?.tension.value).toBeCloseTo(0.6 * W, 1);
  });

  it('says when the load lifts: at b / d', () => {
    // center 2 m up, 1 m behind the edge; held at the deck against sliding it lifts at 1 / 2, and a chain straight down
    // from its rear holds it there
    const tall = { ...block, centerOfGravity: m(-5, 0, 2) };
    const low: TieDown = { ...back('low', 2, 0), anchor: m(-8, 0, 0), attachment: m(-6, 0, 0) };
    const down: TieDown = { ...back('down', 1, 0), anchor: m(-6, 0, 0), attachment: m(-6, 0, 1) };
    const [held] = solve([low, down], { articles: [tall] }).directions;
    expect(held?.elastic?.firstLift).toBeCloseTo(0.5, 5);
    expect(held?.elastic?.givesWay).toBeNull();
    // moments about the edge: T · 2 m = W · (2 m − 1 m)
    expect(held?.elastic?.tensions.find(({ id }) => id === 'down')?.tension.value).toBeCloseTo(W / 2, 1);
    expect(solve([low], { articles: [tall] }).directions[0]?.elastic?.givesWay).toBeCloseTo(0.5, 5);
  });

  it('gives way where nothing resists', () => {
    const [rearward] = solve([back('chain', 2, 0)], { accelerations: { rearward: '0.5 g' } }).directions;
    expect(rearward?.elastic).toMatchObject({ outcome: 'gives-way', verdict: 'fail' });
    expect(rearward?.elastic?.givesWay).toBeCloseTo(0, 9);
  });

  it('counts the press of what runs over', () => {
    const over: TieDown = {
      id: 'strap',
      holds: 'block',
      path: 'over-other-side',
      anchor: m(-5, 1.75, 0),
      attachment: m(-5, 1, 1),
      otherAttachment: m(-5, -1, 1),
      otherAnchor: m(-5, -1.75, 0),
      capacities: { lashingCapacity: '10 kN' },
      pretension: '2 kN',
    };
    // sin α = 0.8 on both sides: friction is overcome at 0.4 (W + 3200) / W, and nothing else holds
    const flat = { ...block, centerOfGravity: m(-5, 0, 0) };
    const [forward] = solve([over], {
      articles: [flat],
      friction: 'full',
      accelerations: { forward: '0.5 g' },
    }).directions;
    expect(forward?.elastic?.givesWay).toBeCloseTo((0.4 * (W + 3200)) / W / 0.5, 6);
    expect(forward?.elastic?.residual).toBeLessThan(1e-9);
  });

  it('lets a load on tires take pretension away as it settles', () => {
    // one chain straight down at the center, k = 5000 kN / 1 m, pretension P; four tires of 1 kN/mm each. As the load
    // settles by δ on 4 kN/mm the chain loses 5 kN/mm · δ: 4 δ = W + P − 5 δ in kN and mm, δ = (9.80665 + P) / 9
    const soft = block.contacts.map((contact) => ({ ...contact, gives: { by: '1 mm', under: '1 kN' } }) as const);
    const flat = { ...block, contacts: soft, centerOfGravity: m(-5, 0, 0) };
    const down: TieDown = {
      ...back('down', 1, 0, { pretension: '8 kN' }),
      anchor: m(-5, 0, 0),
      attachment: m(-5, 0, 1),
    };
    const pull: TieDown = { ...back('pull', 2, 0), anchor: m(-8, 0, 0), attachment: m(-6, 0, 0) };
    const [forward] = solve([down, pull], { articles: [flat], accelerations: { forward: '0.001 g' } }).directions;
    // P = 8 kN: δ = 1.97852 mm, and 8 − 5 · 1.97852 is below zero: the chain is slack
    expect(forward?.elastic?.tensions.find(({ id }) => id === 'down')?.tension.value).toBeCloseTo(0, 6);
    const tight: TieDown = {
      ...back('down', 1, 0, { pretension: '13 kN' }),
      anchor: m(-5, 0, 0),
      attachment: m(-5, 0, 1),
    };
    // P = 13 kN: δ = 22.80665 / 9 = 2.534072 mm, 13 − 5 · 2.534072 = 0.329639 kN
    const [held] = solve([tight, pull], { articles: [flat], accelerations: { forward: '0.001 g' } }).directions;
    expect(held?.elastic?.tensions.find(({ id }) => id === 'down')?.tension.value).toBeCloseTo(329.639, 1);
  });

  it('is not given without the stiffness of every tie-down, and the verdict is open', () => {
    const { axialStiffness: _, ...soft } = back('soft', 2, 0) as TieDown & { axialStiffness: unknown };
    const result = solve([soft as TieDown]);
    expect(result).toMatchObject({ verdict: 'undetermined', missing: [{ code: 'NO_STIFFNESS' }] });
    expect(result.directions[0]).toMatchObject({ elastic: null, limit: { verdict: 'pass' } });
  });

  it('does not see a damaged tie-down', () => {
    const damaged: TieDown = {
      ...back('damaged', 1, 0),
      capacities: undefined,
      parts: [
        { id: 'chain', kind: 'chain', size: '8 mm', grade: '8', condition: 'damaged' },
        { id: 'ring', kind: 'anchor', at: 'vehicle', capacities: { lashingCapacity: '20 kN' } },
        { id: 'lug', kind: 'anchor', at: 'cargo', capacities: { lashingCapacity: '20 kN' } },
      ],
    } as unknown as TieDown;
    expect(tensionsOf(solve([damaged, back('sound', 4, 0)]))).toEqual([expect.closeTo(W, 2)]);
  });
});
