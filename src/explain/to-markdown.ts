import type { Block, Field } from './sheet.js';

/** A sheet as Markdown with tables. */
export function toMarkdown(blocks: readonly Block[]): string {
  return blocks.map(markdownOf).join('\n\n');
}

function markdownOf(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `${'#'.repeat(Math.min(block.level, 6))} ${escaped(block.text)}`;
    case 'paragraph':
      return escaped(block.text);
    case 'fields':
      return fieldLines(block.fields, '').join('\n');
    case 'list':
      return block.items
        .map((item, index) => {
          const marker = block.numbered ? `${index + 1}. ` : '- ';
          return marker + escaped(item, `<br>\n${' '.repeat(marker.length)}`);
        })
        .join('\n');
    case 'table': {
      const row = (cells: readonly string[]) => `| ${cells.map((cell) => escaped(cell, '<br>')).join(' | ')} |`;
      return [row(block.head), `|${' --- |'.repeat(block.head.length)}`, ...block.rows.map(row)].join('\n');
    }
  }
}

function fieldLines(fields: readonly Field[], indent: string): string[] {
  return fields.flatMap(({ name, text = '', fields: inner = [] }) => [
    `${indent}- **${escaped(name)}:** ${escaped(text, '<br>')}`.trimEnd(),
    ...fieldLines(inner, `${indent}  `),
  ]);
}

/** Text that stays text: no markup, no table cell, no HTML, at the start of a line or inside it. */
function escaped(text: string, lineBreak = ' '): string {
  return text
    .split('\n')
    .map((line) =>
      line
        .replace(/[\\`*_[\]|~$]/g, '\\$&')
        .replace(/&/g, '&amp;')
        .replace(/</g, '&lt;')
        .replace(/>/g, '&gt;')
        .replace(/^(?:[-+#]|=+$)/, '\\$&')
        .replace(/^(\d+)([.)])(?= |$)/, '$1\\$2'),
    )
    .join(lineBreak);
}
