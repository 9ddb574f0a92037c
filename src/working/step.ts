import type { QuantityLike } from '../quantities/quantity.js';
import type { Note } from './note.js';
import type { SourceRef } from './source.js';

/** A value in a step: a quantity, a plain number, or a word such as a grade or a path. */
export type StepValue = QuantityLike | number | string | null;

/** One line of the working: `symbol = expression`, with the values that went in and the one that came out. */
export interface Step {
  /** What the line is about, such as `tie-down front-left`. */
  readonly subject: string;
  readonly symbol: string;
  readonly expression: string;
  /** What went in, each with its name: symbols of the expression, or ids of the things it runs over. */
  readonly values: readonly (readonly [name: string, value: StepValue])[];
  readonly result: StepValue;
  readonly clause?: string;
}

/**
 * Collects the working while a calculation runs. With `shown` false nothing is recorded, and code that would
 * build a step or a sentence only for show asks `shown` first.
 */
export class Working {
  readonly shown: boolean;
  readonly steps: Step[] = [];
  readonly sources: SourceRef[] = [];
  readonly assumptions: Note[] = [];
  readonly cautions: Note[] = [];

  constructor(shown: boolean) {
    this.shown = shown;
  }

  /** Records a line. The values may be written as an object where the code itself chose their names. */
  step(
    subject: string,
    symbol: string,
    expression: string,
    values: Step['values'] | Readonly<Record<string, StepValue>>,
    result: StepValue,
    clause?: string,
  ): void {
    if (!this.shown) return;
    const list = Array.isArray(values) ? (values as Step['values']) : Object.entries(values);
    this.steps.push({ subject, symbol, expression, values: list, result, ...(clause && { clause }) });
  }

  /** Adds a source once. */
  cite(source: SourceRef): void {
    const { document, clause, provenance } = source;
    for (const known of this.sources) {
      if (known.document === document && known.clause === clause && known.provenance === provenance) return;
    }
    this.sources.push(source);
  }
}
