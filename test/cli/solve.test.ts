import { Buffer } from 'node:buffer';
import { describe, expect, test } from 'vitest';
import type { Pose, Rig } from '../../src/solver/index.ts';
import { oracleSolve } from '../oracle/solve.ts';
import { counterpose } from './command.ts';
import { temporaryFolder } from './folder.ts';
import { circlingVanes, twinVanes } from './twinVanes.ts';

const folder = temporaryFolder();
const vanes = folder.put('twin_vanes.json', twinVanes);
const turned: Pose = { bones: { wind: { move: [0.2, 0.1, 0] } }, switches: { 'wind.together': 0.25 } };

/** The message of a run that was refused. */
async function refusalOf(...args: string[]): Promise<string> {
  const { status, stdout, stderr } = await counterpose(['solve', ...args]);
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
  return stderr;
}

describe('solve', () => {
  test('prints the rest pose where no pose is given', async () => {
    const { status, stdout, stderr } = await counterpose(['solve', vanes]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout.endsWith('}\n')).toBe(true);
    const { bones, weights, flags } = JSON.parse(stdout);
    expect(Object.keys(bones)).toEqual(twinVanes.bones.map(({ name }) => name));
    expect(bones.vane_left.matrix).toEqual([1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0.03, 1.5, 0, 1]);
    expect(weights).toEqual({ 'vane_left.watch': 1, 'vane_right.watch': 1 });
    expect(flags).toEqual([]);
  });

  test('says in a pose what the rig format says', async () => {
    const pose = folder.put('turned.json', turned);
    const { status, stdout } = await counterpose(['solve', vanes, '--pose', pose]);
    expect(status).toBe(0);
    const result = JSON.parse(stdout);
    const expected = oracleSolve(twinVanes, turned);
    expect(result.weights).toEqual({ 'vane_left.watch': 0.75, 'vane_right.watch': 1 });
    for (const [name, { matrix }] of Object.entries(expected.bones)) {
      const off = matrix.map((value, index) => Math.abs(value - result.bones[name].matrix[index]));
      expect(Math.max(...off), name).toBeLessThan(1e-12);
    }
  });

  test('prints numbers whole', async () => {
    const third = { bones: { post: { move: [1 / 3, 1e-7, 123456789.12345679] } } };
    const { stdout } = await counterpose(['solve', vanes, '--pose', folder.put('third.json', third)]);
    expect(JSON.parse(stdout).bones.post.matrix.slice(12)).toEqual([1 / 3, 1e-7, 123456789.12345679, 1]);
  });

  test('raises flags', async () => {
    const pose = folder.put('on_the_wind.json', { bones: { wind_left: { move: [0, 0, -0.6] } } });
    const { status, stdout } = await counterpose(['solve', vanes, '--pose', pose]);
    expect(status).toBe(0);
    expect(JSON.parse(stdout).flags).toEqual([{ flag: 'aim-undefined', bone: 'vane_left', link: 'watch' }]);
  });

  test('takes names that JavaScript objects have their own use for', async () => {
    const names: [string, string][] = [
      ['post', '__proto__'],
      ['wind_left', 'constructor'],
      ['vane_left', '10'],
      ['watch', '__proto__'],
      ['together', 'toString'],
    ];
    let text = JSON.stringify(twinVanes);
    for (const [from, to] of names) text = text.replaceAll(`"${from}"`, `"${to}"`);
    const rig = folder.put('odd_names.json', text.replaceAll('wind.together', 'wind.toString'));
    const pose = folder.put(
      'odd_pose.json',
      '{"bones":{"__proto__":{"move":[1,2,3]}},"switches":{"wind.toString":0.5}}',
    );
    const { status, stdout, stderr } = await counterpose(['solve', rig, '--pose', pose]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const { bones, weights } = JSON.parse(stdout);
    expect(Object.getOwnPropertyDescriptor(bones, '__proto__')?.value.matrix.slice(12)).toEqual([1, 2, 3, 1]);
    expect(weights['10.__proto__']).toBe(0.5);
  });

  test('prints nothing that is no number', async () => {
    const size = { size: [1e300, 1e300, 1e300] };
    const pose = folder.put('vast.json', { bones: { post: size, vane_left: size } });
    const { status, stdout, stderr } = await counterpose(['solve', vanes, '--pose', pose]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toBe(
      `counterpose: ${pose}: found a pose that takes vane_left beyond the largest number, expected one that can be worked out\n`,
    );
  });
});

describe('solve refuses', () => {
  test('a cycle, and walks it', async () => {
    const rig = folder.put('circling.json', circlingVanes);
    expect(await refusalOf(rig)).toMatch(
      /\/circling\.json: found a cycle: vane_left\.watch → wind_left → vane_left → vane_left\.watch, expected .+\n$/,
    );
  });

  test('what is not there, or is a folder', async () => {
    expect(await refusalOf('nowhere.json')).toBe(
      'counterpose: nowhere.json: found no such file, expected a JSON document in UTF-8\n',
    );
    expect(await refusalOf(folder.path)).toMatch(/: found a folder, expected a JSON document in UTF-8\n$/);
    expect(await refusalOf(`${vanes}/deeper.json`)).toMatch(/: found no such file, expected /);
    expect(await refusalOf('')).toMatch(/: found no such file, expected /);
  });

  test.runIf(process.getuid?.() !== 0)('what may not be read', async () => {
    const { chmodSync } = await import('node:fs');
    const rig = folder.put('locked.json', twinVanes);
    chmodSync(rig, 0);
    expect(await refusalOf(rig)).toMatch(/: found a file that may not be read, expected /);
  });

  test('a file of more than 1 MiB, however much more', async () => {
    const rig = folder.put('long.json', `${JSON.stringify(twinVanes)}${' '.repeat(1 << 20)}`);
    expect(await refusalOf(rig)).toMatch(/: found more than 1 MiB, expected /);
    expect(await refusalOf('/dev/zero')).toBe(
      'counterpose: /dev/zero: found more than 1 MiB, expected a JSON document in UTF-8, 1 MiB at most\n',
    );
  });

  test('what is not UTF-8, and a byte order mark', async () => {
    const text = JSON.stringify(twinVanes);
    expect(await refusalOf(folder.put('mark.json', `\ufeff${text}`))).toMatch(/: found a byte order mark, expected /);
    expect(await refusalOf(folder.put('wide.json', Buffer.from(text, 'utf16le')))).toMatch(/: found .+, expected /);
    expect(await refusalOf(folder.put('latin.json', Buffer.from(text.replace('Twin', 'Möwe'), 'latin1')))).toMatch(
      /: found bytes that are not UTF-8, expected /,
    );
  });

  test('a rig, with the place', async () => {
    const [post, ...rest] = twinVanes.bones;
    const flat: Rig = { ...twinVanes, bones: [{ ...post!, rest: { ...post!.rest, length: 0 } }, ...rest] };
    expect(await refusalOf(folder.put('flat.json', flat))).toMatch(
      /^counterpose: .+\/flat\.json, at \/bones\/0\/rest\/length: found 0, expected .+\n$/,
    );
    expect(await refusalOf(folder.put('prose.json', 'The vanes turn.'))).toMatch(
      /^counterpose: .+: found .+, expected .+\n$/,
    );
    expect(await refusalOf(folder.put('empty.json', ''))).toMatch(/^counterpose: .+: found .+, expected .+\n$/);
  });

  test('a pose, with the place', async () => {
    const pose = folder.put('gale.json', { switches: { 'wind.together': 2 } });
    expect(await refusalOf(vanes, '--pose', pose)).toMatch(
      /^counterpose: .+\/gale\.json, at \/switches\/wind\.together: found 2, expected .+\n$/,
    );
  });

  test.each([
    [[], 'one rig is expected, 0 are given'],
    [[vanes, vanes], 'one rig is expected, 2 are given'],
    [[vanes, '--pose', 'a.json', '--pose', 'b.json'], '--pose is given twice'],
    [[vanes, '--pose', 'a.json', '--poses', '-'], '--pose and --poses exclude each other'],
    [[vanes, '--poses', 'a.json'], '--poses takes - only, for standard input'],
    [[vanes, '--pose'], "Option '--pose <value>' argument missing"],
  ])('%j', async (args, message) => {
    const stderr = await refusalOf(...args);
    expect(stderr.startsWith(`counterpose: solve: ${message}\nUsage: counterpose solve `)).toBe(true);
  });
});
