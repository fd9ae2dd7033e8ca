import ts from 'typescript';

/** The names that a module exports, sorted, each with `type` before it where it is gone at run time. */
export function exportedNames(program: ts.Program, file: string): readonly string[] {
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const entry = source && checker.getSymbolAtLocation(source);
  if (entry === undefined) throw new Error(`no module in ${file}`);
  return checker
    .getExportsOfModule(entry)
    .map((symbol) => {
      const isAlias = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
      const declared = isAlias ? checker.getAliasedSymbol(symbol) : symbol;
      return (declared.flags & ts.SymbolFlags.Value) === 0 ? `type ${symbol.name}` : symbol.name;
    })
    .sort();
}
