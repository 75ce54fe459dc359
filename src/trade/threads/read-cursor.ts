import type { ThreadFault, ThreadFaultKind } from './thread.ts'

/** A place in a text that moves on as parts are taken. Belongs to one reading alone. */
export interface ReadCursor {
  readonly typed: string
  /** As typed, signs folded one for one so that places agree. */
  readonly text: string
  at: number
}

/** A cursor at the first character that is no space. */
export function readCursor(typed: string): ReadCursor {
  const text = typed.replace(/[×✕*]/g, 'x').replace(/[−–]/g, '-').replace(/\s/g, ' ')
  return { typed, text, at: text.length - text.trimStart().length }
}

/** Takes what a sticky pattern finds here and moves past it; `null` and no move where it finds nothing. */
export function take(cursor: ReadCursor, pattern: RegExp): RegExpExecArray | null {
  const sticky = new RegExp(pattern.source, `${pattern.flags.replace('y', '')}y`)
  sticky.lastIndex = cursor.at
  const found = sticky.exec(cursor.text)
  if (found) cursor.at += found[0].length
  return found
}

/** Whether nothing but spaces is left. */
export function atEnd(cursor: ReadCursor): boolean {
  return cursor.text.slice(cursor.at).trim() === ''
}

/** A fault about a stretch of the text. */
export function faultAt(
  cursor: ReadCursor,
  fault: ThreadFaultKind,
  { at, length }: { readonly at: number; readonly length: number },
  near: readonly string[] = [],
): ThreadFault {
  return { fault, text: cursor.typed.slice(at, at + length), at, length, near }
}
