import { describe, expect, it } from 'vitest';
import type { TradeSize } from '../../src/chain/trade-size.js';
import { inWords } from '../../src/explain/in-words.js';
import { fits } from '../../src/hardware/fits.js';
import { usWeldedChainLinks } from '../../src/tables/generated/us-welded-chain-links.js';
import { issueOf } from '../quantities/issue-of.js';

// Expected values are facts of the trade (common practice), from memory: no document prints them.
const grab = (hook: TradeSize, chain: TradeSize) =>
  fits({ hook: { kind: 'grab-hook', size: hook }, chain: { size: chain } });
const codes = (fit: { cautions: readonly { code: string }[] }) => fit.cautions.map(({ code }) => code);

describe('a grab hook on chain', () => {
  it.each([
    // two sizes smaller, one smaller, own, one larger, two larger
    ['3/8', '1/4', 'fail'],
    ['3/8', '5/16', 'pass'],
    ['3/8', '3/8', 'pass'],
    ['3/8', '7/16', 'pass'],
    ['3/8', '1/2', 'fail'],
    ['5/16', '3/8', 'pass'],
    ['1/4', '5/16', 'pass'],
    ['1/4', '3/8', 'fail'],
    // sizes that share their wire are one step
    ['1/4', '9/32', 'pass'],
    ['9/32', '1/4', 'pass'],
    ['5/16', '9/32', 'pass'],
    ['3/16', '7/32', 'pass'],
    ['5/16', '7/32', 'fail'],
    ['1-1/4', '1/8', 'fail'],
    ['10 mm', '3/8', 'pass'],
    ['13 mm', '10 mm', 'fail'],
  ] as const)('of %s with %s: %s', (hook, chain, verdict) => {
    const fit = grab(hook, chain);
    expect(fit.verdict).toBe(verdict);
    expect(fit.basis).toBe('common practice');
  });

  it('says that sources disagree about the chain one size larger', () => {
    const fit = grab('5/16', '3/8');
    expect(fit.because.code).toBe('ONE_SIZE_LARGER');
    expect(codes(fit)).toEqual(['SOURCES_DISAGREE', 'FOLLOW_THE_MARK']);
    expect(inWords(fit.cautions)[0]?.text).toMatch(/seat fully.*2\.4 times.*marking/);
  });

  it('says that a smaller chain sits deep, is not what the hook is rated for, and gains nothing', () => {
    const fit = grab('3/8', '5/16');
    expect(fit.because.code).toBe('ONE_SIZE_SMALLER');
    expect(codes(fit)).toEqual(['NOT_RATED_FOR_IT', 'HOOK_ADDS_NO_STRENGTH', 'FOLLOW_THE_MARK']);
    expect(codes(grab('3/8', '3/8'))).toEqual(['FOLLOW_THE_MARK']);
  });

  it('is not for hooking onto an object', () => {
    const fit = fits({ hook: { kind: 'grab-hook', size: '3/8' }, onto: 'object' });
    expect(fit.verdict).toBe('fail');
    expect(fit.because.code).toBe('GRAB_HOOK_ON_OBJECT');
  });

  it('mentions unlike grades of hook and chain', () => {
    const fit = fits({ hook: { kind: 'grab-hook', size: '3/8', grade: 43 }, chain: { size: '3/8', grade: 70 } });
    expect(codes(fit)).toContain('GRADES_DIFFER');
  });

  it('orders sizes as the wire of common chain does', () => {
    const thinnest = (size: string) =>
      Math.min(...Object.values(usWeldedChainLinks.rows[size as '3/8']).map(({ wire_mm }) => wire_mm));
    const inOrder = Object.keys(usWeldedChainLinks.rows).sort((a, b) => thinnest(a) - thinnest(b)) as TradeSize[];
    for (let i = 1; i < inOrder.length; i++) {
      const [smaller, larger] = [inOrder[i - 1] as TradeSize, inOrder[i] as TradeSize];
      const sameWire = thinnest(smaller) === thinnest(larger);
      expect(grab(smaller, larger).because.code, `${larger} on ${smaller}`).toBe(
        sameWire ? 'OWN_SIZE' : 'ONE_SIZE_LARGER',
      );
    }
  });
});

describe('a slip hook', () => {
  const hook = { kind: 'slip-hook', size: '3/8', latch: true } as const;

  it.each([
    ['5/16', 'pass'],
    ['3/8', 'pass'],
    ['7/16', 'undetermined'],
  ] as const)('of 3/8 lets %s chain run through: %s', (size, verdict) => {
    const fit = fits({ hook, chain: { size } });
    expect(fit.verdict).toBe(verdict);
    expect(fit.missing !== undefined).toBe(verdict === 'undetermined');
  });

  it.each([
    ['25.3 mm', 'pass'],
    ['1 in', 'pass'],
    ['25.5 mm', 'fail'],
  ] as const)('with an opening of 25.4 mm on an object of %s: %s', (objectThickness, verdict) => {
    expect(fits({ hook: { ...hook, opening: '25.4 mm' }, onto: 'object', objectThickness }).verdict).toBe(verdict);
  });

  it('leaves an object undecided while opening or thickness is not known', () => {
    for (const fit of [
      fits({ hook, onto: 'object' }),
      fits({ hook: { ...hook, opening: '1 in' }, onto: 'object' }),
      fits({ hook, onto: 'object', objectThickness: '1 in' }),
    ]) {
      expect(fit.verdict).toBe('undetermined');
      expect(fit.missing?.map(({ code }) => code)).toEqual(['HOOK_OPENING']);
    }
  });

  it('can fall off slack chain without a latch', () => {
    expect(codes(fits({ hook, onto: 'object' }))).not.toContain('NO_LATCH');
    expect(codes(fits({ hook: { ...hook, latch: false }, onto: 'object' }))).toContain('NO_LATCH');
    expect(codes(fits({ hook: { kind: 'slip-hook', size: '3/8' }, chain: { size: '3/8' } }))).toContain('NO_LATCH');
  });
});

describe('misuse', () => {
  const hook = { kind: 'grab-hook', size: '3/8' } as const;
  it.each([
    [{ hook }, 'MISSING_FIELD'],
    [{ hook, chain: { size: '3/8' }, onto: 'object' }, 'CONFLICTING_FIELDS'],
    [{ chain: { size: '3/8' } }, 'MISSING_FIELD'],
    [{ hook, chain: null }, 'MISSING_FIELD'],
    [{ hook, onto: 'chain' }, 'UNKNOWN_VALUE'],
    [{ hook: { ...hook, kind: 'claw' }, onto: 'object' }, 'UNKNOWN_VALUE'],
    [{ hook: { ...hook, size: '0.375' }, onto: 'object' }, 'UNKNOWN_SIZE'],
    [{ hook, chain: { size: '6 mm' } }, 'UNKNOWN_SIZE'],
    [{ hook: { ...hook, grade: 60 }, onto: 'object' }, 'UNKNOWN_GRADE'],
    [{ hook, chain: { size: '3/8', grade: 60 } }, 'UNKNOWN_GRADE'],
    [{ hook: { ...hook, kind: 'slip-hook', opening: '0 in' }, onto: 'object' }, 'NOT_POSITIVE'],
  ])('%#: gives %s', (input, code) => {
    expect(issueOf(() => fits(input as never)).code).toBe(code);
  });
});
