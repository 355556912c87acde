/** One 45° hatch as an SVG path: lines from lower left to upper right, clipped to the rectangle. */
export function hatchPath(x: number, y: number, width: number, height: number, spacing: number): string {
  const lines: string[] = [];
  for (let c = spacing / 2; c < width + height; c += spacing) {
    const [x1, y1] = [Math.max(0, c - height), Math.min(c, height)];
    const [x2, y2] = [Math.min(c, width), Math.max(0, c - width)];
    lines.push(`M${round(x + x1)} ${round(y + y1)}L${round(x + x2)} ${round(y + y2)}`);
  }
  return lines.join('');
}

/** Short numbers keep the drawing, and so the file, small. */
export const round = (value: number): string => String(Math.round(value * 100) / 100);

/** Wraps shapes into an SVG of its own size, pt. */
export const svg = (width: number, height: number, shapes: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${round(width)}" height="${round(height)}" viewBox="0 0 ${round(width)} ${round(height)}">${shapes}</svg>`;
