/** One source of facts, published or recalled. `how` says whether we read the text itself. */
export interface Source {
  readonly title: string;
  readonly how: 'read' | 'secondaryCopy' | 'memory' | 'own';
  /** DOI or stable address, where there is one */
  readonly address?: string;
}
