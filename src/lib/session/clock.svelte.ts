import { createSubscriber } from 'svelte/reactivity';

const SECOND = 1000;

/** Wall time as screens read it: redraws once a second while something looks, and when the page comes back. */
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
