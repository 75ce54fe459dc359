/** What a file is that is no STL. */
export type FileKind = 'zip' | 'web page' | 'XML' | 'OBJ' | 'PLY' | 'STEP' | 'UTF-16 text' | 'text'

const openings: readonly (readonly [RegExp, FileKind])[] = [
  [/^PK[^\s!-~]{2}/, 'zip'],
  [/^(?:\xff\xfe|\xfe\xff)/, 'UTF-16 text'],
  [/^\s*<(?:!doctype\s+html|html)\b/i, 'web page'],
  [/^\s*<\?xml\b/, 'XML'],
  [/^ISO-10303-21/, 'STEP'],
  [/^ply\r?\n/, 'PLY'],
  [/^(?:#[^\n]*\n|\s)*(?:mtllib|o|g|v|vn|vt)\s+\S/, 'OBJ'],
]

/**
 * The kind of a file that is no STL, by its first bytes; `null` where they say nothing. Source: signatures as the
 * formats have them, from memory.
 */
export function fileKind(bytes: Uint8Array): FileKind | null {
  const head = String.fromCharCode(...bytes.subarray(0, 512)).replace(/^\xef\xbb\xbf/, '')
  const found = openings.find(([opening]) => opening.test(head))
  if (found) return found[1]
  const isText = [...head].every((letter) => letter >= ' ' || '\t\n\r'.includes(letter))
  return isText && head !== '' ? 'text' : null
}
