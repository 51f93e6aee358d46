import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';

/** What the docstring of an export says, with the export as its source declares it. */
export interface ExportedItem {
  name: string;
  kind: 'function' | 'class' | 'constant' | 'type';
  /** As it is declared, without its body. */
  declared: string;
  /** What it is or gives. */
  about: string;
  params: readonly { name: string; text: string }[];
  returns?: string;
  throws: readonly string[];
  /** Where it is read. */
  see: readonly string[];
}

const printer = ts.createPrinter({ removeComments: true });

/** A comment without the breaks of its lines; paragraphs stay apart. */
const flow = (text: string | ts.NodeArray<ts.JSDocComment> | undefined): string =>
  (ts.getTextOfJSDocComment(text) ?? '').replace(/\s*\n(?!\s*\n)\s*/g, ' ').trim();

/** A node as its source has it, with its comments but without the docstring above it. */
const written = (node: ts.Node): string => node.getText().replace(/^(?:export|declare|async|default)\s+/gm, '');

/** The head of a function, with the types as they stand in the source. */
function headOf(name: string, of: ts.SignatureDeclaration, file: ts.SourceFile): string {
  const print = (node: ts.Node) => printer.printNode(ts.EmitHint.Unspecified, node, file);
  const generic = of.typeParameters ? `<${of.typeParameters.map(print).join(', ')}>` : '';
  const params = of.parameters.map(print);
  const line = params.join(', ');
  const list = line.length > 70 ? `\n  ${params.join(',\n  ')},\n` : line;
  return `function ${name}${generic}(${list})${of.type ? `: ${print(of.type)}` : ''}`;
}

type Callable = ts.ArrowFunction | ts.FunctionExpression | ts.FunctionDeclaration;

/** The call by which a value is made an equation or is remembered, where it is. */
const madeBy = (value: ts.Expression | undefined): ts.CallExpression | undefined =>
  value && ts.isCallExpression(value) && /^(?:equation|remember)/.test(value.expression.getText()) ? value : undefined;

/** The function that a value is, or that an equation or a memory is laid around. */
function functionIn(value: ts.Expression, file: ts.SourceFile): Callable | undefined {
  if (ts.isArrowFunction(value) || ts.isFunctionExpression(value)) return value;
  if (ts.isIdentifier(value))
    return file.statements.filter(ts.isFunctionDeclaration).find(({ name }) => name?.text === value.text);
  return madeBy(value)
    ?.arguments.flatMap((argument) => functionIn(argument, file) ?? [])
    .at(-1);
}

/** The equation that a value bears: its id, under which its page shows it, and where it is read. */
function equationIn(value: ts.Expression | undefined): string[] {
  const call = madeBy(value);
  if (!call) return [];
  const [first] = call.arguments;
  if (!first || !ts.isObjectLiteralExpression(first)) return call.arguments.flatMap(equationIn);
  const text = (of: ts.ObjectLiteralExpression, name: string): ts.Expression | undefined =>
    of.properties.filter(ts.isPropertyAssignment).find((each) => each.name.getText() === name)?.initializer;
  const words = (of: ts.Expression | undefined) => (of && ts.isStringLiteralLike(of) ? [of.text] : []);
  const citation = text(first, 'citation');
  const cited =
    citation && ts.isObjectLiteralExpression(citation)
      ? [...words(text(citation, 'source')), ...words(text(citation, 'locator'))]
      : [];
  const id = words(text(first, 'id')).map((each) => `Equations: \`${each}\``);
  // What was not read is not passed on as if it had been.
  const unread = words(text(first, 'basis')).includes('memory') ? ['from memory and not yet checked'] : [];
  return id.map((each) => [each, ...cited, ...unread].join(', '));
}

type Described = Pick<ExportedItem, 'kind' | 'declared'>;

function declaredAs(name: string, node: ts.Declaration, file: ts.SourceFile): Described {
  if (ts.isFunctionDeclaration(node)) return { kind: 'function', declared: headOf(name, node, file) };
  if (ts.isClassDeclaration(node)) {
    const base = node.heritageClauses?.map((clause) => ` ${clause.getText()}`).join('') ?? '';
    return { kind: 'class', declared: `class ${name}${base}` };
  }
  if (ts.isVariableDeclaration(node)) {
    const { initializer, type } = node;
    const made = initializer && functionIn(initializer, file);
    if (made) return { kind: 'function', declared: headOf(name, made, file) };
    const short = initializer && initializer.getText().length <= 40 ? ` = ${initializer.getText()}` : '';
    return { kind: 'constant', declared: `const ${name}${type ? `: ${type.getText()}` : short}` };
  }
  return { kind: 'type', declared: written(node) };
}

