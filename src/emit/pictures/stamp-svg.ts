import { createHash } from 'node:crypto'

const pattern = /<!-- fettle-picture content=([0-9a-f]{64}) -->\n$/

/** A picture with a last line that tells whether anybody changed it since. */
export function stampSvg(svg: string): string {
  return `${svg}<!-- fettle-picture content=${hashOf(svg)} -->\n`
}

/** Whether a file is a picture of ours, and unchanged since it was written. */
export function isOurPicture(bytes: Uint8Array): 'untouched' | 'changed' | 'not ours' {
  const text = new TextDecoder().decode(bytes)
  const stamp = pattern.exec(text)
  if (stamp) return hashOf(text.slice(0, stamp.index)) === stamp[1] ? 'untouched' : 'changed'
  return text.includes('<!-- fettle-picture content=') ? 'changed' : 'not ours'
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex')
}
