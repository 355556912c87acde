import type { Shares } from '../../core/mask/shares.ts';

/** Geometry of the mask drawing: the piece from above, and a cut through it after the bite. */

/** A bare stretch along the cut. Both ends are shares of the width of the piece. */
export type Run = readonly [from: number, to: number];

const FULL = 15;
/** The section shows a cell either bare or painted: from half bare it counts as bare. */
const HALF = 8;
/** Narrower stretches could not be seen in the section. Shares of the width. */
const LEAST_BARE = 0.06;
const LEAST_LAND = 0.1;
/** The rim is always painted, even where the drawing has it bare. */
const RIM = 0.06;
/** More grooves than this make the section no clearer. */
const ENOUGH = 3;

const at = ({ columns, cells }: Shares, row: number, column: number): number =>
  parseInt(cells.charAt(row * columns + column), 16);

/**
 * One path for the bare metal seen from above: full cells joined to bars, partly bare ones as smaller
 * squares.
 */
export function barePath(shares: Shares, width: number, height: number): string {
  const { columns, rows } = shares;
  const [w, h] = [width / columns, height / rows];
  const box = (x: number, y: number, wide: number, high: number): string =>
    `M${x.toFixed(1)} ${y.toFixed(1)}h${wide.toFixed(1)}v${high.toFixed(1)}h${(-wide).toFixed(1)}z`;
  const parts: string[] = [];
  for (let row = 0; row < rows; row += 1) {
    const y = height - (row + 1) * h;
    for (let column = 0; column < columns; column += 1) {
      const share = at(shares, row, column);
      if (share === 0) continue;
      if (share < FULL) {
        const side = Math.sqrt(share / FULL);
        parts.push(box((column + (1 - side) / 2) * w, y + ((1 - side) / 2) * h, side * w, side * h));
        continue;
      }
      const from = column;
      while (column + 1 < columns && at(shares, row, column + 1) === FULL) column += 1;
      parts.push(box(from * w, y, (column + 1 - from) * w, h));
    }
  }
  return parts.join('');
}

/** Bare stretches of a row, without those too narrow to draw. */
function runsOf(shares: Shares, row: number, least: number): readonly Run[] {
  const { columns } = shares;
  const raw: [number, number][] = [];
  for (let column = 0; column < columns; column += 1) {
    if (at(shares, row, column) < least) continue;
    const [from, to] = [Math.max(RIM, column / columns), Math.min(1 - RIM, (column + 1) / columns)];
    const last = raw.at(-1);
    if (last && from - last[1] < LEAST_LAND) last[1] = Math.max(last[1], to);
    else raw.push([from, to]);
  }
  return raw.filter(([from, to]) => to - from >= LEAST_BARE);
}

/** The row where the piece is cut, counted from its foot, and the bare stretches along it. */
export interface Cut {
  readonly row: number;
  readonly bare: readonly Run[];
}

/** Chooses the row with the most grooves (up to ENOUGH), as near the middle as possible. */
export function cutOf(shares: Shares): Cut {
  const middle = Math.floor((shares.rows - 1) / 2);
  const off = (row: number): number => Math.abs(row - middle) / shares.rows;
  const best = (least: number): Cut | undefined =>
    Array.from({ length: shares.rows }, (_, row) => ({ row, bare: runsOf(shares, row, least) }))
      .filter(({ bare }) => bare.length > 0)
      .toSorted(
        (a, b) =>
          Math.min(b.bare.length, ENOUGH) - off(b.row) - (Math.min(a.bare.length, ENOUGH) - off(a.row)),
      )[0];
  // With only lines finer than half a cell, take any bare cell; with none at all, draw one groove in the
  // middle.
  return best(HALF) ?? best(1) ?? { row: middle, bare: [[0.4, 0.6]] };
}

/**
 * Whether a point of the leaf is bare: the leaf is half as wide as long, and its ribs stay painted.
 * @param u across, −1 to 1
 * @param v along, 0 to 1
 */
function isLeaf(u: number, v: number): boolean {
  const half = 0.82 * Math.sin(Math.PI * Math.min(1, Math.max(0, (v - 0.08) / 0.84))) ** 0.8;
  if (Math.abs(u) >= half || Math.abs(u) < 0.07) return false;
  const rib = (v - 0.35 * Math.abs(u)) * 5;
  return rib - Math.floor(rib) > 0.28;
}

