import { nameList } from '../../base/near-names.ts'
import type { Placed } from '../../base/place.ts'
import { message } from '../message.ts'

const perhaps = (near: readonly string[], otherwise: string): string =>
  near.length > 0 ? `did you mean ${nameList(near, 'or')}?` : otherwise

/** What a file is named for: a plan that is used, the mesh of a part, the assembled device, or a table. */
type NamedFor = 'plan' | 'mesh' | 'device' | 'table'

const examples: Readonly<Record<NamedFor, string>> = {
  plan: 'bench.yaml',
  mesh: 'cup.stl',
  device: 'device.3mf',
  table: 'board.csv',
}

/** Messages about finding and reading the files, and about YAML itself. */
export const src = {
  fileMissing: message<{ file: string; near: readonly string[] }>({
    code: 'SRC01',
    level: 'error',
    says: (p) => `there is no file \`${p.file}\``,
    mend: (p) => perhaps(p.near, 'correct the path; it counts from the folder of the file that names it'),
    why: 'A plan is the project file plus the files it uses; what is missing cannot be planned with.',
  }),
  fileIsFolder: message<{ file: string; namedFor: NamedFor }>({
    code: 'SRC02',
    level: 'error',
    says: (p) => `\`${p.file}\` is a folder`,
    mend: (p) => `name a file in it, such as \`${examples[p.namedFor]}\``,
    why: 'Only a file can be read; a folder may hold several.',
  }),
  fileUnreadable: message<{ file: string }>({
    code: 'SRC03',
    level: 'error',
    says: (p) => `\`${p.file}\` is there but may not be read`,
    mend: (p) => `allow reading, for instance \`chmod u+r ${p.file}\``,
    why: 'The permissions of the file, or of a folder above it, keep it from being read.',
  }),
  fileTooLarge: message<{
    file: string
    size: string
    limit: string
    together: boolean
    namedFor: NamedFor
  }>({
    code: 'SRC04',
    level: 'error',
    says: (p) =>
      p.together
        ? `the files together have ${p.size} with \`${p.file}\`, at most ${p.limit} are read`
        : `\`${p.file}\` has ${p.size}, at most ${p.limit} are read`,
    mend: (p) =>
      p.namedFor === 'mesh' || p.namedFor === 'device'
        ? 'save it coarser, as binary STL or 3MF: some thousand triangles a part are enough'
        : 'check that it is the file you mean; a plan of a thousand parts needs about 0.2 MB',
    why: 'A plan is written by hand, and a part of a bench needs no millions of triangles; a file this large is almost surely something else.',
  }),
  fileSpecial: message<{ file: string; namedFor: NamedFor }>({
    code: 'SRC05',
    level: 'error',
    says: (p) => `\`${p.file}\` is a device or a pipe, not an ordinary file`,
    mend: (p) =>
      p.namedFor === 'plan'
        ? 'name an ordinary file, or use `-` to read what is piped in'
        : 'name an ordinary file',
    why: 'Reading from devices and pipes may never end.',
  }),
  wrongEncoding: message<{ file: string; found: string }>({
    code: 'SRC06',
    level: 'error',
    says: (p) => `\`${p.file}\` is not UTF-8 text: ${p.found}`,
    mend: () => 'save the file with the encoding UTF-8',
    why: 'Units such as `µm` and signs such as `±` are only read right when the encoding is known: it is UTF-8.',
  }),
  controlCharacter: message<{ code: string }>({
    code: 'SRC07',
    level: 'error',
    says: (p) => `a character that cannot be seen stands here (${p.code})`,
    mend: () => 'delete it, or type the text again',
    why: 'Control characters come in by copying; they change names without showing.',
  }),
  emptyFile: message<{ file: string }>({
    code: 'SRC08',
    level: 'error',
    says: (p) => `\`${p.file}\` says nothing`,
    mend: () => 'begin with `device: {name: My device, currency: EUR, start: 2026-01-05}`',
    why: 'A file with only comments or blanks describes no plan.',
  }),
  severalDocuments: message<Record<string, never>>({
    code: 'SRC09',
    level: 'error',
    says: () => 'a second document begins here',
    mend: () => 'remove the line `---`, or move what follows to a file of its own and name it under `use`',
    why: 'A file holds one plan; of several documents only one could be meant.',
  }),
  notAMap: message<{ found: string }>({
    code: 'SRC10',
    level: 'error',
    says: (p) => `the file must hold keys such as \`device:\` and \`parts:\`, this is ${p.found}`,
    mend: () => 'begin each line at the left edge with a key and a colon, such as `parts:`',
    why: 'Everything in a plan stands behind a key that says what it is.',
  }),
  doubledKey: message<{ first: Placed }>({
    code: 'SRC11',
    level: 'error',
    says: (p) => `\`${p.first.id}\` stands here a second time`,
    mend: (p) => `merge both \`${p.first.id}\` entries into one, or rename one of them`,
    notes: (p) => [{ at: p.first.at, says: `\`${p.first.id}\` stands here first` }],
    why: 'Of two entries with one name only one could count, and nobody can say which was meant.',
  }),
  tabIndent: message<Record<string, never>>({
    code: 'SRC12',
    level: 'error',
    says: () => 'the line is indented with a tab',
    mend: () => 'indent with blanks, two for each level',
    why: 'Tabs have no fixed width, so they cannot say how deep a line stands.',
  }),
  badIndent: message<Record<string, never>>({
    code: 'SRC13',
    level: 'error',
    says: () => 'the indentation of this line fits no line above it',
    mend: () =>
      'begin it in the same column as the entry it belongs beside, or move it under a key that ends in a colon',
    why: 'The column in which a line begins says what it belongs to.',
  }),
  colonInText: message<{ text: string }>({
    code: 'SRC14',
    level: 'error',
    says: (p) => `\`${p.text}\` has a colon inside a text`,
    mend: (p) => `put quotes around it: ${quoted(p.text)}`,
    why: 'A colon followed by a blank separates a key from its value, so a text that holds one needs quotes.',
  }),
  notAPair: message<{ text: string }>({
    code: 'SRC15',
    level: 'error',
    says: (p) => `\`${p.text}\` is not a key with a value`,
    mend: (p) => {
      const [, key, value] = /^([^:\s]+):(\S.*)$/.exec(p.text) ?? []
      return key
        ? `put a blank after the colon: \`${key}: ${value}\``
        : `write \`${p.text}: …\`, or \`- ${p.text}\` in a list`
    },
    why: 'Beside other keys each line must be a key, a colon, a blank and a value.',
  }),
  notClosed: message<{ sign: string; close: string }>({
    code: 'SRC16',
    level: 'error',
    says: (p) => `the \`${p.sign}\` here is never closed`,
    mend: (p) => `add \`${p.close}\` where it ends`,
    why: 'Quotes and brackets come in pairs; without the second one nobody knows where it ends.',
  }),
  unreadable: message<{ text: string }>({
    code: 'SRC17',
    level: 'error',
    says: (p) => (p.text ? `\`${p.text}\` cannot stand here` : 'something is missing or too much here'),
    mend: () =>
      'if it belongs to a text, put the whole text in double quotes; else check the commas and brackets before it',
    why: 'The file follows YAML 1.2, and here it breaks its rules.',
  }),
  tooDeep: message<{ limit: number }>({
    code: 'SRC18',
    level: 'error',
    says: (p) => `entries are nested more than ${p.limit} deep here`,
    mend: () => 'check for brackets that are never closed; a plan is seldom more than ten deep',
    why: 'No plan is this deep; very deep files only serve to make programs fail.',
  }),
  tooManyValues: message<{ limit: number }>({
    code: 'SRC19',
    level: 'error',
    says: (p) =>
      `the file spells out more than ${p.limit} values, those repeated with \`*\` counted each time`,
    mend: () => 'repeat less with `*`, or split the plan',
    why: 'A few nested repetitions can stand for billions of values, which no computer could hold.',
  }),
  unknownAlias: message<{ name: string; near: readonly string[] }>({
    code: 'SRC20',
    level: 'error',
    says: (p) => `\`*${p.name}\` repeats something that no \`&${p.name}\` above names`,
    mend: (p) =>
      perhaps(
        p.near.map((name) => `*${name}`),
        `put \`&${p.name}\` before the value to repeat, or quotes around "*${p.name}" if it is a text`,
      ),
    why: 'A star at the beginning of a value repeats the value marked with the same name further up.',
  }),
  aliasInItself: message<{ name: string }>({
    code: 'SRC21',
    level: 'error',
    says: (p) => `\`*${p.name}\` stands inside the value that \`&${p.name}\` names`,
    mend: () => 'write the value out instead',
    why: 'A value that contains itself would never end.',
  }),
  notANumber: message<{ text: string }>({
    code: 'SRC22',
    level: 'error',
    says: (p) => `\`${p.text}\` is no amount`,
    mend: () => 'write a number, or leave the key out when the value is not known',
    why: 'Without a finite number no total and no date can be computed.',
  }),
  numberTooLarge: message<{ text: string }>({
    code: 'SRC23',
    level: 'error',
    says: (p) => `\`${p.text}\` has more digits or a larger power of ten than a number here may have`,
    mend: (p) => `if it is a name or a code, put quotes around it: "${p.text}"; else correct it`,
    why: 'Numbers beyond fifteen digits would be rounded without notice.',
  }),
  keyNotText: message<{ text: string; found: string; decimal: string | null }>({
    code: 'SRC24',
    level: 'error',
    says: (p) =>
      p.decimal === null
        ? `the key ${p.text ? `\`${p.text}\`` : 'here'} is ${p.found}, not a name`
        : `the comma ends the entry before, so \`${p.text}\` is taken as a key of its own`,
    mend: (p) => {
      if (p.decimal !== null) return `write a decimal with a point: \`${p.decimal}\``
      return p.text ? `put quotes around it: "${p.text}":` : 'write a name before the colon'
    },
    why: 'Names are texts. Bare digits or words such as `true` are read as something else by other programs.',
  }),
  customTag: message<{ tag: string }>({
    code: 'SRC25',
    level: 'error',
    says: (p) => `\`${p.tag}\` asks for a special type`,
    mend: (p) => `remove \`${p.tag}\`, or put the whole value in quotes if it is a text`,
    why: 'A value that begins with an exclamation mark names a type; plans know texts, numbers, lists and maps only.',
  }),
  mergeKey: message<Record<string, never>>({
    code: 'SRC26',
    level: 'error',
    says: () => '`<<` does not merge: YAML 1.2 has no such key',
    mend: () => 'write the keys out, or repeat a whole value with `*name`',
    why: 'Merging was part of an older YAML; which of two values wins would depend on the program that reads it.',
  }),
  useLoop: message<{ ring: readonly Placed[] }>({
    code: 'SRC27',
    level: 'error',
    says: (p) => `these files use each other: ${[...p.ring.map(({ id }) => id), p.ring[0]?.id].join(' -> ')}`,
    mend: (p) =>
      `remove one \`use\` entry among ${nameList(
        p.ring.map(({ id }) => id),
        'and',
      )}`,
    notes: (p) =>
      p.ring.map(({ id, at }, index) => ({
        at,
        says: `\`${id}\` uses \`${p.ring[(index + 1) % p.ring.length]?.id}\` here`,
      })),
    why: 'Files that use each other in a ring have no order in which they could be read.',
  }),
  useOutside: message<{ file: string; root: string }>({
    code: 'SRC28',
    level: 'error',
    says: (p) => `\`${p.file}\` lies outside \`${p.root}\``,
    mend: () => 'move the file inside, or put an empty file `.fettle-root` into the folder that holds both',
    why: 'A plan reads only files of its own tree, so that a plan from elsewhere cannot read yours.',
  }),
  useAbsolute: message<{ file: string; namedFor: NamedFor }>({
    code: 'SRC29',
    level: 'error',
    says: (p) => `\`${p.file}\` is not a path relative to this file`,
    mend: (p) =>
      /^[a-z][\w+.-]+:\/\//i.test(p.file)
        ? `save the file beside this one and write its name, such as \`${examples[p.namedFor]}\``
        : `write the way from this file, such as \`../${p.namedFor === 'plan' ? 'shop' : 'models'}/${examples[p.namedFor]}\``,
    why: 'Relative paths keep working when the folder moves to another place or person.',
  }),
  useTooMany: message<{ limit: number; what: string }>({
    code: 'SRC30',
    level: 'error',
    says: (p) => `more than ${p.limit} ${p.what}`,
    mend: () => 'bring the shop together in fewer files',
    why: 'A plan that needs so many files is hard to follow and most likely a mistake.',
  }),
  doubledName: message<{ first: Placed; section: string }>({
    code: 'SRC31',
    level: 'error',
    says: (p) => `\`${p.first.id}\` stands under \`${p.section}\` in two shop files`,
    mend: (p) => `rename one, or say in the project itself what \`${p.first.id}\` is`,
    notes: (p) => [{ at: p.first.at, says: `\`${p.first.id}\` stands here too` }],
    why: 'A project may replace an entry of a shop; between two shops nobody has said which counts.',
  }),
  badEscape: message<{ text: string }>({
    code: 'SRC32',
    level: 'error',
    says: (p) => `the backslash in \`${p.text}\` stands for nothing`,
    mend: () => 'use single quotes around the text, or write two backslashes',
    why: 'In double quotes a backslash begins a code such as `\\n`; a plain backslash is written twice.',
  }),
  reservedStart: message<{ text: string }>({
    code: 'SRC33',
    level: 'error',
    says: (p) => `a text may not begin with \`${[...p.text][0] ?? ''}\` without quotes`,
    mend: (p) => `put quotes around it: ${quoted(p.text)}`,
    why: 'Some signs have a meaning of their own at the beginning of a value.',
  }),
  directive: message<{ text: string }>({
    code: 'SRC34',
    level: 'error',
    says: (p) => `\`${p.text}\` sets rules of its own for this file`,
    mend: () => 'remove the line; files are read as YAML 1.2',
    why: 'Under other rules the same words mean something else: `no` would become false.',
  }),
  moreFaults: message<{ limit: number }>({
    code: 'SRC35',
    level: 'error',
    says: (p) => `the file has more than ${p.limit} faults; from here on none is listed`,
    mend: () => 'mend those above, then check again',
    why: 'So many faults mostly have one cause, such as the wrong file.',
  }),
} as const

/** A text in quotes as YAML takes it. */
function quoted(text: string): string {
  return text.includes('"') ? `'${text.replace(/'/g, "''")}'` : `"${text.replace(/\\/g, '\\\\')}"`
}
