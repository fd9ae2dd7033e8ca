import { CodeBlock } from '@windlass/calculators/ui';
import { snippetOf } from './state/snippetOf.ts';
import type { Json } from './state/tree.ts';

/** TypeScript that prints the same sheet, to read and to copy. */
export function Snippet({ draft }: { readonly draft: Json }) {
  return <CodeBlock code={snippetOf(draft)} />;
}
