/** A record of a CSV text. */
export interface CsvRecord {
  /** Its place among the records, from 1: the row that a spreadsheet shows. */
  readonly row: number;
  readonly cells: readonly string[];
  /** A quotation mark where none may stand, or one that is never closed. */
  readonly malformed: boolean;
}

/**
 * The records of a CSV text (RFC 4180): commas, lines that end in CR LF or LF, cells in quotation marks that may hold
 * commas, line ends and doubled marks. A mark of byte order before it is skipped. Linear in the length of the text.
 */
export function* recordsOf(text: string): Generator<CsvRecord> {
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  for (let row = 1; at < text.length; row++) {
    const cells: string[] = [];
    let malformed = false;
    for (;;) {
      let cell: string;
      if (text[at] === '"') {
        const quoted = quotedCell(text, at + 1);
        ({ cell, at } = quoted);
        if (!quoted.closed || !endsCell(text, at)) malformed = true;
        while (!endsCell(text, at)) at++;
      } else {
        const from = at;
        while (!endsCell(text, at)) at++;
        cell = text.slice(from, at);
        if (cell.includes('"')) malformed = true;
      }
      cells.push(cell);
      if (text[at] !== ',') break;
      at++;
    }
    at += text[at] === '\r' ? 2 : 1;
    yield { row, cells, malformed };
  }
}

/** True at a comma, a line end and the end of the text. */
function endsCell(text: string, at: number): boolean {
  const sign = text[at];
  return sign === undefined || sign === ',' || sign === '\n' || (sign === '\r' && text[at + 1] === '\n');
}

function quotedCell(text: string, from: number): { cell: string; at: number; closed: boolean } {
  const pieces: string[] = [];
  let at = from;
  for (;;) {
    const end = text.indexOf('"', at);
    if (end < 0) return { cell: pieces.join('"') + text.slice(at), at: text.length, closed: false };
    pieces.push(text.slice(at, end));
    if (text[end + 1] !== '"') return { cell: pieces.join('"'), at: end + 1, closed: true };
    at = end + 2;
  }
}
