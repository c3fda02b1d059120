import { isDeepStrictEqual } from 'node:util';
import { type Exercise, responseKindOf } from '../../../src/grader/index.ts';
import type { Rig } from '../../../src/solver/index.ts';
import type { Draft } from '../../../src/workbench/edit/draft.ts';
import type { Move } from '../../support/saying/deeds.ts';
import { nextDeed } from '../../support/saying/nearest.ts';
import { answerFrom, type Built } from './exercises.ts';
import type { Hand } from './hand.ts';
import { keptWork } from './kept.ts';
import { respond } from './respond.ts';
import { expect, type Page } from './test.ts';
import { button, field } from './workbench.ts';

/** Makes an answer from nothing but the start, on an exercise's open page, as a learner makes it: change by change. */
export async function build(page: Page, hand: Hand, exercise: Exercise, built: Built): Promise<void> {
  if (exercise.kind === 'repair') await hand.mark(page.getByLabel(faultOf(exercise)));
  if (responseKindOf(exercise.kind) && exercise.kind !== 'shape') {
    await respond(page, hand, exercise, answerFrom(exercise, built));
    return;
  }
  await buildRig(page, hand, exercise, built.rig);
  for (const { id, says, name, given } of exercise.parts) {
    const bound = built.parts?.[id] ?? name;
    if (!given && bound !== name) await hand.choose(field(page, `what ${says} is`), bound);
  }
}

/** Each change is made, and the next is found from what the page then keeps. */
async function buildRig(page: Page, hand: Hand, exercise: Exercise, wanted: Rig): Promise<void> {
  const opened = new Set<string>();
  let draft: Draft = { rig: exercise.start, parts: {} };
  for (let next = nextDeed(draft, wanted, exercise); next; next = nextDeed(draft, wanted, exercise)) {
    for (const move of next.deed.moves) await make(page, hand, move, opened);
    draft = await changed(page, exercise, draft);
  }
}

async function make(page: Page, hand: Hand, move: Move, opened: Set<string>): Promise<void> {
  switch (move.do) {
    case 'press':
      return hand.press(button(page, move.button));
    case 'choose':
      return hand.choose(field(page, move.field), move.says);
    case 'write':
      return hand.write(field(page, move.field), move.text);
    case 'tick':
      return hand.tick(field(page, move.field), move.on);
    case 'open':
      if (opened.has(move.bone)) return;
      opened.add(move.bone);
      return hand.press(button(page, `Rest and locks of ${move.bone}`));
  }
}

/** What is kept once it is no longer what it was. */
async function changed(page: Page, { id }: Exercise, before: Draft): Promise<Draft> {
  let now: Draft | undefined;
  await expect
    .poll(async () => {
      now = (await keptWork(page, id))?.draft;
      return now !== undefined && !isDeepStrictEqual(now.rig, before.rig);
    })
    .toBe(true);
  return now!;
}

/** The fault that a repair shows, in the words in which it is named. */
function faultOf({ wrongTurns, fault }: Exercise): string {
  return wrongTurns.find(({ id }) => id === fault)!.says;
}
