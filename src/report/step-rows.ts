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
/** Columns before the boxes. */
export const leading = 5

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
  /** The picture that shows it, by its id; `null`: none. Absent: the list has no column for pictures. */
  readonly picture?: string | null
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
  const wide = leading + boxes
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
  const action = actionRow(stand, boxes)
  const back = stand.back === null ? [] : [over(stand.back, 'strong')]
  const rows = besidePicture(stand, wide, [...usual, ...own, ...back, action, ...after])
  return rows.map((row, at) => ({ ...row, keep: at < rows.length - 1 }))
}

/** The rows with the picture beside all of them, behind the number. */
function besidePicture({ picture }: StepStand, wide: number, rows: readonly Row[]): readonly Row[] {
  if (picture === undefined) return rows
  const filled =
    picture === null ? rows : [...rows, { cells: [blank(), blank({ span: wide - 1 })], fills: true }]
  const shown = picture === null ? {} : { picture: { id: picture, rows: filled.length } }
  return filled.map((row, at): Row => {
    const [number, ...rest] = row.cells
    return { ...row, cells: [number!, blank(at === 0 ? shown : {}), ...rest] }
  })
}

function actionRow(stand: StepStand, boxes: number): Row {
  const { step, number, planned, before, way } = stand
  const how = sentences(way, sayHow(step), sayWaits(step, before), step.note)
  const ticks =
    step.together && boxes > 1 ? [tick({ span: boxes })] : Array.from({ length: boxes }, () => tick())
  return {
    cells: [
      text(`${number}`),
      text(sayAction(step), { role: 'strong' }),
      text(how, { indent: 1 }),
      text(planned),
      text(sayStepTime(step)),
      ...ticks,
    ],
  }
}

function checkRows({ step, inspection, pieces }: StepStand, boxes: number): readonly Row[] {
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
    return { cells: [blank(), text(said, { span: leading - 1 }), ...places()] }
  })
}

/** Boxes by number where the pieces are too many for columns. */
function manyBoxes({ step, pieces }: StepStand, wide: number): readonly Row[] {
  if (pieces <= mostBoxes || step.together) return []
  const boxes = Array.from({ length: pieces }, (_, at) => `☐ ${at + 1}`).join('   ')
  return [{ cells: [blank(), text(`Done on:   ${boxes}`, { span: wide - 1 })] }]
}
