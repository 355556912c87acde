import ts from 'typescript';

/** What texts may not hold: amounts of their own, which would stay when the fact or the limit changes. */

/** Digits that are names, not amounts, and why each may stand in a text. */
export const names: readonly { readonly why: string; readonly text: RegExp }[] = [
  { why: 'alloys are bought by these numbers', text: /\b(?:C\d{3}(?:00)?|CZ106|CuZn30)\b/g },
  { why: 'brass and bronze are called by their shares', text: /\b\d\d\/\d\d\b/g },
  { why: 'steel and aluminium are bought by number', text: /\b(?:stainless steel 3\d\d|aluminium 6061)\b/g },
  { why: 'silver is called and stamped by its fineness', text: /^9\d\d(?: silver)?$|\b800 or 900$/g },
  { why: 'sizes of paper', text: /\bA[46]\b/g },
  { why: 'laws and standards are called so', text: /\b40 CFR 261\.24\b|\bASTM G102\b/g },
  { why: 'the edition of a list', text: /\bDecember 2021 \(ATP17\)/g },
  { why: 'marks that stand on goggles', text: /“D?3”/g },
  { why: 'full size, as printers call it', text: /\bat 100 %/g },
  { why: 'the whole of a share', text: /\bat most 100 %/g },
  { why: 'months are counted so, and only a fault of ours says it', text: /\b0 to 11 expected$/g },
  { why: 'how solubility is told', text: /^g\/100g water$/g },
  { why: 'nothing at all', text: /\b(?:above|more than) 0\b|\b0 cancels\b/g },
  { why: 'what is typed may look so', text: /\bsuch as (?:7K2M-9QXA|1\.20)\b/g },
];

const withoutNames = (text: string): string =>
  names.reduce((left, name) => left.replace(name.text, ''), text);

/** Amounts in words stay as stubbornly as those in digits. */
const inWords =
  /\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|forty|fifty|hundred)[ \u00a0-](?:volts?|amps?|degrees|grams?|per cent|milli\w+|inch(?:es)?)\b/i;

/** Keys whose strings are compared and filed, never shown. */
const filed = /^(?:id|value)$/;
/** What cuts and pads strings takes patterns, not texts. */
const shapers = new Set(['padStart', 'replace', 'replaceAll']);
/** What writes an amount: its number comes from elsewhere. */
const writers = new Set(['amountText', 'lengthText', 'plain', 'rulerText', 'significant', 'withUnit']);

const calledName = ({ expression }: ts.CallExpression): string =>
  ts.isPropertyAccessExpression(expression) ? expression.name.text : expression.getText();

/** Whether a string is looked up, compared, filed or shaped with: it is no text. */
function isShown(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isPropertyAssignment(parent))
    return parent.name !== node && !filed.test(parent.name.getText().replace(/['"]/g, ''));
  if (ts.isBinaryExpression(parent)) return parent.operatorToken.kind === ts.SyntaxKind.PlusToken;
  if (ts.isCallExpression(parent)) return !shapers.has(calledName(parent));
  return !ts.isLiteralTypeNode(parent) && !ts.isElementAccessExpression(parent);
}

/** Every node of a file but what it imports. */
function nodesOf(source: string): ts.Node[] {
  const found: ts.Node[] = [];
  const step = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    found.push(node);
    ts.forEachChild(node, step);
  };
  step(ts.createSourceFile('texts.ts', source, ts.ScriptTarget.Latest, true));
  return found;
}

/**
 * Texts of a file, and the parts of those with blanks.
 * @param isId whether a whole string is an id that the core knows: a unit, a metal, a figure
 */
export const textsIn = (source: string, isId: (text: string) => boolean): string[] =>
  nodesOf(source).flatMap((node) => {
    if (ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) return [node.text];
    return ts.isStringLiteralLike(node) && isShown(node) && !isId(node.text) ? [node.text] : [];
  });

const isWritten = (node: ts.Node): boolean =>
  ts.isNumericLiteral(node) &&
  (ts.isTemplateSpan(node.parent) ||
    (ts.isCallExpression(node.parent) &&
      node.parent.arguments[0] === node &&
      writers.has(calledName(node.parent))));

/** Amounts that are typed into the texts of a file. */
export function typedNumbers(path: string, source: string, isId: (text: string) => boolean): string[] {
  const texts = textsIn(source, isId).filter((text) => /\d/.test(withoutNames(text)) || inWords.test(text));
  const written = nodesOf(source)
    .filter(isWritten)
    .map(({ parent }) => parent.getText());
  return [...texts, ...written].map((text) => `${path}: types an amount in "${text}"`);
}
