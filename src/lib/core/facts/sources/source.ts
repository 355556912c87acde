/** One published or recalled origin of facts. `how` says whether the text itself was read. */
export interface Source {
  readonly title: string;
  readonly how: 'read' | 'secondaryCopy' | 'memory' | 'own';
  /** DOI or stable address, where there is one */
  readonly address?: string;
}
