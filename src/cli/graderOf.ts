import { AnswerGrader } from './answerGrader.ts';
import { Exercises } from './content.ts';

export interface Grading {
  contentDir: string | undefined;
  assignment: string | undefined;
}

/**
 * A grader by the exercises at hand, or by an assignment's file; what only assignments need is loaded for them alone.
 * Throws Unusable where the folder or the file cannot be used.
 */
export async function graderOf({ contentDir, assignment }: Grading): Promise<AnswerGrader> {
  const exercises = new Exercises(contentDir);
  if (assignment === undefined) return new AnswerGrader(exercises);
  const { readAssignmentFile } = await import('./assignments.ts');
  const { AssignmentGrader } = await import('../delivery/mark/gradeAnswer.ts');
  return new AnswerGrader(exercises, new AssignmentGrader(readAssignmentFile(assignment)));
}
