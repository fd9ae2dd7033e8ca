let failed = false;

/** Tries one thing that a user of the packages does, and says on a line of its own how it went. */
export async function judge(what: string, work: () => void | Promise<void>): Promise<void> {
  try {
    await work();
    console.log(`ok   ${what}`);
  } catch (error) {
    failed = true;
    console.log(`FAIL ${what}\n${error instanceof Error ? error.message : error}`);
  }
}

/** Whether anything has failed so far. */
export function hasFailed(): boolean {
  return failed;
}
