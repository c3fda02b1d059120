import type { Page } from '@playwright/test';
import type { Hand } from './hand.ts';
import { button, field } from './workbench.ts';

/** Builds a right answer to each exercise through its page. */
export const ANSWERS: Readonly<Record<string, (page: Page, hand: Hand) => Promise<void>>> = {
  'one-vane': async (page, hand) => {
    await addAim(page, hand, 'vane_left', 'kite');
  },

  'two-vanes-one-holder': async (page, hand) => {
    await addControl(page, hand, 'wind', { parent: 'no parent', base: [0, 1.5, 1.2] });
    await addControl(page, hand, 'wind_left', { parent: 'wind', base: [0.4, 1.5, 1.2] });
    await addControl(page, hand, 'wind_right', { parent: 'wind', base: [-0.4, 1.5, 1.2] });
    await addAim(page, hand, 'vane_left', 'wind_left');
    await hand.press(button(page, 'copy to vane_right: aim on vane_left'));
  },

  'let-go': async (page, hand) => {
    await hand.press(button(page, 'Add a switch to wind'));
    await hand.write(field(page, 'name of wind.switch'), 'together');
    await hand.press(button(page, 'Add a driver'));
    await hand.choose(field(page, 'what the new driver reads'), 'the switch wind.together');
    await hand.choose(field(page, 'what the new driver sets'), 'the weight of own on vane_left');
    await hand.press(button(page, 'Add it'));
    await hand.press(page.getByRole('button', { name: 'Invert the map of driver' }));
    await hand.press(button(page, 'copy to the right: driver'));
  },
};

/** Adds an aim at the base of another bone. */
export async function addAim(page: Page, hand: Hand, bone: string, target: string): Promise<void> {
  await hand.press(button(page, `Add a link to ${bone}`));
  await hand.choose(field(page, `what the new link on ${bone} does`), 'aims at');
  await hand.choose(field(page, `bone for the new link on ${bone}`), target);
  await hand.press(button(page, 'Add it'));
}

async function addControl(
  page: Page,
  hand: Hand,
  name: string,
  { parent, base }: { parent: string; base: readonly number[] },
): Promise<void> {
  await hand.press(button(page, 'Add a bone'));
  await hand.write(field(page, 'name of bone'), name);
  await hand.choose(field(page, `role of ${name}`), 'control');
  if (parent !== 'no parent') await hand.choose(field(page, `parent of ${name}`), parent);
  await hand.press(button(page, `Rest and locks of ${name}`));
  for (const [i, value] of base.entries()) {
    await hand.write(field(page, `rest base of ${name}, ${'xyz'[i]}, in metres`), String(value));
  }
}
