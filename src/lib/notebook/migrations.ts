/** A stored value while it is being raised: only its version is known for certain. */
export type Stored = Readonly<Record<string, unknown>>;

/** One step of a kind of record to its next version. */
export interface Migration {
  /** `kind/number`; number n raises version n to n + 1 */
  readonly id: string;
  readonly up: (old: Stored) => Stored;
}

/** All steps of one kind, from version 1. */
export interface Sequence {
  readonly kind: string;
  /** the version that the last step leads to */
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

/** What a bath without a known volume is reckoned as, mL: its sums were per litre. */
const LITRE = 1000;

/** Sums as the events that they may have come from: one mixing, one use, and where it went. */
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

/** Names that working inputs had in plans of the first version. */
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

/** What the checks of a job rest on was called its foundation. */
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
 * Raises a stored value to the latest version. What has no version, or a later one than this app knows,
 * is handed back as it is: the schema then says what is wrong with it.
 */
export function migrate(raw: unknown, { latest, migrations }: Sequence): unknown {
  if (!isStored(raw) || !Number.isInteger(raw['version'])) return raw;
  const from = raw['version'] as number;
  if (from < 1 || from >= latest) return raw;
  return migrations
    .slice(from - 1)
    .reduce<Stored>((old, { up }, i) => ({ ...up(old), version: from + i + 1 }), raw);
}
