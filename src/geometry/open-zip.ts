import { Inflate, strFromU8 } from 'fflate'
import { crc32 } from './crc32.ts'
import type { ThreeMfFault } from './three-mf-fault.ts'

/** A zip file whose list is read and whose files are not unpacked yet. */
export interface Zip {
  /** Names as written, in the order of the list. */
  readonly names: readonly string[]
  /** The bytes of a file, checked against their size and check sum. Needs: a name of the list. */
  readonly unpack: (name: string) => Uint8Array | ThreeMfFault
}

interface Entry {
  readonly name: string
  readonly flags: number
  readonly method: number
  readonly crc: number
  readonly packed: number
  readonly size: number
  readonly start: number
}

/** Bytes of the records with a fixed part, and how they open. */
const endRecord = { length: 22, mark: 0x06054b50 } as const
const wideLocator = { length: 20, mark: 0x07064b50 } as const
const wideEnd = { length: 56, mark: 0x06064b50 } as const
const listed = { length: 46, mark: 0x02014b50 } as const
const local = { length: 30, mark: 0x04034b50 } as const
const longestComment = 0xffff
const unknown32 = 0xffffffff
/** Deflate packs no closer than 1032 to 1. Source: zlib, technical details, from memory. */
const closestPacking = 1040

/**
 * The files of a zip, packed by deflate or not at all; wide sizes (zip64) are read.
 * Needs: a bound on what is unpacked of it in all. Gives: `null` where the bytes are no zip. Sizes, check sums and
 * packing are checked when a file is unpacked. Source: PKWARE APPNOTE 6.3.10, 4.3 and 4.5, from memory.
 */
export function openZip(bytes: Uint8Array, mostUnpackedBytes: number): Zip | null {
  const entries = listOf(bytes)
  if (!entries) return null
  const known = new Map<string, Entry>()
  const twice = new Set<string>()
  for (const entry of entries) {
    if (known.has(entry.name)) twice.add(entry.name)
    known.set(entry.name, entry)
  }
  let unpacked = 0
  return {
    names: [...known.keys()],
    unpack(name) {
      const entry = known.get(name)
      if (!entry || twice.has(name)) return { fault: 'damaged', path: name, what: 'it is there twice' }
      unpacked += entry.size
      if (unpacked > mostUnpackedBytes)
        return { fault: 'too large', bytes: unpacked, most: mostUnpackedBytes }
      return unpackOne(bytes, entry)
    },
  }
}

function unpackOne(bytes: Uint8Array, { name, flags, method, crc, packed, size, start }: Entry) {
  const bad = (what: string): ThreeMfFault => ({ fault: 'damaged', path: name, what })
  if (flags & 1) return { fault: 'locked', path: name } satisfies ThreeMfFault
  const view = viewOf(bytes)
  if (start + local.length > bytes.length || view.getUint32(start, true) !== local.mark)
    return bad('it is not where the list says')
  const from = start + local.length + view.getUint16(start + 26, true) + view.getUint16(start + 28, true)
  if (from + packed > bytes.length) return bad('it is cut off')
  if (method !== 0 && method !== 8) return bad(`it is packed by method ${method}`)
  const content = bytes.subarray(from, from + packed)
  const whole = method === 0 ? content : inflated(content, size)
  if (whole === null) return bad('it does not unpack')
  if (whole === 'other size' || whole.length !== size) return bad('its size is not as listed')
  return crc32(whole) === crc ? whole : bad('its check sum is wrong')
}

/** Unpacks so many bytes at once, so that a file larger than listed is left as soon as it shows. */
const piece = 65_536

/** The unpacked bytes; `null` where they are no deflate stream. Cost: O(bytes and `size`), whatever is packed. */
function inflated(content: Uint8Array, size: number): Uint8Array | 'other size' | null {
  if (size > closestPacking * (content.length + 1)) return 'other size'
  const whole = new Uint8Array(size)
  let at = 0
  const inflate = new Inflate((bytes) => {
    if (at + bytes.length <= size) whole.set(bytes, at)
    at += bytes.length
  })
  try {
    for (let from = 0; from < content.length && at <= size; from += piece)
      inflate.push(content.subarray(from, from + piece), from + piece >= content.length)
  } catch {
    return null
  }
  return at === size ? whole : 'other size'
}

/** The list at the end of the file; `null` where there is none or it is broken. */
function listOf(bytes: Uint8Array): readonly Entry[] | null {
  const view = viewOf(bytes)
  const end = endOf(view)
  if (end === null) return null
  const { count, first } = wideEndOf(view, end) ?? {
    count: view.getUint16(end + 10, true),
    first: view.getUint32(end + 16, true),
  }
  const entries: Entry[] = []
  let at = first
  for (let k = 0; k < count; k++) {
    if (at + listed.length > end || view.getUint32(at, true) !== listed.mark) return null
    const [name, extra, comment] = [28, 30, 32].map((o) => view.getUint16(at + o, true)) as [
      number,
      number,
      number,
    ]
    const next = at + listed.length + name + extra + comment
    if (next > end) return null
    entries.push(entryAt(bytes, view, at, name, extra))
    at = next
  }
  return entries
}

function entryAt(bytes: Uint8Array, view: DataView, at: number, name: number, extra: number): Entry {
  const flags = view.getUint16(at + 8, true)
  const named = at + listed.length
  const narrow = [24, 20, 42].map((o) => view.getUint32(at + o, true)) as [number, number, number]
  const [size, packed, start] = wideOf(view, named + name, extra, narrow)
  return {
    // Without the mark of UTF-8 the letters past ASCII are of an old code page: each byte stands for itself.
    name: strFromU8(bytes.subarray(named, named + name), (flags & 0x800) === 0),
    flags,
    method: view.getUint16(at + 10, true),
    crc: view.getUint32(at + 16, true),
    packed,
    size,
    start,
  }
}

/** Size, packed size and start, each from the extra field where 32 bits do not hold it. */
function wideOf(
  view: DataView,
  from: number,
  length: number,
  narrow: readonly [number, number, number],
): readonly [number, number, number] {
  let at = from
  const end = from + length
  while (at + 4 <= end && view.getUint16(at, true) !== 1) at += 4 + view.getUint16(at + 2, true)
  at += 4
  return narrow.map((value) => {
    if (value !== unknown32 || at + 8 > end) return value
    at += 8
    return Number(view.getBigUint64(at - 8, true))
  }) as [number, number, number]
}

function endOf(view: DataView): number | null {
  const last = view.byteLength - endRecord.length
  for (let at = last; at >= Math.max(0, last - longestComment); at--)
    if (view.getUint32(at, true) === endRecord.mark) return at
  return null
}

function wideEndOf(view: DataView, end: number): { count: number; first: number } | null {
  const locator = end - wideLocator.length
  if (locator < 0 || view.getUint32(locator, true) !== wideLocator.mark) return null
  const at = Number(view.getBigUint64(locator + 8, true))
  if (at + wideEnd.length > end || view.getUint32(at, true) !== wideEnd.mark) return null
  return { count: Number(view.getBigUint64(at + 32, true)), first: Number(view.getBigUint64(at + 48, true)) }
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}
