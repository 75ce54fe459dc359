import { type Caution, caution } from './cautions/caution.ts'

/**
 * Usual cautions by kind of work.
 * Source: which signs go with which work and what to mind: common practice, no source; solvents: data sheets of
 * 2-propanol; resin: a public fact sheet on handling it. Pressure has no sign of its own here, so the general one.
 * Reminders, not a risk assessment.
 */
export const cautions = {
  cutting: caution(
    ['M004', 'M003', 'M002', 'W018', 'W022', 'W024', 'P028'],
    'clamp the work, shut the guard; no loose sleeves or hair near the spindle; stop before reaching in; cover ears from about 80 dB',
  ),
  sawing: caution(
    ['M004', 'M003', 'W022', 'W024', 'P028'],
    'clamp the stock; use a push stick for short ends; the cut end is hot and sharp',
  ),
  machine: caution(
    ['M004', 'M002', 'W018'],
    'follow the manual of the machine; stay with it where the manual asks for somebody there',
  ),
  laser: caution(
    ['M002', 'M004', 'W004', 'W017', 'W021', 'P003'],
    'keep housing and interlocks shut, eyewear rated for the beam; never leave it running; extract; no PVC, no unknown plastic',
  ),
  edges: caution(['M004', 'W022'], 'fresh edges cut: file away from the hand'),
  abrasives: caution(
    ['M004', 'M013', 'M016', 'M003', 'W022'],
    'dust is the hazard: extract or work wet; check the wheel; mind where sparks go',
  ),
  'light-metal dust': caution(
    ['P003'],
    'fine dust burns: collect it, keep it from sparks and from steel dust',
  ),
  resin: caution(
    ['M009', 'M004', 'M010', 'W001', 'W016', 'P022'],
    'keep uncured resin off the skin (nitrile gloves); ventilate; cure waste before it goes out; read the data sheet of the resin',
  ),
  solvent: caution(
    ['M009', 'M004', 'W021', 'P003'],
    'small volumes, lids on, ventilate; dry fully before heat; read the data sheet of the solvent',
  ),
  lamp: caution(['M004', 'W027', 'P010'], 'keep the lid closed while the lamp is on; do not look at it'),
  filament: caution(
    ['M002', 'W017', 'W024'],
    'hot end and moving gantry; ventilate, above all for ABS and its like',
  ),
  soldering: caution(
    ['M004', 'M011', 'W017', 'P022'],
    'extract the fume, park the iron, wash hands afterwards',
  ),
  heat: caution(
    ['M004', 'M009', 'W017', 'P010'],
    'let hot things cool or wear heat gloves; extract the fume; never use the heater for food afterwards',
  ),
  etching: caution(
    ['M009', 'M004', 'M013', 'M010', 'W023', 'P022'],
    'goggles or shield, work over a tray; neutralise and collect the waste; read the data sheet of the bath',
  ),
  pressing: caution(['M004', 'W024'], 'start square, fingers clear, shield brittle parts'),
  adhesive: caution(
    ['M009', 'M004', 'W016', 'W023', 'P022'],
    'it may sensitise the skin or, as its label says, be toxic or corrosive: mix little, mind the heat of curing; read the data sheet',
  ),
  'lithium cell': caution(
    ['M002', 'W026', 'W021'],
    'watch the charge; never pierce, bend or short it; put a hurt cell outside on sand; water on a fire only as its data sheet says',
  ),
  'high voltage': caution(
    ['M006', 'M002', 'W012', 'P010'],
    'for a qualified person only: isolate, lock off, prove it dead before you touch it',
  ),
  pressure: caution(
    ['M004', 'W001'],
    'test with liquid, air bled out; raise it in small steps, stand aside; let it down before opening',
  ),
  'first run': caution(
    ['M004', 'W018', 'W024'],
    'low power first, hand on the switch, guard in place, limits checked before',
  ),
} as const satisfies Record<string, Caution>

/** Name of a group of cautions. */
export type CautionKey = keyof typeof cautions

/** Printed under every block of cautions. Source: rule of this project. */
export const deferLine =
  'Reminder only: the safety data sheet of each substance, the manual of each machine, local codes and licensed practice rule. If unsure, stop and ask a competent person.'
