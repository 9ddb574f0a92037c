import {
  checkSecurement,
  imoCssMslFractions_2014 as css,
  imoCtuMslFractions_2014 as ctu,
  imoCtu_2014,
  maximumSecuringLoad,
} from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';
import { block, flat, ratioIn } from '../securement/rules/layouts.js';

const loosely = maximumSecuringLoad as unknown as (input: unknown) => ReturnType<typeof maximumSecuringLoad>;

describe('maximumSecuringLoad', () => {
  // the shares of the two codes, of a breaking strength of 100 kN
  it.each([
    [ctu, 'chain', undefined, 50],
    [ctu, 'webbing', 'reusable', 50],
    [ctu, 'webbing', 'single-use', 75],
    [ctu, 'wire-rope', 'single-use', 80],
    [ctu, 'wire-rope', 'reusable', 30],
    [ctu, 'strapping', 'single-use', 70],
    [css, 'chain', undefined, 50],
    [css, 'mild-steel-fitting', undefined, 50],
    [css, 'fiber-rope', undefined, 33],
    [css, 'webbing', 'single-use', 50],
    [css, 'webbing', undefined, 50],
    [css, 'wire-rope', 'single-use', 80],
    [css, 'wire-rope', 'reusable', 30],
    [css, 'strapping', 'single-use', 70],
  ] as const)('%o %s %s', (ratings, device, use, kilonewtons) => {
    const result = loosely({ ratings, device, use, breakingForce: '100 kN' });
    expect(result.maximumSecuringLoad).toEqual({ value: kilonewtons, unit: 'kN' });
    expect(result.fraction).toBe(kilonewtons / 100);
    expect(result.ratings).toBe(ratings.id);
    expect(result.sources[0]?.provenance).toBe(ratings === ctu ? 'memory' : 'read');
  });

  it('answers in the system of the breaking force unless asked otherwise', () => {
    const pounds = maximumSecuringLoad({ ratings: ctu, device: 'chain', breakingForce: '20000 lbf' });
    expect(pounds.maximumSecuringLoad).toEqual({ value: 10_000, unit: 'lbf' });
    // 10 000 lbf · 4.4482216152605 N
    const si = maximumSecuringLoad({ ratings: ctu, device: 'chain', breakingForce: '20000 lbf', units: 'si' });
    expect(si.maximumSecuringLoad.value).toBeCloseTo(44.482216, 6);
  });

  it('goes into a plan, which by itself converts nothing', () => {
    const load = maximumSecuringLoad({ ratings: ctu, device: 'chain', breakingForce: '40 kN' }).maximumSecuringLoad;
    const result = checkSecurement({ rules: imoCtu_2014, articles: [block()], tieDowns: [flat('rearward', load)] });
    expect(ratioIn(result, 'sliding-forward/block').capacity).toBeCloseTo(22.943, 9); // 20 + 0.3 · 9.81
  });

  it('refuses what the table does not list', () => {
    const of = (more: object) =>
      issueOf(() => loosely({ ratings: ctu, device: 'chain', breakingForce: '40 kN', ...more }));
    expect(of({ device: 'fiber-rope' })).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'device' });
    expect(of({ device: 'constructor' })).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'device' });
    expect(of({ device: 'webbing' })).toMatchObject({ code: 'MISSING_FIELD', path: 'use' });
    expect(of({ device: 'strapping', use: 'reusable' })).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'use' });
    expect(of({ use: 'any' })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'use' });
    expect(of({ breakingForce: '0 kN' })).toMatchObject({ code: 'NOT_POSITIVE', path: 'breakingForce' });
    expect(of({ breakingForce: '40 t' })).toMatchObject({ code: 'WRONG_KIND', path: 'breakingForce' });
    expect(of({ ratings: {} })).toMatchObject({ code: 'MISSING_FIELD', path: 'ratings' });
  });
});
