/** How much this site keeps in the browser, and whether the browser may throw it away. */
export interface KeepingState {
  /** Of everything kept for the site, its pages for use without a network included. */
  readonly usedBytes?: number;
  /** Room that the browser gives the site. */
  readonly roomBytes?: number;
  /** The browser has agreed not to throw it away when room is short. */
  readonly isLasting?: boolean;
}

/** What the browser says about its keeping; nothing about what it does not say. */
export async function keepingState(): Promise<KeepingState> {
  try {
    const [estimate, isLasting] = await Promise.all([
      navigator.storage.estimate(),
      navigator.storage.persisted(),
    ]);
    return {
      isLasting,
      ...(estimate.usage !== undefined && { usedBytes: estimate.usage }),
      ...(estimate.quota !== undefined && { roomBytes: estimate.quota }),
    };
  } catch {
    return {};
  }
}

/** Asks the browser not to throw it away when room is short. It may ask the person, or refuse. */
export async function askToKeep(): Promise<KeepingState> {
  try {
    await navigator.storage.persist();
  } catch {
    // A browser that cannot be asked is described by what it says next: nothing.
  }
  return keepingState();
}
