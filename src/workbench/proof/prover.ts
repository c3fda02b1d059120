import type { Answer, Exercise } from '../../grader/exercise/definition.ts';
import type { Proved } from './proveAnswer.ts';

export interface Prover {
  readonly prove: (exercise: Exercise, answer: Answer) => Promise<Proved>;
  readonly close: () => void;
}

type Reply = { id: number; proved: Proved } | { id: number; failed: string };

/** Proves in a worker, which starts with the first proof; on the page's own thread where workers cannot be had. */
export function createProver(): Prover {
  let worker: Worker | null = null;
  let next = 0;

  return {
    prove: async (exercise, answer) => {
      try {
        worker ??= new Worker(new URL('./proof.worker.ts', import.meta.url), { type: 'module' });
        return await asked(worker, next++, exercise, answer);
      } catch (error) {
        if (error instanceof ProofError) throw error;
        worker?.terminate();
        worker = null;
        const { proveAnswer } = await import('./proveAnswer.ts');
        return proveAnswer(exercise, answer);
      }
    },
    close: () => worker?.terminate(),
  };
}

/** The worker ran and the proof itself could not be made. */
class ProofError extends Error {}

function asked(worker: Worker, id: number, exercise: Exercise, answer: Answer): Promise<Proved> {
  return new Promise((resolve, reject) => {
    worker.onerror = (event) => reject(event);
    worker.onmessage = ({ data }: MessageEvent<Reply>) => {
      if (data.id !== id) return;
      if ('proved' in data) resolve(data.proved);
      else reject(new ProofError(data.failed));
    };
    worker.postMessage({ id, exercise, answer });
  });
}
