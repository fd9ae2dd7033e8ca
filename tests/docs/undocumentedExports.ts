import ts from 'typescript';

/** Names that a module exports and that have no doc comment where they are declared. */
export function undocumentedExports(program: ts.Program, file: string): readonly string[] {
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const entry = source && checker.getSymbolAtLocation(source);
  if (entry === undefined) throw new Error(`no module in ${file}`);
  return checker
    .getExportsOfModule(entry)
    .filter((symbol) => {
      const isAlias = (symbol.flags & ts.SymbolFlags.Alias) !== 0;
      const declared = isAlias ? checker.getAliasedSymbol(symbol) : symbol;
      return declared.getDocumentationComment(checker).length === 0;
    })
    .map((symbol) => symbol.name);
}
