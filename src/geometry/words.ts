/** The words of a text, one after the other, in small letters. */
export interface Words {
  /** The next word, or `null` at the end; it is passed. */
  next(): string | null
  /** The next word, or `null` at the end; it stays. */
  peek(): string | null
  /** Passes the rest of the line of the last word. */
  skipLine(): void
  /** Line of the last word passed, from 1. */
  line(): number
}

const [tab, newLine, carriageReturn, blank] = [9, 10, 13, 32]
const longestWord = 64

/**
 * Words of a text as bytes, parted by blanks, tabs and line ends (LF, CR LF or CR). A mark of UTF-8 at the head is
 * passed.
 * A word past 64 letters is cut: none that long means anything here.
 */
export function wordsOf(bytes: Uint8Array): Words {
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf
  const state = { at: marked ? 3 : 0, line: 1 }
  const next = () => nextWord(bytes, state)
  return {
    next,
    peek() {
      const before = { ...state }
      const word = next()
      Object.assign(state, before)
      return word
    },
    skipLine() {
      while (state.at < bytes.length && !endsLine(bytes[state.at]!)) state.at++
    },
    line: () => state.line,
  }
}

function nextWord(bytes: Uint8Array, state: { at: number; line: number }): string | null {
  while (state.at < bytes.length && isSpace(bytes[state.at]!)) {
    const [byte, before] = [bytes[state.at]!, bytes[state.at - 1]]
    // CR LF is one line end.
    if (endsLine(byte) && !(byte === newLine && before === carriageReturn)) state.line++
    state.at++
  }
  const start = state.at
  while (state.at < bytes.length && !isSpace(bytes[state.at]!)) state.at++
  if (start === state.at) return null
  const end = Math.min(state.at, start + longestWord)
  return String.fromCharCode(...bytes.subarray(start, end)).toLowerCase()
}

function isSpace(byte: number): boolean {
  return byte === blank || byte === tab || endsLine(byte)
}

function endsLine(byte: number): boolean {
  return byte === newLine || byte === carriageReturn
}
