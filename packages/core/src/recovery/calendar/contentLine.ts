const encoder = new TextEncoder();

/** A content line of RFC 5545, folded at 75 octets and never inside a character (3.1). */
export function contentLine(name: string, value: string): string {
  let [folded, octets] = ['', 0];
  for (const character of `${name}:${value}`) {
    const size = encoder.encode(character).length;
    if (octets + size > 75) [folded, octets] = [`${folded}\r\n `, 1];
    folded += character;
    octets += size;
  }
  return `${folded}\r\n`;
}

/** TEXT of RFC 5545 (3.3.11): backslash, semicolon, comma and line ends escaped, other controls left out. */
export function escapedText(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n')
    .replace(/[^\P{Cc}\t]/gu, '');
}
