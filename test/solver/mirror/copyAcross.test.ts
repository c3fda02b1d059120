import { describe, expect, test } from 'vitest';
import type { Bone, Driver, Rig, Side } from '../../../src/solver/index.ts';
import { copyAcross, reflect, sideOf, swapSide } from '../../../src/solver/index.ts';
import { seeded } from '../../support/random.ts';
import { randomRig } from '../../support/rigs.ts';
import { quay } from './quay.ts';

function copied(rig: Rig, from: Side = 'left'): Rig {
  const reading = copyAcross(rig, from);
  if (!reading.ok) throw new Error(JSON.stringify(reading.refusal));
  return reading.value;
}

function refused(rig: Rig, from: Side = 'left') {
  const reading = copyAcross(rig, from);
  if (reading.ok) throw new Error('not refused');
  return reading.refusal;
}

const namesOf = (items: readonly { name: string }[] | undefined) => items?.map(({ name }) => name);
const named = <T extends { name: string }>(items: readonly T[] | undefined, name: string): T =>
  items!.find((item) => item.name === name)!;

const bone = (name: string, more: Partial<Bone> = {}): Bone => ({
  name,
  parent: null,
  role: 'helper',
  rest: { base: [1, 0, 0], turn: [0, 0, 0, 1], length: 1 },
  ...more,
});
const lift = (name: string, target: string, channel: 'move.x' | 'move.y' = 'move.x'): Driver => ({
  name,
  inputs: [{ from: { gap: [{ bone: target }, { bone: 'mast' }] } }],
  map: {
    keys: [
      [0, 0],
      [1, 1],
    ],
  },
  output: { bone: target, channel },
});
const rigOf = (bones: readonly Bone[], drivers: readonly Driver[] = []): Rig => ({
  format: 'counterpose/rig',
  version: 1,
  bones: [bone('mast'), ...bones],
  drivers,
});

describe('copying the left vane across', () => {
  const rig = copied(quay);

  test('makes each left bone anew on the right, after its original', () => {
    expect(namesOf(rig.bones)).toEqual([
      'mast',
      'vane_left',
      'vane_right',
      'feather_left',
      'feather_right',
      'kite_left',
      'kite_right',
    ]);
  });

  test('leaves middle and left bones, the title and the mesh as they are', () => {
    for (const name of ['mast', 'vane_left', 'feather_left', 'kite_left']) {
      expect(named(rig.bones, name)).toEqual(named(quay.bones, name));
    }
    expect(rig.title).toBe(quay.title);
    expect(rig.mesh).toEqual(quay.mesh);
  });

  test('the copies are those of the reflected rig', () => {
    const whole = reflect(quay);
    for (const name of ['vane_right', 'feather_right', 'kite_right']) {
      expect(named(rig.bones, name)).toEqual(named(whole.bones, name));
    }
  });

  test('a driver without a side word becomes two', () => {
    const { name: _, ...letGo } = named(quay.drivers, 'let_go');
    expect(named(rig.drivers, 'let_go_left')).toEqual({ name: 'let_go_left', ...letGo });
    expect(named(rig.drivers, 'let_go_right')).toEqual({
      ...named(reflect(quay).drivers, 'let_go'),
      name: 'let_go_right',
    });
  });

  test('a driver with a side word is copied under the other; one that writes to a middle bone stays alone', () => {
    expect(namesOf(rig.drivers)).toEqual(['let_go_left', 'let_go_right', 'swing_left', 'swing_right', 'sway_left']);
    expect(named(rig.drivers, 'swing_right')).toEqual(named(reflect(quay).drivers, 'swing_right'));
    expect(named(rig.drivers, 'sway_left')).toEqual(named(quay.drivers, 'sway_left'));
  });

  test('twice is the same as once', () => {
    expect(copied(rig)).toEqual(rig);
  });

  test('from the right takes the mirror image', () => {
    const fromRight = copied(reflect(quay), 'right');
    const ordered = (items: readonly { name: string }[]) => [...items].sort((a, b) => (a.name < b.name ? -1 : 1));
    expect(namesOf(ordered(fromRight.bones))).toEqual(namesOf(ordered(rig.bones)));
    expect(named(fromRight.bones, 'vane_left')).toEqual(named(quay.bones, 'vane_left'));
    expect(namesOf(fromRight.drivers)).toEqual([
      'let_go_right',
      'let_go_left',
      'swing_right',
      'swing_left',
      'sway_right',
    ]);
  });

  test('from a side that does not exist changes nothing', () => {
    expect(copied(quay, 'right')).toEqual(quay);
  });
});

