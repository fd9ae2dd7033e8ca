/** What the custom element says beside its calculator. */
export const elementWords = {
  unknown: (id: string) => `There is no calculator named ${id}.`,
  notFetched: 'The calculator could not be fetched. See to the connection and load the page again.',
  refused: (attribute: string, value: string, message: string) =>
    `The attribute ${attribute}="${value}" cannot be taken. ${message} The default is shown instead.`,
  unknownAttribute: (attribute: string, known: readonly string[]) =>
    `There is no attribute ${attribute} here. The attributes are: ${known.join(', ')}.`,
};
