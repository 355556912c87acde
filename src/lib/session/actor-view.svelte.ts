import { createSubscriber } from 'svelte/reactivity';
import type { Actor, EventFromLogic, SnapshotFrom } from 'xstate';
import type { Procedure } from '../procedure/machine.ts';

/** The procedure for components: an effect that reads the snapshot runs again when it changes. */
export function viewOf(actor: Actor<Procedure>) {
  const subscribe = createSubscriber((update) => {
    const subscription = actor.subscribe({ next: update, error: update, complete: update });
    return () => {
      subscription.unsubscribe();
    };
  });
  return {
    get snapshot(): SnapshotFrom<Procedure> {
      subscribe();
      return actor.getSnapshot();
    },
    send: (event: EventFromLogic<Procedure>): void => {
      actor.send(event);
    },
  };
}
