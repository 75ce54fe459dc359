/** A picture as a file: its name without ending. */
export interface PictureFile {
  readonly name: string
  readonly svg: string
  readonly sizeMm: number
}

/** Pictures of steps in the order of building, and of assemblies taken apart; as the plan gives them. */
export interface PictureSet {
  readonly steps: readonly {
    readonly of: string | null
    readonly step: string
    readonly number: number
    readonly svg: string
    readonly sizeMm: number
  }[]
  readonly wholes: readonly { readonly of: string | null; readonly svg: string; readonly sizeMm: number }[]
}

/** Longest part of a name that is taken from a step. */
const longest = 40

/** Every picture with a name of its own, made of plain letters, that sorts in the order of the steps. */
export function namedPictures({ steps, wholes }: PictureSet): readonly PictureFile[] {
  const named = steps.map(({ of, step, number, svg, sizeMm }) => {
    const place = String(number).padStart(3, '0')
    return { name: [of === null ? 'step' : plain(of), place, plain(step)].join('-'), svg, sizeMm }
  })
  const apart = wholes.map(({ of, svg, sizeMm }) => ({
    name: `${of === null ? 'whole' : plain(of)}-taken-apart`,
    svg,
    sizeMm,
  }))
  const files = [...named, ...apart]
  const seen = new Map<string, number>()
  return files.map((file) => {
    const key = file.name
    const before = seen.get(key) ?? 0
    seen.set(key, before + 1)
    return before === 0 ? file : { ...file, name: `${key}-${before + 1}` }
  })
}

function plain(text: string): string {
  const letters = text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, longest)
    .replace(/^-+|-+$/g, '')
  return letters === '' ? 'x' : letters
}
