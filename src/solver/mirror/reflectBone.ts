import type { Rename } from '../document/renaming.ts';
import type { Bone, Rest } from '../document/rig.ts';
import { reflectLink } from './reflectLink.ts';
import { reflectTurn, reflectVector } from './values.ts';

const reflectRest = (rest: Rest): Rest => ({ ...rest, base: reflectVector(rest.base), turn: reflectTurn(rest.turn) });

/** A bone and its links across x = 0, with every bone that is named renamed. Its switches stay. */
export const reflectBone = (bone: Bone, rename: Rename): Bone => ({
  ...bone,
  name: rename(bone.name),
  parent: bone.parent === null ? null : rename(bone.parent),
  rest: reflectRest(bone.rest),
  ...(bone.links && { links: bone.links.map((link) => reflectLink(link, rename)) }),
});
