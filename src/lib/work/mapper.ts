import type { MapReply } from './map-bite.ts';
import type { MapQuestion } from './plan.worker.ts';

/**
 * Solves a job's cell finely in its own worker, so that planning can go on and the work can be stopped.
 * @param typed job file
 * @returns stops it
 */
export function mapBite(typed: unknown, tell: (reply: MapReply) => void): () => void {
  const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<MapReply>) => {
    tell(data);
    if (data.is !== 'progress' && !(data.is === 'map' && !data.done)) worker.terminate();
  });
  worker.addEventListener('error', ({ message }) => {
    tell({ is: 'error', error: message });
    worker.terminate();
  });
  worker.postMessage({ asks: 'map', file: typed } satisfies MapQuestion);
  return () => {
    worker.terminate();
  };
}
