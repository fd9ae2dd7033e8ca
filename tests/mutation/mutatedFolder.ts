const NAME = 'WINDLASS_MUTATED_FOLDER';

/** The folder of core whose mutants are being tried; the runner's workers have it from their parent. */
export function mutatedFolder(): string {
  const folder = process.env[NAME];
  if (folder === undefined) throw new RangeError(`mutatedFolder: ${NAME} is not set`);
  return folder;
}

/** Names the folder for this process and those that it starts. */
export function setMutatedFolder(folder: string): void {
  process.env[NAME] = folder;
}
