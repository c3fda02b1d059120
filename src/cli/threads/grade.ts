import { workerData } from 'node:worker_threads';
import { AnswerGrader, type Named } from '../answerGrader.ts';
import { readAssignmentFile } from '../assignments.ts';
import { Exercises } from '../content.ts';
import { serve } from '../serve.ts';

const { contentDir, assignment, json } = workerData as { contentDir?: string; assignment?: string; json: boolean };
const opened = assignment === undefined ? null : readAssignmentFile(assignment);
const grader = new AnswerGrader(new Exercises(contentDir), opened);
serve((answer: Named) => grader.line(answer, json));
