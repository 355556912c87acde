import { expect, test } from 'vitest';
import { metalIds } from '../../../src/lib/core/job/choices.ts';
import { bitableStock, otherStock, otherStockOf } from '../../../src/lib/words/en/stock.ts';

const tiles: readonly string[] = [...bitableStock.map(({ id }) => id), 'unknown-yellow', 'unknown-white'];

test('every metal that a job can name is shown by a tile of its own or in the list of other stock', () => {
  for (const metal of metalIds) expect(otherStockOf(metal) === undefined, metal).toBe(tiles.includes(metal));
});

test('stock of the list is shown as itself, its kin as the stock they are like', () => {
  for (const { id } of otherStock) expect(otherStockOf(id)?.id).toBe(id);
  expect(otherStockOf('304')?.id).toBe('stainless');
  expect(otherStockOf('toString')).toBeUndefined();
});
