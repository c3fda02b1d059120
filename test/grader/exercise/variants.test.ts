import { describe, expect, test } from 'vitest';
import { fill } from '../../../src/grader/exercise/fill.ts';
import { swapSides, swapSidesIn } from '../../../src/grader/exercise/reflect.ts';
import { scaleRig } from '../../../src/grader/exercise/scale.ts';
import { compile, solve } from '../../../src/solver/index.ts';
import { expectClose } from '../../support/close.ts';
import { exerciseFor } from '../../support/exercises.ts';

describe('filling names in', () => {
  test('a text that is a name becomes its value, of any kind; inside a text it becomes text', () => {
    const filled = fill({ '{thing}_left': ['$at', 'the {thing} at $at'] }, { thing: 'vane', at: [1, 2] }, 'drawn');
    expect(filled).toEqual({ vane_left: [[1, 2], 'the vane at $at'] });
  });

  test('items of other structures fall away', () => {
    const list = [{ only: ['drawn'], a: 1 }, { only: ['other'], a: 2 }, { a: 3 }];
    expect(fill(list, {}, 'drawn')).toEqual([{ a: 1 }, { a: 3 }]);
  });

  test('a name without a value is refused, with the text that speaks of it', () => {
    expect(() => fill('the {gull}', {}, 'drawn')).toThrow('"the {gull}" speaks of gull');
  });

  test('a text that a name stands for is filled in as well, and speaks of itself in vain', () => {
    const names = { scene: 'It stands on {stand}.', stand: '$post', post: 'post_left' };
    expect(fill('{scene}', names, 'drawn')).toBe('It stands on post_left.');
    expect(() => fill('{a}', { a: 'a {b}', b: 'a {a}' }, 'drawn')).toThrow('"a {a}" speaks of a');
  });
});

describe('swapping sides', () => {
  test('swaps whole words and words of names, in texts and keys, and keeps capitals', () => {
    expect(swapSides('Left of vane_left, not leftover or bright')).toBe('Right of vane_right, not leftover or bright');
    expect(swapSidesIn({ 'left-x': ['aims-left'] })).toEqual({ 'right-x': ['aims-right'] });
  });

  test('twice is nothing', () => {
    const { task, requirements } = exerciseFor('two-vanes-one-holder');
    expect(swapSidesIn(swapSidesIn({ task, requirements }))).toEqual({ task, requirements });
  });
});

describe('scaling a rig', () => {
  test('puts every bone at the scaled place in a pose moved by as much', () => {
    const { rig } = exerciseFor('let-go').references[0]!;
    const big = scaleRig(rig, 3);
    const control = rig.bones.find(({ role, parent }) => role === 'control' && parent === null)!.name;
    const pose = (k: number) => ({ bones: { [control]: { move: [0.2 * k, -0.1 * k, 0.05 * k] as const } } });
    const [small, large] = [rig, big].map((one, i) => {
      const compiled = compile(one);
      if (!compiled.ok) throw new Error('a reference evaluates');
      return solve(compiled.program, pose(i === 0 ? 1 : 3));
    });
    for (const { name } of rig.bones) {
      const [a, b] = [small!.bones[name]!.matrix, large!.bones[name]!.matrix];
      expectClose(b.slice(0, 12), a.slice(0, 12), 1e-12, name);
      expectClose(
        b.slice(12, 15),
        a.slice(12, 15).map((x) => 3 * x),
        1e-12,
        name,
      );
    }
  });
});

describe('opening an exercise', () => {
  test('seed 0 is the exercise as drawn; the seed runs through structures, then sizes', () => {
    const [drawn, next] = [exerciseFor('one-vane', 0), exerciseFor('one-vane', 1)];
    expect([drawn.size, next.size]).toEqual([1, 1]);
    expect(next.structure).not.toBe(drawn.structure);
  });
});
