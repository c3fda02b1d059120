import type { Answer, Exercise } from '../../../src/grader/index.ts';
import { orderAsked } from '../../../src/workbench/answer/order.ts';
import { valuesAsked } from '../../../src/workbench/answer/values.ts';
import type { Hand } from './hand.ts';
import type { Page } from './test.ts';
import { button } from './workbench.ts';

interface Response {
  values?: Readonly<Record<string, number>>;
  order?: readonly string[];
  inputs?: Readonly<Record<string, number>>;
}

/** Answers where no rig is asked for: with numbers, an order or a pose. */
export async function respond(page: Page, hand: Hand, exercise: Exercise, { response }: Answer): Promise<void> {
  const { values, order, inputs } = response as Response;
  if (values) await predict(page, hand, exercise, values);
  if (order) await putInOrder(page, hand, exercise, order);
  if (inputs) await pose(page, hand, exercise, inputs);
}

async function predict(
  page: Page,
  hand: Hand,
  exercise: Exercise,
  values: Readonly<Record<string, number>>,
): Promise<void> {
  for (const { id, says } of valuesAsked(exercise)) {
    await hand.write(page.getByRole('spinbutton', { name: says }), String(values[id]));
  }
}

async function putInOrder(page: Page, hand: Hand, exercise: Exercise, order: readonly string[]): Promise<void> {
  const now = [...orderAsked(exercise)];
  for (const [place, name] of order.entries()) {
    for (let at = now.indexOf(name); at > place; at--) {
      await hand.press(button(page, `Move ${name} up`));
      now.splice(at - 1, 2, name, now[at - 1]!);
    }
  }
}

async function pose(
  page: Page,
  hand: Hand,
  { inputs: asked, parts }: Exercise,
  inputs: Readonly<Record<string, number>>,
): Promise<void> {
  const nameOf = (id: string | undefined) => parts.find((part) => part.id === id)?.name;
  for (const { id, bone, part, channel, switch: own } of asked) {
    const value = inputs[id];
    if (value === undefined) continue;
    const what = channel ? `${channel.replace('.', ' ')} of ${bone ?? nameOf(part)}` : `switch ${own ?? nameOf(part)}`;
    await hand.write(page.getByRole('spinbutton', { name: what }), String(value));
  }
}
