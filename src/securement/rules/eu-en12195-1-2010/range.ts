/** What a force or a sum of forces is at least and at most, in N: the same where every fact is known. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

export const NOTHING: Range = { least: 0, most: 0 };

/** A range times a share that is known. */
export function times({ least, most }: Range, share: number): Range {
  if (share === 0) return NOTHING;
  return share > 0 ? { least: least * share, most: most * share } : { least: most * share, most: least * share };
}

/** A range times a share of which only the most is known. */
export function upTo({ most }: Range, share: number): Range {
  return { least: 0, most: most === 0 || share === 0 ? 0 : most * share };
}

export const plus = (a: Range, b: Range): Range => ({ least: a.least + b.least, most: a.most + b.most });
