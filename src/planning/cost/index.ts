export { computeMoney } from './compute-money.ts'
