/** A stored value during migration: only its version is certain. */
export type Stored = Readonly<Record<string, unknown>>;

/** One step from a version of a kind of record to the next. */
export interface Migration {
  /** `kind/number`; number n migrates version n to n + 1 */
  readonly id: string;
  readonly up: (old: Stored) => Stored;
}

/** All steps of one kind, from version 1. */
export interface Sequence {
  readonly kind: string;
  /** the version after the last step */
  readonly latest: number;
  readonly migrations: readonly Migration[];
}

/** @throws Error when ids are not `kind/1`, `kind/2` … without a gap */
export function sequenceOf(kind: string, migrations: readonly Migration[]): Sequence {
  migrations.forEach(({ id }, i) => {
    const expected = `${kind}/${i + 1}`;
    if (id !== expected) throw new Error(`migration found: ${id}, expected: ${expected}`);
  });
  return { kind, latest: migrations.length + 1, migrations };
}

/** Volume assumed for a bath without one, mL, because its totals were per litre. */
const LITRE = 1000;

/** Turns a bath's totals into events that give the same totals: one mixing, one use, and where it went. */
function bathAsEvents(old: Stored): Stored {
  const { strength, madeAt, lastUsedAt, chargeAh, dissolved, volumeMl = LITRE, where, ...rest } = old;
  const litres = (volumeMl as number) / LITRE;
  const tookMg = Object.fromEntries(
    Object.entries(dissolved as Readonly<Record<string, number>>).map(([element, held]) => [
      element,
      held * litres,
    ]),
  );
  return {
    ...rest,
    events: [
      { type: 'mixed', at: madeAt, strength, waterMl: volumeMl, volumeMl, heldMg: {} },
      { type: 'used', at: lastUsedAt, job: '', chargeAh, tookMg },
      ...(where === 'handed-over' ? [{ type: 'handed-over', at: lastUsedAt, to: '' }] : []),
    ],
  };
}

const isStored = (raw: unknown): raw is Stored => typeof raw === 'object' && raw !== null;

/** Old names of inputs in workings, in plans of the first version. */
const inputNames: Readonly<Record<string, string>> = {
  yield: 'currentEfficiency',
  offset: 'thresholdVoltage',
};

function renamedInputs(plan: unknown): unknown {
  if (Array.isArray(plan)) return plan.map(renamedInputs);
  if (!isStored(plan)) return plan;
  return Object.fromEntries(
    Object.entries(plan).map(([key, value]) => {
      const isInput = key === 'id' && typeof value === 'string' && 'evidence' in plan;
      return [key, isInput ? (inputNames[value] ?? value) : renamedInputs(value)];
    }),
  );
}

/** Renames `foundation` to `basis`, the values that a job's checks depend on. */
function basisNamed(snapshot: unknown): unknown {
  const context = isStored(snapshot) ? snapshot['context'] : null;
  if (!isStored(snapshot) || !isStored(context) || !('foundation' in context)) return snapshot;
  const { foundation: basis, ...rest } = context;
  return { ...snapshot, context: { ...rest, basis } };
}

const jobInFieldTerms = (old: Stored): Stored => ({
  ...old,
  planAtStart: renamedInputs(old['planAtStart']),
  snapshot: basisNamed(old['snapshot']),
});

/** All steps of each kind. */
export const sequences = {
  job: sequenceOf('job', [{ id: 'job/1', up: jobInFieldTerms }]),
  bath: sequenceOf('bath', [{ id: 'bath/1', up: bathAsEvents }]),
  preferences: sequenceOf('preferences', []),
} as const satisfies Record<string, Sequence>;

/**
 * Migrates a stored value to the latest version. A value without a version, or with a later one than this app
 * knows, is returned unchanged, so that the schema reports it.
 */
export function migrate(raw: unknown, { latest, migrations }: Sequence): unknown {
  if (!isStored(raw) || !Number.isInteger(raw['version'])) return raw;
  const from = raw['version'] as number;
  if (from < 1 || from >= latest) return raw;
  return migrations
    .slice(from - 1)
    .reduce<Stored>((old, { up }, i) => ({ ...up(old), version: from + i + 1 }), raw);
}
