import { type FormEvent, useState } from 'react';
import { NAME_MAX, nextName } from './version.ts';

interface Props {
  /** Those that are taken. */
  names: readonly string[];
  /** Keeps what stands under a name; false where that was not possible. */
  keep: (name: string) => Promise<boolean>;
  refusalId: string | undefined;
}

/** "Keep the answer as it stands as version 1." */
export function KeepVersion({ names, keep, refusalId }: Props) {
  const [typed, setTyped] = useState<string | null>(null);
  const name = typed ?? nextName(names);

  async function submit(event: FormEvent) {
    event.preventDefault();
    if (name.trim() === '') return;
    // What is typed meanwhile is the next one's.
    setTyped(null);
    if (!(await keep(name.trim()))) setTyped((since) => since ?? name);
  }

  return (
    <form onSubmit={(event) => void submit(event)}>
      Keep the answer as it stands, as{' '}
      <span className="wb-word wb-name">
        <span aria-hidden="true">{name || ' '}</span>
        <input
          type="text"
          autoComplete="off"
          maxLength={NAME_MAX}
          aria-label="name of a new version"
          aria-describedby={refusalId}
          aria-invalid={refusalId ? true : undefined}
          value={name}
          onChange={(event) => setTyped(event.target.value)}
        />
      </span>
      .{' '}
      <button type="submit" disabled={name.trim() === ''}>
        Keep this version
      </button>
    </form>
  );
}
