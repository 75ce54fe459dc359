import { nameList, nearNames } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import { message } from '../message.ts'

type FileKind = 'zip' | 'web page' | 'XML' | 'OBJ' | 'PLY' | 'STEP' | 'UTF-16 text' | 'text'

const kinds: Readonly<Record<FileKind, string>> = {
  zip: 'a 3MF file or another zip',
  'web page': 'a web page, such as a download leaves behind',
  XML: 'XML',
  OBJ: 'OBJ',
  PLY: 'PLY',
  STEP: 'STEP',
  'UTF-16 text': 'text in UTF-16',
  text: 'text that does not begin with `solid`',
}

/** Why a mesh file is none, as a whole. */
type MeshFault =
  | { readonly fault: 'empty file' | 'no triangles' }
  | { readonly fault: 'too many bytes'; readonly bytes: number; readonly most: number }
  | { readonly fault: 'too many triangles'; readonly triangles: number; readonly most: number }
  | { readonly fault: 'not STL'; readonly bytes: number }
  | { readonly fault: 'other kind'; readonly kind: FileKind }
  | { readonly fault: 'too small' | 'too long'; readonly longestMm: number }
  | {
      readonly fault: 'wrong triangle count'
      readonly declared: number
      readonly room: number
      readonly spareBytes: number
    }
  | { readonly fault: 'bad coordinate'; readonly triangle: number; readonly found: string }

/** Why a line of a mesh in text form cannot be read. */
type MeshLineFault =
  | { readonly fault: 'unexpected word'; readonly found: string; readonly wanted: string }
  | { readonly fault: 'ends early'; readonly wanted: string }

/** What is wrong with a table of placements at a place. */
type TableFault =
  | {
      readonly fault:
        | 'quote left open'
        | 'text after a quote'
        | 'quote inside a cell'
        | 'too long'
        | 'no header row'
        | 'no designator'
    }
  | { readonly fault: 'not a designator' | 'range falls'; readonly word: string }
  | { readonly fault: 'unclear range'; readonly word: string; readonly perhaps: string }
  | { readonly fault: 'range too long'; readonly word: string; readonly most: number }
  | { readonly fault: 'column twice'; readonly wanted: string }
  | { readonly fault: 'row of another length'; readonly cells: number; readonly wanted: number }
  | { readonly fault: 'designator twice'; readonly designator: string; readonly firstLine: number }

function sayMesh(p: MeshFault): string {
  switch (p.fault) {
    case 'empty file':
      return 'is empty'
    case 'no triangles':
      return 'holds no triangle'
    case 'too many bytes':
      return `has ${p.bytes} bytes, at most ${p.most} are read`
    case 'too many triangles':
      return `has ${p.triangles} triangles, at most ${p.most} are read`
    case 'not STL':
      return `is no STL file: ${p.bytes} bytes that neither begin with \`solid\` nor hold the 84 bytes of a binary head`
    case 'other kind':
      return `is no STL file: it is ${kinds[p.kind]}`
    case 'too small':
      return `measures ${Number(p.longestMm.toPrecision(3))} mm at its longest, read as millimetres; no part is that small`
    case 'too long':
      return `measures ${Number((p.longestMm / 1000).toPrecision(3))} m at its longest, read as millimetres; no part is that long`
    case 'wrong triangle count':
      return p.declared === p.room
        ? `has ${p.spareBytes} bytes more than its ${p.declared} triangles take`
        : `says it has ${p.declared} triangles, but has room for ${p.room}`
    case 'bad coordinate':
      return `has \`${p.found}\` for a coordinate of triangle ${p.triangle}`
  }
}

const saveAgain = 'save the part again as STL, binary or text, in millimetres'

function mendMesh(p: MeshFault): string {
  switch (p.fault) {
    case 'too many bytes':
    case 'too many triangles':
      return 'save the part coarser: some thousand triangles are enough'
    case 'other kind':
      return p.kind === 'zip'
        ? 'save the part as STL; a 3MF file of the whole device goes under `assembled` of `device`'
        : saveAgain
    case 'too small':
    case 'too long':
      return 'save the mesh again in millimetres: STL has no unit of its own'
    default:
      return saveAgain
  }
}

function sayTable(p: TableFault): string {
  switch (p.fault) {
    case 'too long':
      return 'this table is longer than ten million characters'
    case 'quote left open':
      return 'this quote is not closed'
    case 'text after a quote':
      return 'text follows a closed quote'
    case 'quote inside a cell':
      return 'a quote stands inside a cell that has none at its beginning'
    case 'no header row':
      return 'this table has no line of heads'
    case 'no designator':
      return 'this line names no component'
    case 'not a designator':
      return `\`${p.word}\` is no designator such as R1`
    case 'range falls':
      return `the range \`${p.word}\` falls`
    case 'unclear range':
      return `the range \`${p.word}\` is not clear`
    case 'range too long':
      return `the range \`${p.word}\` names more than ${p.most} components`
    case 'column twice':
      return `two columns are called \`${p.wanted}\``
    case 'row of another length':
      return `this line has ${p.cells} cells, the heads are ${p.wanted}`
    case 'designator twice':
      return `\`${p.designator}\` stands in line ${p.firstLine} too`
  }
}

/** SRC: files that parts name: meshes and placements. */
export const srcAttached = {
  meshUnread: message<{ file: string; why: MeshFault }>({
    code: 'SRC36',
    level: 'error',
    says: ({ file, why }) => `\`${file}\` ${sayMesh(why)}`,
    mend: ({ why }) => mendMesh(why),
    why: 'Volume, box and print time come from the triangles of the mesh.',
  }),
  meshLine: message<{ part: string; file: string; named: Place; why: MeshLineFault }>({
    code: 'SRC37',
    level: 'error',
    says: ({ part, why }) =>
      why.fault === 'ends early'
        ? `the mesh of \`${part}\` ends where \`${why.wanted}\` should stand`
        : `in the mesh of \`${part}\` \`${why.found}\` stands where \`${why.wanted}\` should`,
    mend: () => saveAgain,
    notes: ({ part, file, named }) => [{ at: named, says: `\`${part}\` names \`${file}\` here` }],
    why: 'A mesh in text form is read word by word; after a wrong word nothing can be trusted.',
  }),
  tableFault: message<{ why: TableFault }>({
    code: 'SRC38',
    level: 'error',
    says: ({ why }) => sayTable(why),
    mend: ({ why }) =>
      why.fault === 'unclear range'
        ? `write \`${why.perhaps}\``
        : why.fault === 'row of another length'
          ? 'give the line as many cells as there are heads; a cell with a comma goes in double quotes'
          : 'correct this line, or save the placements again as CSV',
    why: 'What is soldered on, and bought for it, is counted from these lines.',
  }),
  noColumn: message<{ wanted: string; key: string; heads: readonly string[] }>({
    code: 'SRC39',
    level: 'error',
    says: ({ wanted, heads }) =>
      `no column is called \`${wanted}\`; there are ${heads.length === 0 ? 'none' : nameList(heads, 'and')}`,
    mend: ({ wanted, key, heads }) =>
      `say which column it is, such as \`placements: {file: …, ${key}: ${nearNames(wanted, heads)[0] ?? heads[0] ?? 'Name'}}\``,
    why: 'Programs name these columns as they please; the project says what stands where.',
  }),
} as const
