import ts from 'typescript';
import type { Literal } from './Literal.ts';

/** The value a comment shows, or `undefined` when the comment is words and no value. */
export function readLiteral(text: string): Literal | undefined {
  const source = `(${text}\n)`;
  const { diagnostics = [] } = ts.transpileModule(source, { reportDiagnostics: true });
  if (diagnostics.length > 0) return undefined;
  const parsed = ts.createSourceFile('literal.ts', source, ts.ScriptTarget.Latest, true);
  const [statement, ...more] = parsed.statements;
  const isOne = statement !== undefined && more.length === 0;
  return isOne && ts.isExpressionStatement(statement) ? literalOf(statement.expression) : undefined;
}

function literalOf(node: ts.Expression): Literal | undefined {
  if (ts.isParenthesizedExpression(node)) return literalOf(node.expression);
  if (ts.isStringLiteralLike(node)) return { kind: 'plain', value: node.text };
  if (ts.isArrayLiteralExpression(node)) return arrayOf(node);
  if (ts.isObjectLiteralExpression(node)) return objectOf(node);
  if (ts.isNumericLiteral(node)) {
    const decimals = /\.(\d+)/.exec(node.getText())?.[1]?.length ?? 0;
    return { kind: 'number', value: Number(node.text), decimals };
  }
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
    const operand = literalOf(node.operand);
    return operand?.kind === 'number' ? { ...operand, value: -operand.value } : undefined;
  }
  return namedLiterals.get(node.getText());
}

const namedLiterals: ReadonlyMap<string, Literal> = new Map([
  ['true', { kind: 'plain', value: true }],
  ['false', { kind: 'plain', value: false }],
  ['null', { kind: 'plain', value: null }],
  ['undefined', { kind: 'plain', value: undefined }],
  ['NaN', { kind: 'number', value: Number.NaN, decimals: 0 }],
  ['Infinity', { kind: 'number', value: Number.POSITIVE_INFINITY, decimals: 0 }],
]);

function arrayOf(node: ts.ArrayLiteralExpression): Literal | undefined {
  const items = node.elements.map(literalOf);
  return items.every((item) => item !== undefined) ? { kind: 'array', items } : undefined;
}

function objectOf(node: ts.ObjectLiteralExpression): Literal | undefined {
  const entries = new Map<string, Literal>();
  for (const property of node.properties) {
    if (!ts.isPropertyAssignment(property) || ts.isComputedPropertyName(property.name)) {
      return undefined;
    }
    const value = literalOf(property.initializer);
    if (value === undefined) return undefined;
    entries.set(property.name.text, value);
  }
  return { kind: 'object', entries };
}
