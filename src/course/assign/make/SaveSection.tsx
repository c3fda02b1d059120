import { useRef, useState } from 'react';
import { saveContent } from '../../../workbench/keep/saveFile.ts';
import { courseAddress } from '../course-root.ts';
import { CopyButton } from '../parts/CopyButton.tsx';
import type { Made } from './make-signed.ts';

interface Props {
  name: string;
  /** Makes the signed assignment, and says how far it is. */
  make: (tell: (words: string) => void, signal: AbortSignal) => Promise<Made>;
}

/** Browsers and mail programs cut longer addresses; common practice, no source. */
const LONGEST_ADDRESS = 60_000;

/** Makes the file, and the address where the assignment is short enough for one. */
export function SaveSection({ name, make }: Props) {
  const [told, setTold] = useState('');
  const [made, setMade] = useState<Made | null>(null);
  const running = useRef<AbortController | null>(null);

  async function save() {
    if (running.current) return;
    const controller = new AbortController();
    running.current = controller;
    setMade(null);
    setTold('Making the assignment …');
    try {
      const result = await make(setTold, controller.signal);
      setMade(result);
      setTold('text' in result ? `Saved as ${name}.` : '');
      if ('text' in result) saveContent(name, `${result.text}\n`, 'application/octet-stream');
    } catch (error) {
      setTold('');
      setMade({ faults: [`The assignment could not be made: ${(error as Error).message}.`] });
    } finally {
      running.current = null;
    }
  }

  return (
    <>
      <p className="files-line">
        <button type="button" onClick={() => void save()}>
          Sign it and save the file
        </button>
        {told.startsWith('Auditing') && (
          <button type="button" onClick={() => running.current?.abort()}>
            Stop
          </button>
        )}
        <span role="status">{told}</span>
      </p>
      <div className="alarm" role="alert">
        {made && 'faults' in made && (
          <ul>
            {made.faults.map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        )}
      </div>
      {made && 'text' in made && <Passing text={made.text} />}
    </>
  );
}

function Passing({ text }: { text: string }) {
  const address = `${courseAddress('assignment/open/index.html')}#${text}`;
  if (address.length > LONGEST_ADDRESS) {
    return (
      <p>
        With {Math.ceil(address.length / 1000)} kB it is too long for an address: pass on the file. Learners open it
        under <a href={courseAddress('assignment/open/index.html')}>Open an assignment</a>.
      </p>
    );
  }
  return (
    <>
      <p>
        Pass on the file, or this address. Both hold the whole assignment, and neither is kept on any server of ours.
      </p>
      <CopyButton words="Copy the address" label="The address that opens it" text={address} />
    </>
  );
}
