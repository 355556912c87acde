/** Digits that a number keeps: makers do not type more. */
export const DIGITS = 6;

/** Powers of ten that a number may have, and the bits they take. */
const exponent = { least: -8, most: 7, bits: 4 } as const;

/** Bits in one group of a mantissa. One more bit says whether another group follows. */
const GROUP = 3;

/** No number of six digits needs more groups than this. */
const MOST_GROUPS = 8;

/** Thrown when there are no more bits, or for a number that the writer never writes. */
export class BadBits extends Error {
  override readonly name = 'BadBits';
}

/** Writes fields one after another, each from its highest bit. */
export class BitWriter {
  readonly #bits: boolean[] = [];

  put(value: number, width: number): void {
    for (let at = width - 1; at >= 0; at -= 1) this.#bits.push(((value >> at) & 1) === 1);
  }

  /** A number from zero up, kept to six digits. */
  putNumber(value: number): void {
    const { mantissa, power } = decimal(value);
    this.put(power - exponent.least, exponent.bits);
    let rest = mantissa;
    do {
      const next = Math.floor(rest / 2 ** GROUP);
      this.put(next > 0 ? 1 : 0, 1);
      this.put(rest % 2 ** GROUP, GROUP);
      rest = next;
    } while (rest > 0);
  }

  /** All bytes written, the last one filled up with zeros. */
  bytes(): Uint8Array {
    const bytes = new Uint8Array(Math.ceil(this.#bits.length / 8));
    this.#bits.forEach((bit, i) => {
      if (bit) bytes[i >> 3] = (bytes[i >> 3] ?? 0) | (0x80 >> (i & 7));
    });
    return bytes;
  }
}

/** Reads what a `BitWriter` wrote. */
export class BitReader {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  /** @throws BadBits past the end */
  take(width: number): number {
    if (this.#at + width > this.#bytes.length * 8) throw new BadBits('it ends too early');
    let value = 0;
    for (let i = 0; i < width; i += 1, this.#at += 1) {
      value = (value << 1) | (((this.#bytes[this.#at >> 3] ?? 0) >> (7 - (this.#at & 7))) & 1);
    }
    return value;
  }

  /** @throws BadBits */
  takeNumber(): number {
    const power = this.take(exponent.bits) + exponent.least;
    let mantissa = 0;
    for (let group = 0; ; group += 1) {
      if (group === MOST_GROUPS) throw new BadBits('a number has too many digits');
      const more = this.take(1);
      mantissa += this.take(GROUP) * 2 ** (GROUP * group);
      if (more === 0) break;
    }
    return Number(`${mantissa}e${power}`);
  }
}

/** A number as a whole mantissa without zeros at its end, and a power of ten. */
function decimal(value: number): { mantissa: number; power: number } {
  if (!Number.isFinite(value) || value < 0) throw new RangeError(`found ${value}, expected zero or more`);
  const [digits = '0', power = '0'] = value.toExponential(DIGITS - 1).split('e');
  const plain = digits.replace('.', '').replace(/0+$/, '') || '0';
  const found = { mantissa: Number(plain), power: Number(power) - (plain.length - 1) };
  if (found.mantissa === 0) return { mantissa: 0, power: 0 };
  if (found.power > exponent.most) {
    return { mantissa: found.mantissa * 10 ** (found.power - exponent.most), power: exponent.most };
  }
  if (found.power >= exponent.least) return found;
  // with more decimals than the smallest power allows, the number is rounded
  const rounded = Math.round(value * 10 ** -exponent.least);
  return rounded === 0 ? { mantissa: 0, power: 0 } : decimal(Number(`${rounded}e${exponent.least}`));
}
