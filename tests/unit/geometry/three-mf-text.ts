import { zipSync } from 'fflate'

// Source of the format: 3MF core specification 1.4.0.
export const bytesOf = (text: string) => new TextEncoder().encode(text)
/** A package of one model. */
export const archive = (model: string, path = '3D/3dmodel.model') => zipSync({ [path]: bytesOf(model) })

const corners = [
  [0, 0, 0],
  [2, 0, 0],
  [0, 3, 0],
  [0, 0, 4],
]
const faces = [
  [0, 2, 1],
  [0, 1, 3],
  [0, 3, 2],
  [1, 2, 3],
]
/** A tetrahedron of 2 x 3 x 4 / 6 = 4 units of volume. */
export const mesh = `<mesh><vertices>${corners.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}" />`).join('')}</vertices>
<triangles>${faces.map(([a, b, c]) => `<triangle v1="${a}" v2='${b}' v3="${c}"/>`).join('\n')}</triangles></mesh>`
export const object = (id: number, name: string, inside = mesh) =>
  `<object id="${id}" name="${name}" type="model">${inside}</object>`
export const model = (resources: string, build: string, unit = 'millimeter') =>
  `<?xml version="1.0"?>\n<!-- <object id="9"> --><model unit="${unit}" xml:lang="en"><resources>${resources}</resources><build>${build}</build></model>`
