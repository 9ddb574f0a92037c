import { RiggingError, type RiggingIssue } from '../../src/errors.js';

/** What a call throws, as plain data; a call that throws nothing, or anything else, fails the test. */
export function issueOf(call: () => unknown): RiggingIssue {
  let result: unknown;
  try {
    result = call();
  } catch (error) {
    if (error instanceof RiggingError) return error.toJSON();
    throw error;
  }
  throw new Error(`nothing thrown, got ${String(result)}`);
}
