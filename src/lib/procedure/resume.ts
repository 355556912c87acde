import { createActor } from 'xstate';
import { noBasis } from './check-basis.ts';
import { procedure } from './machine.ts';

/*
 * A snapshot of another shape cannot be resumed: the job opens at its start, and where its events tell that
 * a run was left on, "Is the supply off?" comes before all else. A job from a file opens with every answer
 * forgotten, also the maker's own from another phone: nobody here has looked. The answers stay in its
 * events.
 */

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Whether this procedure can go on from a stored value. It may be anything, since files come from outside. */
export function isResumable(snapshot: unknown): boolean {
  if (!isObject(snapshot) || !isObject(snapshot['context'])) return false;
  const { answers, runs, basis, seq, spent, spentByStop, prepared } = snapshot['context'];
  const isWhole =
    isObject(answers) &&
    Object.values(answers).every(isObject) &&
    Array.isArray(runs) &&
    runs.every(isObject) &&
    isObject(basis) &&
    typeof seq === 'number' &&
    typeof spent === 'number' &&
    typeof spentByStop === 'number' &&
    typeof prepared === 'string';
  if (!isWhole) return false;
  try {
    const resumed = createActor(procedure, {
      snapshot: snapshot as never,
      input: { basis: noBasis },
    }).getSnapshot();
    // a state that this machine does not have leads to no leaf state
    return resumed.status === 'active' && resumed._nodes.some(({ type }) => type === 'atomic');
  } catch {
    return false;
  }
}
