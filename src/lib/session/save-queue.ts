import type { Durability } from '../notebook/store.ts';

/**
 * Writes the latest of what it is given, one write at a time. What comes in during a write goes into the next, with
 * the strictest durability that any of it asked for. A write that fails is not tried again by itself; the next
 * value is written as usual.
 */
export class SaveQueue<T> {
  readonly #write: (value: T, durability: Durability) => Promise<void>;
  readonly #settled: (trouble: string | null) => void;
  #waiting: { readonly value: T; readonly durability: Durability } | null = null;
  #writing: Promise<void> | null = null;

  /** @param settled called whenever nothing is left to write, with why the last write failed or null */
  constructor(
    write: (value: T, durability: Durability) => Promise<void>,
    settled: (trouble: string | null) => void,
  ) {
    this.#write = write;
    this.#settled = settled;
  }

  put(value: T, durability: Durability): void {
    const isStrict = durability === 'strict' || this.#waiting?.durability === 'strict';
    this.#waiting = { value, durability: isStrict ? 'strict' : 'relaxed' };
    this.#writing ??= this.#drain();
  }

  /** Resolves when everything put so far has been written, or has failed to be. */
  async done(): Promise<void> {
    await this.#writing;
  }

  async #drain(): Promise<void> {
    let trouble: string | null = null;
    while (this.#waiting) {
      const { value, durability } = this.#waiting;
      this.#waiting = null;
      try {
        await this.#write(value, durability);
        trouble = null;
      } catch (error) {
        trouble = error instanceof Error ? error.message : String(error);
      }
    }
    this.#writing = null;
    this.#settled(trouble);
  }
}
