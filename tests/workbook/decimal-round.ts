import { FunctionArgumentType, FunctionPlugin, HyperFormula, type ImplementedFunctions } from 'hyperformula'

/** Name of the rounding function that formulas are given in place of ROUND. */
export const decimalRound = 'DECIMALROUND'

/**
 * ROUND as spreadsheet programs have it: the argument is taken to 15 significant digits, then rounded half away
 * from zero in decimal. HyperFormula 3.5.0 rounds the binary value instead, so that 3 x 2.675 gives 8.02.
 * Source: handsontable/hyperformula issue 1746 and EPPlusSoftware/EPPlus issue 251, which state Excel's 15 digits;
 * LibreOffice 7.4 gives the same (measured in the rounding test).
 */
class DecimalRound extends FunctionPlugin {
  static override implementedFunctions: ImplementedFunctions = {
    [decimalRound]: {
      method: 'round',
      parameters: [
        { argumentType: FunctionArgumentType.NUMBER },
        { argumentType: FunctionArgumentType.NUMBER },
      ],
    },
  }

  /** The engine's types of a call are not exported; nothing here looks into them. */
  round(ast: { readonly args: never[] }, state: never): unknown {
    return this.runFunction(ast.args, state, this.metadata(decimalRound), halfAway)
  }
}

function halfAway(value: number, digits: number): number {
  const [mantissa, exponent] = value.toPrecision(15).split('e') as [string, string?]
  const scaled = Number(`${mantissa}e${Number(exponent ?? 0) + digits}`)
  const whole = Math.sign(scaled) * Math.round(Math.abs(scaled))
  return Number(`${whole}e${-digits}`)
}

/** Makes the function known to the engine. */
export function withDecimalRound(): void {
  HyperFormula.registerFunctionPlugin(DecimalRound, { enGB: { [decimalRound]: decimalRound } })
}
