import { createRequire } from 'node:module'

/** What is used of the optional package that turns SVG into pixels. */
interface Rasteriser {
  readonly Resvg: new (
    svg: string,
    options: {
      readonly background: string
      readonly font: { readonly loadSystemFonts: boolean }
      readonly fitTo: { readonly mode: 'width'; readonly value: number }
    },
  ) => { render(): { asPng(): Uint8Array } }
}

/** The optional package that makes PNG. */
export const pngPackage = '@resvg/resvg-js'

/** Dots to the inch: what office printers show. */
const dotsPerInch = 300

/** Turns a picture of so many millimetres on a side into PNG on white. */
export type ToPng = (svg: string, sizeMm: number) => Uint8Array

/** How pictures become PNG; `null` where the optional package is not installed, or not for this machine. */
export function svgToPng(): ToPng | null {
  const found = rasteriser()
  if (!found) return null
  return (svg, sizeMm) =>
    new found.Resvg(svg, {
      background: '#fff',
      font: { loadSystemFonts: false },
      fitTo: { mode: 'width', value: Math.round((sizeMm / 25.4) * dotsPerInch) },
    })
      .render()
      .asPng()
}

/** Asked for by name when it is wanted, so that no bundle takes it in. */
function rasteriser(): Rasteriser | null {
  try {
    return createRequire(import.meta.url)(pngPackage) as Rasteriser
  } catch {
    return null
  }
}
