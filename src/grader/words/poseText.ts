import type { Pose } from '../../solver/document/rig.ts';
import { numberText } from './numberText.ts';

/** A pose in words: "kite moved 0.5 m in x; together at 1". Angles in degrees, moves in metres. */
export function poseText(pose: Pose): string {
  const bones = Object.entries(pose.bones ?? {}).flatMap(([name, { move, turn, size }]) => [
    ...channelTexts(name, 'moved', move, 0, ' m'),
    ...channelTexts(name, 'turned', turn && 'angles' in turn ? turn.angles : undefined, 0, '°'),
    ...channelTexts(name, 'sized', size, 1, ''),
  ]);
  const switches = Object.entries(pose.switches ?? {}).map(([name, value]) => `${name} at ${short(value)}`);
  return [...bones, ...switches].join('; ') || 'rest';
}

function channelTexts(
  name: string,
  verb: string,
  values: readonly [number, number, number] | undefined,
  rest: number,
  unit: string,
): string[] {
  return (values ?? []).flatMap((value, i) =>
    value === rest ? [] : [`${name} ${verb} ${short(value)}${unit} ${verb === 'turned' ? 'about' : 'in'} ${'xyz'[i]}`],
  );
}

const short = (value: number): string => numberText(Number(value.toPrecision(4)));
