import { type ChangeEvent, useRef, useState } from 'react';
import type { Refusal } from '../../solver/document/refusal.ts';
import { answerOf } from '../answer/answerOf.ts';
import { redraws } from '../answer/kinds.ts';
import { openDraft } from '../edit/openDraft.ts';
import { useBench } from '../state/bench.ts';
import type { Keeper } from './keeper.ts';
import { KEEPING_WORDS, type Keeping, WHY_OFF } from './keeping.ts';
import { saveFile } from './saveFile.ts';
import { Versions } from './Versions.tsx';

interface Props {
  /** The key under which the work is kept. */
  work: string;
  keeping: Keeping;
  keeper: Keeper | null;
}

/** How the work is kept, and the files it can go to and come from. */
export function KeepingLine({ work, keeping, keeper }: Props) {
  const { store, exercise } = useBench();
  return (
    <div className="wb-keeping">
      <p>
        <button
          type="button"
          onClick={() => saveFile(`${exercise.id}-answer.json`, answerOf(store.get(), exercise, new Date()))}
        >
          Save to a file
        </button>
        <OpenFile />
        <span className="wb-note">{KEEPING_WORDS[keeping.is]}</span>
      </p>
      {keeping.is === 'off' && (
        <p className="wb-refusal" role="alert">
          {WHY_OFF[keeping.why]}
        </p>
      )}
      {keeping.is === 'elsewhere' && (
        <p className="wb-refusal" role="alert">
          Two tabs hold different work, and only one can be kept.{' '}
          <button type="button" onClick={() => void keeper?.take('theirs')}>
            Take the other tab’s work
          </button>{' '}
          <button type="button" onClick={() => void keeper?.take('ours')}>
            Keep what is here
          </button>
        </p>
      )}
      {!redraws(exercise) && <Versions work={work} />}
    </div>
  );
}

function OpenFile() {
  const { exercise, desk, edit, dispatch } = useBench();
  const field = useRef<HTMLInputElement>(null);
  const [refusal, setRefusal] = useState<Refusal | null>(null);

  async function open(event: ChangeEvent<HTMLInputElement>) {
    const { files } = event.target;
    const file = files?.[0];
    if (!file) return;
    const read = await desk.ask({ ask: 'read', exercise, text: await file.text() });
    // The same file may be chosen again once it has been mended.
    event.target.value = '';
    setRefusal(read.ok ? null : read.refusal);
    if (!read.ok) return;
    edit(openDraft(read.value.draft), 'file');
    if (read.value.pose) dispatch({ do: 'pose', pose: read.value.pose });
  }

  return (
    <>
      <button type="button" onClick={() => field.current?.click()}>
        Open a file
      </button>
      <input ref={field} type="file" accept=".json,application/json" hidden onChange={(event) => void open(event)} />
      {refusal && (
        <span className="wb-refusal" role="alert">
          The file cannot be used, and your work is as it was. At <code>{refusal.place || 'the whole file'}</code>:
          found {refusal.found}, expected {refusal.expected}.
        </span>
      )}
    </>
  );
}
