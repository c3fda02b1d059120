import { checkHierarchy } from './checkHierarchy.ts';
import { checkReach } from './checkReach.ts';
import { declaredIn, type Known } from './known.ts';
import { readBone } from './readBone.ts';
import { checkDrivers, readDriver } from './readDriver.ts';
import { type Reader, reading, within } from './reader.ts';
import { readMesh } from './readMesh.ts';
import { readText } from './readText.ts';
import type { Reading } from './refusal.ts';
import type { Bone, Driver, Rig } from './rig.ts';
import { list, needed, optional, record, refuseRepeats } from './structures.ts';
import { exactly, text } from './values.ts';

const MOST_BONES = 256;

const bones: Reader<readonly Bone[], Known> = list('bones', readBone, { most: MOST_BONES });
const drivers: Reader<readonly Driver[], Known> = list('drivers', readDriver);

const readFields = record<Rig, Known>('a rig', {
  format: needed(exactly('counterpose/rig')),
  version: needed(exactly(1, 'version 1')),
  title: optional(text),
  bones: needed(bones),
  drivers: optional(drivers),
  mesh: optional(readMesh),
});

/**
 * Reads a rig from a value such as JSON.parse gives: a fresh document with known fields only, defaults not filled in,
 * quaternions and axes of unit length; or why it cannot be used. A loop of parents or links is readable: it is a cycle,
 * and evaluating refuses it.
 */
export function readRig(value: unknown): Reading<Rig> {
  return reading(() => {
    const rig = readFields(value, declaredIn(value));
    within(['bones'], () => {
      refuseRepeats(rig.bones, 'bone');
      checkHierarchy(rig.bones);
      checkReach(rig.bones);
    });
    within(['drivers'], () => checkDrivers(rig.drivers ?? []));
    return rig;
  });
}

/** Reads a rig from JSON of at most 1 MiB. */
export const readRigText = (json: string): Reading<Rig> => readText(json, readRig);
