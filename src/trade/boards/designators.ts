/** Why a text is no list of designators. */
export type DesignatorFault =
  | { readonly fault: 'no designator' }
  | { readonly fault: 'not a designator'; readonly word: string }
  /** `R5-7`: the end of a range is written out, `R5-R7`. */
  | { readonly fault: 'unclear range'; readonly word: string; readonly perhaps: string }
  | { readonly fault: 'range falls'; readonly word: string }
  | { readonly fault: 'range too long'; readonly word: string; readonly most: number }

const single = /^[A-Za-z][A-Za-z0-9_.]{0,31}$/
const range = /^([A-Za-z_]+)(\d{1,9})[-\u2013]([A-Za-z_]+)?(\d{1,9})$/
const mostInRange = 1000

/**
 * The designators of a cell, ranges written out: `R1, R2 R5-R7` is R1, R2, R5, R6, R7.
 * Commas, semicolons and blanks part them. Source: common practice, no source.
 */
export function readDesignators(text: string): readonly string[] | DesignatorFault {
  // Blanks around the dash of a range belong to it.
  const words = text.replace(/(\d)\s*([-\u2013])\s*(?=[A-Za-z])/g, '$1$2').split(/[\s,;]+/)
  const found: string[] = []
  for (const word of words.filter((some) => some !== '')) {
    const list = single.test(word) ? [word] : writeOut(word)
    if ('fault' in list) return list
    found.push(...list)
  }
  return found.length === 0 ? { fault: 'no designator' } : found
}

function writeOut(word: string): readonly string[] | DesignatorFault {
  const [, prefix, first, otherPrefix, last] = range.exec(word) ?? []
  if (prefix === undefined || (otherPrefix !== undefined && otherPrefix !== prefix))
    return { fault: 'not a designator', word }
  if (otherPrefix === undefined)
    return { fault: 'unclear range', word, perhaps: `${prefix}${first}-${prefix}${last}` }
  const count = Number(last) - Number(first) + 1
  if (count < 1) return { fault: 'range falls', word }
  if (count > mostInRange) return { fault: 'range too long', word, most: mostInRange }
  return Array.from({ length: count }, (_, i) => `${prefix}${Number(first) + i}`)
}

/**
 * Order of designators as a person counts: letters by the alphabet, numbers by size, so that R2 stands before R10.
 * Gives: 0 only for equal texts.
 */
export function byDesignator(a: string, b: string): number {
  const [left, right] = [chunks(a), chunks(b)]
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const order = compareChunks(left[i]!, right[i]!)
    if (order !== 0) return order
  }
  return left.length - right.length || compareText(a, b)
}

function chunks(text: string): string[] {
  return text.match(/\d+|\D+/g) ?? []
}

function compareChunks(a: string, b: string): number {
  const digits = /^\d/
  if (digits.test(a) && digits.test(b)) {
    const [x, y] = [a.replace(/^0+/, ''), b.replace(/^0+/, '')]
    return x.length - y.length || compareText(x, y)
  }
  return compareText(a.toUpperCase(), b.toUpperCase())
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** The letters a designator begins with: `R` of `R12`. */
export function designatorLetters(designator: string): string {
  return /^[A-Za-z]+/.exec(designator)?.[0].toUpperCase() ?? ''
}
