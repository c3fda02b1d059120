import { useId } from 'react';
import type { Quat, Vec3 } from '../../solver/document/rig.ts';
import { anglesOf } from '../pose/angles.ts';
import type { Solved } from '../pose/solved.ts';
import { numberText } from '../sentence/piece.ts';
import { frameAt } from './frame.ts';
import { cross, dot, lengthOf, minus, scaled, unit } from './vector.ts';

/** Heads of the columns: what goes before is said where it is not seen. */
const COLUMNS: readonly { unseen: string; head: string }[] = [
  { unseen: '', head: 'base x' },
  { unseen: 'base ', head: 'y' },
  { unseen: 'base ', head: 'z' },
  { unseen: '', head: 'turn x' },
  { unseen: 'turn ', head: 'y' },
  { unseen: 'turn ', head: 'z' },
  { unseen: '', head: 'length' },
];

/** Where every bone stands and how it is turned, in numbers: all that the plate shows, without a picture. */
export function PoseTable({ solved }: { solved: Solved }) {
  const note = useId();
  return (
    <>
      <p className="wb-note" id={note}>
        Bones in this pose: base in metres, turn in degrees about x, y, z of the rig, length in metres.
      </p>
      {/* A table wider than the page is scrolled by arrow keys once it has the focus. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: see above */}
      {/* biome-ignore lint/a11y/useSemanticElements: it is no set of fields */}
      <div className="wb-table" role="group" aria-label="Table of the pose in numbers" tabIndex={0}>
        <table aria-describedby={note}>
          <thead>
            <tr>
              <th scope="col">bone</th>
              {COLUMNS.map(({ unseen, head }) => (
                <th scope="col" key={unseen + head}>
                  {unseen && <span className="unseen">{unseen}</span>}
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {poseRows(solved).map(({ name, numbers }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                {numbers.map((number, i) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the columns never change
                  <td key={i}>{number}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

export interface PoseRow {
  readonly name: string;
  readonly numbers: readonly string[];
}

export function poseRows({ rig, world }: Solved): PoseRow[] {
  return rig.bones.map((bone, i) => {
    const { y, z, base } = frameAt(world, i);
    const angles = anglesOf(turnFrom(y, z), 'xyz');
    const length = lengthOf(z) * bone.rest.length;
    return {
      name: bone.name,
      numbers: [
        ...base.map((value) => numberText(Number(value.toFixed(4)))),
        ...angles.map((value) => numberText(Number(value.toFixed(1)))),
        numberText(Number(length.toFixed(4))),
      ],
    };
  });
}

/** The turn whose z and y axes these are, made square. */
function turnFrom(yAxis: Vec3, zAxis: Vec3): Quat {
  const z = unit(zAxis);
  const y = unit(minus(yAxis, scaled(z, dot(yAxis, z))), [0, 1, 0]);
  const x = cross(y, z);
  const w = Math.sqrt(Math.max(0, 1 + x[0] + y[1] + z[2])) / 2;
  if (w > 1e-4) return [(y[2] - z[1]) / (4 * w), (z[0] - x[2]) / (4 * w), (x[1] - y[0]) / (4 * w), w];
  const i = Math.sqrt(Math.max(0, 1 + x[0] - y[1] - z[2])) / 2;
  const j = Math.sqrt(Math.max(0, 1 - x[0] + y[1] - z[2])) / 2;
  const k = Math.sqrt(Math.max(0, 1 - x[0] - y[1] + z[2])) / 2;
  return [i, x[1] + y[0] < 0 ? -j : j, x[2] + z[0] < 0 ? -k : k, w];
}
