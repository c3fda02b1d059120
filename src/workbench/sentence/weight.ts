import type { Driver, DriverSource, Link } from '../../solver/document/rig.ts';
import { changeLink } from '../edit/changeLink.ts';
import { withField } from '../edit/draft.ts';
import { addDriver } from '../edit/drivers.ts';
import { name, numberText, type Piece, type Sentence, text } from './piece.ts';
import { allSwitches, type Scope } from './scope.ts';

/** "weight 1", or "weight driven by let_go, 1 → 0". */
export function weightPieces(scope: Scope, bone: string, link: Link): Sentence {
  const driver = driverOf(scope, bone, link.name, 'weight');
  if (driver) return [text(', weight\u00a0'), ...drivenPieces(driver)];
  const label = `weight of ${link.name} on ${bone}`;
  return [
    text(', weight\u00a0'),
    {
      is: 'number',
      label,
      value: link.weight ?? 1,
      unit: '',
      step: 0.1,
      edit: (weight) =>
        changeLink(bone, link.name, 'weight', (old) => withField(old, 'weight', weight === 1 ? undefined : weight)),
    },
    ...drivePress(scope, label, bone, link.name, 'weight'),
  ];
}

/** "driven by let_go, 1 → 0": leads to the driver's own sentence. */
export function drivenPieces(driver: Driver): Piece[] {
  const ends = [driver.map.keys[0]![1], driver.map.keys.at(-1)![1]];
  return [
    name('driven by '),
    { is: 'goto', label: `Go to the driver ${driver.name}`, text: driver.name, to: `driver ${driver.name}` },
    text(`, ${ends.map(numberText).join(' → ')}`),
  ];
}

export function driverOf(scope: Scope, bone: string, link: string, field: 'weight' | 'fraction'): Driver | undefined {
  return scope.draft.rig.drivers?.find(
    ({ output }) => 'link' in output && output.bone === bone && output.link === link && output.field === field,
  );
}

/** A button that puts a driver on the number; none while the rig has nothing to read. */
export function drivePress(
  scope: Scope,
  label: string,
  bone: string,
  link: string,
  field: 'weight' | 'fraction',
): Piece[] {
  const from = firstSource(scope);
  if (!from) return [];
  return [
    {
      is: 'press',
      label: `Drive the ${label}`,
      text: 'drive it',
      always: true,
      last: true,
      edit: addDriver(from, { bone, link, field }),
    },
  ];
}

/** What a new driver reads until it is told otherwise: the first switch, else the first control's turn. */
export function firstSource(scope: Scope): DriverSource | undefined {
  const { bones } = scope.draft.rig;
  const [first] = allSwitches(bones);
  if (first) return { switch: first };
  const control = bones.find((bone) => bone.role === 'control') ?? bones[0];
  return control && { turn: { bone: control.name, axis: 'z' } };
}
