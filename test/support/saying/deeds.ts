import type { Exercise } from '../../../src/grader/index.ts';
import type { Bone, Link, Rig } from '../../../src/solver/index.ts';
import { readRig } from '../../../src/solver/index.ts';
import { addBone } from '../../../src/workbench/edit/addBone.ts';
import { addLink } from '../../../src/workbench/edit/addLink.ts';
import { renameLink, reorderLink } from '../../../src/workbench/edit/changeLink.ts';
import { type Draft, type Edit, freshName } from '../../../src/workbench/edit/draft.ts';
import { addDriver, removeDriver, renameDriver } from '../../../src/workbench/edit/drivers.ts';
import { removeBone } from '../../../src/workbench/edit/removeBone.ts';
import { removeLink } from '../../../src/workbench/edit/removeLink.ts';
import { renameBone } from '../../../src/workbench/edit/renameBone.ts';
import { addSwitch, removeSwitch, renameSwitch } from '../../../src/workbench/edit/switches.ts';
import { DOES } from '../../../src/workbench/sentence/linkSentence.ts';
import { outputSays } from '../../../src/workbench/sentence/outputs.ts';
import { sayings } from './sayings.ts';

/** One thing that a hand does on the page. */
export type Move =
  | { do: 'press'; button: string }
  | { do: 'choose'; field: string; says: string }
  | { do: 'write'; field: string; text: string }
  | { do: 'tick'; field: string; on: boolean }
  | { do: 'open'; bone: string };

/** What a learner can do next, as the page offers it, and what comes of it. */
export interface Deed {
  readonly moves: readonly Move[];
  readonly edits: readonly Edit[];
}

/** All deeds by which a draft may come nearer to a rig. */
export function deeds(draft: Draft, wanted: Rig, exercise: Exercise): Deed[] {
  return [
    ...sayings(draft, wanted, exercise),
    ...newBones(draft.rig, wanted),
    ...wanted.bones.flatMap((bone) => [...newSwitches(draft.rig, bone), ...newLinks(draft.rig, bone)]),
    ...newDrivers(draft.rig, wanted),
    ...takenAway(draft.rig, wanted),
    ...reordered(draft.rig, wanted),
  ];
}

const boneIn = (rig: Rig, name: string): Bone | undefined => rig.bones.find((bone) => bone.name === name);

function newBones(rig: Rig, wanted: Rig): Deed[] {
  const missing = wanted.bones.filter(({ name }) => !boneIn(rig, name));
  const first = freshName(
    'bone',
    rig.bones.map(({ name }) => name),
  );
  return missing.map(({ name }) => ({
    moves: [
      { do: 'press', button: 'Add a bone' },
      ...(name === first ? [] : [{ do: 'write', field: `name of ${first}`, text: name } as const]),
    ],
    edits: [
      addBone({ base: rig.bones[0]!.rest.base, turn: [0, 0, 0, 1], length: rig.bones[0]!.rest.length }),
      renameBone(first, name),
    ],
  }));
}

function newSwitches(rig: Rig, { name: bone, switches = [] }: Bone): Deed[] {
  const own = boneIn(rig, bone)?.switches?.map(({ name }) => name) ?? [];
  const first = freshName('switch', own);
  const missing = boneIn(rig, bone) ? switches.filter(({ name }) => !own.includes(name)) : [];
  return missing.map(({ name }) => ({
    moves: [
      { do: 'press', button: `Add a switch to ${bone}` },
      { do: 'write', field: `name of ${bone}.${first}`, text: name },
    ],
    edits: [addSwitch(bone), renameSwitch(bone, first, name)],
  }));
}

