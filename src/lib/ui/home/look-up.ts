import type { Component } from 'svelte';
import type { FromSheet } from '$lib/session/from-sheet.ts';

export interface FoundView {
  readonly found: FromSheet;
  readonly View: Component<{ found: FromSheet; onstart: () => void; onback: () => void }>;
}

/** Finds what a code or text leads to. The code that reads it is loaded only when somebody asks. */
export async function lookUp(typed: string): Promise<FoundView | { readonly fault: string }> {
  const [{ openNotebook }, { fromSheet }, { sheetFaults }, { default: View }] = await Promise.all([
    import('$lib/session/jobs.ts'),
    import('$lib/session/from-sheet.ts'),
    import('$words/from-sheet.ts'),
    import('./FoundSheet.svelte'),
  ]);
  const found = await fromSheet(await openNotebook(), typed);
  return 'fault' in found ? { fault: sheetFaults[found.fault] } : { found, View };
}
