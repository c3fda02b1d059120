import { useEffect, useMemo, useRef, useState } from 'react';
import type { OpenedAssignment } from '../../../delivery/assignment/readAssignment.ts';
import { AssignmentGrader } from '../../../delivery/mark/gradeAnswer.ts';
import { Alarm } from '../parts/Field.tsx';
import { About } from './About.tsx';
import { CodeForm } from './CodeForm.tsx';
import { Exercises } from './Exercises.tsx';
import { HandIn } from './HandIn.tsx';
import { keepCode, keptCode } from './handing-store.ts';
import { useHanding } from './useHanding.ts';

const FORBIDDEN =
  'This browser does not let the page store anything. What you prove lasts until you leave the page: save the file to hand in before you do.';

/** An assignment that has been opened: what is asked, then, under the learner's code, the work and the handing in. */
export function Assigned({ opened }: { opened: OpenedAssignment }) {
  const { assignment } = opened;
  const [code, setCode] = useState<string | null>(null);
  const [known, setKnown] = useState<string | null>(null);
  const [isAsked, setAsked] = useState(false);

  useEffect(() => {
    keptCode().then(
      (kept) => {
        setKnown(kept ?? '');
        if (kept !== undefined) setCode(kept);
      },
      () => setKnown(''),
    );
  }, []);

  function take(next: string) {
    setCode(next);
    setKnown(next);
    setAsked(true);
    // Where nothing can be stored, it is said once the work is open.
    keepCode(next).catch(() => {});
  }

  return (
    <>
      <h2>{assignment.title}</h2>
      <About {...opened} />
      {known !== null && code === null && <CodeForm first={known} onCode={take} />}
      {code !== null && (
        <Work key={code} opened={opened} learner={code} isAsked={isAsked} onOther={() => setCode(null)} />
      )}
    </>
  );
}

interface WorkProps {
  opened: OpenedAssignment;
  learner: string;
  /** The code was asked for just now. */
  isAsked: boolean;
  onOther: () => void;
}

function Work({ opened, learner, isAsked, onOther }: WorkProps) {
  const { assignment } = opened;
  const place = useRef<HTMLParagraphElement>(null);
  const grader = useMemo(() => new AssignmentGrader(opened), [opened]);
  const { handing, change, isForbidden } = useHanding(assignment.id, learner);
  // The form with the code is gone, and the focus with it; on a page just opened the focus stays where it is.
  useEffect(() => {
    if (isAsked) place.current?.focus();
  }, [isAsked]);

  return (
    <>
      <p tabIndex={-1} ref={place}>
        You work under the code <strong>{learner}</strong>.{' '}
        <button type="button" onClick={onOther}>
          Use another code
        </button>
      </p>
      {isForbidden && <Alarm>{FORBIDDEN}</Alarm>}
      {handing && (
        <>
          <h2>Exercises</h2>
          <p>
            Every proof is written down, and the answers that count go into the file you hand in. What is found here is
            provisional: the mark is made by your instructor, from the file.
          </p>
          <Exercises {...{ assignment, grader, handing, change }} />
          <h2>Hand in</h2>
          <HandIn {...{ assignment, handing, change }} />
        </>
      )}
    </>
  );
}
