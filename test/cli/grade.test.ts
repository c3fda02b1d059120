import { once } from 'node:events';
import { expect, test, vi } from 'vitest';
import { editRig } from '../../src/grader/exercise/editRig.ts';
import type { RigEdit } from '../../src/grader/index.ts';
import type { Rig } from '../../src/solver/index.ts';
import { smallExercise } from '../grader/audit/fitting.ts';
import { counterpose, start } from './command.ts';
import { contentFolder } from './contentFolder.ts';
import { temporaryFolder } from './folder.ts';

vi.setConfig({ testTimeout: 240_000 });

const content = contentFolder({ 'small-vane': {} });
const folder = temporaryFolder();
const small = smallExercise();
const head = { format: 'counterpose/answer', version: 1, exercise: 'small-vane', edition: 'e', seed: 0 };
const right = { ...head, rig: editRig(small.start, small.references[0]!.edit as RigEdit) };
const halfway = { ...head, rig: editRig(right.rig as Rig, { bones: { vane: { links: { watch: { weight: 0.5 } } } } }) };
const foreign = { ...right, exercise: 'no-such-vane' };

interface Line {
  answer: number | string;
  mark?: number;
  unusable?: { place: string; found: string; expected: string };
}
const linesOf = (stdout: string) =>
  stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Line);

/** Each kind of line, over and over. */
const KINDS = [JSON.stringify(right), JSON.stringify(halfway), '{ "format":', JSON.stringify(foreign), '[]'];

test('one object a line, in order; what cannot be used stops nothing and ends in 2', async () => {
  const lines = Array.from({ length: 60 }, (_, n) => KINDS[n % KINDS.length]!);
  const { status, stdout, stderr } = await counterpose(['grade', '-', '--json', '--content', content], {
    input: `${lines.join('\n')}\n`,
  });
  expect(status).toBe(2);
  expect(stderr).toBe('');
  const told = linesOf(stdout);
  expect(told.map(({ answer }) => answer)).toEqual(lines.map((_, n) => n + 1));
  told.forEach((line, n) => {
    const kind = n % KINDS.length;
    if (kind === 0) expect(line).toMatchObject({ mark: 1, passed: true, flags: ['edition-differs'] });
    else if (kind === 1) expect(line).toMatchObject({ passed: false });
    else expect(Object.keys(line.unusable!).sort()).toEqual(['expected', 'found', 'place']);
  });
  expect(told[3]!.unusable).toMatchObject({ place: '/exercise' });
});

test('files on threads come out as one by one on none, in the order they are named', async () => {
  const paths = Array.from({ length: 12 }, (_, n) => folder.put(`${n}.json`, KINDS[n % KINDS.length]!));
  const many = await counterpose(['grade', ...paths, '--json', '--content', content]);
  expect(many.status).toBe(2);
  expect(linesOf(many.stdout).map(({ answer }) => answer)).toEqual(paths);
  const few = await Promise.all(
    [paths.slice(0, 6), paths.slice(6)].map((some) => counterpose(['grade', ...some, '--json', '--content', content])),
  );
  expect(many.stdout).toBe(few.map(({ stdout }) => stdout).join(''));
});

test('all usable ends in 0, whatever the marks', async () => {
  const input = `${JSON.stringify(halfway)}\n${JSON.stringify(right)}\n`;
  const { status, stdout } = await counterpose(['grade', '-', '--json', '--content', content], { input });
  expect(status).toBe(0);
  const [first, second] = linesOf(stdout);
  expect(first!.mark).toBeLessThan(second!.mark!);
});

test('memory is bounded: 300 MB of answers go through a heap of 64 MB', async () => {
  const args = ['grade', '-', '--json', '--content', content];
  const child = start(args, { nodeArgs: ['--max-old-space-size=64'] });
  const padding = 'x'.repeat(200_000);
  let lines = 0;
  child.stdout.on('data', (chunk: Buffer) => {
    for (const byte of chunk) if (byte === 0x0a) lines++;
  });
  child.stderr.resume();
  const ended = once(child, 'close');
  for (let n = 0; n < 1500; n++) {
    const answer = n % 30 === 0 ? right : foreign;
    if (!child.stdin.write(`${JSON.stringify({ ...answer, steps: padding })}\n`)) await once(child.stdin, 'drain');
  }
  child.stdin.end();
  const [status] = await ended;
  expect(status).toBe(2);
  expect(lines).toBe(1500);
});
