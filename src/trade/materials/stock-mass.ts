/** A piece of stock by its shape. */
export type StockShape =
  | { readonly shape: 'round'; readonly diameterMm: number; readonly lengthMm: number }
  /** Across flats. */
  | { readonly shape: 'hex'; readonly acrossMm: number; readonly lengthMm: number }
  | { readonly shape: 'square'; readonly sideMm: number; readonly lengthMm: number }
  | { readonly shape: 'tube'; readonly outerMm: number; readonly innerMm: number; readonly lengthMm: number }
  /** Plate, flat or block. */
  | {
      readonly shape: 'block'
      readonly lengthMm: number
      readonly widthMm: number
      readonly heightMm: number
    }

/** Why a piece has no volume: a side that is not positive and finite, or a tube without a wall. */
export interface ShapeFault {
  readonly fault: 'no such shape'
  readonly what: string
}

const most = 1e6

/** Area in mm2 of what a saw goes through. Source: geometry; hexagon sqrt(3)/2 of its width across flats squared. */
export function stockSection(piece: StockShape): number | ShapeFault {
  const fault = shapeFault(piece)
  if (fault) return fault
  switch (piece.shape) {
    case 'round':
      return (Math.PI / 4) * piece.diameterMm ** 2
    case 'hex':
      return (Math.sqrt(3) / 2) * piece.acrossMm ** 2
    case 'square':
      return piece.sideMm ** 2
    case 'tube':
      return (Math.PI / 4) * (piece.outerMm ** 2 - piece.innerMm ** 2)
    case 'block':
      return piece.widthMm * piece.heightMm
  }
}

/** Volume in mm3 of a piece of stock. Source: section x length, geometry. */
export function stockVolume(piece: StockShape): number | ShapeFault {
  const section = stockSection(piece)
  return typeof section === 'number' ? section * piece.lengthMm : section
}

/** Mass in grams of a piece of stock. Source: density x volume. */
export function stockMass(piece: StockShape, densityGPerCm3: number): number | ShapeFault {
  if (!(densityGPerCm3 > 0 && densityGPerCm3 <= 100))
    return { fault: 'no such shape', what: 'densityGPerCm3' }
  const volume = stockVolume(piece)
  return typeof volume === 'number' ? (volume * densityGPerCm3) / 1000 : volume
}

function shapeFault(piece: StockShape): ShapeFault | null {
  const sides = Object.entries(piece).filter(([name]) => name !== 'shape') as [string, number][]
  const bad = sides.find(([, value]) => !(Number.isFinite(value) && value > 0 && value <= most))
  if (bad) return { fault: 'no such shape', what: bad[0] }
  if (piece.shape === 'tube' && piece.innerMm >= piece.outerMm)
    return { fault: 'no such shape', what: 'innerMm' }
  return null
}
