import { firstOutside, type OutOfDomain, wholeUp } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'
import { readPackage } from './read-package.ts'

/** Pieces lost while placing: a share of the need or a least number, whichever is more. */
export interface Attrition {
  readonly fraction: number
  readonly least: number
  readonly source: string
}

const practice = 'common practice, no source'

/** Usual losses by package. Source: common practice, no source. */
export const attritions = {
  tiny: { fraction: 0.1, least: 10, source: practice },
  small: { fraction: 0.05, least: 5, source: practice },
  other: { fraction: 0, least: 1, source: practice },
} as const satisfies Record<string, Attrition>

/** Usual loss for a package: chips to 0402, chips to 1206, and one spare for all else, known or not. */
export function attritionOf(packageName: string): Attrition {
  const chip = readPackage(packageName)?.chip ?? null
  if (chip === null) return attritions.other
  if (['01005', '0201', '0402'].includes(chip)) return attritions.tiny
  return ['0603', '0805', '1206'].includes(chip) ? attritions.small : attritions.other
}

/** What is needed of one part. */
export interface PieceNeed {
  readonly perBoard: number
  readonly boards: number
  readonly attrition: Attrition
  /** Pieces sold together; 1 where they are sold singly. */
  readonly packOf: number
}

/** Pieces and packs to buy. */
export interface PiecesToBuy {
  readonly placed: number
  readonly spare: number
  readonly pieces: number
  readonly packs: number
  readonly bought: number
  readonly leftOver: number
  readonly worked: readonly string[]
}

/** Pieces to buy for a number of boards, loss included, in whole packs. A part that is not placed is not bought. */
export function piecesToBuy(need: PieceNeed): PiecesToBuy | OutOfDomain {
  const outside =
    firstOutside(need, {
      perBoard: 'whole, 0 or more',
      boards: 'whole, 0 or more',
      packOf: 'whole, 1 or more',
    }) ?? firstOutside(need.attrition, { fraction: '0 to 1', least: 'whole, 0 or more' })
  if (outside) return outside
  const { perBoard, boards, attrition, packOf } = need
  const placed = perBoard * boards
  const spare = placed === 0 ? 0 : Math.max(wholeUp(placed * attrition.fraction), attrition.least)
  const pieces = placed + spare
  const packs = wholeUp(pieces / packOf)
  const share = `max(${figure(attrition.fraction * 100)} %, ${attrition.least})`
  const worked = [
    `${boards} boards x ${perBoard} + ${share} = ${placed} + ${spare} = ${pieces} (${attrition.source})`,
  ]
  if (packOf > 1) worked.push(`packs of ${packOf}: ${packs}, ${packs * packOf - pieces} left over`)
  return { placed, spare, pieces, packs, bought: packs * packOf, leftOver: packs * packOf - pieces, worked }
}
