/** Whether a German name begins with a preposition, or with a word that belongs to a noun after it. */
export function standsWithoutNoun(name: string): boolean {
  return prepositions.test(name) || wordBeforeNoun.test(name);
}

const prepositions = /^(?:Ab|Am|An|Auf|Aus|Bis|Hinter|Im|In|Mit|Ohne|Unter|Vom|Von|Zum|Zur) /;

const wordBeforeNoun = /^[^\s,]+ \p{Lu}/u;
