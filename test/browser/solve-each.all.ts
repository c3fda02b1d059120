import { allExercises, answerFrom } from './support/exercises.ts';
import { byClicks } from './support/hand.ts';
import { keptWork } from './support/kept.ts';
import { expect, test } from './support/test.ts';
import { button, expectAllMet, openExercise, openFile } from './support/workbench.ts';

for (const webgl of [true, false]) {
  test.describe(webgl ? 'with WebGL' : 'without WebGL', () => {
    test.use({ webgl });

    for (const exercise of allExercises()) {
      test(`${exercise.id} is solved by the file of its reference`, async ({ page }) => {
        await openExercise(page, exercise.id);
        await openFile(page, 'answer.json', JSON.stringify(answerFrom(exercise, exercise.references[0]!)));
        await expect.poll(async () => (await keptWork(page, exercise.id)) !== undefined).toBe(true);
        await expect(page.locator('.wb-canvas, .wb-drawing').first()).toBeVisible();
        await expect(page.locator('.wb-canvas')).toHaveCount(webgl ? 1 : 0);
        if (exercise.kind === 'repair') await page.getByLabel(faultOf(exercise)).click();
        await byClicks.press(button(page, 'Prove it'));
        await expectAllMet(page);
      });
    }
  });
}

/** The fault that a repair shows, in the words in which it is named. */
function faultOf({ wrongTurns, fault }: ReturnType<typeof allExercises>[number]): string {
  return wrongTurns.find(({ id }) => id === fault)!.says;
}
