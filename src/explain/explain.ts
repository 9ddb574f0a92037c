import { fail } from '../errors.js';
import { english } from '../words/en.js';
import type { Words } from '../words/words.js';
import type { ResultBase } from '../working/result.js';
import { inWords } from './in-words.js';
import { sheetOf } from './sheet.js';
import { toHtml } from './to-html.js';
import { toMarkdown } from './to-markdown.js';
import { toText } from './to-text.js';

/** What a calculation sheet is written in. */
export type SheetFormat = 'text' | 'markdown' | 'html';

/**
 * The calculation sheet of any result: what was given, the answer, every step as formula, the same with its
 * numbers and what came out, every check with its clause, assumptions, cautions, and the sources with how each
 * is known. A figure from memory or an interpretation says so.
 *
 * The sheet is told from the result's data alone, so a result that went through JSON or `structuredClone` gives
 * the same sheet. Ids and texts of the caller cannot break out of their place in any of the formats.
 *
 * @param result what a calculation of this library returned; made with `working: false` it has no steps to show
 * @param options.as `'text'` (100 columns), `'markdown'` (with tables) or `'html'` (a `<section>`, no style, no
 * script); omitted: text
 * @param options.words the words of a language; omitted: `english` of `chain-rigging/words/en`
 * @throws RiggingError `UNKNOWN_VALUE` for something that is no result or an unknown format, `MISSING_FIELD` for a result that
 * lost a part
 * @validity it words what the result holds and computes nothing: figures to 6 digits, utilizations to 4, inputs as given
 * @source none of its own
 * @example
 * explain(chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 }), { as: 'markdown' }).split('\n')[0]
 * // => '# Chain rating'
 */
export function explain(
  result: ResultBase,
  options: { readonly as?: SheetFormat; readonly words?: Words } = {},
): string {
  const as = options?.as ?? 'text';
  const words = options?.words ?? english;
  const blocks = [...sheetOf(inWords(result, words), words), { kind: 'paragraph', text: words.sheet.closing } as const];
  if (as === 'text') return toText(blocks);
  if (as === 'markdown') return toMarkdown(blocks);
  if (as === 'html') return toHtml(blocks);
  return fail('UNKNOWN_VALUE', 'as', "'text', 'markdown' or 'html'", as, 'Leave it out for text.');
}
