import type { Exercise } from '../../grader/exercise/exercise.ts';
import type { Pose } from '../../solver/document/rig.ts';

/** A number that a prediction asks for. */
export interface ValueAsked {
  readonly id: string;
  /** The question. */
  readonly says: string;
  readonly unit: string;
  /** The pose in which it is asked. */
  readonly pose: Pose;
}

export function valuesAsked({ requirements }: Pick<Exercise, 'requirements'>): ValueAsked[] {
  return requirements.flatMap((requirement) => {
    if (requirement.kind !== 'value') return [];
    const { id, says, gauge, pose = {} } = requirement;
    return [{ id, says, unit: unitOf(gauge), pose }];
  });
}

function unitOf(gauge: object): string {
  if ('coordinate' in gauge || 'between' in gauge) return 'cm';
  return 'weight' in gauge ? '' : '°';
}
