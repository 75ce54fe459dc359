import type { Quantity } from '../base/quantity.ts'
import { prcModel } from '../diagnostics/catalogue/prc-model.ts'
import type { Finished, Size, Stock } from '../model/project.ts'
import { stockVolume } from '../trade/materials/stock-mass.ts'
import type { Context } from './context.ts'
import { saySize } from './materials.ts'
import { plainFigure } from './worked-quantity.ts'

const mm = ({ value }: Quantity): number => value.valueOf()

/** Volume in mm3 of a piece of stock, a bar taken as round; `null` where it has no shape. */
export function volumeOfStock(size: Size): number | null {
  const volume =
    size.shape === 'bar'
      ? stockVolume({ shape: 'round', diameterMm: mm(size.across), lengthMm: mm(size.length) })
      : size.shape === 'plate' || size.shape === 'block'
        ? stockVolume({
            shape: 'block',
            lengthMm: mm(size.length),
            widthMm: mm(size.width),
            heightMm: mm(size.thickness),
          })
        : null
  return typeof volume === 'number' ? volume : null
}

/** PRC62, PRC63: a finished part that is larger than the stock it is cut from, by its box or by its volume. */
export function warnTooLarge(context: Context, part: string, stock: Stock, finished: Finished): void {
  const room = volumeOfStock(stock.size)
  const volume = finished.volume ? mm(finished.volume) : null
  if (room !== null && volume !== null && volume > room * (1 + 1e-6)) {
    context.report(prcModel.moreThanStock, stock.at, { part, finished: volume, stock: room })
    return
  }
  const box = finished.box?.map(mm)
  const over = box ? overOf(stock.size, box) : 0
  if (box && over > 1e-3)
    context.report(prcModel.pastStock, stock.at, { part, has: box, stock: sayStock(stock.size), over })
}

const sayStock = (size: Size): string =>
  size.shape === 'bar' ? `${saySize(size)}, ${size.length.text} long` : saySize(size)

/** By how much a box reaches past a piece of stock, lying as well as it can; 0 or less where it fits. */
function overOf(size: Size, box: readonly number[]): number {
  if (size.shape === 'bar') {
    const [across, length] = [mm(size.across), mm(size.length)]
    const past = box.map((along, at) => {
      const others = box.filter((_, other) => other !== at)
      return Math.max(along - length, ...others.map((side) => side - across))
    })
    return Math.min(...past)
  }
  if (size.shape !== 'plate' && size.shape !== 'block') return 0
  const sides = [mm(size.length), mm(size.width), mm(size.thickness)].sort((a, b) => a - b)
  const own = [...box].sort((a, b) => a - b)
  return Math.max(...own.map((side, at) => side - sides[at]!))
}

/** What is cut away in all: stock less the finished part, with the sum; `null` where either is not known. */
export function removedOf(
  size: Size | null,
  finished: Finished | null,
): { readonly mm3: number; readonly worked: string } | null {
  const room = size ? volumeOfStock(size) : null
  const left = finished?.volume ? mm(finished.volume) : null
  if (room === null || left === null || !(room > left)) return null
  const cm3 = (volume: number) => `${plainFigure(volume / 1000)} cm3`
  return {
    mm3: room - left,
    worked: `removed = stock ${cm3(room)} - finished ${cm3(left)} = ${cm3(room - left)}`,
  }
}
