import { expect, test } from 'vitest';
import { inOrder } from '../../src/cli/pool.ts';

interface Task {
  number: number;
  after: number;
}
const url = new URL('./waiter.ts', import.meta.url);

function run(tasks: AsyncIterable<Task> | Iterable<Task>): AsyncGenerator<number> {
  return inOrder<Task, number>(url, new Int32Array(new SharedArrayBuffer(4)), tasks, 2);
}

async function all(results: AsyncGenerator<number>): Promise<number[]> {
  const list: number[] = [];
  for await (const result of results) list.push(result);
  return list;
}

test('while one task takes long, the other thread does the next ones, but only so many; all come out in order', async () => {
  let taken = 0;
  function* tasks() {
    for (let number = 0; number < 500; number++) {
      taken = number + 1;
      yield { number, after: number === 0 ? 50 : 0 };
    }
  }
  const results = run(tasks());
  expect((await results.next()).value).toBe(0);
  expect(taken).toBeGreaterThan(50);
  expect(taken).toBeLessThan(80);
  expect(await all(results)).toEqual(Array.from({ length: 499 }, (_, n) => n + 1));
});

test('a result is given while the next task is not there yet', async () => {
  let release = () => {};
  const later = new Promise<void>((resolve) => {
    release = resolve;
  });
  async function* tasks() {
    yield { number: 1, after: 0 };
    await later;
    yield { number: 2, after: 0 };
  }
  const results = run(tasks());
  expect((await results.next()).value).toBe(1);
  release();
  expect(await all(results)).toEqual([2]);
});

test('a fault of a worker, or of where the tasks come from, is thrown in its turn', async () => {
  const broken = run([1, -1].map((number) => ({ number, after: 0 })));
  expect((await broken.next()).value).toBe(1);
  await expect(broken.next()).rejects.toThrow('a number below 0');
  function* tasks() {
    yield { number: 1, after: 0 };
    throw new Error('no more');
  }
  const cut = run(tasks());
  expect((await cut.next()).value).toBe(1);
  await expect(cut.next()).rejects.toThrow('no more');
});
