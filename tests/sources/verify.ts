/**
 * One published example held against this library.
 *
 * `verify({...})` registers a test that asserts |computed − printed| <= tolerance. Each call is one row of the
 * verification page: what a document prints, what the library computes, and why the two may differ by the tolerance.
 *
 * - `id`: unique over all documents, such as `naval-steelworker-8d2`
 * - `domain`: the folder of src it is about: `quantities`, `chain`, `securement`, ...
 * - `source`: document, edition and clause as printed; `provenance` as everywhere in this library, with `read` for what was
 *   seen in the document or a page quoting it
 * - `printed`: the number in the document, in `unit`; `computed`: the library's, from its public
 *   functions; plain arithmetic only where a printed rule is no function of it
 * - `tolerance`: in `unit`; half the last printed digit where the document rounds, 0 where it is exact
 * - `why`: the reason for that tolerance, for the reader of the page
 *
 * To collect the cases, run
 *
 *     VERIFICATION_OUT=<file> npx vitest run --config .config/vitest.config.ts tests/sources
 *
 * Each case that passes is appended to the file as one line of JSON, a `VerificationCase`. Lines, because test
 * files run side by side: one line is written whole, in no fixed order. Delete the file first and sort by `id`.
 */
import { appendFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { SourceRef } from '../../src/working/source.js';

export interface VerificationCase {
  readonly id: string;
  readonly domain: string;
  readonly source: SourceRef;
  /** What is computed, in one line. */
  readonly what: string;
  readonly printed: number;
  readonly unit: string;
  readonly computed: number;
  readonly tolerance: number;
  readonly why: string;
}

/** The cases of this test file, in order. */
const cases: VerificationCase[] = [];

export function verify(example: VerificationCase): void {
  const { id, source, what, printed, unit, computed, tolerance } = example;
  it(`${source.document}${source.clause === undefined ? '' : `, ${source.clause}`}: ${what}`, () => {
    expect(
      cases.filter((other) => other.id === id),
      `two cases with the id ${id}`,
    ).toHaveLength(1);
    expect(Number.isFinite(computed) && tolerance >= 0, 'finite result and tolerance').toBe(true);
    expect(
      Math.abs(computed - printed),
      `printed ${printed} ${unit}, computed ${computed} ${unit}`,
    ).toBeLessThanOrEqual(tolerance);
    const file = process.env.VERIFICATION_OUT;
    if (file !== undefined && file !== '') appendFileSync(file, `${JSON.stringify(example)}\n`);
  });
  cases.push(example);
}
