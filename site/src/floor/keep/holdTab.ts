const NAME = 'windlass-floor';

/** How a tab stands to the right to run a session. */
export interface TabHold {
  /** Asks for the right, and takes it from the tab that has it where that is wanted. */
  readonly ask: (how: 'if-free' | 'take') => void;
  readonly release: () => void;
}

/**
 * The right to run a session, which one tab of a browser has at a time. It ends with the tab, also
 * where that crashes. A browser without such locks gives it to everybody; writing still notices.
 */
export function holdTab(onAnswer: (has: boolean) => void): TabHold {
  let letGo = () => {};
  const ask: TabHold['ask'] = (how) => {
    if (!('locks' in navigator)) return onAnswer(true);
    const options = how === 'take' ? { steal: true } : { ifAvailable: true };
    navigator.locks
      .request(NAME, options, (lock) => {
        onAnswer(lock !== null);
        if (lock === null) return undefined;
        return new Promise<void>((resolve) => {
          letGo = resolve;
        });
      })
      // Another tab has taken it.
      .catch(() => onAnswer(false));
  };
  return { ask, release: () => letGo() };
}
