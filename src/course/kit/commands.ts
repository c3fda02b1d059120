/** The commands of the authors' page, in their order; the tests run each. */
export const COMMANDS = {
  new: 'npx counterpose new exercise a-vane --content my-course',
  show: 'npx counterpose exercise a-vane --content my-course',
  check: 'npx counterpose check-content a-vane --content my-course',
  list: 'npx counterpose audit a-vane --list --content my-course',
  audit: 'npx counterpose audit a-vane --full --content my-course',
  lesson: 'npx counterpose new lesson 7.1 a-first-vane --content my-course',
} as const;

/** Builds the course with the same folder and serves it, from the course's own folder in a shell of POSIX. */
export const SITE = 'COUNTERPOSE_CONTENT=my-course npm start';
