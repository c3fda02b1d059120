import type { Bone, Rig } from '../../solver/document/rig.ts';
import type { Draft } from '../edit/draft.ts';
import type { Option } from './piece.ts';

/** What a sentence is spoken in: the draft, and what of it the exercise keeps. */
export interface Scope {
  readonly draft: Draft;
  /** Whether a bone's field (of the rig document) must stay as it is; no `field`: whether any must. */
  readonly keeps: (bone: string, field?: string) => boolean;
  /** Whether the start had this link, so that a kept list of links holds it. */
  readonly given: (bone: string, link: string) => boolean;
  /** The same of a switch: beside kept ones, new ones are free. */
  readonly givenSwitch: (bone: string, own: string) => boolean;
}

export interface KeptRule {
  bone: string;
  fields: readonly string[];
}

export function scopeOf(draft: Draft, start: Rig, kept: readonly KeptRule[]): Scope {
  const givenLinks = new Set(
    start.bones.flatMap((bone) => (bone.links ?? []).map((link) => `${bone.name}.${link.name}`)),
  );
  const givenSwitches = new Set(allSwitches(start.bones));
  return {
    draft,
    keeps: (bone, field) =>
      kept.some(
        (rule) =>
          rule.bone === bone && (field === undefined || rule.fields.includes('all') || rule.fields.includes(field)),
      ),
    given: (bone, link) => givenLinks.has(`${bone}.${link}`),
    givenSwitch: (bone, own) => givenSwitches.has(`${bone}.${own}`),
  };
}

/** Bones to choose from, all but `self`. */
export function boneOptions(scope: Scope, self?: string): Option[] {
  return scope.draft.rig.bones.filter((bone) => bone.name !== self).map(({ name }) => ({ value: name, says: name }));
}

export function allSwitches(bones: readonly Bone[]): string[] {
  return bones.flatMap((bone) => (bone.switches ?? []).map((each) => `${bone.name}.${each.name}`));
}
