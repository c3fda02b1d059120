import { Buffer } from 'node:buffer';
import { describe, expect, test } from 'vitest';
import { DOCUMENT_BYTES_MAX } from '../../src/cli/files.ts';
import { batchesOfLines } from '../../src/cli/lines.ts';

async function* asChunks(chunks: readonly (string | Uint8Array)[]) {
  for (const chunk of chunks) yield Buffer.from(chunk as string);
}

/** Each line as "number: text", or as "number! found". */
async function linesOf(...chunks: (string | Uint8Array)[]): Promise<string[]> {
  const lines: string[] = [];
  for await (const batch of batchesOfLines(asChunks(chunks))) {
    lines.push(
      ...batch.map(({ number, text }) => (text.ok ? `${number}: ${text.value}` : `${number}! ${text.refusal.found}`)),
    );
  }
  return lines;
}

describe('lines', () => {
  test('end at line feeds, wherever the chunks end', async () => {
    expect(await linesOf('{"a"', ':1}\n{}', '\n', '{"b":2}\n')).toEqual(['1: {"a":1}', '2: {}', '3: {"b":2}']);
  });

  test('the last one needs no line feed', async () => {
    expect(await linesOf('{}\n{"b":2}')).toEqual(['1: {}', '2: {"b":2}']);
  });

  test('keep letters whole that a chunk cuts', async () => {
    const bytes = Buffer.from('"Möwe €"\n');
    const chunks = [...bytes].map((byte) => Uint8Array.of(byte));
    expect(await linesOf(...chunks)).toEqual(['1: "Möwe €"']);
  });

  test('keep a carriage return, which JSON passes over', async () => {
    expect(await linesOf('{}\r\n{}\r\n')).toEqual(['1: {}\r', '2: {}\r']);
  });

  test.each(['', '\n', '\r\n', '\n\n \n', '  '])('are none in %j', async (text) => {
    expect(await linesOf(text)).toEqual([]);
  });

  test('empty ones at the end are none', async () => {
    expect(await linesOf('{}\n\n\r\n')).toEqual(['1: {}']);
  });

  test('empty ones before another are refused at the first of them', async () => {
    expect(await linesOf('{}\n\n\n{}\n')).toEqual(['1: {}', '2! an empty line', '4: {}']);
  });

  test('refuse what is not UTF-8, and go on', async () => {
    expect(await linesOf(Uint8Array.of(0x22, 0xff, 0x22, 0x0a), '{}\n')).toEqual([
      '1! bytes that are not UTF-8',
      '2: {}',
    ]);
  });

  test('refuse a byte order mark', async () => {
    expect(await linesOf('\ufeff{}\n')).toEqual(['1! a byte order mark']);
  });

  test('may be as long as a document, and no longer', async () => {
    const longest = 'x'.repeat(DOCUMENT_BYTES_MAX);
    expect(await linesOf(`${longest}\n`)).toEqual([`1: ${longest}`]);
    expect(await linesOf(`${longest}x\n{}\n`)).toEqual(['1! more than 1 MiB', '2: {}']);
  });

  test('an endless one is not kept', async () => {
    const chunk = Buffer.alloc(1 << 20, 'x');
    async function* endless() {
      for (let sent = 0; sent < 512; sent++) yield chunk;
    }
    const before = process.memoryUsage().rss;
    let most = 0;
    async function* watched() {
      for await (const piece of endless()) {
        most = Math.max(most, process.memoryUsage().rss);
        yield piece;
      }
    }
    const found: string[] = [];
    for await (const batch of batchesOfLines(watched()))
      for (const { text } of batch) if (!text.ok) found.push(text.refusal.found);
    expect(found).toEqual(['more than 1 MiB']);
    expect(most - before).toBeLessThan(64 << 20);
  });
});
