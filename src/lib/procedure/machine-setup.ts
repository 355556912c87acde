import { assertEvent, assign, setup } from 'xstate';
import { stepIds } from '../core/rules/rule.ts';
import type { StepId } from '../core/rules/rule.ts';
import type { CheckBasis } from './check-basis.ts';
import { checkNamed, checks } from './checks.ts';
import { endRun, runsOf, withRuns } from './context.ts';
import type { ProcedureContext, RunList } from './context.ts';
import type { ProcedureEvent } from './events.ts';
import { doesHoldStand, fingerprintOf, isHoldClear } from './freshness.ts';

const order = (step: StepId): number => stepIds.indexOf(step);
const further = (a: StepId, b: StepId): StepId => (order(a) > order(b) ? a : b);

const powerChecks = new Set<string>(checks.filter(({ hold }) => hold === 'power').map(({ id }) => id));

/** What the states of the procedure ask and do. */
export const machineSetup = setup({
  types: {
    context: {} as ProcedureContext,
    events: {} as ProcedureEvent,
    /** left out when a stored state is only moved one step on */
    input: {} as { readonly basis: CheckBasis } | undefined,
    tags: {} as 'powered',
  },
  guards: {
    mayMix: ({ context, event }) => {
      assertEvent(event, 'step.finished');
      return context.basis.mayMix && isHoldClear('mixing', context, event.at);
    },
    mayPower: ({ context, event }) => {
      assertEvent(event, ['start.pressed', 'strip.started']);
      return (
        context.basis.mayPower && doesHoldStand('mixing', context) && isHoldClear('power', context, event.at)
      );
    },
    mayLift: ({ context, event }) => {
      assertEvent(event, 'step.finished');
      return isHoldClear('lifting', context, event.at);
    },
    mayStore: ({ context, event }) => {
      assertEvent(event, 'step.finished');
      return isHoldClear('storing', context, event.at);
    },
    hasStripRun: ({ context }) => runsOf(context, 'stripRuns').length > 0,
    hasRunUnderMask: ({ context }) => context.runs.length > context.runsBeforeMask,
    isLeftPowered: ({ event }) => {
      assertEvent(event, 'job.restored');
      return event.poweredSince !== undefined;
    },
    isPlanned: ({ context }) => context.basis.mayPower,
    isTakenIn: ({ event }) => {
      assertEvent(event, 'job.restored');
      return event.isTakenIn === true;
    },
    isOn: ({ event }) => {
      assertEvent(event, 'supply.seen');
      return event.says === 'on';
    },
    mayBegin: ({ context }) => context.basis.mayMix,
    // what was mixed counts only while nothing under its hold has changed
    isMixed: ({ context }) => context.prepared !== 'nothing' && doesHoldStand('mixing', context),
    isMasked: ({ context }) => context.prepared === 'masked' && doesHoldStand('mixing', context),
    isZero: ({ event }) => {
      assertEvent(event, 'meter.read');
      return event.reading === 'zero';
    },
    goesDeeper: ({ event }) => {
      assertEvent(event, 'depth.judged');
      return event.verdict === 'deeper';
    },
    isEnough: ({ event }) => {
      assertEvent(event, 'depth.judged');
      return event.verdict === 'enough';
    },
    chose: ({ context, event }, { step }: { step: StepId }) => {
      assertEvent(event, 'step.chosen');
      return event.step === step && order(step) <= order(context.reached);
    },
  },
  actions: {
    takePlan: assign(({ event }) => {
      assertEvent(event, 'plan.changed');
      return { basis: event.basis };
    }),
    wantStop: assign(({ context, event }) => {
      assertEvent(event, 'plan.changed');
      const isSame = JSON.stringify(event.basis) === JSON.stringify(context.basis);
      return isSame ? {} : { stopWanted: true };
    }),
    takeAnswer: assign(({ context, event }) => {
      assertEvent(event, 'check.answered');
      const { check, value, at } = event;
      const seq = context.seq + 1;
      const fingerprint = fingerprintOf(checkNamed(check), context.basis);
      return { seq, answers: { ...context.answers, [check]: { value, fingerprint, at, seq } } };
    }),
    markMixed: assign({ prepared: 'mixed' }),
    markMasked: assign({ prepared: 'masked' }),
    spendPaused: assign(({ context }) => ({ spent: context.seq })),
    spendByStop: assign(({ context }) => ({ spentByStop: context.seq })),
    // answers from a file do not count: nobody has looked at this bench
    forgetForeign: assign(({ event }) => {
      assertEvent(event, 'job.restored');
      return event.isTakenIn === true ? { answers: {} } : {};
    }),
    forgetStrip: assign({ stripRuns: [] }),
    beginRun: assign(({ context, event }, { of }: { of: RunList }) => {
      assertEvent(event, ['start.pressed', 'strip.started']);
      const run = { startedAt: event.at, stoppedAt: null, offAt: null };
      return { stopWanted: false, ...withRuns(of, [...runsOf(context, of), run]) };
    }),
    markStopped: assign(({ context, event }, { of }: { of: RunList }) => {
      assertEvent(event, ['stop.pressed', 'strip.stopped', 'supply.seen', 'job.restored']);
      return withRuns(of, endRun(runsOf(context, of), { stoppedAt: event.at }));
    }),
    markOff: assign(({ context, event }, { of }: { of: RunList }) => {
      assertEvent(event, 'meter.read');
      return { stopWanted: false, ...withRuns(of, endRun(runsOf(context, of), { offAt: event.at })) };
    }),
    // an older procedure began this run; its start is all that is known
    adoptRun: assign(({ event }) => {
      assertEvent(event, 'job.restored');
      const { poweredSince, at } = event;
      return poweredSince === undefined
        ? {}
        : { runs: [{ startedAt: poweredSince, stoppedAt: at, offAt: null }] };
    }),
    reach: assign(({ context }, { step }: { step: StepId }) => ({ reached: further(context.reached, step) })),
    // the mask is new, so nothing seen before the first bite counts for the second
    startRebite: assign(({ context }) => ({
      runsBeforeMask: context.runs.length,
      prepared: 'mixed',
      answers: Object.fromEntries(Object.entries(context.answers).filter(([id]) => !powerChecks.has(id))),
    })),
  },
});
