import type { Loop } from '../core/mask/outline.ts';
import type { ClassPack } from '../core/plan/class-pack.ts';
import type { Plan } from '../core/plan/plan.ts';
import type { ShelfBath } from './labelled-bath.ts';

/** The papers that can be made from a plan, in the order in which the file has them. */
export const paperKinds = ['sheet', 'card', 'label', 'strip', 'wear', 'list'] as const;
export type PaperKind = (typeof paperKinds)[number];

/** The codes on a paper that lead back to its settings. */
export interface JobMarks {
  /** eight letters that name the job in the notebook that printed it */
  readonly code: string;
  /** text of the QR code, with all settings */
  readonly carried: string;
}

/** Which papers to make. */
export interface PapersOrder {
  readonly kinds: readonly PaperKind[];
  /** null: papers without codes */
  readonly marks: JobMarks | null;
}

/** The three papers of a job. */
export const jobPapers: PapersOrder = { kinds: ['sheet', 'card', 'label'], marks: null };

/** Labels of baths on the shelf, on sheets of several. */
export interface LabelsOrder {
  readonly paper: Plan['job']['paper'];
  readonly baths: readonly { readonly bath: ShelfBath; readonly copies: number }[];
  /** number of places on the first sheet that are used already */
  readonly skip: number;
}

/** A design in its true size, for printing on film or paper. Lengths in mm. */
export interface StencilOrder {
  readonly paper: Plan['job']['paper'];
  /** closed lines around the resist, filled by the even-odd rule */
  readonly loops: readonly Loop[];
  readonly width: number;
  readonly height: number;
  /** factor that corrects a printer that shrinks or stretches */
  readonly scale: number;
  readonly copies: number;
  readonly isMirrored: boolean;
  /** dark where metal will be bare */
  readonly isNegative: boolean;
}

/** Papers for a class: a sheet for whoever leads it, a card for each station, what hangs there, the labels. */
export interface ClassOrder {
  readonly paper: Plan['job']['paper'];
  readonly plan: Plan;
  readonly pack: ClassPack;
  /** a name for each piece of each station, empty where none was typed */
  readonly names: readonly (readonly string[])[];
}

/** Everything that can be ordered. */
export type PressOrder =
  | { readonly kind: 'job'; readonly plan: Plan; readonly order: PapersOrder }
  | { readonly kind: 'labels'; readonly order: LabelsOrder }
  | { readonly kind: 'stencil'; readonly order: StencilOrder }
  | { readonly kind: 'class'; readonly order: ClassOrder };
