/** How the learner's work stands in the browser's storage, for the words beside it. */
export type Keeping =
  | { is: 'opening' }
  | { is: 'kept' }
  /** Nothing is kept: storage is forbidden or full, or holds something that must not be overwritten. */
  | { is: 'off'; why: WhyOff }
  /** Another tab has changed the same exercise: one of the two must be chosen. */
  | { is: 'elsewhere' };

export type WhyOff = 'forbidden' | 'full' | 'later-version' | 'unreadable';

export const KEEPING_WORDS: Record<Keeping['is'], string> = {
  opening: 'Opening your work …',
  kept: 'Every change is kept in this browser.',
  off: 'Your work is not being kept.',
  elsewhere: 'This exercise has been changed in another tab or window.',
};

export const WHY_OFF: Record<WhyOff, string> = {
  forbidden: 'This browser does not let the page store anything. Save your work to a file before you leave.',
  full: 'The browser’s storage is full. Save your work to a file before you leave.',
  'later-version':
    'What is kept here was made by a later version of the course and is left as it is. Save what you do now to a file.',
  unreadable: 'What was kept here cannot be read and is left as it is. Save what you do now to a file.',
};
