import ts from 'typescript';
import type { Rewrite } from './fromSources.ts';

/** Files whose long texts are read below an answer: reasons of cautions, stop signs, publications. */
const FILES = /core.src.safety.(rules.|sources|stopRules)|[sS]ources\.ts$/;
/** The properties that hold such texts. What a caution says first is not among them. */
const NAMES = new Set(['why', 'instead', 'citation', 'notes', 'sign', 'action']);
const LONG = 30;

/** The module that holds the texts once they were fetched. */
export const LATER = 'windlass:later';

/** Texts that a bundle leaves out, by their number. */
export type LaterTexts = string[];

/** Takes long texts out of a source into `texts`; their properties read them once they are there. */
export function withoutLongTexts(texts: LaterTexts): Rewrite {
  return (path, source) => {
    if (!FILES.test(path)) return source;
    const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true);
    const found: ts.PropertyAssignment[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAssignment(node) && isLong(node)) found.push(node);
      ts.forEachChild(node, visit);
    };
    visit(file);
    if (found.length === 0) return source;
    const rewritten = found.reduceRight((text, { name, initializer }) => {
      const read = getter(name.getText(), numberOf((initializer as ts.StringLiteral).text, texts));
      return text.slice(0, name.getStart()) + read + text.slice(initializer.getEnd());
    }, source);
    return `import { later } from '${LATER}';\n${rewritten}`;
  };
}

/** The number of a text, which is added where it is new. */
export function numberOf(text: string, texts: LaterTexts): number {
  const known = texts.indexOf(text);
  return known < 0 ? texts.push(text) - 1 : known;
}

/** A property that reads its text once that is there. */
export function getter(name: string, number: number): string {
  return `get ${name}() { return later(${number}); }`;
}

function isLong({ name, initializer }: ts.PropertyAssignment): boolean {
  return (
    NAMES.has(name.getText()) &&
    ts.isStringLiteralLike(initializer) &&
    initializer.text.length > LONG
  );
}

/** The numbers of the texts that a finished bundle asks for. */
export function textsIn(bundle: string, texts: LaterTexts): Readonly<Record<number, string>> {
  const asked = [...bundle.matchAll(/return later\((\d+)\)/g)].map(([, number]) => Number(number));
  return Object.fromEntries([...new Set(asked)].map((number) => [number, texts[number] ?? '']));
}
