import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { KeyPair } from '../../../delivery/assignment/assignment.ts';
import type { PlanForm } from '../make/plan-form.ts';
import type { Handing } from '../open/handing.ts';
import type { KeptAssignment } from '../open/kept-assignment.ts';

/** What instructors and learners keep in the browser, apart from the work on the bench. */
interface Shape extends DBSchema {
  /** One: the instructor's own. */
  keys: { key: 'own'; value: KeyPair };
  /** One: the assignment that is being made. */
  plans: { key: 'current'; value: PlanForm };
  /** Assignments that were opened, by id. */
  assignments: { key: string; value: KeptAssignment };
  /** What a learner has proved and handed in, by assignment and learner. */
  handings: { key: [assignment: string, learner: string]; value: Handing };
  /** The learner's code that was used last. */
  codes: { key: 'own'; value: string };
}

/** Opened for one piece of work: a connection that stays open keeps the page out of the browser's back and forward. */
export async function withTeaching<T>(use: (database: IDBPDatabase<Shape>) => Promise<T>): Promise<T> {
  const database = await openDB<Shape>('counterpose-teaching', 1, {
    upgrade: (opened) => {
      opened.createObjectStore('keys');
      opened.createObjectStore('plans');
      opened.createObjectStore('assignments', { keyPath: 'id' });
      opened.createObjectStore('handings');
      opened.createObjectStore('codes');
    },
  });
  try {
    return await use(database);
  } finally {
    database.close();
  }
}
