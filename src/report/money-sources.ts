import type { MissingSource, Money, OwnStockSource } from '../model/money.ts'
import { priceCell } from './cart-table.ts'
import type { Block, Row } from './cells.ts'
import { choose, isEmpty, portion, unknownWord, words } from './expressions.ts'
import { blank, money, number, ref, rounded, text } from './make-cells.ts'
import { sourceCell } from './money-names.ts'

/** The cell with the worth of one unit of own stock. */
export function worthCell({ item }: OwnStockSource): string {
  return `worth/${item}`
}

/** The cell for the price of all of something that nobody is known to sell. */
export function missingCell({ id }: MissingSource): string {
  return `price of missing/${id}`
}

/** What is drawn from own stock, at the worth of one. */
export function ownStockTable({ sources, currency, digits }: Money): Block {
  const own = sources.filter((source) => source.kind === 'own stock')
  return {
    kind: 'table',
    id: 'own stock',
    columns: [
      { head: 'Drawn from here', width: 0 },
      { head: 'What, and worth from', width: 0 },
      { head: 'How many', width: 0, align: 'right' },
      { head: 'Worth of one', width: 0, align: 'right' },
      { head: '', width: 0 },
      { head: 'Amount', width: 0, align: 'right' },
    ],
    rows: own.map((source): Row => {
      const worth = worthCell(source)
      const worthOfAll = rounded(portion(ref(worth), source.units), digits)
      const live = choose(isEmpty(worth), words(unknownWord), worthOfAll)
      return {
        cells: [
          text(source.item),
          text(`${ofWords[source.of]}, ${worthWords[source.worthFrom]}`),
          number(source.units.valueOf(), source.units.d === 1n ? 0 : 3, null),
          priceCell(source.worth, currency, { name: worth }),
          blank(),
          money(source.amount, currency, { name: sourceCell(source), live }),
        ],
      }
    }),
    totals: [],
    filter: false,
  }
}

const worthWords = {
  stated: 'worth as stated',
  offer: 'worth of first offer',
  unknown: 'worth not known',
} as const
const ofWords = { part: 'pieces', form: 'whole units', cutter: 'cutters worn' } as const

const whyWords: Readonly<Record<MissingSource['why'], string>> = {
  'no offer': 'no offer',
  'no vendor': 'the vendor is not known',
  'no stock': 'no stock named',
  'no volume': 'no volume known',
  'no density': 'no density known',
  'no form': 'no bar, plate or bottle named',
  'too large': 'larger than any bar or plate',
}

/** What must be got and nobody is known to sell: a price for all of it may be typed. */
export function missingTable({ sources, currency, digits }: Money): Block {
  const missing = sources.filter((source) => source.kind === 'missing')
  return {
    kind: 'table',
    id: 'missing',
    columns: [
      { head: 'Nobody is known to sell', width: 0 },
      { head: 'Why', width: 0 },
      { head: '', width: 0 },
      { head: 'Price of all', width: 0, align: 'right' },
      { head: '', width: 0 },
      { head: 'Amount', width: 0, align: 'right' },
    ],
    rows: missing.map((source): Row => {
      const price = missingCell(source)
      const live = choose(isEmpty(price), words(unknownWord), rounded(ref(price), digits))
      return {
        cells: [
          text(source.title),
          text(whyWords[source.why]),
          blank(),
          priceCell(null, currency, { name: price }),
          blank(),
          money(source.amount, currency, { name: sourceCell(source), live }),
        ],
      }
    }),
    totals: [],
    filter: false,
  }
}
