/** A number as the working shows it: rounded to so many decimals, without zeros at the end. */
export function figure(value: number, decimals = 2): string {
  return String(Number(value.toFixed(decimals)));
}
