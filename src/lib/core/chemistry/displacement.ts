import type { ElementSymbol } from '../facts/elements.ts';
import { potentials } from '../facts/potentials.ts';
import type { Composition } from './alloy.ts';

/** Standard potential against the bare ion, V, of each metal that a bath may hold. Null: not in the table. */
export const standardPotential: Readonly<Partial<Record<ElementSymbol, number>>> = {
  Au: potentials['Au+++ + 3e- = Au'].value,
  Ag: potentials['Ag+ + e- = Ag'].value,
  Cu: potentials['Cu++ + 2e- = Cu'].value,
  Pb: potentials['Pb++ + 2e- = Pb'].value,
  Sn: potentials['Sn++ + 2e- = Sn'].value,
  Ni: potentials['Ni++ + 2e- = Ni'].value,
  Fe: potentials['Fe++ + 2e- = Fe'].value,
  Zn: potentials['Zn++ + 2e- = Zn'].value,
  Al: potentials['Al+++ + 3e- = Al'].value,
};

/**
 * From this difference in potential on, V, displacement happens at any concentration: 0.059 V for a power of
 * ten, four of them.
 */
const SURE = 0.24;

/** The element with the largest share of a composition. */
export function mainElement(massPercent: Composition): ElementSymbol {
  const shares = Object.entries(massPercent) as [ElementSymbol, number][];
  return shares.reduce((most, one) => (one[1] > most[1] ? one : most))[0];
}

/**
 * Whether a dissolved metal plates onto a piece of this composition without current (cementation): the piece
 * does not contain it, and its standard potential is far above that of the piece's main metal.
 */
export function nobler(element: ElementSymbol, massPercent: Composition): boolean {
  if ((massPercent[element] ?? 0) > 0) return false;
  const [dissolved, solid] = [standardPotential[element], standardPotential[mainElement(massPercent)]];
  return dissolved !== undefined && solid !== undefined && dissolved - solid > SURE;
}
