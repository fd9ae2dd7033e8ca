const types: Readonly<Record<string, string>> = {
  json: 'application/json',
  csv: 'text/csv',
  txt: 'text/plain',
};

/** Gives a text to the browser as a file to save; the end of its name says what kind it is. */
export function saveFile(name: string, text: string): void {
  const type = `${types[name.split('.').at(-1) ?? ''] ?? 'text/plain'};charset=utf-8`;
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address));
}
