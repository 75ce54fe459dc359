import type { Chain, Project } from './project.ts'

/**
 * The dimensions of a chain, each once: one of a part of which a device has a single piece is the same each time it is
 * named, so its signs add up.
 */
export function dimensionsOf(project: Project, { sum }: Chain): Chain['sum'] {
  const single = ({ of }: Chain['sum'][number]): boolean =>
    of !== null && project.demand.get(of.part)?.perDevice === 1
  const key = ({ of }: Chain['sum'][number]): string => `${of?.part}.${of?.feature}`
  return sum.flatMap((one, at) => {
    if (!single(one)) return [one]
    const alike = sum.filter((other) => single(other) && key(other) === key(one))
    if (sum.findIndex((other) => single(other) && key(other) === key(one)) !== at) return []
    const factor = alike.reduce((total, other) => total + other.factor, 0)
    return factor === 0 ? [] : [{ ...one, factor }]
  })
}
