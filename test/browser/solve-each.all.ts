import { build } from './support/build.ts';
import { allExercises } from './support/exercises.ts';
import { byClicks } from './support/hand.ts';
import { byKeyboard } from './support/keyboard.ts';
import { expect, test } from './support/test.ts';
import { button, expectAllMet, openExercise } from './support/workbench.ts';

const WAYS = [
  { says: 'by clicks', webgl: true, handOf: () => byClicks },
  { says: 'by keyboard alone', webgl: true, handOf: byKeyboard },
  { says: 'without WebGL', webgl: false, handOf: () => byClicks },
];

for (const { says, webgl, handOf } of WAYS) {
  test.describe(says, () => {
    test.use({ webgl });

    for (const exercise of allExercises()) {
      test(`${exercise.id} is built from its start`, async ({ page }) => {
        test.setTimeout(900_000);
        const hand = handOf(page);
        await openExercise(page, exercise.id);
        await build(page, hand, exercise, exercise.references[0]!);
        await expect(page.locator('.wb-canvas')).toHaveCount(webgl ? 1 : 0);
        await hand.press(button(page, 'Prove it'));
        await expectAllMet(page);
      });
    }
  });
}
