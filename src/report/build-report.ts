import type Fraction from 'fraction.js'
import { dayOf, formatDay, formatInstant, type Instant } from '../base/clock.ts'
import { groupBy } from '../base/group-by.ts'
import { type Cents, decimal } from '../base/money.ts'
import { exactText, toDecimals } from '../base/rounding.ts'
import type { AssemblyOrder } from '../model/assembly.ts'
import { plansAsBuilt } from '../model/assembly-plans.ts'
import type { Cause, Share, Total } from '../model/money.ts'
import type { Results } from '../model/results.ts'
import type { Risk } from '../model/risk.ts'
import type { Cell, Sheet } from './cells.ts'
import { orderRules } from './order-rules.ts'
import { reportChains } from './report-chains.ts'
import { reportJoin } from './report-join.ts'
import type {
  Amount,
  ReportAssembly,
  ReportCart,
  ReportCost,
  ReportModel,
  ReportPart,
  ReportRisk,
  ReportShare,
  ReportTable,
  ReportTask,
} from './report-model.ts'
import { reportOperations } from './report-operations.ts'
import { reportTrialFits } from './report-trial-fits.ts'
import { sayBecause, sayLink, sayReason, taskNames } from './say-because.ts'
import { sayGap } from './say-gap.ts'
import { sayOrder } from './say-order.ts'
import { sayLever, saySpread, sayWorth } from './say-risk.ts'
import { reportWayIn } from './say-way.ts'
import { scheduledSteps } from './scheduled-steps.ts'
import type { Told } from './sheets.ts'
import { tasksAbout } from './tasks-about.ts'
import { whyModel } from './why-model.ts'

/** The report in facts, with the tables of the workbook as plain values. */
export function buildReport(told: Told, sheets: readonly Sheet[]): ReportModel {
  const { results } = told
  const { device } = results.project
  const { schedule } = results
  const titles = new Map(results.network.tasks.map(({ id, title }) => [id, title]))
  return {
    report: 'fettle',
    version: 1,
    device: {
      name: device.name,
      revision: device.revision,
      qty: device.qty,
      start: formatDay(device.start),
      wanted: device.wanted ? formatDay(device.wanted.day) : null,
    },
    finish: formatInstant(schedule.finish),
    daysLate: device.wanted ? dayOf(schedule.finish - 1) - device.wanted.day : null,
    bound: sayGap(schedule),
    risk: results.risk ? riskOf(results, results.risk) : null,
    cost: costOf(results),
    parts: partsOf(results),
    carts: cartsOf(results),
    making: reportOperations(results),
    tasks: tasksOf(results),
    drivingChain: schedule.drivingChain.map((step) => ({
      task: step.task,
      title: titles.get(step.task)!,
      start: formatInstant(step.start),
      finish: formatInstant(step.finish),
      because: step.because[0]!.kind,
      says: sayBecause(results, step),
      reasons: step.because.map((reason) => ({
        kind: reason.kind,
        task: reason.task,
        until: formatInstant(reason.until),
        says: sayReason(results, step, reason),
      })),
    })),
    criticalChains: schedule.criticalChains,
    criticalChainCount: String(schedule.criticalChainCount),
    assembly: assemblyOf(results),
    trialFits: reportTrialFits(results),
    sessions: results.sessions.map(({ person, open, close, work }) => ({
      person,
      from: formatInstant(open),
      to: formatInstant(close),
      work: work.map((piece) => ({
        task: piece.task,
        title: titles.get(piece.task)!,
        from: formatInstant(piece.open),
        to: formatInstant(piece.close),
      })),
    })),
    inspection: results.inspection.map(({ at: _, method: __, ...line }) => line),
    chains: reportChains(results),
    findings: told.findings.map(({ code, level, at, says, mend }) => ({
      code,
      level,
      file: at.file,
      line: at.line,
      column: at.column,
      says,
      mend,
    })),
    tables: sheets.flatMap(tablesOf),
  }
}

const formatOrNull = (at: Instant | null): string | null => (at === null ? null : formatInstant(at))
/** Rounded as far as samples tell anything. */
const rounded = (value: number): number => Math.round(value * 1000) / 1000

