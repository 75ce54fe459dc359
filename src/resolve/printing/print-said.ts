import type { PrintPiece, PrintSaid } from '../../model/print.ts'
import type { PrintedWaySource } from '../../source/generated/project-types.ts'
import { field, type Spot } from '../../source/spot.ts'
import type { Context } from '../context.ts'
import { quantityAt, ratioAt, sizeAt } from '../reading.ts'

/** A piece before it is worked out. */
export const notWorkedOut: PrintPiece = {
  heightMm: null,
  footprintMm: null,
  materialMm3: null,
  seconds: null,
  worked: [],
  assumed: [],
}

/** What is said of a printed part for its print. */
export function printSaidAt(context: Context, spot: Spot<PrintedWaySource>): PrintSaid {
  const length = (key: 'height' | 'wall' | 'hole') =>
    quantityAt(context, key, field(spot, key), 'length', 'above 0')
  const footprint = sizeAt(context, 'footprint', field(spot, 'footprint'), 2)
  return {
    height: length('height'),
    footprint: footprint && [footprint[0]!, footprint[1]!],
    supports: quantityAt(context, 'supports', field(spot, 'supports'), 'ratio'),
    infill: ratioAt(context, 'infill', field(spot, 'infill')),
    walls: field(spot, 'walls')?.value ?? null,
    wall: length('wall'),
    hole: length('hole'),
    shrink: quantityAt(context, 'shrink', field(spot, 'shrink'), 'ratio'),
  }
}
