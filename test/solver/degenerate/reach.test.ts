/** Reach where its hinge, elbow side or length is special. Hand-worked unless a source is named. */
import { describe, expect, it } from 'vitest';
import type { Bone, Link, Quat, ReachLink, Vec3 } from '../../../src/solver/document/rig.ts';
import { expectClose } from '../../support/close.ts';
import { baseOf, bone, column, columns, flagsOf, posed, QUARTER, rigOf, SOLVERS, tipOf } from './build.ts';

const EXACT = 1e-12;
const UPPER = 3;
const LOWER = 4;
/** Turns +z to +y. */
const UPRIGHT: Quat = [-QUARTER.x[0], 0, 0, QUARTER.x[3]];

interface Limb {
  load: Vec3;
  mate?: Vec3;
  link?: Partial<ReachLink>;
  boom?: Partial<Parameters<typeof bone>[1]>;
  jib?: Partial<Parameters<typeof bone>[1]>;
  later?: readonly Link[];
  others?: readonly Bone[];
}

/** The ferry crane: a boom of 3 m along +z, a jib of 4 m in line with it, a load, and a mate who shows the side. */
const crane = ({ load, mate, link, boom, jib, later, others }: Limb) =>
  rigOf([
    bone('load', { at: load }),
    bone('mate', { at: mate ?? [0, 1, 0] }),
    bone('boom', { length: UPPER, ...boom }),
    bone('jib', {
      parent: 'boom',
      at: [0, 0, UPPER],
      length: LOWER,
      links: [
        { name: 'lift', kind: 'reach', target: { bone: 'load' }, ...(mate && { pole: { bone: 'mate' } }), ...link },
        ...(later ?? []),
      ],
      ...jib,
    }),
    ...(others ?? []),
  ]);

