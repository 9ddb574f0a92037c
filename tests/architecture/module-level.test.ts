// An application carries only what it names. A bundler may drop a constant only when making it does nothing, so
// module level holds literals, functions, classes and calls marked PURE; nothing is spread, called or looked up.
// The same places must give the same answer everywhere, so nothing reads a clock, a locale or a global.
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { nodesIn, parse, placeOf, sourceTrees } from './sources.js';

/** True for an expression that does nothing but make a value. */
function isPure(node: ts.Expression): boolean {
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node)) {
    return isPure(node.expression);
  }
  if (
    ts.isLiteralExpression(node) ||
    ts.isIdentifier(node) ||
    ts.isArrowFunction(node) ||
    ts.isFunctionExpression(node) ||
    [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword, ts.SyntaxKind.NullKeyword].includes(node.kind)
  ) {
    return true;
  }
  if (ts.isPrefixUnaryExpression(node)) return ts.isNumericLiteral(node.operand) || ts.isBigIntLiteral(node.operand);
  if (ts.isBinaryExpression(node)) return ts.isNumericLiteral(node.left) && ts.isNumericLiteral(node.right);
  if (ts.isArrayLiteralExpression(node)) return node.elements.every(isPure);
  if (ts.isObjectLiteralExpression(node)) return node.properties.every(isPureProperty);
  if (ts.isCallExpression(node) || ts.isNewExpression(node))
    return isMarkedPure(node) && (node.arguments ?? []).every(isPure);
  return false;
}

function isPureProperty(node: ts.ObjectLiteralElementLike): boolean {
  if (node.name !== undefined && ts.isComputedPropertyName(node.name)) return false;
  if (ts.isShorthandPropertyAssignment(node) || ts.isMethodDeclaration(node)) return true;
  return ts.isPropertyAssignment(node) && isPure(node.initializer);
}

/** `Symbol.iterator` as the name of a method does nothing; a call of `Symbol.for` there keeps the class in a bundle. */
const isPureName = (name: ts.PropertyName | undefined): boolean =>
  name === undefined || !ts.isComputedPropertyName(name) || /^Symbol\.\w+$/.test(name.expression.getText());

const isMarkedPure = (node: ts.Node): boolean =>
  /\/\* ?[@#]__PURE__ ?\*\/\s*$/.test(node.getFullText().slice(0, node.getLeadingTriviaWidth()));

function isPureStatement(node: ts.Statement): boolean {
  if (ts.isVariableStatement(node)) {
    return (
      (node.declarationList.flags & ts.NodeFlags.Const) !== 0 &&
      node.declarationList.declarations.every(
        ({ name, initializer }) => ts.isIdentifier(name) && initializer !== undefined && isPure(initializer),
      )
    );
  }
  if (ts.isClassDeclaration(node)) {
    return node.members.every(
      (member) =>
        isPureName(member.name) &&
        !ts.isClassStaticBlockDeclaration(member) &&
        !(ts.isPropertyDeclaration(member) && ts.getCombinedModifierFlags(member) & ts.ModifierFlags.Static),
    );
  }
  return (
    (ts.isImportDeclaration(node) && node.importClause !== undefined) ||
    ts.isExportDeclaration(node) ||
    ts.isFunctionDeclaration(node) ||
    ts.isInterfaceDeclaration(node) ||
    ts.isTypeAliasDeclaration(node)
  );
}

const impureIn = (tree: ts.SourceFile) => tree.statements.filter((node) => !isPureStatement(node)).map(placeOf);

/**
 * Reads of a clock, of chance, of a locale, of the global object, and ways to run text as code. The names of Node
 * and of a browser (process, fetch, document) are no concern here: tsconfig.json does not know them for src.
 */
function outsideReads(tree: ts.SourceFile): string[] {
  const names = /^(Date|Intl|globalThis|eval|Function|localeCompare|toLocale\w*)$/;
  const found: string[] = [];
  for (const node of nodesIn(tree)) {
    if (ts.isIdentifier(node) && names.test(node.text) && !isTypeOrKey(node))
      found.push(`${placeOf(node)} ${node.text}`);
    if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random')
      found.push(`${placeOf(node)} Math.random`);
  }
  return found;
}

const isTypeOrKey = (node: ts.Identifier) =>
  ts.isTypeReferenceNode(node.parent) || ts.isPropertyAssignment(node.parent);

const trees = [...sourceTrees()];

describe('src', () => {
  it('does nothing at module level', () => {
    expect(trees.flatMap(([, tree]) => impureIn(tree))).toEqual([]);
  });

  it('reads nothing but its arguments', () => {
    expect(trees.flatMap(([, tree]) => outsideReads(tree))).toEqual([]);
  });
});

describe('the check itself', () => {
  it.each([
    'export const a = { b: [1, -2, 3.14 / 180, `c`, /d/, 5n], e: f, g() {}, h: () => i() } as const;',
    'const a = /* @__PURE__ */ new Map([[1, 2]]);',
    'const a = /*#__PURE__*/ f({ b: 1 });',
    'class A { b = f(); [Symbol.iterator]() {} static c() { f(); } }',
    "export { a } from './a.js'; import { b } from './b.js'; function c() { d(); } interface E {} type F = 1;",
  ])('accepts %s', (code) => {
    expect(impureIn(parse('x.ts', code))).toEqual([]);
  });

  it.each([
    'const a = Object.freeze({ b: 1 });',
    'const a = { ...b };',
    'const a = [...b];',
    'const a = b.c;',
    'const a = [1].map(f);',
    'const a = /* @__PURE__ */ f(g());',
    'const a = { [f()]: 1 };',
    'const a = b ? 1 : 2;',
    'const { a } = b;',
    'let a = 1;',
    'f();',
    "import './a.js';",
    'class A { static b = 1; }',
    'class A { static { f(); } }',
    'class A { [f()]() {} }',
    "class A { [Symbol.for('x')]() {} }",
    'const a = Math.PI / 180;',
    'enum A { B }',
    'for (const a of b) f(a);',
  ])('refuses %s', (code) => {
    expect(impureIn(parse('x.ts', code))).toEqual(['x.ts:1']);
  });

  it('sees reads of the outside', () => {
    const code = "new Date(); Math.random(); 'a'.localeCompare('b'); eval('1'); const x: Date = y; ({ process: 1 });";
    expect(outsideReads(parse('x.ts', code))).toHaveLength(4);
  });
});
