import type { BareFace } from './faces.ts';
import { straightened } from './kinetics.ts';
import type { Layout } from './layout.ts';
import { closeNetwork } from './operator.ts';
import type { Network } from './operator.ts';
import type { Electrode, FieldProblem } from './problem.ts';

/** A connection from metal into a cell. */
export interface Lead {
  /** index of the cell in the network's arrays */
  readonly n: number;
  /** S */
  readonly conductance: number;
  /** V, potential that the metal offers after its surface law is taken off */
  readonly potential: number;
  /** V, the part that the straightened law takes: the metal's own potential is higher by this */
  readonly offset: number;
  /** indices of the bare faces that share the current */
  readonly faces: readonly number[];
}

/** Potential of each metal, V: the cathode is at 0. */
const metalVolts = (electrode: Electrode, volts: number): number => (electrode === 'anode' ? volts : 0);

/**
 * All connections from metal into the bath, with the surface laws straightened near the last current
 * densities.
 * @param densities A/m² leaving the metal, by bare face
 */
export function leadsOf(
  problem: FieldProblem,
  { bare, edges }: Layout,
  { nx, ny, start }: Network,
  densities: Float64Array,
): readonly Lead[] {
  const { conductivity, kinetics, volts } = problem;
  const cellOf = ({ i, j, k }: BareFace): number => start + i + nx * (j + ny * k);
  const direct = bare.map((face, index): Lead => {
    const { resistance, offset } = straightened(kinetics[face.electrode], densities[index] as number);
    return {
      n: cellOf(face),
      // when only part of a face is bare, its current spreads through the bath in front of the whole face
      conductance: face.area / ((face.bareShare * face.depth) / conductivity + resistance),
      potential: metalVolts(face.electrode, volts) - offset,
      offset,
      faces: [index],
    };
  });
  const beside = edges.map((edge): Lead => {
    const own = edge.beside.map((index) => densities[index] as number);
    const mean = own.reduce((sum, one) => sum + one, 0) / own.length;
    const { resistance, offset } = straightened(kinetics[edge.electrode], mean);
    // polarisation makes the current at an edge less sharp
    const share = edge.share / (1 + (conductivity * resistance) / (2 * edge.depth));
    return {
      n: cellOf(edge),
      conductance: (share * edge.area) / (edge.depth / conductivity + resistance),
      potential: metalVolts(edge.electrode, volts) - offset,
      offset,
      faces: edge.beside,
    };
  });
  return [...direct, ...beside];
}

/**
 * Adds the connections to metal to the network's diagonals.
 * @returns right side, A
 */
export function joinMetal(network: Network, leads: readonly Lead[]): Float64Array {
  const f = new Float64Array(network.length);
  network.diagonal.fill(0);
  for (const { n, conductance, potential } of leads) {
    network.diagonal[n] = (network.diagonal[n] as number) + conductance;
    f[n] = (f[n] as number) + conductance * potential;
  }
  closeNetwork(network);
  return f;
}

/**
 * Current from each bare face into the bath, A. The current through an edge is shared out among the faces it
 * touches.
 */
export function currentsOf(leads: readonly Lead[], potentials: Float64Array, faces: number): Float64Array {
  const currents = new Float64Array(faces);
  for (const { n, conductance, potential, faces: own } of leads) {
    const each = (conductance * (potential - (potentials[n] as number))) / own.length;
    for (const face of own) currents[face] = (currents[face] as number) + each;
  }
  return currents;
}
