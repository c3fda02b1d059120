import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { expectClose } from '../support/close.ts';
import { endsOf } from './tip.ts';

const folder = 'content/lessons/1.1-bones-bases-tips';
const crane = `${folder}/ferry-crane.json`;
const text = readFileSync(`${folder}/lesson.mdx`, 'utf8');
const snippets = [...text.matchAll(/```json\n(.*?)```/gs)].map(([, json]) => JSON.parse(json!));
const rad = (degrees: number) => (degrees * Math.PI) / 180;

// Check values: the definitions of sine and cosine in a right triangle, with Math.sin and Math.cos.
describe('lesson 1.1 says what the solver does', () => {
  test('the crane at rest is the table', () => {
    expectClose(endsOf(crane, 'post', {}).base, [0, 0, 0], 0);
    expectClose(endsOf(crane, 'post', {}).tip, [0, 2.4, 0], 1e-15);
    expectClose(endsOf(crane, 'boom', {}).base, [0, 2.4, 0], 1e-15);
    expectClose(endsOf(crane, 'boom', {}).tip, [0, 2.4, 3], 1e-15);
  });

  test('its pose lifts the hook as the worked example says', () => {
    expect(snippets).toHaveLength(1);
    const { base, tip } = endsOf(crane, 'boom', snippets[0]);
    expectClose(base, [0, 2.4, 0], 1e-15);
    expectClose(tip, [0, 2.4 + 3 * Math.sin(rad(30)), 3 * Math.cos(rad(30))], 1e-14);
    expectClose(tip, [0, 3.9, 2.598], 5e-4);
    expectClose(3 - tip[2]!, 0.402, 5e-4);
  });

  test('a hole 0.3 m from the base slides by the chord', () => {
    const [y, z] = [0.3 * Math.sin(rad(30)), 0.3 * (1 - Math.cos(rad(30)))];
    expectClose(2 * 0.3 * Math.sin(rad(15)), Math.hypot(y, z), 1e-15);
    expectClose(Math.hypot(y, z), 0.155, 5e-4);
  });

  test('the Heron leans as the answer says, and the slip gives the number named', () => {
    const [up, forward] = [0.9 + 0.4 * Math.cos(rad(20)), 0.1 + 0.4 * Math.sin(rad(20))];
    expectClose([up, forward], [1.276, 0.237], 5e-4);
    expectClose(0.9 - 0.4 * Math.sin(rad(20)), 0.763, 5e-4);
    const heron = `${folder}/heron-neck.json`;
    const { tip } = endsOf(heron, 'neck', { bones: { neck: { turn: { angles: [20, 0, 0] } } } });
    expectClose(tip, [0, up, forward], 1e-15);
  });
});
