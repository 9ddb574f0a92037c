/**
 * The examples of the project: every `@example` of a doc comment in src, every code block of README.md and of
 * the pages in docs. The convention is written at the head of examples.test.ts.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Example {
  readonly file: string;
  /** Line of the file on which the code starts. */
  readonly line: number;
  readonly code: string;
  readonly run: boolean;
  /** Goes on in the scope of the example before it. */
  readonly continued: boolean;
}

/** Every example of the project, in the order of the files. */
export function allExamples(): Example[] {
  return [
    ...filesIn('src', '.ts').flatMap((file) => docCommentExamples(file, read(file))),
    ...['README.md', ...filesIn('docs', '.md')].flatMap((file) => markdownExamples(file, read(file))),
  ].filter(({ file }) => !/^docs\/(site|api)\//.test(file));
}

/** The examples in the doc comments of a TypeScript file. */
export function docCommentExamples(file: string, text: string): Example[] {
  const examples: Example[] = [];
  let start = 0;
  let body: string[] | undefined;
  const close = () => {
    const code = body?.filter((line) => !line.startsWith('```')).join('\n') ?? '';
    if (code.trim() !== '') examples.push({ file, line: start, code, run: true, continued: false });
    body = undefined;
  };
  for (const [index, line] of text.split('\n').entries()) {
    const content = /^ *\*(?!\/) ?(.*)$/.exec(line)?.[1];
    if (content === undefined) close();
    else if (content.startsWith('@')) {
      close();
      if (/^@example\b/.test(content)) {
        start = index + 2;
        body = [];
      }
    } else body?.push(content);
  }
  return examples;
}

/** The `ts` and `js` blocks of a Markdown page. One without an import line goes on from the block before it. */
export function markdownExamples(file: string, text: string): Example[] {
  const examples: Example[] = [];
  let open: Pick<Example, 'file' | 'line' | 'run'> | undefined;
  let body: string[] = [];
  for (const [index, line] of text.split('\n').entries()) {
    const fence = /^```(\S*) ?(.*)$/.exec(line);
    if (fence === null) body.push(line);
    else if (open !== undefined) {
      const code = body.join('\n');
      examples.push({ ...open, code, continued: examples.length > 0 && !/^import |\brequire\(/m.test(code) });
      open = undefined;
    } else if (/^(ts|js|typescript|javascript)$/.test(fence[1]!)) {
      if (!/^(no-run)?$/.test(fence[2]!))
        throw new Error(`${file}:${index + 1}: a code block may say no-run, not ${fence[2]}`);
      open = { file, line: index + 2, run: fence[2] === '' };
      body = [];
    }
  }
  return examples;
}

/** The files of a folder and its folders, as paths from the root of the project. */
function filesIn(folder: string, ending: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending))
    .map((file) => `${folder}/${file}`)
    .sort();
}

const read = (file: string) => readFileSync(join(root, file), 'utf8');
