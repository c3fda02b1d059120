import { describe, expect, test } from 'vitest';
import { VERBS } from '../../src/cli/verbs.ts';
import { counterpose } from './command.ts';

describe('help', () => {
  test.each(['--help', '-h'])('%s lists every verb', async (option) => {
    const { status, stdout, stderr } = await counterpose([option]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    for (const { name } of VERBS) expect(stdout).toMatch(new RegExp(`^ {2}${name} +\\S`, 'm'));
  });

  test.each(VERBS.map(({ name }) => name))('%s has help of its own', async (verb) => {
    const { status, stdout, stderr } = await counterpose([verb, '--help']);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout.startsWith(`Usage: counterpose ${verb} `)).toBe(true);
  });
});

describe('usage', () => {
  test('no verb', async () => {
    const { status, stdout, stderr } = await counterpose([]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^counterpose: no verb is given\nUsage: counterpose VERB/);
  });

  test.each(['salve', '__proto__', 'constructor', 'solve.ts', '../main', '--salve', ''])(
    'no verb is called "%s"',
    async (verb) => {
      const { status, stdout, stderr } = await counterpose([verb]);
      expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
      expect(stderr.startsWith(`counterpose: there is no verb "${verb}"\nUsage: counterpose VERB`)).toBe(true);
    },
  );

  test('an escape sequence in a verb is not sent to the terminal', async () => {
    const { stderr } = await counterpose(['\u001b[31msolve']);
    expect(stderr).toContain('"\\u001b[31msolve"');
  });

  test.each(VERBS.map(({ name }) => name))('%s refuses an option it does not know', async (verb) => {
    const { status, stdout, stderr } = await counterpose([verb, '--sideways']);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(new RegExp(`^counterpose: ${verb}: .*--sideways.*\nUsage: counterpose ${verb} `));
  });
});
