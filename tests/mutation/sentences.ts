interface Node {
  readonly type: string;
  readonly value?: unknown;
  readonly quasis?: readonly { readonly value: { readonly raw: string } }[];
  readonly expressions?: readonly Node[];
}

/** Words that a person reads are checked by reading them; a test that repeats them proves nothing. */
function shouldIgnore({ node }: { readonly node: Node }): string | undefined {
  return isSentence(node) ? 'a sentence for people' : undefined;
}

function isSentence({ type, value, quasis = [], expressions = [] }: Node): boolean {
  if (type === 'StringLiteral') return hasSpaces(String(value));
  const plain = expressions.every((part) => !/Conditional|Logical|Binary/.test(part.type));
  return type === 'TemplateLiteral' && plain && quasis.some((part) => hasSpaces(part.value.raw));
}

function hasSpaces(text: string): boolean {
  return /\p{L}[,;:]? | \p{L}/u.test(text);
}

export const strykerPlugins = [{ kind: 'Ignore', name: 'sentences', value: { shouldIgnore } }];
