/**
 * A test strip is bitten behind the same looks as a piece, and its current is minded as closely; what it passes is no
 * run of the piece's. Each state lies beside those of the bite itself.
 */
const atRest = {
  'check.answered': { actions: 'takeAnswer' },
  'plan.changed': { actions: 'takePlan' },
  'job.restored': { actions: ['spendCritical', 'forgetForeign'] },
} as const;

export const stripStates = {
  'strip-hold': {
    on: {
      ...atRest,
      'strip.started': { guard: 'mayPower', target: 'strip-running', actions: 'beginStripRun' },
      'step.back': [{ guard: 'hasStripRun', target: 'strip-between' }, { target: '#job.settings' }],
    },
  },
  'strip-running': {
    tags: 'powered',
    on: {
      'plan.changed': { actions: ['wantStop', 'takePlan'] },
      'strip.stopped': { target: 'strip-stopping', actions: 'markStripStopped' },
      'job.restored': {
        target: 'strip-stopping',
        actions: ['markStripStopped', 'spendCritical', 'forgetForeign'],
      },
    },
  },
  'strip-stopping': {
    tags: 'powered',
    entry: 'spendCritical',
    on: {
      'plan.changed': { actions: 'takePlan' },
      'strip.stopped': {},
      'job.restored': { actions: 'forgetForeign' },
      'meter.read': { guard: 'isZero', target: 'strip-between', actions: 'markStripOff' },
    },
  },
  'strip-between': {
    on: {
      ...atRest,
      'step.finished': 'strip-hold',
      'strip.ended': '#job.settings',
    },
  },
} as const;
