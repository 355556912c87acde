import type { Files, Planned } from './plan-draft.ts';
import type { Question, Reply } from './plan.worker.ts';

/** Plans in a worker, so that typing is never held up. The latest question wins: older replies are dropped. */
export interface Planner {
  /** Resolves with the plan, or null when a newer question has overtaken this one. */
  plan(files: Files): Promise<Planned | null>;
  close(): void;
}

export function startPlanner(): Planner {
  const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' });
  let latest = 0;
  const waiting = new Map<
    number,
    { done: (planned: Planned | null) => void; failed: (error: Error) => void }
  >();

  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => {
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (!data.ok) asked?.failed(new Error(data.error));
    else asked?.done(data.id === latest ? data.planned : null);
  });
  worker.addEventListener('error', ({ message }) => {
    for (const { failed } of waiting.values()) failed(new Error(message));
    waiting.clear();
  });

  return {
    plan: (files) =>
      new Promise((done, failed) => {
        latest += 1;
        waiting.set(latest, { done, failed });
        worker.postMessage({ id: latest, files } satisfies Question);
      }),
    close: () => {
      worker.terminate();
    },
  };
}
