// `npm run repl` from a checkout: what it suggests to try works when it is pasted.
import { spawnSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { root } from './extract.js';

function repl(input: string): string {
  const { status, stdout, stderr } = spawnSync('npm', ['run', '--silent', 'repl'], {
    cwd: root,
    input,
    encoding: 'utf8',
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  return stdout;
}

it('suggests three lines, and each gives a result', () => {
  const suggested = repl('')
    .match(/^ {2}\S.*$/gm)!
    .map((line) => line.trim());
  expect(suggested).toHaveLength(3);
  const output = repl(suggested.join('\n'));
  const [, ...answers] = output.split('\n> ').flatMap((part) => part.split(/^> /m));
  expect(answers.filter((answer) => answer.trim() !== '')).toHaveLength(3);
  expect(output).not.toContain('Uncaught');
  expect(output).toContain('lb');
});

it('has the registry, the schemas and the words in scope', () => {
  expect(repl("ruleSetById('us-49cfr393-2024') === us49cfr393_2024")).toContain('> true');
});
