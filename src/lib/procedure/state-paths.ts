import type { StateValueFrom } from 'xstate';
import type { Procedure } from './machine.ts';

export type StateValue = StateValueFrom<Procedure>;

type PathOf<Value> = Value extends string
  ? Value
  : { [State in keyof Value & string]: `${State}.${PathOf<Value[State]>}` }[keyof Value & string];
type ParentOf<Path> = Path extends `${infer Parent}.${string}` ? Parent : never;

/** Every innermost state of the job, such as `etch.running`; `etch` itself only groups states. */
export type StatePath = Exclude<PathOf<StateValue>, ParentOf<PathOf<StateValue>>>;

const joined = (value: unknown): string =>
  typeof value === 'object' && value !== null
    ? Object.entries(value)
        .map(([state, within]) => `${state}.${joined(within)}`)
        .join()
    : String(value);

/** A state value as a dotted path. */
export const pathOf = (value: StateValue): StatePath => joined(value) as StatePath;

const ofPlan: readonly StatePath[] = [
  'metal',
  'electrodes',
  'electrolyte.recipe',
  'resist.kind',
  'settings.plan',
];

/** Whether a state belongs to the plan, which asks nothing physical; all others stand at the bench. */
export const isOfPlan = (path: StatePath): boolean => ofPlan.includes(path);

/** State of a stored snapshot, perhaps one that this procedure no longer has; null if it is no snapshot. */
export const storedPath = (snapshot: unknown): string | null =>
  typeof snapshot === 'object' && snapshot !== null && 'value' in snapshot ? joined(snapshot.value) : null;
