import Papa from 'papaparse';

/** A table as it stood in a CSV file: a head and rows of texts, with how the file was written. */
export interface Table {
  head: readonly string[];
  rows: readonly (readonly string[])[];
  /** Comma, semicolon or tab. */
  delimiter: string;
  /** How its lines end. */
  newline: string;
  hasByteOrderMark: boolean;
  /** A quote that was opened and never closed has swallowed what came after it. */
  isBroken: boolean;
}

const BYTE_ORDER_MARK = '\ufeff';

/** Reads CSV (RFC 4180), also with semicolons or tabs, as spreadsheets of some languages write it. Rows may be short. */
export function readTable(text: string): Table {
  const hasByteOrderMark = text.startsWith(BYTE_ORDER_MARK);
  const plain = hasByteOrderMark ? text.slice(1) : text;
  const { data, meta, errors } = Papa.parse<string[]>(plain, { delimiter: delimiterOf(plain), skipEmptyLines: true });
  const [head = [], ...rows] = data;
  const isBroken = errors.some(({ type }) => type === 'Quotes');
  return { head, rows, delimiter: meta.delimiter, newline: meta.linebreak, hasByteOrderMark, isBroken };
}

/** The one of which the head has most, outside quotes. */
function delimiterOf(text: string): string {
  const head = text.split(/[\r\n]/, 1)[0]!.replace(/"[^"]*"/g, '');
  const counts = [',', ';', '\t'].map((delimiter) => ({ delimiter, count: head.split(delimiter).length }));
  return counts.reduce((most, one) => (one.count > most.count ? one : most)).delimiter;
}

/**
 * Cells that a spreadsheet would take for a formula: OWASP, "CSV Injection"; also behind what is not seen. A plain number
 * is none.
 */
const FORMULA = /^[\s\p{Cc}\p{Cf}]*[=+\-@\uff0b\uff0d\uff1d\uff20]|^[\t\r]/u;
const PLAIN_NUMBER = /^[+-]?\d+([.,]\d+)?$/;

/** A text that no spreadsheet takes for a formula: one that begins like one gets an apostrophe before it. */
export const guarded = (cell: string): string => (FORMULA.test(cell) && !PLAIN_NUMBER.test(cell) ? `'${cell}` : cell);

/** Writes a table of our own: every cell guarded, lines ended as RFC 4180 says. */
export function writeOwn(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const cells = [head, ...rows].map((row) => row.map((cell) => guarded(String(cell))));
  // All in quotes, since a spreadsheet of another language parts cells at semicolons.
  return `${Papa.unparse(cells, { newline: '\r\n', quotes: true })}\r\n`;
}

/** Writes a table that somebody brought as it was written, with their own cells as they were. */
export function writeAsBrought({ head, rows, delimiter, newline, hasByteOrderMark }: Table): string {
  const text = Papa.unparse([head, ...rows] as string[][], { delimiter, newline });
  return `${hasByteOrderMark ? BYTE_ORDER_MARK : ''}${text}${newline}`;
}
