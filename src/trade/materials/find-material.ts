import { nearNames } from '../../base/near-names.ts'
import type { WorkMaterial } from '../cutting/types.ts'
import type { Material } from './material.ts'
import { materials } from './materials.ts'

/** A name that no material of the table has, with those it may be a slip for. */
export interface NoMaterial {
  readonly fault: 'no such material'
  readonly near: readonly string[]
}

/** Letters and digits alone, so that `EN AW-6082`, `en aw 6082` and `ENAW6082` are one; a point stays. */
const folded = (name: string): string => name.toLowerCase().replace(/[^a-z0-9.]/g, '')

const byName: ReadonlyMap<string, Material> = new Map(
  materials.flatMap((material) => [material.key, ...material.names].map((name) => [folded(name), material])),
)
const allNames: readonly string[] = materials.flatMap(({ key, names }) => [key, ...names])

/** The material that a designation means, in any case and spacing; else up to three near names. */
export function findMaterial(name: string): Material | NoMaterial {
  return byName.get(folded(name)) ?? { fault: 'no such material', near: nearNames(name.trim(), allNames) }
}

/** What cutting needs to know of a material of the table. */
export function workMaterial({ group, kc11NPerMm2, mc }: Material): WorkMaterial {
  return { group, kc11NPerMm2: kc11NPerMm2?.value ?? null, mc: mc?.value ?? null }
}
