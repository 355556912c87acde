import { restBell } from './alarm.ts';
import { holdUpdates } from './updates.ts';

/** While current may flow, keeps new versions of the app out. Afterwards it suspends the bell. */
export class WhilePowered {
  /** allows new versions again; null while nothing is powered */
  #release: (() => void) | null = null;

  follow(isPowered: boolean): void {
    if (isPowered) this.#release ??= holdUpdates();
    else this.end();
  }

  end(): void {
    if (this.#release === null) return;
    this.#release();
    this.#release = null;
    restBell();
  }
}
