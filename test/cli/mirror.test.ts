import { describe, expect, test } from 'vitest';
import { copyAcross, reflect } from '../../src/solver/index.ts';
import { counterpose } from './command.ts';
import { temporaryFolder } from './folder.ts';
import { twinVanes } from './twinVanes.ts';

const folder = temporaryFolder();
const vanes = folder.put('twin_vanes.json', twinVanes);

describe('mirror', () => {
  test('prints the rig reflected', async () => {
    const { status, stdout, stderr } = await counterpose(['mirror', vanes]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const rig = JSON.parse(stdout);
    expect(rig).toEqual(JSON.parse(JSON.stringify(reflect(twinVanes))));
    expect(rig.bones[3]).toMatchObject({ name: 'vane_right', rest: { base: [-0.03, 1.5, 0] } });
  });

  test('twice gives the rig as it was', async () => {
    const once = await counterpose(['mirror', vanes]);
    const twice = await counterpose(['mirror', folder.put('once.json', once.stdout)]);
    expect(JSON.parse(twice.stdout)).toEqual(twinVanes);
  });

  test.each(['left', 'right'] as const)('--from %s copies that side across', async (side) => {
    const { status, stdout } = await counterpose(['mirror', vanes, '--from', side]);
    expect(status).toBe(0);
    const rig = JSON.parse(stdout);
    const copied = copyAcross(twinVanes, side);
    expect(rig).toEqual(copied.ok && JSON.parse(JSON.stringify(copied.value)));
    expect(await counterpose(['solve', folder.put(`from_${side}.json`, rig)])).toMatchObject({ status: 0 });
  });

  test('refuses a name that would grow too long', async () => {
    const name = `${'w'.repeat(59)}_left`;
    const rig = folder.put('long_name.json', JSON.stringify(twinVanes).replaceAll('"wind_left"', `"${name}"`));
    expect(await counterpose(['solve', rig])).toMatchObject({ status: 0 });
    const { status, stdout, stderr } = await counterpose(['mirror', rig]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(
      /^counterpose: .+\/long_name\.json, mirrored, at \/bones\/2\/name: found .+, expected .+\n$/,
    );
  });

  test('refuses what is no rig, with the place', async () => {
    const { status, stdout, stderr } = await counterpose([
      'mirror',
      folder.put('later.json', { ...twinVanes, version: 2 }),
    ]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^counterpose: .+\/later\.json, at \/version: found 2, expected .+\n$/);
  });

  test.each([
    [[], 'one rig is expected, 0 are given'],
    [[vanes, '--from', 'middle'], '--from takes left or right, not "middle"'],
  ])('refuses %j', async (args, message) => {
    const { status, stdout, stderr } = await counterpose(['mirror', ...args]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.startsWith(`counterpose: mirror: ${message}\nUsage: counterpose mirror `)).toBe(true);
  });
});
