/** The pipeline from top to bottom: a project file in, a checked plan out. No clock, no saving. */
import type { Day } from './base/clock.ts'
import { circularWaits } from './checks/circular-waits.ts'
import { modelChecks, networkChecks, noSchedule, resultChecks } from './checks/index.ts'
import { buy } from './diagnostics/catalogue/buy.ts'
import { dep } from './diagnostics/catalogue/dep.ts'
import { lim } from './diagnostics/catalogue/lim.ts'
import { ref } from './diagnostics/catalogue/ref.ts'
import { collect, inOrder } from './diagnostics/collector.ts'
import type { Diagnostic, Report } from './diagnostics/message.ts'
import type { AssemblyOrder } from './model/assembly.ts'
import { assemblyPlans } from './model/assembly-plans.ts'
import type { FromMeshes } from './model/from-meshes.ts'
import type { Join } from './model/joins.ts'
import type { Pictures } from './model/pictures.ts'
import type { Project } from './model/project.ts'
import type { Purchase } from './model/purchase.ts'
import type { Results } from './model/results.ts'
import type { TaskNetwork } from './model/tasks.ts'
import { type Effort, orderAssembly, usualEffort } from './planning/assembly/index.ts'
import { planApart, wornOut } from './planning/assembly/plan-apart.ts'
import { trialFits } from './planning/assembly/trial-fits.ts'
import { planPurchase } from './planning/buying/index.ts'
import { cautionsOf } from './planning/cautions/cautions-of.ts'
import { addUpChains } from './planning/chains/add-up-chains.ts'
import { computeMoney } from './planning/cost/index.ts'
import { studyMeshes, waysOfSteps, withFindings } from './planning/from-meshes/index.ts'
import { inspectionLines } from './planning/inspection/inspection-lines.ts'
import { planJoins } from './planning/joins/plan-joins.ts'
import type { WantedPictures } from './planning/pictures/draw-pictures.ts'
import { sampleProject, samplesFor } from './planning/risk/index.ts'
import { buildNetwork } from './planning/tasks/build-network.ts'
import { effortFor } from './planning/timing/effort-for.ts'
import { readyTimes } from './planning/timing/ready-times.ts'
import { scheduleNetwork } from './planning/timing/schedule-network.ts'
import { plannedSessions } from './planning/timing/sessions.ts'
import { tooLongTasks } from './planning/timing/too-long.ts'
import { answerApart } from './report/answer-apart.ts'
import { buildReport } from './report/build-report.ts'
import type { Workbook } from './report/cells.ts'
import { checklistOrders } from './report/checklist-orders.ts'
import { buildWorkbook } from './report/index.ts'
import type { ReportModel } from './report/report-model.ts'
import type { ReportRepair } from './report/report-repair.ts'
import type { ToldPictures } from './report/told-pictures.ts'
import { resolveProject } from './resolve/resolve-project.ts'
import { type LoadOptions, loadSource, type Source } from './source/load.ts'
import { whyBlocked } from './verify/why-blocked.ts'
import { whyDisordered } from './verify/why-disordered.ts'
import { whyInfeasible } from './verify/why-infeasible.ts'
import { whyUnbalanced } from './verify/why-unbalanced.ts'
import { version } from './version.ts'

/** How a project is compiled. */
export interface CompileOptions extends LoadOptions {
  /** First day, instead of the project's own start. */
  readonly date?: Day
  /** Most schedules tried. Where not said 400, less of a large plan. */
  readonly effort?: number
  readonly seed?: number
  /** How often the plan is laid out again with times as they may turn out; 0: never. Where not said 100, less of a large plan. */
  readonly samples?: number
  /** Told while the search runs how many schedules were tried. */
  readonly progress?: (tried: number, effort: number) => void
}

/** What checking gives: the project where it could be read, all that was said, and the texts it was said of. */
export interface Checked {
  readonly project: Project | null
  readonly diagnostics: readonly Diagnostic[]
  readonly texts: ReadonlyMap<string, string>
}

