import { hashOf } from '../hash.ts';
import { writeOwn } from './table.ts';

/*
 * OneRoster 1.2, CSV binding (1EdTech, final release 1.2.1, 2023): manifest.csv, categories.csv, lineItems.csv and
 * results.csv, as a delta, so that a school's own system adds to what it has. The columns are as several open readers of
 * the format have them; the standard's own page was not to be read here.
 */

/** Ids that the school's system knows its things by; only the instructor can say them. */
export interface SchoolIds {
  school: string;
  classOf: string;
  /** The grading period. */
  session: string;
}

export interface Scored {
  /** The school's own id of the student: what the roster has as the learner's code. */
  student: string;
  /** In per cent; null for one who handed nothing in. */
  score: number | null;
  late: boolean;
  comment: string;
}

export interface Assigned {
  id: string;
  title: string;
  /** ISO 8601 with a zone. */
  opens?: string | undefined;
  due?: string | undefined;
}

const FILES = [
  'academicSessions',
  'categories',
  'classes',
  'classResources',
  'courses',
  'courseResources',
  'demographics',
  'enrollments',
  'lineItemLearningObjectiveIds',
  'lineItems',
  'lineItemScoreScales',
  'orgs',
  'resources',
  'resultLearningObjectiveIds',
  'results',
  'resultScoreScales',
  'roles',
  'scoreScales',
  'userProfiles',
  'userResources',
  'users',
];
const WRITTEN = ['categories', 'lineItems', 'results'];

const LINE_ITEM = [
  ...['sourcedId', 'status', 'dateLastModified', 'title', 'description', 'assignDate', 'dueDate', 'classSourcedId'],
  ...['categorySourcedId', 'academicSessionSourcedId', 'resultValueMin', 'resultValueMax', 'schoolSourcedId'],
];
const RESULT = [
  ...['sourcedId', 'status', 'dateLastModified', 'lineItemSourcedId', 'studentSourcedId', 'scoreStatus', 'score'],
  ...['scoreDate', 'comment', 'textScore', 'classSourcedId', 'inProgress', 'incomplete', 'late', 'missing'],
];

/**
 * The files of a delta, by name. The same marks give the same ids, so that writing them again changes what is there
 * instead of adding to it.
 * @param now ISO 8601 in UTC
 */
export function oneRosterFiles(
  assigned: Assigned,
  ids: SchoolIds,
  scored: readonly Scored[],
  now: string,
): Record<string, string> {
  const day = (time: string | undefined) => (time ? new Date(time) : new Date(now)).toISOString().slice(0, 10);
  const item = idOf('item', assigned.id, ids);
  const category = idOf('category', 'counterpose', ids);
  const { school, classOf, session } = ids;
  const description = 'Graded by what the built rig does';
  const lineItem = [
    ...[
      item,
      'active',
      now,
      assigned.title,
      description,
      day(assigned.opens),
      day(assigned.due ?? assigned.opens),
      classOf,
    ],
    ...[category, session, 0, 100, school],
  ];
  const results = scored.map(({ student, score, late, comment }) => [
    ...[idOf('result', `${assigned.id}\n${student}`, ids), 'active', now, item, student],
    ...[score === null ? 'not submitted' : 'fully graded', score ?? '', day(now), comment, '', classOf],
    ...['false', 'false', String(late), String(score === null)],
  ]);
  return {
    'manifest.csv': manifest(),
    'categories.csv': writeOwn(
      ['sourcedId', 'status', 'dateLastModified', 'title'],
      [[category, 'active', now, 'Rigging']],
    ),
    'lineItems.csv': writeOwn(LINE_ITEM, [lineItem]),
    'results.csv': writeOwn(RESULT, results),
  };
}

const idOf = (what: string, name: string, { school, classOf }: SchoolIds): string =>
  `cp-${what}-${hashOf([what, name, school, classOf]).slice(0, 24)}`;

function manifest(): string {
  const files = FILES.map((name) => [`file.${name}`, WRITTEN.includes(name) ? 'delta' : 'absent']);
  const head = [
    ['manifest.version', '1.0'],
    ['oneroster.version', '1.2'],
  ];
  const source = [
    ['source.systemName', 'Counterpose'],
    ['source.systemCode', 'counterpose'],
  ];
  return writeOwn(['propertyName', 'value'], [...head, ...files, ...source]);
}
