/** A number as a person writes it in a sum: five figures, no needless zeros; whole numbers whole. */
export function figure(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e15) return `${value}`
  return `${Number(value.toPrecision(5))}`
}

/** Seconds as hours and minutes: `2 h 24 min`; below an hour `12 min`, below a minute `45 s`. */
export function duration(seconds: number): string {
  if (seconds < 60) return `${figure(seconds)} s`
  const minutes = Math.round(seconds / 60)
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60]
  return hours === 0 ? `${rest} min` : rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
}
