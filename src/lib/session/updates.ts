/**
 * A new version of the app must never take over during a run. Every page with a run on holds a shared lock,
 * and the new version is offered and started only when no page holds it.
 */
/** Time after which a new version that has not come is asked again, ms. */
const ASK_AGAIN = 500;
const BENCH = 'etchwright-bench';

/**
 * Takes the lock for a run. Any number of pages may hold it.
 * @returns releases it
 */
export function holdUpdates(): () => void {
  // missing on plain http, where no new version is installed either
  if (!('locks' in navigator)) return () => undefined;
  let release: () => void = () => undefined;
  const held = new Promise<void>((done) => {
    release = done;
  });
  void navigator.locks.request(BENCH, { mode: 'shared' }, () => held);
  return release;
}

/**
 * Does something while no page holds the lock. It does not wait for it, because a waiting request would keep
 * the next run from taking the lock.
 */
async function withBenchFree<T>(work: () => Promise<T>): Promise<T | null> {
  if (!('locks' in navigator)) return null;
  return navigator.locks.request(BENCH, { ifAvailable: true }, (lock) => (lock === null ? null : work()));
}

async function registration(): Promise<ServiceWorkerRegistration | undefined> {
  return 'serviceWorker' in navigator ? navigator.serviceWorker.getRegistration() : undefined;
}

/** Whether a new version is installed and may be started now. */
export async function isUpdateReady(): Promise<boolean> {
  const waiting = (await registration())?.waiting;
  // without a controller this is the first version, which starts by itself
  if (!waiting || !navigator.serviceWorker.controller) return false;
  return (await withBenchFree(() => Promise.resolve(true))) === true;
}

/** Calls back whenever the answer of `isUpdateReady` may have changed. */
export function watchUpdates(look: () => void): () => void {
  const gone = new AbortController();
  const { signal } = gone;
  document.addEventListener('visibilitychange', look, { signal });
  void registration().then((registered) => {
    registered?.addEventListener(
      'updatefound',
      () => registered.installing?.addEventListener('statechange', look, { signal }),
      { signal },
    );
    look();
  });
  return () => {
    gone.abort();
  };
}

/**
 * Starts the new version and reloads the page. Only the maker's tap calls this.
 * @returns false when a run has begun meanwhile, or there is no new version
 */
export async function takeUpdate(): Promise<boolean> {
  const waiting = (await registration())?.waiting;
  if (!waiting) return false;
  const done = await withBenchFree(async () => {
    const inCharge = new Promise<void>((resolve) => {
      navigator.serviceWorker.addEventListener(
        'controllerchange',
        () => {
          resolve();
        },
        { once: true },
      );
    });
    const ask = (): void => {
      waiting.postMessage('SKIP_WAITING');
    };
    ask();
    // Chromium lets the new one in only while the old one has nothing to do, and does not look again by itself
    const asking = setInterval(ask, ASK_AGAIN);
    await inCharge;
    clearInterval(asking);
    location.reload();
    return true;
  });
  return done === true;
}

/** What this browser offers, for the start page. */
export interface UpdateStanding {
  /** the address is one that browsers trust: https, or this machine */
  readonly secure: boolean;
  /** every page is stored for use without a network */
  readonly offline: boolean;
  /** the browser has promised not to clear the notebook by itself */
  readonly persisted: boolean;
}

export async function standing(): Promise<UpdateStanding> {
  const secure = isSecureContext;
  return {
    secure,
    offline: secure && Boolean((await registration())?.active),
    persisted: 'storage' in navigator && (await navigator.storage.persisted()),
  };
}
