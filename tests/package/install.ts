/**
 * A folder in which the packed package is installed as a user would have it: `npm pack`, then `npm install` of the
 * tarball, offline, beside the zod of this checkout. Needs the built dist, as `npm test` makes it.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Installed {
  readonly folder: string;
  /** Files of the tarball. */
  readonly packed: readonly string[];
  remove(): void;
}

export function installPackage(): Installed {
  checkBuild();
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'installed-')));
  try {
    const [{ filename, files }] = JSON.parse(
      npm(root, 'pack', '--json', '--ignore-scripts', '--pack-destination', folder),
    );
    writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'consumer', private: true, type: 'module' }));
    npm(
      folder,
      'install',
      '--offline',
      '--ignore-scripts',
      '--cache',
      join(folder, 'empty-cache'),
      `./${filename}`,
      join(root, 'node_modules/zod'),
    );
    return {
      folder,
      packed: files.map(({ path }: { path: string }) => path),
      remove: () => rmSync(folder, { recursive: true }),
    };
  } catch (error) {
    rmSync(folder, { recursive: true });
    throw error;
  }
}

/** Writes files of a consumer and runs one of them in a bare Node process; gives what it printed. */
export function runIn(folder: string, file: string, code: string): string {
  writeFileSync(join(folder, file), code);
  const { status, stdout, stderr } = spawnSync(process.execPath, [file], { cwd: folder, env: {}, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${file} failed:\n${stderr}\n${code}`);
  return stdout.trimEnd();
}

function checkBuild(): void {
  const built = join(root, 'dist/index.d.ts');
  if (!existsSync(built)) throw new Error('dist is not built: npm run build');
  const newest = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
    .map((file) => statSync(join(root, 'src', file)))
    .filter((stats) => stats.isFile())
    .reduce((latest, { mtimeMs }) => Math.max(latest, mtimeMs), 0);
  if (newest > statSync(built).mtimeMs) throw new Error('dist is older than src: npm run build');
}

const npm = (cwd: string, ...args: string[]): string =>
  execFileSync('npm', args, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
