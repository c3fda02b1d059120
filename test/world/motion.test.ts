import { readFileSync } from 'node:fs';
import { Matrix4, type Quaternion, Vector3 } from 'three';
import { BVHLoader } from 'three/examples/jsm/loaders/BVHLoader.js';
import { describe, expect, test } from 'vitest';
import type { Bone, BonePose, Rig, Vec3 } from '../../src/solver/index.ts';
import { compile, readRig, solve } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { bone, rigDocument } from './stage.ts';

/**
 * Seven frames of CMU motion capture 01_01 (see test/data/README.md): a skeleton of 31 joints, 38 with its end sites, read
 * twice, by three's BVH loader and by the few lines below. Lengths are in the file's own unit.
 */

const text = readFileSync(new URL('../data/cmu-01-01-cut.bvh', import.meta.url), 'utf8');

interface Capture {
  bones: Bone[];
  /** Per frame. */
  poses: Record<string, BonePose>[];
}

/** Joints in the order of the file; every joint turns Z, Y, X, each about its own moving axis. */
function readCapture(): Capture {
  const [hierarchy, motion] = text.split('MOTION\n');
  const bones: Bone[] = [];
  const parents: (string | null)[] = [null];
  let name = '';
  for (const line of hierarchy.split('\n').map((each) => each.trim())) {
    const words = line.split(/\s+/);
    if (words[0] === 'ROOT' || words[0] === 'JOINT') name = words[1];
    if (line === 'End Site') name = `${parents.at(-1)}_end`;
    if (words[0] === 'OFFSET') {
      const parent = parents.at(-1)!;
      const from = bones.find((other) => other.name === parent)?.rest.base ?? [0, 0, 0];
      const base = words.slice(1).map((word, i) => Number(word) + from[i]) as unknown as Vec3;
      bones.push(bone(name, { base, turnOrder: 'zyx', ...(parent && { parent }) }));
      parents.push(name);
    }
    if (line === '}') parents.pop();
  }
  const moving = bones.filter((each) => !each.name.endsWith('_end'));
  const poses = motion
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => poseOf(moving, line.split(/\s+/).map(Number)));
  return { bones, poses };
}

function poseOf(moving: Bone[], numbers: number[]): Record<string, BonePose> {
  const move = numbers.slice(0, 3) as unknown as Vec3;
  return Object.fromEntries(
    moving.map(({ name }, i) => {
      const [z, y, x] = numbers.slice(3 + 3 * i, 6 + 3 * i);
      return [name, { turn: { angles: [x, y, z] as const }, ...(i === 0 && { move }) }];
    }),
  );
}

/** Where three puts every joint in a frame, end sites included, in the order of the file. */
function threeBases(frame: number): Vec3[] {
  const { skeleton, clip } = new BVHLoader().parse(text);
  for (const joint of skeleton.bones) {
    for (const track of clip.tracks) {
      if (track.name === `${joint.name}.quaternion`) setQuaternion(joint.quaternion, track.values, 4 * frame);
      if (track.name === `${joint.name}.position`) joint.position.fromArray(track.values, 3 * frame);
    }
  }
  skeleton.bones[0].updateMatrixWorld(true);
  return skeleton.bones.map((joint) =>
    new Vector3().setFromMatrixPosition(new Matrix4().copy(joint.matrixWorld)).toArray(),
  );
}

/** Tracks are kept as float32; made unit again, so that their rounding does not pile up as size. */
const setQuaternion = (q: Quaternion, values: ArrayLike<number>, at: number) =>
  q.fromArray(Array.from(values), at).normalize();

describe('motion capture', () => {
  const { bones, poses } = readCapture();
  const rig = readRig(rigDocument(bones));
  if (!rig.ok) throw new Error(JSON.stringify(rig.refusal));
  const compiled = compile(rig.value as Rig);
  if (!compiled.ok) throw new Error(compiled.cycle.join());

  test('has the joints and frames that it should', () => {
    expect(bones).toHaveLength(38);
    expect(poses).toHaveLength(7);
  });

  test.each(poses.map((_, frame) => [frame]))(
    'three 0.187, BVHLoader: all joints of frame %i, to its float32',
    (frame) => {
      const there = solve(compiled.program, { bones: poses[frame] }).bones;
      const theirs = threeBases(frame);
      bones.forEach(({ name }, i) => {
        expectClose(there[name].matrix.slice(12, 15), theirs[i], 2e-5, name);
      });
    },
  );

  test('lengths of the limbs never change', () => {
    const lengths = (frame: number) => {
      const there = solve(compiled.program, { bones: poses[frame] }).bones;
      const base = (name: string) => new Vector3(...(there[name].matrix.slice(12, 15) as unknown as Vec3));
      return bones
        .filter(({ parent }) => parent !== null)
        .map(({ name, parent }) => base(name).distanceTo(base(parent!)));
    };
    for (let frame = 1; frame < poses.length; frame++) expectClose(lengths(frame), lengths(0), 1e-12);
  });
});
