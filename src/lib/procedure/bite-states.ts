import type { RunList } from './context.ts';

/** Answers and plans are taken wherever no current can flow. */
export const atRest = {
  'check.answered': { actions: 'takeAnswer' },
  'plan.changed': { actions: 'takePlan' },
  'job.restored': { actions: ['spendCritical', 'forgetForeign'] },
} as const;

/** Where biting the piece and biting a test strip differ. */
interface Bite {
  readonly starts: 'start.pressed' | 'strip.started';
  readonly stops: 'stop.pressed' | 'strip.stopped';
  readonly running: string;
  readonly stopping: string;
  /** the state that follows once the meter reads zero */
  readonly off: string;
  readonly of: RunList;
}

const piece = {
  starts: 'start.pressed',
  stops: 'stop.pressed',
  running: 'running',
  stopping: 'stopping',
  off: 'looking',
  of: 'runs',
} as const satisfies Bite;

const strip = {
  starts: 'strip.started',
  stops: 'strip.stopped',
  running: 'strip-running',
  stopping: 'strip-stopping',
  off: 'strip-between',
  of: 'stripRuns',
} as const satisfies Bite;

const on = <Type extends string, const Transition>(type: Type, transition: Transition) =>
  ({ [type]: transition }) as Readonly<Partial<Record<Type, Transition>>>;

/** The only place to switch on, and only after every check. */
const hold = ({ starts, running, of }: Bite) => ({
  ...atRest,
  ...on(starts, {
    guard: 'mayPower',
    target: running,
    actions: { type: 'beginRun', params: { of } },
  }),
});

const running = ({ stops, stopping, of }: Bite) =>
  ({
    tags: 'powered',
    on: {
      'plan.changed': { actions: ['wantStop', 'takePlan'] },
      ...on(stops, { target: stopping, actions: { type: 'markStopped', params: { of } } }),
      // after a reload the page cannot know whether current flowed on: the meter must be read
      'job.restored': {
        target: stopping,
        actions: [{ type: 'markStopped', params: { of } }, 'spendCritical', 'forgetForeign'],
      },
    },
  }) as const;

/** Left only when the meter reads zero. */
const stopping = ({ stops, off, of }: Bite) =>
  ({
    tags: 'powered',
    entry: 'spendCritical',
    on: {
      'plan.changed': { actions: 'takePlan' },
      ...on(stops, {}),
      'job.restored': { actions: 'forgetForeign' },
      'meter.read': { guard: 'isZero', target: off, actions: { type: 'markOff', params: { of } } },
    },
  }) as const;

/** The states in which a piece or a test strip is bitten: a strip is held behind the same looks, and stopped alike. */
export const biteStates = {
  hold: {
    on: {
      ...hold(piece),
      // a bitten piece can be judged deep enough here, without switching on again
      'step.back': [{ guard: 'hasRunUnderMask', target: 'looking' }, { target: '#job.settings' }],
    },
  },
  running: running(piece),
  stopping: stopping(piece),
  looking: {
    on: {
      ...atRest,
      'depth.judged': [
        { guard: 'goesDeeper', target: 'hold' },
        { guard: 'isEnough', target: '#job.neutralise' },
      ],
    },
  },
  'strip-hold': {
    on: {
      ...hold(strip),
      'step.back': [{ guard: 'hasStripRun', target: 'strip-between' }, { target: '#job.settings' }],
    },
  },
  'strip-running': running(strip),
  'strip-stopping': stopping(strip),
  'strip-between': {
    on: {
      ...atRest,
      'step.finished': 'strip-hold',
      'strip.ended': '#job.settings',
    },
  },
} as const;

/** Places where current may flow: the states that are tagged so. */
export const poweredPaths: ReadonlySet<string> = new Set(
  Object.entries(biteStates).flatMap(([name, state]) => ('tags' in state ? [`etch.${name}`] : [])),
);
