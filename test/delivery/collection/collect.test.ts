import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { collect } from '../../../src/delivery/collection/collect.ts';
import type { Collected, CollectedFile } from '../../../src/delivery/collection/collected.ts';
import { zipTimes } from '../../../src/delivery/collection/zipTimes.ts';

const file = (path: string, bytes: Uint8Array | string, collected: string | null = null): CollectedFile => ({
  path,
  collected,
  read: async () => (typeof bytes === 'string' ? strToU8(bytes) : bytes),
});

async function all(...files: CollectedFile[]): Promise<Collected[]> {
  const given: Collected[] = [];
  for await (const one of collect(files)) given.push(one);
  return given;
}
const foundIn = (one: Collected | undefined) => (one?.kind === 'stray' ? one.refusal.found : one?.kind);

describe('a folder', () => {
  test('gives its texts, in order, with their times', async () => {
    const given = await all(file('otter/a.json', '{"a":1}', '2026-12-04T10:00Z'), file('toad.txt', '\ufeff {"b":2}'));
    expect(given).toEqual([
      { kind: 'text', path: 'otter/a.json', collected: '2026-12-04T10:00Z', text: '{"a":1}' },
      { kind: 'text', path: 'toad.txt', collected: null, text: ' {"b":2}' },
    ]);
  });

  test('passes over strays, each with why', async () => {
    const given = await all(
      file('__MACOSX/a.json', '{}'),
      file('otter/.DS_Store', 'x'),
      file('notes.txt', 'Dear all'),
      file('picture.json', new Uint8Array([0xff, 0xd8, 0xff])),
      { path: 'gone.json', collected: null, read: async () => Promise.reject(new Error('it went away')) },
      { path: 'huge.json', collected: null, read: async () => null },
    );
    expect(given.map(foundIn)).toEqual([
      'a file of some system',
      'a file of some system',
      'a text that is no JSON object',
      'bytes that are not UTF-8',
      'a file that cannot be read: it went away',
      'a file of more than 16777216 bytes',
    ]);
  });
});

describe('a zip', () => {
  const zip = zipSync({
    'Otter, 7/work (1).json': [strToU8('{"a":1}'), { mtime: '2026-12-04T10:00:00' }],
    'b.txt': strToU8('x'),
  });

  test('is opened, with the times that it has for its files', async () => {
    const [first, second] = await all(file('class.zip', zip));
    expect(first).toMatchObject({ kind: 'text', path: 'class.zip/Otter, 7/work (1).json', text: '{"a":1}' });
    const there = new Date('2026-12-04T10:00:00').toISOString();
    expect(first?.kind === 'text' && first.collected).toBe(there);
    expect(foundIn(second)).toBe('a text that is no JSON object');
  });

  test('inside a zip is not opened', async () => {
    const [inner] = await all(file('class.zip', zipSync({ 'inner.zip': zip })));
    expect(foundIn(inner)).toBe('a zip inside a zip');
  });

  test('that would unpack to far more than it is breaks only its own file', async () => {
    const bomb = zipSync({ 'bomb.json': new Uint8Array(64 * 1024 * 1024), 'good.json': strToU8('{}') }, { level: 9 });
    expect(bomb.length).toBeLessThan(100_000);
    const before = process.memoryUsage().arrayBuffers;
    expect((await all(file('class.zip', bomb))).map(foundIn)).toEqual(['a file of more than 16777216 bytes', 'text']);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(48 * 1024 * 1024);
  });

  test('that lies about how large its file is gives no more than it says', async () => {
    const long = strToU8(JSON.stringify({ a: 'x'.repeat(8 * 1024 * 1024) }));
    const lying = zipSync({ 'bomb.json': long }, { level: 9 });
    const view = new DataView(lying.buffer);
    for (let at = 0; at + 30 < lying.length; at++) {
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 100, true);
      if (view.getUint32(at, true) === 0x04034b50) view.setUint32(at + 22, 100, true);
    }
    const [one] = await all(file('class.zip', lying));
    expect(one?.kind === 'text' && one.text.length).toBe(100);
  });

  test('that says it gets hundreds of times as large is refused whole', { timeout: 30_000 }, async () => {
    const entries = Object.fromEntries(
      Array.from({ length: 12 }, (_, n) => [`${n}.json`, new Uint8Array(15 * 1024 * 1024)]),
    );
    const given = await all(file('class.zip', zipSync(entries, { level: 9 })));
    expect(given.map(foundIn)).toEqual([expect.stringContaining('times as large')]);
  });

  test('whose names are not in UTF-8 has its times all the same', () => {
    const plain = zipSync({ 'Otter-A.json': [strToU8('{}'), { mtime: '2026-12-04T10:00:00' }] });
    const named = plain.map((byte, i) => (byte === 0x41 && plain[i - 1] === 0x2d ? 0x8e : byte));
    expect([...zipTimes(named).keys()]).toEqual(['Otter-\u008e.json']);
  });

  test('with names that climb out of it stays a list of names: nothing is written anywhere', async () => {
    const climbing = zipSync({ '../../etc/passwd.json': strToU8('{}'), '/root.json': strToU8('{}') });
    const paths = (await all(file('class.zip', climbing))).map(({ path }) => path);
    expect(paths).toEqual(['class.zip/../../etc/passwd.json', 'class.zip//root.json']);
  });

  test('cut short anywhere, or with any byte changed, throws nothing', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(zip.length - 1), fc.nat(255), fc.boolean(), async (at, byte, isCut) => {
        const broken = isCut ? zip.slice(0, at) : zip.with(at, byte);
        for (const one of await all(file('class.zip', broken))) expect(['text', 'stray']).toContain(one.kind);
        zipTimes(broken);
      }),
      { numRuns: 400, seed: 11 },
    );
  });
});
