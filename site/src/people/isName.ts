/** Whether a text can be the name of a person or a gym. */
export function isName(text: string): boolean {
  const name = text.trim();
  return name.length >= 1 && name.length <= 80;
}
