import type { Block, Field } from './sheet.js';

const WIDTH = 100;
const GAP = 2;
/** A column before the last that is wider than this gives way first. */
const COMFORTABLE = 24;

/** A sheet as plain text of at most 100 columns. */
export function toText(blocks: readonly Block[]): string {
  const parts = blocks.map((block, index) => {
    const joined = index === 0 || (blocks[index - 1]?.kind === 'heading' && block.kind !== 'heading');
    return (joined ? '' : '\n') + linesOf(block).join('\n');
  });
  return parts.join('\n');
}

function linesOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading': {
      const lines = wrap(block.text, WIDTH);
      const line = block.level === 1 ? '=' : block.level === 2 ? '-' : '';
      return line === '' ? lines : [...lines, line.repeat(columns(lines))];
    }
    case 'paragraph':
      return wrap(block.text, WIDTH);
    case 'fields':
      return fieldLines(block.fields, GAP);
    case 'list':
      return block.items.flatMap((item, index) => hang(block.numbered ? `  ${index + 1}. ` : '  - ', item));
    case 'table':
      return tableLines([block.head, ...block.rows]);
  }
}

function fieldLines(fields: readonly Field[], indent: number): string[] {
  return fields.flatMap(({ name, text = '', fields: inner }) => {
    const first = ' '.repeat(indent);
    if (inner !== undefined) return [...hang(first, `${name}:`), ...fieldLines(inner, indent + GAP)];
    return text.includes('\n')
      ? [...hang(first, `${name}:`), ...text.split('\n').flatMap((line) => hang(`${first}  - `, line))]
      : hang(first, `${name}: ${text}`, GAP);
  });
}

/** A text after a marker, its further lines below its first. */
function hang(marker: string, text: string, deeper = 0): string[] {
  const indent = ' '.repeat(marker.length + deeper);
  return wrap(text, WIDTH - indent.length).map((line, index) => (index === 0 ? marker : indent) + line);
}

/** Columns as wide as their texts; while that is too wide, wide ones before the last give way, then the widest. */
function tableLines(rows: readonly (readonly string[])[]): string[] {
  const head = rows[0] ?? [];
  const widths = head.map((_, column) =>
    rows.reduce((most, row) => Math.max(most, columns(wrap(row[column] ?? '', WIDTH))), 1),
  );
  while (widths.reduce((sum, width) => sum + width + GAP, 0) > WIDTH) {
    const before = widths.slice(0, -1);
    const wide = Math.max(...before) > COMFORTABLE ? before : widths;
    widths[wide.indexOf(Math.max(...wide))]! -= 1;
  }
  const lines = rows.map((row) => {
    const cells = row.map((cell, column) => wrap(cell, widths[column] ?? WIDTH));
    const height = cells.reduce((most, cell) => Math.max(most, cell.length), 1);
    return Array.from({ length: height }, (_, line) =>
      `  ${cells.map((cell, column) => (cell[line] ?? '').padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd(),
    );
  });
  const rule = `  ${widths.map((width) => '-'.repeat(width)).join('  ')}`;
  return [...(lines[0] ?? []), rule, ...lines.slice(1).flat()];
}

/** Lines of at most `width` signs, broken at spaces; a longer word is broken inside. */
function wrap(text: string, width: number): string[] {
  const piece = new RegExp(` *(.{1,${width}}(?= |$)|.{1,${width}})`, 'gu');
  return text
    .split('\n')
    .flatMap((line) => (line === '' ? [''] : Array.from(line.matchAll(piece), ([, words = '']) => words)));
}

function columns(lines: readonly string[]): number {
  return lines.reduce((most, line) => Math.max(most, [...line].length), 0);
}
