import { type Reader, refuse, refuseValue } from './reader.ts';
import type { Mesh } from './rig.ts';
import { needed, optional, record } from './structures.ts';
import { oneOf } from './values.ts';
import { inWords } from './words.ts';

/** A long list of numbers three by three; no work is done per number beyond looking at it. */
function threes(noun: string, each: string, allows: (value: number) => boolean): Reader<readonly number[]> {
  return (value) => {
    if (!Array.isArray(value)) return refuseValue(value, `${noun}: a list of numbers`);
    if (value.length % 3 !== 0) return refuse(`${value.length} numbers`, `${noun}: three numbers for each`);
    const bad = value.findIndex((one) => typeof one !== 'number' || !allows(one));
    if (bad >= 0) return refuse(inWords(value[bad]), each, [bad]);
    return value.map((one: number) => one + 0);
  };
}

const readFields: Reader<Mesh> = record('a mesh', {
  positions: needed(threes('positions', 'a finite number', Number.isFinite)),
  triangles: needed(threes('triangles', 'a whole number from 0', (value) => Number.isInteger(value) && value >= 0)),
  skinning: optional(oneOf(['linear', 'dual'])),
});

/** A mesh. A rig without a skin bone may have one: nothing pulls at it then. */
export const readMesh: Reader<Mesh> = (value, known) => {
  const mesh = readFields(value, known);
  const vertices = mesh.positions.length / 3;
  const bad = mesh.triangles.findIndex((vertex) => vertex >= vertices);
  if (bad >= 0) {
    refuse(`vertex ${mesh.triangles[bad]}`, `a vertex below ${vertices}, of which there are`, ['triangles', bad]);
  }
  return mesh;
};
