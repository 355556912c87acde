import type { Wishes } from '../core/mask/design.ts';
import type { Loop } from '../core/mask/outline.ts';
import type { PictureFault } from '../core/mask/raster.ts';
import type { ArtQuestion, ArtReply, Closed, Look, Pixels } from './art.worker.ts';

type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;

/** An opened picture to show, without the other data in its file. */
export interface Shown {
  readonly file: Blob;
  readonly width: number;
  readonly height: number;
}

/** Processes a picture in its own worker, so that the page never freezes. */
export interface Artist {
  load(picture: Pixels): Promise<void>;
  /** Null when the file cannot be opened. */
  open(closed: Closed): Promise<Shown | null>;
  /**
   * @param told is called with the progress, 0 to 1
   * @returns null when a later call has replaced this one, or it was stopped
   */
  look(
    wishes: Wishes,
    told: (share: number) => void,
  ): Promise<{ look: Look } | { fault: PictureFault } | null>;
  /** Stops the look that is being worked on. */
  leave(): void;
  outlines(grown: boolean): Promise<readonly Loop[]>;
  close(): void;
}

interface Waiting {
  readonly done: (reply: ArtReply) => void;
  readonly failed: (error: Error) => void;
  readonly told: (share: number) => void;
}

export function startArtist(): Artist {
  const worker = new Worker(new URL('./art.worker.ts', import.meta.url), { type: 'module' });
  let asked = 0;
  /** id of the look that is being worked on; `wanted` numbers the calls */
  let current: number | null = null;
  let wanted = 0;
  let looking: Promise<unknown> = Promise.resolve();
  const waiting = new Map<number, Waiting>();
  worker.addEventListener('message', ({ data }: MessageEvent<ArtReply>) => {
    const one = waiting.get(data.id);
    if (data.is === 'progress') {
      one?.told(data.share);
      return;
    }
    waiting.delete(data.id);
    if (data.is === 'error') one?.failed(new Error(data.error));
    else one?.done(data);
  });
  worker.addEventListener('error', ({ message }) => {
    for (const { failed } of waiting.values()) failed(new Error(message));
    waiting.clear();
  });
  const ask = (
    question: WithoutId<ArtQuestion>,
    lent: Transferable[] = [],
    told: Waiting['told'] = () => undefined,
  ): Promise<ArtReply> =>
    new Promise((done, failed) => {
      asked += 1;
      waiting.set(asked, { done, failed, told });
      worker.postMessage({ ...question, id: asked }, lent);
    });
  const leave = (): void => {
    if (current !== null) worker.postMessage({ asks: 'leave', id: 0, look: current } satisfies ArtQuestion);
  };
  return {
    leave: () => {
      wanted += 1;
      leave();
    },
    load: async (picture) => {
      await ask({ asks: 'load', picture }, [picture.rgba.buffer]);
    },
    open: async (closed) => {
      const reply = await ask({ asks: 'open', closed });
      return reply.is === 'opened' ? { file: reply.shown, width: reply.width, height: reply.height } : null;
    },
    look: async (wishes, told) => {
      wanted += 1;
      const own = wanted;
      leave();
      // one at a time: of the calls that arrive meanwhile, only the last is answered
      await looking;
      if (own !== wanted) return null;
      const asking = ask({ asks: 'look', wishes }, [], told);
      current = asked;
      looking = asking.catch(() => undefined);
      const reply = await asking.finally(() => {
        current = null;
      });
      if (own !== wanted) return null;
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
