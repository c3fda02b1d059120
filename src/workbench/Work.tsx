import { AnswerForm } from './answer/AnswerForm.tsx';
import { answeredBy, isAnswered } from './answer/kinds.ts';
import { MapForm } from './answer/MapForm.tsx';
import { Mechanism } from './mechanism/Mechanism.tsx';
import { useBench, useSession } from './state/bench.ts';
import { draftOf } from './state/session.ts';
import { controlsOf } from './tryout/controls.ts';
import { TryOut } from './tryout/TryOut.tsx';
import { ViewSwitch } from './ViewSwitch.tsx';

/** What stands under the plate: Build or Try, or what the kind of exercise asks for instead. */
export function Work() {
  const { exercise } = useBench();
  const view = useSession((session) => session.view);
  const by = answeredBy(exercise);
  if (by === 'pose') {
    return (
      <>
        <ViewSwitch views={[]} />
        <TryOut />
      </>
    );
  }
  if (by === 'form') return <Form />;
  return (
    <>
      <ViewSwitch views={['build', 'try']} />
      {view === 'try' && <TryOut />}
      {view === 'build' && (by === 'map' ? <MapForm /> : <Mechanism />)}
    </>
  );
}

/** The rig can be moved once the answer is in: before, it would be read off. */
function Form() {
  const { exercise } = useBench();
  const draft = useSession(draftOf);
  const answered = useSession((session) => isAnswered(session, exercise));
  const { bones, switches } = controlsOf(draft, exercise);
  const hasControls = bones.length + switches.length > 0;
  return (
    <>
      <ViewSwitch views={[]} />
      <AnswerForm />
      {answered && hasControls && <TryOut />}
    </>
  );
}
