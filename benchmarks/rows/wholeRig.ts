/** Otter from the waist up, a pose at a time: 30 bones, 10 links and 4 drivers. */
import { createState, evaluate, type Program } from '../../src/solver/index.ts';
import type { Contest } from '../contest.ts';
import { FlatOtter } from '../peers/flatOtter.ts';
import { ThreeMaths } from '../peers/threeMaths.ts';
import { ThreeScene } from '../peers/threeScene.ts';
import { OTTER } from '../rigs/otter.ts';
import { otterPoses } from '../rigs/otterPoses.ts';
import { programOf } from '../rigs/programOf.ts';

const POSES = 64;

export function wholeRig(): Contest {
  const program = programOf(OTTER);
  const state = createState(program);
  const poses = otterPoses(OTTER, program, POSES);
  const [scene, maths, flat] = [new ThreeScene(OTTER), new ThreeMaths(OTTER), new FlatOtter(OTTER)];
  let turn = 0;
  const next = () => poses[turn++ % POSES];
  const off = (peer: ThreeScene | ThreeMaths | FlatOtter) =>
    worstDifference(program, poses, (pose) => worldsOf(program, peer, pose)).toExponential(1);
  return {
    work: 'whole rig, 30 bones, 10 links, 4 drivers',
    unit: 'ns a pose',
    perCall: 1,
    contenders: {
      ours: () => evaluate(program, state, next()),
      'three scene': () => scene.run(next()),
      'three maths': () => maths.run(next()),
      'flat loop': () => flat.run(next()),
    },
    asks: [
      { peer: 'three scene', atLeast: 9 },
      { peer: 'three maths', atLeast: 5 },
    ],
    notes: [
      `the scene is ${off(scene)} m or unit off ours at most, the maths ${off(maths)}, the flat loop ${off(flat)}`,
    ],
  };
}

/** Both do the same work: the largest difference of any number of any world matrix. */
function worstDifference(
  program: Program,
  poses: readonly Float64Array[],
  theirs: (pose: Float64Array) => Float64Array,
): number {
  const state = createState(program);
  let off = 0;
  for (const pose of poses) {
    evaluate(program, state, pose);
    const worlds = theirs(pose);
    state.world.forEach((value, i) => {
      off = Math.max(off, Math.abs(worlds[i] - value));
    });
  }
  return off;
}

/** The worlds of a peer after a pose, as ours lie. */
function worldsOf(program: Program, peer: ThreeScene | ThreeMaths | FlatOtter, pose: Float64Array): Float64Array {
  peer.run(pose);
  if (peer instanceof FlatOtter) return peer.worlds;
  return Float64Array.from(
    program.boneNames.flatMap((name) => {
      const { elements } = peer.world(name);
      return [0, 1, 2, 4, 5, 6, 8, 9, 10, 12, 13, 14].map((i) => elements[i]);
    }),
  );
}
