import { workerData } from 'node:worker_threads';
import type { Named } from '../answerGrader.ts';
import { type Grading, graderOf } from '../graderOf.ts';
import { serve } from '../serve.ts';

const { json, ...grading } = workerData as Grading & { json: boolean };
const grader = await graderOf(grading);
serve((answer: Named) => grader.line(answer, json));
