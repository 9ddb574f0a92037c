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
  readonly values: Readonly<Record<string, StepValue>>;
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

  step(step: Step): void {
    this.steps.push(step);
  }

  /** Adds a source once. */
  cite(source: SourceRef): void {
    for (const known of this.sources) {
      if (known === source) return;
      if (
        known.document === source.document &&
        known.clause === source.clause &&
        known.provenance === source.provenance &&
        known.note === source.note
      ) {
        return;
      }
    }
    this.sources.push(source);
  }
}
