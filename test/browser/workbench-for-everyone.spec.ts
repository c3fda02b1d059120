import { addAim } from './support/answers.ts';
import { expectAxeClean } from './support/axe.ts';
import { contrastIn, expectReadable } from './support/contrast.ts';
import { byClicks } from './support/hand.ts';
import { sharedNames } from './support/names.ts';
import { coloursOf } from './support/picture.ts';
import { expect, type Page, test } from './support/test.ts';
import { THEMES } from './support/themes.ts';
import { button, field, openExercise, openFile, plate, proofSheet, verdict } from './support/workbench.ts';

for (const theme of THEMES) {
  test.describe(`by ${theme}`, () => {
    test.use({ theme });

    test('the workbench is open to everyone in each of its states', async ({ page }) => {
      await openExercise(page, 'two-vanes-one-holder');
      await expectAxeClean(page, 'Build');
      await openSentences(page);
      await expectAxeClean(page, 'Build with sentences open');
      await byClicks.press(button(page, 'Try'));
      for (const more of await page.getByText('Other channels').all()) await more.click();
      await page.getByText('The pose in numbers', { exact: true }).click();
      await expectAxeClean(page, 'Try');
      await proveAndMiss(page);
      await expectAxeClean(page, 'a proof with misses');
      await openHint(page);
      await expectAxeClean(page, 'a hint');
      await openFile(page, 'answer.json', 'oars');
      await expectAxeClean(page, 'a file refused');
    });

    test.describe('seen closely', () => {
      test.use({ deviceScaleFactor: 3 });

      test('the text of the workbench stands out from its ground', async ({ page }) => {
        await openExercise(page, 'two-vanes-one-holder');
        await openSentences(page);
        await expect(page.locator('.wb-canvas')).toBeVisible();
        for (const name of await plate(page).locator('.wb-labels text').all()) {
          await expectReadable(page, name, `the name ${await name.textContent()} on the plate`);
        }
        await byClicks.choose(field(page, 'chosen bone'), 'bone');
        await expectReadable(page, page.locator('.wb-handles text').first(), 'a letter of a handle');
        await expectReadable(page, field(page, 'role of bone'), 'a word to choose');
        await expectReadable(page, button(page, 'Take away bone'), 'a small word that is a button');
        await expectReadable(page, page.getByText('Every change is kept'), 'a note');
        await proveAndMiss(page);
        const missed = proofSheet(page).locator('.wb-requirement.missed').first();
        await expectReadable(page, missed.locator('.wb-status'), 'missed');
        await expectReadable(page, missed.locator('.wb-message').first(), 'the message');
        await expectReadable(page, proofSheet(page).locator('.met .wb-status').first(), 'met');
        await expectReadable(page, proofSheet(page).locator('.wb-measured').first(), 'what was measured');
        await expectReadable(page, verdict(page), 'the verdict');
        await openHint(page);
        await expectReadable(page, page.locator('.wb-hints li').first(), 'the hint');
      });
    });
  });
}

test('no two fields or buttons of the workbench share a name', async ({ page }) => {
  await openExercise(page, 'let-go');
  await openSentences(page, 'wind');
  await byClicks.choose(field(page, 'chosen bone'), 'bone');
  for (const handles of ['move it', 'turn it about y']) {
    await byClicks.choose(field(page, 'what the handles do'), handles);
    expect(await sharedNames(page), `Build, handles to ${handles}`).toEqual([]);
  }
  await byClicks.press(button(page, 'Try'));
  for (const more of await page.getByText('Other channels').all()) await more.click();
  await byClicks.choose(field(page, 'chosen bone'), 'quay');
  for (const handles of ['move it', 'turn it about y']) {
    await byClicks.choose(field(page, 'what the handles do'), handles);
    expect(await sharedNames(page), `Try, handles to ${handles}`).toEqual([]);
  }
});

test('pale text is found pale, and ink is found dark', async ({ page }) => {
  await page.goto('.');
  await page.evaluate(() => {
    document.body.innerHTML = '<p id="pale">Saltmarsh</p><p id="dark">Saltmarsh</p>';
    document.body.style.background = '#fff';
    document.getElementById('pale')!.style.color = '#8a8a8a';
    document.getElementById('dark')!.style.color = '#000';
  });
  // 3.45 and 21 by the formula of WCAG 2.1.
  expect(contrastIn(await coloursOf(page, page.locator('#pale')))).toBeCloseTo(3.45, 1);
  expect(contrastIn(await coloursOf(page, page.locator('#dark')))).toBeCloseTo(21, 0);
});

/** Something of each kind that can stand open in Build. */
async function openSentences(page: Page, target = 'quay'): Promise<void> {
  await addAim(page, byClicks, 'vane_left', target);
  await byClicks.press(button(page, 'Add a link to vane_right'));
  await byClicks.press(button(page, 'Add a bone'));
  await byClicks.press(button(page, 'Rest and locks of bone'));
  await byClicks.press(button(page, 'Add a switch to bone'));
  await byClicks.press(page.getByRole('button', { name: 'Drive the weight of aim on vane_left' }));
}

async function proveAndMiss(page: Page): Promise<void> {
  await byClicks.press(button(page, 'Prove it'));
  await expect(verdict(page)).toBeVisible();
  await expect(proofSheet(page).locator('.wb-requirement.missed').first()).toBeVisible();
}

async function openHint(page: Page): Promise<void> {
  await byClicks.press(button(page, 'A hint'));
  await byClicks.choose(field(page, 'your guess before the hint'), 'I cannot tell');
  await byClicks.press(button(page, 'Open the hint'));
}
