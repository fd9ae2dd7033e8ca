import { type Message, messagesIn } from './messagesIn.ts';

/** Translations by the text they stand for. A text that is missing stays as it is. */
export type Catalogue = ReadonlyMap<string, string>;

/** A source file with its texts in another language; everything else is left alone. */
export function translate(path: string, source: string, catalogue: Catalogue): string {
  const messages = messagesIn(path, source);
  return rewrite(source, 0, source.length, messages, catalogue);
}

/** The source from `start` to `end`. Texts may stand inside the values of another one. */
function rewrite(
  source: string,
  start: number,
  end: number,
  messages: readonly Message[],
  catalogue: Catalogue,
): string {
  let done = start;
  let written = '';
  for (const message of messages) {
    const translation = catalogue.get(message.text);
    if (translation === undefined || message.start < done || message.end > end) continue;
    const part = (from: number, to: number) => rewrite(source, from, to, messages, catalogue);
    written += part(done, message.start) + literal(message, translation, part);
    done = message.end;
  }
  return written + source.slice(done, end);
}

function literal(
  { values }: Message,
  translation: string,
  part: (from: number, to: number) => string,
): string {
  if (values === null) return JSON.stringify(translation);
  const text = translation.replace(/[\\`]|\$(?=\{)/g, '\\$&').replace(/\{(\d+)\}/g, (_, index) => {
    const value = values[Number(index)];
    if (value === undefined)
      throw new RangeError(`translate: no value {${index}} for: ${translation}`);
    return `\${${part(value.start, value.end)}}`;
  });
  return `\`${text}\``;
}
