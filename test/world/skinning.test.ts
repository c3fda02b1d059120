import { readFileSync } from 'node:fs';
import { type Document, type Node, WebIO } from '@gltf-transform/core';
import {
  BufferGeometry,
  Float32BufferAttribute,
  Skeleton,
  SkinnedMesh,
  Bone as ThreeBone,
  Uint16BufferAttribute,
  Vector3,
} from 'three';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Bone, Mesh, Pose, Quat, Vec3 } from '../../src/solver/index.ts';
import {
  bindMesh,
  compile,
  createState,
  evaluate,
  packPose,
  readPose,
  readRig,
  skinMesh,
  withWeights,
} from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { about, bone, NONE, rigDocument, solved } from './stage.ts';

/** The strip of ten vertices in Khronos SimpleSkin, read by gltf-transform, in a rig of two bones. */

let asset: Document;
beforeAll(async () => {
  const json = JSON.parse(readFileSync(new URL('../data/SimpleSkin.gltf', import.meta.url), 'utf8'));
  asset = await new WebIO().readJSON({ json, resources: {} });
});

const joints = (): Node[] => asset.getRoot().listSkins()[0].listJoints();
const attribute = (name: string) => {
  const found = asset.getRoot().listMeshes()[0].listPrimitives()[0].getAttribute(name)!;
  return Array.from({ length: found.getCount() }, (_, i) => found.getElement(i, []) as number[]);
};

function stripBones(): Bone[] {
  const [root, bend] = joints().map((joint) => joint.getWorldTranslation() as unknown as Vec3);
  return [bone('root', { base: root, role: 'skin' }), bone('bend', { parent: 'root', base: bend, role: 'skin' })];
}

/** Vertices as they come out of rig and pose; the weights are the asset's where `own` says so, else by distance. */
function skinned(mesh: Mesh, bones: Bone[], pose: Pose, own?: { indices: number[]; weights: number[] }): Vec3[] {
  const rig = readRig({ ...rigDocument(bones), mesh });
  if (!rig.ok) throw new Error(JSON.stringify(rig.refusal));
  const compiled = compile(rig.value);
  if (!compiled.ok) throw new Error(compiled.cycle.join());
  const state = createState(compiled.program);
  evaluate(compiled.program, state, packPose(compiled.program, pose));
  const bound = bindMesh(rig.value)!;
  const weighted = own
    ? withWeights(bound, { indices: Int32Array.from(own.indices), weights: Float64Array.from(own.weights) })
    : bound;
  const out = new Float64Array(mesh.positions.length);
  skinMesh(weighted, state.world, out);
  return Array.from({ length: out.length / 3 }, (_, i) => Array.from(out.slice(3 * i, 3 * i + 3)) as unknown as Vec3);
}

const strip = (turn: Quat): Vec3[] =>
  skinned(
    { positions: attribute('POSITION').flat(), triangles: [] },
    stripBones(),
    { bones: { bend: { turn } } },
    { indices: attribute('JOINTS_0').flat(), weights: attribute('WEIGHTS_0').flat() },
  );

/** Khronos glTF tutorials 019 and 020 (data seen); three and gl-matrix agree to 4.4e-16. */
describe('SimpleSkin', () => {
  const at = (turnDeg: number, expected: Record<number, number[]>, tolerance: number) => {
    const vertices = strip(about([0, 0, 1], turnDeg));
    for (const [i, v] of Object.entries(expected)) expectClose(vertices[Number(i)], v, tolerance, `vertex ${i}`);
  };

  test('D11: at rest nothing moves (glTF tutorial 020: joint matrix = global · inverse bind, seen)', () => {
    strip(NONE).forEach((v, i) => {
      expectClose(v, attribute('POSITION')[i], 1e-15);
    });
    const inverse = asset.getRoot().listSkins()[0].getInverseBindMatrices()!;
    expectClose(inverse.getElement(1, []) as number[], [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, -1, 0, 1], 0);
  });

  test('D12: the joint at 45°', () => {
    const to6 = {
      2: [-0.375, 0.448223, 0],
      4: [-0.426777, 0.823223, 0],
      5: [0.426777, 1.176777, 0],
      6: [-0.65533, 1.125, 0],
      8: [-1.06066, 1.353553, 0],
      9: [-0.353553, 2.06066, 0],
    };
    at(45, to6, 1e-6);
  });

  test('D13: the joint at 90°', () => {
    const exact = {
      2: [-0.25, 0.5, 0],
      4: [-0.25, 0.75, 0],
      5: [0.25, 1.25, 0],
      6: [-0.5, 0.75, 0],
      8: [-1, 0.5, 0],
      9: [-1, 1.5, 0],
    };
    at(90, exact, 1e-12);
  });

  test('D14: the joint at 180° closes the seam to a point', () => {
    at(180, { 4: [0, 1, 0], 5: [0, 1, 0] }, 1e-12);
  });

  test('D15: its weights are complementary', () => {
    const pairs = { 2: [0.75, 0.25], 4: [0.5, 0.5], 6: [0.25, 0.75], 8: [0, 1] };
    for (const [i, pair] of Object.entries(pairs)) expectClose(attribute('WEIGHTS_0')[Number(i)].slice(0, 2), pair, 0);
  });

  test('B11: a keyed quaternion of length 0.999849 is refused, and made unit does not shrink the strip', () => {
    const key = animated()[2];
    expectClose(Math.hypot(...key), 0.999849, 1e-6);
    const rig = readRig(rigDocument(stripBones()));
    if (!rig.ok) throw new Error(rig.refusal.found);
    const refused = readPose({ bones: { bend: { turn: [...key] } } }, rig.value);
    expect(refused.ok).toBe(false);
    if (!refused.ok) expect(refused.refusal.place).toBe('/bones/bend/turn');
    expectClose(strip(unit(key))[8], [-1, 0.5, 0], 1e-12);
    expect(() => expectClose(strip(unit(key))[8], [-0.999849, 0.500453, 0], 1e-4)).toThrow(/off by/);
  });

  test('gltf-transform 4.5: the joints at every key of the animation', () => {
    expect(animated()).toHaveLength(12);
    for (const key of animated()) {
      joints()[1].setRotation([...unit(key)] as [number, number, number, number]);
      const there = solved(rigDocument(stripBones()), { bones: { bend: { turn: unit(key) } } });
      expectClose(there.root.matrix, joints()[0].getWorldMatrix(), 1e-15);
      expectClose(there.bend.matrix, joints()[1].getWorldMatrix(), 1e-15);
    }
    joints()[1].setRotation([0, 0, 0, 1]);
  });

  test('three 0.187, SkinnedMesh: the vertices at every key of the animation', () => {
    let worst = 0;
    for (const key of animated()) {
      const theirs = threeVertices(unit(key));
      strip(unit(key)).forEach((v, i) => {
        expectClose(v, theirs[i], 1e-15, `vertex ${i}`);
        worst = Math.max(worst, ...v.map((x, k) => Math.abs(x - theirs[i][k])));
      });
    }
    console.log(`three, SkinnedMesh: worst ${worst.toExponential(2)}`);
  });
});

