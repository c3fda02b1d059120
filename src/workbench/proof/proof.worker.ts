import type { Answer, Exercise } from '../../grader/exercise/definition.ts';
import { proveAnswer } from './proveAnswer.ts';

/** Proves answers off the page's own thread. Every message is answered by one of the same `id`. */
self.onmessage = ({ data }: MessageEvent<{ id: number; exercise: Exercise; answer: Answer }>) => {
  const { id, exercise, answer } = data;
  try {
    self.postMessage({ id, proved: proveAnswer(exercise, answer) });
  } catch (error) {
    self.postMessage({ id, failed: String(error) });
  }
};
