import { msh } from '../diagnostics/catalogue/msh.ts'
import { mshContact } from '../diagnostics/catalogue/msh-contact.ts'
import type { Way } from '../diagnostics/catalogue/way-words.ts'
import type { Report } from '../diagnostics/message.ts'
import type { FromMeshes, MeshFinding, MoveDirection } from '../model/from-meshes.ts'
import type { NetworkCheck } from './check.ts'

/** What a number of a direction stands for. */
type WayOf = (direction: MoveDirection) => Way

type Tell = {
  readonly [K in MeshFinding['kind']]: (
    found: MeshFinding & { kind: K },
    report: Report,
    wayOf: WayOf,
  ) => void
}

/** The same with ways in place of the numbers of directions. */
function told<T extends { readonly direction: MoveDirection }>(
  one: T,
  wayOf: WayOf,
): Omit<T, 'direction'> & { direction: Way } {
  return { ...one, direction: wayOf(one.direction) }
}

const tell: Tell = {
  'from blocked': (found, report, wayOf) =>
    report(msh.fromBlocked, found.at, { ...told(found, wayOf), free: found.free.map(wayOf) }),
  'from misspelt': (found, report) => report(msh.fromMisspelt, found.at, found),
  'no opening': (found, report) => report(msh.noOpening, found.at, found),
  'shuts more': (found, report, wayOf) => report(msh.shutsMore, found.at, told(found, wayOf)),
  'cannot leave': (found, report, wayOf) =>
    report(msh.cannotLeave, found.at, { ...found, travel: found.travel.map((one) => told(one, wayOf)) }),
  'order blocked': (found, report, wayOf) =>
    report(msh.orderBlocked, found.at, { ...found, by: found.by.map((one) => told(one, wayOf)) }),
  'no contact': (found, report) => report(mshContact.noContact, found.at, found),
  'contact without join': (found, report) => report(mshContact.contactWithoutJoin, found.at, found),
  overlap: (found, report) => report(mshContact.overlap, found.at, found),
  loose: (found, report, wayOf) =>
    report(mshContact.loose, found.at, { ...found, directions: found.directions.map(wayOf) }),
  count: (found, report) => report(msh.count, found.at, found),
  'tool room': (found, report) => report(msh.toolRoom, found.at, found),
  'far off': (found, report) => report(mshContact.farOff, found.at, found),
  'no mesh': (found, report) => report(mshContact.noMesh, found.at, found),
  'odd scale': (found, report) => report(mshContact.oddScale, found.at, found),
}

function wayOfIn({ tilted }: FromMeshes): WayOf {
  return (direction) => {
    const axis = tilted[(direction >> 1) - 3]
    const sign = direction % 2 === 0 ? 1 : -1
    return axis ? [sign * axis[0], sign * axis[1], sign * axis[2]] : direction
  }
}

/** MSH10 to MSH24: where what is typed and what the meshes show differ. */
export const differsFromMeshes: NetworkCheck = ({ meshes }, report) => {
  if (!meshes) return
  const wayOf = wayOfIn(meshes)
  for (const found of meshes.findings)
    (tell[found.kind] as (one: MeshFinding, report: Report, wayOf: WayOf) => void)(found, report, wayOf)
}
