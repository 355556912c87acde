/** Geometry of the section drawing. Everything below the resist has the same scale. */

const LEFT = 10;
const RIGHT = 270;
/** Ends of the open line in the resist. */
const [FROM, TO] = [95, 185] as const;
export const sectionTop = 44;
/** Depth at which a groove is drawn, and limits for how much of the sheet is shown. */
const DEPTH = 46;
const WHOLE = 100;
const MOST = 118;
const WIDEST = 60;

export interface CrossSection {
  /** Outline of the metal that remains. */
  readonly metal: string;
  readonly isThrough: boolean;
  /** y where a sheet too thick to show is broken off; null when all of it is shown. */
  readonly breakAt: number | null;
  readonly bottom: number;
  /** y of the floor of the groove. */
  readonly floor: number;
  /** x from where the metal begins to the edge of the resist. */
  readonly side: readonly [number, number];
  /** Drawing units per metre. */
  readonly scale: number;
}

/**
 * Lays out a groove under an open line, or one on each face.
 * @param thickness in m, as are depth and undercut
 */
export function sectionOf(thickness: number, depth: number, undercut: number, faces: 1 | 2): CrossSection {
  const isThrough = faces * depth >= thickness * 0.999;
  const scale =
    isThrough || faces === 2
      ? WHOLE / thickness
      : Math.min(DEPTH / depth, WIDEST / Math.max(undercut, Number.MIN_VALUE));
  const whole = thickness * scale;
  const bottom = sectionTop + Math.min(whole, MOST);
  const down = Math.min(depth * scale, whole / faces);
  const across = Math.min(undercut * scale, WIDEST);
  const [left, right] = [FROM - across, TO + across];
  const floor = sectionTop + down;
  const roof = bottom - down;
  const into = (x: number, y: number, sweep: 0 | 1): string => `A${across} ${down} 0 0 ${sweep} ${x} ${y}`;

  const top = `H${left}${into(FROM, floor, 0)}`;
  const end = `H${LEFT}z`;
  const under = faces === 2 ? `H${right}${into(TO, roof, 0)}H${FROM}${into(left, bottom, 0)}` : '';
  const metal = isThrough
    ? `M${LEFT} ${sectionTop}${top}${faces === 2 ? into(left, bottom, 0) : ''}${end}` +
      `M${RIGHT} ${sectionTop}H${right}${into(TO, floor, 1)}${faces === 2 ? into(right, bottom, 1) : ''}H${RIGHT}z`
    : `M${LEFT} ${sectionTop}${top}H${TO}${into(right, sectionTop, 0)}H${RIGHT}V${bottom}${under}${end}`;
  return {
    metal,
    isThrough,
    breakAt: whole > MOST ? bottom - 22 : null,
    bottom,
    floor,
    side: [left, FROM],
    scale,
  };
}

/** Drawing units per metre at life size, on a phone held upright; approximate. */
const LIFE = 3300;

/** Enlargement over life size, to one significant digit. */
export const enlargement = (scale: number): number => Number((scale / LIFE).toPrecision(1));
