import { convert as convertPackage } from 'convert';
import Qty from 'js-quantities';
import { unit as mathUnit } from 'mathjs';
import { Bench } from 'tinybench';
import { convert } from '../../src/quantities/convert.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import type { QuantityLike } from '../../src/quantities/quantity.js';
import type { BenchRow } from './run.js';

/**
 * Reading text and converting it to kg or m, against two libraries that do the same, and converting numbers
 * against one that converts numbers.
 *
 * No text comes twice in a pass. js-quantities and mathjs remember units they have parsed, never whole texts;
 * this library remembers nothing.
 */
const COUNT = 2000;
const UNITS_USED = ['lb', 'ft', 'kg', 'in', 'm', 'mm'] as const;

const cases = Array.from({ length: COUNT }, (_, index) => {
  const unit = UNITS_USED[index % UNITS_USED.length]!;
  const mass = unit === 'lb' || unit === 'kg';
  // distinct numbers of 1 to 6 digits, with none, one or two decimals
  const value = (((index + 1) * 7919) % 999_983) / [1, 10, 100][index % 3]!;
  const kind = mass ? ('mass' as const) : ('length' as const);
  const to = mass ? ('kg' as const) : ('m' as const);
  return { text: `${value} ${unit}`, value, unit, kind, to, object: { value, unit } satisfies QuantityLike };
});

type Case = (typeof cases)[number];

const byText = {
  ours: ({ text, kind, to }: Case) => convert(parseQuantity(text, kind), to).value,
  'js-quantities': ({ text, to }: Case) => new Qty(text).to(to).scalar,
  mathjs: ({ text, to }: Case) => mathUnit(text).toNumber(to),
};
const byNumber = {
  ours: ({ object, to }: Case) => convert(object, to).value,
  convert: ({ value, unit, to }: Case) => convertPackage(value, unit as 'm').to(to as 'm'),
};

export async function run(): Promise<BenchRow[]> {
  if (new Set(cases.map(({ text }) => text)).size !== COUNT) throw new Error('the texts are not distinct');
  for (const each of cases) {
    const expected = byText.ours(each);
    for (const other of [...Object.values(byText), ...Object.values(byNumber)]) {
      if (!(Math.abs(other(each) - expected) <= 1e-12 * expected))
        throw new Error(`${each.text} differs: ${other(each)}, ${expected}`);
    }
  }

  const text = await operationsPerSecond(byText);
  const number = await operationsPerSecond(byNumber);
  return [
    { name: 'text to kg or m: this library', opsPerSecond: text.ours },
    row('text to kg or m: js-quantities', text['js-quantities'], text.ours, 20),
    row('text to kg or m: mathjs', text.mathjs, text.ours, 60),
    { name: 'number to kg or m: this library', opsPerSecond: number.ours },
    row('number to kg or m: convert', number.convert, number.ours, 0.5),
  ];
}

/** How many times as fast as `theirs` is `ours`. */
function row(name: string, theirs: number, ours: number, least: number): BenchRow {
  const ratio = ours / theirs;
  return { name, opsPerSecond: theirs, ratio, must: `>= ${least}x`, ok: ratio >= least };
}

/** Of each function, over all cases; from the least disturbed pass, as other work on the machine only ever slows one down. */
async function operationsPerSecond<Name extends string>(
  functions: Record<Name, (each: Case) => unknown>,
): Promise<Record<Name, number>> {
  const bench = new Bench({ time: 1000, warmupTime: 300 });
  let sink: unknown;
  for (const [name, call] of Object.entries(functions) as [Name, (each: Case) => unknown][]) {
    bench.add(name, () => {
      for (const each of cases) sink = call(each);
    });
  }
  await bench.run();
  void sink;
  const rates = bench.tasks.map(({ name, result }) => {
    if (result.state !== 'completed') throw new Error(`${name}: ${result.state}`);
    return [name, (COUNT * 1000) / result.latency.min];
  });
  return Object.fromEntries(rates);
}
