import { useMemo, useState } from 'react';
import type { Assignment } from '../../../delivery/assignment/assignment.ts';
import type { AssignmentGrader } from '../../../delivery/mark/gradeAnswer.ts';
import { seedOf } from '../../../delivery/variant/seed.ts';
import type { Setting } from '../../../workbench/setting.ts';
import { AssignedExercise } from './AssignedExercise.tsx';
import { answersTo, drawingOf, type Handing, withProof } from './handing.ts';

interface Props {
  assignment: Assignment;
  grader: AssignmentGrader;
  handing: Handing;
  change: (change: (handing: Handing) => Handing) => void;
}

/** The exercises of an assignment in the learner's own variants; one at a time is on the bench. */
export function Exercises({ assignment, grader, handing, change }: Props) {
  const [open, setOpen] = useState<string | null>(null);
  const { id: of, exercises, carried, attempts } = assignment;
  const { learner } = handing;
  const whole = exercises.reduce((sum, { weight }) => sum + weight, 0);
  const settings = useMemo(
    () => new Map(exercises.map(({ id }) => [id, settingOf({ of, learner, id, grader, change })])),
    [exercises, of, learner, grader, change],
  );
  return exercises.map(({ id, weight }) => (
    <AssignedExercise
      key={id}
      carried={carried.find(({ definition }) => definition.id === id)!}
      seed={seedOf(of, learner, id, 1)}
      share={weight / whole}
      proved={answersTo(handing, id)}
      attempts={attempts}
      isOpen={open === id}
      onToggle={() => setOpen(open === id ? null : id)}
      setting={settings.get(id)!}
    />
  ));
}

interface About {
  of: string;
  learner: string;
  id: string;
  grader: AssignmentGrader;
  change: Props['change'];
}

/** The exercise that the assignment carries, under its tolerances; every proof is added to what is handed in. */
function settingOf({ of, learner, id, grader, change }: About): Setting {
  return {
    open: async (seed) => grader.exerciseOf(id, seed)!,
    nextSeed: (seed) => seedOf(of, learner, id, drawingOf(of, learner, id, seed) + 1),
    keptUnder: `${of}/${learner}/`,
    proved: (answer, { exerciseKind: kind, mark, passed }) => {
      const at = new Date().toISOString();
      change((handing) => withProof(handing, { answer, kind, mark, passed }, at));
    },
  };
}
