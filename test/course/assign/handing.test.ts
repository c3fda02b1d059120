import { expect, test } from 'vitest';
import { answersTo, newHanding, submissionOf, withProof } from '../../../src/course/assign/open/handing.ts';
import { AssignmentGrader } from '../../../src/delivery/mark/gradeAnswer.ts';
import { markSubmission } from '../../../src/delivery/mark/markSubmission.ts';
import type { Answer } from '../../../src/grader/index.ts';
import { answerOf, assignmentOf } from '../../delivery/support.ts';

const assignment = assignmentOf();
const TOAD = newHanding(assignment.id, 'toad');
const AT = '2026-12-01T10:00:00.000Z';

/** As the bench gives it: without learner and attempt. */
function benchAnswer(id: string, more: { wrong?: boolean; attempt?: number } = {}): Answer {
  const { learner: _, attempt: __, ...rest } = answerOf(assignment, 'toad', id, more);
  return rest as unknown as Answer;
}
const vane = (wrong: boolean) => {
  const found = wrong ? { mark: 0.25, passed: false } : { mark: 1, passed: true };
  return { answer: benchAnswer('one-vane', { wrong }), kind: 'build', ...found } as const;
};
const hook = (attempt: number) => {
  return { answer: benchAnswer('how-high-the-hook', { attempt }), kind: 'predict', mark: 1, passed: true } as const;
};
const marked = (of: ReturnType<typeof submissionOf>, set = assignment) => {
  const opened = { assignment: set, signedBy: 'a thumbprint' };
  return markSubmission(opened, new AssignmentGrader(opened), of, '2026-12-01T12:00Z');
};

test('what is proved is handed in, and the core marks it without a flag', () => {
  const handing = [vane(true), vane(false), hook(1)].reduce((so, proof) => withProof(so, proof, AT), TOAD);
  const submission = submissionOf(handing, assignment);
  expect(marked(JSON.parse(JSON.stringify(submission)))).toMatchObject({ mark: 1, chain: 'whole', flags: [] });
});

test('the same work proved again is no further attempt', () => {
  const once = withProof(TOAD, vane(false), AT);
  expect(withProof(once, vane(false), '2026-12-01T10:05:00.000Z')).toBe(once);
});

test('attempts are counted, and the drawing counts where each attempt is another', () => {
  const handing = [vane(true), vane(false), hook(2)].reduce((so, proof) => withProof(so, proof, AT), TOAD);
  expect(answersTo(handing, 'one-vane').map(({ answer }) => answer.attempt)).toEqual([1, 2]);
  expect(answersTo(handing, 'how-high-the-hook').map(({ answer }) => answer.attempt)).toEqual([2]);
});

test('where one attempt counts the first is handed in, with a chain of all', () => {
  const one = assignmentOf({ attempts: 1 });
  const handing = [vane(true), vane(false)].reduce((so, proof) => withProof(so, proof, AT), TOAD);
  const submission = submissionOf(handing, one);
  expect(submission.answers).toHaveLength(1);
  expect(submission.chain).toHaveLength(2);
  expect(marked(submission, one)).toMatchObject({ chain: 'whole', flags: [] });
  expect(marked(submission, one).mark).toBeLessThan(0.5);
});

test('where any number counts, the best and the last of each are handed in', () => {
  const proofs = [vane(true), vane(false), { ...vane(true), answer: { ...vane(true).answer, hints: [] } }];
  const handing = proofs.reduce((so, proof) => withProof(so, proof, AT), TOAD);
  const { answers } = submissionOf(handing, assignment);
  expect(answers.map((one) => (one as Answer).attempt)).toEqual([2, 3]);
});
