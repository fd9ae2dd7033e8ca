import { createContext } from 'preact';

/** What lies over the session for a moment. */
export type DialogName = 'menu' | 'signs' | 'settings' | 'load' | 'carry-on';

/** Opens one of them. */
export const DialogContext = createContext<(name: DialogName) => void>(() => {});
