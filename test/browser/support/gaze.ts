import type { Page } from '@playwright/test';
import { addAim } from './answers.ts';
import type { Hand } from './hand.ts';
import { button, field } from './workbench.ts';

type Build = (page: Page, hand: Hand) => Promise<void>;

interface Made {
  role: 'control' | 'helper' | 'guide';
  parent: string;
  base: readonly [number, number, number];
  length: number;
}

/** The left eye on its target: made on one side, for the other is copied. */
export const eyeOnItsTarget: Build = async (page, hand) => {
  await addBone(page, hand, 'pearl', { role: 'control', parent: 'stage', base: [0, 0.3, 0.4], length: 0.1 });
  await addBone(page, hand, 'pearl_left', { role: 'control', parent: 'pearl', base: [0.03, 0.3, 0.4], length: 0.05 });
  for (const axis of 'xyz') await hand.tick(field(page, `lock turn ${axis} of pearl_left`));
  await addBone(page, hand, 'gaze_left', { role: 'helper', parent: 'neck', base: [0.03, 0.3, 0], length: 0.04 });
  await addAim(page, hand, 'gaze_left', 'pearl_left');
  await addFollow(page, hand, 'eye_left', 'gaze_left');
};

/** A switch on the holder that drives the left target to it. */
export const converge: Build = async (page, hand) => {
  await addSwitch(page, hand, 'pearl', 'converge');
  await addDriver(page, hand, 'slide', 'the switch pearl.converge', 'the move of pearl_left along x');
  await hand.write(field(page, 'output at key 2 of slide'), '-0.03');
};

/** Underneath, the turn of a helper that faces the holder; the own aim over it, faded by a second switch. */
export const together: Build = async (page, hand) => {
  await addBone(page, hand, 'bearing', { role: 'helper', parent: 'neck', base: [0, 0.3, 0], length: 0.1 });
  await addAim(page, hand, 'bearing', 'pearl');
  await addFollow(page, hand, 'gaze_left', 'bearing');
  await hand.choose(field(page, 'channels of follow on gaze_left'), 'turn');
  await hand.press(button(page, 'Move follow on gaze_left up'));
  await addSwitch(page, hand, 'pearl', 'together');
  await addDriver(page, hand, 'let_go', 'the switch pearl.together', 'the weight of aim on gaze_left');
  await hand.press(page.getByRole('button', { name: 'Invert the map of let_go' }));
};

/** The guide from between the eyes to the holder. */
export const lineBetween: Build = async (page, hand) => {
  await addBone(page, hand, 'sightline', { role: 'guide', parent: 'neck', base: [0, 0.3, 0], length: 0.4 });
  await addLink(page, hand, 'sightline', 'spans to', 'pearl');
};

/** Makes the right side anew from the left one. */
export const otherSide: Build = async (page, hand) => {
  await hand.press(button(page, 'Copy the left side to the right'));
};

async function addBone(page: Page, hand: Hand, name: string, { role, parent, base, length }: Made): Promise<void> {
  await hand.press(button(page, 'Add a bone'));
  await hand.write(field(page, 'name of bone'), name);
  if (role !== 'helper') await hand.choose(field(page, `role of ${name}`), role);
  await hand.choose(field(page, `parent of ${name}`), parent);
  await hand.press(button(page, `Rest and locks of ${name}`));
  for (const [i, value] of base.entries()) {
    await hand.write(field(page, `rest base of ${name}, ${'xyz'[i]}, in metres`), String(value));
  }
  await hand.write(field(page, `rest length of ${name}, in metres`), String(length));
}

async function addLink(page: Page, hand: Hand, bone: string, does: string, other: string): Promise<void> {
  await hand.press(button(page, `Add a link to ${bone}`));
  await hand.choose(field(page, `what the new link on ${bone} does`), does);
  await hand.choose(field(page, `bone for the new link on ${bone}`), other);
  await hand.press(button(page, 'Add it'));
}

/** Adds a follow in all channels that keeps its offset. */
async function addFollow(page: Page, hand: Hand, bone: string, source: string): Promise<void> {
  await addLink(page, hand, bone, 'follows', source);
  await hand.choose(field(page, `offset of follow on ${bone}`), 'keeping the offset it has at rest');
}

/** Adds a switch that slides from 0 to 1. */
async function addSwitch(page: Page, hand: Hand, bone: string, name: string): Promise<void> {
  await hand.press(button(page, `Add a switch to ${bone}`));
  await hand.write(field(page, `name of ${bone}.switch`), name);
}

async function addDriver(page: Page, hand: Hand, name: string, reads: string, sets: string): Promise<void> {
  await hand.press(button(page, 'Add a driver'));
  await hand.choose(field(page, 'what the new driver reads'), reads);
  await hand.choose(field(page, 'what the new driver sets'), sets);
  await hand.press(button(page, 'Add it'));
  await hand.write(field(page, 'name of the driver driver'), name);
}
