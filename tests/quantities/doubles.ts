/** The doubles in order, as whole numbers: neighbours differ by one. */
function order(value: number): bigint {
  const bits = new BigInt64Array(new Float64Array([value]).buffer)[0]!;
  return bits < 0n ? -(bits & 0x7fff_ffff_ffff_ffffn) : bits;
}

/** How many doubles apart two numbers are. */
export function ulpsBetween(a: number, b: number): number {
  const gap = order(a) - order(b);
  return Number(gap < 0n ? -gap : gap);
}

/** The next double above a positive number. */
export function justAbove(value: number): number {
  return new Float64Array(new BigInt64Array([order(value) + 1n]).buffer)[0]!;
}

/** The next double below a positive number. */
export function justBelow(value: number): number {
  return new Float64Array(new BigInt64Array([order(value) - 1n]).buffer)[0]!;
}
