import { type DragEvent, useRef, useState } from 'react';
import { readAssignmentText } from '../delivery/assignment/readAssignment.ts';
import type { ResubmissionRule } from '../delivery/book/book.ts';
import { makeBook } from '../delivery/book/makeBook.ts';
import type { MarkedFile } from '../delivery/book/markFile.ts';
import { collect } from '../delivery/collection/collect.ts';
import type { Collected } from '../delivery/collection/collected.ts';
import { readRoster } from '../delivery/csv/roster.ts';
import { type Desk, withNotesOf } from './desk.ts';
import { collectedFiles, filesOfDrop } from './droppedFiles.ts';
import { FileField } from './FileField.tsx';
import { markAll } from './markAll.ts';
import { refusalText } from './words.ts';

interface Props {
  desk: Desk;
  setDesk: (change: (now: Desk) => Desk) => void;
}

/** What is marked, and by what: the assignment, the roster, the files; then marking, with how far it has come. */
export function Marking({ desk, setDesk }: Props) {
  const [alarm, setAlarm] = useState('');
  const [rule, setRule] = useState<ResubmissionRule>('last');
  const [done, setDone] = useState<number | null>(null);
  const stopping = useRef<AbortController | null>(null);
  const { opened, roster, files } = desk;

  async function openAssignment([file]: File[]) {
    const text = await file!.text();
    const read = readAssignmentText(text);
    if (!read.ok) return setAlarm(`${file!.name} is no assignment. ${refusalText(read.refusal)}`);
    setAlarm('');
    setDesk((now) => ({ ...now, assignmentText: text, opened: read.value, marked: new Map() }));
  }

  async function openRoster([file]: File[]) {
    const read = readRoster(await file!.text());
    if (!read.ok) return setAlarm(`${file!.name} is no roster. ${refusalText(read.refusal)}`);
    setAlarm('');
    setDesk((now) => ({ ...now, roster: read.value }));
  }

  const take = (given: readonly File[]) => {
    setDesk((now) => ({ ...now, files: collectedFiles(given), marked: new Map() }));
  };

  async function drop(event: DragEvent) {
    event.preventDefault();
    take(await filesOfDrop(event.dataTransfer.items));
  }

  async function mark() {
    const stop = new AbortController();
    stopping.current = stop;
    const marked = new Map(desk.marked);
    setDone(marked.size);
    const { assignmentText, secretSeed } = desk;
    const onMarked = (file: MarkedFile) => {
      marked.set(file.path, file);
      setDone(marked.size);
    };
    try {
      await markAll(unmarked(marked), { assignment: assignmentText, secretSeed, signal: stop.signal, onMarked });
    } catch (error) {
      setAlarm(`Marking stopped: ${(error as Error).message}`);
    }
    stopping.current = null;
    const all = [...marked.values()].sort((a, b) => (a.path < b.path ? -1 : 1));
    const book = makeBook(opened!, roster, all, rule);
    setDesk((now) => ({ ...now, marked, book: withNotesOf(book, now.book) }));
  }

  async function* unmarked(marked: ReadonlyMap<string, MarkedFile>): AsyncGenerator<Collected> {
    for await (const file of collect(files)) if (!marked.has(file.path)) yield file;
  }

  const isRunning = stopping.current !== null;
  return (
    <section aria-labelledby="mb-in">
      <h2 id="mb-in">What was handed in</h2>
      {alarm && (
        <p className="alarm" role="alert">
          {alarm}
        </p>
      )}
      <FileField label="The assignment" accept=".json" take={openAssignment}>
        {opened &&
          `${opened.assignment.title}, ${opened.assignment.exercises.length} exercises, ` +
            (opened.signedBy ? `signed by ${opened.signedBy.match(/.{1,4}/g)!.join(' ')}` : 'signed by nobody')}
      </FileField>
      <FileField label="The roster, CSV with learner and name" accept=".csv,.txt" take={openRoster}>
        {roster && `${roster.learners.length} learners`}
      </FileField>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the fields in it do the same */}
      <div className="mb-drop" onDragOver={(event) => event.preventDefault()} onDrop={drop}>
        <FileField label="A folder of submissions" folder take={take} />
        <FileField label="or a zip, or files" multiple take={take}>
          {files.length > 0 && `${files.length} ${files.length === 1 ? 'file' : 'files'} chosen`}
        </FileField>
        <p className="small">Or drop a folder or a zip here. Nothing is sent anywhere.</p>
      </div>
      <p>
        <label>
          Of several from one learner counts{' '}
          <select value={rule} onChange={(event) => setRule(event.target.value as ResubmissionRule)}>
            <option value="last">the last</option>
            <option value="best">the best</option>
          </select>
        </label>
      </p>
      <p>
        <button type="button" disabled={!opened || files.length === 0 || isRunning} onClick={mark}>
          {desk.marked.size > 0 ? 'Go on marking' : 'Mark all'}
        </button>{' '}
        {isRunning && (
          <button type="button" onClick={() => stopping.current?.abort()}>
            Stop
          </button>
        )}
      </p>
      {done !== null && <Bar done={done} of={files.length} isRunning={isRunning} />}
    </section>
  );
}

function Bar({ done, of, isRunning }: { done: number; of: number; isRunning: boolean }) {
  const whole = Math.max(done, of);
  return (
    <p role="status">
      <progress value={isRunning ? done : whole} max={whole} aria-label="Files marked" /> {done} files marked
    </p>
  );
}
