/** Messages about assembly order. */
export const asm = {} as const
