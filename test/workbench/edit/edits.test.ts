import { expect, test } from 'vitest';
import { readRig } from '../../../src/solver/index.ts';
import { addBone } from '../../../src/workbench/edit/addBone.ts';
import { addLink } from '../../../src/workbench/edit/addLink.ts';
import { bindPart } from '../../../src/workbench/edit/bindPart.ts';
import { changeLink, renameLink, reorderLink, setLinkKind } from '../../../src/workbench/edit/changeLink.ts';
import { copyBone, copyName, copyWords } from '../../../src/workbench/edit/copyBone.ts';
import { boneOf, type Draft, type Edit } from '../../../src/workbench/edit/draft.ts';
import { addDriver, addInput, removeDriver, removeInput, renameDriver } from '../../../src/workbench/edit/drivers.ts';
import { layLike, pointTip, standOn } from '../../../src/workbench/edit/layRest.ts';
import { addKey, invertMap, removeKey, setBeyond, setKey, setShape } from '../../../src/workbench/edit/maps.ts';
import { goesWith, removeBone } from '../../../src/workbench/edit/removeBone.ts';
import { removeLink } from '../../../src/workbench/edit/removeLink.ts';
import { renameBone } from '../../../src/workbench/edit/renameBone.ts';
import { reorderBone } from '../../../src/workbench/edit/reorderBone.ts';
import { setInherits, setLock, setRole, setTurnOrder } from '../../../src/workbench/edit/setBone.ts';
import { setAttach, setParent } from '../../../src/workbench/edit/setParent.ts';
import { setRest, tipOf } from '../../../src/workbench/edit/setRest.ts';
import {
  addSwitch,
  changeSwitch,
  removeSwitch,
  renameSwitch,
  reorderSwitch,
} from '../../../src/workbench/edit/switches.ts';
import { tried } from '../../../src/workbench/state/tried.ts';
import { DRAFT } from '../support/twinVanes.ts';

const REST = { base: [0, 1, 0], turn: [0, 0, 0, 1], length: 0.2 } as const;

const EDITS: Edit[] = [
  addBone(REST),
  addBone(REST, { name: 'wind_left' }),
  renameBone('wind_left', 'gust_left'),
  renameBone('wind', 'breeze'),
  ...DRAFT.rig.bones.map((bone) => removeBone(bone.name)),
  ...DRAFT.rig.bones.map((bone) => copyBone(bone.name)),
  reorderBone('wind', 3),
  setParent('vane_left', null),
  setParent('tail_right', 'vane_left'),
  setParent('tail_right', null),
  setAttach('vane_left', 'tip'),
  setAttach('tail_right', 'free'),
  setRole('vane_left', 'guide'),
  setInherits('vane_left', 'turn'),
  setTurnOrder('vane_left', 'zyx'),
  setLock('vane_left', 'move', 1, true),
  setRest('vane_right', { length: 0.5 }, 'length'),
  setRest('vane_right', { base: [0, 1, 1] }, 'base'),
  layLike('vane_right', 'post'),
  layLike('tail_right', 'post'),
  standOn('vane_left', 'post', 1),
  pointTip('vane_right', 'wind_left', 0),
  ...(['follow', 'aim', 'span', 'share', 'limit', 'reach'] as const).map((kind) => addLink('tail_right', kind, 'wind')),
  ...(['follow', 'aim', 'span', 'share', 'limit', 'reach'] as const).map((kind) =>
    setLinkKind('tail_right', 'lean', kind),
  ),
  renameLink('vane_left', 'watch', 'gaze'),
  reorderLink('vane_left', 'watch', 1),
  removeLink('vane_left', 'watch'),
  addSwitch('wind'),
  changeSwitch('wind', 'together', 'most', { max: 2 }),
  renameSwitch('wind', 'together', 'as_one'),
  removeSwitch('wind', 'together'),
  reorderSwitch('wind', 'together', 1),
  addDriver({ switch: 'wind.together' }, { bone: 'vane_right', link: 'twin', field: 'weight' }),
  renameDriver('let_go', 'let_loose'),
  removeDriver('let_go'),
  addInput('let_go', { turn: { bone: 'wind', axis: 'y' } }),
  removeInput('let_go', 0),
  addKey('let_go'),
  setKey('let_go', 1, [2, 0]),
  removeKey('let_go', 0),
  invertMap('let_go'),
  setShape('let_go', 'bezier'),
  setBeyond('let_go', 'extend'),
  bindPart('target', 'wind'),
  bindPart('target', null),
];

test.each(EDITS.map((edit) => [edit.says, edit] as const))('the rig can be read after: %s', (_, edit) => {
  expect(readRig(edit.apply(DRAFT).rig)).toMatchObject({ ok: true });
});

test.each(EDITS.map((edit) => [edit.says, edit] as const))('the draft before is left as it was by: %s', (_, edit) => {
  const before = JSON.stringify(DRAFT);
  edit.apply(DRAFT);
  expect(JSON.stringify(DRAFT)).toBe(before);
});

