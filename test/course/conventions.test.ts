import { describe, expect, test } from 'vitest';
import { matrixOf, snippets } from '../../src/course/conventions/snippets.ts';
import { expectClose } from '../support/close.ts';

const rad = (degrees: number) => (degrees * Math.PI) / 180;
const [sin, cos] = [(degrees: number) => Math.sin(rad(degrees)), (degrees: number) => Math.cos(rad(degrees))];
const given = snippets();

/** x, y, z axes and base of the snippet's bone. */
function frame(name: string, bone?: string) {
  const snippet = given.get(name)!;
  const m = matrixOf(snippet, bone ?? snippet.bone);
  return {
    x: m.slice(0, 3),
    y: m.slice(4, 7),
    z: m.slice(8, 11),
    base: m.slice(12, 15),
    last: [m[3], m[7], m[11], m[15]],
  };
}

// Expected values: plain trigonometry on the definitions, worked out here with Math.sin and Math.cos.
describe('the conventions page shows what the conventions say', () => {
  test('a matrix: axes in columns, base last, moved before it is turned', () => {
    const { x, y, z, base, last } = frame('matrix');
    expectClose(x, [cos(30), 0, -sin(30)], 1e-15);
    expectClose(y, [0, 1, 0], 1e-15);
    expectClose(z, [sin(30), 0, cos(30)], 1e-15);
    expectClose(base, [0.2, 1.5, 0], 1e-15);
    expect(last).toEqual([0, 0, 0, 1]);
  });

  test('turn order xyz is Rx·Ry·Rz, zyx is Rz·Ry·Rx', () => {
    // Rz(90) takes x to y, then Rx(90) takes y to z; the other way round x stays under Rx and goes to y under Rz.
    expectClose(frame('turn-order').x, [0, 0, 1], 1e-15);
    expectClose(frame('turn-order', 'other').x, [0, 1, 0], 1e-15);
  });

  test('follow with the offset kept carries the bone around the source', () => {
    const { base, z } = frame('follow');
    expectClose(base, [1, 0.5, 0], 1e-15);
    expectClose(z, [1, 0, 0], 1e-15);
  });

  test('aim is the shortest turn: a 3-4-5 triangle', () => {
    const { x, y, z } = frame('aim');
    expectClose(z, [0.6, 0, 0.8], 1e-15);
    expectClose(y, [0, 1, 0], 1e-15);
    expectClose(x, [0.8, 0, -0.6], 1e-15);
  });

  test('aim with up +y at (1,1,1): cross products', () => {
    const { x, y, z } = frame('aim-up');
    expectClose(
      z,
      [1, 1, 1].map((v) => v / Math.sqrt(3)),
      1e-15,
    );
    expectClose(
      x,
      [1, 0, -1].map((v) => v / Math.sqrt(2)),
      1e-15,
    );
    expectClose(
      y,
      [-1, 2, -1].map((v) => v / Math.sqrt(6)),
      1e-15,
    );
  });

  test('span keeps the volume: r along, 1/√r to the sides', () => {
    const { x, y, z } = frame('span');
    expectClose([x[0], y[1], z[2]], [1 / Math.sqrt(1.5), 1 / Math.sqrt(1.5), 1.5], 1e-15);
  });

  test('share turns by half of 80°', () => {
    expectClose(frame('share').x, [cos(40), sin(40), 0], 1e-15);
  });

  test('limit stops the yaw at 40°', () => {
    expectClose(frame('limit').z, [sin(40), 0, cos(40)], 1e-15);
  });

  test('reach: sides 3, 4, 5 make a right angle at the knee', () => {
    const { base, z } = frame('reach');
    expectClose(base, [0, 0.24, 0.18], 1e-15);
    expectClose(z, [0, -0.6, 0.8], 1e-15);
  });

  test('a driver through the inverted map leaves three quarters of 45°', () => {
    expectClose(frame('driver').z, [sin(33.75), 0, cos(33.75)], 1e-15);
  });

  test('every snippet is shown on the page', async () => {
    const page = await import('node:fs').then((fs) => fs.readFileSync('src/pages/conventions.astro', 'utf8'));
    for (const name of given.keys()) expect(page).toContain(`<Snippet name="${name}"`);
  });
});
