import { figure, type Notebook, needed } from './notebook.ts'
import { heldFeed } from './spindle-speed.ts'
import type { CuttingMachine, StatedCut } from './types.ts'

/** A feed along the axis and what one turn of it is. */
export interface TurningFeed {
  readonly feedMmPerMin: number
  readonly feedMmPerRev: number
}

/** A feed of one turn to begin with, with where it comes from. */
export interface UsualFeed {
  readonly feedMmPerRev: number
  readonly source: string
}

/**
 * Feed of a drill, reamer or single-point tool: as stated, or from the stated or usual feed of one turn, held to what
 * the axis can do. Gives: `null` with a note where nobody states one and no table has one.
 * Source: v_f = n f, makers' catalogues.
 */
export function turningFeed(
  rpm: number,
  question: {
    readonly stated: StatedCut
    readonly usual: UsualFeed | null
    readonly machine: CuttingMachine
    /** Edges that share the feed of one turn; one when silent. */
    readonly flutes?: number | null
  },
  note: Notebook,
): TurningFeed | null {
  const { stated, usual, machine } = question
  if (stated.feedMmPerMin) {
    note.worked.push(`v_f = ${figure(stated.feedMmPerMin)} mm/min as stated`)
    return ofTurn(heldFeed(stated.feedMmPerMin, machine, true, note), rpm)
  }
  const perRev = statedPerRev(stated, question.flutes ?? 1) ?? usual?.feedMmPerRev
  if (!perRev) {
    needed(null, 'feed', note)
    return null
  }
  if (!statedPerRev(stated, 1) && usual)
    note.assumed.push({ what: 'feed', value: `${figure(perRev)} mm/rev`, source: usual.source })
  const wanted = rpm * perRev
  note.worked.push(`v_f = n f = ${figure(rpm)} rpm x ${figure(perRev)} mm = ${figure(wanted)} mm/min`)
  return ofTurn(heldFeed(wanted, machine, Boolean(stated.feedMmPerRev), note), rpm)
}

/** Feed of one turn as it is stated, else what the edges take together by their maker. */
function statedPerRev({ feedMmPerRev, chipLoadMm }: StatedCut, flutes: number): number | null {
  return feedMmPerRev ?? (chipLoadMm ? chipLoadMm * flutes : null)
}

const ofTurn = (feedMmPerMin: number, rpm: number): TurningFeed => ({
  feedMmPerMin,
  feedMmPerRev: feedMmPerMin / rpm,
})