function newLinks(rig: Rig, { name: bone, links = [] }: Bone): Deed[] {
  const own = boneIn(rig, bone)?.links?.map(({ name }) => name) ?? [];
  const missing = boneIn(rig, bone) ? links.filter(({ name }) => !own.includes(name)) : [];
  return missing.flatMap((link): Deed[] => {
    const other = otherOf(link);
    if (other !== undefined && !boneIn(rig, other)) return [];
    const first = freshName(link.kind, own);
    return [
      {
        moves: [
          { do: 'press', button: `Add a link to ${bone}` },
          { do: 'choose', field: `what the new link on ${bone} does`, says: DOES[link.kind] },
          ...(other === undefined
            ? []
            : [{ do: 'choose', field: `bone for the new link on ${bone}`, says: other } as const]),
          { do: 'press', button: 'Add it' },
          ...(first === link.name
            ? []
            : [{ do: 'write', field: `name of ${first} on ${bone}`, text: link.name } as const]),
        ],
        edits: [addLink(bone, link.kind, other ?? bone), renameLink(bone, first, link.name)],
      },
    ];
  });
}

function otherOf(link: Link): string | undefined {
  if (link.kind === 'limit') return undefined;
  return link.kind === 'follow' || link.kind === 'share' ? link.source : link.target.bone;
}

function newDrivers(rig: Rig, wanted: Rig): Deed[] {
  const own = rig.drivers?.map(({ name }) => name) ?? [];
  const first = freshName('driver', own);
  const missing = (wanted.drivers ?? []).filter(({ name }) => !own.includes(name));
  return missing.map(({ name, inputs, output }) => {
    const { from } = inputs[0]!;
    const reads = 'switch' in from ? `the switch ${from.switch}` : `the ${Object.keys(from)[0]} ${readsWhat(from)}`;
    return {
      moves: [
        { do: 'press', button: 'Add a driver' },
        { do: 'choose', field: 'what the new driver reads', says: reads },
        { do: 'choose', field: 'what the new driver sets', says: outputSays(output) },
        { do: 'press', button: 'Add it' },
        ...(first === name ? [] : [{ do: 'write', field: `name of the driver ${first}`, text: name } as const]),
      ],
      edits: [addDriver(from, output), renameDriver(first, name)],
    };
  });
}

function readsWhat(from: object): string {
  if ('gap' in from) return `from ${(from.gap as [{ bone: string }])[0].bone}`;
  const [inner] = Object.values(from) as [{ bone: string }];
  return `of ${inner.bone}`;
}

function takenAway(rig: Rig, wanted: Rig): Deed[] {
  const away = (of: string, edit: Edit): Deed => ({
    moves: [{ do: 'press', button: `Take away ${of}` }],
    edits: [edit],
  });
  const drivers = (rig.drivers ?? []).filter(({ name }) => !wanted.drivers?.some((other) => other.name === name));
  return [
    ...drivers.map(({ name }) => away(name, removeDriver(name))),
    ...rig.bones.flatMap(({ name, links = [], switches = [] }) => {
      const other = boneIn(wanted, name);
      if (!other) return [away(name, removeBone(name))];
      const has = (list: readonly { name: string }[] = [], one: string) => list.some((each) => each.name === one);
      return [
        ...links
          .filter((link) => !has(other.links, link.name))
          .map((link) => away(`${link.name} on ${name}`, removeLink(name, link.name))),
        ...switches
          .filter((own) => !has(other.switches, own.name))
          .map((own) => away(`the switch ${name}.${own.name}`, removeSwitch(name, own.name))),
      ];
    }),
  ];
}

function reordered(rig: Rig, wanted: Rig): Deed[] {
  return rig.bones.flatMap(({ name, links = [] }) => {
    const order = boneIn(wanted, name)?.links?.map((link) => link.name) ?? [];
    return links
      .filter((link, i) => i > 0 && order.indexOf(link.name) < order.indexOf(links[i - 1]!.name))
      .map((link) => ({
        moves: [{ do: 'press', button: `Move ${link.name} on ${name} up` } as const],
        edits: [reorderLink(name, link.name, -1)],
      }));
  });
}

/** The draft after a deed; null where one of its edits is refused. */
export function after(draft: Draft, { edits }: Deed): Draft | null {
  let now = draft;
  for (const edit of edits) {
    if (edit.refuses?.(now)) return null;
    now = edit.apply(now);
    if (!readRig(now.rig).ok) return null;
  }
  return now;
}