function riskOf(results: Results, risk: Risk): ReportRisk {
  return {
    samples: risk.samples,
    unplaced: risk.unplaced,
    finishBy: risk.finishBy.map(({ chance, finish }) => ({ chance, finish: formatOrNull(finish) })),
    asPlanned: rounded(risk.asPlanned),
    wanted: risk.wanted === null ? null : rounded(risk.wanted),
    critical: [...risk.critical]
      .filter(([, share]) => share > 0)
      .sort(([a, shareA], [b, shareB]) => shareB - shareA || (a < b ? -1 : 1))
      .map(([task, share]) => ({ task, share: rounded(share) })),
    spread: risk.spread.map((one) => ({
      kind: one.kind,
      of: one.of,
      correlation: rounded(one.correlation),
      days: rounded(one.days),
      says: saySpread(results, one),
    })),
    levers: risk.levers.map((lever) => ({
      kind: lever.kind,
      of: lever.of,
      person: lever.person,
      finish: formatInstant(lever.finish),
      days: rounded(lever.days),
      says: sayLever(lever),
    })),
    searchAlone: rounded(risk.searchAlone),
    tonight: risk.tonight.map((action) => ({
      task: action.task,
      person: action.person,
      from: formatInstant(action.open),
      to: formatInstant(action.close),
      planned: action.planned,
      days: rounded(action.days),
      share: rounded(action.share),
      says: sayWorth(results, action),
    })),
  }
}

function amountOf({ known, unknown }: Total, digits: number): Amount {
  return unknown.length === 0 ? decimal(known, digits) : { known: decimal(known, digits), unknown }
}

/** What a charge is for, in words. */
function sayCause(cause: Cause): string {
  if (cause.kind === 'device') return 'assembly'
  return cause.kind === 'cart' ? `cart ${cause.id}` : cause.id
}

function costOf({ money, project }: Results): ReportCost {
  const { digits } = money
  const total = (of: Total): Amount => amountOf(of, digits)
  const share = (id: string, of: Share): ReportShare => ({
    id,
    amount: decimal(of.known, digits),
    unknown: of.unknown.length > 0,
  })
  return {
    currency: money.currency,
    cash: total(money.cash),
    charged: total(money.charged),
    leftOver: total(money.leftOver),
    fromOwnStock: total(money.fromOwnStock),
    hoursAtRate: total(money.hoursAtRate),
    byPart: money.byPart.map((one) => share(sayCause(one.cause), one)),
    byProcess: money.byProcess.map((one) => share(one.process, one)),
    byVendor: money.byVendor.map((one) => share(one.vendor ?? 'no vendor', one)),
    byDevice: money.byDevice.map((one) => share(`${project.device.name} ${one.device + 1}`, one)),
    expectedLoss: money.expectedLoss.map((one) => ({
      part: one.part,
      amount: one.amount === null ? null : decimal(one.amount, digits),
    })),
  }
}

function partsOf({ project, readyAt }: Results): readonly ReportPart[] {
  return [...project.parts.values()].map((part) => {
    const { perDevice, needed, spares, fromStock, toGet } = project.demand.get(part.id)!
    const mesh = part.way.kind === 'assembly' ? null : part.way.mesh
    return {
      name: part.id,
      kind: part.way.kind,
      role: part.role,
      perDevice,
      needed,
      spares,
      fromStock,
      toGet,
      plate: part.way.kind === 'printed' ? part.way.plate : null,
      ready: formatInstant(readyAt.get(part.id)!),
      mass: part.mass ? Number(part.mass.value.valueOf().toPrecision(6)) : null,
      measured: [...(mesh?.worked ?? []), ...part.massWorked],
    }
  })
}

/** An exact price; of a board sold by the panel, which may have no end, eight decimals. */
function priceText(price: Fraction): string {
  const exact = exactText(price)
  return exact.includes('/') ? toDecimals(price, 8) : exact
}

function cartsOf(results: Results): readonly ReportCart[] {
  const { purchase, network, schedule, money, risk } = results
  const said = (cents: Cents | null): string | null => (cents === null ? null : decimal(cents, money.digits))
  return purchase.carts.map((cart) => {
    const own = network.tasks.filter(({ subject }) => subject.cart === cart.id)
    const at = (kind: string) => schedule.tasks.get(own.find((task) => task.kind === kind)!.id)!
    return {
      id: cart.id,
      vendor: cart.vendor,
      order: formatInstant(at('order').start),
      latest: formatInstant(at('order').latestStart),
      latestAlone: formatInstant(at('order').latestAlone),
      safe: formatOrNull(risk?.safe.get(cart.id)?.order ?? null),
      arrives: formatInstant(at('delivery').finish),
      total: amountOf({ known: cart.known, unknown: cart.unknown }, money.digits),
      lines: cart.lines.map((line) => ({
        id: line.id,
        title: line.title,
        needed: line.needed,
        quantity: line.quantity,
        unitPrice: line.unitPrice ? priceText(line.unitPrice) : null,
        currency: line.offer.currency,
        landed: said(line.landed),
      })),
    }
  })
}

