import { packagePath } from './package-path.ts'
import { isUsable } from './stl-fault.ts'
import type { ThreeMfFault } from './three-mf-fault.ts'
import { kindOfTransform, type Transform } from './transform.ts'
import type { Tag } from './xml-tag.ts'

/** Reads values of a tag; the first fault is kept, and what cannot be read is `null`. */
export interface TagValues {
  readonly text: (tag: Tag, key: string) => string | null
  readonly coordinate: (tag: Tag, key: string) => number | null
  /** A whole number from 0 and below `end`. */
  readonly index: (tag: Tag, key: string, end: number) => number | null
  /** Twelve numbers; `null` too where there are none. */
  readonly transform: (tag: Tag, scale: number) => Transform | null
  readonly line: (at: number) => number
}

/** Numbers as the format writes them. Source: 3MF core specification 1.4.0, ST_Number. */
const decimal = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/
const whole = /^\d{1,10}$/
const longestFound = 80

/** Values of the tags of the file `path`, whose text is `text`; faults go to `tell`. */
export function tagValues(text: string, path: string, tell: (fault: ThreeMfFault) => void): TagValues {
  const line = (at: number) => lineOf(text, at)
  const bad = (fault: 'bad number' | 'flat transform', tag: Tag, what: string, found: string): null => {
    tell({ fault, path, line: line(tag.at), what, found: found.slice(0, longestFound) })
    return null
  }
  const written = (tag: Tag, key: string): string | null => {
    const value = tag.attributes.get(key)?.trim()
    if (value !== undefined) return value
    tell({ fault: 'missing attribute', path, line: line(tag.at), what: key, of: tag.name })
    return null
  }
  return {
    line,
    text: written,
    coordinate(tag, key) {
      const value = written(tag, key)
      if (value === null) return null
      return decimal.test(value) ? Number(value) : bad('bad number', tag, key, value)
    },
    index(tag, key, end) {
      const value = written(tag, key)
      if (value === null) return null
      return whole.test(value) && Number(value) < end ? Number(value) : bad('bad number', tag, key, value)
    },
    transform(tag, scale) {
      const value = tag.attributes.get('transform')?.trim()
      if (value === undefined) return null
      const words = value.split(/\s+/)
      const numbers = words.map((word, k) => (decimal.test(word) ? Number(word) * (k < 9 ? 1 : scale) : NaN))
      if (numbers.length !== 12 || !numbers.every(isUsable)) return bad('bad number', tag, 'transform', value)
      return kindOfTransform(numbers) === 'flattens'
        ? bad('flat transform', tag, 'transform', value)
        : numbers
    },
  }
}

/** The path of another file of the package that a tag names, in the namespace of the production extension. */
export function pathOf(tag: Tag, space: string): string | null {
  const path = tag.attributes.get(`${space} path`)
  return path === undefined ? null : packagePath(path)
}

/** The line of a place in a text, from 1. */
export function lineOf(text: string, at: number): number {
  let line = 1
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', end + 1)) line++
  return line
}
