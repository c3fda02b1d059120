import { expect, test } from 'vitest';
import { editRig } from '../../../src/grader/exercise/editRig.ts';
import type { Rig } from '../../../src/solver/index.ts';

const rest = { base: [0, 0, 0], turn: [0, 0, 0, 1], length: 1 } as const;
const quay: Rig = {
  format: 'counterpose/rig',
  version: 1,
  bones: [
    { name: 'post', parent: null, role: 'helper', rest },
    {
      name: 'vane',
      parent: 'post',
      role: 'skin',
      rest,
      links: [{ name: 'watch', kind: 'aim', target: { bone: 'post' } }],
    },
  ],
};

test('an edit adds, changes and takes away by name, and leaves the rig it starts from', () => {
  const before = JSON.stringify(quay);
  const edited = editRig(quay, {
    bones: {
      kite: { parent: null, role: 'control', rest },
      vane: {
        role: null,
        links: { watch: { target: { bone: 'kite' } }, turn_back: { kind: 'follow', source: 'post' } },
      },
      post: null,
    },
  });
  expect(JSON.stringify(quay)).toBe(before);
  expect(edited).toEqual({
    ...quay,
    bones: [
      {
        name: 'vane',
        parent: 'post',
        rest,
        links: [
          { name: 'watch', kind: 'aim', target: { bone: 'kite' } },
          { name: 'turn_back', kind: 'follow', source: 'post' },
        ],
      },
      { name: 'kite', parent: null, role: 'control', rest },
    ],
  });
});

test('parent: null makes a root instead of taking the field away', () => {
  const edited = editRig(quay, { bones: { vane: { parent: null } } }) as Rig;
  expect(edited.bones[1]!.parent).toBe(null);
});
