/** The number a printed cell stands for: '1-1/4' is 1.25, '8 mm' is 8. */
export function amount(printed: string): number {
  const match = /^(?:(\d+)-)?(\d+(?:\.\d+)?)(?:\/(\d+))?(?: mm)?$/.exec(printed);
  if (match === null) throw new Error(`not a number: "${printed}"`);
  const [, whole = '0', numerator = '', denominator = '1'] = match;
  return Number(whole) + Number(numerator) / Number(denominator);
}
