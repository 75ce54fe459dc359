import { nameList } from '../base/near-names.ts'
import type { Results } from '../model/results.ts'

/** What of an assembly's order the meshes saw to, and what rests on typed facts alone; `''` where none has a mesh. */
export function sayMeshes({ meshes, orders }: Results, of: string | null): string {
  const plan = meshes?.plans.get(of ?? '')
  const order = orders.get(of ?? '')
  if (!plan || !order || plan.moves.length === 0) return ''
  const asked = order.constraints.filter(({ why }) => why === 'model').length
  const aside = order.setAside.length
  return [
    `${plan.moves.length} of the things put have a mesh; ${asked} ${asked === 1 ? 'demand' : 'demands'} on the order come from them`,
    ...(aside > 0 ? [`${aside} left out, since what is typed goes before`] : []),
    ...(plan.typedAlone.length > 0
      ? [`on what is typed alone rests the place of ${nameList(plan.typedAlone, 'and')}`]
      : []),
  ].join('; ')
}
