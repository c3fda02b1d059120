import type { WhyOff } from './keeping.ts';
import { openChannel } from './tabs.ts';
import type { KeptVersion } from './version.ts';
import { type Change, versionsOf } from './versions.ts';
import { whyOff } from './whyOff.ts';

export interface VersionsNow {
  /** Undefined until they have been read, and where they cannot be. */
  readonly versions: readonly KeptVersion[] | undefined;
  /** Why the last reading or writing failed. */
  readonly off: WhyOff | null;
}

/** The kept versions of one work as the page shows them, with what other tabs do to them. */
export interface VersionList {
  readonly work: string;
  readonly get: () => VersionsNow;
  readonly subscribe: (listener: () => void) => () => void;
  /** Makes a change and reads the list again, here and in the other tabs; undefined where it failed. */
  readonly make: (change: () => Promise<Change>) => Promise<Change | undefined>;
}

export function createVersionList(work: string): VersionList {
  const listeners = new Set<() => void>();
  let now: VersionsNow = { versions: undefined, off: null };
  let tabs: BroadcastChannel | undefined;

  return {
    work,
    get: () => now,
    subscribe: (listener) => {
      if (listeners.size === 0) begin();
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
        if (listeners.size === 0) end();
      };
    },
    make: async (change) => {
      try {
        const said = await change();
        tabs?.postMessage({ work });
        await read();
        return said;
      } catch (error) {
        become({ ...now, off: whyOff(error) });
        return undefined;
      }
    },
  };

  function begin(): void {
    tabs = openChannel('versions');
    if (tabs) tabs.onmessage = ({ data }) => data.work === work && void read();
    // For tabs that cannot hear each other.
    window.addEventListener('focus', read);
    void read();
  }

  function end(): void {
    tabs?.close();
    window.removeEventListener('focus', read);
  }

  async function read(): Promise<void> {
    try {
      become({ versions: await versionsOf(work), off: null });
    } catch (error) {
      become({ ...now, off: whyOff(error) });
    }
  }

  function become(next: VersionsNow): void {
    now = next;
    for (const listener of listeners) listener();
  }
}
