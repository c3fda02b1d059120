import { useId, useState } from 'react';
import { openVersion } from '../edit/openDraft.ts';
import { useBench } from '../state/bench.ts';
import { RefusalAt } from '../words/RefusalAt.tsx';
import { KeepVersion } from './KeepVersion.tsx';
import { WHY_OFF } from './keeping.ts';
import { useVersions } from './useVersions.ts';
import { VersionLine } from './VersionLine.tsx';
import { contentOf, isSameContent, type KeptVersion, namedApart, versionOf } from './version.ts';
import { addVersion, removeVersion, renameVersion } from './versions.ts';

const SLOT = 'versions';

/** Versions of the answer kept under names: each can be opened again, renamed and taken away. */
export function Versions({ work }: { work: string }) {
  const { store, exercise, edit, dispatch } = useBench();
  const { list, versions, off } = useVersions(work);
  const [gone, setGone] = useState<KeptVersion | null>(null);
  const [taken, setTaken] = useState<string | null>(null);
  const takenId = useId();
  const say = (said: string) => dispatch({ do: 'say', said });
  const names = versions?.map(({ name }) => name) ?? [];

  async function keep(name: string): Promise<boolean> {
    const made = await list.make(() => addVersion(versionOf(store.get(), exercise, { work, name, when: Date.now() })));
    setTaken(made === 'taken' ? name : null);
    if (made === 'done') say(`Kept as “${name}”.`);
    return made === 'done';
  }

  async function rename(version: KeptVersion, name: string): Promise<void> {
    const made = await list.make(() => renameVersion(version, name));
    setTaken(made === 'taken' ? name : null);
    if (made === 'done') say(`“${version.name}” is now called “${name}”.`);
  }

  async function takeAway(version: KeptVersion): Promise<void> {
    const made = await list.make(() => removeVersion(version));
    if (!made) return;
    setGone(version);
    say(`“${version.name}” is taken away. It can be brought back.`);
  }

  async function bringBack(version: KeptVersion): Promise<void> {
    const made = await list.make(() => addVersion({ ...version, name: namedApart(version.name, names) }));
    if (!made) return;
    setGone(null);
    say(`“${version.name}” is back.`);
  }

  /** Undo brings the draft back that stood before; a pose, which has no steps, is kept as a version first. */
  async function open(version: KeptVersion): Promise<void> {
    const now = contentOf(store.get(), exercise);
    const isLost = version.pose !== undefined && !versions?.some((each) => isSameContent(each, now));
    if (isLost && !(await keep(namedApart(`before ${version.name}`, names)))) return;
    edit(openVersion(version), SLOT);
    if (version.pose) dispatch({ do: 'pose', pose: version.pose });
    say(`“${version.name}” is open.${version.pose ? '' : ' Undo brings back what stood before.'}`);
  }

  return (
    <details className="wb-versions">
      <summary>Versions of your answer{names.length > 0 && ` (${names.length})`}</summary>
      {versions && <KeepVersion names={names} keep={keep} refusalId={taken === null ? undefined : takenId} />}
      {taken !== null && (
        <p className="wb-refusal" role="alert" id={takenId}>
          There is a version called “{taken}” already. Choose another name.
        </p>
      )}
      {off && (
        // Where nothing was ever kept, the line above has told of it already.
        <p className="wb-refusal" role={versions && 'alert'}>
          {WHY_OFF[off]}
        </p>
      )}
      <RefusalAt slot={SLOT} />
      {gone && (
        <p>
          “{gone.name}” is taken away.{' '}
          <button type="button" onClick={() => void bringBack(gone)}>
            Bring it back
          </button>
        </p>
      )}
      {names.length > 0 && (
        <ul aria-label="Kept versions, the newest first">
          {versions!.map((version) => (
            <VersionLine
              key={version.id}
              version={version}
              open={() => void open(version)}
              rename={(name) => void rename(version, name)}
              takeAway={() => void takeAway(version)}
            />
          ))}
        </ul>
      )}
    </details>
  );
}
