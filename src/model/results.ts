import type { Instant } from '../base/clock.ts'
import type { Place } from '../base/place.ts'
import type { AssemblyOrder } from './assembly.ts'
import type { ChainResult } from './chains.ts'
import type { FromMeshes, WaysOfSteps } from './from-meshes.ts'
import type { Join } from './joins.ts'
import type { Money } from './money.ts'
import type { Project } from './project.ts'
import type { Purchase } from './purchase.ts'
import type { Risk } from './risk.ts'
import type { PlanSchedule, Session } from './schedule.ts'
import type { TaskNetwork } from './tasks.ts'
import type { TrialFit } from './trial-fit.ts'

/** Everything planning found out about a project that has no error. */
export interface Results {
  readonly project: Project
  readonly purchase: Purchase
  /** Orders by assembly; `''` is the device. */
  readonly orders: ReadonlyMap<string, AssemblyOrder>
  /** What meshes in assembled place say; `null`: fewer than two stand there. */
  readonly meshes: FromMeshes | null
  readonly network: TaskNetwork
  readonly schedule: PlanSchedule
  readonly money: Money
  /** How sure the date is; `null`: not asked for. */
  readonly risk: Risk | null
  /** Sessions in which something is done, by time. */
  readonly sessions: readonly Session[]
  /** When the last of each part that is needed is there; the project's start where all is on the shelf. */
  readonly readyAt: ReadonlyMap<string, Instant>
  /** What is measured, part by part and step by step. */
  readonly inspection: readonly InspectionLine[]
  /** What meets in assembly steps, in the order of the source. */
  readonly joins: readonly Join[]
  /** Dimension chains that could be added up. */
  readonly chains: readonly ChainResult[]
  /** Days on which parts of the device can be tried together and taken apart again without harm. */
  readonly trialFits: readonly TrialFit[]
  /** Where steps come from by their meshes, in the order of the checklists. */
  readonly waysIn: WaysOfSteps
  /** What to mind at each route sheet, print job and checklist. */
  readonly cautions: Cautions
}

/** Reminders by sheet, each once. */
export interface Cautions {
  /** By part, for its route sheet. */
  readonly parts: ReadonlyMap<string, readonly ShownCaution[]>
  /** By plate, for its print job. */
  readonly plates: ReadonlyMap<string, readonly ShownCaution[]>
  /** By assembly; `''` is the device. */
  readonly assemblies: ReadonlyMap<string, readonly ShownCaution[]>
  /** Stands under every block of cautions: which papers rule. */
  readonly deferLine: string
}

/** One reminder. */
export interface ShownCaution {
  /** What it is about: a kind of work, a material or a part. */
  readonly topic: string
  /** Codes of safety signs with their meaning. */
  readonly signs: readonly string[]
  readonly says: string
  /** Assembly steps that call for it; empty: the whole sheet. */
  readonly steps: readonly string[]
}

/** One characteristic to be measured or looked at. */
export interface InspectionLine {
  /** Number over the whole project, from 1. */
  readonly number: number
  /** A part, or the assembly of a step. */
  readonly of: string
  readonly feature: string
  /** As on the drawing. */
  readonly requirement: string
  /** Limits in `unit`; `null` where the requirement gives none in figures. */
  readonly lower: number | null
  readonly upper: number | null
  readonly unit: string | null
  /** What the limits are of, where the requirement does not tell: `minor diameter`, `general tolerance m`. */
  readonly limitsOf: string | null
  /** How it is measured or looked at. */
  readonly method: string | null
  /** How many pieces are measured. */
  readonly pieces: number
  readonly at: Place
}
