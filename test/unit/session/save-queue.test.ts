import { expect, test } from 'vitest';
import { SaveQueue } from '../../../src/lib/session/save-queue.ts';

/** A store whose writes end when told to. */
function slowStore() {
  const ends: ((error?: Error) => void)[] = [];
  const writes: string[] = [];
  const settled: (string | null)[] = [];
  const queue = new SaveQueue<string>(
    (value, durability) =>
      new Promise((resolve, reject) => {
        writes.push(`${value} ${durability}`);
        ends.push((error) => {
          if (error) reject(error);
          else resolve();
        });
      }),
    (trouble) => settled.push(trouble),
  );
  const end = async (error?: Error) => {
    ends.shift()?.(error);
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { queue, writes, settled, end };
}

test('what comes in during a write goes into one write, the latest and as strictly as any asked', async () => {
  const { queue, writes, settled, end } = slowStore();
  queue.put('a', 'relaxed');
  queue.put('b', 'strict');
  queue.put('c', 'relaxed');
  expect(writes).toEqual(['a relaxed']);
  await end();
  expect(writes).toEqual(['a relaxed', 'c strict']);
  expect(settled).toEqual([]);
  await end();
  queue.put('d', 'relaxed');
  await end();
  expect(writes.at(-1)).toBe('d relaxed');
  expect(settled).toEqual([null, null]);
});

test('done waits for the last write, not for the first', async () => {
  const { queue, end } = slowStore();
  queue.put('a', 'relaxed');
  queue.put('b', 'relaxed');
  let isDone = false;
  const done = queue.done().then(() => {
    isDone = true;
  });
  await end();
  expect(isDone).toBe(false);
  await end();
  await done;
  expect(isDone).toBe(true);
});

test('a failed write is told, and the next value is written', async () => {
  const { queue, writes, settled, end } = slowStore();
  queue.put('a', 'strict');
  await end(new Error('disk full'));
  expect(settled).toEqual(['disk full']);
  queue.put('b', 'strict');
  await end();
  expect(writes).toEqual(['a strict', 'b strict']);
  expect(settled).toEqual(['disk full', null]);
});

test('a write that failed is forgiven by the one after it', async () => {
  const { queue, settled, end } = slowStore();
  queue.put('a', 'strict');
  queue.put('b', 'relaxed');
  await end(new Error('busy'));
  await end();
  expect(settled).toEqual([null]);
});
