import { type Action, reduce, type Session } from './session.ts';

/** The session outside React: whoever listens hears of every change at once. */
export interface Store {
  readonly get: () => Session;
  readonly dispatch: (action: Action) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

export function createStore(first: Session): Store {
  let session = first;
  const listeners = new Set<() => void>();
  return {
    get: () => session,
    dispatch: (action) => {
      const next = reduce(session, action);
      if (next === session) return;
      session = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