/** What planning gives: results only where there is no error. */
export interface Planned extends Checked {
  readonly results: Results | null
}

interface Laid {
  readonly project: Project
  readonly purchase: Purchase
  readonly orders: ReadonlyMap<string, AssemblyOrder>
  readonly meshes: FromMeshes | null
  readonly network: TaskNetwork
  readonly joins: readonly Join[]
}

interface Stage<T> {
  /** `null` where something in it was an error. */
  readonly value: T | null
  /** What was made all the same; parts at fault are missing in it. */
  readonly made: T
  readonly diagnostics: readonly Diagnostic[]
}

/** For checks that look at the network alone. */
const unjudged = { tooLong: [], worn: [] }

const hasError = (diagnostics: readonly Diagnostic[]): boolean =>
  diagnostics.some(({ level }) => level === 'error')

/** Runs one stage; it has a value only where nothing in it was an error. */
function stage<T>(run: (report: Report) => T): Stage<T> {
  const { report, diagnostics } = collect()
  const made = run(report)
  const said = diagnostics()
  return { value: hasError(said) ? null : made, made, diagnostics: said }
}

function resolveStage(source: Source, options: CompileOptions): Stage<Project> {
  return stage((report) => {
    const project = resolveProject(source, report, options.date ?? null)
    for (const check of modelChecks) check(project, report)
    return project
  })
}

function layStage(project: Project, ordering: Effort): Stage<Laid> {
  return stage((report) => {
    const laid = laidOut(project, ordering)
    const judged = { ...laid, tooLong: tooLongTasks(project, laid.network), worn: wornOut(laid) }
    for (const check of networkChecks) check(judged, report)
    return laid
  })
}

/** Messages that speak of one value or name alone, so that nothing left out elsewhere can have caused them. */
const ownFaults = /^(QTY(0[1-6]|09|11|12)|CAL(0[5-9]|10)|BUY(0[1358])|REF(01|02|04)|PRC0[48])$/

/** What is wrong in the sound entries of a project of which other entries have not the right shape. */
function faultsBesides(sound: Source, options: CompileOptions): readonly Diagnostic[] {
  // Steps that were put aside have names that others may point at.
  const stepsMissing = sound.aside.some(({ section }) => section === 'assembly' || section === 'parts')
  const { report, diagnostics } = collect()
  const own: Report = (entry, at, facts) => {
    const unknown = entry.code === ref.unknownName.code
    const caused = unknown && (sound.broken || (stepsMissing && entry.says(facts).includes('or step')))
    if (ownFaults.test(entry.code) && !caused) report(entry, at, facts)
  }
  resolveProject(sound, own, options.date ?? null)
  return diagnostics()
}

/** A currency that is not known has no smallest coin to lay money out in; parts inside themselves are a ring told already; too much is too much. */
const notLaidOut: readonly string[] = [buy.unknownCurrency.code, dep.partInItself.code, lim.tooManyTasks.code]

/** Rings are told in the same run as what is at fault elsewhere; what a fault left out can only hide a ring, not make one. */
function ringsBesides({ made, diagnostics }: Stage<Project>): readonly Diagnostic[] {
  if (diagnostics.some(({ code }) => notLaidOut.includes(code))) return []
  const bare = { ...made, meshes: [] }
  return stage((report) => circularWaits({ ...laidOut(bare, uncounted), ...unjudged }, report)).diagnostics
}

/** Orders are counted for a plan that is told, not for a check. */
const uncounted: Effort = { ...usualEffort, counted: 0 }

/** Lays the work out; where what the meshes ask makes steps wait in a ring with other work, typed facts win over all of it. */
function laidOut(project: Project, ordering: Effort): Laid {
  const studied = studyMeshes(project)
  const common = { project, purchase: planPurchase(project), joins: planJoins(project) }
  const laid = laidOutBy(common, ordering, studied, true)
  if (!studied) return laid
  const ring = stage((report) => circularWaits({ ...laid, ...unjudged }, report)).diagnostics.length > 0
  return ring ? laidOutBy(common, ordering, studied, false) : laid
}

