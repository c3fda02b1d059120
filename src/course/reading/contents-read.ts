import { lessonsRead } from './read-lessons.ts';

/** In the contents: says of each lesson that has been read to the end that it has. */
const read = lessonsRead();
for (const mark of document.querySelectorAll<HTMLElement>('[data-read-mark]')) {
  if (read.has(mark.dataset.readMark!)) mark.textContent = 'read';
}
