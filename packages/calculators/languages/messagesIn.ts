import ts from 'typescript';

/** A text that a person reads, where it stands in a source file. */
export interface Message {
  /** The text; values that are put into it are `{0}`, `{1}` and so on. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** The source code of the values, in order; `null` for a text without a place for any. */
  readonly values: readonly { readonly start: number; readonly end: number }[] | null;
}

/** Files without such texts: tests, code that is shown, readers of files, publications, pages for developers. */
const UNREAD =
  /snippet|\.testing|\.test\.|\/(testing|oracle|schema|example|developers|markdown)\/|[sS]ources\.ts$|clinicianTerms|evidenceModel|validateExercises|ProgressRules|zoneNames|migrations|goToField|handOver|\/lib\//;

/** Properties whose short values are words, not ids. */
export const WORDED: ReadonlySet<string> = new Set([
  'label',
  'help',
  'name',
  'title',
  'legend',
  'rowName',
  'unit',
  'question',
]);
/** Properties that stay as they are: publications keep their own language, and ids are no words. */
const KEPT = new Set(['citation', 'id', 'kind', 'doi', 'code', 'class', 'className']);

/**
 * The texts of a source file that a person reads: all of a `words.ts`, elsewhere what looks like
 * prose or is a label. Errors for programmers, code that is shown, ids and citations are none.
 */
export function messagesIn(path: string, source: string): readonly Message[] {
  if (UNREAD.test(path)) return [];
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true, kind);
  const isWords = /\/words\.ts$/.test(path);
  const found: Message[] = [];
  const visit = (node: ts.Node): void => {
    if (isOutside(node)) return;
    const message = messageAt(node, file);
    if (message && isRead(message.text, node, isWords)) found.push(message);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function messageAt(node: ts.Node, file: ts.SourceFile): Message | undefined {
  const place = { start: node.getStart(file), end: node.getEnd() };
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) {
    return { text: node.text, ...place, values: null };
  }
  if (!ts.isTemplateExpression(node)) return undefined;
  const text = node.templateSpans.reduce(
    (before, { literal }, index) => `${before}{${index}}${literal.text}`,
    node.head.text,
  );
  const values = node.templateSpans.map(({ expression }) => ({
    start: expression.getStart(file),
    end: expression.getEnd(),
  }));
  return { text, ...place, values };
}

/** Functions whose arguments are selectors, queries and names. */
const NO_TEXT_CALLS = /^(require[A-Z]|import$)|(matchMedia|querySelector(All)?|closest|matches)$/;

/** Parts of a file in which nothing is read by people. */
function isOutside(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node))
    return true;
  if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return true;
  if (ts.isNewExpression(node)) return /Error$/.test(node.expression.getText());
  if (ts.isCallExpression(node)) return NO_TEXT_CALLS.test(node.expression.getText());
  if (ts.isJsxAttribute(node)) return !/^(aria-label|alt|says|title)$/.test(node.name.getText());
  return ts.isPropertyAssignment(node) && KEPT.has(node.name.getText());
}

/** Publications, equations, and names for machines, that stand among texts. */
const CITED =
  /\d{4};\d|; \d{4}$|^[A-Z][a-z]+ \d{4}$|\bet al\. \w|SportRxiv|\bexp\(|^-\/\/|^[A-Z][a-z]+\/[A-Z]\w+$/;

function isRead(text: string, node: ts.Node, isWords: boolean): boolean {
  const { parent } = node;
  if (CITED.test(text)) return false;
  if (!/\p{L}/u.test(text.replace(/^[\d.,]+ ?(kg|lb|s)$/, '')) || isCompared(node, parent))
    return false;
  if (isWords) return true;
  if (/^[a-z]+[A-Z]\w*$/.test(text)) return false;
  if (/[\p{L}]{2}.*\s\S|\S\s.*\p{L}{2}|^\p{Lu}\p{Ll}/su.test(text)) return true;
  return ts.isPropertyAssignment(parent) && WORDED.has(parent.name.getText());
}

function isCompared(node: ts.Node, parent: ts.Node): boolean {
  if (ts.isCaseClause(parent) || ts.isElementAccessExpression(parent)) return true;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  return ts.isBinaryExpression(parent) && /^[=!]==$|^in$/.test(parent.operatorToken.getText());
}