function laidOutBy(
  common: Pick<Laid, 'project' | 'purchase' | 'joins'>,
  ordering: Effort,
  studied: ReturnType<typeof studyMeshes>,
  heeded: boolean,
): Laid {
  const { project, purchase } = common
  const orders = new Map(
    assemblyPlans(project).map((plan) => {
      const own = studied?.plans.get(plan.of ?? '') ?? null
      const asked = own?.constraints ?? []
      const order = orderAssembly(plan, project, ordering, heeded ? asked : [], own)
      return [plan.of ?? '', heeded ? order : { ...order, setAside: asked }] as const
    }),
  )
  const meshes = studied ? withFindings(project, studied, orders) : null
  return { ...common, orders, meshes, network: buildNetwork(project, purchase, orders) }
}

function planStage(laid: Laid, options: CompileOptions): Stage<Results | null> {
  return stage((report) => {
    const { project, purchase, orders, meshes, network, joins } = laid
    const schedule = scheduleNetwork(project, network, {
      effort: options.effort ?? effortFor(network.tasks.length),
      seed: options.seed ?? 1,
      ...(options.progress ? { progress: options.progress } : {}),
    })
    if ('kind' in schedule) {
      noSchedule({ ...laid, ...unjudged }, schedule, report)
      return null
    }
    const sessions = plannedSessions(project, network, schedule)
    const readyAt = readyTimes(project, network, schedule)
    const samples = options.samples ?? samplesFor(network.tasks.length)
    const sampled = { samples, seed: options.seed ?? 1 }
    const planned: Results = {
      project,
      purchase,
      orders,
      meshes,
      network,
      schedule,
      money: computeMoney(project, purchase, network),
      risk: samples > 0 ? sampleProject({ project, purchase, network, schedule, sessions }, sampled) : null,
      sessions,
      readyAt,
      inspection: inspectionLines(project),
      joins,
      chains: addUpChains(project),
      trialFits: trialFits({ project, orders, joins, network, schedule, readyAt }),
      waysIn: new Map(),
      cautions: cautionsOf(project),
    }
    const results: Results = { ...planned, waysIn: waysOfSteps(project, checklistOrders(planned), meshes) }
    proveOrFail(results)
    for (const check of resultChecks) check(results, report)
    return results
  })
}

/** What was planned is proved again from the rules; a broken rule is a fault in fettle, never a diagnostic. */
function proveOrFail(results: Results): void {
  const { project, purchase, network, schedule, money, orders, meshes } = results
  const orderly = assemblyPlans(project).map((plan) =>
    whyDisordered(plan, orders.get(plan.of ?? '')?.order ?? []),
  )
  const free = [...(meshes?.plans ?? [])].map(([of, plan]) => whyBlocked(plan, orders.get(of)!))
  const fault = [
    ...orderly,
    ...free,
    whyInfeasible(project, network, schedule),
    whyUnbalanced(project, purchase, money),
  ].find((why) => why !== null)
  if (fault) throw new Error(`the plan does not keep its own rules: ${fault}`)
}

/** Reads and checks a project: everything that can be said without placing the work in time. */
export function check(file: string, options: CompileOptions = {}): Checked {
  return upToLaid(file, options, uncounted)
}

function upToLaid(
  file: string,
  options: CompileOptions,
  ordering: Effort,
): Checked & { readonly laid: Laid | null } {
  const { source, sound, diagnostics, texts } = loadSource(file, options)
  if (!source) {
    const besides = sound ? faultsBesides(sound, options) : []
    return { project: null, laid: null, diagnostics: inOrder([...diagnostics, ...besides]), texts }
  }
  const resolved = resolveStage(source, options)
  if (!resolved.value)
    return {
      project: null,
      laid: null,
      diagnostics: inOrder([...diagnostics, ...resolved.diagnostics, ...ringsBesides(resolved)]),
      texts,
    }
  const laid = layStage(resolved.value, ordering)
  return {
    project: resolved.value,
    laid: laid.value,
    diagnostics: inOrder([...diagnostics, ...resolved.diagnostics, ...laid.diagnostics]),
    texts,
  }
}