function tasksOf(results: Results): readonly ReportTask[] {
  const { network, schedule } = results
  const before = groupBy(network.links, ({ to }) => to)
  const names = taskNames(results)
  const byTime = [...network.tasks].sort((a, b) => {
    const [one, other] = [schedule.tasks.get(a.id)!, schedule.tasks.get(b.id)!]
    return one.start - other.start || one.finish - other.finish || (a.id < b.id ? -1 : 1)
  })
  return byTime.map((task): ReportTask => {
    const placed = schedule.tasks.get(task.id)!
    const { part, cart, plate, work, assembly, step, device, lot } = task.subject
    return {
      id: task.id,
      title: task.title,
      kind: task.kind,
      part,
      cart,
      plate,
      work,
      assembly,
      step,
      device,
      lot,
      attention: task.attention,
      people: placed.people,
      machine: task.machine,
      minutes: task.minutes,
      likelyMinutes: task.likelyMinutes,
      start: formatInstant(placed.start),
      finish: formatInstant(placed.finish),
      latest: formatInstant(placed.latestStart),
      latestFinish: formatInstant(placed.latestFinish),
      float: placed.float,
      freeFloat: placed.freeFloat,
      critical: placed.critical,
      pieces: placed.pieces.map(({ open, close }) => ({
        from: formatInstant(open),
        to: formatInstant(close),
      })),
      waitsFor: (before.get(task.id) ?? []).map((link) => ({
        task: link.from,
        says: sayLink(results, link, names.get(link.from)),
      })),
    }
  })
}

function assemblyOf(results: Results): readonly ReportAssembly[] {
  const { project, orders, joins, meshes } = results
  const about = tasksAbout(results)
  return plansAsBuilt(project).flatMap((plan) => {
    const order = orders.get(plan.of ?? '')
    if (!order?.order) return []
    const byStep = groupBy(about.assembly(plan.of), ({ subject }) => subject.step!)
    const steps = scheduledSteps(results, plan, order.order, byStep)
    const why = whyModel(meshes, plan.of)
    return [
      {
        of: plan.of,
        proved: order.proved,
        turns: order.turns,
        toolChanges: order.toolChanges,
        feasibleOrders: order.feasibleOrders?.toString() ?? null,
        says: sayOrder(order, steps),
        meshes: askedByMeshes(meshes, order),
        steps: steps.map((step) => ({
          step: step.id,
          put: step.put?.part ?? null,
          count: step.put?.count ?? null,
          after: order.links.filter(({ after }) => after === step.id).map(({ before }) => before),
          ...orderRules(order.constraints, step, why),
          way: reportWayIn(results.waysIn, plan.of, step.id),
          join: reportJoin(joins, plan.of, step.id),
        })),
      },
    ]
  })
}

function askedByMeshes(meshes: Results['meshes'], order: AssemblyOrder): ReportAssembly['meshes'] {
  const plan = meshes?.plans.get(order.of ?? '')
  if (!plan || plan.moves.length === 0) return null
  const demands = order.constraints.filter(({ why }) => why === 'model').length
  return { demands, setAside: order.setAside.length, typedAlone: plan.typedAlone }
}

function plain({ value }: Cell): string | number | null {
  switch (value.type) {
    case 'number':
      return value.value
    case 'day':
      return formatDay(value.day)
    case 'instant':
      return formatInstant(value.instant)
    case 'empty':
      return null
    default:
      return value.text
  }
}

function tablesOf(sheet: Sheet): readonly ReportTable[] {
  return sheet.blocks.flatMap((block) =>
    block.kind === 'rows'
      ? []
      : [
          {
            sheet: sheet.name,
            table: block.id,
            columns: block.columns.map(({ head }) => head),
            rows: [...block.rows, ...block.totals].map((row) => row.cells.map(plain)),
          },
        ],
  )
}
