import { restBell } from './alarm.ts';
import { holdUpdates } from './updates.ts';

/** Keeps a new version of the app out while current may flow, and lets the bell rest afterwards. */
export class WhilePowered {
  /** lets new versions in; null while nothing is powered */
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
