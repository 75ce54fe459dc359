/** Messages about dimension chains. */
export const chn = {} as const
