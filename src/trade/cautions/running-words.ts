/** What a step says of running, in words. Source of all words here: common practice, no source. */

/** A speed of turning or a frequency, running in, switching on: nothing else is meant by these, whatever a step is. */
const plainly =
  /\d ?(rpm|r\/min|k?Hz)\b|\brun(s|ning)?[- ]in\b|\b(switch|power)(es|s|ed)? (it |them |the \w+ )?(on|up)\b/i
/** Verbs and things of a test that works what was built. */
const tested =
  /\b(run|runs|running)\b(?![- ]?out)|\bspin(s|ning)?\b|\bpump(s|ing)\b|\bprimes?\b|\bdos(e|es|ing)\b|\bstrokes?\b|\bcycles?\b|\bmm\/(s|min)\b|\b(current|voltage|powered|energi[sz]ed|firmware)\b|\bsupply\b(?! (off|out|unplugged))|\blights\b/i
/** Voltages, currents and powers; their units are no units in small letters. */
const electric = /\d ?(m|k)?[VAW]\b/
/** Means and words of a test of what lies dead. */
const dead =
  /\bby hand\b|\bmultimeter\b|\bohmmeter\b|\bcontinuity\b|\bfeeler\b|\b(unpowered|unplugged)\b|\b(power|supply) (off|out)\b/i
/** What turns, moves, heats or feeds current by itself once it is on. */
const driven =
  /\b(motor|servo|stepper|fan|blower|pump|compressor|solenoid|actuator|relay|heater|laser (diode|module|pointer)|lamp|led|battery|cell|accumulator|inverter|psu|(power|mains) (supply|unit|adapter))s?\b/i

/** Whether work of any sort plainly says that something runs or is switched on. */
export const plainlyRuns = (words: string): boolean => plainly.test(words)

/**
 * Whether a test runs what is tested; `holdsDriven` says whether that can run at all. In doubt, what can run does.
 * Source: common practice, no source.
 */
export function testRuns(words: string, holdsDriven: boolean): boolean {
  if (plainly.test(words) || tested.test(words) || electric.test(words)) return true
  return holdsDriven && !dead.test(words)
}

/** Whether a bought thing of this name and description runs once it is on. */
export const isDriven = (words: string): boolean => driven.test(words)
