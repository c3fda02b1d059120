import { setValue } from '../edit/respond.ts';
import { useBench, useSession } from '../state/bench.ts';
import { draftOf } from '../state/session.ts';
import { Heading } from '../words/Heading.tsx';
import { isAnswered } from './kinds.ts';
import { OrderForm } from './OrderForm.tsx';
import { ValueField } from './ValueField.tsx';
import { valuesAsked } from './values.ts';

/** Where numbers, or an order, are asked for instead of a rig. */
export function AnswerForm() {
  const { exercise, edit, told } = useBench();
  const answered = useSession((now) => isAnswered(now, exercise));
  const seed = useSession((now) => now.seed);
  const values = useSession(draftOf).response?.values ?? {};
  return (
    <section className="wb-answer" aria-label={`Your answer to ${exercise.title}`}>
      <Heading rank={1}>Your answer</Heading>
      {seed !== told && <TaskAgain task={exercise.task} />}
      {exercise.kind === 'order' ? (
        <OrderForm disabled={answered} />
      ) : (
        <ul>
          {valuesAsked(exercise).map(({ id, says, unit }) => (
            <ValueField
              key={`${seed} ${id}`}
              says={says}
              unit={unit}
              value={values[id] ?? null}
              disabled={answered}
              put={(value) => edit(setValue(id, value), `value ${id}`)}
            />
          ))}
        </ul>
      )}
    </section>
  );
}

/** The task with the numbers of this drawing, which is not the one that the page tells of. */
function TaskAgain({ task }: { task: string }) {
  return (
    <div className="wb-task">
      <p className="wb-note">This drawing has numbers of its own:</p>
      {task.split(/\n\n+/).map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
    </div>
  );
}
