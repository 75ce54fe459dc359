/** Ways of tasks that together use up no more than there is. */
import type { PlainProblem } from './plain-problem.ts'

/** What a repair looks at: what there is, and what every way of the tasks uses up. */
export type StockAmounts = Pick<PlainProblem, 'size' | 'capacity' | 'spent'>

/** Changes ways until what they use up is there, as far as it finds out how. Gives: how much is still missing. */
export type StockRepair = (ways: Int32Array, chance: () => number) => number

/** How often a change is tried, per task. */
const triesPerTask = 8

/** The repair of a problem, among the ways open to each task. A change is kept where no more is missing after it than before. */
export function stockRepairOf(amounts: StockAmounts, choices: readonly (readonly number[])[]): StockRepair {
  const { capacity, spent } = amounts
  const resources = capacity.length
  const stocks = Array.from(capacity, (_, resource) => resource).filter((resource) =>
    spent.some((amount, k) => k % resources === resource && amount > 0),
  )
  const choosing = Array.from({ length: amounts.size }, (_, task) => task).filter(
    (task) => choices[task]!.length > 1,
  )
  const left = new Int32Array(resources)
  const missing = () => stocks.reduce((sum, resource) => sum + Math.max(0, -left[resource]!), 0)
  const swap = (from: number, to: number) => {
    for (const resource of stocks)
      left[resource]! += spent[from * resources + resource]! - spent[to * resources + resource]!
  }
  return (ways, chance) => {
    if (stocks.length === 0) return 0
    left.set(capacity)
    for (const way of ways)
      for (const resource of stocks) left[resource]! -= spent[way * resources + resource]!
    let lacks = missing()
    for (let tries = triesPerTask * choosing.length; lacks > 0 && tries > 0; tries--) {
      const task = choosing[Math.floor(chance() * choosing.length)]!
      const way = choices[task]![Math.floor(chance() * choices[task]!.length)]!
      const before = ways[task]!
      swap(before, way)
      const now = missing()
      if (now > lacks) swap(way, before)
      else {
        ways[task] = way
        lacks = now
      }
    }
    return lacks
  }
}
