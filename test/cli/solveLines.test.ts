import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { describe, expect, test } from 'vitest';
import { counterpose, start } from './command.ts';
import { temporaryFolder } from './folder.ts';
import { twinVanes } from './twinVanes.ts';

const folder = temporaryFolder();
const vanes = folder.put('twin_vanes.json', twinVanes);

const poseLine = (x: number) => `{"bones":{"post":{"move":[${x},0,0]}}}`;
const solveLines = (input: string | Uint8Array) => counterpose(['solve', vanes, '--poses', '-'], { input });

/** Where each result puts the base of the post along x. */
const places = (stdout: string): number[] =>
  stdout
    .split('\n')
    .slice(0, -1)
    .map((line) => JSON.parse(line).bones.post.matrix[12]);

describe('solve --poses -', () => {
  test('answers each line in order, as it answers one pose alone', async () => {
    const { status, stdout, stderr } = await solveLines(`${[3, 1, 2].map(poseLine).join('\n')}\n`);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(places(stdout)).toEqual([3, 1, 2]);
    const alone = await counterpose(['solve', vanes, '--pose', folder.put('one.json', poseLine(2))]);
    expect(stdout.endsWith(alone.stdout)).toBe(true);
  });

  test('answers nothing with nothing', async () => {
    expect(await solveLines('')).toEqual({ status: 0, signal: null, stdout: '', stderr: '' });
  });

  test('takes lines that end in CR LF, and a last one that ends in nothing', async () => {
    const { status, stdout } = await solveLines(`${poseLine(1)}\r\n${poseLine(2)}\r\n${poseLine(3)}`);
    expect(status).toBe(0);
    expect(places(stdout)).toEqual([1, 2, 3]);
  });

  test('takes the rest pose as {}', async () => {
    const { stdout } = await solveLines('{}\n');
    expect(stdout).toBe((await counterpose(['solve', vanes])).stdout);
  });

  test.each([
    ['no JSON', 'up'],
    ['half a pose', '{"bones":'],
    ['an empty line', ''],
    ['an unknown bone', '{"bones":{"kite":{}}}'],
    ['a switch out of range', '{"switches":{"wind.together":2}}'],
    ['two poses', '{} {}'],
    ['a byte order mark', `\ufeff{}`],
  ])('ends at %s, and what it answered before stands', async (_what, bad) => {
    const { status, stdout, stderr } = await solveLines(`${poseLine(1)}\n${poseLine(2)}\n${bad}\n${poseLine(4)}\n`);
    expect(status).toBe(2);
    expect(places(stdout)).toEqual([1, 2]);
    expect(stderr).toMatch(/^counterpose: standard input, line 3(, at [^:]+)?: found .+, expected .+\n$/);
  });

  test('ends at a bad line though more could come', async () => {
    const child = start(['solve', vanes, '--poses', '-']);
    child.stdin.write('up\n');
    const [status] = await once(child, 'close');
    expect(status).toBe(2);
  });

  test('answers each line before the next one comes', async () => {
    const child = start(['solve', vanes, '--poses', '-']);
    const answers = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
    for (const x of [1, 2, 3]) {
      child.stdin.write(`${poseLine(x)}\n`);
      expect(JSON.parse((await answers.next()).value!).bones.post.matrix[12]).toBe(x);
    }
    child.stdin.end();
    expect(await once(child, 'close')).toEqual([0, null]);
  });

  test('answers 10,000 poses, in order', { timeout: 60_000 }, async () => {
    const xs = Array.from({ length: 10_000 }, (_, index) => index / 8);
    const { status, stdout } = await solveLines(`${xs.map(poseLine).join('\n')}\n`);
    expect(status).toBe(0);
    expect(places(stdout)).toEqual(xs);
  });

  test.runIf(process.platform === 'linux')(
    'holds back while nobody reads, and keeps little',
    { timeout: 60_000 },
    async () => {
      const child = start(['solve', vanes, '--poses', '-']);
      const block = `${poseLine(1)}\n`.repeat(1000);
      let taken = 0;
      const send = async () => {
        while (taken < 200) {
          taken++;
          if (!child.stdin.write(block)) await once(child.stdin, 'drain');
        }
      };
      child.stdin.on('error', () => {});
      void send().catch(() => {});
      await new Promise((waited) => setTimeout(waited, 3000));
      const peakKb = Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))![1]);
      expect(taken, 'blocks of 1000 poses taken in while no answer was read').toBeLessThan(20);
      expect(peakKb).toBeLessThan(200_000);
      child.kill();
      await once(child, 'close');
    },
  );

  test('ends quietly when the reader has had enough', async () => {
    const child = start(['solve', vanes, '--poses', '-']);
    let stderr = '';
    child.stderr.on('data', (text) => {
      stderr += text;
    });
    child.stdin.on('error', () => {});
    child.stdin.end(`${poseLine(1)}\n`.repeat(10_000));
    await once(child.stdout, 'data');
    child.stdout.destroy();
    expect(await once(child, 'close')).toEqual([0, null]);
    expect(stderr).toBe('');
  });
});
