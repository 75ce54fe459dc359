import { createHash } from 'node:crypto'
import { strFromU8, strToU8, unzipSync } from 'fflate'

/** The parts of a workbook file by their path in the package. */
export type Parts = Readonly<Record<string, Uint8Array>>

/** What a workbook of ours says about itself. */
export interface Stamp {
  /** Fingerprint of the source that the workbook was made from. */
  readonly fingerprint: string
  /** SHA-256 over everything in the file but the stamp itself, in hex, as it was when written. */
  readonly contentHash: string
}

/** Version of the layout: raised when sheets or columns that are read back change. */
export const layoutVersion = 1

const stampPart = 'docProps/core.xml'
const unset = '0'.repeat(64)
const pattern = /fettle-workbook layout=\d+ fingerprint=([\w.%~-]*) content=([0-9a-f]{64})/
/** No workbook of ours comes near this; a file that claims more is not opened. */
const mostBytes = 256 * 1024 * 1024

/** The stamp as text, to be kept among the file's key words until the content is known. */
export function blankStamp(fingerprint: string): string {
  return stampText({ fingerprint, contentHash: unset })
}

function stampText({ fingerprint, contentHash }: Stamp): string {
  const plain = encodeURIComponent(fingerprint).replace(/[!'()*]/g, '.')
  return `fettle-workbook layout=${layoutVersion} fingerprint=${plain} content=${contentHash}`
}

/** The parts with the hash of their content in the stamp. Needs: the core part holds a blank stamp. */
export function stamped(parts: Parts): Parts {
  const core = strFromU8(parts[stampPart] ?? new Uint8Array())
  if (!core.includes(`content=${unset}`)) throw new Error('the workbook has no blank stamp to fill')
  const filled = core.replace(`content=${unset}`, `content=${hashOf(parts)}`)
  return { ...parts, [stampPart]: strToU8(filled) }
}

/** The stamp that a workbook carries, `null` where the bytes are no workbook of ours. */
export function readStamp(bytes: Uint8Array): Stamp | null {
  const parts = partsOf(bytes)
  return parts ? stampOf(parts) : null
}

/**
 * Whether a file was written by fettle and is unchanged since. A file that another program saved is `changed`
 * even if no cell differs, because it may hold a person's work.
 */
export function isOurs(bytes: Uint8Array): 'untouched' | 'changed' | 'not ours' {
  const parts = partsOf(bytes)
  const stamp = parts && stampOf(parts)
  if (!stamp) return 'not ours'
  return hashOf(parts) === stamp.contentHash ? 'untouched' : 'changed'
}

function partsOf(bytes: Uint8Array): Parts | null {
  let total = 0
  const small = ({ originalSize }: { originalSize: number }): boolean => {
    total += originalSize
    return total <= mostBytes
  }
  try {
    const parts = unzipSync(bytes, { filter: small })
    return total <= mostBytes ? parts : null
  } catch {
    return null
  }
}

function stampOf(parts: Parts): Stamp | null {
  const core = parts[stampPart]
  const found = core && pattern.exec(strFromU8(core))
  if (!found) return null
  return { fingerprint: decoded(found[1]!), contentHash: found[2]! }
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}

/** Paths and lengths go into the hash too, so that bytes cannot move from one part to another unseen. */
function hashOf(parts: Parts): string {
  const hash = createHash('sha256')
  for (const path of Object.keys(parts).sort()) {
    if (path.endsWith('/')) continue
    const bytes = path === stampPart ? withoutHash(parts[path]!) : parts[path]!
    hash.update(`${path}\n${bytes.length}\n`).update(bytes)
  }
  return hash.digest('hex')
}

function withoutHash(core: Uint8Array): Uint8Array {
  return strToU8(strFromU8(core).replace(/content=[0-9a-f]{64}/, `content=${unset}`))
}
