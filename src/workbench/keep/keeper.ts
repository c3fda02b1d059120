import type { Step } from '../state/history.ts';
import type { Store } from '../state/store.ts';
import { changeBetween, sharedCount } from './changes.ts';
import { type Database, load, openDatabase, save } from './database.ts';
import type { Keeping } from './keeping.ts';
import { migrated, packed, unpacked } from './record.ts';
import { openChannel } from './tabs.ts';
import { whyOff } from './whyOff.ts';

interface About {
  readonly key: string;
  readonly edition: string;
  /** Whether the pose is the answer. */
  readonly posed: boolean;
}

export interface Keeper {
  readonly get: () => Keeping;
  readonly subscribe: (listener: () => void) => () => void;
  /** Takes over what another tab has kept, or writes over it. */
  readonly take: (which: 'theirs' | 'ours') => Promise<void>;
  readonly close: () => void;
}

/** How long a control that is being dragged waits to be kept. */
const POSE_MS = 300;

/** Brings back what was kept of an exercise, and from then on keeps every change of the store at once. */
export function createKeeper(store: Store, about: About): Keeper {
  const { key, edition, posed } = about;
  const tabs = openChannel('works');
  const listeners = new Set<() => void>();
  let keeping: Keeping = { is: 'opening' };
  let database: Database | undefined;
  let revision = 0;
  let savedDraft: unknown;
  let savedSteps: readonly Step[] = [];
  let savedSession = store.get();
  let saving = false;
  let waiting = false;
  let closed = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const unsubscribe = store.subscribe(changed);
  window.addEventListener('pagehide', keepNow);
  if (tabs) tabs.onmessage = ({ data }) => heard(data);
  void open();

  return {
    get: () => keeping,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    take,
    close: () => {
      keepNow();
      closed = true;
      unsubscribe();
      window.removeEventListener('pagehide', keepNow);
      tabs?.close();
      if (!saving) database?.close();
    },
  };

  /** A control that is being dragged is kept a few times a second, everything else at once. */
  function changed(): void {
    if (changeBetween(savedSession, store.get(), false) === 'stand') timer ??= setTimeout(keepNow, POSE_MS);
    else keepNow();
  }

  function keepNow(): void {
    clearTimeout(timer);
    timer = undefined;
    void keep();
  }

  async function open(): Promise<void> {
    try {
      database = await openDatabase();
      await bringBack();
    } catch (error) {
      become({ is: 'off', why: whyOff(error) });
    }
  }

  async function bringBack(): Promise<void> {
    const kept = await load(database!, key);
    if (closed) return database?.close();
    if (!kept) return become({ is: 'kept' });
    const current = migrated(kept);
    if (!current.ok) return become({ is: 'off', why: 'later-version' });
    const session = unpacked(current.value);
    if (!session.ok) return become({ is: 'off', why: 'unreadable' });
    revision = kept.work.revision;
    savedDraft = session.value.history.document;
    savedSteps = session.value.history.steps;
    savedSession = session.value;
    become({ is: 'kept' });
    store.dispatch({ do: 'restore', session: session.value });
  }

  async function keep(over = false): Promise<void> {
    if (!database || !canSave() || (change() === 'nothing' && !over)) return;
    if (saving) {
      waiting = true;
      return;
    }
    saving = true;
    do {
      waiting = false;
      await saveOnce(over);
    } while (waiting && canSave());
    saving = false;
    if (closed) database.close();
  }

  function change() {
    return changeBetween(savedSession, store.get(), posed);
  }

  async function saveOnce(over: boolean): Promise<void> {
    const session = store.get();
    // How the work stands is written with the revision that it stands on, or not at all.
    const isWork = over || change() === 'work';
    const { document, steps } = session.history;
    const work = packed(session, { key, edition, revision: isWork ? revision + 1 : revision });
    const from = over ? 0 : sharedCount(savedSteps, steps);
    const stood = over ? Number.POSITIVE_INFINITY : savedSteps.length;
    const draft = document === savedDraft && !over ? {} : { draft: document };
    try {
      const saved = await save(database!, { work, ...draft, steps, from, over: stood, on: over ? 'any' : revision });
      if (saved === 'elsewhere') return isWork ? become({ is: 'elsewhere' }) : undefined;
      revision = work.revision;
      savedDraft = document;
      savedSteps = steps;
      savedSession = session;
      become({ is: 'kept' });
      if (isWork) tabs?.postMessage({ key, revision });
    } catch (error) {
      become({ is: 'off', why: whyOff(error) });
    }
  }

  function heard(message: { key: string; revision: number }): void {
    if (message.key !== key || message.revision <= revision) return;
    become({ is: 'elsewhere' });
  }

  async function take(which: 'theirs' | 'ours'): Promise<void> {
    if (!database) return;
    if (which === 'theirs') return bringBack();
    const kept = await load(database, key);
    revision = kept?.work.revision ?? 0;
    become({ is: 'kept' });
    await keep(true);
  }

  /** A full storage may have room again; what another tab or version holds must not be touched. */
  function canSave(): boolean {
    return keeping.is === 'kept' || (keeping.is === 'off' && (keeping.why === 'full' || keeping.why === 'forbidden'));
  }

  function become(next: Keeping): void {
    keeping = next;
    for (const listener of listeners) listener();
  }
}
