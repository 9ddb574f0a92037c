// What every public function says of itself: an example that runs (tests/examples runs it), what it throws, and
// the document behind a rule that it states.
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { root } from './sources.js';

const ENTRIES = ['src/index.ts', 'src/registry.ts', 'src/words/en.ts', 'src/schemas/index.ts'];

const { config } = ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile);
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
const program = ts.createProgram(
  ENTRIES.map((entry) => root + entry),
  options,
);
const checker = program.getTypeChecker();

interface PublicName {
  readonly entry: string;
  readonly name: string;
  readonly symbol: ts.Symbol;
}

const publicNames: PublicName[] = ENTRIES.flatMap((entry) => {
  const module = checker.getSymbolAtLocation(program.getSourceFile(root + entry)!)!;
  return checker.getExportsOfModule(module).map((symbol) => {
    const aliased = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
    return { entry, name: symbol.name, symbol: aliased ? checker.getAliasedSymbol(symbol) : symbol };
  });
});

const functions = publicNames.filter(({ symbol }) => symbol.flags & ts.SymbolFlags.Function);
const values = publicNames.filter(({ symbol }) => symbol.flags & ts.SymbolFlags.Value);

const tagsOf = ({ symbol }: PublicName) => symbol.getJsDocTags(checker).map(({ name }) => name);
const proseOf = ({ symbol }: PublicName) => ts.displayPartsToString(symbol.getDocumentationComment(checker));
const signaturesOf = ({ symbol }: PublicName) => checker.getTypeOfSymbol(symbol).getCallSignatures();
/** A result carries its sources, so the function that makes it states a rule. */
const statesRule = (item: PublicName) =>
  signaturesOf(item).some((signature) => signature.getReturnType().getProperty('sources') !== undefined);

const unless = (holds: (item: PublicName) => boolean, items: readonly PublicName[]) =>
  items.filter((item) => !holds(item)).map(({ entry, name }) => `${entry} ${name}`);

describe('every public function', () => {
  it('is found', () => {
    expect(functions.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['chainRating', 'convert', 'ruleSetById']),
    );
    expect(functions.filter(statesRule).map(({ name }) => name)).toContain('chainRating');
    expect(functions.filter(statesRule).map(({ name }) => name)).not.toContain('convert');
  });

  it('is described', () => {
    expect(unless((item) => proseOf(item).length > 0, values)).toEqual([]);
  });

  it('has an example', () => {
    expect(unless((item) => tagsOf(item).includes('example'), functions)).toEqual([]);
  });

  it('says what it throws, or that it throws nothing', () => {
    expect(
      unless(
        (item) => tagsOf(item).includes('throws') || /throws nothing|never throws/i.test(proseOf(item)),
        functions,
      ),
    ).toEqual([]);
  });

  it('names its source where it states a rule', () => {
    expect(unless((item) => !statesRule(item) || tagsOf(item).includes('source'), functions)).toEqual([]);
  });
});
