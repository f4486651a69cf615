/** The little of the library that is asked of it; it brings no types of its own. */
declare module 'js-quantities' {
  interface Quantity {
    readonly scalar: number;
    to(unit: string): Quantity;
  }
  export default function Qty(amount: number, unit: string): Quantity;
}
