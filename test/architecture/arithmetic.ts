/** Finds arithmetic in components: a screen shows what core and session have worked out. */
import { parse } from 'svelte/compiler';
import type { SourceFile } from './rooms.ts';

/** Where drawings compute where their lines go: a folder, and the beginning of a path. */
const drawings = ['src/lib/ui/drawing/', 'src/lib/ui/kit/Chart'];

/** Drawings that live beside their screen, each with what it works out. Nothing else may. */
export const drawingComponents: Readonly<Record<string, string>> = {
  'src/lib/ui/artwork/DesignView.svelte': 'marks sized by the picture they lie on',
  'src/lib/ui/artwork/PointPicker.svelte': 'a finger’s place in the picture',
  'src/lib/ui/class/EveningDrawing.svelte': 'bars along an evening',
  'src/lib/ui/job/etch/RunStrip.svelte': 'a run as a strip',
  'src/lib/ui/job/metal/DepthMark.svelte': 'a depth in its sheet',
  'src/lib/ui/job/metal/WhichMetal.svelte': 'a stamp as wide as its letters',
  'src/lib/ui/job/sheet/AmpsDrawing.svelte': 'a chart of amps',
  'src/lib/ui/job/strip/ScrapDrawing.svelte': 'windows on a scrap, to scale',
  'src/lib/ui/job/strip/StripChart.svelte': 'a chart of a test strip',
  'src/lib/ui/papers/PagesView.svelte': 'a page as wide as its place',
  'src/lib/ui/shell/StepRail.svelte': 'plates side by side',
};

const operators = ['*', '/', '%', '**', '*=', '/=', '%=', '**='];

interface Node {
  readonly type?: string;
  readonly start?: number;
  readonly operator?: string;
  readonly object?: { readonly name?: string };
}

const isArithmetic = ({ type, operator, object }: Node): boolean =>
  ((type === 'BinaryExpression' || type === 'AssignmentExpression') && operators.includes(operator ?? '')) ||
  (type === 'MemberExpression' && object?.name === 'Math');

/** Products, quotients and `Math` in a component's scripts and expressions, one a line, unless it is a drawing. */
export function arithmeticFaults({ path, text }: SourceFile): string[] {
  if (!path.endsWith('.svelte')) return [];
  if (path in drawingComponents || drawings.some((start) => path.startsWith(start))) return [];
  const lines = new Set<number>();
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(visit);
    else if (typeof value === 'object' && value !== null) {
      const node: Node = value;
      if (isArithmetic(node)) lines.add(text.slice(0, node.start).split('\n').length);
      Object.values(node).forEach(visit);
    }
  };
  const { fragment, instance, module } = parse(text, { modern: true });
  visit([fragment, instance, module]);
  return [...lines].map((line) => `${path}:${line}: computes; call a named function of core or session`);
}
