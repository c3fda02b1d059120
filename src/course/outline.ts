/** The plan of the course: every chapter and lesson in order, those still unwritten too. */
export interface Chapter {
  number: string;
  title: string;
  lessons: readonly PlannedLesson[];
}

export interface PlannedLesson {
  /** "3.1" */
  number: string;
  title: string;
}

const plan: readonly (readonly [title: string, lessons: readonly string[]])[] = [
  [
    'Reading a rig',
    [
      'Bones, bases and tips; rest and pose',
      'Parents: whose frame is this?',
      'Turning: axes, order, quaternions, gimbal trouble',
      'Roll: where the side axes point',
      'Four roles: skin, helper, control, guide',
      'Names, sides, mirrored pairs',
    ],
  ],
  [
    'Helper bones',
    [
      'Why put a bone in between',
      'Following all of another bone',
      'Keeping the offset',
      'A half-turn helper at a bend',
      'Sharing twist along a limb',
      'Copies carry their roles: check the skin',
      'Locks: what an animator may touch',
      'A corrective driven by a bend',
    ],
  ],
  [
    'Aim tracking',
    [
      'The shortest turn',
      'In line at rest, pivot in the middle',
      'Up vectors, flips, and two ways of rolling',
      'Two eyes, one holder',
      'Vergence: the numbers of gaze',
      'Limits and partial weight: lids that follow',
      'Reach: two bones and a pole',
      'Whose space: a holder on the head, the body, the world',
    ],
  ],
  [
    'Stretch indicators',
    [
      'A bone that spans two points',
      'Ratio, rest length, read-out',
      'Volume kept or not',
      'In the middle, off the skin: the guide',
      'Pistons: two halves that face each other’s mounts',
      'When size leaks into children, and the rig at twice the size',
    ],
  ],
  [
    'Switches and drivers',
    [
      'A switch on a control',
      'Input, map, output',
      'The inverted map',
      'Handing over: the first stays, only the last fades',
      'One driver, both sides',
      'Sliding between spaces without a jump',
      'Shapes of maps',
      'Evaluation order and cycles',
    ],
  ],
  [
    'Bringing it together',
    [
      'A whole gaze rig from a bare head',
      'A limb with a switch',
      'A crane with a piston',
      'The clinic: ten broken rigs',
      'Handing over: names, locks, notes, a motion that tests everything',
    ],
  ],
];

export const chapters: readonly Chapter[] = plan.map(([title, lessons], index) => ({
  number: String(index + 1),
  title,
  lessons: lessons.map((lesson, place) => ({ number: `${index + 1}.${place + 1}`, title: lesson })),
}));

/** The planned lesson of that number ("3.1"), or undefined. */
export function lessonOf(number: string): PlannedLesson | undefined {
  return chapters.flatMap((chapter) => chapter.lessons).find((lesson) => lesson.number === number);
}

/** The chapter after the plan, for lessons that a private folder has beside those of the plan. */
const PRIVATE_CHAPTER = '7';

/** "7.1" to "7.9". */
export const isPrivateNumber = (number: string): boolean => /^7\.[1-9]$/.test(number);

/** The plan, and after it the chapter of a private folder where there are lessons for it. */
export function chaptersWith(title: string, lessons: readonly PlannedLesson[]): readonly Chapter[] {
  return lessons.length === 0 ? chapters : [...chapters, { number: PRIVATE_CHAPTER, title, lessons }];
}

/** The chapter that a lesson number ("3.1") belongs to. Throws where there is none. */
export function chapterOf(number: string, among: readonly Chapter[]): Chapter {
  const chapter = among.find((each) => each.number === number.split('.')[0]);
  if (!chapter) throw new Error(`No chapter holds lesson ${number}.`);
  return chapter;
}
