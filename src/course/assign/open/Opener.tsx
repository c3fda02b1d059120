import { useCallback, useEffect, useState } from 'react';
import { type OpenedAssignment, readAssignmentText } from '../../../delivery/assignment/readAssignment.ts';
import { Alarm } from '../parts/Field.tsx';
import { FileButton } from '../parts/FileButton.tsx';
import { refusalWords } from '../refusal-words.ts';
import { Assigned } from './Assigned.tsx';
import { CheckReceipt } from './CheckReceipt.tsx';
import { keepAssignment, keptAssignments } from './handing-store.ts';
import { assignmentIn, keptHash, keptIn } from './hash.ts';
import type { KeptAssignment } from './kept-assignment.ts';

/** Opens an assignment from the address, from a file, or from what this browser has kept. */
export function Opener() {
  const [kept, setKept] = useState<readonly KeptAssignment[]>([]);
  const [opened, setOpened] = useState<OpenedAssignment | null>(null);
  const [refusal, setRefusal] = useState('');
  const [otherSigner, setOtherSigner] = useState(false);

  const open = useCallback(async (text: string) => {
    const read = readAssignmentText(text.trim());
    setRefusal(read.ok ? '' : `This is no assignment that can be used. ${refusalWords(read.refusal)}`);
    if (!read.ok) return;
    const { assignment, signedBy } = read.value;
    setOpened(read.value);
    const { id, title } = assignment;
    try {
      const before = await keepAssignment({ id, title, text: text.trim(), signedBy });
      setOtherSigner(before !== undefined && before.signedBy !== signedBy);
      history.replaceState(null, '', keptHash(id));
    } catch {
      // The address still opens it, and so does the file; that nothing is kept is said with the work.
      setOtherSigner(false);
    }
  }, []);

  useEffect(() => {
    async function fromAddress() {
      const text = assignmentIn(location.hash);
      if (text !== null) await open(text);
      const all = await keptAssignments().catch(() => []);
      setKept(all);
      const again = all.find(({ id }) => id === keptIn(location.hash));
      if (text === null && again) await open(again.text);
    }
    void fromAddress();
    const again = () => void fromAddress();
    window.addEventListener('hashchange', again);
    return () => window.removeEventListener('hashchange', again);
  }, [open]);

  const others = kept.filter(({ id }) => id !== opened?.assignment.id);
  return (
    <>
      <p className="files-line">
        <FileButton
          words={opened ? 'Open another assignment' : 'Open an assignment'}
          onText={(text) => void open(text)}
        />
      </p>
      <Alarm>{refusal}</Alarm>
      {others.length > 0 && <KeptList kept={others} onOpen={(text) => void open(text)} />}
      {otherSigner && (
        <Alarm>
          An assignment of this id was opened here before, signed by somebody else. Compare the thumbprint below before
          you go on.
        </Alarm>
      )}
      {opened && <Assigned key={opened.assignment.id} opened={opened} />}
      <h2>Check a receipt</h2>
      <CheckReceipt />
    </>
  );
}

function KeptList({ kept, onOpen }: { kept: readonly KeptAssignment[]; onOpen: (text: string) => void }) {
  return (
    <>
      <p>Opened in this browser before:</p>
      <ul>
        {kept.map(({ id, title, text }) => (
          <li key={id}>
            <button type="button" onClick={() => onOpen(text)}>
              {title}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
