import type { Border, Borders, Fill, Font } from 'exceljs'

/** Colours as the file writes them: opacity and red, green, blue. Few, muted, and none carries meaning alone. */
export const colours = {
  ink: 'FF1F2A30',
  soft: 'FF4E585C',
  slate: 'FF5A6C74',
  sand: 'FFEAE4D6',
  mist: 'FFF5F2EA',
  line: 'FFBDB6A6',
  plum: 'FF6A2E52',
  lilac: 'FFF4EEF6',
  paper: 'FFFFFFFF',
} as const

/** One of the colours of the workbook. */
export type Colour = (typeof colours)[keyof typeof colours]

/** Tabs by group, for order by eye; the names say the same. */
export const tabColours = {
  overview: 'FF33474F',
  money: 'FF8A7B4F',
  making: 'FF8C5B45',
  time: 'FF6A2E52',
  assembly: 'FF5A6A4A',
  notes: 'FF9A9A94',
} as const

/** A whole font: name, size and colour are always written, or readers fall back to faces of their own. */
export function font(size: number, more: Partial<Font> = {}): Partial<Font> {
  return { name: 'Calibri', family: 2, size, color: { argb: colours.ink }, ...more }
}

/** An even fill. */
export function solid(argb: Colour): Fill {
  return { type: 'pattern', pattern: 'solid', fgColor: { argb } }
}

/** A line of a border. */
export function edge(style: NonNullable<Border['style']>, argb: Colour = colours.line): Partial<Border> {
  return { style, color: { argb } }
}

/** The same line on all four sides. */
export function box(style: NonNullable<Border['style']>, argb: Colour): Partial<Borders> {
  const side = edge(style, argb)
  return { top: side, left: side, bottom: side, right: side }
}
