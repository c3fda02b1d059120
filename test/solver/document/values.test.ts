import { describe, expect, test } from 'vitest';
import type { Pose, Quat, Rig, Vec3 } from '../../../src/solver/index.ts';
import { readPose, readRig, readRigText } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { seeded } from '../../support/random.ts';
import { randomDirection, randomTurn } from '../../support/randomVectors.ts';
import { changed, mustRead, quay, refusal, WATCH } from './trial.ts';

const turnAt = (rig: Rig, bone: number) => rig.bones[bone]!.rest.turn;
const withTurn = (turn: readonly number[]) => changed(quay, ['/bones/5/rest/turn', turn]);

describe('quaternions and axes', () => {
  test('within 1e-6 of unit length become q/|q|', () => {
    const turn = [0.6, 0, 0, 0.8].map((x) => x * (1 + 5e-7));
    expectClose(turnAt(mustRead(readRig(withTurn(turn))), 5), [0.6, 0, 0, 0.8], 2e-16);
    const axis = [0.6, 0, 0.8].map((x) => x * (1 - 5e-7));
    const read = mustRead(readRig(changed(quay, [`${WATCH}/axis`, axis])));
    const link = read.bones[2]!.links![0]!;
    expectClose(link.kind === 'aim' ? (link.axis as Vec3) : [], [0.6, 0, 0.8], 2e-16);
    const pose = mustRead(readPose({ bones: { kite: { turn } } }, read)) as Pose;
    expectClose(pose.bones!.kite!.turn as Quat, [0.6, 0, 0, 0.8], 2e-16);
  });

  test('of unit length but for rounding keep their bits', () => {
    const random = seeded(2);
    for (let i = 0; i < 1000; i++) {
      const turn = randomTurn(random, 0);
      expect(turnAt(mustRead(readRig(withTurn(turn))), 5)).toEqual(turn);
    }
  });

  test('once normalised keep their bits when read again', () => {
    const random = seeded(3);
    for (let i = 0; i < 1000; i++) {
      const turn = randomTurn(random, 0).map((x) => x * (1 + (random() - 0.5) * 1e-6));
      const once = mustRead(readRig(withTurn(turn)));
      expect(mustRead(readRig(once))).toEqual(once);
    }
  });

  test('a direction keeps its length', () => {
    const direction = randomDirection(seeded(1)).map((x) => 7 * x);
    const read = mustRead(readRig(changed(quay, [`${WATCH}/up/toward`, { direction }])));
    expect(JSON.stringify(read)).toContain(JSON.stringify({ direction }));
  });
});

describe('what is returned', () => {
  test('has nothing filled in and nothing shared', () => {
    const bare = {
      format: 'counterpose/rig',
      version: 1,
      bones: [
        { name: 'kite', parent: null, role: 'control', rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 1 } },
      ],
    };
    const read = mustRead(readRig(bare));
    expect(read).toEqual(bare);
    expect(read.bones).not.toBe(bare.bones);
    expect(read.bones[0]!.rest.base).not.toBe(bare.bones[0]!.rest.base);
  });

  test('keeps the order of fields', () => {
    const text = JSON.stringify(quay);
    expect(JSON.stringify(mustRead(readRigText(text)))).toBe(text);
  });

  test('has 0 for −0, which JSON cannot tell apart', () => {
    const read = mustRead(readRig(changed(quay, ['/bones/5/rest/base/0', -0], ['/mesh/positions/0', -0])));
    expect(Object.is(read.bones[5]!.rest.base[0], 0)).toBe(true);
    expect(Object.is(read.mesh!.positions[0], 0)).toBe(true);
  });

  test('passes over fields that are undefined, as JSON would', () => {
    const read = mustRead(readRig({ ...quay, title: undefined, tittle: undefined }));
    expect(Object.hasOwn(read, 'title')).toBe(false);
  });
});

describe('prototypes', () => {
  const names = ['__proto__', 'constructor', 'hasOwnProperty', 'toString', '0'];
  const bone = (name: string, more: object = {}) => ({
    name,
    parent: null,
    role: 'control',
    rest: { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 1 },
    ...more,
  });

  test.each(names)('%s is a name like any other', (name) => {
    const links = [{ name, kind: 'aim', target: { bone: name } }];
    const switches = [{ name, min: 0, max: 1, default: 0 }];
    const text = JSON.stringify({ format: 'counterpose/rig', version: 1, bones: [bone(name, { links, switches })] });
    const rig = mustRead(readRigText(text));
    expect(JSON.stringify(rig)).toBe(text);
    const poseText = `{"bones":{"${name}":{"move":[1,2,3]}},"switches":{"${name}.${name}":1}}`;
    const pose = mustRead(readPose(JSON.parse(poseText), rig));
    expect(JSON.stringify(pose)).toBe(poseText);
    expect(Object.getPrototypeOf(pose.bones)).toBeNull();
    expect(Object.keys(pose.bones!)).toEqual([name]);
  });

  test.each(names)('%s is no bone that exists by itself', (name) => {
    const said = refusal(readRig(changed(quay, ['/bones/3/parent', name])));
    expect(said.place).toBe('/bones/3/parent');
    expect(refusal(readPose(JSON.parse(`{"bones":{"${name}":{}}}`), mustRead(readRig(quay)))).place).toBe(
      `/bones/${name}`,
    );
    expect(refusal(readPose(JSON.parse(`{"switches":{"${name}":0}}`), mustRead(readRig(quay)))).place).toBe(
      `/switches/${name}`,
    );
  });

  test.each(names)('%s is an unknown field', (name) => {
    const text = JSON.stringify(quay).replace('"title":', `"${name}":{},"title":`);
    expect(refusal(readRigText(text)).place).toBe(`/${name}`);
    expect(refusal(readRig(JSON.parse(text))).place).toBe(`/${name}`);
  });

  test('fields that are inherited do not count', () => {
    const { version, ...rest } = quay;
    const said = refusal(readRig(Object.assign(Object.create({ version }), rest)));
    expect(said).toEqual({ place: '/version', found: 'nothing', expected: 'version 1' });
  });
});