function itemOf(name: string, node: ts.Declaration, file: ts.SourceFile): ExportedItem {
  // A constant bears its docstring on its statement.
  const documented = ts.isVariableDeclaration(node) ? node.parent.parent : node;
  const docs = ts.getJSDocCommentsAndTags(documented).filter(ts.isJSDoc);
  const value = ts.isVariableDeclaration(node) ? node.initializer : undefined;
  // The arguments of an equation are described at the function within it.
  const inner = value && madeBy(value) ? functionIn(value, file) : undefined;
  const tags = [...ts.getJSDocTags(documented), ...(inner ? ts.getJSDocTags(inner) : [])];
  const all = (tag: string) => tags.filter(({ tagName }) => tagName.text === tag).map(({ comment }) => flow(comment));
  const [returns] = all('returns');
  return {
    name,
    ...declaredAs(name, node, file),
    about: flow(docs.at(-1)?.comment),
    params: tags.filter(ts.isJSDocParameterTag).map((tag) => ({ name: tag.name.getText(), text: flow(tag.comment) })),
    ...(returns ? { returns } : {}),
    throws: all('throws'),
    see: [
      ...tags
        .filter(({ tagName }) => tagName.text === 'see')
        .map((tag) =>
          tag
            .getText()
            .replace(/^@see\s*/, '')
            .replace(/\s*\n\s*\*\s*/g, ' ')
            .trim(),
        ),
      ...equationIn(value),
    ],
  };
}

/** Every export of a source file and where it is declared, through the files that it passes on. */
function exportsOf(path: string, read: (path: string) => ts.SourceFile): Map<string, ExportedItem> {
  const file = read(path);
  const found = new Map<string, ExportedItem>();
  const isExported = (node: ts.HasModifiers) =>
    node.modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
  const local = new Map<string, ts.Declaration>();
  const imported = new Map<string, { from: string; name: string }>();
  const beside = (specifier: ts.Expression) => join(dirname(path), (specifier as ts.StringLiteral).text);
  for (const node of file.statements) {
    if (ts.isVariableStatement(node)) {
      for (const each of node.declarationList.declarations) {
        if (!ts.isIdentifier(each.name)) continue;
        local.set(each.name.text, each);
        if (isExported(node)) found.set(each.name.text, itemOf(each.name.text, each, file));
      }
    } else if (
      (ts.isFunctionDeclaration(node) ||
        ts.isClassDeclaration(node) ||
        ts.isInterfaceDeclaration(node) ||
        ts.isTypeAliasDeclaration(node)) &&
      node.name
    ) {
      const { text } = node.name;
      local.set(text, node);
      // Of overloads the first bears the docstring; a type may bear the name of a constant, which says it already.
      if (isExported(node) && !found.has(text)) found.set(text, itemOf(text, node, file));
    } else if (
      ts.isImportDeclaration(node) &&
      node.importClause?.namedBindings &&
      ts.isNamedImports(node.importClause.namedBindings)
    ) {
      for (const { name, propertyName } of node.importClause.namedBindings.elements)
        imported.set(name.text, { from: beside(node.moduleSpecifier), name: (propertyName ?? name).text });
    } else if (ts.isExportDeclaration(node)) {
      const passed = node.moduleSpecifier ? exportsOf(beside(node.moduleSpecifier), read) : undefined;
      if (!node.exportClause) {
        for (const [name, item] of passed ?? []) found.set(name, item);
      } else if (ts.isNamedExports(node.exportClause)) {
        for (const { name, propertyName } of node.exportClause.elements) {
          const inner = (propertyName ?? name).text;
          const own = local.get(inner);
          const other = imported.get(inner);
          const item =
            passed?.get(inner) ??
            (own ? itemOf(inner, own, file) : other && exportsOf(other.from, read).get(other.name));
          if (!item) throw new Error(`${path} exports ${inner}, which is declared nowhere.`);
          found.set(name.text, { ...item, name: name.text });
        }
      }
    }
  }
  return found;
}

/**
 * Every export that a source file offers, with its docstring, in the order of their names: functions first, then constants and classes,
 * then types. The text is read as it stands; no type is worked out, so that all entries take a second.
 *
 * @param root folder of the project
 * @param source the file, from that folder
 */
export function docstringsOf(root: string, source: string): ExportedItem[] {
  const known = new Map<string, ts.SourceFile>();
  const read = (path: string) => {
    const file = known.get(path) ?? ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ESNext, true);
    known.set(path, file);
    return file;
  };
  const order = ['function', 'class', 'constant', 'type'];
  return [...exportsOf(join(root, source), read).values()].sort(
    (one, other) => order.indexOf(one.kind) - order.indexOf(other.kind) || one.name.localeCompare(other.name, 'en'),
  );
}
