import type { CautionKey } from '../cautions.ts'

/** What a route or a step says in words, for cautions that no process of the language calls for by itself. */
export interface Wording {
  /** The machine it runs on, the tool in hand. */
  readonly means: string
  /** What is done. */
  readonly deed: string
  /** Notes on it: they may speak of other work, so that only solvents are looked for in them. */
  readonly aside: string
  /** What is put: name and description of the part. */
  readonly thing: string
}

/** Words that call for a caution, by where they stand. */
interface Caller {
  readonly key: CautionKey
  readonly means?: RegExp
  readonly deed?: RegExp
  readonly aside?: RegExp
  readonly thing?: RegExp
}

const cell =
  /\blithium\b(?! (complex |soap )*grease)|\bli-?(ion|po|poly)\b|\blifepo4?\b|\b(18650|21700|26650|14500)\b|\bcr\d{4}\b/i
const solvent =
  /isopropyl|isopropanol|\bipa\b|alcohol|ethanol|acetone|solvent|heptane|(white|methylated) spirit/i
const etch =
  /\betch(es|ed|ing|ant)?\b|ferric chloride|persulfate|\bpickl(e|ing)\b|electroplat|\banodis(e|ing)\b/i
const press =
  /\bleak(s|ing|[- ]?tight|[- ]?test)?\b|pressuri[sz]e|pressure test|under pressure|compressed air|\d ?(bar|psi|kPa|MPa)\b/i

/** Which words call for what. Source: common practice, no source. */
const callers: readonly Caller[] = [
  { key: 'laser', means: /\blaser\b/i },
  { key: 'heat', means: /\b(oven|furnace|hot plate|hotplate|hot air|heat gun|reflow)\b/i, deed: /\breflow/i },
  { key: 'abrasives', deed: /\bsand(s|ed|ing|paper)?\b|\bgrind(s|ing)?\b|\babrasive\b/i },
  { key: 'lamp', means: /\buv\b|ultraviolet/i, deed: /\buv (lamp|light|cure)\b|ultraviolet/i },
  { key: 'solvent', means: solvent, deed: solvent, aside: solvent },
  { key: 'etching', means: etch, deed: etch },
  { key: 'soldering', deed: /\bsolder(s|ing)?\b/i, means: /\bsoldering\b/i },
  { key: 'adhesive', deed: /\bglu(e|es|ing)\b|\bepoxy\b|\bpotting\b|cyanoacrylate/i },
  { key: 'lithium cell', deed: cell, thing: cell },
  { key: 'pressure', means: press, deed: press },
]

/** The cautions that these words call for, in the order of the list. */
export function calledByWords(wording: Wording): readonly CautionKey[] {
  const places = ['means', 'deed', 'aside', 'thing'] as const
  const called = callers
    .filter((caller) => places.some((place) => caller[place]?.test(wording[place])))
    .map(({ key }) => key)
  const live = isHighVoltage(`${wording.means} ${wording.deed}`) || /\bmains\b/i.test(wording.thing)
  return live ? [...called, 'high voltage'] : called
}

/** Voltages of the public mains up to the limit for direct current. Source: common practice, no source. */
const mainsVolts = [110, 115, 120]

/**
 * Whether words speak of the mains or of a supply above 50 V ac or 120 V dc; volts of no said kind count as dc, save
 * those of the mains.
 * Source: limits, common practice, no source.
 */
export function isHighVoltage(words: string): boolean {
  if (/\bmains\b/i.test(words)) return true
  return [...words.matchAll(/(\d+(?:\.\d+)?) ?(k?)V(?:olts?)?(?: ?(ac|dc))?\b/gi)].some(
    ([, figure, kilo, kind]) => {
      const volts = Number(figure) * (kilo ? 1000 : 1)
      const mains = kind === undefined && mainsVolts.includes(volts)
      return mains || volts > (kind?.toLowerCase() === 'ac' ? 50 : 120)
    },
  )
}
