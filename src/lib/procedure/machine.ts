import { assign, setup } from 'xstate';
import type { StateValueFrom } from 'xstate';
import { stepIds } from '../core/rules/rule.ts';
import type { StepId } from '../core/rules/rule.ts';
import type { Run } from '../core/run/run.ts';
import { checkNamed, checks } from './checks.ts';
import type { ProcedureEvent } from './events.ts';
import { noBasis } from './check-basis.ts';
import type { CheckBasis } from './check-basis.ts';
import { doesHoldStand, fingerprintOf, isHoldClear } from './freshness.ts';
import type { Answers } from './freshness.ts';
import { stripStates } from './strip-states.ts';

/** Raise when states or context change shape: an older snapshot is then not resumed. */
export const procedureVersion = 2;

/** Plain data: it is stored as it is. */
export interface ProcedureContext {
  readonly foundation: CheckBasis;
  readonly answers: Answers;
  /** number of answers so far */
  readonly seq: number;
  /** critical answers up to this one are spent */
  readonly spent: number;
  readonly runs: readonly Run[];
  /** the furthest step reached: none beyond it can be chosen */
  readonly reached: StepId;
  /** an input changed while powered: stop is asked for at once */
  readonly stopWanted: boolean;
  /** runs under a mask that has come off since; 0 for the first bite */
  readonly runsBeforeMask: number;
  /** energised stretches of a test strip; none in a snapshot from before there were any */
  readonly stripRuns?: readonly Run[];
}

const order = (step: StepId): number => stepIds.indexOf(step);
const further = (a: StepId, b: StepId): StepId => (order(a) > order(b) ? a : b);

const powerChecks = new Set<string>(checks.filter(({ hold }) => hold === 'power').map(({ id }) => id));

const endRun = (runs: readonly Run[], change: Partial<Run>): readonly Run[] =>
  runs.map((run, i) => (i === runs.length - 1 ? { ...run, ...change } : run));

const machineSetup = setup({
  types: {
    context: {} as ProcedureContext,
    events: {} as ProcedureEvent,
    /** none where only a step from a stored state is asked for */
    input: {} as { readonly foundation: CheckBasis } | undefined,
    tags: {} as 'powered',
  },
  guards: {
    mayMix: ({ context, event }) =>
      event.type === 'step.finished' && context.foundation.mayMix && isHoldClear('mixing', context, event.at),
    mayPower: ({ context, event }) =>
      (event.type === 'start.pressed' || event.type === 'strip.started') &&
      context.foundation.mayPower &&
      doesHoldStand('mixing', context) &&
      isHoldClear('power', context, event.at),
    mayLift: ({ context, event }) =>
      event.type === 'step.finished' && isHoldClear('lifting', context, event.at),
    mayStore: ({ context, event }) =>
      event.type === 'step.finished' && isHoldClear('storing', context, event.at),
    hasStripRun: ({ context }) => (context.stripRuns ?? []).length > 0,
    hasRunUnderMask: ({ context }) => context.runs.length > context.runsBeforeMask,
    isLeftPowered: ({ event }) => event.type === 'job.restored' && event.poweredSince !== undefined,
    isPlanned: ({ context }) => context.foundation.mayPower,
    isZero: ({ event }) => event.type === 'meter.read' && event.reading === 'zero',
    goesDeeper: ({ event }) => event.type === 'depth.judged' && event.verdict === 'deeper',
    isEnough: ({ event }) => event.type === 'depth.judged' && event.verdict === 'enough',
    chose: ({ context, event }, params: { step: StepId }) =>
      event.type === 'step.chosen' &&
      event.step === params.step &&
      order(params.step) <= order(context.reached),
  },
  actions: {
    takePlan: assign(({ event }) => (event.type === 'plan.changed' ? { foundation: event.foundation } : {})),
    wantStop: assign(({ context, event }) =>
      event.type === 'plan.changed' && JSON.stringify(event.foundation) !== JSON.stringify(context.foundation)
        ? { stopWanted: true }
        : {},
    ),
    takeAnswer: assign(({ context, event }) => {
      if (event.type !== 'check.answered') return {};
      const { check, value, at } = event;
      const seq = context.seq + 1;
      const fingerprint = fingerprintOf(checkNamed(check), context.foundation);
      return { seq, answers: { ...context.answers, [check]: { value, fingerprint, at, seq } } };
    }),
    spendCritical: assign(({ context }) => ({ spent: context.seq })),
    // what a file says was checked counts for nothing
    forgetForeign: assign(({ event }) =>
      event.type === 'job.restored' && event.isTakenIn === true ? { answers: {} } : {},
    ),
    beginRun: assign(({ context, event }) =>
      event.type === 'start.pressed'
        ? {
            stopWanted: false,
            runs: [...context.runs, { startedAt: event.at, stoppedAt: null, offAt: null }],
          }
        : {},
    ),
    forgetStrip: assign({ stripRuns: [] }),
    beginStripRun: assign(({ context, event }) =>
      event.type === 'strip.started'
        ? {
            stopWanted: false,
            stripRuns: [...(context.stripRuns ?? []), { startedAt: event.at, stoppedAt: null, offAt: null }],
          }
        : {},
    ),
    markStripStopped: assign(({ context, event }) =>
      event.type === 'strip.stopped' || event.type === 'job.restored'
        ? { stripRuns: endRun(context.stripRuns ?? [], { stoppedAt: event.at }) }
        : {},
    ),
    markStripOff: assign(({ context, event }) =>
      event.type === 'meter.read'
        ? { stripRuns: endRun(context.stripRuns ?? [], { offAt: event.at }), stopWanted: false }
        : {},
    ),
    // all that is known of a run that an older procedure began
    adoptRun: assign(({ event }) =>
      event.type === 'job.restored' && event.poweredSince !== undefined
        ? { runs: [{ startedAt: event.poweredSince, stoppedAt: event.at, offAt: null }] }
        : {},
    ),
    markStopped: assign(({ context, event }) =>
      event.type === 'stop.pressed' || event.type === 'job.restored'
        ? { runs: endRun(context.runs, { stoppedAt: event.at }) }
        : {},
    ),
    markOff: assign(({ context, event }) =>
      event.type === 'meter.read'
        ? { runs: endRun(context.runs, { offAt: event.at }), stopWanted: false }
        : {},
    ),
    reach: assign(({ context }, params: { step: StepId }) => ({
      reached: further(context.reached, params.step),
    })),
    // the mask is new, so nothing seen before the first bite counts for the second
    startRebite: assign(({ context }) => ({
      runsBeforeMask: context.runs.length,
      answers: Object.fromEntries(Object.entries(context.answers).filter(([id]) => !powerChecks.has(id))),
    })),
  },
});

