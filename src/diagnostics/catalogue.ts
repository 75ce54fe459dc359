import { asm } from './catalogue/asm.ts'
import { asmDoubts } from './catalogue/asm-doubts.ts'
import { buy } from './catalogue/buy.ts'
import { cal } from './catalogue/cal.ts'
import { chn } from './catalogue/chn.ts'
import { dep } from './catalogue/dep.ts'
import { fit } from './catalogue/fit.ts'
import { lim } from './catalogue/lim.ts'
import { log } from './catalogue/log.ts'
import { msh } from './catalogue/msh.ts'
import { mshContact } from './catalogue/msh-contact.ts'
import { mshFile } from './catalogue/msh-file.ts'
import { prc } from './catalogue/prc.ts'
import { prcBoard } from './catalogue/prc-board.ts'
import { prcCutting } from './catalogue/prc-cutting.ts'
import { prcModel } from './catalogue/prc-model.ts'
import { prcPrint } from './catalogue/prc-print.ts'
import { prcSetup } from './catalogue/prc-setup.ts'
import { qty } from './catalogue/qty.ts'
import { ref } from './catalogue/ref.ts'
import { shp } from './catalogue/shp.ts'
import { src } from './catalogue/src.ts'
import { srcAttached } from './catalogue/src-attached.ts'
import type { Message } from './message.ts'

/** All messages, by family and name: `messages.dep.circularWait`. */
export const messages: Messages = {
  src,
  srcAttached,
  shp,
  ref,
  qty,
  dep,
  prc,
  prcCutting,
  prcSetup,
  prcModel,
  prcPrint,
  prcBoard,
  fit,
  asm,
  asmDoubts,
  msh,
  mshContact,
  mshFile,
  cal,
  buy,
  lim,
  chn,
  log,
}

interface Messages {
  readonly src: typeof src
  readonly srcAttached: typeof srcAttached
  readonly shp: typeof shp
  readonly ref: typeof ref
  readonly qty: typeof qty
  readonly dep: typeof dep
  readonly prc: typeof prc
  readonly prcCutting: typeof prcCutting
  readonly prcSetup: typeof prcSetup
  readonly prcModel: typeof prcModel
  readonly prcPrint: typeof prcPrint
  readonly prcBoard: typeof prcBoard
  readonly fit: typeof fit
  readonly asm: typeof asm
  readonly asmDoubts: typeof asmDoubts
  readonly msh: typeof msh
  readonly mshContact: typeof mshContact
  readonly mshFile: typeof mshFile
  readonly cal: typeof cal
  readonly buy: typeof buy
  readonly lim: typeof lim
  readonly chn: typeof chn
  readonly log: typeof log
}

/** Every message, in the order of the codes. */
export function allMessages(): readonly Message<never>[] {
  const families: readonly Readonly<Record<string, Message<never>>>[] = Object.values(messages)
  return families
    .flatMap((family) => Object.values(family))
    .sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0))
}

/** The message of a code, in capitals or not; `null` when there is none. */
export function messageOf(code: string): Message<never> | null {
  return allMessages().find((entry) => entry.code === code.toUpperCase()) ?? null
}
