/** What a bone takes of a sized and turned parent, and what the tip of a parent fixes. Hand-worked from the format. */
import { describe, expect, it } from 'vitest';
import type { Bone, Vec3 } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, columns, flagsOf, posed, QUARTER, rigOf, SOLVERS } from './build.ts';

const EXACT = 1e-12;
const [COS, SIN] = [0.5, Math.sqrt(0.75)];
/** 60° about x. */
const SIXTY = [0.5, 0, 0, Math.sqrt(0.75)] as const;

const pair = (given: Partial<Bone>) =>
  rigOf([bone('otter'), bone('fish', { parent: 'otter', at: [0, 1, 1], ...given })]);

describe.each(SOLVERS)('inheriting by the %s', (_, solve) => {
  const sized = (inherits: Bone['inherits'], size: Vec3) =>
    solve(pair({ inherits: inherits! }), posed({ otter: { size }, fish: { turn: SIXTY, move: [0, 0.5, 0] } }));

  it('all: the whole 3×3 part, sheared', () => {
    const result = sized('all', [1, 2, 1]);
    expectClose(columns(result, 'fish'), [1, 0, 0, 0, 2 * COS, SIN, 0, -2 * SIN, COS], EXACT);
    expectClose(baseOf(result, 'fish'), [0, 3, 1], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('uniform: the orientation times ∛|det|', () => {
    const result = sized('uniform', [1, 4, 2]);
    expectClose(columns(result, 'fish'), [2, 0, 0, 0, 2 * COS, 2 * SIN, 0, -2 * SIN, 2 * COS], EXACT);
    expectClose(baseOf(result, 'fish'), [0, 4 + 1, 2], EXACT);
  });

  it('turn: the orientation only, the base still carried by the whole parent', () => {
    const result = sized('turn', [1, 2, 1]);
    expectClose(columns(result, 'fish'), [1, 0, 0, 0, COS, SIN, 0, -SIN, COS], EXACT);
    expectClose(baseOf(result, 'fish'), [0, 2.5, 1], EXACT);
  });

  it.each<[Bone['inherits'], Vec3, number[]]>([
    // A mirrored x leaves y and z, so the orientation is that of the unmirrored parent.
    ['turn', [-1, 1, 1], [1, 0, 0, 0, COS, SIN, 0, -SIN, COS]],
    ['uniform', [-8, 1, 1], [2, 0, 0, 0, 2 * COS, 2 * SIN, 0, -2 * SIN, 2 * COS]],
    ['all', [-1, 1, 1], [-1, 0, 0, 0, COS, SIN, 0, -SIN, COS]],
    // Without a third column it is first×second; without a second, z×first.
    ['turn', [1, 1, 0], [1, 0, 0, 0, COS, SIN, 0, -SIN, COS]],
    ['turn', [1, 0, 1], [1, 0, 0, 0, COS, SIN, 0, -SIN, COS]],
    ['turn', [-1, 1, 0], [-1, 0, 0, 0, COS, -SIN, 0, -SIN, -COS]],
    ['turn', [0, 0, 0], [1, 0, 0, 0, COS, SIN, 0, -SIN, COS]],
    ['uniform', [1, 1, 0], [0, 0, 0, 0, 0, 0, 0, 0, 0]],
  ])('%s under a parent of size %j, without a flag', (inherits, size, expected) => {
    const result = sized(inherits, size);
    expectClose(columns(result, 'fish'), expected, EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('orients by the third column first, then the second', () => {
    const grandchild = rigOf([
      bone('otter'),
      bone('fish', { parent: 'otter' }),
      bone('scale', { parent: 'fish', inherits: 'turn' }),
    ]);
    const result = solve(grandchild, posed({ otter: { size: [1, 2, 1] }, fish: { turn: SIXTY } }));
    const long = Math.hypot(2 * SIN, COS);
    const [y, z] = [-2 * SIN, COS].map((c) => c / long);
    expectClose(columns(result, 'scale'), [1, 0, 0, 0, z, -y, 0, y, z], EXACT);
  });

  it('counts a column under 1e-9 as no column', () => {
    const small = sized('turn', [1, 1, 9e-10]);
    expectClose(columns(small, 'fish'), columns(sized('turn', [1, 1, 0]), 'fish'), EXACT);
    const mirrored = sized('turn', [-1, 1, 9e-10]);
    expectClose(columns(mirrored, 'fish'), [-1, 0, 0, 0, COS, -SIN, 0, -SIN, -COS], EXACT);
    const enough = sized('turn', [-1, 1, 2e-9]);
    expectClose(columns(enough, 'fish'), [1, 0, 0, 0, COS, SIN, 0, -SIN, COS], EXACT);
  });

  it('moves a root in its own rest frame', () => {
    const rig = rigOf([bone('otter', { at: [1, 2, 3], turned: QUARTER.z })]);
    expectClose(baseOf(solve(rig, posed({ otter: { move: [1, 0, 0] } })), 'otter'), [1, 3, 3], EXACT);
  });

  it('stands on the posed tip of its parent and ignores its move', () => {
    const rig = pair({ attach: 'tip', rest: { base: [0, 0, 0.5], turn: [0, 0, 0, 1], length: 0.5 } });
    const pose = posed({ otter: { turn: QUARTER.y, size: [1, 1, 3] }, fish: { move: [1, 1, 1] } });
    const driven = {
      ...rig,
      drivers: [
        {
          name: 'drift',
          inputs: [{ from: { gap: [{ bone: 'otter' }, { bone: 'otter', at: 1 }] } as const }],
          map: {
            keys: [
              [0, 0],
              [1, 1],
            ] as const,
          },
          output: { bone: 'fish', channel: 'move.x' } as const,
        },
      ],
    };
    expectClose(baseOf(solve(rig, pose), 'fish'), [1.5, 0, 0], EXACT);
    expectClose(baseOf(solve(driven, pose), 'fish'), [1.5, 0, 0], EXACT);
  });

  it('takes angles in its turn order: xyz turns about z first', () => {
    const order = (turnOrder: Bone['turnOrder']) =>
      columns(
        solve(rigOf([bone('otter', { turnOrder: turnOrder! })]), posed({ otter: { turn: { angles: [90, 0, 90] } } })),
        'otter',
      );
    // x → y by Rz, then y → z by Rx.
    expectClose(order('xyz').slice(0, 3), [0, 0, 1], EXACT);
    // x stays by Rx, then x → y by Rz.
    expectClose(order('zyx').slice(0, 3), [0, 1, 0], EXACT);
  });

  it('turns 30°, 60°, 45° about x, y, z as in the SciPy example (check values A1, A2)', () => {
    const result = solve(rigOf([bone('otter')]), posed({ otter: { turn: { angles: [30, 60, 45] } } }));
    const m = columns(result, 'otter');
    const turned = [0, 1, 2].map((i) => m[i] + 2 * m[3 + i] + 3 * m[6 + i]);
    expectClose(turned, [2.24452282, 0.78093109, 2.89002836], 1e-8);
  });
});
