import type { Attempt } from '../../skills/attempt.ts';
import { attemptsDocument, readAttempts } from '../../skills/attemptsFile.ts';
import type { Course } from '../../skills/course.ts';
import { merged } from '../../skills/merge.ts';
import { sheetOf } from '../../skills/sheet.ts';
import { keepAttempts, keptAttempts } from '../../workbench/keep/attempts.ts';
import { saveFile } from '../../workbench/keep/saveFile.ts';
import { whyOff } from '../../workbench/keep/whyOff.ts';
import { fetchCourse } from './addresses.ts';
import { showSheet } from './show-sheet.ts';

/** Counts what the browser keeps of the learner's proofs and shows it; files take it from one browser to another. */
const sheet = document.querySelector('#skills')!;
const alarm = document.querySelector('#skills-alarm')!;
const told = document.querySelector('#skills-told')!;
const refusal = document.querySelector('#skills-refusal')!;
const field = document.querySelector<HTMLInputElement>('#skills-file')!;

const FORBIDDEN =
  'This browser does not let the page store anything, so what you prove is not counted. You can open a file from another browser and see what it holds.';
const LATER_VERSION =
  'What is kept here was made by a later version of the course and is left as it is. Open that version to see it counted.';

let course: Course;
let attempts: Attempt[] = [];

async function begin(): Promise<void> {
  course = await fetchCourse();
  await takeKept();
  sheet.classList.add('ready');
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void takeKept();
  });
}

/** What is held here alone, read from a file where nothing can be kept, stays beside what is kept. */
async function takeKept(): Promise<void> {
  try {
    attempts = merged(attempts, await keptAttempts());
  } catch (error) {
    alarm.textContent = whyOff(error) === 'later-version' ? LATER_VERSION : FORBIDDEN;
  }
  show();
}

function show(): void {
  const now = Date.now();
  showSheet(sheetOf(course, attempts, now), now);
}

async function open(file: File): Promise<void> {
  const read = readAttempts(await file.text());
  if (!read.ok) {
    const { place, found, expected } = read.refusal;
    return refuse(
      `The file cannot be used, and nothing has been changed. At ${place || 'the whole file'}: found ${found}, expected ${expected}.`,
    );
  }
  const before = attempts.length;
  attempts = merged(attempts, read.value);
  const counts = `The file holds ${proofs(read.value.length)}, ${attempts.length - before} of them new.`;
  show();
  try {
    await keepAttempts(read.value);
    say(counts);
  } catch {
    refuse(`${counts} They are shown here, but this browser does not keep them.`);
  }
}

const proofs = (count: number) => (count === 1 ? '1 proof' : `${count} proofs`);

function say(words: string): void {
  told.textContent = words;
  refusal.textContent = '';
}

function refuse(words: string): void {
  told.textContent = '';
  refusal.textContent = words;
}

document.querySelector('#skills-save')!.addEventListener('click', () => {
  saveFile('counterpose-skills.json', attemptsDocument(attempts));
  say(`${proofs(attempts.length)} saved.`);
});
document.querySelector('#skills-open')!.addEventListener('click', () => field.click());
field.addEventListener('change', () => {
  const [file] = field.files ?? [];
  if (file) void open(file);
  // The same file may be chosen again once it has been mended.
  field.value = '';
});

begin().catch(() => {
  sheet.classList.add('failed');
  alarm.textContent = 'The list of exercises could not be loaded. Reload the page to try once more.';
});
