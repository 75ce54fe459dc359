import type { Place } from '../base/place.ts'
import { src } from '../diagnostics/catalogue/src.ts'
import type { Report } from '../diagnostics/message.ts'

/** The top of a file, for what concerns all of it. */
export const topOf = (file: string): Place => ({ file, line: 1, column: 1, length: 0 })

/**
 * The bytes of a file as text, without a byte order mark; `null` when they are not UTF-8, with the reason reported.
 */
export function decode(file: string, bytes: Uint8Array, report: Report): string | null {
  const other = otherEncoding(bytes)
  if (other) {
    report(src.wrongEncoding, topOf(file), { file, found: other })
    return null
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    const { place, byte } = firstBadByte(file, bytes)
    report(src.wrongEncoding, place, { file, found: `the byte ${byte} here belongs to no character` })
    return null
  }
}

function otherEncoding(bytes: Uint8Array): string | null {
  const [a, b, c, d] = bytes
  if (a === 0xff && b === 0xfe)
    return c === 0 && d === 0 && bytes.length >= 4 ? 'it begins as UTF-32' : 'it begins as UTF-16'
  if (a === 0xfe && b === 0xff) return 'it begins as UTF-16'
  if (a === 0 && b === 0 && c === 0xfe && d === 0xff) return 'it begins as UTF-32'
  const looksWide = bytes.length >= 4 && ((a === 0 && b !== 0 && c === 0) || (a !== 0 && b === 0 && d === 0))
  return looksWide ? 'every other byte is zero, as in UTF-16' : null
}

/** Where the first byte stands that is no part of a character: found by halving, since decoding says only whether. */
function firstBadByte(file: string, bytes: Uint8Array): { place: Place; byte: string } {
  let good = 0
  let bad = bytes.length
  while (bad - good > 1) {
    const middle = (good + bad) >> 1
    if (decodes(bytes.subarray(0, middle))) good = middle
    else bad = middle
  }
  const before = new TextDecoder('utf-8').decode(bytes.subarray(0, good), { stream: true })
  const lines = before.split('\n')
  const place = { file, line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1, length: 0 }
  const byte = (bytes[good] ?? bytes.at(-1) ?? 0).toString(16).toUpperCase().padStart(2, '0')
  return { place, byte }
}

/** Whether the beginning of a file is sound, a last character cut in two allowed. */
function decodes(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true })
    return true
  } catch {
    return false
  }
}

/** A carriage return alone is one too: not every program takes it for a line end. */
const control = /\r(?!\n)|[^\P{Cc}\t\n\r\u0085]|\p{Cs}|[\u202a-\u202e\u2066-\u2069\ufffe\uffff]/u

/** The first character that cannot be seen and may not stand in a file: its place in the text, or -1. */
export function firstControl(text: string): number {
  return text.search(control)
}
