import type { Terminal } from './terminal.ts'

/** A line that says how far a long search is, and goes away when it ends. */
export interface ProgressLine {
  readonly told: (tried: number, effort: number) => void
  readonly end: () => void
}

/** Milliseconds before anything is shown, and between two changes. */
const patience = 1000
const pace = 200

/** A progress line for a person's terminal; shown only where it takes longer than a second. */
export function progressLine(terminal: Terminal): ProgressLine {
  const begun = Date.now()
  let shown = 0
  return {
    told: (tried, effort) => {
      const now = Date.now()
      if (now - begun < patience || now - shown < pace) return
      shown = now
      terminal.err(`\rplanning: ${tried} of at most ${effort} schedules tried`)
    },
    end: () => {
      if (shown > 0) terminal.err(`\r${' '.repeat(60)}\r`)
    },
  }
}
