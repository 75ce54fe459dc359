/** Whether every number is finite and from `least` to `most`. */
export function allWithin(values: readonly number[], least: number, most: number): boolean {
  return values.every((value) => Number.isFinite(value) && value >= least && value <= most)
}
