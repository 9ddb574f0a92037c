import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Label, placeLabels, rowCount } from '../../src/drawing/labels.js';
import { textWidth } from '../../src/drawing/svg.js';

const [LEFT, RIGHT] = [6, 354];
const place = (labels: readonly Label[]) => placeLabels(labels, LEFT, RIGHT);

/** From where to where a text runs. */
function spanOf({ text, textX, anchor }: { text: string; textX: number; anchor: 'start' | 'end' }): [number, number] {
  const width = textWidth(text);
  return anchor === 'start' ? [textX, textX + width] : [textX - width, textX];
}

describe('labels beside a view', () => {
  it('stand in one row where they have room', () => {
    const placed = place([
      { text: 'one', at: 30 },
      { text: 'two', at: 150 },
      { text: 'three', at: 330 },
    ]);
    expect(placed?.map(({ row }) => row)).toEqual([0, 0, 0]);
    expect(placed?.map(({ x }) => x)).toEqual([30, 150, 330]);
  });

  it('stand in two rows over one place, their leaders apart', () => {
    const placed = place([
      { text: 'front left', at: 30 },
      { text: 'front right', at: 30 },
    ]);
    expect(placed?.map(({ x }) => x)).toEqual([30, 38]);
    // the text of the first would cover the leader of the second, so it stands farther out
    expect(placed?.map(({ row }) => row)).toEqual([1, 0]);
  });

  it('none are none, and too long ones have no place', () => {
    expect(place([])).toEqual([]);
    expect(place([{ text: 'W'.repeat(60), at: 100 }])).toBeUndefined();
  });

  it('never cover each other or a leader, and stay between the edges', () => {
    const label = fc.record({
      text: fc.string({ minLength: 1, maxLength: 18 }),
      at: fc.integer({ min: 0, max: 360 }),
    });
    let placedAtAll = 0;
    fc.assert(
      fc.property(fc.array(label, { maxLength: 16 }), (labels) => {
        const placed = place(labels);
        if (placed === undefined) return;
        placedAtAll += 1;
        expect(placed).toHaveLength(labels.length);
        expect(rowCount(placed)).toBeLessThanOrEqual(labels.length);
        for (const one of placed) {
          const [from, to] = spanOf(one);
          expect(from).toBeGreaterThanOrEqual(LEFT);
          expect(to).toBeLessThanOrEqual(RIGHT);
          for (const other of placed) {
            if (one === other) continue;
            const [otherFrom, otherTo] = spanOf(other);
            if (one.row === other.row) expect(to <= otherFrom || otherTo <= from).toBe(true);
            // a leader runs through every row nearer than its own
            if (other.row >= one.row) expect(other.x <= from || other.x >= to).toBe(true);
          }
        }
      }),
      { numRuns: 500 },
    );
    expect(placedAtAll).toBeGreaterThan(250);
  });
});
