import { expect, test } from 'vitest';
import { depthLine } from '../../../src/lib/session/depth-line.ts';

test.each([
  ['in mm', { 'piece.depth': '0.1', 'piece.depth.unit': 'mm' }, '0.1 mm'],
  ['by a draft from before units were kept', { 'piece.depth': '0,15' }, '0,15 mm'],
  ['in inches as typed', { 'piece.depth': '0.004', 'piece.depth.unit': 'in' }, '0.004 in'],
  ['as no number', { 'piece.depth': 'deep', 'piece.depth.unit': 'in' }, 'deep in'],
])('the list of jobs shows a depth typed %s', (_, draft, line) => {
  expect(depthLine(draft)).toBe(line);
});
