import { checkCarry, teamLimit } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';
import { easyLift } from './lifts.js';

describe('teamLimit', () => {
  it('is two thirds of the sum for two and half of it for three', () => {
    // 2/3 · 60 = 40; 1/2 · 90 = 45
    const two = teamLimit({ alone: ['30 kg', '30 kg'] });
    expect(two.limit).toEqual({ value: 40, unit: 'kg' });
    expect(two.sumAlone).toEqual({ value: 60, unit: 'kg' });
    expect(teamLimit({ alone: ['30 kg', '30 kg', '30 kg'] }).limit).toEqual({ value: 45, unit: 'kg' });
  });

  it('is of the sum, not of one: more than either alone, less than both', () => {
    const { limit } = teamLimit({ alone: ['20 lb', '40 lb'] });
    expect(limit.value).toBeCloseTo(40, 12);
    expect(limit.unit).toBe('lb');
  });

  it('takes the limits of checkCarry', () => {
    const { recommendedWeightLimit: one } = checkCarry(easyLift('us'));
    expect(teamLimit({ alone: [one, one] }).limit.value).toBeCloseTo(68, 10); // 2/3 · 102
  });

  it('says where it comes from', () => {
    const { sources, cautions, steps } = teamLimit({ alone: ['30 kg', '30 kg'] });
    expect(sources).toMatchObject([{ provenance: 'read', clause: 'team handling' }]);
    expect(cautions.map(({ code }) => code)).toEqual(['TEAM_OF_EQUAL_GRIP']);
    expect(steps[0]?.expression).toBe('2/3 · sum');
  });

  it.each([
    [undefined, 'EMPTY_LIST', 'alone'],
    [[], 'EMPTY_LIST', 'alone'],
    [['30 kg'], 'EMPTY_LIST', 'alone'],
    [['30 kg', '30 kg', '30 kg', '30 kg'], 'NO_VALUE_IN_TABLE', 'alone'],
    [['30 kg', '0 kg'], 'NOT_POSITIVE', 'alone[1]'],
    [['30 kg', undefined], 'MISSING_FIELD', 'alone[1]'],
    [['30 kg', '30 N'], 'WRONG_KIND', 'alone[1]'],
    [['30 kg', '30 lb'], 'UNITS_REQUIRED', 'units'],
  ])('refuses %j', (alone, code, path) => {
    expect(issueOf(() => teamLimit({ alone: alone as never }))).toMatchObject({ code, path });
  });
});
