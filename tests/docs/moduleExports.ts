import ts from 'typescript';

/** What a module exports: each name, and the symbol where it is declared. Throws where there is no module. */
export function moduleExports(
  program: ts.Program,
  file: string,
): readonly { readonly name: string; readonly declared: ts.Symbol }[] {
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const entry = source && checker.getSymbolAtLocation(source);
  if (entry === undefined) throw new Error(`no module in ${file}`);
  return checker.getExportsOfModule(entry).map((symbol) => {
    const isAlias = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
    return { name: symbol.name, declared: isAlias ? checker.getAliasedSymbol(symbol) : symbol };
  });
}
