/** Forgets every choice that the site keeps beside its database, such as the unit asked for last. */
export function forgetSettings(): void {
  try {
    const own = Object.keys(localStorage).filter((key) => key.startsWith('windlass.'));
    for (const key of own) localStorage.removeItem(key);
  } catch {
    // A browser that keeps no settings has none to forget.
  }
}
