import { type SignCode, signs } from './signs.ts'

/** A usual caution: signs in text, and what to mind. */
export interface Caution {
  /** Sign codes of ISO 7010 with their meaning in our words, as `signText` writes them. */
  readonly signs: readonly string[]
  /** In the imperative. */
  readonly says: string
}

/** A sign in text: its code, then what it means: `M004 wear eye protection`. */
export const signText = (code: SignCode): string => `${code} ${signs[code]}`

/** The code at the head of a sign in text. */
export const codeOf = (sign: string): string => sign.slice(0, 4)

/** A caution of these signs and words. */
export function caution(codes: readonly SignCode[], says: string): Caution {
  return { signs: codes.map(signText), says }
}
