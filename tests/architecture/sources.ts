import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Every file of src as a syntax tree, by its path within src. */
export function sourceTrees(): Map<string, ts.SourceFile> {
  const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  );
  return new Map(files.sort().map((file) => [file, parse(file, readFileSync(join(root, 'src', file), 'utf8'))]));
}

export const parse = (file: string, text: string): ts.SourceFile =>
  ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);

/** `chain/links.ts:12`, for messages. */
export const placeOf = (node: ts.Node): string => {
  const source = node.getSourceFile();
  return `${source.fileName}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
};

/** Every node below a node, itself included. */
export function* nodesIn(node: ts.Node): Generator<ts.Node> {
  yield node;
  for (const child of node.getChildren()) yield* nodesIn(child);
}
