import type { Part } from '../../model/project.ts'
import { receivedTask } from './carts.ts'
import { type Ground, lotSizes, piecesMade, readyFor, takesBought } from './ground.ts'
import { buildRoute } from './routes.ts'

/** Tasks of every machined, bought and board part. Needs: carts are built. */
export function buildParts(ground: Ground): void {
  for (const part of ground.project.parts.values()) {
    if (piecesMade(ground.project, part) === 0) continue
    if (part.way.kind === 'machined') buildMachined(ground, part)
    if (part.way.kind === 'bought') buildBought(ground, part)
    if (part.way.kind === 'board') buildBoard(ground, part)
  }
}

function buildMachined(ground: Ground, part: Part): void {
  if (part.way.kind !== 'machined') return
  const { stock, material, route, lot } = part.way
  const piece = receivedTask(ground, { kind: 'stock', part: part.id })
  // Its pieces may come from several lengths of bar or sizes of plate.
  const forms = ground.purchase.cuts
    .filter((cut) => stock?.form && cut.material === material && takesBought(ground, cut.form, part.id))
    .map((cut) => receivedTask(ground, { kind: 'form', material: cut.material, form: cut.form }))
  const before = [piece, ...forms].filter((task) => task !== null)
  ground.begun.set(
    part.id,
    buildRoute(ground, part, route, lot, () => before),
  )
}

function buildBought(ground: Ground, part: Part): void {
  if (part.way.kind !== 'bought') return
  const received = receivedTask(ground, { kind: 'part', part: part.id })
  buildRoute(ground, part, part.way.route, part.way.lot, () => (received === null ? [] : [received]))
}

/** Bare boards come in, components are soldered on lot by lot, then the route. */
function buildBoard(ground: Ground, part: Part): void {
  if (part.way.kind !== 'board') return
  const { solder, route, lot, places } = part.way
  const received = receivedTask(ground, { kind: 'part', part: part.id })
  const bare = received === null ? [] : [received]
  if (!solder) {
    buildRoute(ground, part, route, lot, () => bare)
    return
  }
  const lots = lotSizes(piecesMade(ground.project, part), lot).length
  const firsts = buildRoute(
    ground,
    part,
    [{ kind: 'work', at: solder.at, operation: solder }, ...route],
    lot,
    () => bare,
    1,
  )
  ground.later.push(() => {
    for (const [index, first] of firsts.entries()) {
      for (const place of places)
        ground.build.linkAll(readyFor(ground, place.part, (index + 1) / lots), [first], 'part', place.at)
    }
  })
}
