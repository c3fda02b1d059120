import type { VerbEntry } from './verb.ts';

/** Every verb of the command line, in the order in which --help lists them. */
export const VERBS: readonly VerbEntry[] = [
  {
    name: 'solve',
    says: 'where every bone of a rig stands, in one pose or in many',
    load: async () => (await import('./verbs/solve.ts')).solveVerb,
  },
  {
    name: 'mirror',
    says: 'a rig reflected, or one side of it copied across',
    load: async () => (await import('./verbs/mirror.ts')).mirrorVerb,
  },
  {
    name: 'exercise',
    says: 'the exercises, or one of them whole',
    load: async () => (await import('./verbs/exercise.ts')).exerciseVerb,
  },
  {
    name: 'grade',
    says: 'the marks of answers, with what was measured and the simplest pose that breaks each requirement',
    load: async () => (await import('./verbs/grade.ts')).gradeVerb,
  },
  {
    name: 'key',
    says: 'a new key pair to sign assignments with',
    load: async () => (await import('./verbs/key.ts')).keyVerb,
  },
  {
    name: 'assignment',
    says: 'an assignment from a plan, with the exercises it sets, signed',
    load: async () => (await import('./verbs/assignment.ts')).assignmentVerb,
  },
  {
    name: 'markbook',
    says: 'the marks of a class, from the folder or zip that was handed in',
    load: async () => (await import('./verbs/markbook.ts')).markbookVerb,
  },
  {
    name: 'new',
    says: 'the folder of a new lesson or exercise',
    load: async () => (await import('./verbs/new.ts')).newVerb,
  },
  {
    name: 'check-content',
    says: 'what is at fault in the exercises',
    load: async () => (await import('./verbs/checkContent.ts')).checkContentVerb,
  },
  {
    name: 'audit',
    says: 'how well the exercises tell right rigs from wrong ones',
    load: async () => (await import('./verbs/audit.ts')).auditVerb,
  },
];
