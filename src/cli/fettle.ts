import { version } from '../version.ts'
import { runProgram } from './program.ts'
import { ownTerminal } from './terminal.ts'

// A reader that closes early (`fettle plan ... | head`) is no fault.
process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
  if (cause.code === 'EPIPE') process.exit(0)
  process.stderr.write(`fettle: the output cannot be written (${cause.code ?? cause.message})\n`)
  process.exit(2)
})
runProgram(process.argv.slice(2), version, ownTerminal()).then((code) => {
  process.exitCode = code
})
