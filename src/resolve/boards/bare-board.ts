import type { Quantity } from '../../base/quantity.ts'
import { exactText } from '../../base/rounding.ts'
import { prcBoard } from '../../diagnostics/catalogue/prc-board.ts'
import { prcModel } from '../../diagnostics/catalogue/prc-model.ts'
import type { BoardMade, BoardPanel } from '../../model/placements.ts'
import type { Offer } from '../../model/project.ts'
import type { MadeSource, PanelSource, TraceCurrentSource } from '../../source/generated/project-types.ts'
import { field, type Spot } from '../../source/spot.ts'
import { type BoardProcessName, boardProcesses, boardVerdict } from '../../trade/boards/board-process.ts'
import { panelCount } from '../../trade/boards/panel-count.ts'
import { type TraceFound, traceWidth } from '../../trade/boards/trace-current.ts'
import type { Context } from '../context.ts'
import { isOutside } from '../printing/is-outside.ts'
import { listed, quantityAt, sizeAt, words } from '../reading.ts'
import { plainFigure } from '../worked-quantity.ts'

/** Ways of making boards as a person names them. */
const houseNames: Readonly<Record<string, BoardProcessName>> = {
  'isolation milling': 'milled',
  etching: 'etched',
  'board house': 'standard',
  'board house, 0.127 mm': 'five mil',
  'board house, fine': 'fine',
}
const saidAs = (name: BoardProcessName): string =>
  Object.keys(houseNames).find((said) => houseNames[said] === name) ?? name
const atHome: ReadonlySet<BoardProcessName> = new Set(['milled', 'etched'])

const mm = (quantity: Quantity | null): number | null => quantity?.value.valueOf() ?? null

/** How the bare board is made, as said. */
export function madeAt(context: Context, spot: Spot<MadeSource> | null): BoardMade | null {
  if (!spot) return null
  const length = (key: 'trace' | 'space' | 'hole') =>
    quantityAt(context, key, field(spot, key), 'length', 'above 0')
  return {
    at: spot.keyAt,
    by: words(field(spot, 'by')),
    trace: length('trace'),
    space: length('space'),
    hole: length('hole'),
  }
}

/** PRC50: features that are too fine for the way the board is made, with what would do, its price and its time. */
export function warnTooFine(
  context: Context,
  board: string,
  made: BoardMade,
  offers: readonly Offer[],
): void {
  const by = made.by ?? 'board house'
  const process = houseNames[by] ?? 'standard'
  const smallest = { trace: mm(made.trace), space: mm(made.space), hole: mm(made.hole) }
  const verdict = boardVerdict(smallest, process)
  if (isOutside(context, { of: `\`${board}\``, at: made.at }, verdict)) return
  const offer = offers[0]
  const wouldDo = verdict.wouldDo.map(saidAs)
  for (const { feature, hasMm } of verdict.troubles) {
    const least = boardProcesses[process][feature]
    if (!least) continue
    context.report(prcBoard.boardTooFine, made.at, {
      board,
      feature,
      has: hasMm,
      low: least.low,
      high: least.high,
      by,
      wouldDo,
      offer: offer && atHome.has(process) && wouldDo.length > 0 ? sayOffer(offer) : null,
    })
  }
}

function sayOffer({ vendor, prices, currency, lead }: Offer) {
  const first = prices?.[0]
  const price = first ? `${exactText(first.price.mul(first.from))} ${currency} for ${first.from}` : null
  return { vendor, price, lead: lead?.text ?? null }
}

/** Room beside a router where nothing is said, mm. Source: 1.6 to 2.4 mm, guidelines of board makers. */
const usualGap = 2