describe.each(SOLVERS)('reach by the %s', (_, solve) => {
  const elbowAndTip = (limb: Limb) => {
    const result = solve(crane(limb));
    return { elbow: baseOf(result, 'jib'), tip: tipOf(result, 'jib', LOWER), flags: flagsOf(result), result };
  };

  it('makes the 3-4-5 triangle on the side of its pole (law of cosines; check value F1)', () => {
    const { elbow, tip, flags } = elbowAndTip({ load: [5, 0, 0], mate: [2, -7, 0], jib: { turned: UPRIGHT } });
    expectClose(elbow, [1.8, -2.4, 0], EXACT);
    expectClose(tip, [5, 0, 0], EXACT);
    expect(flags).toEqual([]);
  });

  it('keeps its own bend without a pole', () => {
    const { elbow, tip } = elbowAndTip({ load: [0, 3, 4], jib: { turned: UPRIGHT } });
    expectClose(elbow, [0, -0.84, 2.88], EXACT);
    expectClose(tip, [0, 3, 4], EXACT);
  });

  it('hinges a straight limb about the +x of the upper', () => {
    const { elbow, tip, flags } = elbowAndTip({ load: [0, 0, 5] });
    expectClose(elbow, [0, 2.4, 1.8], EXACT);
    expectClose(tip, [0, 0, 5], EXACT);
    expect(flags).toEqual([]);
  });

  it('hinges a straight limb about the +y of the upper where its +x lies along the limb', () => {
    const { elbow } = elbowAndTip({ load: [0, 0, 5], boom: { turned: [0, -QUARTER.y[1], 0, QUARTER.y[3]] } });
    expectClose(elbow, [-2.4, 0, 1.8], EXACT);
  });

  it.each<[string, Vec3]>([
    ['on the line beyond the load', [0, 0, 9]],
    ['on the line behind the base', [0, 0, -2]],
    ['on the base of the upper', [0, 0, 0]],
    ['5e-7 rad off the line', [0, -5e-7, 1]],
  ])('does as without a pole when the pole is %s, and says so', (_says, mate) => {
    const { elbow, flags } = elbowAndTip({ load: [0, 0, 5], mate });
    expectClose(elbow, [0, 2.4, 1.8], EXACT);
    expect(flags).toEqual(['pole-undefined jib.lift']);
  });

  it('heeds a pole 2e-6 rad off the line', () => {
    const { elbow, flags } = elbowAndTip({ load: [0, 0, 5], mate: [0, -2e-6, 1] });
    expectClose(elbow, [0, -2.4, 1.8], 1e-9);
    expect(flags).toEqual([]);
  });

  it('puts the elbow where the upper pointed when the load lies along the hinge', () => {
    const { elbow, result } = elbowAndTip({ load: [5, 0, 0], jib: { turned: UPRIGHT } });
    expectClose(elbow, [1.8, 0, 2.4], EXACT);
    // x was −n and n′ is +y; z goes to (0.6, 0, 0.8).
    expectClose(columns(result, 'boom'), [0, -1, 0, 0.8, 0, -0.6, 0.6, 0, 0.8], EXACT);
  });

  it.each<[string, Vec3, Vec3, Vec3]>([
    ['beyond reach', [0, 9, 0], [0, 3, 0], [0, 7, 0]],
    ['exactly at full reach', [0, 7, 0], [0, 3, 0], [0, 7, 0]],
    ['within 1e-12 of full reach', [0, 7 - 5e-12, 0], [0, 3, 0], [0, 7, 0]],
    ['too near', [0, 0.25, 0], [0, -3, 0], [0, 1, 0]],
    ['at the nearest it reaches', [0, 1, 0], [0, -3, 0], [0, 1, 0]],
  ])('lies straight with the load %s', (_says, load, elbow, tip) => {
    const bent = elbowAndTip({ load, mate: [1, 0, 0] });
    expectClose(bent.elbow, elbow, 2e-11);
    expectClose(bent.tip, tip, 2e-11);
    expect(bent.flags).toEqual([]);
  });

  it('is unchanged and undefined with the load on its base, whatever the pole', () => {
    const { elbow, tip, flags } = elbowAndTip({ load: [0, 0, 0], mate: [0, 0, 0] });
    expectClose(elbow, [0, 0, 3], EXACT);
    expectClose(tip, [0, 0, 7], EXACT);
    expect(flags).toEqual(['reach-undefined jib.lift']);
  });

  it('is undefined where one of its bones has no length', () => {
    expect(elbowAndTip({ load: [0, 0, 5], jib: { at: [0, 0, 0] } }).flags).toEqual(['reach-undefined jib.lift']);
    const result = solve(crane({ load: [0, 0, 5] }), posed({ jib: { size: [1, 1, 0] } }));
    expect(flagsOf(result)).toEqual(['reach-undefined jib.lift']);
  });

  it('folds equal lengths flat with the load a hair from its base', () => {
    const rig = crane({ load: [1e-6, 0, 0], mate: [0, 1, 0], jib: { length: UPPER } });
    const result = solve(rig);
    expectClose(baseOf(result, 'jib'), [5e-7, 3, 0], 1e-9);
    expectClose(tipOf(result, 'jib', UPPER), [1e-6, 0, 0], 1e-9);
  });

  it('raises nothing and turns nothing at weight 0', () => {
    const { elbow, flags } = elbowAndTip({ load: [0, 0, 0], link: { weight: 0 } });
    expectClose(elbow, [0, 0, 3], EXACT);
    expect(flags).toEqual([]);
  });

  it('turns both bones half of a quarter turn at half weight', () => {
    const { elbow, tip } = elbowAndTip({ load: [9, 0, 0], mate: [0, 1, 0], link: { weight: 0.5 } });
    const half = Math.sqrt(0.5);
    expectClose(elbow, [3 * half, 0, 3 * half], EXACT);
    expectClose(tip, [7 * half, 0, 7 * half], EXACT);
  });

  it('goes half of a half-turn the way of the slerp rule, in rig space', () => {
    const { elbow, tip } = elbowAndTip({ load: [0, 0, -9], mate: [0, 1, 0], link: { weight: 0.5 } });
    expectClose(elbow, [3, 0, 0], EXACT);
    expectClose(tip, [7, 0, 0], EXACT);
  });

  it('keeps sizes and shear, without a flag', () => {
    const rig = crane({
      load: [1, 2, 3],
      boom: { parent: 'mate' },
      jib: { inherits: 'turn' },
    });
    const pose = posed({
      mate: { size: [1, 2, 1] },
      boom: { turn: [0.5, 0, 0, Math.sqrt(0.75)] },
      jib: { size: [2, 3, 1] },
    });
    const result = solve(rig, pose);
    const lengths = (name: string) =>
      (['x', 'y', 'z'] as const).map((axis) => Math.hypot(...column(result, name, axis)));
    const [cos, sin] = [0.5, Math.sqrt(0.75)];
    expectClose(lengths('boom'), [1, Math.hypot(2 * cos, sin), Math.hypot(2 * sin, cos)], EXACT);
    expectClose(lengths('jib'), [2, 3, 1], EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('is read after the reach: by another child, by a follower, by the later links of its lower bone', () => {
    const result = solve(
      crane({
        load: [9, 0, 0],
        mate: [0, 1, 0],
        later: [{ name: 'straighten', kind: 'limit', cone: 0, twist: [0, 0] }],
        others: [
          bone('lamp', { parent: 'boom', at: [0, 1, 1] }),
          bone('otter', { links: [{ name: 'copy', kind: 'follow', source: 'boom' }] }),
        ],
      }),
    );
    expectClose(columns(result, 'otter'), columns(result, 'boom'), EXACT);
    expectClose(baseOf(result, 'lamp'), [1, 1, 0], EXACT);
    expectClose(columns(result, 'jib'), [0, 0, -1, 0, 1, 0, 1, 0, 0], EXACT);
  });

  it('finds its parent before the reach in earlier links', () => {
    const rig = crane({ load: [9, 0, 0], mate: [0, 1, 0] });
    const bones = rig.bones.map((b) =>
      b.name === 'jib'
        ? { ...b, links: [{ name: 'straighten', kind: 'limit', cone: 0 } as const, ...(b.links ?? [])] }
        : b,
    );
    const result = solve({ ...rig, bones }, posed({ jib: { turn: QUARTER.y } }));
    expectClose(tipOf(result, 'jib', LOWER), [7, 0, 0], EXACT);
  });

  it('chains: the lower bone of one is the upper of the next', () => {
    const hook = bone('hook', {
      parent: 'jib',
      at: [0, 0, 7],
      length: 2,
      attach: 'tip',
      links: [{ name: 'catch', kind: 'reach', target: { bone: 'fish' }, pole: { bone: 'mate' } }],
    });
    const fish = bone('fish', { at: [1, 1, -4] });
    const result = solve(crane({ load: [5, 0, 0], mate: [2, -7, 0], others: [fish, hook] }));
    expectClose(baseOf(result, 'jib'), [1.8, -2.4, 0], EXACT);
    expectClose(tipOf(result, 'hook', 2), [1, 1, -4], EXACT);
    expectClose(tipOf(result, 'jib', LOWER), baseOf(result, 'hook'), EXACT);
    expect(flagsOf(result)).toEqual([]);
  });

  it('moves what is attached to its tips along', () => {
    const rig = crane({
      load: [5, 0, 0],
      mate: [2, -7, 0],
      jib: { attach: 'tip' },
      others: [bone('bucket', { parent: 'jib', at: [0, 0, 7], attach: 'tip' })],
    });
    const result = solve(rig, posed({ bucket: { move: [1, 1, 1] } }));
    expectClose(baseOf(result, 'jib'), [1.8, -2.4, 0], EXACT);
    expectClose(baseOf(result, 'bucket'), [5, 0, 0], EXACT);
  });
});
