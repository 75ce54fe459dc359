import type { Quantity } from '../base/quantity.ts'
import { prcModel } from '../diagnostics/catalogue/prc-model.ts'
import type { MeshFacts } from '../model/mesh.ts'
import type { Finished } from '../model/project.ts'
import type { MachinedWaySource } from '../source/generated/project-types.ts'
import { field, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { quantityAt, sizeAt } from './reading.ts'
import { plainFigure, workedQuantity } from './worked-quantity.ts'

/** A mesh and a statement that are further apart than this share are told of. Common practice, no source. */
const farApart = 0.02

type FinishedSpot = Spot<NonNullable<MachinedWaySource['finished']>> | null

/** Size of a finished part: what is stated, and from the mesh what is not; `null` where neither says anything. */
export function finishedAt(context: Context, spot: FinishedSpot, mesh: MeshFacts | null): Finished | null {
  const stated = statedAt(context, spot)
  if (!mesh) return stated
  const ofMesh: Finished = {
    volume: mesh.volumeMm3 === null ? null : workedQuantity(mesh.volumeMm3, 'volume'),
    area: mesh.areaMm2 > 0 ? workedQuantity(mesh.areaMm2, 'area') : null,
    box: boxOf(mesh),
  }
  if (!stated) return ofMesh
  warnApart(context, spot!, stated, ofMesh)
  return {
    volume: stated.volume ?? ofMesh.volume,
    area: stated.area ?? ofMesh.area,
    box: stated.box ?? ofMesh.box,
  }
}

/** The box of a mesh; `null` where it is flat. */
function boxOf({ boxMm }: MeshFacts): Finished['box'] {
  const [x, y, z] = boxMm
  return boxMm.every((side) => side > 0)
    ? [workedQuantity(x, 'length'), workedQuantity(y, 'length'), workedQuantity(z, 'length')]
    : null
}

function statedAt(context: Context, spot: FinishedSpot): Finished | null {
  if (!spot) return null
  const box = sizeAt(context, 'box', field(spot, 'box'), 3)
  return {
    volume: quantityAt(context, 'volume', field(spot, 'volume'), 'volume', 'above 0'),
    area: quantityAt(context, 'area', field(spot, 'area'), 'area', 'above 0'),
    box: box && [box[0]!, box[1]!, box[2]!],
  }
}

function warnApart(
  context: Context,
  spot: NonNullable<FinishedSpot>,
  stated: Finished,
  mesh: Finished,
): void {
  for (const what of ['volume', 'area'] as const) {
    const [said, has] = [stated[what], mesh[what]]
    if (said && has) tell(context, spot, what, [said], [has])
  }
  // A mesh may lie another way than its drawing: sides are compared by size.
  if (stated.box && mesh.box) tell(context, spot, 'box', bySize(stated.box), bySize(mesh.box))
}

const bySize = (sides: readonly Quantity[]): readonly Quantity[] =>
  [...sides].sort((a, b) => a.value.compare(b.value))

function tell(
  context: Context,
  spot: NonNullable<FinishedSpot>,
  what: 'volume' | 'area' | 'box',
  stated: readonly Quantity[],
  mesh: readonly Quantity[],
): void {
  const apart = stated.map((one, at) =>
    Math.abs(one.value.valueOf() / Math.max(mesh[at]!.value.valueOf(), 1e-9) - 1),
  )
  const most = Math.max(...apart)
  if (!(most > farApart)) return
  const sides = mesh.map(({ text, value }) => (what === 'box' ? plainFigure(value.valueOf()) : text))
  context.report(prcModel.statedDiffers, field(spot, what)!.at, {
    what,
    stated: field(spot, what)!.text,
    mesh: what === 'box' ? `${sides.join(' x ')} mm` : sides[0]!,
    percent: most * 100,
  })
}
