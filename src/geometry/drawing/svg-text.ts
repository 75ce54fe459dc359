/** Lines of one weight, in millimetres of paper: x and y in turn. */
export interface Stroke {
  readonly widthMm: number
  /** Lengths of dash and gap; `null`: unbroken. */
  readonly dashMm: readonly [number, number] | null
  readonly lines: readonly (readonly number[])[]
}

/** An upright box, in millimetres of paper. */
export interface PaperBox {
  readonly x: number
  readonly y: number
  readonly side: number
}

/** The strip of a sheet that holds something: from its upper edge down, in millimetres of paper. */
export interface Strip {
  readonly topMm: number
  readonly heightMm: number
}

/** What a sheet holds, in the order it is drawn. */
export type Mark =
  | { readonly mark: 'stroke'; readonly stroke: Stroke }
  /** Filled black, with a thin white rim that keeps it off what lies below. */
  | { readonly mark: 'solid'; readonly points: readonly number[] }
  /** White, with a rim of the width given; hides what was drawn before. */
  | { readonly mark: 'box'; readonly box: PaperBox; readonly widthMm: number }

/** An SVG picture in black and white, `sizeMm` wide: the strip of its sheet that is given. Source: SVG 1.1, W3C recommendation 2011, from memory. */
export function svgText(
  sizeMm: number,
  title: string,
  marks: readonly Mark[],
  { topMm, heightMm }: Strip = { topMm: 0, heightMm: sizeMm },
): string {
  const [size, high] = [figure(sizeMm), figure(heightMm)]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${size}mm" height="${high}mm" viewBox="0 ${figure(topMm)} ${size} ${high}">`,
    `<title>${escaped(title)}</title>`,
    '<g fill="none" stroke="#000" stroke-linecap="round" stroke-linejoin="round">',
    ...marks.flatMap(markText),
    '</g>',
    '</svg>',
    '',
  ].join('\n')
}

function markText(mark: Mark): readonly string[] {
  if (mark.mark === 'solid')
    return [
      `<path fill="#000" stroke="#fff" stroke-width="0.25" paint-order="stroke" d="${pathOf(mark.points)}Z"/>`,
    ]
  if (mark.mark === 'box') {
    const { x, y, side } = mark.box
    return [
      `<rect fill="#fff" stroke-width="${figure(mark.widthMm)}" x="${figure(x)}" y="${figure(y)}" width="${figure(side)}" height="${figure(side)}"/>`,
    ]
  }
  const { widthMm, dashMm, lines } = mark.stroke
  if (lines.length === 0) return []
  const dashes = dashMm ? ` stroke-linecap="butt" stroke-dasharray="${dashMm.map(figure).join(' ')}"` : ''
  return [`<path stroke-width="${figure(widthMm)}"${dashes} d="${lines.map(pathOf).join('')}"/>`]
}

function pathOf(points: readonly number[]): string {
  const closed =
    points.length > 6 && points.at(-2) === points[0] && points.at(-1) === points[1]
      ? points.slice(0, -2)
      : points
  const text: string[] = []
  for (let i = 0; i < closed.length; i += 2)
    text.push(`${i === 0 ? 'M' : i === 2 ? 'L' : ' '}${figure(closed[i]!)} ${figure(closed[i + 1]!)}`)
  return text.join('') + (closed === points ? '' : 'Z')
}

/** Two decimals: a hundredth of a millimetre, less than any printer shows. */
function figure(value: number): string {
  return String(Math.round(value * 100) / 100 + 0)
}

/** Text as SVG holds it; signs that XML does not know are left out. */
function escaped(text: string): string {
  return [...text]
    .filter((sign) => /[\t\n\r\u0020-\ud7ff\ue000-\ufffd]|[\u{10000}-\u{10ffff}]/u.test(sign))
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
}
