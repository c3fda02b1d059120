import type { Pose } from '../../solver/document/rig.ts';
import type { Draft } from '../edit/draft.ts';
import { splitSwitch } from '../edit/references.ts';
import type { Session } from './session.ts';

/** What is chosen and posed goes on with a bone that is renamed, by an edit as by undo and redo. */
export function followingRename(session: Session, after: Draft): Pick<Session, 'chosen' | 'pose'> {
  const { chosen, pose } = session;
  const renamed = renameBetween(session.history.document, after);
  if (!renamed) return { chosen, pose };
  const rename = (bone: string) => (bone === renamed.from ? renamed.to : bone);
  return { chosen: chosen && rename(chosen), pose: poseRenamed(pose, rename) };
}

/** The one bone that has another name, where that is all that the lists of bones differ in. */
function renameBetween(before: Draft, after: Draft): { from: string; to: string } | null {
  const [was, is] = [before, after].map(({ rig }) => rig.bones.map(({ name }) => name)) as [string[], string[]];
  if (was.length !== is.length) return null;
  const places = was.flatMap((name, i) => (name === is[i] ? [] : [i]));
  const [place] = places;
  return place === undefined || places.length > 1 ? null : { from: was[place]!, to: is[place]! };
}

function poseRenamed(pose: Pose, rename: (bone: string) => string): Pose {
  const entries = <T>(all: Readonly<Record<string, T>>, to: (name: string) => string) =>
    Object.fromEntries(Object.entries(all).map(([name, value]) => [to(name), value]));
  const inSwitch = (reference: string) => {
    const [bone, name] = splitSwitch(reference);
    return `${rename(bone)}.${name}`;
  };
  return {
    ...(pose.bones && { bones: entries(pose.bones, rename) }),
    ...(pose.switches && { switches: entries(pose.switches, inSwitch) }),
  };
}
