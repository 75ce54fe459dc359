import { nameList, nearNames } from '../../base/near-names.ts'
import type { ReportModel, ReportRule, ReportTask } from '../../report/report-model.ts'
import { sayAmount } from './summary.ts'

/** What `fettle why` found. */
export type WhyAnswer =
  | { readonly kind: 'known'; readonly text: string }
  | { readonly kind: 'unknown'; readonly says: string }

const time = (iso: string): string => iso.replace('T', ' ')

/** Tasks that are about a thing: a part, step, work, plate, cart, assembly or task. */
function tasksAbout({ tasks, parts }: ReportModel, thing: string): readonly ReportTask[] {
  const plate = parts.find(({ name }) => name === thing)?.plate ?? null
  const exact = tasks.filter(({ id }) => id === thing)
  if (exact.length > 0) return exact
  return tasks.filter(
    (task) =>
      [task.step, task.part, task.work, task.plate, task.cart, task.assembly, task.machine].includes(thing) ||
      task.people.includes(thing) ||
      (plate !== null && task.plate === plate),
  )
}

function taskLines(report: ReportModel, task: ReportTask): readonly string[] {
  const driving = report.drivingChain.find((step) => step.task === task.id)
  const who = [...task.people, ...(task.machine === null ? [] : [task.machine])].join(', ')
  return [
    `  ${task.title}${task.critical ? ' (critical)' : ''}`,
    `    ${time(task.start)} to ${time(task.finish)}${who === '' ? '' : `, ${who}`}; latest as planned ${time(task.latest)}`,
    ...task.waitsFor.map(({ says }) => `    ${says}`),
    ...(driving ? [`    sets the finish: ${driving.says}`] : []),
  ]
}

function partLines({ parts, cost }: ReportModel, thing: string): readonly string[] {
  const part = parts.find(({ name }) => name === thing)
  if (!part) return []
  const share = cost.byPart.find(({ id }) => id === thing)
  return [
    `  ${part.kind}: ${part.needed} needed${part.spares > 0 ? `, ${part.spares} spare` : ''}${part.fromStock > 0 ? `, ${part.fromStock} on the shelf` : ''}, ${part.toGet} to get; all here ${time(part.ready)}`,
    ...part.measured.map((line) => `    ${line}`),
    ...(share
      ? [`  charged ${share.amount} ${cost.currency}${share.unknown ? ' and what is unknown' : ''}`]
      : []),
  ]
}

/** A bare board has sums but no time of its own. */
function sayTime(step: number, seconds: number | null, from: string): string {
  if (seconds === null) return step === 0 ? 'worked out' : `no time, ${from}`
  return `${Math.round(seconds)} s, ${from}`
}

/** How each cut of a part was worked out, sum by sum. */
function makingLines({ making }: ReportModel, thing: string): readonly string[] {
  return making
    .filter(({ part, worked }) => part === thing && worked.length > 0)
    .flatMap(({ step, process, cutter, seconds, timeFrom, worked, assumed }) => [
      `  ${step === 0 ? '' : `step ${step}, `}${process}${cutter === null ? '' : ` with ${cutter}`}: ${sayTime(step, seconds, timeFrom)}`,
      ...worked.map((line) => `    ${line}`),
      ...assumed.map((line) => `    taken: ${line}`),
    ])
}

/** Where a step comes from, and where each statement stands that holds it to its place or by which it holds another. */
function orderLines({ assembly }: ReportModel, thing: string): readonly string[] {
  const stands = ({ says, key, file, line }: ReportRule): string => `${says} (\`${key}\`, ${file}:${line})`
  return assembly
    .flatMap(({ steps }) => steps)
    .filter(({ step }) => step === thing)
    .flatMap(({ held, holds, way }) => [
      ...(way === null ? [] : [`  comes in ${way.says}`]),
      ...held.map((rule) => `  ${stands(rule)}`),
      ...holds.map((rule) => `  holds others: ${stands(rule)}`),
    ])
}

