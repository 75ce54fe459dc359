import { msh } from '../diagnostics/catalogue/msh.ts'
import { mshContact } from '../diagnostics/catalogue/msh-contact.ts'
import type { Report } from '../diagnostics/message.ts'
import type { MeshFinding } from '../model/from-meshes.ts'
import type { NetworkCheck } from './check.ts'

type Tell = {
  readonly [K in MeshFinding['kind']]: (found: MeshFinding & { kind: K }, report: Report) => void
}

const tell: Tell = {
  'from blocked': (found, report) => report(msh.fromBlocked, found.at, found),
  'from misspelt': (found, report) => report(msh.fromMisspelt, found.at, found),
  'no opening': (found, report) => report(msh.noOpening, found.at, found),
  'shuts more': (found, report) => report(msh.shutsMore, found.at, found),
  'cannot leave': (found, report) => report(msh.cannotLeave, found.at, found),
  'order blocked': (found, report) => report(msh.orderBlocked, found.at, found),
  'no contact': (found, report) => report(mshContact.noContact, found.at, found),
  'contact without join': (found, report) => report(mshContact.contactWithoutJoin, found.at, found),
  overlap: (found, report) => report(mshContact.overlap, found.at, found),
  loose: (found, report) => report(mshContact.loose, found.at, found),
  count: (found, report) => report(msh.count, found.at, found),
  'tool room': (found, report) => report(msh.toolRoom, found.at, found),
  'far off': (found, report) => report(mshContact.farOff, found.at, found),
  'no mesh': (found, report) => report(mshContact.noMesh, found.at, found),
  'odd scale': (found, report) => report(mshContact.oddScale, found.at, found),
}

/** MSH10 to MSH24: where what is typed and what the meshes show differ. */
export const differsFromMeshes: NetworkCheck = ({ meshes }, report) => {
  for (const found of meshes?.findings ?? [])
    (tell[found.kind] as (one: MeshFinding, report: Report) => void)(found, report)
}
