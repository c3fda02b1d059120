import type { Exercise } from '../../grader/exercise/exercise.ts';
import { answeredBy, isAnswered } from '../answer/kinds.ts';
import type { Session } from '../state/session.ts';

/** What the handles on the plate hold: a pose, where a bone lies at rest, or nothing. */
export function handlesHold(session: Session, exercise: Exercise): 'pose' | 'rest' | 'nothing' {
  const by = answeredBy(exercise);
  if (by === 'pose') return 'pose';
  if (by === 'form') return isAnswered(session, exercise) ? 'pose' : 'nothing';
  if (session.view === 'try') return 'pose';
  return by === 'rig' ? 'rest' : 'nothing';
}
