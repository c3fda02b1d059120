import { workerData } from 'node:worker_threads';
import { AnswerGrader, type Named } from '../answerGrader.ts';
import { Exercises } from '../content.ts';
import { serve } from '../serve.ts';

const { contentDir, json } = workerData as { contentDir?: string; json: boolean };
const grader = new AnswerGrader(new Exercises(contentDir));
serve((answer: Named) => grader.line(answer, json));
