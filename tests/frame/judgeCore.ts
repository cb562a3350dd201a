import ts from 'typescript';
import { lineOf, type SourceText, visit } from './sourceText.ts';

/** Everything else of Math may differ by a last bit between engines, or draws from the platform. */
const mathAllowed = new Set(['sqrt', 'abs', 'min', 'max', 'floor', 'ceil', 'trunc', 'sign', 'imul', 'PI']);

/** Clocks, chance, languages, the page and the process: a run must not depend on where it runs. */
const strangers = new Set(
  (
    'Date performance setTimeout setInterval setImmediate clearTimeout clearInterval queueMicrotask ' +
    'requestAnimationFrame requestIdleCallback Intl crypto Promise ' +
    'window document navigator location localStorage sessionStorage indexedDB fetch self globalThis process console'
  ).split(' '),
);

const namesRefused = /^(localeCompare|toLocale\w*)$/;
const sorts = new Set(['sort', 'toSorted']);

/** True where an identifier only labels a member, a key or a type's field, and so refers to nothing outside. */
function isLabel(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isPropertyAccessExpression(parent) || ts.isMetaProperty(parent)) return parent.name === node;
  if (ts.isQualifiedName(parent)) return parent.right === node;
  if (ts.isShorthandPropertyAssignment(parent)) return false;
  const named =
    ts.isPropertyAssignment(parent) ||
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isEnumMember(parent);
  if (named) return parent.name === node;
  return ts.isBindingElement(parent) && parent.propertyName === node;
}

function judgeIdentifier(node: ts.Identifier): string | undefined {
  if (namesRefused.test(node.text)) return `${node.text} speaks the language of the machine it runs on`;
  if (isLabel(node)) return undefined;
  if (node.text === 'Math') {
    const parent = node.parent;
    const member =
      ts.isPropertyAccessExpression(parent) && parent.expression === node ? parent.name.text : undefined;
    if (member === undefined) return 'Math is used only by naming one of its members';
    return mathAllowed.has(member) ? undefined : `Math.${member} is not the same on every engine`;
  }
  return strangers.has(node.text) ? `${node.text} is not for the core` : undefined;
}

function judgeNode(node: ts.Node): string | undefined {
  if (ts.isIdentifier(node)) return judgeIdentifier(node);
  if (node.kind === ts.SyntaxKind.AsyncKeyword || ts.isAwaitExpression(node)) return 'the core does not wait';
  if (ts.isForOfStatement(node) && node.awaitModifier !== undefined) return 'the core does not wait';
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return 'the core loads nothing later';
  }
  const power = [ts.SyntaxKind.AsteriskAsteriskToken, ts.SyntaxKind.AsteriskAsteriskEqualsToken];
  if (ts.isBinaryExpression(node) && power.includes(node.operatorToken.kind)) {
    return '** is not the same on every engine';
  }
  if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
    const bare = sorts.has(node.expression.name.text) && node.arguments.length === 0;
    return bare ? `${node.expression.name.text}() needs a comparator` : undefined;
  }
  if (ts.isElementAccessExpression(node) && ts.isStringLiteralLike(node.argumentExpression)) {
    const key = node.argumentExpression.text;
    return namesRefused.test(key) || sorts.has(key) ? `["${key}"] hides a call the core refuses` : undefined;
  }
  return undefined;
}

/** @returns one sentence for everything in a core file that could make two machines disagree */
export function judgeCore(source: SourceText): string[] {
  if (!source.path.startsWith('src/core/')) return [];
  if (!source.path.endsWith('.ts')) return [`${source.path}: the core is plain TypeScript`];
  const breaches: string[] = [];
  for (const script of source.scripts) {
    visit(script, (node) => {
      const breach = judgeNode(node);
      if (breach !== undefined) breaches.push(`${source.path}:${lineOf(script, node)}: ${breach}`);
    });
  }
  return breaches;
}
