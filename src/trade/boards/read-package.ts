import { chipSizes } from './chip-size.ts'

/** How a package is soldered: decides time and method. */
export type SolderClass =
  | 'chip'
  | 'small leads'
  | 'wide leads'
  | 'fine leads'
  | 'no leads'
  | 'balls'
  | 'through hole'

/** A package as its name tells it. */
export interface PackageRead {
  readonly family: string
  readonly solder: SolderClass
  readonly joints: number
  /** Inch code of a chip, else `null`. */
  readonly chip: string | null
  readonly source: string
}

const memory = 'joints by the name of the package, from memory'

/** Packages with a fixed number of joints. */
const fixed: readonly (readonly [RegExp, string, SolderClass, number])[] = [
  [/\bSOD-?\d{3}/, 'SOD', 'chip', 2],
  // `SMA` alone is the diode; with more words it may be the coaxial socket.
  [/^(?:D )?SM[ABC]$|\bDO-?214/, 'SMA to SMC', 'chip', 2],
  [/MELF/, 'MELF', 'chip', 2],
  [/\bSOT-?223/, 'SOT-223', 'small leads', 4],
  [/\bSOT-?363/, 'SOT-363', 'small leads', 6],
  [/\bSOT-?353/, 'SOT-353', 'small leads', 5],
  [/\bSOT-?(?:323|89)/, 'SOT-323 or SOT-89', 'small leads', 3],
  [/\b(?:D2PAK|TO-?263)/, 'TO-263', 'small leads', 3],
  [/\b(?:DPAK|TO-?252)/, 'TO-252', 'small leads', 3],
  [/\bTO-?92/, 'TO-92', 'through hole', 3],
  [/\bHC-?49/, 'HC-49', 'through hole', 2],
  [/\b(?:AXIAL|RADIAL)/, 'two wires', 'through hole', 2],
]

/** Packages whose name ends in the number of pins; `usual` where the number may be left out. */
const counted: readonly (readonly [RegExp, string, SolderClass, number | null])[] = [
  [/\b(?:SOT-?23|SC-?70)(?:-(\d+))?\b/, 'SOT-23', 'small leads', 3],
  [/\b(?:TO-?220|TO-?247)(?:-(\d+))?\b/, 'TO-220', 'through hole', 3],
  [/(?:TSSOP|[VQ]SSOP|SSOP|MSOP|QSOP)-?(\d+)/, 'SSOP', 'fine leads', null],
  [/[TL]?QFP-?(\d+)/, 'QFP', 'fine leads', null],
  [/BGA-?(\d+)/, 'BGA', 'balls', null],
  [/LGA-?(\d+)/, 'LGA', 'no leads', null],
  [/\b(?:SOIC|SOP|SOJ|SO)-?(\d+)/, 'SOIC', 'wide leads', null],
  [/\b(?:P|C|S)?(?:DIP|SIP|DIL)-?(\d+)/, 'DIP', 'through hole', null],
]

const mostPins = 2500

/**
 * Solder class and number of joints of a package by its name, or `null` where the name tells neither.
 * Understands chips by code (0603, R0805, C_1206), SOD, SOT, SOIC, SSOP, QFP, QFN, BGA, DIP, TO and pin rows (1x04).
 */
export function readPackage(name: string): PackageRead | null {
  const text = name.trim().toUpperCase().replace(/_/g, ' ')
  return readChip(text) ?? readFixed(text) ?? readLeadless(text) ?? readCounted(text) ?? readRows(text)
}

/** A bare code is read as an inch one where both systems have it: inch codes are what parts lists mostly hold. */
function readChip(text: string): PackageRead | null {
  const code = /^(?:[A-Z]{1,3} ?)?(\d{4,5})(?![\d.])/.exec(text)?.[1]
  const size = chipSizes.find(({ inch }) => inch === code) ?? chipSizes.find(({ metric }) => metric === code)
  if (!size) return null
  const system = size.inch === code ? 'inch' : 'metric'
  const source = `four public tables of chip sizes, read as ${system} code`
  return { family: 'chip', solder: 'chip', joints: 2, chip: size.inch, source }
}

function readFixed(text: string): PackageRead | null {
  const row = fixed.find(([pattern]) => pattern.test(text))
  return row ? { family: row[1], solder: row[2], joints: row[3], chip: null, source: memory } : null
}

/** Packages without leads have a pad beneath that is soldered too. */
function readLeadless(text: string): PackageRead | null {
  const pins = Number(/(?:QFN|DFN|SON)-?(\d+)/.exec(text)?.[1] ?? 0)
  if (pins < 2 || pins > mostPins) return null
  return {
    family: 'QFN',
    solder: 'no leads',
    joints: pins + 1,
    chip: null,
    source: `${memory}, one for the pad beneath`,
  }
}

function readCounted(text: string): PackageRead | null {
  for (const [pattern, family, solder, usual] of counted) {
    const found = pattern.exec(text)
    if (!found) continue
    const pins = found[1] === undefined ? usual : Number(found[1])
    if (pins === null || pins < 2 || pins > mostPins) return null
    return { family, solder, joints: pins, chip: null, source: memory }
  }
  return null
}

function readRows(text: string): PackageRead | null {
  const found = /(?:^|[^\d.])([1-4])X(\d{1,3})(?![\d.]|\s?MM)/.exec(text)
  const isRow = found?.[0] === text || /HEADER|SOCKET|PIN|CONN|TERMINAL/.test(text)
  const joints = found && isRow ? Number(found[1]) * Number(found[2]) : 0
  return joints > 0
    ? {
        family: 'pin rows',
        solder: 'through hole',
        joints,
        chip: null,
        source: 'rows x pins, as the name says',
      }
    : null
}
