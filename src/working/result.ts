import type { Note } from './note.js';
import type { SourceRef } from './source.js';
import type { Step, Working } from './step.js';
import { summarize } from './summary.js';

/** What every result carries beside its answer. It is plain data: it survives JSON and `structuredClone`. */
export interface ResultBase<Name extends string = string> {
  /** The function that made it. */
  readonly result: Name;
  /** The input as it was understood; rule sets and tables by their id. */
  readonly inputs: unknown;
  readonly steps: readonly Step[];
  readonly sources: readonly SourceRef[];
  readonly assumptions: readonly Note[];
  readonly cautions: readonly Note[];
}

/** What a result inherits: its one-screen summary at the console. The name of the method is a call, so the object is marked pure. */
const SHOWN = /* @__PURE__ */ (() => ({
  [Symbol.for('nodejs.util.inspect.custom')](this: object): string {
    return summarize(this);
  },
}))();

/** An empty result to set fields on, born with its summary: quicker than adding the summary afterwards. */
export const EmptyResult = /* @__PURE__ */ (() => {
  function Result() {}
  Result.prototype = SHOWN;
  return Result as unknown as new () => object;
})();

/** Gives a finished set of fields its summary at the console; nothing else about it changes. */
function asResult<Fields extends ResultBase>(fields: Fields): Fields {
  return Object.setPrototypeOf(fields, SHOWN) as Fields;
}

/**
 * Closes a calculation: the answer first, then the working. The input is echoed with its rule set and table as
 * their ids; what it contains is the caller's own, not a copy.
 */
export function makeResult<Name extends string, Answer extends object>(
  name: Name,
  answer: Answer,
  input: object,
  working: Working,
): ResultBase<Name> & Answer {
  const { working: _, ...inputs } = input as Record<string, unknown>;
  for (const key of ['rules', 'ratings', 'criteria', 'intervals']) {
    if (key in inputs) inputs[key] = (inputs[key] as { readonly id: string }).id;
  }
  const { shown: _shown, ...found } = working;
  return asResult({ result: name, ...answer, inputs, ...found });
}
