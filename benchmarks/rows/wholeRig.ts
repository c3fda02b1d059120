/** Otter from the waist up, a pose at a time: 30 bones, 10 links and 4 drivers. */
import { createState, evaluate, type Program } from '../../src/solver/index.ts';
import type { Contest } from '../contest.ts';
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
  const [scene, maths] = [new ThreeScene(OTTER), new ThreeMaths(OTTER)];
  let turn = 0;
  const next = () => poses[turn++ % POSES];
  const off = (peer: ThreeScene | ThreeMaths) => worstDifference(program, poses, peer).toExponential(1);
  return {
    work: 'whole rig, 30 bones, 10 links, 4 drivers',
    unit: 'ns a pose',
    perCall: 1,
    contenders: {
      ours: () => evaluate(program, state, next()),
      'three scene': () => scene.run(next()),
      'three maths': () => maths.run(next()),
    },
    asks: [
      { peer: 'three scene', atLeast: 9 },
      { peer: 'three maths', atLeast: 5 },
    ],
    notes: [`the scene is ${off(scene)} m or unit off ours at most, the maths ${off(maths)}`],
  };
}

/** Both do the same work: the largest difference of any number of any world matrix. */
function worstDifference(program: Program, poses: readonly Float64Array[], peer: ThreeScene | ThreeMaths): number {
  const state = createState(program);
  let worst = 0;
  for (const pose of poses) {
    evaluate(program, state, pose);
    peer.run(pose);
    program.boneNames.forEach((name, bone) => {
      const { elements } = peer.world(name);
      for (let i = 0; i < 12; i++) {
        const theirs = elements[4 * Math.floor(i / 3) + (i % 3)];
        worst = Math.max(worst, Math.abs(theirs - state.world[12 * bone + i]));
      }
    });
  }
  return worst;
}
