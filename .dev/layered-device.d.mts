import type { AssemblyPlan } from '../src/model/assembly.ts'

/** The plan of a random device of so many steps, lids among them; the same for the same seed. */
export function layeredDevice(settings: { readonly steps: number; readonly seed: number }): AssemblyPlan
