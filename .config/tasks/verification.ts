/**
 * Writes two pages for a reviewer, both from the project itself:
 *
 * - docs/verification.md: every published example of tests/sources beside what the library computes
 * - docs/from-memory.md: every figure of reference-tables/ that was recalled and not read
 *
 * With --check it writes nothing, lists what is stale and exits with 1.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { formatNumber } from '../../src/quantities/format.js';
import type { VerificationCase } from '../../tests/sources/verify.js';
import { isProvenanceColumn, provenanceWords, type Row, readTable, type Table, tableIds } from '../tables/tables.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const GENERATED = 'Written by `npm run verification`. Do not edit.';

/** What is recalled and stands in the code itself, not in a table. */
const RULES_FROM_MEMORY: readonly (readonly [what: string, file: string, confirm: string])[] = [
  [
    'Cargo secured as 393.104 to 393.136 ask is deemed to meet the performance criteria',
    'securement/rules/us-49cfr393-2024/393-102-performance.ts',
    '49 CFR 393.102(c)',
  ],
  [
    'The count does not bind cargo fastened by special methods',
    'securement/rules/us-49cfr393-2024/393-110-count.ts',
    '49 CFR 393.110(d)',
  ],
  [
    'A vehicle under 393.128 needs two tie-downs in total, with restraint at both ends',
    'securement/rules/us-49cfr393-2024/393-128-130-machines.ts',
    '49 CFR 393.128(b)',
  ],
  [
    'A full lock instead of a tie-down on accessory equipment; raised transport of equipment made for it',
    'securement/rules/us-49cfr393-2024/393-128-130-machines.ts',
    'Agency guidance to 49 CFR 393.130, questions 2 and 3',
  ],
  [
    'The working load limits of chain are those of 49 CFR 393.108',
    'tables/ca-nsc10-2013.ts',
    'NSC Standard 10, its tables of working load limits',
  ],
  [
    'A tie-down is as strong as its weakest part; a damaged one may not be used',
    'securement/rules/ca-nsc10-2013/judge-plan.ts',
    'NSC Standard 10, Part 1',
  ],
  [
    'Accessory equipment of a machine that is not heavy is tied down or locked',
    'securement/rules/ca-nsc10-2013/89-2-equipment.ts',
    'NSC Standard 10, Part 1',
  ],
  [
    'Force balances for sliding and tipping; 0.75 of the friction throughout once a direct tie-down counts',
    'securement/rules/imo-ctu-2014/annex-7-4-sliding.ts',
    'CTU Code, Annex 7, section 4',
  ],
  [
    'Balances across the ship; a vertical force along it, for which friction of the weight is left open',
    'securement/rules/imo-css-annex13-2014/annex-13-7-sliding.ts',
    'CSS Code, Annex 13 before December 2020, section 7',
  ],
  [
    'The formulas of over-top and direct lashing against sliding; no safety factor in direct lashing',
    'securement/rules/eu-en12195-1-2010/sliding.ts',
    'EN 12195-1:2010, over-top lashing, direct lashing',
  ],
  [
    'Of the two cases of tilting sideways under over-top lashing the larger number counts; where fs stands in it',
    'securement/rules/eu-en12195-1-2010/tilting.ts',
    'EN 12195-1:2010, tilting',
  ],
  [
    'Two over-top lashings, or two pairs of direct ones, are the least',
    'securement/rules/eu-en12195-1-2010/minimum-number.ts',
    'EN 12195-1:2010, over-top lashing, direct lashing',
  ],
  [
    'Frost, ice or snow caps a stated friction factor as it caps one of the table',
    'securement/rules/eu-en12195-1-2010/friction.ts',
    'EN 12195-1:2010, Annex B',
  ],
  [
    'Once direct lashing is counted, the whole friction term is 0.75 · μ, that of over-top lashing included',
    'securement/rules/eu-en12195-1-2010/sliding.ts',
    'EN 12195-1:2010, combined lashing methods',
  ],
  [
    'The clamp of tie-downs over the load, and 0.2 of the weight as its least',
    'securement/rules/au-lrg-2018/schedule-7-restraint.ts',
    'Load Restraint Guide 2018, tie-down restraint',
  ],
  [
    'Friction alone is not to be relied on',
    'securement/rules/uk-dvsa-2024/forces.ts',
    'Guidance on securing loads on goods vehicles, December 2024',
  ],
  ['Density of green wood, 62.4 · G · (1 + MC) lb/ft3', 'pulling/log-mass.ts', 'Wood Handbook, density of green wood'],
  [
    'New chain of every grade was pulled to its proof force and keeps no stretch from it',
    'service/past-load.ts',
    'ASTM A391, A413, A973; EN 818-2',
  ],
  [
    'A nominal pitch has a tolerance of some 3 percent, said as a caution',
    'service/inspect-chain.ts',
    'EN 818-2, link dimensions',
  ],
  ['Density of steel, 7850 kg/m3', 'chain/chain-mass.ts', 'EN 1993-1-2:2005, 3.2.2(1)'],
  ['Which chain a grab or slip hook takes', 'hardware/fits.ts', 'No rule is known: the marking of the hook decides'],
  [
    'A rear overturn passes its point of no return in about 0.75 s',
    'pulling/hitch-stability.ts',
    'Safety guidance on tractor overturns',
  ],
];

