import Fraction from 'fraction.js'
import type { Place } from '../../base/place.ts'
import { isFault } from '../../base/quantity-fault.ts'
import { exactText } from '../../base/rounding.ts'
import type { ThreePoint } from '../../base/three-point.ts'
import { readThreePoint, threePoint } from '../../base/three-point.ts'
import type { PrintRun } from '../../model/print.ts'
import type { Labour, Part, Plate, PrintedWay, PrintJob } from '../../model/project.ts'
import { receivedTask } from './carts.ts'
import { anybody, type Ground, lotSizes, nobody, piecesMade, takesBought } from './ground.ts'
import { buildRoute } from './routes.ts'
import { addTimes } from './times.ts'

/** One part on a print job. */
interface Load {
  readonly part: Part
  readonly way: PrintedWay
  readonly pieces: number
}

/** So many seconds, rounded up, as a time that is certain; `null` where they are not known. */
function certainTime(seconds: number | null): ThreePoint | null {
  if (seconds === null) return null
  const whole = new Fraction(Math.ceil(seconds - 1e-6))
  return { ...threePoint(whole, whole, whole), dims: 'time', unit: 'min', text: '' }
}

/** Print time of one piece: as stated, else its volume over what the printer deposits, else as worked out. */
function pieceTime(ground: Ground, { way }: Load, machine: string | null): ThreePoint | null {
  if (way.job.time) return way.job.time
  return depositTime(ground, { way }, machine) ?? certainTime(way.piece.seconds)
}

/** Time of a volume at the rate that a printer is said to deposit; `null` where either is not known. */
function depositTime(ground: Ground, { way }: Pick<Load, 'way'>, machine: string | null): ThreePoint | null {
  const deposits = machine === null ? null : ground.project.machines.get(machine)?.deposits
  if (!deposits || !way.volume) return null
  const seconds = readThreePoint(`${exactText(way.volume.value.div(deposits.value))} s`, 'time')
  return isFault(seconds) ? null : seconds
}

/** Print time of a whole job: the longest piece on a vat printer, where all grow together; the sum on a filament printer. */
function jobTime(ground: Ground, loads: readonly Load[], job: PrintJob, run: PrintRun | null): ThreePoint {
  if (job.time) return job.time
  const given = loads.some((load) => load.way.job.time || depositTime(ground, load, job.machine))
  const worked = given ? null : certainTime(run?.seconds ?? null)
  if (worked) return worked
  const vat = job.machine !== null && ground.project.machines.get(job.machine)?.prints === 'vat'
  const times = loads.map((load) => [pieceTime(ground, load, job.machine), load.pieces] as const)
  if (!vat) return addTimes(times)
  const longest = times.reduce<ThreePoint | null>(
    (best, [time]) => (time && (!best || time.mean.gt(best.mean)) ? time : best),
    null,
  )
  return addTimes([[longest, 1]])
}

/** Every print job with its washing, drying and curing, then the routes of the parts on it. */
export function buildPrints(ground: Ground): void {
  const printed = [...ground.project.parts.values()].flatMap((part): readonly Load[] =>
    part.way.kind === 'printed' && piecesMade(ground.project, part) > 0
      ? [{ part, way: part.way, pieces: piecesMade(ground.project, part) }]
      : [],
  )
  for (const plate of ground.project.plates.values()) {
    const loads = printed.filter(({ way }) => way.plate === plate.id)
    if (loads.length > 0) buildPlate(ground, plate, loads)
  }
  for (const load of printed.filter(({ way }) => way.plate === null)) buildOwnJobs(ground, load)
}

/** A part without a plate is printed lot by lot, each lot a job of its own, or several where the bed is too small. */
function buildOwnJobs(ground: Ground, { part, way, pieces }: Load): void {
  const sizes = lotSizes(pieces, way.lot)
  const jobs = sizes.map((size, lot) => {
    const name = sizes.length > 1 ? `${part.id} lot ${lot + 1}` : part.id
    const subject = { part: part.id, lot }
    const all = { job: way.job, loads: [{ part, way, pieces: size }], runs: way.runs[lot] ?? [] }
    return buildRuns(ground, { name, id: `${name} / print`, subject }, part.at, all)
  })
  ground.begun.set(
    part.id,
    jobs.flatMap(({ first }) => first),
  )
  buildRoute(ground, part, way.route, way.lot, (lot) => jobs[lot]!.last)
}

/** A print job with all that is to lie on it, and how its pieces part into runs. */
interface Printing {
  readonly job: PrintJob
  readonly loads: readonly Load[]
  readonly runs: readonly PrintRun[]
}

