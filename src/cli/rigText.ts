import type { Bone, Rig } from '../solver/index.ts';
import { boneSentence } from '../workbench/sentence/boneSentence.ts';
import { driverSentence } from '../workbench/sentence/driverSentence.ts';
import { linkSentence } from '../workbench/sentence/linkSentence.ts';
import { mapSentence } from '../workbench/sentence/mapSentence.ts';
import { sentenceText } from '../workbench/sentence/piece.ts';
import { scopeOf } from '../workbench/sentence/scope.ts';
import { switchSentence } from '../workbench/sentence/switchSentence.ts';

/** A rig in lines to be read: each bone, its switches, locks and links, then the drivers, in the workbench's sentences. */
export function rigText(rig: Rig): string[] {
  const scope = scopeOf({ rig, parts: {} }, rig, []);
  const bones = rig.bones.flatMap((bone) => [
    sentenceText(boneSentence(scope, bone)),
    restText(bone),
    ...(bone.switches ?? []).map((own) => `  ${sentenceText(switchSentence(scope, bone.name, own))}`),
    ...lockText(bone),
    ...(bone.links ?? []).map((link) => `  ${link.name}: ${sentenceText(linkSentence(scope, bone.name, link))}`),
  ]);
  const drivers = (rig.drivers ?? []).flatMap((driver) => [
    sentenceText(driverSentence(scope, driver)),
    `  ${sentenceText(mapSentence(driver))}`,
  ]);
  return [...bones, ...drivers];
}

function restText({ rest }: Bone): string {
  const [x, y, z] = rest.base.map(shortNumber);
  const turned = Math.abs(rest.turn[3]) < 1 ? `, turned by [${rest.turn.map(shortNumber).join(', ')}]` : '';
  return `  Its base rests at [${x}, ${y}, ${z}] m${turned}; it is ${shortNumber(rest.length)} m long.`;
}

const shortNumber = (value: number): number => Number(value.toPrecision(6));

function lockText({ locks = {} }: Bone): string[] {
  const locked = (['move', 'turn', 'size'] as const).flatMap((channel) =>
    [0, 1, 2].filter((axis) => locks[channel]?.[axis]).map((axis) => `${channel} ${'xyz'[axis]}`),
  );
  return locked.length > 0 ? [`  Locked for an animator: ${locked.join(', ')}.`] : [];
}
