import type { Cutter, Machine } from '../model/project.ts'
import type { CutBench } from '../processes/process.ts'
import type { CuttingMachine, Cutter as Edge, WorkMaterial } from '../trade/cutting/types.ts'
import { numberOf, perMinute } from './plain-number.ts'

/** Cutter, material and machine as the formulas of cutting take them: mm, minutes, watts. */
export function cuttingBench(cutter: Cutter, material: WorkMaterial, machine: Machine | null): CutBench {
  return { cutter: edgeOf(cutter), material, machine: machine ? machineOf(machine) : {} }
}

function edgeOf({ numbers, facts }: Cutter): Edge {
  const tool = facts.get('tool')
  const pitch = numberOf(numbers.get('pitch'))
  const angle = numberOf(numbers.get('point'))
  return {
    diameterMm: numberOf(numbers.get('diameter')),
    flutes: facts.has('flutes') ? Number(facts.get('flutes')) : null,
    reachMm: numberOf(numbers.get('reach')),
    stickOutMm: numberOf(numbers.get('stick-out')),
    fluteLengthMm: numberOf(numbers.get('flute length')),
    cornerRadiusMm: numberOf(numbers.get('corner radius')),
    pointAngleDeg: angle === null ? null : angle * 360,
    pitchToMm: pitch,
    pitchFromMm: pitch === null ? null : pitch / 4,
    tool: tool === 'hss' || tool === 'carbide' ? tool : null,
  }
}

function machineOf({ spindle, numbers }: Machine): CuttingMachine {
  const power = numberOf(spindle.get('power'))
  return {
    leastRpm: perMinute(spindle.get('slowest')),
    mostRpm: perMinute(spindle.get('fastest')),
    // A watt is 1e9 in grams, millimetres and seconds.
    powerW: power === null ? null : power / 1e9,
    mostFeedMmPerMin: perMinute(numbers.get('fastest feed')),
    toolChangeSeconds: numberOf(numbers.get('tool change')),
  }
}
