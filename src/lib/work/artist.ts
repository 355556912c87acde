import type { Wishes } from '../core/mask/design.ts';
import type { Loop } from '../core/mask/outline.ts';
import type { PictureFault } from '../core/mask/raster.ts';
import type { ArtQuestion, ArtReply, Look, Pixels } from './art.worker.ts';

type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;

/** Works on a picture in a worker of its own, so that the page never freezes. */
export interface Artist {
  load(picture: Pixels): Promise<void>;
  /** Null when a newer wish has overtaken this one. */
  look(wishes: Wishes): Promise<{ look: Look } | { fault: PictureFault } | null>;
  outlines(grown: boolean): Promise<readonly Loop[]>;
  close(): void;
}

export function startArtist(): Artist {
  const worker = new Worker(new URL('./art.worker.ts', import.meta.url), { type: 'module' });
  let asked = 0;
  let latestLook = 0;
  let looking: Promise<void> = Promise.resolve();
  const waiting = new Map<number, { done: (reply: ArtReply) => void; failed: (error: Error) => void }>();
  worker.addEventListener('message', ({ data }: MessageEvent<ArtReply>) => {
    const one = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.is === 'error') one?.failed(new Error(data.error));
    else one?.done(data);
  });
  worker.addEventListener('error', ({ message }) => {
    for (const { failed } of waiting.values()) failed(new Error(message));
    waiting.clear();
  });
  const ask = (question: WithoutId<ArtQuestion>, lent: Transferable[] = []): Promise<ArtReply> =>
    new Promise((done, failed) => {
      asked += 1;
      waiting.set(asked, { done, failed });
      worker.postMessage({ ...question, id: asked }, lent);
    });
  return {
    load: async (picture) => {
      await ask({ asks: 'load', picture }, [picture.rgba.buffer]);
    },
    look: async (wishes) => {
      latestLook += 1;
      const own = latestLook;
      // one at a time: of those that come while it works only the last is looked at
      await looking;
      if (own !== latestLook) return null;
      const asking = ask({ asks: 'look', wishes });
      looking = asking.then(
        () => undefined,
        () => undefined,
      );
      const reply = await asking;
      if (own !== latestLook) return null;
      if (reply.is === 'look') return { look: reply.look };
      return reply.is === 'fault' ? { fault: reply.fault } : null;
    },
    outlines: async (grown) => {
      const reply = await ask({ asks: 'outlines', grown });
      return reply.is === 'outlines' ? reply.loops : [];
    },
    close: () => {
      worker.terminate();
    },
  };
}
