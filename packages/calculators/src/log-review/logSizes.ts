/** Logs with more characters stay out of the address. */
export const IN_ADDRESS = 6000;
