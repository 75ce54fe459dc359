/**
 * Widths of letters in em, by class, for the base font and its metric twin; each class as wide as its widest letter.
 * Source: measured on the advance widths of Carlito Regular; beyond ASCII common practice, no source.
 */
const classes: readonly (readonly [string, number])[] = [
  ["' il", 0.23],
  [',.I·’j:;', 0.27],
  ['`()-[]f{}J', 0.32],
  ['!t°r', 0.35],
  ['/\\s"z', 0.4],
  ['Lcx', 0.43],
  ['kvy?FS|', 0.46],
  ['Zgaä', 0.48],
  ['eTY#*+<=>^_~×±–', 0.5],
  ['$0123456789KPX', 0.52],
  ['bdhnopquCBRöüß', 0.54],
  ['VA', 0.58],
  ['DHGUN', 0.65],
  ['&OQΩ', 0.68],
  ['%w…', 0.71],
  ['m', 0.8],
  ['MW@', 0.89],
]
/** More than a letter's own width: screens and printers round widths to whole dots. */
const rounding = 1.03
const widths = new Map(classes.flatMap(([letters, width]) => [...letters].map((letter) => [letter, width])))

function letterWidth(letter: string): number {
  const known = widths.get(letter)
  if (known !== undefined) return known
  const code = letter.codePointAt(0)!
  if (code >= 0x300 && code < 0x370) return 0
  if (code < 0x2000) return 0.55
  return code < 0x2190 ? 0.7 : 1
}

/** Widths by code of the letters that nearly all text is made of. */
const byCode = Float64Array.from({ length: 256 }, (_, code) => letterWidth(String.fromCharCode(code)))

/** Width of one line of text in points at a font size in points. */
export function textWidth(text: string, size: number, bold: boolean): number {
  let em = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.codePointAt(at)!
    em += code < byCode.length ? byCode[code]! : letterWidth(String.fromCodePoint(code))
    if (code > 0xffff) at++
  }
  return em * size * rounding * (bold ? 1.04 : 1)
}

/**
 * How many lines a text takes in a width given in points: words go to the next line whole, a word longer than
 * the width is broken. Needs: `width` above one letter. Cost: O(length).
 */
export function wrappedLines(text: string, width: number, size: number, bold: boolean): number {
  let lines = 0
  for (const paragraph of text.split('\n')) lines += paragraphLines(paragraph, width, size, bold)
  return lines
}

function paragraphLines(text: string, width: number, size: number, bold: boolean): number {
  const space = textWidth(' ', size, bold)
  let lines = 1
  let used = 0
  for (const word of text.split(/[ \t]/)) {
    const wide = textWidth(word, size, bold)
    const start = used === 0 ? 0 : used + space
    if (start + wide <= width) {
      used = start + wide
    } else {
      const rows = Math.max(1, Math.ceil((wide * 1.03) / width))
      lines += used === 0 ? rows - 1 : rows
      used = wide - Math.floor(wide / width) * width
    }
  }
  return lines
}
