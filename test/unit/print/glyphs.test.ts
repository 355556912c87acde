import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { fontFiles } from '../../../src/cli/font-files.ts';
import { rareRanges, textRanges } from '../../../src/lib/print/glyphs.ts';
import { faces } from '../../../src/lib/print/paper.ts';
import { papers } from '../../../src/lib/print/papers.ts';
import { showable, typeset, typesetFormula } from '../../../src/lib/print/typeset.ts';
import { everyPlan, examples, planOf } from './printed.ts';

interface Font {
  readonly characterSet: readonly number[];
}
// The PDF library's own font reader: what it finds no glyph for is what would print as an empty box.
const requireFromLibrary = createRequire(createRequire(import.meta.url).resolve('pdfmake'));
const { openSync } = requireFromLibrary('fontkit') as { openSync: (path: string) => Font };

const files = fontFiles();
const glyphsOf = (...paths: string[]): Set<number> => {
  const [first = new Set<number>(), ...rest] = paths.map((path) => new Set(openSync(path).characterSet));
  return new Set([...first].filter((code) => rest.every((other) => other.has(code))));
};
const glyphs: Readonly<Record<string, Set<number>>> = {
  [faces.text]: glyphsOf(files.regular, files.bold),
  [faces.quiet]: glyphsOf(files.light, files.halfBold),
  [faces.rare]: glyphsOf(files.rare, files.rare),
};

/** Every text of a document with the face it is set in. */
function* textsOf(node: unknown, face: string): Generator<[text: string, face: string]> {
  if (typeof node === 'string') {
    yield [node, face];
  } else if (Array.isArray(node)) {
    for (const child of node) yield* textsOf(child, face);
  } else if (typeof node === 'object' && node !== null) {
    const entries = node as Record<string, unknown>;
    const own = typeof entries['font'] === 'string' ? entries['font'] : face;
    for (const key of ['text', 'stack', 'columns', 'section', 'content']) {
      if (key in entries) yield* textsOf(entries[key], own);
    }
    if ('table' in entries) yield* textsOf((entries['table'] as { body: unknown }).body, own);
    for (const key of ['header', 'footer']) {
      const make = entries[key];
      if (typeof make === 'function') {
        yield* textsOf((make as (page: number, pages: number) => unknown)(2, 34_567_890), own);
      }
    }
  }
}

const missingIn = (document: unknown): string[] => [
  ...new Set(
    [...textsOf(document, faces.text)].flatMap(([text, face]) =>
      Array.from(text)
        .filter((character) => !glyphs[face]?.has(character.codePointAt(0) ?? 0))
        .map((character) => `${character} in ${face}: ${text}`),
    ),
  ),
];

describe('the tables of glyphs', () => {
  test.each([
    ['text', textRanges, [faces.text, faces.quiet]],
    ['rare', rareRanges, [faces.rare]],
  ] as const)('of the %s face promise nothing that the fonts have not', (_name, ranges, which) => {
    for (const [first, last] of ranges) {
      for (let code = first; code <= last; code += 1) {
        for (const face of which) expect(glyphs[face]?.has(code), code.toString(16)).toBe(true);
      }
    }
  });
});

describe('the papers need no glyph that their faces lack', () => {
  test.each(examples)('for %s', (name) => {
    expect(missingIn(papers(planOf(name)))).toEqual([]);
  });

  test('for every metal, salt and resist, and any title', () => {
    const plans = everyPlan();
    expect(plans.length).toBeGreaterThan(10);
    for (const plan of plans) {
      const titled = { ...plan, job: { ...plan.job, title: 'Ż Привет 銀 🌸 ﷽ \u202e\ud83c' } };
      expect(missingIn(papers(titled))).toEqual([]);
    }
  });

  test('and the search for missing ones finds one', () => {
    expect(missingIn({ content: [{ stack: ['fine', { text: ['☐'] }] }] })).toHaveLength(1);
    expect(missingIn({ content: [{ table: { body: [[{ text: 'ρ' }]] } }] })).toHaveLength(1);
  });
});

describe('typesetting', () => {
  test('sets subscripts low and rare letters in the other face', () => {
    expect(typeset('V₀·ρ')).toEqual([
      { text: 'V' },
      { text: '0', sub: true },
      { text: '·' },
      { text: 'ρ', font: faces.rare },
    ]);
  });

  test('keeps the style of a run', () => {
    expect(typeset('a', { bold: true })).toEqual([{ text: 'a', bold: true }]);
  });

  test('sets the index of a symbol low, and no letter of a word', () => {
    expect(typesetFormula('Vw·Value')).toEqual([{ text: 'V' }, { text: 'w', sub: true }, { text: '·Value' }]);
  });

  test.each([
    ['one mark for one letter, however it is coded', '👩‍👩‍👧 x', '? x'],
    ['the plain letter where only its accent is missing', 'ḧ', 'h'],
    ['the sum sign for the Greek letter', 'Σ', '∑'],
    ['nothing for what controls but does not show', 'a\u202eb\u0007', 'ab'],
    ['a space for a line end', 'a\nb', 'a b'],
  ])('shows %s', (_what, text, shown) => {
    expect(showable(text)).toBe(shown);
  });
});
