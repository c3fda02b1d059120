import { expect, test, vi } from 'vitest';
import { smallExercise } from '../grader/audit/fitting.ts';
import { counterpose } from './command.ts';
import { contentFolder } from './contentFolder.ts';

vi.setConfig({ testTimeout: 120_000 });

const { requirements } = smallExercise();
const content = contentFolder({
  'sound-vane': {},
  'lacking-vane': { requirements: requirements.filter(({ id }) => id !== 'given') },
  'wide-vane': { requirements: requirements.map((one) => (one.id === 'points' ? { ...one, allowed: 100 } : one)) },
  'short-vane': { references: smallExercise().references.slice(0, 1), graded: true },
});

const COUNTS = [
  'references',
  'rightTried',
  'rightRefused',
  'wrongTried',
  'wrongPassed',
  'undecided',
  'diagnosed',
  'diagnosedRight',
  'counterposes',
  'counterposesSimple',
];

test('audit --json gives the edition, the counts of each exercise and their sum, and nothing else', async () => {
  const { status, stdout, stderr } = await counterpose([
    'audit',
    'sound-vane',
    'wide-vane',
    '--json',
    '--content',
    content,
  ]);
  const told = JSON.parse(stdout);
  expect(Object.keys(told)).toEqual(['edition', 'exercises', 'totals']);
  expect(told.edition).toMatch(/^[0-9a-f]{16}$/);
  expect(told.exercises.map(({ id }: { id: string }) => id)).toEqual(['sound-vane', 'wide-vane']);
  for (const row of told.exercises) expect(Object.keys(row).sort()).toEqual(['id', ...COUNTS].sort());
  expect(Object.keys(told.totals).sort()).toEqual([...COUNTS].sort());
  for (const count of COUNTS) {
    const sum = told.exercises.reduce((all: number, row: Record<string, number>) => all + row[count]!, 0);
    expect(told.totals[count]).toBe(sum);
  }
  expect(told.exercises[0]).toMatchObject({ references: 2, rightRefused: 0, wrongPassed: 0, undecided: 0 });
  expect(status).toBe(1);
  expect(stderr).toMatch(/wide-vane .*the judge finds nothing wrong with the wrong turn half/);
  expect(stderr).not.toMatch(/variants audited/);
});

test('audit exits with 0 where nothing is found, and says the counts in words', async () => {
  const { status, stdout } = await counterpose(['audit', 'sound-vane', '--content', content]);
  expect(stdout).toMatch(/^sound-vane: \d+ right rigs, 0 refused; \d+ wrong ones, 0 passed; 0 undecided/m);
  expect(status).toBe(0);
});

test('audit exits with 1 where a requirement is lacking', async () => {
  const { status, stdout } = await counterpose(['audit', 'lacking-vane', '--full', '--content', content]);
  expect(stdout).toMatch(/looks different and breaks nothing/);
  expect(status).toBe(1);
});

test('audit of what is not there is refused', async () => {
  const { status, stderr } = await counterpose(['audit', 'no-such-vane', '--content', content]);
  expect(status).toBe(2);
  expect(stderr).toMatch(/there is no exercise "no-such-vane"/);
});

test('check-content fails by what an audit finds, says so in words, and passes what is sound', async () => {
  const all = ['sound-vane', 'wide-vane', 'short-vane'];
  const { status, stdout } = await counterpose(['check-content', ...all, '--content', content]);
  expect(status).toBe(1);
  expect(stdout).toMatch(/^sound-vane: sound$/m);
  expect(stdout).toMatch(/^wide-vane .*wrong turn half/m);
  expect(stdout).toMatch(/^short-vane: 1 references, expected at least 3$/m);
  expect(stdout).toMatch(/^short-vane: 1 structures, expected at least 4$/m);
  const sound = await counterpose(['check-content', 'sound-vane', '--content', content]);
  expect(sound.status).toBe(0);
});
