import { bore } from './bore.ts'
import { chamfer } from './chamfer.ts'
import { contour } from './contour.ts'
import { drill } from './drill.ts'
import { face } from './face.ts'
import { finish } from './finish.ts'
import { partOff } from './part-off.ts'
import { ream } from './ream.ts'
import { rough } from './rough.ts'
import { saw } from './saw.ts'
import { tap } from './tap.ts'
import { threadMill } from './thread-mill.ts'
import { turn } from './turn.ts'

/** Operations that make chips, by their key in the language. Deburring, polishing, inspecting, preparing have none. */
export const cuttingOperations = {
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
  'thread mill': threadMill,
  turn,
  'part off': partOff,
} as const

/** Key of an operation that makes chips. */
export type CuttingOperation = keyof typeof cuttingOperations
