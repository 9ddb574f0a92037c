import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';

/** A sheet read back by code that knows the format and not the code that wrote it. */
export interface ReadSheet {
  /** Headings, list items, field lines and table cells, each as one line. */
  readonly texts: readonly string[];
  readonly tables: readonly (readonly (readonly string[])[])[];
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();

/** Reads the plain text: tables by the columns of their rule, everything else by joining hanging lines. */
export function readText(sheet: string): ReadSheet {
  const tables: string[][][] = [];
  const rest: string[] = [];
  const blocks = sheet.split(/\n\n/);
  for (const block of blocks) {
    const lines = block.split('\n');
    const at = lines.findIndex((line) => /^ {2}-+( {2}-+)*$/.test(line));
    if (at < 0) {
      rest.push(...lines.map((line) => (/^\s+(-|\d+\.) /.test(line) ? `\n${line}` : line)));
      continue;
    }
    const columns = [...(lines[at] as string).matchAll(/-+/g)].map(
      ({ index, 0: rule }) => [index, index + rule.length] as const,
    );
    const body = lines.slice(at + 1).map((line) => columns.map(([from, to]) => line.slice(from, to).trim()));
    tables.push([
      body.reduce(
        (joined, cells) => joined.map((text, c) => oneLine(`${text} ${cells[c]}`)),
        columns.map(() => ''),
      ),
    ]);
  }
  return { texts: [oneLine(rest.join('\n')), ...tables.flat(2)], tables };
}

/** Reads Markdown: our own subset, with its escapes undone. */
export function readMarkdown(sheet: string): ReadSheet {
  const plain = (text: string) =>
    oneLine(
      text
        .replace(/<br>/g, ' ')
        .replace(/\\([^A-Za-z0-9\s])/g, '$1')
        .replace(/&lt;/g, '<')
        .replace(/&gt;/g, '>')
        .replace(/&amp;/g, '&'),
    );
  const tables: string[][][] = [];
  const texts: string[] = [];
  for (const block of sheet.split('\n\n')) {
    if (block.startsWith('| ')) {
      const rows = block.split('\n').filter((_, index) => index !== 1);
      tables.push(rows.map((row) => row.slice(2, -2).split(' | ').map(plain)));
    } else texts.push(plain(block.replace(/\*\*(.*?):\*\*/g, '$1:')));
  }
  return { texts: [...texts, ...tables.flat(2)], tables };
}

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

/** The elements of a fragment in document order; a parse error fails the test. */
export function elementsOf(html: string): Element[] {
  const errors: string[] = [];
  const fragment = parseFragment(html, { onParseError: ({ code }) => errors.push(code) });
  if (errors.length > 0) throw new Error(`not valid HTML: ${errors.join(', ')}`);
  const found: Element[] = [];
  const visit = (node: Node): void => {
    if ('tagName' in node) found.push(node);
    if ('childNodes' in node) node.childNodes.forEach(visit);
  };
  visit(fragment);
  return found;
}

/** What a browser would show of a node, a break counting as a space. */
export function textOf(node: Node): string {
  if ('tagName' in node && node.tagName === 'br') return ' ';
  if ('childNodes' in node) return node.childNodes.map(textOf).join('');
  return 'value' in node ? node.value : '';
}

export function readHtml(sheet: string): ReadSheet {
  const elements = elementsOf(sheet);
  const within = (element: Element, tag: string) =>
    (element.childNodes ?? []).flatMap(function find(node: Node): Element[] {
      if (!('tagName' in node)) return [];
      return [...(node.tagName === tag ? [node] : []), ...node.childNodes.flatMap(find)];
    });
  const tables = elements
    .filter(({ tagName }) => tagName === 'table')
    .map((table) =>
      within(table, 'tr').map((row) =>
        [...within(row, 'th'), ...within(row, 'td')].map((cell) => oneLine(textOf(cell))),
      ),
    );
  const texts = elements
    .filter(({ tagName }) => /^(h\d|p|li|dt|dd|td|th)$/.test(tagName))
    .map((element) => oneLine(textOf(element)));
  return { texts, tables };
}
