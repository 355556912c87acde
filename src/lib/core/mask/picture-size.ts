/** Kinds of picture that are accepted. The first bytes tell the kind; the file's name does not count. */
export type PictureKind = 'png' | 'jpeg' | 'webp' | 'svg';

export interface PictureHead {
  readonly kind: PictureKind;
  /** pixels, before any rotation; null for a drawing, which has none */
  readonly width: number | null;
  readonly height: number | null;
}

const startsWith = (bytes: Uint8Array, text: string, at = 0): boolean =>
  Array.from(text, (letter) => letter.charCodeAt(0)).every((code, n) => bytes[at + n] === code);

/** Size of a JPEG, from its first start-of-frame segment. */
function jpegSize(bytes: Uint8Array, view: DataView): readonly [number, number] | null {
  for (let at = 2; at + 9 < bytes.length;) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] as number;
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return [view.getUint16(at + 7), view.getUint16(at + 5)];
    at += 2 + view.getUint16(at + 2);
  }
  return null;
}

function webpSize(bytes: Uint8Array, view: DataView): readonly [number, number] | null {
  if (bytes.length < 30) return null;
  const at24 = (at: number): number => view.getUint16(at, true) + ((bytes[at + 2] as number) << 16);
  if (startsWith(bytes, 'VP8X', 12)) return [at24(24) + 1, at24(27) + 1];
  if (startsWith(bytes, 'VP8L', 12)) {
    const bits = view.getUint32(21, true);
    return [(bits & 0x3fff) + 1, ((bits >> 14) & 0x3fff) + 1];
  }
  return [view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff];
}

/**
 * Kind and size of a picture file, read without opening the picture.
 * @param bytes its beginning; half a megabyte is enough for a photograph
 * @returns null when it is not a picture of these kinds, or ends before its size
 */
export function pictureHead(bytes: Uint8Array): PictureHead | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const sized = (kind: PictureKind, size: readonly [number, number] | null): PictureHead | null =>
    size === null || size[0] === 0 || size[1] === 0 ? null : { kind, width: size[0], height: size[1] };
  if (startsWith(bytes, '\x89PNG\r\n\x1a\n'))
    return bytes.length < 24 ? null : sized('png', [view.getUint32(16), view.getUint32(20)]);
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return sized('jpeg', jpegSize(bytes, view));
  if (startsWith(bytes, 'RIFF') && startsWith(bytes, 'WEBP', 8)) return sized('webp', webpSize(bytes, view));
  const text = String.fromCharCode(...bytes.subarray(0, 2000));
  return /^\s*(\ufeff)?(<\?xml|<!--|<!DOCTYPE svg|<svg)/i.test(text) && /<svg[\s>]/i.test(text)
    ? { kind: 'svg', width: null, height: null }
    : null;
}

/** Whether a drawing defines entities. Nested ones can grow without limit when it is read. */
export const isBomb = (svg: string): boolean => /<!ENTITY|<!DOCTYPE[^>]*\[/i.test(svg);
