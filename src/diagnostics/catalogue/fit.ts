/** Messages about fits and threads. */
export const fit = {} as const
