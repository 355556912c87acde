import { boxed } from './boxed.ts';
import type { DryRun, Conflict } from './import.ts';
import type { JobRecord } from './records.ts';
import type { Everything } from './store.ts';

/** What to do with records that both notebooks have but that differ. */
export type Choice = 'mine' | 'theirs' | 'both';

export interface Choices {
  readonly jobs: Choice;
  readonly baths: Choice;
  /** only one set of preferences can be kept */
  readonly preferences: 'mine' | 'theirs';
}

const FROM_FILE = ' (from file)';

/**
 * The records to write, by the maker's choices. A job whose supply may be on is never overwritten: the one
 * from the file is added beside it.
 * @param newId makes an id for a copy
 * @param isPowered whether current may flow in a job
 */
export function toWrite(
  run: DryRun,
  choices: Choices,
  newId: () => string,
  isPowered: (job: JobRecord) => boolean,
): Everything {
  /** new names of the file's baths whose name is already taken here */
  const bathNames = new Map<string, string>();
  const wanted = <T extends { readonly id: string }>(
    conflicts: readonly Conflict<T>[],
    choice: (pair: Conflict<T>) => Choice,
    copy: (theirs: T, id: string) => T,
  ): readonly T[] =>
    conflicts.flatMap((pair) => {
      const chosen = choice(pair);
      if (chosen === 'mine') return [];
      if (chosen === 'theirs') return [pair.theirs];
      const id = newId();
      return [copy(pair.theirs, id)];
    });

  const baths = [
    ...run.baths.fresh,
    ...wanted(
      run.baths.conflicts,
      () => choices.baths,
      (bath, id) => {
        const name = bath.name + FROM_FILE;
        bathNames.set(bath.name, name);
        return { ...bath, id, name };
      },
    ),
  ];
  /** a job from the file refers to its bath by the new name */
  const withBath = (job: JobRecord): JobRecord => {
    const bath = bathNames.get(job.draft['bath.record'] ?? '');
    return bath === undefined ? job : { ...job, draft: { ...job.draft, 'bath.record': bath } };
  };
  const fresh =
    bathNames.size === 0
      ? run.jobs.fresh
      : run.jobs.fresh.map(({ text }) => boxed(withBath(JSON.parse(text) as JobRecord)));
  const others = wanted(
    run.jobs.conflicts,
    ({ mine }) => (isPowered(mine) && choices.jobs === 'theirs' ? 'both' : choices.jobs),
    (job, id) => ({
      ...job,
      id,
      draft: { ...job.draft, title: (job.draft['title'] ?? '') + FROM_FILE },
    }),
  );
  const jobs = [...fresh, ...others.map(withBath).map(boxed)];
  const [pair] = run.preferences.conflicts;
  const preferences =
    run.preferences.fresh[0] ?? (pair && choices.preferences === 'theirs' ? pair.theirs : undefined);
  return {
    jobs: [...jobs, ...run.rawJobs.map((raw) => boxed(raw as { id: string }))],
    baths: [...baths, ...run.rawBaths],
    preferences,
    takenIn: jobs.map(({ id }) => id),
  };
}
