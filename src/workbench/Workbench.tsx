import './workbench.css';
import './words/words.css';
import './plate/plate.css';
import './plate/stays.css';
import './mechanism/mechanism.css';
import './tryout/tryout.css';
import './play/play.css';
import './proof/proof.css';
import './answer/answer.css';
import { useEffect, useRef, useState } from 'react';
import type { ExerciseDefinition } from '../grader/exercise/definition.ts';
import type { Exercise } from '../grader/exercise/exercise.ts';
import { Bench } from './Bench.tsx';
import { acquireDesk, type Desk } from './desk/desk.ts';
import type { Setting } from './setting.ts';
import { HeadingLevel } from './words/Heading.tsx';

interface Props {
  /** Folder name in content/exercises. */
  exercise: string;
  /** Which variant: the seed as the assignment gives it, 0 as drawn. */
  seed?: number;
  /** Called with the exercise once it is open, so that the page around it can tell of the same variant. */
  tell?: (exercise: Exercise) => void;
  /** Where the course's files begin; the page's own root where it is not said. */
  base?: string;
  /** Where it is set by somebody and not the course's own; then nothing is fetched. */
  setting?: Setting;
}

/** An exercise fetched, and the way to open any variant of it. */
interface Fetched {
  readonly exercise: Exercise;
  readonly desk: Desk;
  readonly open: (seed: number) => Promise<Exercise>;
}
type Opening = { is: 'opening' } | ({ is: 'open' } & Fetched) | { is: 'failed'; why: string };

/** The workbench: where a learner builds a rig and has it proved. Mounted in a page, it fetches its own exercise. */
export function Workbench({ exercise: id, seed = 0, tell, base, setting }: Props) {
  const place = useRef<HTMLDivElement>(null);
  const [level, setLevel] = useState(3);
  const [opening, setOpening] = useState<Opening>({ is: 'opening' });

  useEffect(() => {
    setLevel(headingLevelAbove(place.current));
    const closing = new AbortController();
    const desk = acquireDesk();
    const opened = setting ? openSet(setting, seed, desk) : fetchExercise(id, seed, base, desk, closing.signal);
    opened
      .then((fetched) => {
        if (closing.signal.aborted) return;
        tell?.(fetched.exercise);
        setOpening({ is: 'open', ...fetched });
      })
      .catch((error) => {
        if (!closing.signal.aborted) setOpening({ is: 'failed', why: String(error.message ?? error) });
      });
    return () => {
      closing.abort();
      desk.release();
    };
  }, [id, seed, tell, base, setting]);

  return (
    <div className="wb" ref={place}>
      <HeadingLevel value={level}>
        {opening.is === 'opening' && <p className="wb-note">Opening the workbench …</p>}
        {opening.is === 'failed' && (
          <p className="wb-refusal" role="alert">
            The exercise could not be opened: {opening.why}. Reload the page to try once more.
          </p>
        )}
        {opening.is === 'open' && (
          <Bench
            key={`${id} ${seed}`}
            first={opening.exercise}
            desk={opening.desk}
            open={opening.open}
            setting={setting}
          />
        )}
      </HeadingLevel>
    </div>
  );
}

export default Workbench;

const openSet = async ({ open }: Setting, seed: number, desk: Desk): Promise<Fetched> => {
  return { exercise: await open(seed), desk, open };
};

/** The exercise as its endpoint gives it; the course may stand in any folder of its host. */
async function fetchExercise(
  id: string,
  seed: number,
  base: string | undefined,
  desk: Desk,
  signal: AbortSignal,
): Promise<Fetched> {
  const root = new URL(base ?? document.documentElement.dataset.root ?? '/', document.baseURI);
  const response = await fetch(new URL(`exercises/${id}.json`, root), { signal });
  if (!response.ok) throw new Error(`the server answered ${response.status}`);
  const { definition, edition } = (await response.json()) as { definition: ExerciseDefinition; edition: string };
  const open = (wanted: number) => desk.ask({ ask: 'open', definition, edition, seed: wanted });
  return { exercise: await open(seed), desk, open };
}

/** Level of the last heading before the workbench, so that its own go on from there. */
function headingLevelAbove(element: Element | null): number {
  if (!element) return 3;
  const headings = [...document.querySelectorAll('h1, h2, h3, h4')].filter(
    (heading) => heading.compareDocumentPosition(element) === Node.DOCUMENT_POSITION_FOLLOWING,
  );
  return Number(headings.at(-1)?.tagName[1] ?? 3);
}
