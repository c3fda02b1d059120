import { describe, expect, test } from 'vitest';
import { readPose, readPoseText, readRig } from '../../../src/solver/index.ts';
import { changed, mustRead, quay, refusal } from './trial.ts';

const rig = mustRead(readRig(quay));
const HALF = Math.SQRT1_2;
const pose = {
  bones: {
    kite: { move: [0.1, 0, 0], turn: [HALF, 0, 0, HALF], size: [1, 0, -2] },
    vane: { turn: { angles: [370, 0, -90] } },
  },
  switches: { 'kite.together': 0.25, 'kite.lamp': 0 },
};

describe('a pose', () => {
  test.each([
    ['all parts', pose],
    ['no parts', {}],
    ['no bones, no switches', { bones: {}, switches: {} }],
    ['a bone without parts', { bones: { kite: {} } }],
    ['switches at their ends', { switches: { 'kite.together': 1, 'kite.lamp': 1 } }],
  ])('reads with %s', (_, document) => {
    expect(mustRead(readPose(document, rig))).toEqual(document);
    expect(mustRead(readPoseText(JSON.stringify(document), rig))).toEqual(document);
  });

  test.each([
    ['a list', '', [], '', /an empty list/, /a pose, an object with the fields bones and switches/],
    ['an unknown field', '/bonse', {}, '/bonse', /"bonse"/, /"bones", perhaps/],
    ['an unknown bone', '/bones/kit', {}, '/bones/kit', /"kit"/, /a bone of this rig: "kite", perhaps/],
    ['bones in a list', '/bones', [], '/bones', /empty list/, /poses by the name of the bone/],
    ['a bone that is no object', '/bones/kite', 1, '/bones/kite', /1/, /the pose of a bone, an object/],
    ['an unknown part', '/bones/kite/scale', [1, 1, 1], '/bones/kite/scale', /"scale"/, /move, turn and size/],
    ['a move of two numbers', '/bones/kite/move', [0, 0], '/bones/kite/move', /\[0, 0\]/, /a list of 3/],
    ['a move that is not finite', '/bones/kite/move/1', Infinity, '/bones/kite/move/1', /infinity/, /finite/],
    ['a turn off unit length', '/bones/kite/turn', [0, 0, 0, 1.00001], '/bones/kite/turn', /length/, /within 0.000001/],
    ['a turn of neither sort', '/bones/kite/turn', 90, '/bones/kite/turn', /90/, /\{angles: \[x, y, z\]\}/],
    ['a turn without angles', '/bones/kite/turn', {}, '/bones/kite/turn/angles', /nothing/, /in degrees/],
    ['a size with a word', '/bones/kite/size/0', 'big', '/bones/kite/size/0', /"big"/, /finite/],
    ['an unknown switch', '/switches/kite.lam', 1, '/switches/kite.lam', /"kite\.lam"/, /"kite\.lamp", perhaps/],
    ['a switch without its bone', '/switches/lamp', 1, '/switches/lamp', /"lamp"/, /as "bone\.switch"/],
    [
      'a switch above its range',
      '/switches/kite.together',
      1.1,
      '/switches/kite.together',
      /1\.1/,
      /from 0 to 1, the range of kite\.together/,
    ],
    ['a switch below its range', '/switches/kite.together', -0.1, '/switches/kite.together', /-0\.1/, /from 0 to 1/],
    [
      'a switch between its ends',
      '/switches/kite.lamp',
      0.5,
      '/switches/kite.lamp',
      /0\.5/,
      /0 or 1, because kite\.lamp does not slide/,
    ],
    ['a switch that is true', '/switches/kite.lamp', true, '/switches/kite.lamp', /true/, /0 or 1/],
  ])('is refused with %s', (_, at, value, place, found, expected) => {
    const said = refusal(readPose(changed(pose, [at, value]), rig));
    expect(said).toEqual({ place, found: expect.stringMatching(found), expected: expect.stringMatching(expected) });
  });

  test('escapes a key in the place, and leaves out one longer than any name', () => {
    expect(refusal(readPose({ bones: { 'a/b~c': {} } }, rig)).place).toBe('/bones/a~1b~0c');
    expect(refusal(readPose({ bones: { ['a'.repeat(65)]: {} } }, rig)).place).toBe('/bones');
    expect(refusal(readPose({ switches: { ['a'.repeat(200)]: 1 } }, rig)).place).toBe('/switches');
  });
});