/** A job as often as its runs say, each with its own start, wash and cure; once where nothing is said of runs. */
function buildRuns(
  ground: Ground,
  name: JobName,
  at: Place,
  { job, loads, runs }: Printing,
): { readonly first: readonly string[]; readonly last: readonly string[] } {
  if (runs.length < 2) return buildJob(ground, name, at, { job, loads, run: runs[0] ?? null })
  const built = runs.map((run, index) => {
    const said = `${index + 1} of ${runs.length}`
    const own = { ...name, name: `${name.name} ${said}`, id: `${name.id} ${said}` }
    const lying = loads.flatMap((load): readonly Load[] => {
      const pieces = run.loads.find(({ part }) => part === load.part.id)?.pieces ?? 0
      return pieces > 0 ? [{ ...load, pieces }] : []
    })
    return buildJob(ground, own, at, { job, loads: lying, run })
  })
  return { first: built.flatMap(({ first }) => first), last: built.flatMap(({ last }) => last) }
}

/** What a print job is called and about. */
interface JobName {
  readonly name: string
  readonly id: string
  readonly subject: { readonly plate: string } | { readonly part: string; readonly lot: number }
}

/** Preparing and starting a print, and taking it off, where nothing is said. Source: common practice, no source. */
const usualLoad = readThreePoint('5 min', 'time') as ThreePoint

function buildPlate(ground: Ground, plate: Plate, loads: readonly Load[]): void {
  const name = `plate ${plate.id}`
  const { first, last } = buildRuns(ground, { name, id: name, subject: { plate: plate.id } }, plate.at, {
    job: plate.job,
    loads,
    runs: plate.runs,
  })
  ground.begun.set(name, first)
  for (const { part, way } of loads) {
    ground.begun.set(part.id, first)
    buildRoute(ground, part, way.route, way.lot, () => last)
  }
}

function buildJob(
  ground: Ground,
  { name: what, id, subject }: JobName,
  at: Place,
  { job, loads, run: worked }: Omit<Printing, 'runs'> & { readonly run: PrintRun | null },
): { readonly first: readonly string[]; readonly last: readonly string[] } {
  const { build } = ground
  const machine = job.machine === null ? null : ground.project.machines.get(job.machine)!
  const hands: Labour = { ...anybody(ground), who: machine?.users ?? ground.people }
  // What is printing cannot pause, whoever is there.
  const attention = job.attention ?? (machine?.prints === 'filament' ? 'nearby' : 'none')
  const run: Labour = attention === 'none' ? nobody : { ...hands, attention, pausable: false }
  const own = { ...job, time: 'plate' in subject ? job.time : null }
  const chain: string[] = []
  const add = (
    label: string,
    title: string,
    time: ThreePoint | null,
    labour: Labour,
    kind: 'load' | 'run' | 'unload' | 'hand' | 'cure',
  ): void => {
    if (!time || time.high.equals(0)) return
    const onMachine = kind === 'load' || kind === 'run' || kind === 'unload'
    chain.push(
      build.task({
        id: `${id} / ${label}`,
        title,
        kind,
        at,
        subject,
        time,
        labour,
        machine: onMachine ? job.machine : null,
        takesMachine: false,
      }),
    )
  }
  add('load', `Prepare and start the print of ${what}`, job.load ?? usualLoad, hands, 'load')
  add('run', `Print ${what}`, jobTime(ground, loads, own, worked), run, 'run')
  add('unload', `Take ${what} off the printer`, job.unload ?? usualLoad, hands, 'unload')
  const machineTasks = [...chain]
  add('wash', `Wash ${what}`, job.wash, anybody(ground), 'hand')
  add('dry', `Dry ${what}`, job.dry, nobody, 'cure')
  add('cure', `Cure ${what}`, job.cure, nobody, 'cure')
  for (let at2 = 1; at2 < chain.length; at2++) {
    // A job that is prepared is started: it runs on from there.
    const started = chain[at2] === `${id} / run` ? 0 : null
    const why = at2 < machineTasks.length ? 'load' : 'route'
    build.link(chain[at2 - 1]!, chain[at2]!, why, at, { minutes: 0 }, started)
  }
  if (job.machine !== null && machineTasks.length > 0)
    build.hold('machine', job.machine, machineTasks[0]!, machineTasks.at(-1)!)
  const first = chain.slice(0, 1)
  const last = chain.slice(-1)
  linkMaterial(ground, job, loads, first, at)
  return { first, last }
}

function linkMaterial(
  ground: Ground,
  job: PrintJob,
  loads: readonly Load[],
  first: readonly string[],
  at: Place,
): void {
  const material = job.material === null ? undefined : ground.project.materials.get(job.material)
  for (const form of material?.forms ?? []) {
    const bought = loads.some(({ part }) => takesBought(ground, form.id, part.id))
    const task = bought ? receivedTask(ground, { kind: 'form', material: material!.id, form: form.id }) : null
    if (task !== null) ground.build.linkAll([task], first, 'material', at)
  }
}
