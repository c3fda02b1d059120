import { lazy, Suspense, useState } from 'react';
import type { Book, BookLearner, HandedIn, Note } from '../delivery/book/book.ts';
import { finalOf } from '../delivery/book/final.ts';
import type { MissedRequirement } from '../delivery/mark/markedAnswer.ts';
import type { MarkedExercise } from '../delivery/mark/markSubmission.ts';
import { poseText } from '../grader/index.ts';
import type { Desk } from './desk.ts';
import { NoteForms } from './NoteForms.tsx';
import { percent, refusalText } from './words.ts';

/** The plate comes with three, which nobody waits for who only reads marks. */
const AnswerPlate = lazy(() => import('./AnswerPlate.tsx'));

interface Props {
  book: Book;
  learner: BookLearner;
  desk: Desk;
  by: string;
  setBy: (by: string) => void;
  write: (note: Note) => void;
}

/** One learner: what was handed in, what was met and missed, what people wrote about it. */
export function LearnerSheet({ book, learner, desk, by, setBy, write }: Props) {
  const { handedIn, counted, notes, name } = learner;
  const final = finalOf(book, learner);
  const current = counted === null ? null : handedIn[counted]!;
  return (
    <section className="mb-sheet" aria-labelledby="mb-learner">
      <h3 id="mb-learner">
        <bdi>{name || learner.learner}</bdi>, {percent(final.mark)}
      </h3>
      {handedIn.map((one, i) => (
        <p key={one.path} className="small">
          <bdi>{one.path}</bdi>
          {one.collected && `, collected ${new Date(one.collected).toLocaleString()}`}, receipt {one.marked.receipt}
          {i === counted ? '. It counts.' : '.'}
        </p>
      ))}
      {current?.marked.late.taken ? <p>{percent(current.marked.late.taken)} taken for being late.</p> : null}
      {current?.marked.exercises.map((exercise) => (
        <ExerciseLines key={exercise.exercise} exercise={exercise} handedIn={current} desk={desk} />
      ))}
      <Notes notes={notes} />
      {current && (
        <NoteForms
          exercises={current.marked.exercises.map(({ exercise }) => exercise)}
          by={by}
          setBy={setBy}
          write={write}
        />
      )}
    </section>
  );
}

function ExerciseLines({ exercise, handedIn, desk }: { exercise: MarkedExercise; handedIn: HandedIn; desk: Desk }) {
  const [shown, setShown] = useState<MissedRequirement | 'rest' | null>(null);
  const answer = exercise.counted === null ? null : exercise.answers[exercise.counted]!;
  const unusable = exercise.answers.find(({ outcome }) => outcome === 'unusable');
  return (
    <div>
      <h4>
        {exercise.exercise}, {percent(exercise.mark)}
      </h4>
      {exercise.answers.length === 0 && <p>Not answered.</p>}
      {unusable?.outcome === 'unusable' && <p>An answer could not be used. {refusalText(unusable.refusal)}</p>}
      {answer?.outcome === 'graded' && (
        <>
          <ul>
            {answer.missed.map((missed) => (
              <li key={missed.id}>
                {missed.id}: {missed.status === 'missed' ? 'missed' : 'not checked'}
                {missed.measured !== null && `, ${missed.measured} ${missed.unit}, allowed ${missed.allowed}`}
                {missed.counterpose && (
                  <>
                    , shown by {poseText(missed.counterpose)}.{' '}
                    <button type="button" onClick={() => setShown(missed)}>
                      See it on the plate
                    </button>
                  </>
                )}
              </li>
            ))}
          </ul>
          <p>
            Met: {answer.met.join(', ') || 'nothing'}.{' '}
            <button type="button" onClick={() => setShown('rest')}>
              See the answer on the plate
            </button>
          </p>
          {shown && (
            <Suspense fallback={<p>Opening the plate …</p>}>
              <AnswerPlate
                desk={desk}
                handedIn={handedIn}
                answer={answer}
                pose={shown === 'rest' ? {} : (shown.counterpose ?? {})}
                close={() => setShown(null)}
              />
            </Suspense>
          )}
        </>
      )}
    </div>
  );
}

function Notes({ notes }: { notes: readonly Note[] }) {
  if (notes.length === 0) return null;
  return (
    <ul>
      {notes.map((note) => (
        <li key={note.id}>
          <bdi>{saysOf(note)}</bdi>{' '}
          <span className="small">
            <bdi>{note.by}</bdi>, {new Date(note.at).toLocaleString()}
          </span>
        </li>
      ))}
    </ul>
  );
}

function saysOf(note: Note): string {
  if (note.kind === 'comment') return note.exercise ? `${note.exercise}: ${note.says}` : note.says;
  if (note.kind === 'override') return `${note.exercise}: ${percent(note.mark)} by hand, because ${note.reason}`;
  return `${note.line}: ${note.mark} of ${note.outOf}. ${note.says}`;
}