/** The twelve keys of the second joint's turn, as stored: three decimals, not all unit. */
function animated(): Quat[] {
  const sampler = asset.getRoot().listAnimations()[0].listSamplers()[0].getOutput()!;
  return Array.from({ length: sampler.getCount() }, (_, i) => sampler.getElement(i, []) as unknown as Quat);
}

function unit(q: Quat): Quat {
  const length = Math.hypot(...q);
  return q.map((x) => x / length) as unknown as Quat;
}

function threeVertices(turn: Quat): Vec3[] {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute(attribute('POSITION').flat(), 3));
  geometry.setAttribute('skinIndex', new Uint16BufferAttribute(attribute('JOINTS_0').flat(), 4));
  geometry.setAttribute('skinWeight', new Float32BufferAttribute(attribute('WEIGHTS_0').flat(), 4));
  const [root, bend] = [new ThreeBone(), new ThreeBone()];
  bend.position.set(0, 1, 0);
  root.add(bend);
  const mesh = new SkinnedMesh(geometry);
  mesh.add(root);
  mesh.updateMatrixWorld(true);
  mesh.bind(new Skeleton([root, bend]));
  bend.quaternion.set(...turn);
  mesh.updateMatrixWorld(true);
  return attribute('POSITION').map((v, i) =>
    mesh.applyBoneTransform(i, new Vector3(...(v as unknown as Vec3))).toArray(),
  );
}

/**
 * A ring of radius 1 about the twist axis, between a still bone and one twisted by θ. Linear: radius √(1 − 2w(1 − w)(1 − cos θ));
 * dual quaternions: radius 1, angle 2·atan2(w·sin θ/2, 1 − w + w·cos θ/2). The collapse: Kavan, Collins, Žára and
 * O'Sullivan, Skinning with Dual Quaternions, I3D 2007, abstract (seen); the numbers are computed.
 */
describe('a twisted ring, bound by distance', () => {
  const ring = (skinning: 'linear' | 'dual', twistDeg: number) => {
    const bones = [bone('still', { role: 'skin' }), bone('twisted', { role: 'skin' })];
    const positions = [1, 0, 0, 0, 1, 0, -0.6, 0.8, 0];
    return skinned({ positions, triangles: [], skinning }, bones, {
      bones: { twisted: { turn: about([0, 0, 1], twistDeg) } },
    });
  };
  const CASES: [string, number, number, number][] = [
    ['E1', 180, 0, 90],
    ['E2', 90, Math.SQRT1_2, 45],
    ['E3', 135, 0.38268343, 67.5],
  ];
  test.each(CASES)(
    '%s: by %f° half and half, linear radius %f, dual radius 1 turned by %f°',
    (_, twist, radius, half) => {
      for (const v of ring('linear', twist)) expectClose(Math.hypot(...v), radius, 1e-8);
      for (const v of ring('dual', twist)) expectClose(Math.hypot(...v), 1, 1e-12);
      const [x, y] = ring('dual', twist)[0];
      // At 180° both ways round are equally short.
      expectClose((Math.abs(Math.atan2(y, x)) * 180) / Math.PI, half, 1e-7);
    },
  );

  test('E8: a twist by 190° is one by −170°, whichever sign the quaternion has (Kavan and others, antipodality, from memory)', () => {
    ring('dual', 190).forEach((v, i) => {
      expectClose(v, ring('dual', -170)[i], 1e-12);
    });
  });
});
