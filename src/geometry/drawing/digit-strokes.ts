/** Strokes of the ten digits in a box 4 wide and 6 high, x and y in turn, y downward. */
const digits: readonly (readonly (readonly number[])[])[] = [
  [[1, 0, 3, 0, 4, 1, 4, 5, 3, 6, 1, 6, 0, 5, 0, 1, 1, 0]],
  [
    [0.8, 1.2, 2.2, 0, 2.2, 6],
    [1, 6, 3.4, 6],
  ],
  [[0, 1, 1, 0, 3, 0, 4, 1, 4, 2.2, 0, 6, 4, 6]],
  [
    [0, 1, 1, 0, 3, 0, 4, 1, 4, 2, 3, 2.9, 1.5, 2.9],
    [3, 2.9, 4, 3.9, 4, 5, 3, 6, 1, 6, 0, 5],
  ],
  [[3, 6, 3, 0, 0, 4, 4, 4]],
  [[4, 0, 0.4, 0, 0, 2.7, 3, 2.7, 4, 3.6, 4, 5, 3, 6, 1, 6, 0, 5]],
  [[3.6, 0, 2, 0, 0, 2.2, 0, 5, 1, 6, 3, 6, 4, 5, 4, 3.8, 3, 2.8, 1, 2.8, 0, 3.8]],
  [[0, 0, 4, 0, 1.5, 6]],
  [
    [
      1, 2.8, 0, 2, 0, 1, 1, 0, 3, 0, 4, 1, 4, 2, 3, 2.8, 1, 2.8, 0, 3.8, 0, 5, 1, 6, 3, 6, 4, 5, 4, 3.8, 3,
      2.8,
    ],
  ],
  [[4, 2.2, 3, 3.2, 1, 3.2, 0, 2.2, 0, 1, 1, 0, 3, 0, 4, 1, 4, 3.8, 2, 6, 0.4, 6]],
]

/** From one digit to the next, in the units of a digit. */
const step = 5.4

/** Width of a number written `heightMm` high, in millimetres. */
export function numberWidth(number: number, heightMm: number): number {
  return ((String(number).length - 1) * step + 4) * (heightMm / 6)
}

/** A whole number as strokes, its upper left corner at a point; drawn, so that a picture needs no fonts. */
export function numberStrokes(
  number: number,
  [x, y]: readonly [number, number],
  heightMm: number,
): readonly (readonly number[])[] {
  const unit = heightMm / 6
  return [...String(number)].flatMap((digit, place) =>
    (digits[Number(digit)] ?? []).map((points) =>
      points.map((at, i) => (i % 2 === 0 ? x + (at + place * step) * unit : y + at * unit)),
    ),
  )
}
