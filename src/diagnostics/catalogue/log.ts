/** Messages about what happened. */
export const log = {} as const
