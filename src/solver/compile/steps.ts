import type { Bone } from '../document/rig.ts';
import { driverCode } from '../drivers/drivers.ts';
import { kindOf } from '../links/table.ts';
import { worldAt } from '../machine/layout.ts';
import { DRIVEN_POSE, DRIVER, linkOp, OWN_POSE, SPECIAL_POSE } from '../machine/ops.ts';
import { ALIGNED } from '../machine/ownPose.ts';
import { NONE } from '../machine/specialPose.ts';
import { orderCode } from '../pose/turnByAngles.ts';
import { POSE_STRIDE } from '../program.ts';
import type { Driven } from './driven.ts';
import type { Graph } from './graph.ts';
import type { Places } from './places.ts';
import type { Step } from './schedule.ts';

/** The step of every node of the graph; null where there is nothing to do. */
export function stepsOf(graph: Graph, places: Places, driven: Driven): (Step | null)[] {
  const { index } = places;
  const steps: (Step | null)[] = new Array(graph.count).fill(null);
  index.bones.forEach((own, bone) => {
    steps[graph.pose(bone)] = poseStep(own, bone, places, driven);
  });
  index.links.forEach((_, link) => {
    steps[graph.link(link)] = linkStep(link, places, driven);
  });
  index.drivers.forEach((driver, number) => {
    steps[graph.driver(number)] = { op: DRIVER, record: driverCode(driver, places) };
  });
  return steps;
}

function poseStep(own: Bone, bone: number, places: Places, driven: Driven): Step {
  const pose = POSE_STRIDE * bone;
  const isDriven = driven.bones.has(bone);
  const channels = isDriven ? [places.driven(bone), orderCode(own.turnOrder)] : [NONE, 0];
  if (places.inherits(bone) === 'all' && own.attach !== 'tip') {
    const rest = places.restLocal(bone) | (places.isAligned(bone) ? ALIGNED : 0);
    const record = [worldAt(bone), places.parentWorld(bone), rest, pose];
    return isDriven ? { op: DRIVEN_POSE, record: [...record, ...channels] } : { op: OWN_POSE, record };
  }
  const tip = own.attach === 'tip' ? places.constant(places.boneAt(places.index.parents[bone]).rest.length) : NONE;
  return { op: SPECIAL_POSE, record: [worldAt(bone), pose, ...places.frame(own.name), tip, ...channels] };
}

/** Lays the weight down, and writes the link's code unless its weight is 0 for good. */
function linkStep(link: number, places: Places, driven: Driven): Step | null {
  const { bone, link: own } = places.index.links[link];
  const isDriven = driven.weights.has(link);
  const weight = isDriven ? 0 : (own.weight ?? 1);
  places.memory[places.weight(link)] = weight;
  if (weight === 0 && !isDriven) return null;
  const shared = [worldAt(bone), places.weight(link), link];
  return { op: linkOp(own), record: [...shared, ...kindOf(own).code(own, { bone, link }, places)] };
}
