import type { Step } from '../model/assembly.ts'
import type { Join } from '../model/joins.ts'
import type { InspectionLine, ShownCaution } from '../model/results.ts'
import { sayCaution } from './caution-rows.ts'
import type { Cell, Row } from './cells.ts'
import { sayLimits } from './inspection-cells.ts'
import { blank, text, tick, writeHere } from './make-cells.ts'
import { sayAction, sayFailure, sayHow, sayStepTime, sayWaits } from './say-step.ts'
import { sentences } from './say-time.ts'

/** Devices with a column of their own. */
export const mostBoxes = 4
/** The picture that shows a step, by its id, and from where; or in a few words why there is none. */
export type BesideStep = { readonly picture: string; readonly seen: string } | { readonly without: string }

/** A step on the checklist. */
export interface StepStand {
  readonly step: Step
  readonly number: number
  /** The step written just before it. */
  readonly before: Step | null
  readonly planned: string
  readonly pieces: number
  /** Reminders first called for here. */
  readonly cautions: readonly ShownCaution[]
  readonly back: string | null
  readonly inspection: readonly InspectionLine[]
  /** Absent: the list has no column for pictures. */
  readonly beside?: BesideStep
  /** Where it comes from by its meshes, in words; `null`: it is typed, or they do not tell. */
  readonly way: string | null
  /** What meets in it; `null`: nothing is known. */
  readonly join: Join | null
}

/** Columns of boxes for so many pieces. */
export const boxColumns = (pieces: number): number => (pieces > mostBoxes ? 1 : Math.max(1, pieces))

/** The rows of a step: reminders and what cannot be undone before it, the action, then its check with a place for each piece, and what to know. */
export function stepRows(stand: StepStand): readonly Row[] {
  const { step, pieces } = stand
  const boxes = boxColumns(pieces)
  const wide = wordColumns(stand) + boxes
  const over = (words: string, role: 'caution' | 'strong' | 'body'): Row => ({
    cells: [blank(), text(words, { span: wide - 1, role })],
    keep: true,
  })
  const failure = sayFailure(step)
  const own = step.cautions.map((words) => over(`Mind: ${words}`, 'caution'))
  const usual = stand.cautions.map((one) => over(sayCaution(one), 'caution'))
  const after = [
    ...(stand.join?.says ?? []).map((words) => over(words, 'body')),
    ...checkRows(stand, boxes),
    ...(failure === '' ? [] : [over(failure, 'body')]),
    ...manyBoxes(stand, wide),
  ]
  const action = stand.beside ? narrowAction(stand, boxes) : [actionRow(stand, boxes)]
  const back = stand.back === null ? [] : [over(stand.back, 'strong')]
  const rows = besidePicture(stand, wide, [...usual, ...own, ...back, ...action, ...after])
  return rows.map((row, at) => ({ ...row, keep: at < rows.length - 1 }))
}

/** Columns before the boxes, but for that of pictures: number, action, manner, days and time, or number and all words. */
const wordColumns = ({ beside }: StepStand): number => (beside ? 2 : 5)

/** The rows with one number and the picture beside all of them. */
function besidePicture({ beside, number }: StepStand, wide: number, rows: readonly Row[]): readonly Row[] {
  if (!beside) return rows
  const seen = 'seen' in beside ? text(beside.seen, { span: wide - 1, role: 'note' }) : null
  const filled = seen ? [...rows, { cells: [blank(), seen], fills: true }] : rows
  const down = filled.length
  const shown =
    'picture' in beside
      ? blank({ picture: beside.picture, down })
      : text(beside.without, { role: 'note', down })
  return filled.map((row, at): Row => {
    const first = at === 0 ? [text(`${number}`, { down }), shown] : [blank(), blank()]
    return { ...row, cells: [...first, ...row.cells.slice(1)] }
  })
}

function actionRow(stand: StepStand, boxes: number): Row {
  const { step, number, planned } = stand
  return {
    cells: [
      text(`${number}`),
      text(sayAction(step), { role: 'strong' }),
      text(manner(stand), { indent: 1 }),
      text(planned, { indent: 1 }),
      text(sayStepTime(step)),
      ...tickBoxes(stand, boxes),
    ],
  }
}

/** What is done, and below it over the whole width how long it takes, when and how. */
function narrowAction(stand: StepStand, boxes: number): readonly Row[] {
  const { step, planned } = stand
  const when = planned === '' ? '' : `, planned ${planned}`
  const below = sentences(`${sayStepTime(step)}${when}`, manner(stand))
  return [
    { cells: [blank(), text(sayAction(step), { role: 'strong' }), ...tickBoxes(stand, boxes)] },
    { cells: [blank(), text(below, { span: 1 + boxes })] },
  ]
}

const manner = ({ step, before, way }: StepStand): string =>
  sentences(way, sayHow(step), sayWaits(step, before), step.note)

function tickBoxes({ step }: StepStand, boxes: number): readonly Cell[] {
  return step.together && boxes > 1 ? [tick({ span: boxes })] : Array.from({ length: boxes }, () => tick())
}

function checkRows(stand: StepStand, boxes: number): readonly Row[] {
  const { step, inspection, pieces } = stand
  const many = pieces > mostBoxes
  const places = (): Cell[] =>
    many ? [text('see Inspection', { role: 'note' })] : Array.from({ length: boxes }, () => writeHere())
  const found = [step.check, step.test].filter((one) => one !== null)
  return found.map((words): Row => {
    const line = inspection.find(({ requirement }) => requirement === words)
    const limits = line ? sayLimits(line) : ''
    const record = line ? `, inspection ${line.number}` : ''
    const said =
      words === step.test
        ? `Write the result${record}`
        : `Check: ${words}${limits === '' ? '' : ` (${limits})`}${record}`
    return { cells: [blank(), text(said, { span: wordColumns(stand) - 1 }), ...places()] }
  })
}

/** Boxes by number where the pieces are too many for columns. */
function manyBoxes({ step, pieces }: StepStand, wide: number): readonly Row[] {
  if (pieces <= mostBoxes || step.together) return []
  const boxes = Array.from({ length: pieces }, (_, at) => `☐ ${at + 1}`).join('   ')
  return [{ cells: [blank(), text(`Done on:   ${boxes}`, { span: wide - 1 })] }]
}
