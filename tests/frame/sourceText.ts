import { createRequire } from 'node:module';
import type * as SvelteCompiler from 'svelte/compiler';
import ts from 'typescript';

/** Loaded as it lies: sent through the test runner's transforms, the compiler takes seconds to read. */
const { parse } = createRequire(import.meta.url)('svelte/compiler') as typeof SvelteCompiler;

/** One stretch of TypeScript: a whole file, or one script of a Svelte component. */
export interface Script {
  readonly tree: ts.SourceFile;
  /** Lines of the file above this stretch. */
  readonly linesAbove: number;
}

/** A code file taken apart once, for every rule to read. Paths use `/` and start at the repository root. */
export interface SourceText {
  readonly path: string;
  readonly text: string;
  readonly scripts: readonly Script[];
  /** Specifiers of `import(…)` in a component's markup. */
  readonly markupImports: readonly string[];
}

const treeOf = (path: string, text: string): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.TS);

function collectMarkupImports(node: unknown, found: string[]): void {
  if (Array.isArray(node)) {
    for (const item of node) collectMarkupImports(item, found);
    return;
  }
  if (typeof node !== 'object' || node === null) return;
  const record = node as Record<string, unknown>;
  if (record.type === 'ImportExpression') {
    const source = record.source as { value?: unknown };
    found.push(typeof source.value === 'string' ? source.value : '(computed)');
  }
  for (const value of Object.values(record)) collectMarkupImports(value, found);
}

/** @throws when a component is not valid Svelte */
export function parseSource(path: string, text: string): SourceText {
  if (!path.endsWith('.svelte')) {
    return { path, text, scripts: [{ tree: treeOf(path, text), linesAbove: 0 }], markupImports: [] };
  }
  const component = parse(text, { modern: true });
  const scripts = [component.module, component.instance].flatMap((script) => {
    if (script === null || script === undefined) return [];
    const { start, end } = script.content as unknown as { start: number; end: number };
    return [
      { tree: treeOf(path, text.slice(start, end)), linesAbove: text.slice(0, start).split('\n').length - 1 },
    ];
  });
  const markupImports: string[] = [];
  collectMarkupImports(component.fragment, markupImports);
  return { path, text, scripts, markupImports };
}

/** Line number in the file, from 1. */
export const lineOf = (script: Script, node: ts.Node): number =>
  script.tree.getLineAndCharacterOfPosition(node.getStart(script.tree)).line + 1 + script.linesAbove;

/** Visits every node of a script, parents before children. */
export function visit(script: Script, see: (node: ts.Node) => void): void {
  const walk = (node: ts.Node): void => {
    see(node);
    ts.forEachChild(node, walk);
  };
  walk(script.tree);
}
