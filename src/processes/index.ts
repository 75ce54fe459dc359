import { bore } from './bore.ts'
import { chamfer } from './chamfer.ts'
import { contour } from './contour.ts'
import { cure } from './cure.ts'
import { cut } from './cut.ts'
import { deburr } from './deburr.ts'
import { doByHand } from './do-by-hand.ts'
import { drill } from './drill.ts'
import { face } from './face.ts'
import { finish } from './finish.ts'
import { inspect } from './inspect.ts'
import { partOff } from './part-off.ts'
import { polish } from './polish.ts'
import { prepare } from './prepare.ts'
import type { Process } from './process.ts'
import { ream } from './ream.ts'
import { rough } from './rough.ts'
import { saw } from './saw.ts'
import { tap } from './tap.ts'
import { threadMill } from './thread-mill.ts'
import { turn } from './turn.ts'

/** Every process kind, in the order in which lists show them. Adding one is a file and a line here. */
export const processes: readonly Process[] = [
  saw,
  face,
  rough,
  finish,
  contour,
  chamfer,
  drill,
  ream,
  bore,
  tap,
  threadMill,
  turn,
  partOff,
  cut,
  prepare,
  deburr,
  polish,
  inspect,
  cure,
  doByHand,
]

const byKey: ReadonlyMap<string, Process> = new Map(processes.map((process) => [process.key, process]))

/** The process kind of a key; `null` for a word that is none. */
export function processOf(key: string): Process | null {
  return byKey.get(key) ?? null
}
