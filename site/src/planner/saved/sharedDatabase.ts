import { openDatabase } from '../../storage/index.ts';

type Opened = ReturnType<typeof openDatabase>;

let opened: Opened | undefined;

/** The database of this page, opened once. One that could not be opened is tried again. */
export async function sharedDatabase(): Opened {
  opened ??= openDatabase({ onLost: forget });
  const answer = await opened;
  if (answer.kind === 'failed') forget();
  return answer;
}

function forget(): void {
  opened = undefined;
}
