/** A file, line and column (both from 1) that a message can point at, with the length of the text meant. */
export interface Place {
  readonly file: string
  readonly line: number
  readonly column: number
  /** Characters from `column` that the message is about; 0 when unknown. */
  readonly length: number
}

/** Something with a name that was written somewhere. */
export interface Placed {
  readonly id: string
  readonly at: Place
}

/** Order of places: file, then line, then column. */
export function comparePlaces(a: Place, b: Place): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1
  return a.line - b.line || a.column - b.column
}
