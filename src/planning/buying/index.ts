export { planPurchase } from './plan-purchase.ts'