const COLUMNS = 96;
const SAMPLES = 2;

/**
 * A leaf as an example where there is no drawing; it lies along the longer side. Both sides in the same unit.
 */
export function exampleShares(width: number, height: number): Shares {
  const longest = Math.max(width, height);
  const [columns, rows] = [width, height].map((side) =>
    Math.max(8, Math.round((COLUMNS * side) / longest)),
  ) as [number, number];
  const cell = (row: number, column: number): string => {
    let bare = 0;
    for (let n = 0; n < SAMPLES * SAMPLES; n += 1) {
      const x = (column + ((n % SAMPLES) + 0.5) / SAMPLES) / columns;
      const y = (row + (Math.floor(n / SAMPLES) + 0.5) / SAMPLES) / rows;
      if (width > height ? isLeaf(2 * y - 1, x) : isLeaf(2 * x - 1, y)) bare += 1;
    }
    return Math.round((FULL * bare) / (SAMPLES * SAMPLES)).toString(16);
  };
  return {
    columns,
    rows,
    cells: Array.from({ length: columns * rows }, (_, n) => cell(Math.floor(n / columns), n % columns)).join(
      '',
    ),
  };
}

/** Sizes of the section, in units of the drawing. */
export const section = { width: 220, thickness: 44, depth: 20, paint: 7, undercut: 5 } as const;

/** What is bitten: one face, both faces, or right through. */
export type Bite = 'one' | 'both' | 'through';

export interface MaskSection {
  /** Outline of the metal that remains; its upper face is at y = 0. */
  readonly metal: string;
  /** Resist: on the faces between the grooves, round the edges, and over a face that is not bitten. */
  readonly paint: string;
  /** x of the middle of each groove. */
  readonly grooves: readonly number[];
  /** Depth of the grooves. */
  readonly depth: number;
}

export function maskSection(bare: readonly Run[], bite: Bite): MaskSection {
  const { width, thickness, paint, undercut } = section;
  const depth = bite === 'through' ? thickness : bite === 'both' ? 15 : section.depth;
  const runs = bare.map(([from, to]) => [from * width, to * width] as const);
  const bar = (x: number, y: number, wide: number, high: number): string =>
    `M${x} ${y}h${wide}v${high}h${-wide}z`;
  /** Painted stretches of a face, including the paint on the edges. */
  const lands = [...runs, [width + paint, 0] as const].map(([from], n) => {
    const start = n === 0 ? -paint : (runs[n - 1]?.[1] ?? 0);
    return [start, from - start] as const;
  });
  const onFace = (y: number): string => lands.map(([x, wide]) => bar(x, y, wide, paint)).join('');
  const top = runs
    .map(
      ([from, to]) =>
        `H${from - undercut}A${undercut} ${depth} 0 0 0 ${from} ${depth}H${to}A${undercut} ${depth} 0 0 0 ${to + undercut} 0`,
    )
    .join('');
  const under = [...runs]
    .reverse()
    .map(
      ([from, to]) =>
        `H${to + undercut}A${undercut} ${depth} 0 0 0 ${to} ${thickness - depth}H${from}A${undercut} ${depth} 0 0 0 ${from - undercut} ${thickness}`,
    )
    .join('');
  const pieces = lands.map(([x, wide], n) => {
    const from = n === 0 ? 0 : x + undercut;
    const to = n === runs.length ? width : x + wide - undercut;
    return bar(from, 0, to - from, thickness);
  });
  return {
    metal:
      bite === 'through'
        ? pieces.join('')
        : `M0 0${top}H${width}V${thickness}${bite === 'both' ? under : ''}H0z`,
    paint:
      onFace(-paint) +
      bar(-paint, -paint, paint, thickness + 2 * paint) +
      bar(width, -paint, paint, thickness + 2 * paint) +
      (bite === 'both' ? onFace(thickness) : bar(-paint, thickness, width + 2 * paint, paint)),
    grooves: runs.map(([from, to]) => (from + to) / 2),
    depth,
  };
}
