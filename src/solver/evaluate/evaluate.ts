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

/** Poses taken over at a time: those of a rig of some dozen bones fit the processor's nearest memory. */
const BLOCK = 16;

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
  const { poseLength } = program;
  // Taken over some at a time, poses come from memory faster than bone by bone.
  const block = new Float64Array(poseLength * Math.min(count, BLOCK));
  for (let start = 0; start < count; start += BLOCK) {
    const end = Math.min(count, start + BLOCK);
    block.set(poses.subarray(poseLength * start, poseLength * end));
    for (let i = start; i < end; i++) {
      evaluate(program, state, block, poseLength * (i - start));
      worlds.set(state.world, i * state.world.length);
    }
  }
}
