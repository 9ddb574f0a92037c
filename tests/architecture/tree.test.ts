// What may not stand in any file of the project, and what must be there.
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './sources.js';

/** The files that git knows or would add. */
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  cwd: root,
  encoding: 'utf8',
})
  .split('\n')
  .filter((file) => file !== '' && existsSync(join(root, file)));

const read = (file: string) => readFileSync(join(root, file), 'utf8');

interface Word {
  readonly what: string;
  readonly pattern: RegExp;
  /** Files that may hold it. */
  readonly except?: RegExp;
}

const FORBIDDEN: readonly Word[] = [
  // Cite the document itself: addresses die. The name of the SVG and JSON Schema formats is an address.
  {
    what: 'a web address',
    pattern: /\b(https?:\/\/|(?<!\/\/)www\.)(?!www\.w3\.org\/2000\/svg|json-schema\.org\/)/,
    except: /^package-lock\.json$/,
  },
  { what: 'a mail address', pattern: /[\w.]+@[\w-]+\.(com|org|net|io)\b/ },
  { what: 'a path of one machine', pattern: /(?<![\w.])\/((work|tmp)\b|(home|root|Users|var)\/)/ },
  { what: 'the address of a registry in the lock file', pattern: /"resolved":/, except: /\.ts$/ },
  { what: 'a trademark sign', pattern: /[™®]/, except: /^tests\/tables\/tables\.test\.ts$/ },
  { what: 'a note to finish later', pattern: /\b(TODO|FIXME|XXX|HACK)\b/ },
  { what: 'a debugging leftover', pattern: /\b(debugger;|console\.debug|(it|test|describe)\.only\()/ },
];

/** The spelling that the users of the library write. Titles of documents in reference-tables keep their own. */
const BRITISH =
  /\b(colour|centre|tyre|fibre|metre|millimetre|kilometre|grey|labour|behaviour|favour|neighbour|mould|plough|kerb|aluminium|licence|utilis\w+|normalis\w+|optimis\w+|recognis\w+|organis\w+|summaris\w+|minimis\w+|maximis\w+|modelled|labelled|travelled|cancelled)\b/i;

const text = files.filter((file) => !/\.(png|svg|tgz)$/.test(file) && file !== 'tests/architecture/tree.test.ts');

function linesWith(pattern: RegExp, among: readonly string[]): string[] {
  return among.flatMap((file) =>
    read(file)
      .split('\n')
      .flatMap((line, index) => (pattern.test(line) ? [`${file}:${index + 1} ${line.trim().slice(0, 100)}`] : [])),
  );
}

describe('no file holds', () => {
  it.each(FORBIDDEN)('$what', ({ pattern, except }) => {
    expect(
      linesWith(
        pattern,
        text.filter((file) => except?.test(file) !== true),
      ),
    ).toEqual([]);
  });

  it('British spelling', () => {
    const own = text.filter((file) => !/^(reference-tables\/|src\/tables\/generated\/|package-lock\.json)/.test(file));
    expect(linesWith(BRITISH, own)).toEqual([]);
  });
});

describe('the tree', () => {
  it('has what a stranger looks for', () => {
    expect(
      ['README.md', 'CHANGELOG.md', 'DEVELOPERS.md', 'LICENSE', '.ci/run'].filter((file) => !files.includes(file)),
    ).toEqual([]);
  });

  it('says in README.md how to test it, in the words that .ci/run runs', () => {
    expect(read('README.md')).toContain('npm ci && npm test');
    expect(read('.ci/run')).toContain('npm ci && npm test');
  });

  it('names in the README only scripts that package.json has', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    const builtIn = ['ci', 'install', 'pack', 'i'];
    const pages = files.filter((file) => file.endsWith('.md'));
    const named = pages.flatMap((page) =>
      [...read(page).matchAll(/\bnpm (?:run )?([a-z:]+)/g)].map(([, name]) => name!),
    );
    expect(named.filter((name) => scripts[name] === undefined && !builtIn.includes(name))).toEqual([]);
  });

  it('has links in its pages that lead to files', () => {
    const broken = files
      .filter((file) => file.endsWith('.md'))
      .flatMap((page) =>
        [...read(page).matchAll(/\]\(([^)#\s]+)(#[^)]*)?\)/g)]
          .map(([, target]) => target!)
          .filter((target) => !existsSync(join(root, page, '..', target)))
          .map((target) => `${page} ${target}`),
      );
    expect(broken).toEqual([]);
  });
});
