import type { JoiningMethod } from '../../model/assembly.ts'

/** A thread or a snap as drawn overlaps no more than this, in mm. Source: ISO 68-1, 0.541 P of up to M10; from memory. */
const threadMm = 1
/** What is pressed, glued, soldered, crimped or plugged overlaps no more than this as drawn, in mm. Common practice, no source. */
const pressMm = 0.5

/** How widely a way of joining lets two parts lie in each other as drawn, in mm; those left out do not. */
export const nominalOverlapMm: Readonly<Partial<Record<JoiningMethod, number>>> = {
  thread: threadMm,
  snap: threadMm,
  press: pressMm,
  glue: pressMm,
  solder: pressMm,
  crimp: pressMm,
  plug: pressMm,
}

/** What a fastener and what it fastens let each other overlap, in mm. */
export const fastenerOverlapMm = threadMm

/** What two features that a step says meet let their parts overlap where it joins in another way, in mm. */
export const matedOverlapMm = pressMm