/** Plans a project: checks it, buys, orders, schedules, counts the money, and proves the result. */
export function plan(file: string, options: CompileOptions = {}): Planned {
  const { laid, ...checked } = upToLaid(file, options, usualEffort)
  if (!laid) return { ...checked, results: null }
  const planned = planStage(laid, options)
  return {
    ...checked,
    diagnostics: inOrder([...checked.diagnostics, ...planned.diagnostics]),
    results: planned.value ?? null,
  }
}

/** The way to a part, or why there is none to tell; `answer` is `null` where the project has errors. */
export interface TakenApart extends Checked {
  readonly answer: ReportRepair | { readonly unknown: string } | null
}

/** How a part is got at for repair: checks the project and orders its assemblies; nothing is placed in time. */
export function takeApart(file: string, part: string, options: CompileOptions = {}): TakenApart {
  const { laid, ...checked } = upToLaid(file, options, uncounted)
  if (!laid) return { ...checked, answer: null }
  return { ...checked, answer: answerApart(laid.project, planApart(laid, part)) }
}

/** A plan with its report and workbook, ready for any emitter; both `null` where there is an error. */
export interface PlanReport extends Planned {
  readonly report: ReportModel | null
  readonly workbook: Workbook | null
}

/** Plans a project and tells it: the facts for JSON and terminal, the finished grids for the workbook. */
export function planReport(file: string, options: CompileOptions = {}): PlanReport {
  return tell(plan(file, options))
}

function tell(planned: Planned, pictures?: ToldPictures): PlanReport {
  if (!planned.results) return { ...planned, report: null, workbook: null }
  const told = {
    results: planned.results,
    findings: planned.diagnostics,
    fettle: version,
    ...(pictures === undefined ? {} : { pictures }),
  }
  const workbook = buildWorkbook(told)
  return { ...planned, report: buildReport(told, workbook.sheets), workbook }
}

/**
 * As `planReport`, with a picture beside each step of the checklist that puts something of which there is a mesh.
 * `canShow` is asked only where there are meshes: whether pictures can become PNG here.
 */
export async function picturedReport(
  file: string,
  options: CompileOptions & { readonly canShow: () => boolean },
): Promise<PlanReport> {
  const planned = plan(file, options)
  const { results } = planned
  if (!results?.meshes) return tell(planned)
  if (!options.canShow()) return tell(planned, 'no package')
  const orders = checklistOrders(results)
  return tell(planned, await picturesOf(results.project, orders, results.meshes, { whole: false }))
}

/** The drawing is loaded where there is something to draw. */
async function picturesOf(
  project: Project,
  orders: ReadonlyMap<string, AssemblyOrder>,
  meshes: FromMeshes,
  wanted: WantedPictures,
): Promise<Pictures> {
  const { drawPictures } = await import('./planning/pictures/draw-pictures.ts')
  return drawPictures(project, orders, meshes, wanted)
}

/** A checked project with line drawings of its steps. */
export interface Drawn extends Checked {
  /** `null` where there is an error, or fewer than two meshes stand in their assembled place. */
  readonly pictures: Pictures | null
}

/**
 * Checks a project and draws its steps from the meshes of its parts, in the order of its checklists; where nothing can
 * be placed in time, in the order of assembly.
 */
export async function draw(
  file: string,
  options: CompileOptions & { readonly oneScale?: boolean } = {},
): Promise<Drawn> {
  const { laid, ...checked } = upToLaid(file, options, uncounted)
  if (!laid?.meshes) return { ...checked, pictures: null }
  const results = planStage(laid, { ...options, samples: 0 }).made
  const orders = results ? checklistOrders(results) : laid.orders
  return {
    ...checked,
    pictures: await picturesOf(laid.project, orders, laid.meshes, { oneScale: options.oneScale === true }),
  }
}
