/** An answer that takes a moment: none yet, there, or why not. */
export class Asked<T> {
  value = $state.raw<T | null>(null);
  trouble = $state('');

  /** Asks anew: an answer given before may no longer hold. */
  async ask(question: () => Promise<T>): Promise<void> {
    this.value = null;
    this.trouble = '';
    try {
      this.value = await question();
    } catch (error) {
      this.trouble = error instanceof Error ? error.message : String(error);
    }
  }
}