const check = process.argv.includes('--check');
const stale: string[] = [];

settle('docs/verification.md', verificationPage(publishedCases()));
settle('docs/from-memory.md', fromMemoryPage(tableIds().map(readTable)));

if (stale.length > 0) console.log(`${check ? 'Stale' : 'Written'}: ${stale.join(', ')}`);
if (check && stale.length > 0) process.exitCode = 1;

function settle(path: string, lines: readonly string[]): void {
  const content = `${lines.join('\n')}\n`;
  const file = join(root, path);
  if (existsSync(file) && readFileSync(file, 'utf8') === content) return;
  stale.push(path);
  if (!check) writeFileSync(file, content);
}

/** Runs tests/sources; each case that passes leaves one line of JSON. A case that fails ends this task. */
function publishedCases(): VerificationCase[] {
  const folder = mkdtempSync(join(tmpdir(), 'verification-'));
  const file = join(folder, 'cases.jsonl');
  try {
    const vitest = join(root, 'node_modules/vitest/vitest.mjs');
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [vitest, 'run', '--config', '.config/vitest.config.ts', 'tests/sources'],
      { cwd: root, encoding: 'utf8', env: { ...process.env, VERIFICATION_OUT: file } },
    );
    if (status !== 0) throw new Error(`tests/sources does not pass:\n${stdout}\n${stderr}`);
    const cases = readFileSync(file, 'utf8').trimEnd().split('\n');
    return cases.map((line) => JSON.parse(line) as VerificationCase).sort((a, b) => (a.id < b.id ? -1 : 1));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function verificationPage(cases: readonly VerificationCase[]): string[] {
  const domains = [...new Set(cases.map(({ domain }) => domain))].sort();
  return [
    '# Verification',
    '',
    GENERATED,
    '',
    'Figures that published documents print, beside what this library computes. The cases stand in `tests/sources`; the',
    'tests fail when a gap exceeds its tolerance. A case checks arithmetic. It does not make its document a rule: some are',
    'old rules of thumb, kept only because they print an example.',
    '',
    '- Computed: to eight significant digits.',
    '- Gap: computed less printed, to three digits; 0 below a billionth of the figure.',
    '- Tolerance: half the last printed digit where the document rounds, 0 where it is exact, else as explained.',
    '- How known: whether the printed figure was read in the document or a page quoting it. See',
    '  [conventions](conventions.md#results).',
    '',
    ...table(['How known', 'Cases', 'Exact'], [...provenanceRows(cases), totalRow('all', cases)]),
    ...domains.flatMap((domain) => {
      const own = cases.filter((one) => one.domain === domain);
      return ['', `## ${domain}`, '', closest(own), '', ...caseTable(own)];
    }),
  ];
}

function provenanceRows(cases: readonly VerificationCase[]): string[][] {
  return provenanceWords.flatMap((word) => {
    const own = cases.filter(({ source }) => source.provenance === word);
    return own.length === 0 ? [] : [totalRow(word, own)];
  });
}

function totalRow(name: string, cases: readonly VerificationCase[]): string[] {
  return [name, String(cases.length), String(cases.filter((one) => gapOf(one) === 0).length)];
}

/** The case that uses up most of its tolerance. */
function closest(cases: readonly VerificationCase[]): string {
  const share = (one: VerificationCase) => (gapOf(one) === 0 ? 0 : Math.abs(gapOf(one)) / one.tolerance);
  const worst = cases.reduce((most, one) => (share(one) > share(most) ? one : most));
  return share(worst) === 0
    ? 'Every case is exact.'
    : `Closest to its tolerance: \`${worst.id}\`, ${formatNumber(share(worst) * 100, 2)} % of it.`;
}

function caseTable(cases: readonly VerificationCase[]): string[] {
  const rows = cases.map((one) => {
    const { id, what, source, printed, unit, computed, tolerance, why } = one;
    const place = [source.document, source.edition, source.clause].filter((part) => part !== undefined).join(', ');
    const how = source.note?.startsWith(source.provenance)
      ? source.note
      : [source.provenance, source.note].filter((part) => part !== undefined).join(': ');
    return [
      `\`${id}\`: ${what}`,
      `${place} (${how})`,
      `${formatNumber(printed, 15)} ${unit}`,
      formatNumber(computed, 8),
      formatNumber(gapOf(one), 3),
      formatNumber(tolerance, 3),
      why,
    ];
  });
  return table(['Case', 'Source and place', 'Printed', 'Computed', 'Gap', 'Tolerance', 'Why'], rows);
}

/** Below a billionth of the figure a gap is the last digit of the arithmetic. */
function gapOf({ computed, printed }: VerificationCase): number {
  const gap = computed - printed;
  return Math.abs(gap) < 1e-9 * Math.abs(printed) ? 0 : gap;
}

function fromMemoryPage(tables: readonly Table[]): string[] {
  return [
    '# Figures from memory',
    '',
    GENERATED,
    '',
    'Every figure and rule of the library that was recalled and not read in its document or in a page quoting it. Results',
    'that rest on one say `memory` in `sources` or in the part. Each wants one look at the document named; then the table',
    'in `reference-tables` gets the word `read`. Until then, treat an answer that rests on one as unconfirmed.',
    '',
    '## Figures by table',
    '',
    'Cells that hold a figure or a fact, by how it came to be known.',
    '',
    ...table(['Table', ...provenanceWords, 'all'], [...tables.map(countRow), countsOf('all', tables.flatMap(cellsOf))]),
    ...tables.flatMap(memorySection),
    '',
    '## Rules and figures in the code',
    '',
    ...table(
      ['From memory', 'File in src', 'What would confirm it'],
      RULES_FROM_MEMORY.map(([what, file, confirm]) => [what, `[${file}](../src/${file})`, confirm]),
    ),
  ];
}

interface Cell {
  readonly row: Row;
  readonly column: string;
  readonly provenance: string;
}

/** The filled value cells of a table, each with how it is known: by its column, else by its row, else by its table. */
function cellsOf({ source, header, rows }: Table): Cell[] {
  const grounds = header.filter(isProvenanceColumn);
  const values = header.filter(
    (name) => !source.key.includes(name) && !isProvenanceColumn(name) && source.columns[name]?.prose !== true,
  );
  // A column `wll_kg_provenance` is about the columns that start with `wll_kg`; the one that matches none, about the rest.
  const prefix = (ground: string) => ground.replace(/_?provenance$/, '');
  const matches = (ground: string, name: string) => prefix(ground) !== '' && name.startsWith(prefix(ground));
  const rest = grounds.find((ground) => !values.some((name) => matches(ground, name)));
  const groundOf = (name: string) =>
    grounds.filter((ground) => matches(ground, name)).sort((a, b) => b.length - a.length)[0] ?? rest;
  return rows.flatMap((row) =>
    values.flatMap((column) => {
      if (row[column] === '') return [];
      const ofRow = groundOf(column);
      const provenance = source.columns[column]?.provenance ?? ((ofRow && row[ofRow]) || source.provenance);
      return [{ row, column, provenance }];
    }),
  );
}

function countRow(one: Table): string[] {
  return countsOf(`\`${one.source.id}\``, cellsOf(one));
}

function countsOf(name: string, cells: readonly Cell[]): string[] {
  const counts = provenanceWords.map((word) => cells.filter(({ provenance }) => provenance === word).length);
  return [name, ...counts.map((count) => (count === 0 ? '' : String(count))), String(cells.length)];
}

function memorySection(one: Table): string[] {
  const { source } = one;
  const cells = cellsOf(one).filter(({ provenance }) => provenance === 'memory');
  if (cells.length === 0) return [];
  const columns = one.header.filter((name) => cells.some(({ column }) => column === name));
  const rows = one.rows.flatMap((row) => {
    const own = cells.filter((cell) => cell.row === row);
    if (own.length === 0) return [];
    const figures = columns.map((name) => (own.some(({ column }) => column === name) ? row[name]! : ''));
    return [[...source.key.map((name) => row[name]!), ...figures]];
  });
  const remarks = source.corrections.filter((text) => /\bmemory\b/.test(text));
  return [
    '',
    `## ${source.title}`,
    '',
    `Table \`${source.id}\`. Confirm against: ${source.document}, ${source.edition}, ${source.clause}.`,
    '',
    ...remarks.flatMap((text) => [`- ${text}`]),
    ...(remarks.length === 0 ? [] : ['']),
    ...table([...source.key, ...columns], rows),
  ];
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]) => `| ${cells.map((cell) => cell.replace(/\|/g, '\\|')).join(' | ')} |`;
  return [line(head), `|${' --- |'.repeat(head.length)}`, ...rows.map(line)];
}
