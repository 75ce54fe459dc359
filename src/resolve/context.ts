import type { Report } from '../diagnostics/message.ts'
import type { MeshFacts } from '../model/mesh.ts'
import type { Cutter, Machine, Material } from '../model/project.ts'
import type { Attached } from '../source/attachments.ts'
import type { Names } from './names.ts'
import type { Reading } from './reading.ts'

/** A step and the assembly it belongs to; `null`: the device. */
export interface StepName {
  readonly assembly: string | null
  readonly id: string
}

/** A bought part as placements may name it; `null`: it says none. */
export interface Component {
  readonly part: string
  readonly value: string | null
  readonly package: string | null
}

/** Machines, cutters and materials, once they are read. */
export interface Bench {
  readonly machines: ReadonlyMap<string, Machine>
  readonly cutters: ReadonlyMap<string, Cutter>
  readonly materials: ReadonlyMap<string, Material>
}

/** What the readers of entries share. */
export interface Context extends Reading {
  readonly report: Report
  readonly names: Names
  /** The project's own file; every other is a shop's. */
  readonly file: string
  readonly people: readonly string[]
  /** Materials of which a form was faulted: what is not among their forms says nothing. */
  readonly incomplete: Set<string>
  /** Who may use each machine, in source order. */
  readonly users: ReadonlyMap<string, readonly string[]>
  /** Vendor currencies, for bare prices. */
  readonly vendorCurrency: ReadonlyMap<string, string>
  /** Names of steps over all assemblies, each with the assemblies it occurs in. */
  readonly steps: ReadonlyMap<string, readonly StepName[]>
  /** Openings by assembly (`''` the device) and body. */
  readonly openings: ReadonlyMap<string, ReadonlyMap<string, readonly string[]>>
  /** Role of each part, and the features each has. */
  readonly fixtures: ReadonlySet<string>
  readonly features: ReadonlyMap<string, ReadonlyMap<string, string>>
  /** Files that parts name, and what was read of the meshes among them. */
  readonly attached: ReadonlyMap<string, Attached>
  readonly meshes: Map<string, MeshFacts | null>
  /** Bought parts that say their value or package. */
  readonly components: readonly Component[]
  /** Cutters and materials of which a figure or name was faulted: what is missing of them says nothing. */
  readonly faulted: Set<string>
  /** What is read before the parts. */
  readonly bench: Bench
}
