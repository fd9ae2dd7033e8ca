/** What to do about a word that cannot be read. */
export function unreadWords(words: string): string {
  return `"${words}" on the clinician's list is not known here. Ask what it covers, and write the lifts one by one.`;
}
