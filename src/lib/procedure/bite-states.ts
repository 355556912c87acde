import type { RunList } from './context.ts';

/** Answers and plans are taken wherever no current can flow. */
export const atRest = {
  'check.answered': { actions: 'takeAnswer' },
  'plan.changed': { actions: 'takePlan' },
  'job.restored': { actions: ['spendPaused', 'forgetForeign'] },
} as const;

/** Where biting the piece and biting a test strip differ. */
interface Bite {
  readonly starts: 'start.pressed' | 'strip.started';
  readonly stops: 'stop.pressed' | 'strip.stopped';
  readonly running: string;
  readonly stopping: string;
  /** a page that went away during a run comes back to this */
  readonly resuming: string;
  /** where the supply seen off leads: before anything is lifted */
  readonly lifting: string;
  /** where the lifted piece or strip is looked at */
  readonly lifted: string;
  readonly of: RunList;
}

const piece = {
  starts: 'start.pressed',
  stops: 'stop.pressed',
  running: 'running',
  stopping: 'stopping',
  resuming: 'resuming',
  lifting: 'lifting',
  lifted: 'looking',
  of: 'runs',
} as const satisfies Bite;

const strip = {
  starts: 'strip.started',
  stops: 'strip.stopped',
  running: 'strip-running',
  stopping: 'strip-stopping',
  resuming: 'strip-resuming',
  lifting: 'strip-lifting',
  lifted: 'strip-between',
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

/** Current flows, and a page that goes comes back to the question whether it still does. */
const powered = ({ stops, stopping, resuming, of }: Bite) =>
  ({
    'plan.changed': { actions: ['wantStop', 'takePlan'] },
    ...on(stops, { target: stopping, actions: { type: 'markStopped', params: { of } } }),
    'job.restored': [
      // whoever took the job from a file cannot know what the supply of another bench does
      {
        guard: 'isTakenIn',
        target: stopping,
        actions: [{ type: 'markStopped', params: { of } }, 'spendPaused', 'forgetForeign'],
      },
      { target: resuming, actions: 'spendPaused' },
    ],
  }) as const;

const running = (bite: Bite) => ({ tags: 'powered', on: powered(bite) }) as const;

/** Only the maker can tell: current still flows, or it is off, or nobody knows and it is switched off now. */
const resuming = (bite: Bite) =>
  ({
    tags: 'powered',
    on: {
      ...powered(bite),
      'supply.seen': [
        { guard: 'isOn', target: bite.running },
        { target: bite.stopping, actions: { type: 'markStopped', params: { of: bite.of } } },
      ],
    },
  }) as const;

/** Left only when the supply is seen off: its meter at zero, or its plug out. */
const stopping = ({ stops, lifting, of }: Bite) =>
  ({
    tags: 'powered',
    entry: 'spendByStop',
    on: {
      'plan.changed': { actions: 'takePlan' },
      ...on(stops, {}),
      'job.restored': { actions: 'forgetForeign' },
      'meter.read': { guard: 'isZero', target: lifting, actions: { type: 'markOff', params: { of } } },
    },
  }) as const;

/** Nothing is lifted, not even for a look, before the hold says so. */
const lifting = ({ lifted }: Bite) =>
  ({ on: { ...atRest, 'step.finished': { guard: 'mayLift', target: lifted } } }) as const;

/** The states in which a piece or a test strip is bitten: a strip is held behind the same looks, and stopped alike. */
export const biteStates = {
  hold: {
    on: {
      ...hold(piece),
      // a bitten piece can be judged deep enough here, without switching on again; it hangs in the bath till then
      'step.back': [{ guard: 'hasRunUnderMask', target: 'lifting' }, { target: '#job.settings.knobs' }],
    },
  },
  running: running(piece),
  resuming: resuming(piece),
  stopping: stopping(piece),
  lifting: lifting(piece),
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
      'step.back': [{ guard: 'hasStripRun', target: 'strip-lifting' }, { target: '#job.settings.knobs' }],
    },
  },
  'strip-running': running(strip),
  'strip-resuming': resuming(strip),
  'strip-stopping': stopping(strip),
  'strip-lifting': lifting(strip),
  'strip-between': {
    on: {
      ...atRest,
      'step.finished': 'strip-hold',
      'strip.ended': '#job.settings.knobs',
    },
  },
} as const;

/** Places where current may flow: the states that are tagged so. */
export const poweredPaths: ReadonlySet<string> = new Set(
  Object.entries(biteStates).flatMap(([name, state]) => ('tags' in state ? [`etch.${name}`] : [])),
);
