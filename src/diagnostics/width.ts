const wide: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x2e80, 0x303e],
  [0x3041, 0xa4cf],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe6f],
  [0xff00, 0xff60],
  [0xffe0, 0xffe6],
  [0x1f300, 0x1f64f],
  [0x1f680, 0x1f6ff],
  [0x1f900, 0x1f9ff],
  [0x20000, 0x3fffd],
]

/**
 * Columns that one character takes in a terminal: 0 for marks that sit on another, 2 for wide ones, else 1.
 * Source: the classes W and F of Unicode Standard Annex 11, by blocks; from memory.
 */
export function widthOf(character: string): 0 | 1 | 2 {
  if (/^[\p{Mn}\p{Me}\p{Cf}]/u.test(character)) return 0
  const code = character.codePointAt(0) ?? 0
  return wide.some(([first, last]) => code >= first && code <= last) ? 2 : 1
}

/** Columns that a text takes in a terminal. */
export function widthOfText(text: string): number {
  let width = 0
  for (const character of text) width += widthOf(character)
  return width
}

const unsafe = /[\p{Cc}\p{Zl}\p{Zp}\u00ad\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]|\p{Cs}/gu

/** A text that can do nothing to a terminal: what cannot be seen is shown by its code, such as `<U+001B>`. */
export function harmless(text: string): string {
  return text.replace(
    unsafe,
    (character) => `<U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`,
  )
}

/** The same with one sign for each, so that columns stay what they were; tabs become blanks. */
export function harmlessInPlace(text: string): string {
  return text.replace(/\t/g, ' ').replace(unsafe, '\ufffd')
}
