import type { Borders, Fill, Font } from 'exceljs'
import type { Role } from '../../report/cells.ts'
import { box, colours, edge, font, solid } from './palette.ts'
import type { Stand } from './placing.ts'

/** How a role looks: font, and where it has one, fill and border. `wraps` is whether long text takes more lines. */
export interface Look {
  readonly font: Partial<Font>
  readonly fill?: Fill
  readonly border?: Partial<Borders>
  readonly wraps: boolean
}

const inputBox = box('dashed', colours.plum)

/**
 * The looks of the roles. Every difference that matters reads in black and white: weight, slant, size, a frame;
 * inputs are framed in dashes, places to write on by hand have a line below.
 */
export const looks: Readonly<Record<Role, Look>> = {
  title: { font: font(18, { bold: true }), wraps: false },
  subtitle: { font: font(11, { color: { argb: colours.soft } }), wraps: false },
  heading: { font: font(12, { bold: true }), border: { top: edge('thin', colours.ink) }, wraps: false },
  head: {
    font: font(10, { bold: true }),
    fill: solid(colours.sand),
    border: { top: edge('thin', colours.ink), bottom: edge('medium', colours.ink) },
    wraps: true,
  },
  body: { font: font(10), wraps: true },
  label: { font: font(10, { color: { argb: colours.soft } }), wraps: true },
  total: { font: font(10, { bold: true }), wraps: true },
  note: { font: font(9, { italic: true, color: { argb: colours.soft } }), wraps: true },
  input: { font: font(10), fill: solid(colours.lilac), border: inputBox, wraps: true },
  tick: { font: font(11), wraps: false },
  blank: { font: font(10), border: { bottom: edge('thin', colours.ink) }, wraps: true },
  error: { font: font(10, { bold: true, color: { argb: colours.plum } }), wraps: true },
  warning: { font: font(10, { bold: true }), wraps: true },
  caution: {
    font: font(10, { bold: true }),
    fill: solid(colours.mist),
    border: { left: edge('thick', colours.plum) },
    wraps: true,
  },
  strong: { font: font(10, { bold: true }), wraps: true },
  figure: { font: font(14, { bold: true }), wraps: true },
}

/** The role of a cell that names none, by the row it stands in. */
export const roleOfStand: Readonly<Record<Stand, Role>> = {
  free: 'body',
  head: 'head',
  body: 'body',
  total: 'total',
  gap: 'body',
}

/** Lines that a row draws under or over every cell that has no frame of its own. */
export const ruleOfStand: Readonly<Record<Stand, Partial<Borders>>> = {
  free: {},
  head: {},
  body: { bottom: edge('thin') },
  total: { top: edge('thin', colours.ink), bottom: edge('double', colours.ink) },
  gap: {},
}
