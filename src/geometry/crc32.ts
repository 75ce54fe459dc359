const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1
  return crc
})

/**
 * The check sum of 32 bits that zip files carry, without sign.
 * Source: PKWARE APPNOTE 6.3.10, 4.4.7 (polynomial 0x04C11DB7, here with its bits reversed), from memory.
 * Cost: O(bytes).
 */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff
  for (let i = 0; i < bytes.length; i++) crc = table[(crc ^ bytes[i]!) & 255]! ^ (crc >>> 8)
  return (crc ^ 0xffffffff) >>> 0
}
