import { chipLoads, leastChipMm } from './chip-loads.ts'
import { centredArc, meanChip, sideArc, thinning } from './formulas.ts'
import { figure, type Notebook, needed } from './notebook.ts'
import { heldFeed } from './spindle-speed.ts'
import type { Cutter, CuttingMachine, StatedCut, WorkMaterial } from './types.ts'

/** How a milling cutter meets the work. */
export interface Engagement {
  /** Width of the cut across the cutter, a_e. */
  readonly stepMm: number
  readonly diameterMm: number
  /** The cutter runs with its centre over the cut, as in facing a narrow top or a slot. */
  readonly isCentred?: boolean
  /** One side of the cut is open, as in facing: a full width is no slot there. */
  readonly isOpen?: boolean
  /** The usual chip load is raised where the engagement thins the chip. */
  readonly raisesThinned?: boolean
  /** Angle between edge and feed; 90 for a straight tooth. */
  readonly enteringAngleDeg?: number
}

/** Everything a milling feed is found from. */
export interface MillingQuestion {
  readonly rpm: number
  readonly engaged: Engagement
  readonly stated: StatedCut
  readonly cutter: Cutter
  readonly material: WorkMaterial
  readonly machine: CuttingMachine
}

/** Feed of the edge and the chip it takes. */
export interface MillingFeed {
  readonly feedMmPerMin: number
  readonly chipLoadMm: number
  /** Mean thickness. */
  readonly chipMm: number
}

/** Raising a feed for thinned chips stops here. Source: common practice, no source. */
const mostRaise = 2

/**
 * Feed in mm/min of a milling cutter: as stated, or from the stated or usual chip load, held to what the axis can do;
 * with the chip that results, checked against rubbing and against what a tooth stands.
 * Source: v_f = n z f_z; thinned chips f_z = h / sqrt(1 - (1 - 2 a_e/D)^2), milling formulas.
 */
export function millingFeed(question: MillingQuestion, note: Notebook): MillingFeed | null {
  const { rpm, stated, cutter, machine } = question
  const flutes = needed(cutter.flutes, 'flutes', note)
  const wanted = stated.feedMmPerMin ?? fromChipLoad(question, flutes, note)
  if (flutes === null || wanted === null) return null
  if (stated.feedMmPerMin) note.worked.push(`v_f = ${figure(wanted)} mm/min as stated`)
  const feed = heldFeed(wanted, machine, Boolean(stated.feedMmPerMin ?? stated.feedMmPerRev), note)
  const load = feed / (rpm * flutes)
  return { feedMmPerMin: feed, chipLoadMm: load, chipMm: chip(question, load, note) }
}

function fromChipLoad(question: MillingQuestion, flutes: number | null, note: Notebook): number | null {
  const load = statedLoad(question.stated, flutes) ?? usualLoad(question, note)
  if (load === null || flutes === null) return null
  const feed = question.rpm * flutes * load
  const sum = `${figure(question.rpm)} rpm x ${flutes} x ${figure(load)} mm`
  note.worked.push(`v_f = n z f_z = ${sum} = ${figure(feed)} mm/min`)
  return feed
}

/** What a tooth is to take: its share of a stated feed of one turn, else the maker's chip load. */
function statedLoad({ feedMmPerRev, chipLoadMm }: StatedCut, flutes: number | null): number | null {
  return feedMmPerRev && flutes ? feedMmPerRev / flutes : (chipLoadMm ?? null)
}

function usualLoad({ engaged, material }: MillingQuestion, note: Notebook): number | null {
  const { stepMm, diameterMm, isCentred, isOpen } = engaged
  const table = material.group ? chipLoads[material.group] : null
  if (!table) return needed(null, material.group ? 'chip load' : 'material group', note)
  const rated = table.startRatio * diameterMm
  const slotted = isOpen !== true && stepMm >= 0.9 * diameterMm
  const raise =
    engaged.raisesThinned && !isCentred ? Math.min(1 / thinning(stepMm, diameterMm), mostRaise) : 1
  const load = slotted ? rated / 2 : rated * raise
  const how = slotted ? ', halved for a slot' : raise > 1 ? `, x ${figure(raise)} for thinned chips` : ''
  note.assumed.push({
    what: 'chip load',
    value: `${figure(load)} mm (${table.startRatio} D${how})`,
    source:
      how === ''
        ? table.source
        : `${table.source}; ${slotted ? 'common practice, no source' : 'milling formulas'}`,
  })
  return load
}

function chip({ engaged, cutter, material }: MillingQuestion, load: number, note: Notebook): number {
  const { stepMm, diameterMm, isCentred, enteringAngleDeg = 90 } = engaged
  const arc = isCentred ? centredArc(stepMm, diameterMm) : sideArc(Math.min(stepMm, diameterMm), diameterMm)
  const lean = Math.sin((enteringAngleDeg * Math.PI) / 180)
  const mean = meanChip(load, stepMm, diameterMm, arc) * lean
  const thickest = load * (isCentred ? 1 : thinning(stepMm, diameterMm)) * lean
  const share = `2 x ${figure(load)} mm x ${figure(Math.min(stepMm, diameterMm))} mm / (${figure(diameterMm)} mm x ${figure(arc)})`
  note.worked.push(`h_m = ${share}${lean < 1 ? ` x ${figure(lean)}` : ''} = ${figure(mean)} mm`)
  const table = material.group ? chipLoads[material.group] : null
  const most = cutter.mostChipMm ?? (table ? table.mostRatio * diameterMm : null)
  if (thickest < leastChipMm)
    note.troubles.push({ trouble: 'chip too thin', chipMm: thickest, leastMm: leastChipMm })
  if (most !== null && thickest > most * (1 + 1e-9))
    note.troubles.push({ trouble: 'chip too thick', chipMm: thickest, mostMm: most })
  return mean
}
