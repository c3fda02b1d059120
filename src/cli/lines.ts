import { Buffer } from 'node:buffer';
import type { Reading } from '../solver/document/refusal.ts';
import { DOCUMENT_BYTES_MAX, decodeDocument } from './files.ts';

export interface Line {
  /** From 1. */
  number: number;
  text: Reading<string>;
}

const EXPECTED = 'one JSON document in UTF-8';
const LINE_FEED = 0x0a;

/**
 * The lines of newline-delimited JSON, in batches: as many as have come in, so that a writer who waits for the
 * result of one line before sending the next gets it. Holds no more than one document and one chunk at a time.
 * Empty lines at the end are no lines; before another line, a run of them is one refusal at the first.
 */
export async function* batchesOfLines(chunks: AsyncIterable<Buffer>): AsyncGenerator<Line[]> {
  const splitter = new LineSplitter();
  for await (const chunk of chunks) yield splitter.split(chunk);
  yield splitter.end();
}

class LineSplitter {
  #number = 0;
  #emptySince: number | null = null;
  #pieces: Buffer[] = [];
  #length = 0;

  split(chunk: Buffer): Line[] {
    const lines: Line[] = [];
    let from = 0;
    for (let to = chunk.indexOf(LINE_FEED); to !== -1; to = chunk.indexOf(LINE_FEED, from)) {
      this.#keep(chunk.subarray(from, to));
      this.#endLine(lines);
      from = to + 1;
    }
    this.#keep(chunk.subarray(from));
    return lines;
  }

  end(): Line[] {
    const lines: Line[] = [];
    if (this.#length > 0) this.#endLine(lines);
    return lines;
  }

  /** Past the largest document the bytes are counted only. */
  #keep(piece: Buffer): void {
    this.#length += piece.length;
    if (this.#length - piece.length <= DOCUMENT_BYTES_MAX) this.#pieces.push(piece);
  }

  #endLine(lines: Line[]): void {
    this.#number += 1;
    const text = decodeDocument(Buffer.concat(this.#pieces), EXPECTED);
    this.#pieces = [];
    this.#length = 0;
    if (text.ok && text.value.trim() === '') {
      this.#emptySince ??= this.#number;
      return;
    }
    if (this.#emptySince !== null) lines.push(emptyLine(this.#emptySince));
    this.#emptySince = null;
    lines.push({ number: this.#number, text });
  }
}

function emptyLine(number: number): Line {
  return { number, text: { ok: false, refusal: { place: '', found: 'an empty line', expected: EXPECTED } } };
}
