import type {
  ReportBack,
  ReportLeg,
  ReportRepair,
  ReportUndoing,
  ReportWay,
} from '../../report/report-repair.ts'

/** The way to a part as a person reads it at the bench. */
export function apartText(repair: ReportRepair): string {
  const many = repair.ways.length > 1 ? `: ${repair.ways.length} places` : ''
  const ways = repair.ways.map((way, at) => wayText(way, repair.ways.length > 1 ? `${at + 1}. ` : ''))
  return `${repair.part}${many}\n${ways.join('\n')}`
}

function wayText(way: ReportWay, number: string): string {
  const soldered = way.board === null ? [] : [`  then unsolder it from ${way.board}`]
  return `${[
    `${number}${way.where}`,
    `  ${way.says}`,
    ...legsText(way.legs),
    ...soldered,
    '  Back:',
    ...(way.back.length > 0 ? way.back.map(backText) : ['    nothing to do again']),
    ...inPlaceText(way),
  ].join('\n')}\n`
}

function legsText(legs: readonly ReportLeg[]): readonly string[] {
  let number = 0
  return legs.flatMap(({ assembly, steps }) => [
    `  Undo ${assembly === null ? 'on the device' : `in ${assembly}`}:`,
    ...steps.flatMap((step) => undoText(step, ++number)),
  ])
}

function undoText(undoing: ReportUndoing, number: number): readonly string[] {
  const { says, tool, way, renew, because, doubt } = undoing
  return [
    `    ${number}. ${says}${tool === null ? '' : ` [${tool}]`}`,
    ...(way === null ? [] : [`       ${way}`]),
    `       ${because}`,
    ...renew.map((line) => `       renew: ${line}`),
    ...(doubt === null ? [] : [`       doubtful: ${doubt}`]),
  ]
}

const backText = ({ what, says, time, assembly }: ReportBack): string =>
  `    ${what}${assembly === null ? '' : ` (${assembly})`}: ${says}; ${time}`

function inPlaceText({ inPlace }: ReportWay): readonly string[] {
  return inPlace === null
    ? []
    : [
        `  Look first whether it can be got at where it stands; the project does not say. Then:`,
        `  ${inPlace.says}`,
        ...legsText(inPlace.legs),
      ]
}
