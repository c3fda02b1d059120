import type { Machine } from '../machine/machine.ts';
import { run } from '../machine/run.ts';
import { POSE_STRIDE, type Program, type State } from '../program.ts';

/**
 * Evaluates one packed pose (see packPose), which starts at `offset` of `pose`, into the state. It allocates nothing.
 * Turns in the pose are unit quaternions; numbers that overflow are not caught.
 */
export function evaluate(program: Program, state: State, pose: Float64Array, offset = 0): void {
  const { machine } = state;
  machine.pose = pose;
  machine.poseAt = offset;
  machine.evaluation++;
  machine.flags.fill(0);
  startOn(machine, program);
  run(machine);
}

/** Takes the switches over from the pose the machine holds; drivers may replace them. */
export function startOn(machine: Machine, program: Program): void {
  const { memory, pose } = machine;
  const switches = program.inner.layout.switches;
  const given = machine.poseAt + POSE_STRIDE * program.boneNames.length;
  const count = program.switchNames.length;
  for (let i = 0; i < count; i++) memory[switches + i] = pose[given + i];
}

/**
 * Evaluates `count` packed poses that lie end to end, and writes their worlds (WORLD_STRIDE per bone) end to end. Bit for
 * bit the same as evaluating them one by one; the state is left as the last pose left it.
 */
export function evaluateBatch(
  program: Program,
  state: State,
  poses: Float64Array,
  count: number,
  worlds: Float64Array,
): void {
  // Read in order, a pose comes from memory faster than bone by bone.
  const pose = new Float64Array(program.poseLength);
  for (let i = 0; i < count; i++) {
    const at = i * pose.length;
    for (let k = 0; k < pose.length; k++) pose[k] = poses[at + k];
    evaluate(program, state, pose);
    worlds.set(state.world, i * state.world.length);
  }
}