/** How sure the order of an assembly is; the device is called by its name. */
function assemblyLines({ assembly, device }: ReportModel, thing: string): readonly string[] {
  return assembly
    .filter(({ of }) => (of ?? device.name) === thing)
    .flatMap(({ says, steps }) => [
      `  order: ${says}`,
      ...steps.map(({ step, way }, at) => `    ${at + 1}. ${step}${way === null ? '' : `, ${way.says}`}`),
    ])
}

/** What meets in a step, or on a part, and how it was worked out. */
function joinLines({ assembly }: ReportModel, thing: string): readonly string[] {
  const steps = assembly.flatMap((one) => one.steps)
  return steps
    .filter(({ step }) => step === thing)
    .flatMap(({ join }) =>
      join
        ? [
            ...join.says.map((line) => `  ${line}`),
            ...join.worked.map((line) => `    ${line}`),
            ...join.assumed.map((line) => `    taken: ${line}`),
          ]
        : [],
    )
}

const mm = (value: number): string => `${Number(value.toFixed(4)) + 0}`
const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`

/** A dimension chain: what it comes to three ways, and how much each dimension makes of the spread. */
function chainLines({ chains }: ReportModel, thing: string): readonly string[] {
  return chains
    .filter(({ name }) => name === thing)
    .flatMap((chain) => [
      `  must be ${chain.must}: ${mm(chain.mustLeast)} to ${mm(chain.mustMost)} mm; holds: ${chain.holds}`,
      `  worst case ${mm(chain.worstLeast)} to ${mm(chain.worstMost)} mm`,
      `  by the odds ${mm(chain.statisticalLeast)} to ${mm(chain.statisticalMost)} mm; of ${chain.drawn} drawn ${percent(chain.outside)} outside`,
      ...chain.links.map(
        ({ of, factor, least, most, share }) =>
          `    ${factor > 0 ? '+' : ''}${factor} x ${of}: ${mm(least)} to ${mm(most)} mm, ${percent(share)} of the spread`,
      ),
      ...chain.worked.map((line) => `    ${line}`),
    ])
}

function cartLines({ carts, cost }: ReportModel, thing: string): readonly string[] {
  return carts
    .filter(
      ({ id, vendor, lines }) => id === thing || vendor === thing || lines.some((line) => line.id === thing),
    )
    .flatMap((cart) => [
      `  cart ${cart.id}: order ${time(cart.order)}, latest as planned ${time(cart.latest)}, for the goods alone ${time(cart.latestAlone)}; here ${time(cart.arrives)}; ${sayAmount(cart.total, cost.currency)}`,
      ...cart.lines
        .filter((line) => cart.id === thing || line.id === thing)
        .map((line) => `    ${line.quantity} of ${line.title}, ${line.needed} needed`),
    ])
}

function namesIn({ tasks, carts, parts, chains, device }: ReportModel): readonly string[] {
  const named = tasks.flatMap(({ part, step, work, plate, assembly, machine, people }) => [
    ...[part, step, work, plate, assembly, machine],
    ...people,
  ])
  return [
    ...named,
    device.name,
    ...carts.map(({ id }) => id),
    ...[...parts, ...chains].map(({ name }) => name),
  ].filter((name) => name !== null)
}

/** When a thing happens, what it waits for, what it costs. */
export function whyText(report: ReportModel, thing: string): WhyAnswer {
  const lines = [
    ...partLines(report, thing),
    ...makingLines(report, thing),
    ...assemblyLines(report, thing),
    ...orderLines(report, thing),
    ...joinLines(report, thing),
    ...chainLines(report, thing),
    ...cartLines(report, thing),
    ...tasksAbout(report, thing).flatMap((task) => taskLines(report, task)),
  ]
  if (lines.length > 0) return { kind: 'known', text: `${thing}\n${lines.join('\n')}\n` }
  const near = nearNames(thing, namesIn(report))
  const says =
    near.length > 0
      ? `did you mean ${nameList(near, 'or')}?`
      : 'name a part, step, work, plate, cart, person, machine, chain or task of the project'
  return { kind: 'unknown', says: `there is nothing called \`${thing}\`; ${says}` }
}
