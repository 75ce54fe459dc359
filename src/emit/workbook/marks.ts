import type { Borders, Fill, Font } from 'exceljs'
import type { Mark } from '../../report/cells.ts'
import { box, colours, edge, font, solid } from './palette.ts'

/** The picture of a mark: a fill that differs without colour, a frame where needed, and a sign in text. */
export interface MarkLook {
  readonly sign: string
  readonly fill: Fill
  readonly border?: Partial<Borders>
  readonly font: Partial<Font>
}

const pale = font(9, { bold: true, color: { argb: colours.paper } })
const dark = font(9, { bold: true })

function pattern(kind: 'lightUp' | 'gray125'): Fill {
  return {
    type: 'pattern',
    pattern: kind,
    fgColor: { argb: colours.slate },
    bgColor: { argb: colours.paper },
  }
}

const rail = edge('medium', colours.slate)

/**
 * Every mark of the schedule chart. Hands at work are dark, what sets the date is darkest and framed, a run alone is
 * hatched, away dotted, held a rail of two lines, closed all but empty, the wanted day a heavy line at its left.
 * Signs are plain letters, so that a print without shades, or a program that draws no hatching, still reads.
 */
export const markLooks: Readonly<Record<Mark, MarkLook>> = {
  work: { sign: 'w', fill: solid(colours.slate), font: pale },
  critical: { sign: 'C', fill: solid(colours.ink), border: box('medium', colours.plum), font: pale },
  unattended: { sign: 'u', fill: pattern('lightUp'), font: dark },
  away: { sign: 'a', fill: pattern('gray125'), font: dark },
  held: { sign: 'h', fill: solid(colours.paper), border: { top: rail, bottom: rail }, font: dark },
  closed: { sign: '·', fill: solid(colours.mist), font: font(9, { color: { argb: colours.soft } }) },
  wanted: {
    sign: '|',
    fill: solid(colours.paper),
    border: { left: edge('thick', colours.ink) },
    font: font(9, { bold: true }),
  },
}
