/** Writes the files of a calculator or a core function below `home`; gives their paths. */
export function make(home: string, asked: readonly string[]): readonly string[];
