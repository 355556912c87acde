import { describe, expect, test } from 'vitest';
import { poweredPaths } from '../../src/lib/procedure/bite-states.ts';
import { procedure } from '../../src/lib/procedure/machine.ts';
import { storedPath } from '../../src/lib/procedure/state-paths.ts';
import { isPowered } from '../../src/lib/session/powered.ts';
import { aJob } from '../unit/notebook/records-for-test.ts';
import { checkBases, step, stored, toRunning } from './steps.ts';
import type { CheckBasis } from '../../src/lib/procedure/check-basis.ts';

interface Node {
  readonly path: string[];
  readonly tags: readonly string[];
  readonly states: Readonly<Record<string, Node>>;
}

const leavesOf = (node: Node): readonly Node[] => {
  const inner = Object.values(node.states);
  return inner.length === 0 ? [node] : inner.flatMap(leavesOf);
};

const leaves = leavesOf(procedure.root);

test('the places where current may flow are those that the machine tags, and no others', () => {
  const tagged = leaves.filter(({ tags }) => tags.includes('powered')).map(({ path }) => path.join('.'));
  expect(tagged.length).toBeGreaterThan(0);
  expect([...poweredPaths].toSorted()).toEqual(tagged.toSorted());
});

const standing = (value: unknown) => aJob('a', { snapshot: { status: 'active', value, context: {} } });

describe('a stored job', () => {
  test.each(leaves.map(({ path, tags }) => [path.join('.'), path, tags] as const))(
    'at %s is powered only where its state is tagged so',
    (_, path, tags) => {
      const value = path.reduceRight<unknown>(
        (inner, state) => (inner === null ? state : { [state]: inner }),
        null,
      );
      expect(isPowered(standing(value))).toBe(tags.includes('powered'));
    },
  );
  test('is told powered as the machine stores it', () => {
    const running = stored(toRunning(checkBases[0] as CheckBasis));
    expect(running.hasTag('powered')).toBe(true);
    expect(isPowered(aJob('a', { snapshot: procedure.getPersistedSnapshot(running) }))).toBe(true);
    const off = step(step(running, { type: 'stop.pressed', at: 2_000 }), {
      type: 'meter.read',
      reading: 'zero',
      at: 2_000,
    });
    expect(isPowered(aJob('a', { snapshot: procedure.getPersistedSnapshot(off) }))).toBe(false);
  });
  test('without a snapshot, or with something else in its place, stands nowhere', () => {
    for (const snapshot of [null, 7, 'etch.running', {}, { value: null }, { value: {} }, { value: [] }])
      expect(isPowered(aJob('a', { snapshot }))).toBe(false);
    expect(storedPath(null)).toBeNull();
  });
});
