/**
 * Size budgets of the built package: what one import costs an application, minified and gzipped.
 * Exits with 1 when a budget is missed or a core bundle holds zod.
 *
 *   npm run size                  the table
 *   npm run size -- checkCarry    which source files that import is made of
 */
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What an application imports together, and the most it may weigh in kB (1000 bytes). */
const BUDGETS: readonly (readonly [kB: number, ...names: string[]])[] = [
  [5, 'chainMass'],
  [8, 'chainMassFromLink'],
  [8, 'linksForLength'],
  [8, 'lengthOfLinks'],
  [8, 'breakingForceOfGrade'],
  [8, 'chainRating', 'us49cfr393_108_2024'],
  [8, 'chainRating', 'usWeldedChain_2003'],
  [8, 'identifyChain', 'us49cfr393_108_2024'],
  [8, 'assemblyRating', 'us49cfr393_108_2024'],
  [8, 'fits'],
  [8, 'tieDownsRequired', 'us49cfr393_2024'],
  [15, 'checkSecurement', 'us49cfr393_2024'],
  [30, '*'],
];

async function bundle(names: readonly string[], from: string) {
  const { outputFiles, metafile } = await build({
    stdin: {
      contents: `export ${names[0] === '*' ? '*' : `{ ${names.join(', ')} }`} from './${from}';`,
      resolveDir: root,
    },
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    tsconfigRaw: {}, // the paths of tsconfig.json would lead from the package back to its sources
    metafile: true,
    write: false,
    logLevel: 'silent',
  });
  const code = outputFiles[0]!.contents;
  return { minified: code.length, gzipped: gzipSync(code, { level: 9 }).length, metafile };
}

const [wanted] = process.argv.slice(2);
if (wanted !== undefined) await showParts(wanted);
else await checkBudgets();

async function checkBudgets(): Promise<void> {
  const kB = (bytes: number) => (bytes / 1000).toFixed(2).padStart(8);
  let missed = 0;
  console.log('budget kB   gzip kB    min kB  import');
  for (const [budget, ...names] of BUDGETS) {
    const bundled = await bundle(names, 'dist/index.js').catch((error: Error) => error);
    if (bundled instanceof Error) {
      missed += 1;
      console.log(
        `${kB(budget * 1000)}        -         -   ${names.join(' + ')} ${bundled.message.replace(/\s+/g, ' ')}`,
      );
      continue;
    }
    const { minified, gzipped, metafile } = bundled;
    const faults = [
      ...(gzipped > budget * 1000 ? ['OVER BUDGET'] : []),
      ...(Object.keys(metafile.inputs).some((file) => file.includes('node_modules/')) ? ['HOLDS A DEPENDENCY'] : []),
    ];
    missed += faults.length;
    console.log(
      `${kB(budget * 1000)} ${kB(gzipped)}  ${kB(minified)}   ${names.join(' + ')} ${faults.join(', ')}`.trimEnd(),
    );
  }
  if (missed > 0) {
    console.log(`\n${missed} missed. \`npm run size -- NAME\` shows which source files an import is made of.`);
    process.exitCode = 1;
  }
}

async function showParts(name: string): Promise<void> {
  const names = BUDGETS.find(([, ...names]) => names.includes(name))?.slice(1) as string[] | undefined;
  const { minified, gzipped, metafile } = await bundle(names ?? [name], 'src/index.ts');
  const parts = Object.entries(Object.values(metafile.outputs)[0]!.inputs)
    .map(([file, { bytesInOutput }]) => [bytesInOutput, file] as const)
    .filter(([bytes]) => bytes > 0)
    .sort(([a], [b]) => b - a);
  for (const [bytes, file] of parts) console.log(`${String(bytes).padStart(7)}  ${file}`);
  console.log(`${String(minified).padStart(7)}  minified bytes, ${gzipped} gzipped: ${(names ?? [name]).join(' + ')}`);
}
