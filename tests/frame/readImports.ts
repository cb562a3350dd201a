import ts from 'typescript';
import { lineOf, type Script, type SourceText, visit } from './sourceText.ts';

/** One import of any kind: static, dynamic, re-export, type, worker or glob. */
export interface ImportSeen {
  readonly specifier: string;
  readonly typeOnly: boolean;
  /** Names taken, as the other side exports them; `all` for a namespace, a whole re-export or a dynamic import. */
  readonly names: readonly string[] | 'all';
  readonly line: number;
}

const computed = '(computed)';

const literal = (node: ts.Node | undefined): string =>
  node !== undefined && ts.isStringLiteralLike(node) ? node.text : computed;

function readImportDeclaration(node: ts.ImportDeclaration): Omit<ImportSeen, 'line'> {
  const specifier = literal(node.moduleSpecifier);
  const clause = node.importClause;
  if (clause === undefined) return { specifier, typeOnly: false, names: 'all' };
  const bindings = clause.namedBindings;
  const wholeIsType = clause.phaseModifier === ts.SyntaxKind.TypeKeyword;
  if (bindings !== undefined && ts.isNamespaceImport(bindings)) {
    return { specifier, typeOnly: wholeIsType, names: 'all' };
  }
  const elements = bindings?.elements ?? [];
  const named = elements.map((element) => (element.propertyName ?? element.name).text);
  const names = clause.name === undefined ? named : ['default', ...named];
  const eachIsType = clause.name === undefined && elements.length > 0 && elements.every((e) => e.isTypeOnly);
  return { specifier, typeOnly: wholeIsType || eachIsType, names };
}

function readExportDeclaration(node: ts.ExportDeclaration): Omit<ImportSeen, 'line'> | undefined {
  if (node.moduleSpecifier === undefined) return undefined;
  const specifier = literal(node.moduleSpecifier);
  const clause = node.exportClause;
  if (clause === undefined || !ts.isNamedExports(clause)) {
    return { specifier, typeOnly: node.isTypeOnly, names: 'all' };
  }
  const names = clause.elements.map((element) => (element.propertyName ?? element.name).text);
  const eachIsType = clause.elements.length > 0 && clause.elements.every((element) => element.isTypeOnly);
  return { specifier, typeOnly: node.isTypeOnly || eachIsType, names };
}

const isMetaUrl = (node: ts.Node | undefined): boolean =>
  node !== undefined && node.getText().replace(/\s/g, '') === 'import.meta.url';

/** A folder's address loads nothing. */
const isFolder = (address: string): boolean => address.endsWith('/');

/** Globs may be one string or a list of them. */
function readGlob(node: ts.CallExpression): string[] {
  const first = node.arguments[0];
  if (first !== undefined && ts.isArrayLiteralExpression(first)) return first.elements.map(literal);
  return [literal(first)];
}

function readCall(node: ts.CallExpression): string[] {
  if (node.expression.kind === ts.SyntaxKind.ImportKeyword) return [literal(node.arguments[0])];
  const called = node.expression.getText().replace(/\s/g, '');
  if (called === 'import.meta.glob') return readGlob(node);
  return called === 'require' || called === 'require.resolve' ? [literal(node.arguments[0])] : [];
}

function readNode(node: ts.Node): Omit<ImportSeen, 'line'>[] {
  const whole = (specifier: string, typeOnly = false): Omit<ImportSeen, 'line'> => ({
    specifier,
    typeOnly,
    names: 'all',
  });
  if (ts.isImportDeclaration(node)) return [readImportDeclaration(node)];
  if (ts.isExportDeclaration(node)) {
    const seen = readExportDeclaration(node);
    return seen === undefined ? [] : [seen];
  }
  if (ts.isImportEqualsDeclaration(node) && ts.isExternalModuleReference(node.moduleReference)) {
    return [whole(literal(node.moduleReference.expression), node.isTypeOnly)];
  }
  if (ts.isImportTypeNode(node)) {
    const argument = node.argument;
    const specifier = ts.isLiteralTypeNode(argument) ? literal(argument.literal) : computed;
    const first = node.qualifier?.getText().split('.', 1)[0];
    return [{ specifier, typeOnly: true, names: first === undefined ? 'all' : [first] }];
  }
  if (ts.isCallExpression(node)) return readCall(node).map((specifier) => whole(specifier));
  if (ts.isNewExpression(node) && node.expression.getText() === 'URL' && isMetaUrl(node.arguments?.[1])) {
    const address = literal(node.arguments?.[0]);
    return isFolder(address) ? [] : [whole(address)];
  }
  return [];
}

function readScript(script: Script): ImportSeen[] {
  const seen: ImportSeen[] = [];
  visit(script, (node) => {
    for (const found of readNode(node)) seen.push({ ...found, line: lineOf(script, node) });
  });
  return seen;
}

/** Every import of a file, in order; one whose address is computed at run time reads `(computed)`. */
export function readImports(source: SourceText): ImportSeen[] {
  const inMarkup = source.markupImports.map((specifier): ImportSeen => ({
    specifier,
    typeOnly: false,
    names: 'all',
    line: 1,
  }));
  return [...source.scripts.flatMap(readScript), ...inMarkup];
}

/** The names a file exports itself; a whole re-export of another file adds none. */
export function readExportedNames(source: SourceText): Set<string> {
  const names = new Set<string>();
  const isExported = (node: ts.Node): boolean =>
    ts.canHaveModifiers(node) &&
    (ts.getModifiers(node) ?? []).some((modifier) => modifier.kind === ts.SyntaxKind.ExportKeyword);
  for (const script of source.scripts) {
    for (const statement of script.tree.statements) {
      if (
        ts.isExportDeclaration(statement) &&
        statement.exportClause &&
        ts.isNamedExports(statement.exportClause)
      ) {
        for (const element of statement.exportClause.elements) names.add(element.name.text);
      }
      if (!isExported(statement)) continue;
      if (ts.isVariableStatement(statement)) {
        for (const declared of statement.declarationList.declarations) names.add(declared.name.getText());
      } else if (
        ts.isFunctionDeclaration(statement) ||
        ts.isInterfaceDeclaration(statement) ||
        ts.isTypeAliasDeclaration(statement) ||
        ts.isClassDeclaration(statement)
      ) {
        if (statement.name !== undefined) names.add(statement.name.text);
      }
    }
  }
  return names;
}
