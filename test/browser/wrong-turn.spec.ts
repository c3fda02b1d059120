import { addAim } from './support/answers.ts';
import { exerciseOf } from './support/exercises.ts';
import { byClicks } from './support/hand.ts';
import { keptWork } from './support/kept.ts';
import { changedShare, paintedShare } from './support/picture.ts';
import { expect, test } from './support/test.ts';
import { button, field, openExercise, plate, proofSheet, verdict } from './support/workbench.ts';

test('a wrong turn is shown the pose that breaks it, and told why', async ({ page }) => {
  const exercise = exerciseOf('one-vane');
  const turn = exercise.wrongTurns.find(({ id }) => id === 'half-weight')!;
  await openExercise(page, exercise.id);
  await addAim(page, byClicks, 'vane_left', 'kite');
  await byClicks.write(field(page, 'weight of aim on vane_left'), '0.5');
  await byClicks.press(button(page, 'Try'));
  const atRest = await plate(page).screenshot();
  await byClicks.press(button(page, 'Prove it'));

  await expect(verdict(page)).toBeVisible();
  const { result, messages } = (await keptWork(page, exercise.id))!.work.proofs.at(-1)!;
  expect(result.mark).toBeLessThan(1);
  await expect(verdict(page)).toContainText(`Mark ${Math.round(result.mark * 100)} %`);
  const missed = result.requirements.filter(({ status }) => status === 'missed');
  expect(missed.map(({ id }) => id)).toEqual(turn.misses);

  const [{ id, counterpose }] = missed as [(typeof missed)[number]];
  const line = proofSheet(page).locator('.wb-requirement.missed').first();
  await expect(line).toContainText(messages[id]!);
  await expect(line).toContainText(turn.tells);
  await byClicks.press(line.getByRole('button', { name: 'Show this pose' }));

  await expect(button(page, 'Try')).toHaveAttribute('aria-pressed', 'true');
  const [kite] = Object.entries(counterpose!.bones!);
  expect(kite![0]).toBe('kite');
  for (const [i, metres] of kite![1].move!.entries()) {
    const number = page.getByRole('spinbutton', { name: `move ${'xyz'[i]} of kite, in metres` });
    await expect(number).toHaveValue(String(metres));
  }
  await expect(page.locator('.wb-figure')).toContainText('where a right answer has it in this pose');
  expect(await paintedShare(page, plate(page))).toBeGreaterThan(0.01);
  expect(await changedShare(page, atRest, await plate(page).screenshot())).toBeGreaterThan(0.01);
});
