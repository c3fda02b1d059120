/** Drivers, and what they write to: switches, weights, fractions, driven channels. */
import type { Bone, Driver, Link, ShareLink } from '../../src/solver/document/rig.ts';
import type { Evaluation } from './evaluation.ts';
import { driverInput } from './inputs.ts';
import { mapped } from './map.ts';
import { driverOfChannel, driverOfLink, driverOfSwitch, named, switchNamed } from './names.ts';
import type { Vector } from './vector.ts';

const OUT_BY = 1e-9;

export function driverValue(e: Evaluation, driver: Driver): number {
  return e.once(`driver ${driver.name}`, () => {
    let sum = 0;
    for (const { from, times } of driver.inputs) sum += (times ?? 1) * driverInput(from, e);
    return mapped(driver.map, sum);
  });
}

export function switchValue(e: Evaluation, reference: string): number {
  return e.once(`switch ${reference}`, () => {
    const { owner, definition } = switchNamed(e.rig, reference);
    const driver = driverOfSwitch(e.rig, reference);
    if (driver === undefined) return named(e.pose.switches, reference) ?? definition.default;
    const { min, max, sliding } = definition;
    const value = driverValue(e, driver);
    const clamped = Math.min(Math.max(value, min), max);
    if (Math.abs(value - clamped) > OUT_BY) e.raise('switch-clamped', owner.name, null);
    if (sliding) return clamped;
    return max - clamped < clamped - min ? max : min;
  });
}

export function weightOf(e: Evaluation, bone: Bone, link: Link): number {
  return e.once(`weight ${bone.name}.${link.name}`, () => {
    const driver = driverOfLink(e.rig, bone.name, link.name, 'weight');
    if (driver === undefined) return link.weight ?? 1;
    const value = driverValue(e, driver);
    const clamped = Math.min(Math.max(value, 0), 1);
    if (Math.abs(value - clamped) > OUT_BY) e.raise('weight-clamped', bone.name, link.name);
    return clamped;
  });
}

export function fractionOf(e: Evaluation, bone: Bone, link: ShareLink): number {
  const driver = driverOfLink(e.rig, bone.name, link.name, 'fraction');
  return driver === undefined ? link.fraction : driverValue(e, driver);
}

/** The driven move (m) or the driven angles (degrees), 0 where nothing drives. */
export function driven(e: Evaluation, bone: Bone, channel: 'move' | 'turn'): Vector {
  const component = (axis: string): number => {
    const driver = driverOfChannel(e.rig, bone.name, `${channel}.${axis}`);
    return driver === undefined ? 0 : driverValue(e, driver);
  };
  return [component('x'), component('y'), component('z')];
}
