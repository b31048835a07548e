import ts from 'typescript';

/**
 * What one source file imports and which suspicious globals it touches, read from its syntax tree.
 *
 * Returns `{ imports: [{ specifier, typeOnly, line }], spots: [{ spot, line }] }`. An import whose path is computed has
 * the specifier `undefined`. `import { type X }` is not type-only: under verbatimModuleSyntax the module still runs.
 */
export function scanSource(path, text) {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found = { imports: [], spots: [] };
  const lineOf = (node) => source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
  const visit = (node) => {
    const entry = importIn(node);
    if (entry) found.imports.push({ ...entry, line: lineOf(node) });
    const spot = spotIn(node);
    if (spot) found.spots.push({ spot, line: lineOf(node) });
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const reference of source.typeReferenceDirectives) {
    const line = source.getLineAndCharacterOfPosition(reference.pos).line + 1;
    found.imports.push({ specifier: reference.fileName, typeOnly: true, line });
  }
  return found;
}

function importIn(node) {
  if (ts.isImportDeclaration(node)) {
    return { specifier: node.moduleSpecifier.text, typeOnly: node.importClause?.isTypeOnly === true };
  }
  if (ts.isExportDeclaration(node) && node.moduleSpecifier) {
    return { specifier: node.moduleSpecifier.text, typeOnly: node.isTypeOnly };
  }
  if (ts.isImportEqualsDeclaration(node) && ts.isExternalModuleReference(node.moduleReference)) {
    return { specifier: literal(node.moduleReference.expression), typeOnly: node.isTypeOnly };
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
    return { specifier: literal(node.argument.literal), typeOnly: true };
  }
  if (ts.isCallExpression(node) && isLoader(node.expression)) {
    return { specifier: literal(node.arguments[0]), typeOnly: false };
  }
  return undefined;
}

const isLoader = (callee) =>
  callee.kind === ts.SyntaxKind.ImportKeyword || (ts.isIdentifier(callee) && callee.text === 'require');

const literal = (node) => (node && ts.isStringLiteralLike(node) ? node.text : undefined);

function spotIn(node) {
  if (ts.isNewExpression(node) && isNamed(node.expression, 'Date')) return 'new Date';
  if (ts.isCallExpression(node) && isNamed(node.expression, 'Date')) return 'Date()';
  if (ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression)) {
    return `${node.expression.text}.${node.name.text}`;
  }
  if (ts.isElementAccessExpression(node) && ts.isIdentifier(node.expression)) {
    return `${node.expression.text}.${literal(node.argumentExpression)}`;
  }
  return undefined;
}

const isNamed = (node, name) => ts.isIdentifier(node) && node.text === name;
