import type { StepId } from '../core/rules/rule.ts';
import { atRest, biteStates } from './bite-states.ts';
import { noBasis } from './check-basis.ts';
import { machineSetup } from './machine-setup.ts';

export type { ProcedureContext } from './context.ts';

/** Raise when states or context change shape: an older snapshot is then not resumed. */
export const procedureVersion = 3;

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

/**
 * The whole job. It has no delays and no invoked actors, so that a test can walk every path: no state
 * tagged `powered` is entered but through `mayPower`, and `stop.pressed` is taken in each of them.
 */
export const procedure = machineSetup.createMachine({
  id: 'job',
  context: ({ input }) => ({
    basis: input?.basis ?? noBasis,
    answers: {},
    seq: 0,
    spent: 0,
    spentByStop: 0,
    runs: [],
    reached: 'metal',
    prepared: 'nothing',
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
          {
            guard: 'isLeftPowered',
            target: '#job.etch.stopping',
            actions: ['adoptRun', 'spendPaused', 'forgetForeign'],
          },
          { actions: ['spendPaused', 'forgetForeign'] },
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
        recipe: { on: { 'step.finished': '#job.resist', 'step.back': '#job.electrodes' } },
        hold: {
          on: { 'step.finished': { guard: 'mayMix', target: 'mixing' }, 'step.back': '#job.settings' },
        },
        mixing: {
          on: {
            'step.finished': { target: '#job.resist.masking', actions: 'markMixed' },
            'step.back': 'hold',
          },
        },
      },
    },
    resist: {
      entry: reach('resist'),
      initial: 'kind',
      on: { ...atRest, 'step.chosen': choices },
      states: {
        kind: { on: { 'step.finished': '#job.settings', 'step.back': '#job.electrolyte' } },
        masking: {
          on: {
            'step.finished': { target: '#job.settings.knobs', actions: 'markMasked' },
            'step.back': '#job.electrolyte.mixing',
          },
        },
      },
    },
    settings: {
      entry: reach('settings'),
      initial: 'plan',
      on: { ...atRest, 'step.chosen': choices },
      states: {
        // the last of the plan part: what follows is at the bench, and goes on where the maker was there
        plan: {
          on: {
            'step.finished': [
              { guard: 'isMasked', target: 'knobs' },
              { guard: 'isMixed', target: '#job.resist.masking' },
              { guard: 'mayBegin', target: '#job.electrolyte.hold' },
            ],
            'step.back': '#job.resist',
          },
        },
        knobs: {
          on: {
            'step.finished': { guard: 'isPlanned', target: '#job.etch' },
            'strip.wanted': {
              guard: 'isPlanned',
              target: '#job.etch.strip-hold',
              actions: 'forgetStrip',
            },
            'step.back': '#job.resist.masking',
          },
        },
      },
    },
    etch: {
      entry: reach('etch'),
      initial: 'hold',
      states: {
        ...biteStates,
        hold: { on: { ...biteStates.hold.on, 'step.chosen': choices } },
        looking: { on: { ...biteStates.looking.on, 'step.chosen': choices } },
      },
    },
    neutralise: {
      entry: reach('neutralise'),
      initial: 'rinsing',
      on: atRest,
      states: {
        rinsing: {
          on: {
            'step.finished': '#job.bath',
            'step.back': '#job.etch.looking',
            // stripped already: a new mask first, with the cautions of its own
            'bite.again': { target: '#job.resist.masking', actions: ['startRebite', 'spendPaused'] },
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
