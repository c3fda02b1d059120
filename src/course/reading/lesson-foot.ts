import { keepRead, lessonsRead } from './read-lessons.ts';

/** At a lesson's foot: once it has come into view the lesson counts as read, and that can be taken back. */
const foot = document.querySelector<HTMLElement>('#read-foot');
const number = foot?.dataset.lesson;

if (foot && number) {
  let isTakenBack = false;
  const button = document.createElement('button');
  button.type = 'button';
  const told = document.createElement('span');
  foot.append(told, ' ', button);
  show(lessonsRead().has(number));

  button.addEventListener('click', () => {
    const wasRead = lessonsRead().has(number);
    isTakenBack = wasRead;
    mark(!wasRead);
  });
  new IntersectionObserver((entries) => {
    if (!isTakenBack && !lessonsRead().has(number) && entries.some(({ isIntersecting }) => isIntersecting)) mark(true);
  }).observe(foot);

  function mark(isRead: boolean) {
    const isKept = keepRead(number!, isRead);
    show(isRead && isKept);
    if (!isKept) told.textContent = 'This browser keeps nothing, so lessons cannot be marked as read.';
  }

  function show(isRead: boolean) {
    told.textContent = isRead ? 'Marked as read in the contents.' : 'Not marked as read.';
    button.textContent = isRead ? 'Take the mark back' : 'Mark it as read';
  }
}
