import { describe, expect, it } from 'vitest';
import { chainMass, evaluateMany } from '../src/index.js';
import { issueOf } from './quantities/issue-of.js';

const rows = [{ length: '20 ft' }, { length: '20' }, { length: '2 m' }];
const massOf = ({ length }: { length: string }) => chainMass({ size: '3/8', grade: 70, length: length as '1 ft' }).mass;

async function* slowly<Row>(items: readonly Row[]) {
  for (const item of items) {
    await Promise.resolve();
    yield item;
  }
}

describe('evaluateMany', () => {
  it('gives an outcome for each row, in order, and goes on after a bad one', () => {
    const outcomes = [...evaluateMany(rows, massOf)];
    expect(outcomes.map(({ index, ok }) => [index, ok])).toEqual([
      [0, true],
      [1, false],
      [2, true],
    ]);
    expect(outcomes[1]).toMatchObject({ error: { code: 'TEXT_NOT_A_QUANTITY', path: 'length' } });
    expect(outcomes[0]).toMatchObject({ result: massOf({ length: '20 ft' }) });
  });

  it('does the same with rows that come one after another', async () => {
    const outcomes = [];
    for await (const outcome of evaluateMany(slowly(rows), massOf)) outcomes.push(outcome);
    expect(JSON.stringify(outcomes)).toBe(JSON.stringify([...evaluateMany(rows, massOf)]));
  });

  it('waits for a calculation that is async itself, and reports it where it fails', async () => {
    const slow = async (row: { length: string }) => massOf(row);
    const outcomes = [];
    for await (const outcome of evaluateMany(slowly(rows), slow)) outcomes.push(outcome);
    expect(JSON.stringify(outcomes)).toBe(JSON.stringify([...evaluateMany(rows, massOf)]));
  });

  it('takes a row only when its outcome is asked for', () => {
    let taken = 0;
    function* endless() {
      for (;;) yield { length: `${++taken} ft` };
    }
    const outcomes = evaluateMany(endless(), massOf);
    expect(taken).toBe(0);
    outcomes.next();
    outcomes.next();
    expect(taken).toBe(2);
    outcomes.return();
  });

  it('closes the rows when nobody asks any more', () => {
    let closed = false;
    function* source() {
      try {
        for (;;) yield { length: '1 ft' };
      } finally {
        closed = true;
      }
    }
    for (const { index } of evaluateMany(source(), massOf)) if (index === 2) break;
    expect(closed).toBe(true);
  });

  it('tells the calculation which row it is', () => {
    expect([...evaluateMany(['a', 'b'], (row, index) => `${index}${row}`)]).toEqual([
      { index: 0, ok: true, result: '0a' },
      { index: 1, ok: true, result: '1b' },
    ]);
  });

  it('passes an error on that is no fault of a row', () => {
    const fault = () => {
      throw new TypeError('a fault of the program');
    };
    expect(() => [...evaluateMany([1], fault)]).toThrow(TypeError);
  });

  it('refuses what it cannot go through', () => {
    for (const given of [undefined, null, 7, 'text', {}]) {
      expect(issueOf(() => evaluateMany(given as never, massOf))).toMatchObject({ code: 'NOT_ITERABLE', path: 'rows' });
    }
    expect(issueOf(() => evaluateMany([], undefined as never))).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'evaluate',
    });
    expect([...evaluateMany([], massOf)]).toEqual([]);
  });
});
