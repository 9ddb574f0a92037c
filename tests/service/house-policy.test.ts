import { housePolicy, inspectChain } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const judge = (
  policy: Parameters<typeof housePolicy>[0],
  measurements: object,
  chain: object = { size: '10 mm', pitch: '30 mm' },
) => inspectChain({ criteria: housePolicy(policy), chain, measurements: { found: [], ...measurements } });

describe('an owner', () => {
  const section = (length: string) => ({ section: { links: 10, length } });
  test.each([
    [0.03, true, '309 mm', 'fit'],
    [0.03, true, '309.001 mm', 'remove'],
    [0.03, false, '309 mm', 'remove'],
    [0.03, false, '308.999 mm', 'fit'],
    [0.07, true, '321 mm', 'fit'], // 0.07 · 100 is 7.000000000000001 in doubles
    [0.07, true, '321.001 mm', 'remove'],
    [0.07, false, '321 mm', 'remove'],
    [0.029, true, '308.7 mm', 'fit'],
    [0.029, false, '308.7 mm', 'remove'],
  ])('of %d, over %s, at %s: %s', (limit, over, length, verdict) => {
    expect(judge({ elongation: { limit, over } }, section(length)).verdict).toBe(verdict);
  });

  it('has limits of wear, of one link, of the hook and of a count', () => {
    expect(judge({ wear: { limit: 0.08, over: true } }, { diameters: [{ readings: ['9.2 mm'] }] }).verdict).toBe('fit');
    expect(judge({ wear: { limit: 0.08, over: true } }, { diameters: [{ readings: ['9.1 mm'] }] }).verdict).toBe(
      'remove',
    );
    expect(judge({ linkElongation: { limit: 0.02, over: true } }, { link: { inside: '30.7 mm' } }).verdict).toBe(
      'remove',
    );
    const hook = { hook: { throat: '1.03 in', found: [] } };
    expect(judge({ throatOpening: { limit: 0.03, over: false } }, hook, { hook: { throat: '1 in' } }).verdict).toBe(
      'remove',
    );
    expect(judge({ tensionings: 200 }, { tensionings: 199 }).verdict).toBe('fit');
    expect(judge({ tensionings: 200 }, { tensionings: 200 }).verdict).toBe('remove');
    expect(judge({ tensionings: 200 }, {}).missing.map(({ code }) => code)).toEqual(['TENSIONINGS_NOT_STATED']);
  });

  it('is told from a rule', () => {
    const result = judge({ id: 'our-shop', elongation: { limit: 0.03, over: true } }, section('300 mm'));
    expect(result).toMatchObject({ criteria: 'our-shop', standing: 'policy' });
    expect(result.cautions.map(({ code }) => code)).toContain('OWNERS_POLICY');
    expect(result.sources).toContainEqual(
      expect.objectContaining({ document: "Owner's policy", note: 'as the caller states it' }),
    );
    expect(result.checks[0]).toMatchObject({ clause: "Owner's policy" });
  });

  test.each([
    [{}, 'MISSING_FIELD', ''],
    [undefined, 'MISSING_FIELD', ''],
    [{ id: '' }, 'MISSING_FIELD', 'id'],
    [{ elongation: 0.03 }, 'MISSING_FIELD', 'elongation'],
    [{ elongation: { limit: 0.03 } }, 'MISSING_FIELD', 'elongation.over'],
    [{ elongation: { limit: 0.03, over: 'yes' } }, 'UNKNOWN_VALUE', 'elongation.over'],
    [{ wear: { limit: 0, over: true } }, 'NOT_POSITIVE', 'wear.limit'],
    [{ wear: { limit: 1, over: true } }, 'TOO_LARGE', 'wear.limit'],
    [{ wear: { limit: 3, over: true } }, 'TOO_LARGE', 'wear.limit'],
    [{ wear: { limit: '3 %', over: true } }, 'NOT_FINITE', 'wear.limit'],
    [{ wear: { limit: Number.NaN, over: true } }, 'NOT_FINITE', 'wear.limit'],
    [{ tensionings: 0 }, 'NOT_A_WHOLE_NUMBER', 'tensionings'],
    [{ tensionings: 1.5 }, 'NOT_A_WHOLE_NUMBER', 'tensionings'],
  ])('cannot state %j: %s', (policy, code, path) => {
    expect(issueOf(() => housePolicy(policy as never))).toMatchObject({ code, path });
  });
});
