/** An answer that takes a moment: still missing, there, or the reason why not. */
export class Asked<T> {
  value = $state.raw<T | null>(null);
  trouble = $state('');
  isAsking = $state(false);
  #asked = 0;

  /**
   * Asks again. The old answer is dropped because it may no longer hold, and so is a late answer to an older
   * question.
   */
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
