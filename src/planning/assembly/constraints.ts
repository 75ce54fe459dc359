import type { Place } from '../../base/place.ts'
import type { AssemblyPlan, Step, Why } from '../../model/assembly.ts'
import type { Target } from '../../model/project.ts'
import { type BenchPlan, benchPlan } from './bench-plan.ts'
import { gatherCuresBetween, gatherLoose } from './not-between.ts'
import { type Gathered, gatherWayIn } from './ways-in.ts'

/**
 * What the statements of one assembly ask of the order of its steps, and the statements that ask nothing because no
 * step shuts the opening they are about.
 *
 * Readings where the words leave a choice: of a body that several steps put, one copy there is enough to touch it,
 * while `after`, `needs` and `before` mean all the steps that put it. A step with `within` comes after the step
 * written before it. Targets outside this assembly are a matter of dates. A step that opens finds the opening shut,
 * and where an opening is opened again, a step that shuts it finds it open.
 */
export function orderConstraints(plan: AssemblyPlan): Gathered {
  const bench = benchPlan(plan)
  const into: Gathered = { constraints: [], void: [] }
  for (const step of plan.steps) {
    gatherPresence(bench, step, into)
    gatherTargets(bench, step, into)
    gatherReaches(bench, step, into)
    if (step.into) {
      const { body, through, at } = step.into
      gatherWayIn(bench, { step, body, through, at, why: through === null ? 'in' : 'through' }, into)
    }
    gatherReopening(bench, step, into)
    gatherLoose(bench, step, into)
    gatherCuresBetween(bench, step, into)
  }
  return into
}

function gatherPresence(bench: BenchPlan, step: Step, into: Gathered): void {
  if (step.into) touch(bench, step, step.into.body, step.into.at, 'in', into)
  if (step.onto) touch(bench, step, step.onto.body, step.onto.at, 'on', into)
  for (const { body, at } of step.shuts)
    if (!bench.puts(body).includes(step)) touch(bench, step, body, at, 'shut', into)
  for (const { body, at } of step.opens)
    if (!bench.puts(body).includes(step)) touch(bench, step, body, at, 'open', into)
}

/** A body that no step puts is there from the start. */
function touch(bench: BenchPlan, step: Step, body: string, at: Place, why: Why, into: Gathered): void {
  const needs = bench.puts(body).map(({ id }) => id)
  if (needs.length > 0) into.constraints.push({ form: 'presence', step: step.id, needs, at, why })
}

function gatherTargets(bench: BenchPlan, step: Step, into: Gathered): void {
  for (const { target } of step.after) waitFor(bench, step, target, 'after', into)
  for (const target of step.needs) waitFor(bench, step, target, 'needs', into)
  for (const target of step.before) gatherBefore(bench, step, target, into)
  gatherBeforeLastOf(bench, step, into)
  const previous = bench.plan.steps[bench.plan.steps.indexOf(step) - 1]
  if (step.within !== null && previous)
    into.constraints.push({ form: 'before', step: previous.id, of: [step.id], at: step.at, why: 'within' })
}

function waitFor(bench: BenchPlan, step: Step, target: Target, why: Why, into: Gathered): void {
  for (const { id } of bench.stepsOf(target))
    into.constraints.push({ form: 'before', step: id, of: [step.id], at: target.at, why })
  if (target.kind === 'opening' && isVoid(bench, target)) noteVoid(step, target, why, into)
}

function gatherBefore(bench: BenchPlan, step: Step, target: Target, into: Gathered): void {
  const named = bench.stepsOf(target).map(({ id }) => id)
  // Only a step that names itself waits for itself; one that shuts the opening it names is not before itself.
  const of = target.kind === 'step' ? named : named.filter((id) => id !== step.id)
  if (of.length > 0)
    into.constraints.push({ form: 'before', step: step.id, of, at: target.at, why: 'before' })
  if (isVoid(bench, target)) noteVoid(step, target, 'before', into)
}

function gatherBeforeLastOf(bench: BenchPlan, step: Step, into: Gathered): void {
  const targets = step.beforeLastOf
  const [first] = targets
  for (const target of targets) if (isVoid(bench, target)) noteVoid(step, target, 'before_last_of', into)
  if (!first || targets.some((target) => bench.stepsOf(target).length === 0)) return
  const of = [...new Set(targets.flatMap((target) => bench.stepsOf(target)).map(({ id }) => id))]
  if (of.includes(step.id)) return
  into.constraints.push({ form: 'before last of', step: step.id, of, at: first.at, why: 'before_last_of' })
}

const isVoid = (bench: BenchPlan, target: Target): boolean =>
  target.kind === 'opening' && target.assembly === bench.plan.of && bench.stepsOf(target).length === 0

function noteVoid(step: Step, target: Target, why: Why, into: Gathered): void {
  if (target.kind !== 'opening') return
  const { body, opening, at } = target
  into.void.push({ step: step.id, body, opening, at, why })
}

/** What must be reached is there, and the way it went in is open; words that name nothing here restrict nothing. */
function gatherReaches(bench: BenchPlan, step: Step, into: Gathered): void {
  for (const { text, at } of step.reaches) {
    const opening = openingCalled(bench, text)
    if (opening) {
      touch(bench, step, opening.body, at, 'reaches', into)
      gatherOpening(bench, step, opening.body, opening.opening, at, into)
      continue
    }
    const puts = bench.puts(text)
    const reached = puts.length > 0 ? puts : bench.plan.steps.filter(({ id }) => id === text)
    const needs = reached.map(({ id }) => id)
    if (needs.length > 0)
      into.constraints.push({ form: 'presence', step: step.id, needs, at, why: 'reaches' })
    for (const put of reached) {
      if (!put.into || put === step) continue
      gatherWayIn(bench, { step, body: put.into.body, through: put.into.through, at, why: 'reaches' }, into)
    }
  }
}

function gatherOpening(
  bench: BenchPlan,
  step: Step,
  body: string,
  opening: string,
  at: Place,
  into: Gathered,
): void {
  gatherWayIn(bench, { step, body, through: opening, at, why: 'reaches' }, into)
}

function openingCalled(bench: BenchPlan, text: string): { body: string; opening: string } | null {
  for (const [body, openings] of bench.plan.openings) {
    const opening = openings.find((name) => `${body}.${name}` === text)
    if (opening !== undefined) return { body, opening }
  }
  return null
}

/** Where an opening is opened again, shutting and opening take turns. */
function gatherReopening(bench: BenchPlan, step: Step, into: Gathered): void {
  for (const { body, opening, at } of step.opens)
    into.constraints.push({ form: 'while shut', step: step.id, body, opening, at, why: 'open' })
  for (const { body, opening, at } of step.shuts) {
    const opens = bench.opens(body, opening)
    if (opens.length === 0 || opens.includes(step)) continue
    const openings = [opening]
    into.constraints.push({ form: 'while open', step: step.id, body, openings, once: [], at, why: 'shut' })
  }
}
