import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { readAssignmentText } from '../../src/delivery/assignment/readAssignment.ts';
import { answerOf, PLAN } from '../delivery/support.ts';
import { counterpose } from './command.ts';
import { temporaryFolder } from './folder.ts';

vi.setConfig({ testTimeout: 120_000 });
const folder = temporaryFolder();
const fileOf = (name: string) => join(folder.path, name);

test('a key, a plan, a signed assignment, and answers graded by it', async () => {
  const key = await counterpose(['key', '--out', fileOf('key.json')]);
  expect(key).toMatchObject({ status: 0, stderr: '' });
  expect(await counterpose(['key', '--out', fileOf('key.json')])).toMatchObject({ status: 2 });

  const plan = folder.put('plan.json', PLAN);
  const made = await counterpose(['assignment', plan, '--key', fileOf('key.json'), '--out', fileOf('a.json')]);
  expect(made).toMatchObject({ status: 0, stderr: '' });
  const read = readAssignmentText(readFileSync(fileOf('a.json'), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  expect(made.stdout).toContain(key.stdout.split(': ')[1]!.trim());

  const { assignment } = read.value;
  const own = folder.put('own.json', answerOf(assignment, 'otter-7', 'one-vane'));
  const copied = folder.put('copied.json', { ...answerOf(assignment, 'toad-2', 'one-vane'), learner: 'otter-7' });
  const stray = folder.put('stray.json', { ...answerOf(assignment, 'otter-7', 'one-vane'), exercise: 'let-go' });
  const graded = await counterpose(['grade', own, copied, stray, '--assignment', fileOf('a.json'), '--json']);
  expect(graded.status).toBe(2);
  const lines = graded.stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(lines[0]).toMatchObject({ answer: own, mark: 1, passed: true, flags: [] });
  expect(lines[1]).toMatchObject({ answer: copied, mark: 1, flags: ['seed-differs'] });
  expect(lines[2].unusable).toMatchObject({ place: '/exercise', found: '"let-go"' });
});

test('an assignment that nobody signed is graded with a flag; one that was changed is not used at all', async () => {
  const plan = folder.put('plan2.json', PLAN);
  expect(await counterpose(['assignment', plan, '--out', fileOf('plain.json')])).toMatchObject({ status: 0 });
  const plain = readFileSync(fileOf('plain.json'), 'utf8');
  const read = readAssignmentText(plain);
  if (!read.ok) throw new Error(JSON.stringify(read.refusal));
  const own = JSON.stringify(answerOf(read.value.assignment, 'otter-7', 'one-vane'));
  const args = ['grade', '-', '--json', '--assignment'];
  const graded = await counterpose([...args, fileOf('plain.json')], { input: `${own}\n` });
  expect(JSON.parse(graded.stdout)).toMatchObject({ answer: 1, mark: 1, flags: ['unsigned'] });

  const changed = folder.put('changed.json', plain.replace('"allowed": ', '"allowed": 9'));
  const refused = await counterpose([...args, changed], { input: `${own}\n` });
  expect(refused.status).toBe(2);
  expect(refused.stderr).toContain('/carried/');
  expect(await counterpose([...args, fileOf('none.json')], { input: '' })).toMatchObject({ status: 2 });
});

test('a plan with a slip is refused at its place, and nothing is written', async () => {
  const plan = folder.put('slip.json', { ...PLAN, exercises: [{ id: 'one-vain', weight: 1 }] });
  const made = await counterpose(['assignment', plan, '--out', fileOf('never.json')]);
  expect(made.status).toBe(2);
  expect(made.stderr).toContain('slip.json, at /exercises/0/id: found "one-vain"');
  expect(existsSync(fileOf('never.json'))).toBe(false);
});
