import type { Feedback } from '../../delivery/book/feedback.ts';
import { readFeedbackText } from '../../delivery/book/readFeedback.ts';
import { percentText as percent } from '../../delivery/percentText.ts';
import { poseText } from '../../grader/words/poseText.ts';
import type { Pose } from '../../solver/document/rig.ts';

/** Shows a feedback file that a learner opens. Everything in it is shown as text. */
const field = document.querySelector<HTMLInputElement>('#feedback-file')!;
const told = document.querySelector<HTMLElement>('#feedback-told')!;
const place = document.querySelector<HTMLElement>('#feedback')!;
const root = document.documentElement.dataset.root ?? '/';

field.addEventListener('change', async () => {
  const file = field.files?.[0];
  if (!file) return;
  const read = readFeedbackText(await file.text());
  place.replaceChildren();
  if (!read.ok) {
    const { place: where, found, expected } = read.refusal;
    told.textContent = `${file.name} is no feedback${where && `, at ${where}`}: found ${found}, expected ${expected}.`;
    return;
  }
  told.textContent = '';
  place.append(...shown(read.value));
});

function element(name: string, ...content: (string | Node)[]): HTMLElement {
  const made = document.createElement(name);
  made.append(...content);
  return made;
}

function shown(feedback: Feedback): HTMLElement[] {
  const { assignment, mark, passed, learner, receipt, exercises, says } = feedback;
  const head = `${learner}: ${percent(mark)}, ${passed ? 'passed' : 'not passed'}.`;
  const general = says.filter(({ exercise }) => exercise === null);
  return [
    element('h2', assignment.title),
    element('p', receipt ? `${head} Receipt ${receipt}.` : `${head} Nothing was handed in.`),
    ...general.map((one) => element('p', one.says)),
    ...exercises.flatMap((one) =>
      exerciseParts(
        one,
        says.filter(({ exercise }) => exercise === one.exercise),
      ),
    ),
  ];
}

function exerciseParts(one: Feedback['exercises'][number], says: Feedback['says']): HTMLElement[] {
  const byHand = one.byHand ? ', set by hand' : '';
  const lines = one.missed.map((missed) => element('li', missedText(missed)));
  const parts = [
    element('h3', `${one.exercise}, ${percent(one.mark)}${byHand}`),
    ...says.map((said) => element('p', said.says)),
  ];
  if (lines.length > 0) parts.push(element('ul', ...lines));
  if (one.seed !== null && /^[a-z0-9-]+$/.test(one.exercise)) parts.push(element('p', again(one.exercise, one.seed)));
  return parts;
}

function again(exercise: string, seed: number): HTMLAnchorElement {
  const link = document.createElement('a');
  link.href = `${root}exercises/${exercise}/index.html?seed=${seed}`;
  link.textContent = 'Open your variant again';
  return link;
}

function missedText({
  id,
  measured,
  allowed,
  unit,
  counterpose,
}: Feedback['exercises'][number]['missed'][number]): string {
  const amount = measured === null ? '' : `, ${measured} ${unit}, allowed ${allowed}`;
  const pose = counterpose === null ? '' : `, shown by ${poseText(counterpose as Pose)}`;
  return `${id}: missed${amount}${pose}.`;
}
