// The library's text form of scheduling problems (.sm, .mm) read into a plain problem for the scheduler.

/** Lines of a section, from behind its title (and so many lines of head) to the next row of stars. */
function section(lines, title, head) {
  const from = lines.findIndex((line) => line.startsWith(title))
  if (from < 0) throw new Error(`no section ${title}`)
  const rest = lines.slice(from + 1 + head)
  const end = rest.findIndex((line) => line.startsWith('***'))
  return rest.slice(0, end < 0 ? undefined : end).filter((line) => line.trim() !== '')
}

const numbers = (line) => line.trim().split(/\s+/).map(Number)

/** The modes of every job: rows that begin a job have one number more than those that go on. */
function modesOf(rows, resources, used) {
  const jobs = []
  for (const row of rows) {
    const cells = numbers(row)
    if (cells.length === resources + 3) jobs.push([])
    const [duration, ...amounts] = cells.slice(cells.length - resources - 1)
    const needs = amounts.flatMap((amount, resource) =>
      amount > 0 ? [{ resource, amount, during: used[resource] ? 'ever' : 'span' }] : [],
    )
    jobs.at(-1).push({ duration, calendar: null, pausable: false, least: 0, needs, timetable: null })
  }
  return jobs
}

/** A problem from the text of one file; a time unit of the file is a minute. */
export function readInstance(text) {
  const lines = text.split(/\r?\n/)
  const kinds = section(lines, 'RESOURCEAVAILABILITIES', 0)
  const used = [...kinds[0].matchAll(/[RND]\s+\d+/g)].map(([name]) => name[0] === 'N')
  const capacities = numbers(kinds[1])
  const jobs = modesOf(section(lines, 'REQUESTS/DURATIONS', 2), capacities.length, used)
  const links = section(lines, 'PRECEDENCE RELATIONS', 1).flatMap((row) => {
    const [job, , count, ...next] = numbers(row)
    if (next.length !== count) throw new Error(`job ${job} names ${next.length} successors, not ${count}`)
    return next.map((to) => ({ from: job - 1, to: to - 1, type: 'FS', lag: 0, longest: null }))
  })
  return {
    start: 0,
    horizon: 1_000_000,
    resources: capacities.map((capacity, k) => ({ id: `R${k + 1}`, capacity })),
    calendars: [],
    dayCalendars: [],
    tasks: jobs.map((modes, k) => ({ id: String(k + 1), release: 0, modes, preference: 0 })),
    links,
    holds: [],
  }
}

/** Rows of `best.csv`: instance, best known finish, best known bound, critical path. */
export function readBest(text) {
  const [, ...rows] = text.trim().split(/\r?\n/)
  return rows.map((row) => {
    const [name, best, bound, path] = row.split(',')
    return { name, best: Number(best), bound: Number(bound), path: Number(path) }
  })
}
