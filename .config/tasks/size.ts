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

interface Budget {
  readonly names: readonly string[];
  /** What it should weigh, in kB of 1000 bytes. */
  readonly target: number;
  /** What it may weigh while the target is not reached yet: it only ever goes down. */
  readonly limit?: number;
}

/** What an application imports together, and what that should weigh at most. */
const BUDGETS: readonly Budget[] = [
  { target: 5, names: ['chainMass'] },
  { target: 8, names: ['chainMassFromLink'] },
  { target: 8, names: ['linksForLength'] },
  { target: 8, names: ['lengthOfLinks'] },
  { target: 8, names: ['breakingForceOfGrade'] },
  { target: 8, names: ['chainRating', 'us49cfr393_108_2024'] },
  { target: 8, names: ['chainRating', 'usWeldedChain_2003'] },
  { target: 8, names: ['fits'] },
  { target: 8, names: ['tieDownsRequired', 'us49cfr393_110_2024'] },
  { target: 8, names: ['identifyChain', 'us49cfr393_108_chain_2024'] },
  { target: 8, limit: 8.6, names: ['assemblyRating', 'us49cfr393_108_chain_2024'] },
  { target: 15, limit: 16.1, names: ['checkSecurement', 'us49cfr393_2024'] },
  { target: 15, limit: 15.4, names: ['checkSecurement', 'caNsc10_2013'] },
  { target: 15, limit: 18.6, names: ['checkSecurement', 'euEn12195_1_2010'] },
  { target: 15, limit: 16.2, names: ['checkSecurement', 'auLrg_2018'] },
  { target: 15, names: ['checkSecurement', 'nzTlc_2017'] },
  { target: 15, names: ['checkSecurement', 'ukDvsa_2024'] },
  { target: 8, names: ['maximumSecuringLoad', 'imoCtuMslFractions_2014'] },
  { target: 15, limit: 17.1, names: ['checkSecurement', 'imoCtu_2014'] },
  { target: 15, limit: 16.3, names: ['checkSecurement', 'imoCssAnnex13_2014'] },
  { target: 15, limit: 24.5, names: ['solveRestraint'] },
  { target: 15, names: ['proposeTieDowns'] },
  { target: 8, names: ['tieDownLength'] },
  { target: 8, names: ['chainStiffness'] },
  { target: 8, limit: 11.9, names: ['availablePull'] },
  { target: 8, limit: 8.3, names: ['pullResistance'] },
  { target: 8, names: ['tireTraction'] },
  { target: 8, names: ['logMass'] },
  { target: 8, limit: 9.4, names: ['hitchStability'] },
  { target: 15, limit: 32.4, names: ['planPull'] },
  { target: 8, names: ['shockTension'] },
  { target: 8, names: ['takeUpSpeed'] },
  { target: 8, names: ['pullChainLength'] },
  { target: 8, names: ['bridleTension'] },
  { target: 8, names: ['chainSag'] },
  { target: 8, names: ['checkCarry'] },
  { target: 8, names: ['teamLimit'] },
  { target: 8, names: ['stowage'] },
  { target: 8, limit: 12.5, names: ['slingRating', 'usAlloySling_2011'] },
  { target: 8, limit: 12.6, names: ['slingRating', 'euEn818_2008'] },
  { target: 8, limit: 8.2, names: ['slingTensions'] },
  { target: 15, limit: 23.5, names: ['checkLift', 'usAlloySling_2011'] },
  { target: 15, names: ['drawLift'] },
  { target: 8, limit: 13.1, names: ['inspectChain', 'us29cfr1910_184_2011'] },
  { target: 8, limit: 12.8, names: ['inspectChain', 'euEn12195_3_2001_criteria'] },
  { target: 15, limit: 17.1, names: ['forecastRetirement', 'usAsmeB30_9_2010', 'usAsmeB30_9_2010_intervals'] },
  { target: 15, names: ['drawSecurement'] },
  { target: 90, limit: 185.5, names: ['*'] },
  { target: 15, limit: 15.1, names: ['drawPull'] },
  { target: 15, names: ['drawSnatch'] },
  { target: 15, limit: 29.1, names: ['buildKit', 'us49cfr393_2024'] },
  { target: 15, limit: 21.3, names: ['buildKit'] },
  { target: 15, names: ['chooseChain', 'us49cfr393_108_chain_2024'] },
  { target: 8, names: ['itemsFromCsv'] },
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
  console.log('target kB   gzip kB    min kB  import');
  for (const { target, limit = target, names } of BUDGETS) {
    const bundled = await bundle(names, 'dist/index.js').catch((error: Error) => error);
    if (bundled instanceof Error) {
      missed += 1;
      console.log(
        `${kB(target * 1000)}        -         -   ${names.join(' + ')} ${bundled.message.replace(/\s+/g, ' ')}`,
      );
      continue;
    }
    const { minified, gzipped, metafile } = bundled;
    const faults = [
      ...(gzipped > limit * 1000 ? [`OVER ITS LIMIT OF ${limit} kB`] : []),
      ...(Object.keys(metafile.inputs).some((file) => file.includes('node_modules/')) ? ['HOLDS A DEPENDENCY'] : []),
    ];
    missed += faults.length;
    const open = faults.length === 0 && gzipped > target * 1000 ? `target not reached yet, limit ${limit} kB` : '';
    console.log(
      `${kB(target * 1000)} ${kB(gzipped)}  ${kB(minified)}   ${names.join(' + ')} ${faults.join(', ')}${open}`.trimEnd(),
    );
  }
  if (missed > 0) {
    console.log(`\n${missed} missed. \`npm run size -- NAME\` shows which source files an import is made of.`);
    process.exitCode = 1;
  }
}

async function showParts(name: string): Promise<void> {
  const names = BUDGETS.find(({ names }) => names.includes(name))?.names ?? [name];
  const { minified, gzipped, metafile } = await bundle(names, 'src/index.ts');
  const parts = Object.entries(Object.values(metafile.outputs)[0]!.inputs)
    .map(([file, { bytesInOutput }]) => [bytesInOutput, file] as const)
    .filter(([bytes]) => bytes > 0)
    .sort(([a], [b]) => b - a);
  for (const [bytes, file] of parts) console.log(`${String(bytes).padStart(7)}  ${file}`);
  console.log(`${String(minified).padStart(7)}  minified bytes, ${gzipped} gzipped: ${names.join(' + ')}`);
}
