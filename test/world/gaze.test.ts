import { Quaternion, Vector3 } from 'three';
import { describe, test } from 'vitest';
import type { AimLink, Quat, Vec3 } from '../../src/solver/index.ts';
import { expectClose } from '../support/close.ts';
import { bone, DEG, stand } from './stage.ts';

/** Numbers of human gaze, by two aims or by one aim done two ways. */

const watch: AimLink = { name: 'watch', kind: 'aim', target: { bone: 'kite' } };
const forward = (turn: Quat) => new Vector3(0, 0, 1).applyQuaternion(new Quaternion(...turn));

/** The angle in degrees between the gaze lines of two eyes on the middle line's target. */
function vergence(pupillaryDistanceM: number, distanceM: number): number {
  const eye = (name: string, x: number) => bone(name, { base: [x, 0, 0], links: [watch] });
  const bones = [
    bone('kite', { base: [0, 0, distanceM] }),
    eye('eye_left', pupillaryDistanceM / 2),
    eye('eye_right', -pupillaryDistanceM / 2),
  ];
  const { eye_left, eye_right } = stand(bones);
  const [left, right] = [forward(eye_left.turn), forward(eye_right.turn)];
  return Math.atan2(left.clone().cross(right).length(), left.dot(right)) / DEG;
}

/** Vergence is 2·atan(distance between pupils / twice the target's distance) (standard geometry, from memory). */
describe('vergence', () => {
  test.each([
    [0.25, 13.6855],
    [1 / 3, 10.2855],
    [0.4, 8.5783],
    [0.5, 6.8673],
    [1, 3.4367],
    [2, 1.7187],
    [6, 0.573],
  ])('I10: 60 mm apart, target at %f m: %f° (computed)', (distance, expected) => {
    expectClose(vergence(0.06, distance), expected, 1e-4);
  });

  test.each([
    [0.25, 14.3628],
    [0.4, 9.0055],
    [0.5, 7.2097],
    [1, 3.6084],
    [6, 0.6016],
  ])(
    'I11: 63 mm apart (Dodgson 2004, mean adult distance, seen), target at %f m: %f° (computed)',
    (distance, expected) => {
      expectClose(vergence(0.063, distance), expected, 1e-4);
    },
  );

  test.each([
    [0.4, 15],
    [0.25, 24],
    [1, 6],
    [6, 1],
  ])(
    'I12: 60 mm apart at %f m is a demand of %f prism dioptres, both eyes together (15 at 0.4 m from memory)',
    (distance, demand) => {
      const perEye = 100 * Math.tan((vergence(0.06, distance) / 2) * DEG);
      expectClose(2 * perEye, demand, 1e-10);
      expectClose((2 * perEye) / 6, 1 / distance, 1e-11);
    },
  );
});

test.each([
  [1, 0.5729387],
  [7, 4.0042],
  [100, 45],
])(
  'I8: %f prism dioptres, as many centimetres aside at one metre, are %f° (100·tan, medical dictionary, seen)',
  (prism, angle) => {
    const bones = [bone('kite', { base: [prism / 100, 0, 1] }), bone('eye', { links: [watch] })];
    const { x, z } = forward(stand(bones).eye.turn);
    expectClose(Math.atan2(x, z) / DEG, angle, 1e-4);
  },
);

/** False torsion: how far the shortest turn (Listing's law) rolls against one that keeps the upright meridian upright. */
describe('Listing’s law', () => {
  function falseTorsion(horizontalDeg: number, verticalDeg: number): number {
    const [h, v] = [horizontalDeg * DEG, verticalDeg * DEG];
    const base: Vec3 = [Math.sin(h) * Math.cos(v), Math.sin(v), Math.cos(h) * Math.cos(v)];
    const upright: AimLink = { ...watch, up: { axis: '+y', toward: { direction: [0, 1, 0] } } };
    const bones = [bone('kite', { base }), bone('shortest', { links: [watch] }), bone('upright', { links: [upright] })];
    const there = stand(bones);
    const between = new Quaternion(...there.upright.turn).invert().multiply(new Quaternion(...there.shortest.turn));
    expectClose([between.x, between.y], [0, 0], 1e-15);
    return Math.abs((2 * Math.atan2(between.z, between.w)) / DEG);
  }

  test.each([
    [10, 0.877097],
    [20, 3.561642],
    [30, 8.213211],
    [40, 15.092562],
  ])(
    'I17: %f° out and up rolls %f° (Nakayama, Ciuffreda and Schor 1983, formula as coded in gkaModelEye, seen)',
    (each, torsion) => {
      expectClose(falseTorsion(each, each), torsion, 1e-5);
    },
  );

  test.each([
    [10, 1],
    [20, 3],
    [30, 8],
    [40, 15],
  ])(
    'I16: %f° out and up, about %f° (Duane’s Ophthalmology, vol. 8 ch. 23 fig. 4, whole degrees, seen)',
    (each, torsion) => {
      expectClose(falseTorsion(each, each), torsion, 0.6);
    },
  );

  test('I17: sin T = sin H·sin V / (1 + cos H·cos V) over a grid', () => {
    for (let h = -40; h <= 40; h += 10) {
      for (let v = -40; v <= 40; v += 10) {
        const [H, V] = [h * DEG, v * DEG];
        const sinT = (Math.sin(H) * Math.sin(V)) / (1 + Math.cos(H) * Math.cos(V));
        expectClose(falseTorsion(h, v), Math.abs(Math.asin(sinT) / DEG), 1e-12);
      }
    }
  });
});
