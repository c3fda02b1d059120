import type { Rig } from '../../src/solver/document/rig.ts';
import { ANSWERS, addAim } from './support/answers.ts';
import { exerciseOf } from './support/exercises.ts';
import { forbidStorage } from './support/forbidden-storage.ts';
import { byClicks } from './support/hand.ts';
import { keptRig, keptWork } from './support/kept.ts';
import { savedAnswer } from './support/saved.ts';
import { expect, type Page, test } from './support/test.ts';
import {
  button,
  expectAllMet,
  expectOpen,
  field,
  mechanism,
  openExercise,
  openFile,
  verdict,
} from './support/workbench.ts';

const EXERCISE = 'two-vanes-one-holder';

test('a reload brings back the rig, the pose, the proof, and undo to the start and redo to the end', async ({
  page,
}) => {
  await openExercise(page, EXERCISE);
  await ANSWERS[EXERCISE]!(page, byClicks);
  await byClicks.press(button(page, 'Prove it'));
  await expectAllMet(page);
  await byClicks.press(button(page, 'Try'));
  const height = page.getByRole('spinbutton', { name: 'move y of wind, in metres' });
  await byClicks.write(height, '0.4');
  await expect.poll(async () => (await keptWork(page, EXERCISE))?.work.pose.bones?.wind?.move).toEqual([0, 0.4, 0]);
  const before = (await keptWork(page, EXERCISE))!;

  await page.reload();
  await expectOpen(page);
  await expect(height).toHaveValue('0.4');
  await expectAllMet(page);
  const after = (await keptWork(page, EXERCISE))!;
  expect({ ...after, work: { ...after.work, revision: 0 } }).toEqual({
    ...before,
    work: { ...before.work, revision: 0 },
  });

  await byClicks.press(button(page, 'Build'));
  await expect(mechanism(page).getByRole('listitem').filter({ hasText: 'wind_right' }).first()).toBeVisible();
  await pressWhilePossible(page, 'Undo');
  await expect.poll(() => keptRig(page, EXERCISE)).toEqual(exerciseOf(EXERCISE).start);
  await pressWhilePossible(page, 'Redo');
  await expect.poll(() => keptRig(page, EXERCISE)).toEqual(before.draft.rig);
});

test.describe('a file that cannot be used', () => {
  const rig = structuredClone(exerciseOf('one-vane').start) as Rig & { bones: { links?: unknown }[] };
  const answer = (change: object) => {
    const { id, edition, seed } = exerciseOf('one-vane');
    return JSON.stringify({ format: 'counterpose/answer', version: 1, exercise: id, edition, seed, rig, ...change });
  };
  const withBone = (index: number, change: object) =>
    answer({ rig: { ...rig, bones: rig.bones.with(index, { ...rig.bones[index]!, ...change }) } });
  const FILES: Readonly<Record<string, { text: string; place: string; found: string }>> = {
    'that is not JSON': { text: '{"format": oars', place: 'the whole file', found: '"o"' },
    'of another version': { text: answer({ version: 2 }), place: '/version', found: '2' },
    'that is too large': {
      text: answer({ learner: 'x'.repeat(1024 * 1024) }),
      place: 'the whole file',
      found: 'a text of',
    },
    'with an unknown field': { text: withBone(2, { colour: 'red' }), place: '/rig/bones/2/colour', found: 'colour' },
    'with a missing bone': {
      text: withBone(2, { links: [{ name: 'watch', kind: 'aim', target: { bone: 'gull' } }] }),
      place: '/rig/bones/2/links/0/target/bone',
      found: 'gull',
    },
    'with a number that is none': {
      text: answer({ seed: 'none' }).replace('"none"', 'NaN'),
      place: 'the whole file',
      found: '"N" at line 1',
    },
    'of another exercise': { text: answer({ exercise: 'let-go' }), place: '/exercise', found: 'let-go' },
  };

  for (const [what, { text, place, found }] of Object.entries(FILES)) {
    test(`${what} is refused with its place, and the work stays`, async ({ page }) => {
      await openExercise(page, 'one-vane');
      await addAim(page, byClicks, 'vane_left', 'kite');
      await expect.poll(async () => (await keptWork(page, 'one-vane'))?.steps.length).toBe(1);
      const before = await keptWork(page, 'one-vane');
      await openFile(page, 'answer.json', text);
      const alert = page.getByRole('alert').filter({ hasText: 'The file cannot be used' });
      await expect(alert).toContainText('your work is as it was');
      await expect(alert).toContainText(place);
      await expect(alert).toContainText(found);
      expect(await keptWork(page, 'one-vane')).toEqual(before);
      await expect(button(page, 'Undo')).toBeEnabled();
    });
  }
});

test('what is saved and opened again is the same document', async ({ page }) => {
  await openExercise(page, EXERCISE);
  await ANSWERS[EXERCISE]!(page, byClicks);
  const saved = await savedAnswer(page);
  await pressWhilePossible(page, 'Undo');
  await openFile(page, 'answer.json', JSON.stringify(saved));
  await expect(field(page, 'name of wind_left')).toBeVisible();
  const { made: _made, ...again } = await savedAnswer(page);
  const { made: _then, ...first } = saved;
  expect(again).toEqual(first);
  await byClicks.press(button(page, 'Undo'));
  await expect(field(page, 'name of wind_left')).toHaveCount(0);
});

test.describe('where storage is forbidden', () => {
  test.beforeEach(({ context }) => context.addInitScript(forbidStorage));

  test('it is told, and the work can be saved to a file and proved', async ({ page }) => {
    await openExercise(page, 'one-vane');
    await expect(page.getByRole('alert')).toContainText('does not let the page store anything');
    await expect(page.getByRole('alert')).toContainText('Save your work to a file');
    await addAim(page, byClicks, 'vane_left', 'kite');
    const { rig } = await savedAnswer(page);
    expect(rig.bones.find(({ name }) => name === 'vane_left')?.links).toHaveLength(1);
    await byClicks.press(button(page, 'Prove it'));
    await expect(verdict(page)).toContainText('Mark 100 %');
  });
});

async function pressWhilePossible(page: Page, name: 'Undo' | 'Redo'): Promise<void> {
  while (await button(page, name).isEnabled()) await button(page, name).click();
}
