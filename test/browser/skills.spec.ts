import { readFileSync } from 'node:fs';
import { addAim } from './support/answers.ts';
import { expectAxeClean } from './support/axe.ts';
import { forbidStorage } from './support/forbidden-storage.ts';
import { byClicks } from './support/hand.ts';
import { AIM, fileOf, keptAttempts, mastered, openSkills, row, shiftIn } from './support/skills.ts';
import { expect, test } from './support/test.ts';
import { THEMES } from './support/themes.ts';
import { button, expectAllMet, expectOpen, field, openExercise, openFile, savedFile } from './support/workbench.ts';

test('exercises that are solved are counted, the next variant is offered, and three in a row are mastery', async ({
  page,
}) => {
  await openSkills(page);
  await expect(row(page, AIM)).toContainText('not begun');
  for (const [seed, bone, stands] of [
    [0, 'vane_left', 'under way: 1 of 3 in a row'],
    [1, 'vane_right', 'under way: 2 of 3 in a row'],
    [2, 'vane_left', 'known; review on'],
  ] as const) {
    await row(page, AIM).getByRole('link', { name: 'One vane' }).click();
    await expectOpen(page);
    await addAim(page, byClicks, bone, 'kite');
    // The third vane was drawn tail first.
    if (seed === 2) await byClicks.choose(field(page, `axis of aim on ${bone}`), '−z');
    await byClicks.press(button(page, 'Prove it'));
    await expectAllMet(page);
    await expect.poll(async () => (await keptAttempts(page)).length).toBe(seed + 1);
    await openSkills(page);
    await expect(row(page, AIM)).toContainText(stands);
  }
  const kept = await keptAttempts(page);
  expect(kept).toMatchObject([0, 1, 2].map((seed) => ({ exercise: 'one-vane', seed, passed: true, aided: false })));
  await page.reload();
  await expect(row(page, AIM)).toContainText('known; review on');
});

test('a proof with a hint is aided', async ({ page }) => {
  await openExercise(page, 'one-vane');
  await byClicks.press(button(page, 'A hint'));
  await byClicks.choose(page.getByLabel('your guess before the hint'), 'I cannot tell');
  await byClicks.press(button(page, 'Open the hint'));
  await addAim(page, byClicks, 'vane_left', 'kite');
  await byClicks.press(button(page, 'Prove it'));
  await expectAllMet(page);
  await expect.poll(() => keptAttempts(page)).toMatchObject([{ passed: true, aided: true }]);
  await openSkills(page);
  await expect(row(page, AIM)).toContainText('under way: 0 of 3 in a row');
});

test('what is due is offered for a rebuild in a variant that has not been tried', async ({ page }) => {
  await openSkills(page);
  await openFile(page, 'counterpose-skills.json', fileOf(mastered(30)));
  const due = page.locator('#skills-due');
  await expect(due).toContainText(`${AIM}: rebuild One vane, one gull, about 2 minutes.`);
  await expect(row(page, AIM)).toContainText('known; due for review since');
  await due.getByRole('link').click();
  await expectOpen(page);
  await expect(page).toHaveURL(/exercises\/one-vane\/index\.html\?seed=3$/);
});

test('after ten tries without mastery the way back to the lesson is offered', async ({ page }) => {
  const [one] = mastered(1);
  await openSkills(page);
  const failed = Array.from({ length: 10 }, (_, i) => ({ ...one!, when: one!.when + i, passed: false }));
  await openFile(page, 'counterpose-skills.json', fileOf(failed));
  await expect(row(page, AIM)).toContainText('ten tries have not been enough');
  await expect(row(page, AIM).getByRole('link', { name: 'card' })).toHaveAttribute('href', /#card$/);
  await row(page, AIM).getByRole('link', { name: 'worked example of 3.1' }).click();
  await expect(page.getByRole('heading', { name: /Worked example/ })).toBeInViewport();
});

test('saved, cleared and opened again it is the same; opened twice nothing is counted twice', async ({ page }) => {
  await openSkills(page);
  await openFile(page, 'counterpose-skills.json', fileOf(mastered(30)));
  await expect(page.getByRole('status')).toContainText('3 of them new');
  const { name, path } = await savedFile(page, () => button(page, 'Save to a file').click());
  expect(name).toBe('counterpose-skills.json');
  const before = await keptAttempts(page);
  expect(before.length).toBe(3);

  await page.evaluate(() => indexedDB.deleteDatabase('counterpose'));
  await page.reload();
  await expect(row(page, AIM)).toContainText('not begun');
  for (const counts of ['3 of them new', '0 of them new']) {
    await openFile(page, 'again.json', readFileSync(path, 'utf8'));
    await expect(page.getByRole('status')).toContainText(`The file holds 3 proofs, ${counts}.`);
    expect(await keptAttempts(page)).toEqual(before);
  }
});

test('a file that cannot be used is refused with its place, and nothing changes', async ({ page }) => {
  await openSkills(page);
  await openFile(page, 'good.json', fileOf(mastered(0)));
  await expect(row(page, AIM)).toContainText('known');
  await openFile(page, 'bad.json', fileOf([{ ...mastered(0)[0]!, seed: 0.5 }]));
  await expect(page.getByRole('alert').filter({ hasText: 'cannot be used' })).toContainText(
    'nothing has been changed. At /attempts/0/seed: found 0.5, expected a seed',
  );
  await expect(row(page, AIM)).toContainText('known');
  expect((await keptAttempts(page)).length).toBe(3);
});

test.describe('where storage is forbidden', () => {
  test.beforeEach(({ context }) => context.addInitScript(forbidStorage));

  test('it is told, and a file can still be looked at', async ({ page }) => {
    await openSkills(page);
    await expect(page.getByRole('alert').first()).toContainText('does not let the page store anything');
    await openFile(page, 'counterpose-skills.json', fileOf(mastered(0)));
    await expect(page.getByRole('alert').last()).toContainText('this browser does not keep them');
    await expect(row(page, AIM)).toContainText('known; review on');
  });
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });

  test('the skills are named, and it is said what counting needs', async ({ page }) => {
    await page.goto('skills/');
    await expect(page.getByText('Counting needs scripts')).toBeVisible();
    await expect(row(page, AIM)).toBeVisible();
    await expect(button(page, 'Save to a file')).toBeHidden();
  });
});

for (const theme of THEMES) {
  test.describe(`filled, by ${theme}`, () => {
    test.use({ theme });

    test('fits a telephone, is open to everyone, and nothing moves as it is counted', async ({ page }) => {
      for (const width of [360, 1280]) {
        await page.setViewportSize({ width, height: 800 });
        await openSkills(page);
        await openFile(page, 'counterpose-skills.json', fileOf(mastered(30)));
        await expect(page.getByRole('status')).toContainText('3 of them new');
        await page.reload();
        await expect(page.locator('#skills-due')).toContainText(AIM);
        expect(await shiftIn(page), 'layout shift').toBe(0);
        const { scrollWidth, clientWidth } = await page.evaluate(() => document.documentElement);
        expect(scrollWidth).toBe(clientWidth);
        await expectAxeClean(page, `skills, ${width} px wide, by ${theme}`);
        await page.evaluate(() => indexedDB.deleteDatabase('counterpose'));
      }
    });
  });
}
