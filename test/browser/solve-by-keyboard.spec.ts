import { measuredWords } from '../../src/workbench/proof/measuredWords.ts';
import { ANSWERS } from './support/answers.ts';
import { gradeFile } from './support/command-line.ts';
import { keptWork } from './support/kept.ts';
import { byKeyboard } from './support/keyboard.ts';
import { expect, test } from './support/test.ts';
import { button, expectAllMet, openExercise, proofSheet, savedFile } from './support/workbench.ts';

for (const [exercise, build] of Object.entries(ANSWERS)) {
  test(`${exercise} is solved by keyboard alone, and marked alike by the command line`, async ({ page }) => {
    test.setTimeout(120_000);
    await openExercise(page, exercise);
    const hand = byKeyboard(page);
    await build(page, hand);
    await hand.press(button(page, 'Prove it'));
    await expectAllMet(page);
    await expect(button(page, 'Prove it')).toBeFocused();

    const proof = (await keptWork(page, exercise))!.work.proofs.at(-1)!;
    const { name, path } = await savedFile(page, () => hand.press(button(page, 'Save to a file')));
    expect(name).toBe(`${exercise}-answer.json`);
    const graded = gradeFile(path);
    const { mark, passed, requirements } = proof.result;
    expect({ mark, passed }).toEqual({ mark: 1, passed: true });
    const onPage = requirements.map(({ weight: _weight, cause: _cause, ...rest }) => {
      return { ...rest, message: proof.messages[rest.id] };
    });
    expect(graded).toMatchObject({ mark, passed, requirements: onPage });
    expect(graded.requirements.length).toBe(requirements.length);

    const lines = proofSheet(page).locator('.wb-requirement');
    for (const [i, { status, measured, allowed, unit }] of requirements.entries()) {
      await expect(lines.nth(i)).toContainText(status);
      if (measured === null || unit === 'bones' || unit === 'fields' || unit === 'cycles') continue;
      await expect(lines.nth(i)).toContainText(measuredWords(measured, { allowed, unit }));
    }
  });
}
