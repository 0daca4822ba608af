/** A number as the working shows it: rounded to so many decimals, without zeros at the end. */
export function figure(value: number, decimals = 2): string {
  return String(Number(value.toFixed(decimals)));
}

/** How many of a thing: "1 row", "3 rows". */
export function counted(number: number, one: string): string {
  return number === 1 ? `1 ${one}` : `${number} ${one}s`;
}