/** How many boards lie on the panel; `null` where none is said or none fits (told). */
export function panelAt(
  context: Context,
  board: string,
  spot: Spot<PanelSource> | null,
  outline: readonly Quantity[] | null,
): (BoardPanel & { readonly areaMm2: number }) | null {
  const size = spot ? sizeAt(context, 'size', field(spot, 'size'), 2) : null
  if (!spot || !size) return null
  if (!outline) {
    context.report(prcBoard.noPanel, spot.keyAt, { board, missing: 'outline' })
    return null
  }
  const [xMm, yMm] = size.map(({ value }) => value.valueOf())
  const [boardX, boardY] = outline.map(({ value }) => value.valueOf())
  const rail = mm(quantityAt(context, 'rails', field(spot, 'rails'), 'length')) ?? 0
  const gapMm = mm(quantityAt(context, 'gap', field(spot, 'gap'), 'length')) ?? usualGap
  const count = panelCount(
    { xMm: xMm!, yMm: yMm!, railXMm: rail, railYMm: 0 },
    { xMm: boardX!, yMm: boardY! },
    field(spot, 'score')?.value ? { by: 'score' } : { by: 'route', gapMm },
  )
  const of = { of: `the panel of \`${board}\``, at: spot.keyAt }
  if (isOutside(context, of, count) || holdsTooMany(context, of, count.count)) return null
  if (count.count === 0) {
    const say = (x: number, y: number) => `${plainFigure(x)} x ${plainFigure(y)} mm`
    context.report(prcBoard.nothingOnPanel, spot.keyAt, {
      board,
      size: say(boardX!, boardY!),
      panel: say(xMm!, yMm!),
    })
    return null
  }
  return { boards: count.count, worked: count.worked, areaMm2: xMm! * yMm! }
}

/** Most boards that one panel is believed to hold: what may be bought in a pack. */
const mostOnPanel = 100_000

/** PRC64: whether a panel would hold more boards than anybody parts. */
function holdsTooMany(context: Context, of: Parameters<typeof isOutside>[1], boards: number): boolean {
  if (boards <= mostOnPanel) return false
  const must = `at most ${mostOnPanel}`
  context.report(prcModel.figureOutside, of.at, { of: of.of, what: 'number of boards', value: boards, must })
  return true
}

/** One ounce of copper on a square foot is this thick, mm. */
const mmPerOunce = 0.035
const usualRise = 10

/** PRC51: traces that are too narrow for their current; the sums of all of them. */
export function tracesAt(
  context: Context,
  board: string,
  spot: Spot<TraceCurrentSource[]> | null,
): readonly string[] {
  return listed(spot).flatMap((one): readonly string[] => {
    const amps = mm(quantityAt(context, 'amps', field(one, 'amps'), 'current', 'above 0'))
    if (amps === null) return []
    const width = mm(quantityAt(context, 'width', field(one, 'width'), 'length', 'above 0'))
    const copper = mm(quantityAt(context, 'copper', field(one, 'copper'), 'length', 'above 0'))
    const riseK = riseOf(quantityAt(context, 'rise', field(one, 'rise'), 'temperature', 'above 0'))
    const needs = traceWidth({
      layer: field(one, 'layer')?.value ?? 'external',
      riseK,
      copperOz: (copper ?? mmPerOunce) / mmPerOunce,
      set: 'IPC-2221',
      currentA: amps,
    })
    if (isOutside(context, { of: `a trace of \`${board}\``, at: one.at }, needs)) return []
    const what = words(field(one, 'what'))
    if (width !== null && width < needs.widthMm * (1 - 1e-9))
      context.report(prcBoard.traceTooNarrow, (field(one, 'width') ?? one).at, {
        board,
        what,
        amps,
        width,
        needs: needs.widthMm,
        rise: riseK,
      })
    return linesOf(what, needs)
  })
}

const linesOf = (what: string | null, { worked, doubts }: TraceFound): readonly string[] =>
  [...worked, ...doubts].map((line) => `trace${what === null ? '' : ` ${what}`}: ${line}`)

/** A rise typed in degrees Celsius is a difference, not a temperature. */
function riseOf(rise: Quantity | null): number {
  if (!rise) return usualRise
  const kelvin = rise.value.valueOf()
  return rise.unit === 'K' ? kelvin : kelvin - 273.15
}
