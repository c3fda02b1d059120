import { gradeFile } from './support/command-line.ts';
import { converge, eyeOnItsTarget, lineBetween, otherSide, together } from './support/gaze.ts';
import { byClicks } from './support/hand.ts';
import { keptWork } from './support/kept.ts';
import { byKeyboard } from './support/keyboard.ts';
import { expect, type Page, test } from './support/test.ts';
import { button, expectAllMet, openExercise, proofSheet, savedFile, verdict } from './support/workbench.ts';

const EXERCISE = 'gaze-rig';

/** Requirements of which the newest proof says that they are met. */
async function metNow(page: Page): Promise<string[]> {
  const { work } = (await keptWork(page, EXERCISE))!;
  return work.proofs
    .at(-1)!
    .result.requirements.filter(({ status }) => status === 'met')
    .map(({ id }) => id);
}

async function proved(page: Page, times: number): Promise<string[]> {
  await byClicks.press(button(page, 'Prove it'));
  await expect
    .poll(async () => (await keptWork(page, EXERCISE))?.work.proofs.length ?? 0, { timeout: 60_000 })
    .toBe(times);
  return metNow(page);
}

test('the gaze rig is built from a bare head by clicks, stage by stage, and marked alike by the command line', async ({
  page,
}) => {
  test.setTimeout(300_000);
  await openExercise(page, EXERCISE);

  const bare = await proved(page, 1);
  expect(bare).not.toContain('middle-left');
  await expect(verdict(page)).toContainText('Mark 0 %');

  await eyeOnItsTarget(page, byClicks);
  await otherSide(page, byClicks);
  const eyes = await proved(page, 2);
  expect(eyes).toEqual(
    expect.arrayContaining(['middle-left', 'pivot-right', 'rest-turn', 'locks-left', 'locks-right']),
  );
  expect(eyes).not.toContain('own-left');

  await converge(page, byClicks);
  await together(page, byClicks);
  await otherSide(page, byClicks);
  const looking = await proved(page, 3);
  expect(looking).toEqual(
    expect.arrayContaining([...eyes, 'own-right', 'meet', 'parallel-right', 'together-between-left']),
  );
  expect(looking).not.toContain('tape-tip');

  await lineBetween(page, byClicks);
  await byClicks.press(button(page, 'Prove it'));
  await expectAllMet(page);
  const count = await proofSheet(page).locator('.wb-requirement').count();

  const { path } = await savedFile(page, () => byClicks.press(button(page, 'Save to a file')));
  const graded = gradeFile(path);
  expect({ mark: graded.mark, passed: graded.passed, requirements: graded.requirements.length }).toEqual({
    mark: 1,
    passed: true,
    requirements: count,
  });
});

test('the gaze rig is built from a bare head by keyboard alone', async ({ page }) => {
  test.setTimeout(600_000);
  await openExercise(page, EXERCISE);
  const hand = byKeyboard(page);
  for (const stage of [eyeOnItsTarget, converge, together, otherSide, lineBetween]) await stage(page, hand);
  await hand.press(button(page, 'Prove it'));
  await expectAllMet(page);
});
