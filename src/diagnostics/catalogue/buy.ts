import { nameList } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import { message } from '../message.ts'

/** BUY: offers, prices and orders. */
export const buy = {
  noLead: message<{ item: string; vendor: string }>({
    code: 'BUY01',
    level: 'error',
    says: ({ item, vendor }) => `the offer of \`${vendor}\` for \`${item}\` has no lead time`,
    mend: () => 'add `lead:`, such as `lead: 3 wd` or `lead: 2..3..8 wd`',
    why: 'The day a part comes decides the finish. A guessed lead with three points is honest; none at all is not.',
  }),
  noPrice: message<{ item: string; vendor: string }>({
    code: 'BUY02',
    level: 'warning',
    says: ({ item, vendor }) =>
      `the offer of \`${vendor}\` for \`${item}\` has no price, so every total with it is incomplete`,
    mend: () => 'add `price:`, such as `price: 4.20`',
    why: 'An unknown price is never taken as zero: totals that contain it are marked and show what is known.',
  }),
  breaksOutOfOrder: message<{
    item: string
    from: number
    price: string
    before: { from: number; price: string }
  }>({
    code: 'BUY03',
    level: 'error',
    says: ({ item, from, price, before }) =>
      `the price breaks of \`${item}\` are out of order: from ${from} at ${price} comes after from ${before.from} at ${before.price}`,
    mend: () => 'write breaks with rising quantities and falling unit prices',
    why: 'A break with a higher unit price for more pieces is nearly always two figures swapped.',
  }),
  noExchange: message<{ currency: string; home: string; users: readonly { at: Place; says: string }[] }>({
    code: 'BUY04',
    level: 'error',
    says: ({ currency, home }) => `prices are in ${currency}, but there is no exchange rate to ${home}`,
    mend: ({ currency, home }) => `add \`exchange: {${currency}: "0.92 ${home}"}\` with today's rate`,
    notes: ({ users }) => users.slice(0, 3),
    why: 'Money of two currencies is never added without a rate that you wrote down.',
  }),
  unknownCurrency: message<{ text: string; near: readonly string[] }>({
    code: 'BUY05',
    level: 'error',
    says: ({ text }) => `\`${text}\` is not a currency that is known`,
    mend: ({ near }) =>
      near.length > 0
        ? `did you mean ${nameList(near, 'or')}?`
        : 'write three letters of ISO 4217, such as EUR',
    why: 'The currency decides the smallest coin to which lines are rounded.',
  }),
  noWayToGet: message<{ item: string; missing: number; have: number }>({
    code: 'BUY06',
    level: 'error',
    says: ({ item, missing }) =>
      `there is no offer for \`${item}\`, of which ${missing} ${missing === 1 ? 'is' : 'are'} missing`,
    mend: ({ have }) => `add \`offers:\`, or write \`have: ${have}\` if they are here`,
    why: 'Every part must come from somewhere: bought, made or on the shelf.',
  }),
  noForm: message<{ part: string; material: string; wants: string; forms: readonly string[] }>({
    code: 'BUY07',
    level: 'error',
    says: ({ part, material, wants }) =>
      `\`${part}\` is cut from ${wants} of \`${material}\`, which is in none of its forms`,
    mend: ({ forms }) =>
      forms.length > 0
        ? `the forms are ${nameList(forms, 'and')}; add one, or give the stock \`offers:\` of its own`
        : 'add `forms:` to the material, or give the stock `offers:` of its own',
    why: 'Material is bought in whole bars, plates or bottles; the plan must know which.',
  }),
  wrongMoney: message<{ key: string; got: string; wanted: string }>({
    code: 'BUY08',
    level: 'error',
    says: ({ key, got, wanted }) => `\`${key}\` is in ${got}, but must be in ${wanted}`,
    mend: ({ wanted }) => `write it in ${wanted}`,
    why: "Rates, limits and worth are kept in the project's own currency; only offers and vendors may have another.",
  }),
  pieceTooLarge: message<{ part: string; form: string; needs: string; has: string }>({
    code: 'BUY09',
    level: 'error',
    says: ({ part, form, needs, has }) =>
      `\`${part}\` needs ${needs} with the cut, more than \`${form}\` has (${has})`,
    mend: () => 'choose a larger form of the material, or check the stock size',
    why: 'A piece cannot be longer than the bar it is cut from.',
  }),
  ownExchange: message<{ currency: string }>({
    code: 'BUY11',
    level: 'error',
    says: ({ currency }) => `\`${currency}\` is the project's own currency and needs no exchange rate`,
    mend: ({ currency }) => `take \`${currency}\` out of \`exchange\``,
    why: "A rate says what one unit of a foreign currency costs in the project's own. One for the own currency is nearly always the two mixed up.",
  }),
  priceFromNowhere: message<{ item: string; first: number; needed: number }>({
    code: 'BUY10',
    level: 'warning',
    says: ({ item, first }) =>
      `the price breaks of \`${item}\` begin at ${first}; fewer are taken to be sold at that price`,
    mend: ({ first }) => `add \`moq: ${first}\` if fewer are not sold, or a price from 1`,
    why: 'Below the first break the source says nothing.',
  }),
  cutterWornOut: message<{ cutter: string; worn: number; have: number }>({
    code: 'BUY12',
    level: 'warning',
    says: ({ cutter, worn, have }) =>
      `this plan wears out ${worn} of \`${cutter}\`, ${have} ${have === 1 ? 'is' : 'are'} on the bench`,
    mend: ({ worn }) =>
      `write \`have: ${worn}\` if they are there, or \`have: 0\` with \`offers\` to buy them`,
    why: 'A cutter that gives up in the middle of a part stops the evening, and the next one may be days away.',
  }),
  worthUnknown: message<{ item: string }>({
    code: 'BUY13',
    level: 'warning',
    says: ({ item }) => `\`${item}\` is drawn from what is here, and nothing says what it is worth`,
    mend: () => 'add `worth:`, such as `worth: 0.10`, or an offer with a price',
    why: 'What is used of own stock is charged; every total with it is incomplete.',
  }),
} as const
