import type { PrintRun } from '../model/print.ts'
import type { Part, Plate, PrintedWay, Project } from '../model/project.ts'
import type { ReportOperation } from './report-model.ts'

const plain = {
  step: 0,
  cutter: null,
  rpm: null,
  feed: null,
  power: null,
} as const

/** Six figures, as operations have them. */
const rounded = (value: number | null | undefined): number | null =>
  value === null || value === undefined ? null : Number(value.toPrecision(6))

/** Print jobs that parts share, run by run. */
export function reportPlates({ plates }: Project): readonly ReportOperation[] {
  return [...plates.values()].flatMap((plate) =>
    plate.runs.map((run, at) => ({
      ...plain,
      part: plate.id,
      process: plate.runs.length > 1 ? `print ${at + 1} of ${plate.runs.length}` : 'print',
      machine: plate.job.machine,
      seconds: rounded(plate.job.time?.mean.valueOf() ?? run.seconds),
      timeFrom: timeFrom(plate.job),
      worked: [`on it: ${sayLoads(run)}`, ...run.worked],
      assumed: run.assumed,
    })),
  )
}

const timeFrom = ({ time }: Plate['job']): string => (time ? 'stated' : 'computed')
const sayLoads = ({ loads }: PrintRun): string =>
  loads.map(({ part, pieces }) => (pieces === 1 ? part : `${part} x${pieces}`)).join(', ')

/** How one piece of a printed part was worked out, with the runs of a part that is printed alone. */
export function reportPrint(project: Project, part: Part, way: PrintedWay): readonly ReportOperation[] {
  const { piece, job } = way
  const runs = way.runs.flat()
  const worked = [...new Set([...piece.worked, ...runs.flatMap((run) => run.worked)])]
  const several = runs.length > 1 ? [`printed in ${runs.length} jobs: ${runs.map(sayLoads).join('; ')}`] : []
  const machine = project.plates.get(way.plate ?? '')?.job.machine ?? job.machine
  return [
    {
      ...plain,
      part: part.id,
      process: 'print',
      machine,
      seconds: rounded(secondsOf(project, way, machine)),
      timeFrom: timeFrom(job),
      worked: [...worked, ...several],
      assumed: [...new Set([...piece.assumed, ...runs.flatMap((run) => run.assumed)])],
    },
  ]
}

function secondsOf({ machines }: Project, way: PrintedWay, machine: string | null): number | null {
  const deposits = machines.get(machine ?? '')?.deposits
  if (way.job.time) return way.job.time.mean.valueOf()
  return deposits && way.volume ? way.volume.value.div(deposits.value).valueOf() : way.piece.seconds
}
