/** What so many units of one form cost: the units without a known price, and the money for the others. */
export interface UnitPrice {
  readonly unpriced: number
  /** Minor units of the project's currency. */
  readonly money: number
}

/** A form of which whole units can be bought. */
export interface Buyable {
  /** What one unit holds, to compare forms with: length or area. */
  readonly holds: number
  /** Needs: never less for more units. */
  readonly price: (units: number) => UnitPrice
}

/** Price of a choice over all forms, and the material it buys. */
export interface ChoicePrice extends UnitPrice {
  readonly bought: number
}

/** Whether so many units of each form hold everything, and how. */
export type Tried<T> = { readonly packing: T } | 'impossible' | 'undecided'

/** Whole units of some forms, and how everything lies in them. */
export interface UnitChoice<T> {
  /** Units bought of each form. */
  readonly counts: readonly number[]
  readonly packing: T
}

/** What there is to choose from. */
export interface Choosing<T> {
  readonly forms: readonly Buyable[]
  /** A choice that is known to do. */
  readonly known: UnitChoice<T>
  /** False only where so many units cannot do; never true for fewer once false for more. */
  readonly enough: (counts: readonly number[]) => boolean
  /** Units of one form beyond which there are none, or more do not help. */
  readonly most: number
  readonly attempt: (counts: readonly number[]) => Tried<T>
}

/** The cheapest choice found. */
export interface ChosenUnits<T> extends UnitChoice<T> {
  /** Nothing costs less: neither fewer units of unknown price, nor less money. */
  readonly proved: boolean
  /** No choice costs less than this. */
  readonly least: ChoicePrice
}

/** Most choices looked at; more forms or units than that are left to the known choice, unproved. */
const mostChoices = 5_000

/**
 * The whole units that cost the least and hold everything: fewest units of unknown price, then least money, then least
 * material, then most of the first forms.
 * Method: every choice that could be cheaper than the known one, cheapest first, until one does; what fits in fewer
 * units fits in more, so a choice below an impossible one is impossible. Cost: O(choices) attempts.
 */
export function chooseUnits<T>(asked: Choosing<T>): ChosenUnits<T> {
  const { forms, known } = asked
  const choices = cheaperChoices(asked)
  if (!choices) return { ...known, proved: false, least: { unpriced: 0, money: 0, bought: 0 } }
  const impossible: (readonly number[])[] = []
  let undecided: readonly number[] | null = null
  for (const counts of choices) {
    if (impossible.some((many) => counts.every((count, k) => count <= many[k]!))) continue
    const tried = asked.attempt(counts)
    if (tried === 'impossible') impossible.push(counts)
    else if (tried === 'undecided') undecided ??= counts
    else return judged(forms, { counts, packing: tried.packing }, undecided)
  }
  return judged(forms, known, undecided)
}

function judged<T>(
  forms: readonly Buyable[],
  choice: UnitChoice<T>,
  undecided: readonly number[] | null,
): ChosenUnits<T> {
  const price = priceOf(forms, choice.counts)
  const least = undecided ? priceOf(forms, undecided) : price
  return { ...choice, proved: least.unpriced === price.unpriced && least.money === price.money, least }
}

/** What a choice costs. */
export function priceOf(forms: readonly Buyable[], counts: readonly number[]): ChoicePrice {
  const prices = forms.map(({ price }, k) => price(counts[k]!))
  return {
    unpriced: prices.reduce((sum, { unpriced }) => sum + unpriced, 0),
    money: prices.reduce((sum, { money }) => sum + money, 0),
    bought: forms.reduce((sum, { holds }, k) => sum + holds * counts[k]!, 0),
  }
}

/** Order of two choices, the better one first. */
export function cheaperFirst(
  forms: readonly Buyable[],
): (a: readonly number[], b: readonly number[]) => number {
  return (a, b) => {
    const [one, other] = [priceOf(forms, a), priceOf(forms, b)]
    const first = a.findIndex((count, k) => count !== b[k])
    return (
      one.unpriced - other.unpriced ||
      one.money - other.money ||
      one.bought - other.bought ||
      (first < 0 ? 0 : b[first]! - a[first]!)
    )
  }
}

/** Every choice that is better than the known one and may be enough, best first; `null`: too many. */
function cheaperChoices<T>({ forms, known, enough, most }: Choosing<T>): (readonly number[])[] | null {
  const order = cheaperFirst(forms)
  const found: (readonly number[])[] = []
  let looked = 0
  const grow = (counts: readonly number[], form: number): boolean => {
    for (let units = 0; units <= most; units += 1) {
      const grown = counts.with(form, units)
      looked += 1
      if (looked > mostChoices) return false
      if (order(grown, known.counts) >= 0) return true
      if (form < forms.length - 1) {
        if (!grow(grown, form + 1)) return false
      } else if (enough(grown)) found.push(grown)
    }
    return true
  }
  const all = forms.map(() => 0)
  if (!grow(all, 0)) return null
  return found.sort(order)
}
