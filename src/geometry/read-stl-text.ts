import type { Mesh } from './mesh.ts'
import { isUsable, type StlBounds, type StlFault } from './stl-fault.ts'
import { type Words, wordsOf } from './words.ts'

const number = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/

/**
 * The triangles of an STL file in its text form, or the line at fault. Several solids in one file are read as one mesh;
 * zeros and marks of the end (control-Z) at its end are passed.
 * Needs: text that opens with `solid`. Gives: finite coordinates, at least one triangle. Cost: O(bytes).
 */
export function readStlText(bytes: Uint8Array, bounds: StlBounds): Mesh | StlFault {
  const words = wordsOf(withoutTail(bytes))
  const corners: number[] = []
  while (words.peek() !== null) {
    const fault = readSolid(words, corners, bounds)
    if (fault) return fault
  }
  return corners.length === 0 ? { fault: 'no triangles' } : { corners: Float64Array.from(corners) }
}

/** The bytes without zeros, blanks, line ends and control-Z behind the text. */
function withoutTail(bytes: Uint8Array): Uint8Array {
  let end = bytes.length
  while (end > 0 && [0, 9, 10, 13, 26, 32].includes(bytes[end - 1]!)) end--
  return bytes.subarray(0, end)
}

function readSolid(words: Words, corners: number[], bounds: StlBounds): StlFault | null {
  const opening = wanted(words, ['solid'])
  if (opening) return opening
  words.skipLine()
  while (words.peek() === 'facet') {
    const fault = readFacet(words, corners)
    if (fault) return fault
    if (corners.length / 9 > bounds.mostTriangles)
      return { fault: 'too many triangles', triangles: corners.length / 9, most: bounds.mostTriangles }
  }
  const closing = wanted(words, ['endsolid'])
  words.skipLine()
  return closing
}

function readFacet(words: Words, corners: number[]): StlFault | null {
  const opening = wanted(words, ['facet', 'normal'])
  if (opening) return opening
  // The normal is passed over, whatever it is: many files hold zeros there.
  for (let i = 0; i < 3; i++) if (words.next() === null) return endsEarly(words, 'a normal')
  const loop = wanted(words, ['outer', 'loop'])
  if (loop) return loop
  for (let corner = 0; corner < 3; corner++) {
    const fault = wanted(words, ['vertex']) ?? readCorner(words, corners)
    if (fault) return fault
  }
  return wanted(words, ['endloop', 'endfacet'])
}

function readCorner(words: Words, corners: number[]): StlFault | null {
  const triangle = Math.floor(corners.length / 9) + 1
  for (let i = 0; i < 3; i++) {
    const word = words.next()
    if (word === null) return endsEarly(words, 'a coordinate')
    const coordinate = number.test(word) ? Number(word) : Number.NaN
    if (!isUsable(coordinate)) return { fault: 'bad coordinate', triangle, found: word }
    corners.push(coordinate)
  }
  return null
}

function wanted(words: Words, list: readonly string[]): StlFault | null {
  for (const want of list) {
    const found = words.next()
    // A last word of which only the beginning is there was cut off.
    const isCut = found !== null && found !== want && want.startsWith(found) && words.peek() === null
    if (found === null || isCut) return endsEarly(words, want)
    if (found !== want) return { fault: 'unexpected word', line: words.line(), found, wanted: want }
  }
  return null
}

function endsEarly(words: Words, want: string): StlFault {
  return { fault: 'ends early', line: words.line(), wanted: want }
}
