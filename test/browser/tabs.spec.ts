import { addAim } from './support/answers.ts';
import { byClicks } from './support/hand.ts';
import { keptRig, keptWork } from './support/kept.ts';
import { savedAnswer } from './support/saved.ts';
import { expect, test } from './support/test.ts';
import { button, field, openExercise } from './support/workbench.ts';

const KEPT = 'Every change is kept in this browser.';
const CHANNELS = ['that hear of each other', 'that do not hear of each other'];

for (const channel of CHANNELS) {
  for (const choice of ['Take the other tab’s work', 'Keep what is here']) {
    test(`two tabs ${channel}: nothing is overwritten before “${choice}”`, async ({ page, context }) => {
      if (channel.includes('not')) await context.addInitScript(hearNothing);
      await openExercise(page, 'one-vane');
      const other = await context.newPage();
      await openExercise(other, 'one-vane');
      await addAim(other, byClicks, 'vane_left', 'kite');
      await expect.poll(async () => (await keptWork(other, 'one-vane'))?.steps.length).toBe(1);
      const theirs = (await keptWork(other, 'one-vane'))!;

      await byClicks.press(button(page, 'Add a switch to vane_left'));
      const alert = page.getByRole('alert').filter({ hasText: 'Two tabs hold different work' });
      await expect(alert).toBeVisible();
      await expect(field(page, 'name of vane_left.switch')).toBeVisible();
      expect(await keptWork(other, 'one-vane')).toEqual(theirs);

      await byClicks.press(page.getByRole('button', { name: choice }));
      await expect(alert).toHaveCount(0);
      await expect(page.getByText(KEPT)).toBeVisible();
      const kept = choice.startsWith('Take') ? theirs.draft.rig : (await savedAnswer(page)).rig;
      await expect.poll(() => keptRig(page, 'one-vane')).toEqual(kept);
      await expect(field(page, 'weight of aim on vane_left')).toHaveCount(choice.startsWith('Take') ? 1 : 0);
    });
  }
}

for (const channel of CHANNELS) {
  test(`two tabs ${channel}: looking about in one leaves the other's work alone`, async ({ page, context }) => {
    if (channel.includes('not')) await context.addInitScript(hearNothing);
    await openExercise(page, 'one-vane');
    await addAim(page, byClicks, 'vane_left', 'kite');
    await expect.poll(async () => (await keptWork(page, 'one-vane'))?.steps.length).toBe(1);
    const other = await context.newPage();
    await openExercise(other, 'one-vane');
    const before = (await keptWork(other, 'one-vane'))!.work;
    await byClicks.choose(field(other, 'chosen bone'), 'kite');
    await expect(field(other, 'chosen bone')).toHaveValue('kite');
    await other.locator('[data-bone="vane_left"]').click({ position: { x: 2, y: 2 } });
    expect((await keptWork(other, 'one-vane'))!.work).toEqual(before);

    await byClicks.press(button(other, 'Try'));
    await expect.poll(async () => (await keptWork(other, 'one-vane'))!.work.view).toBe('try');
    expect((await keptWork(other, 'one-vane'))!.work.revision).toBe(before.revision);
    await byClicks.press(button(page, 'Add a switch to vane_left'));
    await expect.poll(async () => (await keptWork(page, 'one-vane'))?.steps.length).toBe(2);
    await expect(page.getByText(KEPT)).toBeVisible();
    await expect(page.getByRole('alert')).toHaveCount(0);

    // The other tab now stands on work that is no longer there: how it stands is not written over the newer.
    await byClicks.press(button(other, 'Build'));
    await other.waitForTimeout(300);
    expect((await keptWork(page, 'one-vane'))!.work.revision).toBe(before.revision + 1);
    expect((await keptWork(page, 'one-vane'))!.steps.length).toBe(2);
  });
}

function hearNothing() {
  (globalThis as { BroadcastChannel?: unknown }).BroadcastChannel = undefined;
}
