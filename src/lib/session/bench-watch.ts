/** Keeps the screen on and sounds the stop, as far as this browser can. */
export interface BenchWatch {
  /** what the screen lock does: held, or why not */
  readonly awake: () => boolean;
  ring: () => void;
  end: () => void;
}

const PULSES = [0, 0.45, 0.9];

/** Call from a tap: browsers let sound start only there. */
export function watchBench(): BenchWatch {
  const sound = 'AudioContext' in globalThis ? new AudioContext() : null;
  let lock: WakeLockSentinel | null = null;
  let ended = false;

  const hold = async (): Promise<void> => {
    if (ended || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    // refused on a low battery or plain http: the clock goes on without
    lock = await navigator.wakeLock.request('screen').catch(() => null);
  };
  const onVisible = (): void => {
    void hold();
  };
  document.addEventListener('visibilitychange', onVisible);
  void hold();

  return {
    awake: () => lock !== null && !lock.released,
    ring: () => {
      if (!sound) return;
      for (const after of PULSES) {
        const tone = sound.createOscillator();
        tone.frequency.value = 880;
        tone.connect(sound.destination);
        tone.start(sound.currentTime + after);
        tone.stop(sound.currentTime + after + 0.25);
      }
    },
    end: () => {
      ended = true;
      document.removeEventListener('visibilitychange', onVisible);
      void lock?.release();
      void sound?.close();
    },
  };
}
