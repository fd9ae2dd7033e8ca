const types: Readonly<Record<string, string>> = {
  json: 'application/json',
  csv: 'text/csv',
  txt: 'text/plain',
  wav: 'audio/wav',
};

/** Gives a content to the browser as a file to save; the end of its name says what kind it is. */
export function saveFile(name: string, content: string | Uint8Array<ArrayBuffer>): void {
  const named = types[name.split('.').at(-1) ?? ''] ?? 'text/plain';
  const type = typeof content === 'string' ? `${named};charset=utf-8` : named;
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address));
}
