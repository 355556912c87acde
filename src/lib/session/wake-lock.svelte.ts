/**
 * Whether the screen stays on: asked for, held, refused (low battery, plain http), or unknown to this
 * browser.
 */
export type Wake = 'asked' | 'held' | 'refused' | 'absent';

export interface WakeLock {
  readonly state: Wake;
  end: () => void;
}

/**
 * Keeps the screen on during a run. Browsers drop the lock when the page is hidden, so it is asked for again.
 */
export function keepAwake(): WakeLock {
  let state = $state<Wake>('wakeLock' in navigator ? 'asked' : 'absent');
  let lock: WakeLockSentinel | null = null;
  const over = new AbortController();
  const isOver = (): boolean => over.signal.aborted;

  async function ask(): Promise<void> {
    if (isOver() || state === 'absent' || document.visibilityState !== 'visible') return;
    try {
      const got = await navigator.wakeLock.request('screen');
      if (isOver()) {
        void got.release();
        return;
      }
      lock = got;
      state = 'held';
      got.addEventListener('release', () => {
        // a newer lock may have replaced this one
        if (lock === got) state = 'refused';
      });
    } catch {
      state = 'refused';
    }
  }
  const onVisible = (): void => void ask();
  document.addEventListener('visibilitychange', onVisible, { signal: over.signal });
  void ask();

  return {
    get state() {
      return state;
    },
    end: () => {
      over.abort();
      void lock?.release();
    },
  };
}