test('renaming a bone reaches every reference to it and the parts bound to it', () => {
  const { rig, parts } = renameBone('wind', 'breeze').apply(DRAFT);
  expect(JSON.stringify({ rig, parts })).not.toMatch(/"wind["."]/);
  expect(parts).toEqual({ target: 'wind_left', switch: 'breeze.together' });
  expect(boneOf({ rig, parts }, 'wind_left')?.parent).toBe('breeze');
  expect(rig.drivers?.[0]?.inputs).toMatchObject([
    { from: { switch: 'breeze.together' } },
    { from: { gap: [{ bone: 'breeze' }, {}] } },
  ]);
});

test('taking a bone away takes what speaks of it, gives its children to its parent, and says so beforehand', () => {
  expect(goesWith(DRAFT, 'wind_left')).toEqual(['watch on vane_left', 'let_go']);
  const after = removeBone('wind').apply(DRAFT);
  expect(boneOf(after, 'wind_left')?.parent).toBe(null);
  expect(after.rig.drivers).toBe(undefined);
  expect(after.parts).toEqual({ target: 'wind_left' });
});

test('a copy is like its original in all but its name, and its driver stays behind, which is said', () => {
  const after = copyBone('vane_left').apply(DRAFT);
  const names = after.rig.bones.map(({ name }) => name);
  expect(names.indexOf('vane_2_left')).toBe(names.indexOf('vane_left') + 1);
  expect(boneOf(after, 'vane_2_left')).toEqual({ ...boneOf(DRAFT, 'vane_left'), name: 'vane_2_left' });
  expect(after.rig.drivers).toEqual(DRAFT.rig.drivers);
  expect(after.parts).toEqual(DRAFT.parts);
  expect(copyWords(DRAFT, 'vane_left')).toBe(
    'vane_2_left is a copy of vane_left: a skin bone, under post, where it lies, with its links watch and hold. ' +
      'Drivers are not copied: let_go on vane_left alone.',
  );
  expect([copyName(after, 'vane_left'), copyName(after, 'post')]).toEqual(['vane_3_left', 'post_2']);
});

test('a reach is not copied, and a number that was driven is brought within its bounds', () => {
  const rear = 'tail_right';
  const reaching = addLink(rear, 'reach', 'wind').apply(DRAFT);
  const driven = changeLink('vane_left', 'watch', 'weight', (link) => ({ ...link, weight: 7 })).apply(reaching);
  const left = copyBone('vane_left').apply(driven);
  const copied = copyBone(rear).apply(left);
  expect(readRig(copied.rig)).toMatchObject({ ok: true });
  expect(boneOf(copied, 'tail_2_right')?.links?.map(({ name }) => name)).toEqual(['lean']);
  expect(boneOf(copied, 'vane_2_left')?.links?.[0]?.weight).toBe(1);
  expect(copyWords(driven, 'tail_right')).toContain(
    'Not copied: reach, for two bones of one parent cannot both reach.',
  );
});

test('bones on a tip go where the tip goes', () => {
  const after = setRest('vane_right', { length: 0.5 }, 'length').apply(DRAFT);
  expect(boneOf(after, 'tail_right')?.rest.base).toEqual([-0.1, 1.5, 0.5]);
});

test('a tip put on another bone’s base lies there', () => {
  const after = pointTip('vane_left', 'vane_right', 0).apply(DRAFT);
  const tip = tipOf(boneOf(after, 'vane_left')!.rest);
  for (const [i, value] of [-0.1, 1.5, 0].entries()) expect(tip[i]).toBeCloseTo(value, 12);
});

test('a name that is taken or empty is refused with its place, and nothing changes', () => {
  for (const name of ['wind', '', 'a b']) {
    const made = tried(DRAFT, renameBone('vane_left', name));
    expect(made).toMatchObject({ ok: false, refusal: { place: expect.stringMatching(/^\/bones\/\d\/name$/) } });
  }
});

test('defaults are never written', () => {
  const there = setAttach('vane_left', 'tip').apply(DRAFT);
  const back = setAttach('vane_left', 'free').apply(there);
  expect(boneOf(back, 'vane_left')).not.toHaveProperty('attach');
  const locked = setLock('wind', 'size', 0, true).apply(DRAFT);
  expect(boneOf(setLock('wind', 'size', 0, false).apply(locked), 'wind')).not.toHaveProperty('locks');
});

test('a key added to a straight map leaves the map as it gives', () => {
  const keys = (draft: Draft) => draft.rig.drivers?.[0]?.map.keys;
  const after = addKey('let_go').apply(DRAFT);
  expect(keys(after)).toEqual([
    [0, 1],
    [0.5, 0.5],
    [1, 0],
  ]);
  expect(keys(invertMap('let_go').apply(DRAFT))).toEqual([
    [0, 0],
    [1, 1],
  ]);
});
