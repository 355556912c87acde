import { createSubscriber } from 'svelte/reactivity';

const SECOND = 1000;

/**
 * The time of day for screens. It updates once a second while a component reads it, and when the page becomes
 * visible.
 */
export function wallClock(now: () => number = Date.now) {
  const subscribe = createSubscriber((update) => {
    const timer = setInterval(update, SECOND);
    document.addEventListener('visibilitychange', update);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', update);
    };
  });
  return {
    get now(): number {
      subscribe();
      return now();
    },
  };
}
