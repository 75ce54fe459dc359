import { nameList } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import { message } from '../message.ts'

const perhaps = (near: readonly string[], otherwise: string): string =>
  near.length > 0 ? `did you mean ${nameList(near, 'or')}?` : otherwise

/** Messages about keys and values that do not have the shape the language gives them. */
export const shp = {
  unknownKey: message<{ key: string; where: string; near: readonly string[]; known: readonly string[] }>({
    code: 'SHP01',
    level: 'error',
    says: (p) => `\`${p.key}\` is not a key of ${p.where}`,
    mend: (p) => perhaps(p.near, `use one of ${nameList(p.known, 'or')}, or remove it`),
    why: 'A key that nobody reads has no effect; most often it is a slip of the fingers.',
  }),
  missingKey: message<{ key: string; where: string; example: string }>({
    code: 'SHP02',
    level: 'error',
    says: (p) => `${p.where} has no \`${p.key}\``,
    mend: (p) => `add it, for example \`${p.key}: ${p.example}\``,
    why: 'Without it the plan cannot be worked out, and a guess would be worse than a question.',
  }),
  nothingBehind: message<{ key: string; example: string }>({
    code: 'SHP03',
    level: 'error',
    says: (p) => (p.key ? `\`${p.key}\` has nothing behind it` : 'this entry of the list says nothing'),
    mend: (p) =>
      p.key
        ? `write a value, for example \`${p.key}: ${p.example}\`, or remove the key`
        : 'write a value, or remove the dash',
    why: 'A key without a value may have been forgotten; leave it out where nothing is to be said.',
  }),
  numberForText: message<{ key: string; text: string }>({
    code: 'SHP04',
    level: 'error',
    says: (p) => `\`${p.key}\` must be a text, \`${p.text}\` is a number`,
    mend: (p) => `put quotes around it: "${p.text}"`,
    why: 'Read as a number, `010` becomes 10 and `1.10` becomes 1.1; quotes keep a name or a code as typed.',
  }),
  textForNumber: message<{ key: string; text: string; example: string }>({
    code: 'SHP05',
    level: 'error',
    says: (p) => `\`${p.key}\` must be a bare number, \`${p.text}\` is a text`,
    mend: (p) => `write the number alone, without quotes or unit, for example \`${p.key}: ${p.example}\``,
    why: 'Counts have no unit and are written as digits.',
  }),
  truthForText: message<{ key: string; text: string }>({
    code: 'SHP06',
    level: 'error',
    says: (p) => `\`${p.key}\` must be a text, \`${p.text}\` is a truth value`,
    mend: (p) => `put quotes around it: "${p.text}"`,
    why: 'The bare words `true` and `false` are yes and no; as a name they need quotes.',
  }),
  notYesOrNo: message<{ key: string; text: string }>({
    code: 'SHP07',
    level: 'error',
    says: (p) => `\`${p.key}\` must be yes or no${p.text ? `, \`${p.text}\` is neither` : ''}`,
    mend: (p) => `write \`${p.key}: yes\` or \`${p.key}: no\``,
    why: 'Only the bare words yes and no (or true and false) are taken, so that nothing hangs on a guess.',
  }),
  wrongKindOfValue: message<{ key: string; wanted: string; found: string; example: string }>({
    code: 'SHP08',
    level: 'error',
    says: (p) => `${p.key ? `\`${p.key}\`` : 'the entry'} must be ${p.wanted}, this is ${p.found}`,
    mend: (p) => `write for example \`${p.key ? `${p.key}: ` : '- '}${p.example}\``,
    why: 'Texts, lists and maps are read differently; one cannot stand for the other.',
  }),
  notOneOf: message<{ key: string; text: string; near: readonly string[]; known: readonly string[] }>({
    code: 'SHP09',
    level: 'error',
    says: (p) => `\`${p.text}\` is not a value of \`${p.key}\``,
    mend: (p) => perhaps(p.near, `use one of ${nameList(p.known, 'or')}`),
    why: 'The plan treats each of the known values differently and can do nothing with another.',
  }),
  unknownKind: message<{ text: string; near: readonly string[]; known: readonly string[] }>({
    code: 'SHP10',
    level: 'error',
    says: (p) => `there is no kind \`${p.text}\``,
    mend: (p) => (p.near.length > 0 ? perhaps(p.near, '') : `use one of ${nameList(p.known, 'or')}`),
    why: 'The kind says how a part comes to be, and with it which other keys it needs.',
  }),
  outOfBounds: message<{ key: string; text: string; bound: string; example: string }>({
    code: 'SHP11',
    level: 'error',
    says: (p) => `\`${p.key}\` is ${p.text}, it must be ${p.bound}`,
    mend: (p) => `correct it, for example \`${p.key}: ${p.example}\``,
    why: 'Outside these bounds the number is almost surely a slip.',
  }),
  wrongLength: message<{ key: string; length: number; limit: number }>({
    code: 'SHP12',
    level: 'error',
    says: (p) =>
      p.length < p.limit
        ? `${p.key ? `\`${p.key}\`` : 'the name'} is empty`
        : `${p.key ? `\`${p.key}\`` : 'the name'} has ${p.length} characters, at most ${p.limit} are allowed`,
    mend: (p) => (p.length < p.limit ? 'write something, or remove it' : 'shorten it'),
    why: 'Names and texts are printed on sheets, where an empty or endless one is of no use.',
  }),
  wrongForm: message<{ key: string; text: string; example: string }>({
    code: 'SHP13',
    level: 'error',
    says: (p) => `\`${p.text}\` does not have the form of a ${p.key}`,
    mend: (p) => `write for example \`${p.key}: ${p.example}\``,
    why: 'Codes such as a currency have a fixed form; in another form they cannot be looked up.',
  }),
  wrongCount: message<{ key: string; count: number; limit: number }>({
    code: 'SHP14',
    level: 'error',
    says: (p) =>
      p.count < p.limit
        ? `\`${p.key}\` has ${p.count} entries, at least ${p.limit} must be there`
        : `\`${p.key}\` has ${p.count} entries, at most ${p.limit} are allowed`,
    mend: (p) => (p.count < p.limit ? `add an entry, or remove \`${p.key}\`` : 'remove some'),
    why: 'An empty list says less than no list: it may have been forgotten.',
  }),
  severalOperations: message<{ keys: readonly string[]; second: string; first: Place }>({
    code: 'SHP15',
    level: 'error',
    says: (p) => `one entry holds several operations: ${nameList(p.keys, 'and')}`,
    mend: (p) => `begin a new entry with \`- ${p.second}:\``,
    notes: (p) => [{ at: p.first, says: `the entry begins with \`${p.keys[0]}\` here` }],
    why: 'Keys of one entry have no order, but operations do; so each stands in an entry of its own.',
  }),
  noOperation: message<{ examples: readonly string[] }>({
    code: 'SHP16',
    level: 'error',
    says: () => 'this entry names no operation',
    mend: (p) => `name one, such as ${nameList(p.examples, 'or')}, or remove the entry`,
    why: 'Every step of a route does something; an entry without an operation does nothing.',
  }),
  opsWithoutSetup: message<Record<string, never>>({
    code: 'SHP17',
    level: 'error',
    says: () => '`ops` stands without a `setup` beside it',
    mend: () => 'add `setup: {machine: …, hold: …}` to the same entry',
    why: 'Machine operations need a machine and something that holds the part: the setup says both.',
  }),
  operationElsewhere: message<{ key: string; belongs: string; example: string }>({
    code: 'SHP18',
    level: 'error',
    says: (p) => `\`${p.key}\` cannot stand here, it belongs ${p.belongs}`,
    mend: (p) => `write \`${p.example}\``,
    why: 'Operations on a machine stand in a setup, which says how the part is held; hand work stands in the route.',
  }),
  onlyInProject: message<{ key: string }>({
    code: 'SHP19',
    level: 'error',
    says: (p) => `\`${p.key}\` belongs into a project file, this is a shop file`,
    mend: (p) => `move \`${p.key}\` to the project that uses this file`,
    why: 'A shop file holds what several projects share; what is built is said by the project.',
  }),
  moreFaults: message<{ listed: number; more: number }>({
    code: 'SHP20',
    level: 'error',
    says: (p) => `${p.more} more faults of this file are not listed`,
    mend: (p) => `mend the ${p.listed} that are, then check again`,
    why: 'So many faults mostly have one cause, such as a wrong indentation near the top.',
  }),
} as const
