import type { OpenedAssignment } from '../assignment/readAssignment.ts';
import { millisecondsOf } from '../assignment/time.ts';
import type { Roster } from '../csv/roster.ts';
import { hashOf } from '../hash.ts';
import type { Book, BookFlag, BookLearner, HandedIn, ResubmissionRule } from './book.ts';
import type { MarkedFile } from './markFile.ts';

/** Puts marked files into a book: by learner, in the order of the roster, strangers after them. */
export function makeBook(
  { assignment, signedBy }: OpenedAssignment,
  roster: Roster | null,
  files: readonly MarkedFile[],
  rule: ResubmissionRule = 'last',
): Book {
  const byLearner = new Map<string, HandedIn[]>();
  const probed = new Set<string>();
  for (const file of files) {
    if (file.kind === 'stray') continue;
    const list = byLearner.get(file.marked.learner) ?? [];
    byLearner.set(file.marked.learner, list);
    list.push({ path: file.path, collected: file.collected, marked: file.marked });
    if (file.failsProbes) probed.add(file.marked.learner);
  }
  const known = roster?.learners ?? [];
  const strangers = [...byLearner.keys()].filter((code) => !known.some(({ learner }) => learner === code)).sort();
  const people = [...known, ...strangers.map((learner) => ({ learner, name: null }))];
  const alike = learnersAlike(files);
  const learners = people.map(({ learner, name }): BookLearner => {
    const handedIn = inOrder(byLearner.get(learner) ?? []);
    const counted = countedOf(handedIn, rule);
    const flags = new Set<BookFlag>(counted === null ? [] : handedIn[counted]!.marked.flags);
    if (handedIn.length > 1) flags.add('resubmitted');
    if (roster && name === null) flags.add('unknown-learner');
    if (alike.has(learner)) flags.add('alike');
    if (probed.has(learner)) flags.add('probe-failed');
    return { learner, name, handedIn, counted, flags: [...flags], notes: [] };
  });
  const strays = files.flatMap((file) => (file.kind === 'stray' ? [{ path: file.path, refusal: file.refusal }] : []));
  const { id, title, passMark } = assignment;
  return {
    format: 'counterpose/markbook',
    version: 1,
    assignment: { id, title, signedBy, passMark },
    learners,
    strays,
  };
}

/** By the time of collection, and by path where that does not tell. */
function inOrder(handedIn: readonly HandedIn[]): HandedIn[] {
  const at = ({ collected }: HandedIn) => (collected === null ? 0 : millisecondsOf(collected));
  return [...handedIn].sort((a, b) => at(a) - at(b) || (a.path < b.path ? -1 : 1));
}

function countedOf(handedIn: readonly HandedIn[], rule: ResubmissionRule): number | null {
  if (handedIn.length === 0) return null;
  if (rule === 'last') return handedIn.length - 1;
  const best = Math.max(...handedIn.map(({ marked }) => marked.mark));
  return handedIn.findIndex(({ marked }) => marked.mark === best);
}

/**
 * Learners whose answers make the same free choices as somebody else's. Short right answers are alike by nature, so an
 * answer speaks only if it has more free choices than a few.
 */
function learnersAlike(files: readonly MarkedFile[]): Set<string> {
  const byChoices = new Map<string, Set<string>>();
  for (const file of files) {
    if (file.kind === 'stray') continue;
    for (const choices of file.choices) {
      const key = hashOf(choices);
      const learners = byChoices.get(key) ?? new Set();
      byChoices.set(key, learners.add(file.marked.learner));
    }
  }
  return new Set([...byChoices.values()].filter((learners) => learners.size > 1).flatMap((learners) => [...learners]));
}
