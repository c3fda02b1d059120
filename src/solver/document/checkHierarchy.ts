import { refuse, within } from './reader.ts';
import type { Bone, Vec3 } from './rig.ts';
import { inWords, quoted } from './words.ts';

const DEEPEST = 128;
/** Metres between the base of an attached bone and its parent's tip at rest. */
const TIP_TOLERANCE = 1e-6;

type BonesByName = ReadonlyMap<string, Bone>;

/** base + R(turn)·(0, 0, length), rig space. */
function restTip({ base, turn: [x, y, z, w], length }: Bone['rest']): Vec3 {
  return [
    base[0] + 2 * (x * z + w * y) * length,
    base[1] + 2 * (y * z - w * x) * length,
    base[2] + (1 - 2 * (x * x + y * y)) * length,
  ];
}

function distance(a: Vec3, b: Vec3): number {
  const [x, y, z] = [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
  return Math.sqrt(x * x + y * y + z * z);
}

function checkAttach(bone: Bone, byName: BonesByName): void {
  if (bone.attach !== 'tip') return;
  if (bone.parent === null) refuse('"tip" on a bone without a parent', 'a parent, or "free"', ['attach']);
  const tip = restTip(byName.get(bone.parent)!.rest);
  const off = distance(bone.rest.base, tip);
  if (!(off <= TIP_TOLERANCE)) {
    const found = `${inWords(bone.rest.base)}, ${off} m from the tip of ${quoted(bone.parent)}`;
    refuse(found, `the tip of the parent at rest, ${inWords(tip)}, within 0.000001 m`, ['rest', 'base']);
  }
}

/** How many bones from the root to this one, both counted; 0 under a loop of parents, which has no root. */
function depthOf(bone: Bone, byName: BonesByName): number {
  let depth = 1;
  for (let at = bone; at.parent !== null; at = byName.get(at.parent)!) {
    depth++;
    if (depth > byName.size) return 0;
  }
  return depth;
}

/** Attached bases on their parents' tips and no chain too deep. A loop of parents is a cycle: evaluating refuses it. */
export function checkHierarchy(bones: readonly Bone[]): void {
  const byName = new Map(bones.map((bone) => [bone.name, bone]));
  for (const [i, bone] of bones.entries()) {
    within([i], () => checkAttach(bone, byName));
    const depth = depthOf(bone, byName);
    if (depth > DEEPEST)
      refuse(`a bone at depth ${depth}`, `at most depth ${DEEPEST}, where a root is 1`, [i, 'parent']);
  }
}
