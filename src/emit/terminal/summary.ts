import type { Amount, ReportModel } from '../../report/report-model.ts'

/** Money as text; an incomplete total says so. */
export function sayAmount(amount: Amount, currency: string): string {
  if (typeof amount === 'string') return `${amount} ${currency}`
  return `${amount.known} ${currency} and ${amount.unknown.length} unknown`
}

const time = (iso: string): string => iso.replace('T', ' ')

function finishLine({ finish, daysLate, device, bound }: ReportModel): string {
  const when = `finished ${time(finish)}`
  const against =
    daysLate === null
      ? ''
      : daysLate > 0
        ? `, ${daysLate} days after ${device.wanted}`
        : `, ${-daysLate} days before ${device.wanted}`
  return `${when}${against}; ${bound.says}`
}

/** How sure the date is; nothing where it was not asked. */
function sureLines({ risk, tasks }: ReportModel): readonly string[] {
  if (!risk) return []
  const by = risk.finishBy.map(({ chance, finish }) =>
    finish === null
      ? `never in ${Math.round(100 * chance)} %`
      : `${Math.round(100 * chance)} % by ${time(finish)}`,
  )
  const wanted = risk.wanted === null ? '' : `; the wanted day in ${Math.round(100 * risk.wanted)} %`
  return [`  ${by.join(', ')}${wanted} of ${risk.samples} samples`, ...tonightLines(risk, tasks)]
}

/** Most actions shown of one session. */
const mostActions = 3

/** What is worth doing in the next session of each person, those worth most. */
function tonightLines(
  { tonight }: NonNullable<ReportModel['risk']>,
  tasks: ReportModel['tasks'],
): readonly string[] {
  const people = [...new Set(tonight.map(({ person }) => person))]
  return people.flatMap((person) => {
    const own = tonight.filter((action) => action.person === person)
    const lines = own.slice(0, mostActions).map(({ task, days, says }) => {
      const title = tasks.find(({ id }) => id === task)?.title ?? task
      return `    ${title}, ${days.toFixed(1)} days on average: ${says}`
    })
    return [`  worth most in the next session of ${person}, ${time(own[0]!.from)}:`, ...lines]
  })
}

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`

/** A terse summary of a plan. */
export function summary(report: ReportModel, out: string | null): string {
  const { cost, carts, device } = report
  const first = [...carts].sort((a, b) =>
    a.latest < b.latest ? -1 : a.latest > b.latest ? 1 : a.id < b.id ? -1 : 1,
  )[0]
  const lines = [
    `${device.name}${device.revision === null ? '' : ` revision ${device.revision}`}, ${device.qty} to build`,
    `  ${finishLine(report)}`,
    ...sureLines(report),
    `  cash ${sayAmount(cost.cash, cost.currency)}; charged ${sayAmount(cost.charged, cost.currency)}; left over ${sayAmount(cost.leftOver, cost.currency)}`,
    ...(first
      ? [`  ${counted(carts.length, 'cart')}; order first: ${first.id}, by ${time(first.latest)} as planned`]
      : []),
    `  ${counted(report.tasks.length, 'task')} in ${counted(report.sessions.length, 'session')}, ${counted(report.findings.length, 'finding')}`,
    ...(out === null ? [] : [`  written to ${out}`]),
  ]
  return `${lines.join('\n')}\n`
}
