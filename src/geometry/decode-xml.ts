/**
 * The text of an XML file in UTF-8 or UTF-16, or the name of the encoding that it has instead.
 * Source: XML 1.0, appendix F (marks at the head; without one the declaration says, but for two bytes a letter).
 */
export function decodeXml(bytes: Uint8Array): string | { readonly encoding: string } {
  const wide = wideEncoding(bytes)
  if (wide) return decoded(bytes, wide)
  const head = String.fromCharCode(...bytes.subarray(0, 200))
  const declared = /<\?xml[^>]*?\sencoding\s*=\s*["']([\w.-]+)["']/.exec(head)?.[1] ?? 'UTF-8'
  if (!/^(?:utf-?8|utf-?16(?:le|be)?|us-ascii|ascii)$/i.test(declared)) return { encoding: declared }
  return decoded(bytes, 'utf-8')
}

function wideEncoding([a, b]: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if ((a === 0xff && b === 0xfe) || (a === 0x3c && b === 0)) return 'utf-16le'
  return (a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c) ? 'utf-16be' : null
}

function decoded(bytes: Uint8Array, name: 'utf-8' | 'utf-16le' | 'utf-16be') {
  try {
    return new TextDecoder(name, { fatal: true }).decode(bytes)
  } catch {
    return { encoding: `no sound ${name.toUpperCase()}` }
  }
}
