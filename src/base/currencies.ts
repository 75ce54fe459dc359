/**
 * Minor digits of the currencies a project or vendor may use: 2 for cents, 0 where the unit itself is the least.
 * Source: ISO 4217 list one, as published 2024-06-25.
 */
export const currencies: ReadonlyMap<string, number> = new Map([
  ...twoDigits('AED ARS AUD BRL CAD CHF CNY COP CZK DKK EGP EUR GBP HKD HUF IDR ILS INR KES MAD'),
  ...twoDigits('MXN MYR NOK NZD PEN PHP PKR PLN RON RSD SAR SEK SGD THB TRY TWD UAH USD ZAR'),
  ...['CLP', 'ISK', 'JPY', 'KRW', 'VND'].map((code) => [code, 0] as const),
  ...['BHD', 'JOD', 'KWD', 'TND'].map((code) => [code, 3] as const),
])

function twoDigits(codes: string): (readonly [string, number])[] {
  return codes.split(' ').map((code) => [code, 2] as const)
}
