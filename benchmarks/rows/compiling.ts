/** Making the largest rig ready: 256 bones, two links each on nearly all, and a driver on every fourth. */
import { type Bone, compile, type Driver, type Link, type Rig } from '../../src/solver/index.ts';
import type { Contest } from '../contest.ts';

const COUNT = 256;
const FREE = 16;

export function compiling(): Contest {
  const rig = largest();
  return {
    work: 'compiling 256 bones, 480 links, 60 drivers',
    unit: 'ms a rig',
    perCall: 1,
    unitNs: 1e6,
    contenders: { ours: () => void compile(rig) },
  };
}

function largest(): Rig {
  const bones = Array.from({ length: COUNT }, (_, i): Bone => {
    const links: Link[] = [
      { name: 'watch', kind: 'aim', target: { bone: `bone_${i % FREE}` } },
      { name: 'hold', kind: 'limit', cone: 40 },
    ];
    return {
      name: `bone_${i}`,
      parent: i === 0 ? null : `bone_${(i - 1) >> 1}`,
      role: 'skin',
      rest: { base: [0.01 * i, 0, 0], turn: [0, 0, 0, 1], length: 0.1 },
      switches: i % 4 === 0 ? [{ name: 'let_go', min: 0, max: 1, default: 1, sliding: true }] : [],
      links: i < FREE ? [] : links,
    };
  });
  const drivers = bones
    .filter((_, i) => i >= FREE && i % 4 === 0)
    .map(
      ({ name }): Driver => ({
        name: `let_go_${name}`,
        inputs: [{ from: { switch: `${name}.let_go` } }],
        map: {
          keys: [
            [0, 1],
            [1, 0],
          ],
        },
        output: { bone: name, link: 'watch', field: 'weight' },
      }),
    );
  return { format: 'counterpose/rig', version: 1, bones, drivers };
}
