import type { Influence } from '../core/plan/influence.ts';
import type { Alternative } from '../core/plan/alternatives.ts';
import type { AmmeterGain } from '../core/plan/questions.ts';
import type { Trial, Trying } from '../core/plan/what-if.ts';
import type { Files, Planned } from './plan-draft.ts';
import type { WorkerRequest, Reply } from './plan.worker.ts';

/**
 * Plans in a worker, so that typing never stalls. Only the latest question is answered: older replies are
 * dropped.
 */
export interface Planner {
  /** Resolves with the plan, or null when a later question has replaced this one. */
  plan(files: Files): Promise<Planned | null>;
  /** Other ways to the same depth. */
  alternatives(files: Files): Promise<readonly Alternative[]>;
  /** What an ammeter would change; null where there is one. */
  ammeterGain(files: Files): Promise<AmmeterGain | null>;
  /** What moves the depth. */
  influences(files: Files): Promise<readonly Influence[]>;
  /** What changes with another value; null when it cannot be computed. */
  tryValue(files: Files, trying: Trying): Promise<Trial | null>;
  close(): void;
}

export function startPlanner(): Planner {
  const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' });
  let asked = 0;
  let latestPlan = 0;
  const waiting = new Map<number, { done: (reply: Reply) => void; failed: (error: Error) => void }>();

  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
    const one = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.ok) one?.done(data);
    else one?.failed(new Error(data.error));
  });
  worker.addEventListener('error', ({ message }) => {
    for (const { failed } of waiting.values()) failed(new Error(message));
    waiting.clear();
  });

  const ask = (question: Omit<WorkerRequest, 'id'>): Promise<Reply> =>
    new Promise((done, failed) => {
      asked += 1;
      if (question.asks === 'plan') latestPlan = asked;
      waiting.set(asked, { done, failed });
      worker.postMessage({ ...question, id: asked } satisfies WorkerRequest);
    });

  return {
    plan: async (files) => {
      const reply = await ask({ files, asks: 'plan' });
      return 'planned' in reply && reply.id === latestPlan ? reply.planned : null;
    },
    alternatives: async (files) => {
      const reply = await ask({ files, asks: 'alternatives' });
      return 'alternatives' in reply ? reply.alternatives : [];
    },
    ammeterGain: async (files) => {
      const reply = await ask({ files, asks: 'ammeter' });
      return 'gain' in reply ? reply.gain : null;
    },
    influences: async (files) => {
      const reply = await ask({ files, asks: 'influences' });
      return 'influences' in reply ? reply.influences : [];
    },
    tryValue: async (files, trying) => {
      const reply = await ask({ files, asks: trying });
      return 'trial' in reply ? reply.trial : null;
    },
    close: () => {
      worker.terminate();
    },
  };
}
