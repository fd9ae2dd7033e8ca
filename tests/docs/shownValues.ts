import ts from 'typescript';

/** An expression of an example, by its place in the code, and the comment that shows its value. */
export interface ShownValue {
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly comment: string;
}

/**
 * The expression statements of an example that have a comment behind them, on the same line or on
 * the lines directly below; of `console.log(x)` it is `x`.
 */
export function shownValues(code: string): readonly ShownValue[] {
  const parsed = ts.createSourceFile('example.ts', code, ts.ScriptTarget.Latest, true);
  const lineOf = (position: number) => parsed.getLineAndCharacterOfPosition(position).line;
  return parsed.statements.filter(ts.isExpressionStatement).flatMap((statement) => {
    const comment = commentBehind(code, statement.end, lineOf);
    if (comment === '') return [];
    const shown = loggedValue(statement.expression) ?? statement.expression;
    const line = lineOf(statement.getStart()) + 1;
    return [{ start: shown.getStart(), end: shown.end, line, comment }];
  });
}

function loggedValue(expression: ts.Expression): ts.Expression | undefined {
  const isLog =
    ts.isCallExpression(expression) && expression.expression.getText() === 'console.log';
  return isLog && expression.arguments.length === 1 ? expression.arguments[0] : undefined;
}

function commentBehind(code: string, end: number, lineOf: (position: number) => number): string {
  const sameLine = ts.getTrailingCommentRanges(code, end) ?? [];
  const below = sameLine.length > 0 ? [] : (ts.getLeadingCommentRanges(code, end) ?? []);
  const joined = [...sameLine, ...below].filter(
    ({ pos }, index) => sameLine.length > 0 || lineOf(pos) === lineOf(end) + index + 1,
  );
  return joined.map(({ pos, end }) => code.slice(pos, end).replace(/^\/\/\s?/, '')).join('\n');
}
