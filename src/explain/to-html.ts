import type { Block, Field } from './sheet.js';

/** A sheet as a fragment of HTML that needs no style and no script. */
export function toHtml(blocks: readonly Block[]): string {
  return ['<section class="calculation-sheet">', ...blocks.map(htmlOf), '</section>'].join('\n');
}

function htmlOf(block: Block): string {
  switch (block.kind) {
    case 'heading': {
      const tag = `h${Math.min(block.level + 1, 6)}`;
      return element(tag, escaped(block.text));
    }
    case 'paragraph':
      return element('p', escaped(block.text));
    case 'fields':
      return fieldsHtml(block.fields);
    case 'list':
      return element(
        block.numbered ? 'ol' : 'ul',
        `${block.items.map((item) => `\n${element('li', escaped(item))}`).join('')}\n`,
      );
    case 'table': {
      const head = block.head.map((cell) => `<th scope="col">${escaped(cell)}</th>`).join('');
      const rows = block.rows.map((row) => `\n<tr>${row.map((cell) => element('td', escaped(cell))).join('')}</tr>`);
      return `<table>\n<thead><tr>${head}</tr></thead>\n<tbody>${rows.join('')}\n</tbody>\n</table>`;
    }
  }
}

function fieldsHtml(fields: readonly Field[]): string {
  const rows = fields.map(({ name, text = '', fields: inner }) => {
    const value = inner === undefined ? escaped(text) : `\n${fieldsHtml(inner)}\n`;
    return `\n${element('dt', escaped(name))}${element('dd', value)}`;
  });
  return element('dl', `${rows.join('')}\n`);
}

function element(tag: string, content: string): string {
  return `<${tag}>${content}</${tag}>`;
}

function escaped(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;')
    .replace(/\n/g, '<br>');
}
