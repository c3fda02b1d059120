import type { Exercise } from '../../grader/exercise/exercise.ts';
import { paragraphs } from './paragraphs.ts';

/** Puts the words of a variant where the page, as it was built, tells of the first one. */
export function tellVariant({ id, title, task, why, requirements }: Exercise): void {
  const section = document.getElementById(`exercise-${id}`);
  if (!section) return;
  document.title = document.title.replace(/^.*(?= · )/, title);
  section.querySelector(`#exercise-${id}-title`)?.replaceChildren(title);
  section.querySelector('.task')?.replaceChildren(...paragraphs(task).map((text) => element('p', text)));
  section.querySelector('.why-asked')?.replaceChildren(why);
  section.querySelector('.asked')?.replaceChildren(...requirements.map(({ says }) => element('li', says)));
}

function element(tag: string, text: string): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}
