import { useState } from 'react';
import type { KeyPair } from '../../../delivery/assignment/assignment.ts';
import { makeKey, readKeyPair, thumbprintText } from '../../../delivery/assignment/keys.ts';
import { readJson } from '../../../solver/document/json.ts';
import { saveFile } from '../../../workbench/keep/saveFile.ts';
import { Alarm } from '../parts/Field.tsx';
import { FileButton } from '../parts/FileButton.tsx';
import { refusalWords } from '../refusal-words.ts';

interface Props {
  pair: KeyPair | null;
  onPair: (pair: KeyPair) => void;
}

/** The key that signs: made here, taken from a file, saved to a file. */
export function KeySection({ pair, onPair }: Props) {
  const [refusal, setRefusal] = useState('');
  const [replacing, setReplacing] = useState<KeyPair | null>(null);

  function take(text: string) {
    const json = readJson(text);
    const read = json.ok ? readKeyPair(json.value) : json;
    setRefusal(read.ok ? '' : `The file holds no key that can be used. ${refusalWords(read.refusal)}`);
    if (!read.ok) return;
    if (pair && pair.x !== read.value.x) setReplacing(read.value);
    else onPair(read.value);
  }

  return (
    <>
      {pair ? (
        <p>
          Thumbprint: <code className="thumbprint">{thumbprintText(pair)}</code>
        </p>
      ) : (
        <p>There is no key in this browser yet. One is made when you first save an assignment.</p>
      )}
      <p className="files-line">
        {/* One button in two states keeps the focus. */}
        <button type="button" onClick={() => (pair ? saveFile('counterpose-key.json', pair) : onPair(makeKey()))}>
          {pair ? 'Save the key to a file' : 'Make a key'}
        </button>
        <FileButton words="Take a key from a file" accept=".json,application/json" onText={take} />
      </p>
      {replacing && (
        <p className="alarm" role="alert">
          The file holds another key, {thumbprintText(replacing)}. The one in this browser would be lost unless you have
          saved it.{' '}
          <button
            type="button"
            onClick={() => {
              onPair(replacing);
              setReplacing(null);
            }}
          >
            Use the key of the file
          </button>{' '}
          <button type="button" onClick={() => setReplacing(null)}>
            Keep the present one
          </button>
        </p>
      )}
      <Alarm>{refusal}</Alarm>
    </>
  );
}