describe('what stands on the other side', () => {
  test('is replaced where it stands, by name; other bones there stay', () => {
    const rig = rigOf([
      bone('paw_right', { role: 'guide', rest: { base: [-9, 0, 0], turn: [0, 0, 0, 1], length: 2 } }),
      bone('hook_right', { parent: 'paw_right' }),
      bone('paw_left'),
    ]);
    const out = copied(rig);
    expect(namesOf(out.bones)).toEqual(['mast', 'paw_right', 'hook_right', 'paw_left']);
    expect(out.bones[1]).toEqual(bone('paw_right', { rest: { base: [-1, 0, 0], turn: [0, 0, 0, 1], length: 1 } }));
    expect(out.bones[2]).toEqual(rig.bones[2]);
  });

  test('loses links that the copied bone does not have', () => {
    const links = [{ name: 'ride', kind: 'follow', source: 'mast' }] as const;
    expect(copied(rigOf([bone('paw_left'), bone('paw_right', { links })])).bones[2]!.links).toBeUndefined();
  });

  test('drivers there are replaced where they stand, by name', () => {
    const rig = rigOf(
      [bone('paw_left'), bone('paw_right')],
      [lift('lift_right', 'paw_right'), lift('lift_left', 'paw_left')],
    );
    const out = copied(rig);
    expect(namesOf(out.drivers)).toEqual(['lift_right', 'lift_left']);
    expect(out.drivers![0]!.map.keys).toEqual([
      [0, 0],
      [1, -1],
    ]);
  });

  test('a driver there that is in the way of one becoming two is replaced', () => {
    const rig = rigOf(
      [bone('paw_left'), bone('paw_right')],
      [lift('lift', 'paw_left'), lift('lift_right', 'paw_right')],
    );
    expect(namesOf(copied(rig).drivers)).toEqual(['lift_left', 'lift_right']);
  });

  test('a driver there of another name and output stays', () => {
    const rig = rigOf(
      [bone('paw_left'), bone('paw_right')],
      [lift('lift_left', 'paw_left'), lift('drop', 'paw_right', 'move.y')],
    );
    expect(namesOf(copied(rig).drivers)).toEqual(['lift_left', 'lift_right', 'drop']);
  });

  test('references across the middle cross the other way', () => {
    const links = [{ name: 'ride', kind: 'follow', source: 'paw_right' }] as const;
    const out = copied(rigOf([bone('paw_left', { links }), bone('paw_right')]));
    expect(out.bones[2]!.links).toEqual([{ ...links[0], source: 'paw_left' }]);
  });

  test('drivers that write to a switch of a side bone count as writing to it', () => {
    const switches = [{ name: 'grip', min: 0, max: 1, default: 0 }];
    const driver = { ...lift('squeeze', 'paw_left'), output: { switch: 'paw_left.grip' } };
    const out = copied(rigOf([bone('paw_left', { switches })], [driver]));
    expect(out.drivers!.map(({ name, output }) => [name, output])).toEqual([
      ['squeeze_left', { switch: 'paw_left.grip' }],
      ['squeeze_right', { switch: 'paw_right.grip' }],
    ]);
  });
});

describe('is refused, saying where in the copy', () => {
  const pair = [bone('paw_left'), bone('paw_right')];
  const links = [{ name: 'ride', kind: 'follow', source: 'mast' }] as const;
  const rides = { output: { bone: 'paw_right', link: 'ride', field: 'weight' } } as const;

  test.each<[string, Rig, RegExp, RegExp]>([
    [
      'two drivers on one output',
      rigOf(pair, [lift('lift_left', 'paw_left'), lift('raise', 'paw_right')]),
      /a second driver on paw_right\.move\.x.*at \/drivers\/2\/output once the left side is copied across/,
      /one driver at most/,
    ],
    [
      'a name taken by a driver of a middle bone',
      rigOf(pair, [lift('lift_left', 'paw_left'), lift('lift_right', 'mast')]),
      /"lift_right" a second time/,
      /no other driver/,
    ],
    [
      'a name taken by a driver of the same side',
      rigOf(pair, [lift('lift_left', 'paw_left'), lift('lift_right', 'paw_left', 'move.y')]),
      /a second time/,
      /no other driver/,
    ],
    [
      'one becoming two where its new name is taken',
      rigOf(pair, [lift('lift', 'paw_left'), lift('lift_left', 'paw_left', 'move.y')]),
      /"lift_left" a second time/,
      /no other driver/,
    ],
    [
      'a reference to a bone that only the other side has',
      rigOf([bone('paw_left', { links: [{ ...links[0], source: 'hook_right' }] }), bone('hook_right')]),
      /"hook_left", at \/bones\/2\/links\/0\/source/,
      /a bone of this rig/,
    ],
    [
      'a driver of a link that the copy does not have',
      rigOf([bone('paw_left'), bone('paw_right', { links })], [{ ...lift('fade', 'paw_right'), ...rides }]),
      /"ride", at \/drivers\/0\/output\/link/,
      /a link on "paw_right"/,
    ],
    [
      'a bone attached to one that has moved',
      rigOf([
        ...pair,
        bone('hook_right', {
          parent: 'paw_right',
          attach: 'tip',
          rest: { base: [1, 0, 1], turn: [0, 0, 0, 1], length: 1 },
        }),
      ]),
      /from the tip of "paw_right"/,
      /within 0\.000001 m/,
    ],
    ['too many bones', rigOf(Array.from({ length: 129 }, (_, i) => bone(`rib_${i}_left`))), /259 bones/, /at most 256/],
    ['a name too long', rigOf([bone(`${'a'.repeat(59)}_left`)]), /aaaa/, /1 to 64/],
  ])('%s', (_, rig, found, expected) => {
    const said = refused(rig);
    expect(said).toEqual({ place: '', found: expect.stringMatching(found), expected: expect.stringMatching(expected) });
  });
});

test('on random rigs the copies are those of the reflected rig, or it is refused', () => {
  let done = 0;
  for (let seed = 0; seed < 1000; seed++) {
    const rig = randomRig(seeded(seed));
    const reading = copyAcross(rig, 'right');
    if (!reading.ok) continue;
    done++;
    const whole = reflect(rig);
    for (const one of reading.value.bones) {
      const isCopy = sideOf(one.name) === 'left' && rig.bones.some(({ name }) => name === swapSide(one.name));
      expect(one).toEqual(named((isCopy ? whole : rig).bones, one.name));
    }
  }
  expect(done).toBeGreaterThan(300);
});
