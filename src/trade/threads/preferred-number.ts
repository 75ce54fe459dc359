/** The R40 series, 40 steps to a factor of ten. Source: ISO 3. */
const r40 = [
  ...[100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300],
  ...[315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950],
]

/** Place of the preferred number nearest to a value. */
const placeOf = (value: number): number => Math.round(40 * Math.log10(value))

/** A preferred number as tolerance tables print it: whole, halves to the even neighbour (26.5 as 26, 35.5 as 36). */
function printed(place: number): number {
  const decade = Math.floor(place / 40)
  const exact = r40[place - 40 * decade]! * 10 ** (decade - 2)
  const below = Math.floor(exact + 1e-9)
  if (Math.abs(exact - below - 0.5) > 1e-6) return Math.round(exact)
  return below % 2 === 0 ? below : below + 1
}

/**
 * The preferred number `steps` steps of R40 away from the one nearest to a value. Thread grades lie whole steps apart.
 * Source: ISO 3 series R40; the printing of halves is from memory of the tables of ISO 965-1.
 */
export function preferredNumber(value: number, steps = 0): number {
  return printed(placeOf(value) + steps)
}
