/**
 * The rig of rigs/otter.ts as one would write it by hand in a flat array, knowing which bone does what and that links meet
 * no sizes: the practical limit of this machine. Twelve doubles a world, the identity after the last.
 */
import type { Rig } from '../../src/solver/index.ts';
import { copyTurn, reachWithPole, spanTo, turnToward, watchUp } from './flatLinks.ts';
import { type FlatRests, flatPoses } from './flatPoses.ts';
import { keepWithin, turnAbout, twistOf } from './flatTwists.ts';
import { restsOf } from './rests.ts';

const DEG = Math.PI / 180;

/** Bones that can be posed together, the links of those before them done. */
const STAGES = [
  'root hip spine chest neck skull holder target_right grip_left pole_left rudder shoulder_left upper_left lower_left shoulder_right upper_right lower_right hand_right',
  'target_left gaze_left gaze_right eye_left eye_right lid_left lid_right brow_left brow_right indicator hand_left roll_left',
];

export class FlatOtter {
  readonly worlds: Float64Array;
  readonly #rests: FlatRests;
  readonly #stages: readonly Int32Array[];
  readonly #at: Record<string, number>;

  constructor(rig: Rig) {
    const { names, index, parents, bases, turns } = restsOf(rig);
    const count = names.length;
    this.worlds = new Float64Array(12 * count + 12);
    for (const diagonal of [0, 4, 8]) this.worlds[12 * count + diagonal] = 1;
    this.#rests = {
      parents: Int32Array.from(parents, (parent) => 12 * (parent < 0 ? count : parent)),
      bases: Float64Array.from(bases.flatMap((base) => base.toArray())),
      turns: Float64Array.from(turns.flatMap((turn) => turn.toArray())),
    };
    this.#stages = STAGES.map((stage) => Int32Array.from(stage.split(' '), (name) => index.get(name)!));
    this.#at = Object.fromEntries(names.map((name, i) => [name, 12 * i]));
  }

  run(pose: Float64Array): void {
    const { worlds: m } = this;
    const rests = this.#rests;
    const at = this.#at;
    const letGo = 1 - pose[300];
    flatPoses(m, rests, this.#stages[0], pose);
    keepWithin(m, rests, at.skull, 70 * DEG, 40 * DEG, 60 * DEG);
    turnToward(m, at.rudder, at.holder, 1);
    reachWithPole(m, at.upper_left, at.lower_left, 0.25, at.grip_left, at.pole_left);
    flatPoses(m, rests, this.#stages[1], pose);
    const x = -0.03 * pose[301];
    m[at.target_left + 9] += m[at.holder] * x;
    m[at.target_left + 10] += m[at.holder + 1] * x;
    m[at.target_left + 11] += m[at.holder + 2] * x;
    const frownDeg = (-0.5 * twistOf(m, rests, at.skull, 0)) / DEG;
    turnAbout(m, at.brow_left, 0, Math.min(20, Math.max(-20, frownDeg)) * DEG);
    watchUp(m, at.gaze_left, at.target_left, at.skull, letGo);
    watchUp(m, at.gaze_right, at.target_right, at.skull, letGo);
    copyTurn(m, at.gaze_left, at.eye_left);
    copyTurn(m, at.gaze_right, at.eye_right);
    turnToward(m, at.lid_left, at.target_left, 0.5);
    spanTo(m, at.indicator, at.holder, 0.3);
    turnAbout(m, at.roll_left, 2, 0.5 * twistOf(m, rests, at.hand_left, 2));
  }
}
