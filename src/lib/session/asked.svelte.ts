/** An answer that takes a moment: none yet, there, or why not. */
export class Asked<T> {
  value = $state.raw<T | null>(null);
  trouble = $state('');
  isAsking = $state(false);
  #asked = 0;

  /** Asks anew: an answer given before may no longer hold, and one that comes late is dropped. */
  async ask(question: () => Promise<T>): Promise<void> {
    this.#asked += 1;
    const own = this.#asked;
    this.value = null;
    this.trouble = '';
    this.isAsking = true;
    try {
      const value = await question();
      if (own === this.#asked) this.value = value;
    } catch (error) {
      if (own === this.#asked) this.trouble = error instanceof Error ? error.message : String(error);
    } finally {
      if (own === this.#asked) this.isAsking = false;
    }
  }
}
