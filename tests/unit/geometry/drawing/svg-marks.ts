/** What an SVG picture holds, read by a small strict reader of its own. */
export interface SvgMarks {
  readonly root: Readonly<Record<string, string>>
  readonly title: string
  /** Every line drawn: x and y in turn, in millimetres. */
  readonly paths: readonly {
    readonly width: number
    readonly dashes: string | null
    readonly points: readonly number[]
  }[]
  /** Filled shapes. */
  readonly solids: readonly (readonly number[])[]
  readonly boxes: number
}

/** Reads a picture; throws where it is not well-formed. Source: rules of XML 1.0, W3C recommendation, from memory. */
export function marksOf(svg: string): SvgMarks {
  const open: string[] = []
  const paths: { width: number; dashes: string | null; points: number[] }[] = []
  const solids: number[][] = []
  let [root, title, boxes, at]: [Record<string, string>, string, number, number] = [{}, '', 0, 0]
  for (const tag of svg.matchAll(/<(\/?)([a-z]+)((?:\s+[a-zA-Z-]+="[^"<&]*")*)\s*(\/?)>/g)) {
    const between = svg.slice(at, tag.index)
    if (/[<>]/.test(between) || /&(?!amp;|lt;|gt;)/.test(between)) throw new Error(`loose text: ${between}`)
    if (open.at(-1) === 'title') title += unescaped(between)
    else if (between.trim() !== '') throw new Error(`text outside of the title: ${between}`)
    at = tag.index + tag[0].length
    const [, closing, name, rest, alone] = tag as unknown as [string, string, string, string, string]
    if (closing) {
      if (open.pop() !== name) throw new Error(`</${name}> closes nothing`)
      continue
    }
    const attributes = attributesOf(rest)
    if (open.length === 0) root = attributes
    if (name === 'rect') boxes++
    if (name === 'path') {
      const lines = linesOf(attributes.d ?? '')
      if (attributes.fill === '#000') solids.push(...lines)
      else
        for (const points of lines)
          paths.push({
            width: Number(attributes['stroke-width']),
            dashes: attributes['stroke-dasharray'] ?? null,
            points,
          })
    }
    if (!alone) open.push(name)
  }
  if (open.length > 0 || svg.slice(at).trim() !== '') throw new Error('it does not end with its first tag')
  return { root, title, paths, solids, boxes }
}

function attributesOf(text: string): Record<string, string> {
  const found = [...text.matchAll(/([a-zA-Z-]+)="([^"]*)"/g)].map(([, key, value]) => [key!, value!] as const)
  if (new Set(found.map(([key]) => key)).size !== found.length) throw new Error(`doubled attribute: ${text}`)
  return Object.fromEntries(found)
}

function linesOf(path: string): number[][] {
  if (!/^(?:M-?[\d.]+ -?[\d.]+(?:L-?[\d.]+ -?[\d.]+(?: -?[\d.]+ -?[\d.]+)*)?Z?)+$/.test(path))
    throw new Error(`no path: ${path.slice(0, 80)}`)
  return path
    .split('M')
    .slice(1)
    .map((line) => {
      const points = (line.match(/-?[\d.]+/g) ?? []).map(Number)
      return line.endsWith('Z') ? [...points, points[0]!, points[1]!] : points
    })
}

function unescaped(text: string): string {
  return text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&')
}
