import ts from 'typescript';
import { lineOf, type Script, type SourceText, visit } from './sourceText.ts';

/** Lines a code file may have. */
export const mostLines = 400;

const markers: readonly [RegExp, string][] = [
  [/@ts-(ignore|expect-error|nocheck)/, 'silences the compiler'],
  [/eslint-(disable|enable)/, 'silences the linter'],
  [/(svelte|knip|stylelint)-ignore/, 'silences a check'],
  [/(istanbul|v8|c8) ignore/, 'hides from coverage'],
  [/\bas any\b/, 'casts to any'],
  [/\b(TODO|FIXME|XXX)\b/, 'leaves work behind'],
];

const passedOver = new Set(['skip', 'only', 'todo', 'skipIf', 'runIf', 'fails']);
const testWords = new Set(['it', 'test', 'describe', 'suite', 'bench', 'ctx', 'context', 'task']);

/** What stands between quotes is text, not code: rules about code must not read it. */
function blankStrings(text: string, scripts: readonly Script[], offsets: readonly number[]): string {
  const letters = text.split('');
  scripts.forEach((script, index) => {
    const offset = offsets[index] ?? 0;
    visit(script, (node) => {
      const quoted =
        ts.isStringLiteralLike(node) ||
        ts.isRegularExpressionLiteral(node) ||
        ts.isTemplateHead(node) ||
        ts.isTemplateMiddleOrTemplateTail(node);
      if (!quoted) return;
      for (let at = node.getStart(script.tree); at < node.end; at += 1) {
        if (letters[at + offset] !== '\n') letters[at + offset] = ' ';
      }
    });
  });
  return letters.join('');
}

function findMarkers(source: SourceText): string[] {
  const offsets = source.scripts.map((script) => source.text.indexOf(script.tree.text));
  const lines = blankStrings(source.text, source.scripts, offsets).split('\n');
  return lines.flatMap((line, index) =>
    markers.flatMap(([marker, sentence]) => {
      const found = marker.exec(line);
      return found === null ? [] : [`${source.path}:${index + 1}: "${found[0]}" ${sentence}`];
    }),
  );
}

/** The word a chain such as `test.concurrent.only` starts with. */
function firstWord(node: ts.Expression): string {
  if (ts.isIdentifier(node)) return node.text;
  if (ts.isPropertyAccessExpression(node) || ts.isCallExpression(node)) return firstWord(node.expression);
  return '';
}

function findPassedOver(source: SourceText): string[] {
  if (!source.path.startsWith('tests/')) return [];
  const breaches: string[] = [];
  for (const script of source.scripts) {
    visit(script, (node) => {
      const word =
        ts.isPropertyAccessExpression(node) &&
        passedOver.has(node.name.text) &&
        testWords.has(firstWord(node.expression))
          ? node.name.text
          : undefined;
      if (word === undefined) return;
      breaches.push(`${source.path}:${lineOf(script, node)}: "${word}" passes over a test`);
    });
  }
  return breaches;
}

/** @returns one sentence for each suppression, skipped or lone test, work left behind, and for a file too long */
export function judgeTidiness(source: SourceText): string[] {
  const lines = source.text.replace(/\n$/, '').split('\n').length;
  const long = lines > mostLines ? [`${source.path}: ${lines} lines, ${mostLines} are allowed`] : [];
  return [...long, ...findMarkers(source), ...findPassedOver(source)];
}
