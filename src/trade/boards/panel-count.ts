import { firstOutside, type OutOfDomain, wholeDown, wholeUp } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'

/** How boards of a panel are parted: scored lines leave no gap, a router leaves the width of its cutter. */
export type Separation = { readonly by: 'score' } | { readonly by: 'route'; readonly gapMm: number }

/** A panel: `x` and `y` are its two directions. Rails lie at both ends of their direction; 0 where there are none. */
export interface Panel {
  readonly xMm: number
  readonly yMm: number
  readonly railXMm: number
  readonly railYMm: number
}

/** Outline of a board as a rectangle. */
export interface BoardOutline {
  readonly xMm: number
  readonly yMm: number
}

/** Boards along both sides of a panel in one orientation. */
export interface PanelGrid {
  readonly across: number
  readonly deep: number
  readonly count: number
}

/** How many boards a panel holds, in the better orientation; a tie stays unturned. */
export interface PanelCount {
  readonly count: number
  readonly turned: boolean
  readonly straightGrid: PanelGrid
  readonly turnedGrid: PanelGrid
  /** Share of the panel that boards cover, 0 to 1. */
  readonly covered: number
  readonly worked: readonly string[]
}

/**
 * Boards on a panel, both orientations tried.
 * Source: n = floor((L - 2 r - 2 g_e + g) / (b + g)) along each side (guidelines of board makers; the sum is geometry);
 * the gap beside a rail, g_e, is that between boards, and none where there is no rail.
 * Needs for a score: straight lines through the whole panel and equal boards.
 */
export function panelCount(
  panel: Panel,
  board: BoardOutline,
  separation: Separation,
): PanelCount | OutOfDomain {
  const gapMm = separation.by === 'route' ? separation.gapMm : 0
  const outside =
    firstOutside(panel, { xMm: 'above 0', yMm: 'above 0', railXMm: '0 or more', railYMm: '0 or more' }) ??
    firstOutside(board, { xMm: 'above 0', yMm: 'above 0' }) ??
    firstOutside({ gapMm }, { gapMm: '0 or more' })
  if (outside) return outside
  const straightGrid = gridOf(panel, board, gapMm)
  const turnedGrid = gridOf(panel, { xMm: board.yMm, yMm: board.xMm }, gapMm)
  const turned = turnedGrid.count > straightGrid.count
  const { count } = turned ? turnedGrid : straightGrid
  return {
    count,
    turned,
    straightGrid,
    turnedGrid,
    covered: (count * board.xMm * board.yMm) / (panel.xMm * panel.yMm),
    worked: [
      `as drawn: ${say(panel, board, gapMm, straightGrid)}`,
      `turned: ${say(panel, { xMm: board.yMm, yMm: board.xMm }, gapMm, turnedGrid)}`,
      `${count} on a panel${turned ? ', turned' : ''}`,
    ],
  }
}

function gridOf(panel: Panel, board: BoardOutline, gapMm: number): PanelGrid {
  const across = alongSide(panel.xMm, panel.railXMm, board.xMm, gapMm)
  const deep = alongSide(panel.yMm, panel.railYMm, board.yMm, gapMm)
  return { across, deep, count: across * deep }
}

function alongSide(sideMm: number, railMm: number, boardMm: number, gapMm: number): number {
  return Math.max(0, wholeDown((roomFor(sideMm, railMm, gapMm) + gapMm) / (boardMm + gapMm)))
}

function roomFor(sideMm: number, railMm: number, gapMm: number): number {
  return sideMm - 2 * railMm - (railMm > 0 ? 2 * gapMm : 0)
}

function say(panel: Panel, board: BoardOutline, gapMm: number, { across, deep, count }: PanelGrid): string {
  const side = (sideMm: number, railMm: number, boardMm: number) =>
    `(${figure(roomFor(sideMm, railMm, gapMm))} + ${figure(gapMm)}) / (${figure(boardMm)} + ${figure(gapMm)})`
  const x = side(panel.xMm, panel.railXMm, board.xMm)
  return `${x} -> ${across}, ${side(panel.yMm, panel.railYMm, board.yMm)} -> ${deep}: ${count}`
}

/** Panels to order, and boards that come with them. */
export interface PanelsNeeded {
  readonly panels: number
  readonly boardsMade: number
  readonly worked: readonly string[]
}

/** Panels for a number of boards; spares are added first. Source: ceil((boards + spares) / per panel). */
export function panelsNeeded(order: {
  readonly boards: number
  readonly spares: number
  readonly perPanel: number
}): PanelsNeeded | OutOfDomain {
  const outside = firstOutside(order, {
    boards: 'whole, 0 or more',
    spares: 'whole, 0 or more',
    perPanel: 'whole, 1 or more',
  })
  if (outside) return outside
  const { boards, spares, perPanel } = order
  const panels = wholeUp((boards + spares) / perPanel)
  const line = `panels = (${boards} + ${spares} spare) / ${perPanel}, rounded up = ${panels}`
  return { panels, boardsMade: panels * perPanel, worked: [line] }
}

/**
 * Usual sizes of panels in millimetres.
 * Source: guidelines of board makers and assemblers; routing gaps above 1.6 mm are trade usage.
 */
export const panelUsual = {
  railMm: { low: 5, high: 10 },
  routeGapMm: { low: 1.6, high: 2.4 },
  copperBackFromScoreMm: 0.5,
  scoreWebOfThickness: 1 / 3,
  fiducialMm: 1,
  fiducialFromEdgeMm: 3.85,
  makerPanelMm: [457, 610],
  makerUsableMm: [406, 559],
} as const
