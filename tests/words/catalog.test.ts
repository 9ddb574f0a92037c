// The words of every language against the codes that the source uses, and against each other.
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { english } from '../../src/words/en.js';
import { nodesIn, sourceTrees } from '../architecture/sources.js';

const CODE = /^[A-Z][A-Z0-9]*(_[A-Z0-9]+)*$/;
const codes = Object.keys(english.notes);

/** Every text in capitals of the source outside the words themselves. */
function codesInSource(): Set<string> {
  const found = new Set<string>();
  for (const [file, tree] of sourceTrees()) {
    if (file.startsWith('words/')) continue;
    for (const node of nodesIn(tree)) if (ts.isStringLiteral(node) && CODE.test(node.text)) found.add(node.text);
  }
  return found;
}

describe('the English notes', () => {
  it('have a code for each sentence, and no sentence that nothing says', () => {
    const said = codesInSource();
    expect(codes.length).toBeGreaterThan(150);
    expect(codes.filter((code) => !CODE.test(code))).toEqual([]);
    expect(codes.filter((code) => !said.has(code))).toEqual([]);
  });

  it('are whole sentences with well-formed places', () => {
    for (const [code, sentence] of Object.entries(english.notes)) {
      expect(`${code} ${sentence}`).toMatch(/^[A-Z0-9_]+ [A-Z0-9{].*[.]$/);
      expect(sentence.replaceAll(/\{[a-z][A-Za-z]*\}/g, '')).not.toMatch(/[{}]/);
    }
  });

  it('say nothing twice', () => {
    const sentences = Object.values(english.notes);
    expect(new Set(sentences).size).toBe(sentences.length);
  });
});
