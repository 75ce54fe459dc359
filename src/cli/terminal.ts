/** What a command may do to the outside: write lines, know the terminal. */
export interface Terminal {
  /** Results. */
  readonly out: (text: string) => void
  /** Messages. */
  readonly err: (text: string) => void
  readonly colour: boolean
  /** Whether messages go to a person's terminal. */
  readonly live: boolean
  readonly folder: string
}

/** The terminal this process runs in. Colour is off with NO_COLOR, off a terminal, and on `dumb` ones. */
export function ownTerminal(): Terminal {
  const noColour = (process.env.NO_COLOR ?? '') !== ''
  const live = process.stderr.isTTY === true
  return {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    colour: live && !noColour && process.env.TERM !== 'dumb',
    live,
    folder: process.cwd(),
  }
}

/** Exit codes: clean or warnings; errors in the project; wrong use of the command; a fault in fettle. */
export const exits = { fine: 0, errors: 1, usage: 2, fault: 3 } as const
/** One of the exit codes. */
export type Exit = (typeof exits)[keyof typeof exits]

/** Wrong use of the command: said in one line, exit 2. */
export class UsageError extends Error {}
