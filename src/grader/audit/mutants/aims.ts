import type { AimLink, Axis, AxisName, UpToward } from '../../../solver/document/rig.ts';
import { type Vary, varyLinks } from '../variation.ts';

/** The up vector forgotten. */
export const dropUp: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'aim' || !link.up) return [];
    const { up: _up, ...bare } = link;
    return [['up forgotten', bare]];
  });

/** The up axis reversed or another, or kept toward what turns with the aim. */
export const reup: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'aim' || !link.up) return [];
    const { axis, toward } = link.up;
    return [
      ...otherAxes(axis).map((other): [string, AimLink] => [
        `up ${other} in place of ${axis}`,
        { ...link, up: { axis: other, toward } },
      ]),
      ...otherTowards(link.target.bone, toward).map(([says, other]): [string, AimLink] => [
        says,
        { ...link, up: { axis, toward: other } },
      ]),
    ];
  });

/** The axis reversed, or another one. */
export const reaxis: Vary = (rig) =>
  varyLinks(rig, (link) => {
    if (link.kind !== 'aim') return [];
    const was = link.axis ?? '+z';
    return otherAxes(was).map((axis) => [`aims ${axis} in place of ${was}`, { ...link, axis }]);
  });

function otherAxes(axis: Axis): Axis[] {
  if (typeof axis !== 'string') return [[0 - axis[0], 0 - axis[1], 0 - axis[2]]];
  const reversed = `${axis[0] === '+' ? '-' : '+'}${axis[1]}` as AxisName;
  const turned = `+${axis[1] === 'x' ? 'y' : 'x'}` as AxisName;
  return [reversed, turned];
}

function otherTowards(target: string, toward: UpToward): [string, UpToward][] {
  const down: UpToward = { direction: [0, -1, 0] };
  return [
    ['up toward the ground', down],
    ...('bone' in toward && toward.bone === target
      ? []
      : ([['up toward its target', { bone: target, axis: '+y' }]] as [string, UpToward][])),
  ];
}
