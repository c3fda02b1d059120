import type { Bone, Role, Vec3 } from '../../solver/document/rig.ts';
import { WORLD_STRIDE } from '../../solver/program.ts';
import { headingRad, notchedRing, paddle, ring, segment, tape, type XY } from '../figure/shapes.ts';
import type { PlateData } from './plate.ts';
import { project } from './view.ts';

/** One bone as SVG path data; the whole drawing is these, in order, the furthest first. */
export interface DrawnBone {
  name: string;
  role: Role;
  outline: string;
  /** From base to tip; empty where the bone is seen end on, or has no spine. */
  spine: string;
  /** The base as a small disc; empty for a control and a guide. */
  base: string;
  /** The line of sight, empty where none was asked for. */
  sight: string;
}

const tickMetres = 0.1;
const baseRadius = 2.6;

/** The bones of a plate in the pose that `world` holds (12 doubles a bone, as the solver writes it). */
export function drawBones(data: PlateData, world: Float64Array): DrawnBone[] {
  return data.rig.bones
    .map((bone, index) => drawBone(data, bone, (along) => pointAt(world, index * WORLD_STRIDE, along)))
    .sort((a, b) => a.depth - b.depth)
    .map(({ drawn }) => drawn);
}

function drawBone(data: PlateData, bone: Bone, point: (alongMetres: number) => Vec3) {
  const { view, scale, width } = data;
  const base = project(point(0), view, scale);
  const tip = project(point(bone.rest.length), view, scale);
  const sightLength = data.sight[bone.name];
  const hasSpine = bone.role === 'skin' || bone.role === 'helper';
  const drawn: DrawnBone = {
    name: bone.name,
    role: bone.role,
    outline: outlineOf(bone.role, base.point, tip.point, width, tickMetres * scale),
    spine: hasSpine ? segment(base.point, tip.point) : '',
    base: hasSpine ? ring(base.point, baseRadius) : '',
    sight: sightLength ? segment(tip.point, project(point(sightLength), view, scale).point) : '',
  };
  return { drawn, depth: (base.depth + tip.depth) / 2 };
}

function outlineOf(role: Role, base: XY, tip: XY, width: number, tick: number): string {
  if (role === 'skin') return paddle(base, tip, width, width * 0.5);
  if (role === 'helper') return paddle(base, tip, width * 0.55, width * 0.4);
  if (role === 'control') return notchedRing(base, width * 0.9, headingRad(base, tip));
  return tape(base, tip, width, tick);
}

/** The point that lies `alongMetres` along the bone's own +z. */
function pointAt(world: Float64Array, offset: number, alongMetres: number): Vec3 {
  const coordinate = (row: number) => world[offset + 9 + row]! + world[offset + 6 + row]! * alongMetres;
  return [coordinate(0), coordinate(1), coordinate(2)];
}
