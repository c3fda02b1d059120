/** A folder of answers: 40 different rigs, each made ready and then put through 2,000 poses. */
import { compile, createState, evaluateBatch, type Rig } from '../../src/solver/index.ts';
import type { Contest } from '../contest.ts';
import { ThreeMaths } from '../peers/threeMaths.ts';
import { ThreeScene } from '../peers/threeScene.ts';
import { OTTER } from '../rigs/otter.ts';
import { otterPoses } from '../rigs/otterPoses.ts';
import { programOf } from '../rigs/programOf.ts';

const RIGS = 40;
const POSES = 2000;
/** Read by no other bone, so that any of them may be left out. */
const OPTIONAL = ['lid_right', 'brow_right', 'hand_right', 'rudder', 'roll_left', 'indicator'];

export function manyRigs(): Contest {
  const rigs = Array.from({ length: RIGS }, (_, i) => variant(i));
  const batches = rigs.map((rig) => {
    const poses = otterPoses(rig, programOf(rig), POSES);
    return { poses, end: Float64Array.from(poses.flatMap((pose) => [...pose])) };
  });
  const worlds = new Float64Array(12 * OTTER.bones.length * POSES);
  const each = (run: (rig: Rig, i: number) => void) => () => rigs.forEach(run);
  return {
    work: '40 rigs × 2,000 poses, made ready included',
    unit: 'ms a rig',
    perCall: RIGS,
    unitNs: 1e6,
    contenders: {
      ours: each((rig, i) => runOurs(rig, batches[i].end, worlds)),
      'three scene': each((rig, i) => runAll(new ThreeScene(rig), batches[i].poses)),
      'three maths': each((rig, i) => runAll(new ThreeMaths(rig), batches[i].poses)),
    },
    isLong: true,
    asks: [{ peer: 'three scene', atLeast: 7 }],
  };
}

/** Some bones left out, all lengths and places at another scale. */
function variant(i: number): Rig {
  const size = 1 + i / 100;
  const bones = OTTER.bones
    .filter(({ name }) => !OPTIONAL.some((other, bit) => other === name && (i >> bit) % 2 === 1))
    .map((bone) => {
      const [x, y, z] = bone.rest.base;
      return {
        ...bone,
        rest: { ...bone.rest, base: [x * size, y * size, z * size] as const, length: bone.rest.length * size },
      };
    });
  return { ...OTTER, bones };
}

function runOurs(rig: Rig, poses: Float64Array, worlds: Float64Array): void {
  const compiled = compile(rig);
  if (!compiled.ok) throw new Error(compiled.cycle.join(' → '));
  evaluateBatch(compiled.program, createState(compiled.program), poses, POSES, worlds);
}

function runAll(peer: ThreeScene | ThreeMaths, poses: readonly Float64Array[]): void {
  for (const pose of poses) peer.run(pose);
}
