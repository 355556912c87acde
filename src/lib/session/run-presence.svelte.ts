/** Shorter absences are not reported, ms. */
const BLINK = 10_000;

/** Tells how long the page was last hidden. Hidden pages draw nothing, but time goes on. */
export function watchPresence(now: () => number = Date.now) {
  let away = $state<number | null>(null);
  let left: number | null = document.visibilityState === 'hidden' ? now() : null;

  const look = (): void => {
    if (document.visibilityState === 'hidden') {
      left = now();
      return;
    }
    if (left !== null && now() - left >= BLINK) away = now() - left;
    left = null;
  };
  document.addEventListener('visibilitychange', look);

  return {
    /** ms; null when it was not hidden */
    get away(): number | null {
      return away;
    },
    end: () => {
      document.removeEventListener('visibilitychange', look);
    },
  };
}
