import type { Durability } from '../notebook/store.ts';

/**
 * Writes the latest value it is given, one write at a time. Values that arrive during a write go into the
 * next one, with the strictest durability asked for. A failed write is not repeated; the next value is
 * written as usual.
 */
export class SaveQueue<T> {
  readonly #write: (value: T, durability: Durability) => Promise<void>;
  readonly #settled: (trouble: string | null) => void;
  #waiting: { readonly value: T; readonly durability: Durability } | null = null;
  #writing: Promise<void> | null = null;

  /**
   * @param settled called whenever nothing is left to write, with the reason why the last write failed, or
   *   null
   */
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

  /** Resolves when every value so far has been written, or has failed. */
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
