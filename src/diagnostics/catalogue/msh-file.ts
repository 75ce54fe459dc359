import { message } from '../message.ts'

/** Why a 3MF file cannot be used. */
type AssembledFault =
  | { readonly fault: 'not a zip' | 'no model' | 'no triangles' }
  | { readonly fault: 'damaged'; readonly path: string; readonly what: string }
  | { readonly fault: 'locked' | 'document type' | 'missing file'; readonly path: string }
  | { readonly fault: 'too large'; readonly bytes: number; readonly most: number }
  | { readonly fault: 'too many triangles' | 'too many vertices' | 'too many bodies'; readonly most: number }
  | { readonly fault: 'other encoding'; readonly path: string; readonly encoding: string }
  | { readonly fault: 'not a model'; readonly path: string; readonly root: string }
  | { readonly fault: 'extension'; readonly extension: string }
  | { readonly fault: 'unknown unit'; readonly unit: string }
  | ObjectFault
  | LineFault

interface ObjectFault {
  readonly fault: 'unknown object' | 'empty object' | 'too far' | 'in itself'
  readonly id: string
}

/** Faults at a line of a file within. */
type LineFault = { readonly path: string; readonly line: number } & (
  | { readonly fault: 'not XML'; readonly what: string }
  | { readonly fault: 'bad number' | 'flat transform'; readonly what: string; readonly found: string }
  | { readonly fault: 'missing attribute'; readonly what: string; readonly of: string }
  | { readonly fault: 'doubled object'; readonly id: string }
)

function sayFault(p: AssembledFault): string {
  switch (p.fault) {
    case 'not a zip':
      return 'is no 3MF file: it does not open as a zip'
    case 'no model':
      return 'holds no model'
    case 'no triangles':
      return 'holds no object with triangles; those of type `support` or `other` do not count'
    case 'damaged':
      return `is damaged: \`${p.path}\` in it is not whole (${p.what})`
    case 'locked':
      return `is locked: \`${p.path}\` in it asks for a password`
    case 'too large':
      return `unpacks to ${p.bytes} bytes, at most ${p.most} are read`
    case 'too many triangles':
      return `has more than ${p.most} triangles, each use counted`
    case 'too many vertices':
      return `has more than ${p.most} vertices`
    case 'too many bodies':
      return `places more than ${p.most} objects, each use counted`
    case 'other encoding':
      return `has \`${p.path}\` in ${p.encoding}; the format knows UTF-8 and UTF-16`
    case 'document type':
      return `has a \`<!DOCTYPE\` in \`${p.path}\`, which the format forbids`
    case 'not a model':
      return `has \`${p.root}\` as the outermost element of \`${p.path}\`, which is no \`model\` of the 3MF core`
    case 'extension':
      return `requires the extension \`${p.extension}\`, which is not read here`
    case 'unknown unit':
      return `is in \`${p.unit}\`, which is no unit of the format`
    case 'missing file':
      return `uses objects of \`${p.path}\`, which is not in it`
    default:
      return 'line' in p ? sayLine(p) : sayObject(p)
  }
}

function sayObject(p: ObjectFault): string {
  switch (p.fault) {
    case 'unknown object':
      return `uses the object ${p.id}, which it does not hold`
    case 'empty object':
      return `uses the object ${p.id}, which has neither triangles nor components`
    case 'too far':
      return `has the object ${p.id} more than a kilometre off`
    case 'in itself':
      return `has the object ${p.id} inside itself, or nested too deep`
  }
}

function sayLine(p: LineFault): string {
  const where = `in line ${p.line} of \`${p.path}\``
  switch (p.fault) {
    case 'not XML':
      return `cannot be read ${where}: ${p.what}`
    case 'bad number':
      return `has \`${p.found}\` for \`${p.what}\` ${where}`
    case 'flat transform':
      return `makes an object flat by the \`${p.what}\` \`${p.found}\` ${where}`
    case 'missing attribute':
      return `lacks \`${p.what}\` at \`${p.of}\` ${where}`
    case 'doubled object':
      return `has two objects with the id ${p.id}, the second ${where}`
  }
}

function mendFault(p: AssembledFault): string {
  switch (p.fault) {
    case 'too large':
    case 'too many triangles':
    case 'too many vertices':
      return 'save the device coarser: some thousand triangles a part are enough here'
    case 'too many bodies':
      return 'join what is one part into one object, and leave out what decides no order'
    case 'extension':
      return 'save the device again with plain meshes, without that extension'
    case 'damaged':
      return 'copy or save the file again'
    case 'flat transform':
      return 'correct the scale of the object where it is drawn, then save again'
    default:
      return 'save the device again as one 3MF file with one object for each part, in millimetres'
  }
}

/** MSH: meshes in assembled place as files. */
export const mshFile = {
  assembledUnread: message<{ file: string; why: AssembledFault }>({
    code: 'MSH01',
    level: 'error',
    says: ({ file, why }) => `\`${file}\` ${sayFault(why)}`,
    mend: ({ why }) => mendFault(why),
    why: 'Only a model that is read whole can stand for the device.',
  }),
  tooManyBodies: message<{ bodies: number; most: number; part: string; times: number }>({
    code: 'MSH05',
    level: 'error',
    says: ({ bodies, most, part, times }) =>
      `${bodies} bodies stand in the device (\`${part}\` ${times} times), at most ${most} are compared`,
    mend: ({ part }) =>
      `leave out copies of \`${part}\` that are in no other's way, or join those that go in together into one object`,
    why: 'Each body is compared with each other one, so ten times as many take a hundred times as long.',
  }),
} as const
