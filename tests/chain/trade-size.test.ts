import { describe, expect, it } from 'vitest';
import { INCH_SIZES, isTradeSize, parseTradeSize } from '../../src/chain/trade-size.js';
import { issueOf } from '../quantities/issue-of.js';

const codeOf = (run: () => unknown) => issueOf(run).code;

describe('parseTradeSize', () => {
  it.each([
    ['5/16', '5/16'],
    ['5/16 in', '5/16'],
    ['5/16in', '5/16'],
    ['5/16 inch', '5/16'],
    ['5/16"', '5/16'],
    [' 3/8 ', '3/8'],
    ['1', '1'],
    ['1 1/4', '1-1/4'],
    ['1-1/4', '1-1/4'],
    ['8 mm', '8 mm'],
    ['8mm', '8 mm'],
    ['10.0 mm', '10 mm'],
    ['5.5 mm', '5.5 mm'],
  ])('reads %j as %s', (text, size) => {
    expect(parseTradeSize(text)).toBe(size);
  });

  it.each(['0.3125', '5/15', '10/32', '1/3', '', 'large', '0 mm', '8', '-8 mm', '8 cm', 'constructor', '9'.repeat(30)])(
    'refuses %j: nothing is rounded to a neighbor',
    (text) => {
      expect(codeOf(() => parseTradeSize(text))).toBe('UNKNOWN_SIZE');
    },
  );

  it('refuses what is no text, and names the field', () => {
    expect(codeOf(() => parseTradeSize(5 as never))).toBe('UNKNOWN_SIZE');
    expect(() => parseTradeSize('x', 'parts[1].size')).toThrow('parts[1].size');
  });

  it('reads every size it lists back as itself', () => {
    for (const size of INCH_SIZES) {
      expect(parseTradeSize(size)).toBe(size);
      expect(isTradeSize(size)).toBe(true);
    }
  });
});

describe('isTradeSize', () => {
  it('knows inch sizes as listed and millimeters, and nothing else', () => {
    expect(['3/8', '8 mm', '5.5 mm'].every(isTradeSize)).toBe(true);
    expect(['3/8 in', '8mm', '0.375', '', 'toString', 8, null, undefined].some(isTradeSize)).toBe(false);
  });
});
