import { firstOutside, type OutOfDomain } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'

/** What a way of making boards has a least size for. */
export type BoardFeature = 'trace' | 'space' | 'hole'

/** Below `low` it fails; from `high` on it comes out; between them it depends on care and machine. */
export interface LeastBoardSize {
  readonly low: number
  readonly high: number
}

/** A way of making boards with its least sizes in millimetres; `null` where none is known. */
export interface BoardProcess {
  readonly says: string
  readonly trace: LeastBoardSize
  readonly space: LeastBoardSize
  /** Finished diameter. */
  readonly hole: LeastBoardSize | null
}

const from = (low: number, high = low): LeastBoardSize => ({ low, high })

/** Ways of making boards, coarse to fine within bought and home-made. Source: common practice, no source. */
export const boardProcesses = {
  standard: { says: 'bought, standard', trace: from(0.15), space: from(0.15), hole: from(0.3) },
  'five mil': { says: 'bought, 0.127 mm class', trace: from(0.127), space: from(0.127), hole: from(0.3) },
  fine: { says: 'bought, finer, at extra cost', trace: from(0.1), space: from(0.1), hole: from(0.2) },
  milled: {
    says: 'isolation milling on a small mill',
    trace: from(0.2, 0.4),
    space: from(0.1, 0.3),
    hole: null,
  },
  etched: {
    says: 'toner or film etching at home',
    trace: from(0.25, 0.4),
    space: from(0.25, 0.4),
    hole: null,
  },
} as const satisfies Record<string, BoardProcess>

/** Name of a way of making boards. */
export type BoardProcessName = keyof typeof boardProcesses

/** A feature too fine for the process, or so fine that it is doubtful. */
export interface BoardTrouble {
  readonly trouble: 'too fine' | 'doubtful'
  readonly feature: BoardFeature
  readonly hasMm: number
  readonly needsMm: number
  readonly shortMm: number
  readonly says: string
}

/** Smallest features of a layout in millimetres; `null` where it has none. */
export type SmallestOnBoard = Readonly<Record<BoardFeature, number | null>>

/** What is too fine for a process, which processes would make the whole layout, and what could not be judged. */
export interface BoardVerdict {
  readonly troubles: readonly BoardTrouble[]
  /** Processes that make every feature without doubt. */
  readonly wouldDo: readonly BoardProcessName[]
  /** Features that the table has no figure for. */
  readonly notJudged: readonly BoardFeature[]
  readonly worked: readonly string[]
}

const features = ['trace', 'space', 'hole'] as const
const names = Object.keys(boardProcesses) as readonly BoardProcessName[]

/** Whether a layout can be made by a process, and by how much it is too fine where it cannot. */
export function boardVerdict(
  smallest: SmallestOnBoard,
  process: BoardProcessName,
): BoardVerdict | OutOfDomain {
  const outside = firstOutside(smallest, { trace: 'above 0', space: 'above 0', hole: 'above 0' })
  if (outside) return outside
  const troubles = troublesIn(smallest, process)
  const unknown = (name: BoardProcessName) =>
    features.filter((feature) => smallest[feature] !== null && boardProcesses[name][feature] === null)
  const wouldDo = names.filter(
    (name) => troublesIn(smallest, name).length === 0 && unknown(name).length === 0,
  )
  const list = wouldDo.length === 0 ? 'none of the table' : wouldDo.join(', ')
  return {
    troubles,
    wouldDo,
    notJudged: unknown(process),
    worked: [
      ...troubles.map(({ says }) => says),
      ...unknown(process).map((feature) => `${feature}: no figure for ${process}`),
      `would make it: ${list}`,
    ],
  }
}

function troublesIn(smallest: SmallestOnBoard, process: BoardProcessName): BoardTrouble[] {
  return features.flatMap((feature) => {
    const [hasMm, least] = [smallest[feature], boardProcesses[process][feature]]
    if (hasMm === null || least === null || hasMm >= least.high * (1 - 1e-9)) return []
    const fails = hasMm < least.low * (1 - 1e-9)
    const needsMm = fails ? least.low : least.high
    const shortMm = needsMm - hasMm
    const needs =
      least.low === least.high ? figure(least.low) : `${figure(least.low)} to ${figure(least.high)}`
    const says = `${feature} ${figure(hasMm)} mm, ${process} needs ${needs} mm: short by ${figure(shortMm)} mm`
    return [{ trouble: fails ? 'too fine' : 'doubtful', feature, hasMm, needsMm, shortMm, says } as const]
  })
}