const reach = (step: StepId) => ({ type: 'reach', params: { step } }) as const;

/** Free choice of any step reached so far; never offered while powered. */
const chooseStep = [
  ['metal', '#job.metal'],
  ['electrodes', '#job.electrodes'],
  ['electrolyte', '#job.electrolyte'],
  ['resist', '#job.resist'],
  ['settings', '#job.settings'],
  ['etch', '#job.etch'],
] as const;

const choices = chooseStep.map(
  ([step, target]) => ({ guard: { type: 'chose', params: { step } }, target }) as const,
);

/** Answers and plans are taken wherever no current can flow. */
const atRest = {
  'check.answered': { actions: 'takeAnswer' },
  'plan.changed': { actions: 'takePlan' },
  'job.restored': { actions: ['spendCritical', 'forgetForeign'] },
} as const;

/**
 * The whole job. It has no delays and no invoked actors, so that a test can walk every path: no state
 * tagged `powered` is entered but through `mayPower`, and `stop.pressed` is taken in each of them.
 */
export const procedure = machineSetup.createMachine({
  id: 'job',
  context: ({ input }) => ({
    foundation: input?.foundation ?? noBasis,
    answers: {},
    seq: 0,
    spent: 0,
    runs: [],
    reached: 'metal',
    stopWanted: false,
    runsBeforeMask: 0,
  }),
  initial: 'metal',
  states: {
    metal: {
      entry: reach('metal'),
      on: {
        ...atRest,
        'step.finished': 'electrodes',
        'step.chosen': choices,
        'job.restored': [
          { guard: 'isLeftPowered', target: '#job.etch.stopping', actions: ['adoptRun', 'forgetForeign'] },
          { actions: ['spendCritical', 'forgetForeign'] },
        ],
      },
    },
    electrodes: {
      entry: reach('electrodes'),
      on: { ...atRest, 'step.finished': 'electrolyte', 'step.back': 'metal', 'step.chosen': choices },
    },
    electrolyte: {
      entry: reach('electrolyte'),
      initial: 'recipe',
      on: { ...atRest, 'step.chosen': choices },
      states: {
        recipe: { on: { 'step.finished': 'hold', 'step.back': '#job.electrodes' } },
        hold: { on: { 'step.finished': { guard: 'mayMix', target: 'mixing' }, 'step.back': 'recipe' } },
        mixing: { on: { 'step.finished': '#job.resist', 'step.back': 'hold' } },
      },
    },
    resist: {
      entry: reach('resist'),
      on: { ...atRest, 'step.finished': 'settings', 'step.back': 'electrolyte', 'step.chosen': choices },
    },
    settings: {
      entry: reach('settings'),
      on: {
        ...atRest,
        'step.finished': { guard: 'isPlanned', target: 'etch' },
        'strip.wanted': { guard: 'isPlanned', target: '#job.etch.strip-hold', actions: 'forgetStrip' },
        'step.back': 'resist',
        'step.chosen': choices,
      },
    },
    etch: {
      entry: reach('etch'),
      initial: 'hold',
      states: {
        hold: {
          on: {
            ...atRest,
            'start.pressed': { guard: 'mayPower', target: 'running', actions: 'beginRun' },
            // a bitten piece has not been judged yet: nobody has to power it again to say that it is deep enough
            'step.back': [{ guard: 'hasRunUnderMask', target: 'looking' }, { target: '#job.settings' }],
            'step.chosen': choices,
          },
        },
        running: {
          tags: 'powered',
          on: {
            'plan.changed': { actions: ['wantStop', 'takePlan'] },
            'stop.pressed': { target: 'stopping', actions: 'markStopped' },
            // a page that was gone cannot know what went on: only a look at the meter can tell
            'job.restored': {
              target: 'stopping',
              actions: ['markStopped', 'spendCritical', 'forgetForeign'],
            },
          },
        },
        stopping: {
          tags: 'powered',
          entry: 'spendCritical',
          on: {
            'plan.changed': { actions: 'takePlan' },
            'stop.pressed': {},
            'job.restored': { actions: 'forgetForeign' },
            'meter.read': { guard: 'isZero', target: 'looking', actions: 'markOff' },
          },
        },
        looking: {
          on: {
            ...atRest,
            'depth.judged': [
              { guard: 'goesDeeper', target: 'hold' },
              { guard: 'isEnough', target: '#job.neutralise' },
            ],
            'step.chosen': choices,
          },
        },
        ...stripStates,
      },
    },
    neutralise: {
      entry: reach('neutralise'),
      initial: 'hold',
      on: atRest,
      states: {
        hold: {
          on: { 'step.finished': { guard: 'mayLift', target: 'rinsing' }, 'step.back': '#job.etch.looking' },
        },
        rinsing: {
          on: {
            'step.finished': '#job.bath',
            'step.back': 'hold',
            // stripped already: a new mask first, with the cautions of its own
            'bite.again': { target: '#job.resist', actions: ['startRebite', 'spendCritical'] },
          },
        },
      },
    },
    bath: {
      entry: reach('bath'),
      initial: 'hold',
      on: atRest,
      states: {
        hold: {
          on: {
            'step.finished': { guard: 'mayStore', target: 'stored' },
            'step.back': '#job.neutralise.rinsing',
          },
        },
        stored: { on: { 'step.finished': '#job.sheet', 'step.back': 'hold' } },
      },
    },
    sheet: {
      entry: reach('sheet'),
      on: { ...atRest, 'step.back': 'bath.stored' },
    },
  },
});

export type Procedure = typeof procedure;
export type StateValue = StateValueFrom<Procedure>;

type PathOf<Value> = Value extends string
  ? Value
  : { [State in keyof Value & string]: `${State}.${PathOf<Value[State]>}` }[keyof Value & string];
type ParentOf<Path> = Path extends `${infer Parent}.${string}` ? Parent : never;

/** Every place in the job, such as `etch.running`; nobody stands in `etch` itself. */
export type StatePath = Exclude<PathOf<StateValue>, ParentOf<PathOf<StateValue>>>;

/** A state value as a dotted path. */
export function pathOf(value: StateValue): StatePath {
  const join = (inner: string | object): string =>
    typeof inner === 'string'
      ? inner
      : Object.entries(inner)
          .map(([state, within]) => `${state}.${join(within as string | object)}`)
          .join();
  return join(value) as StatePath;
}
