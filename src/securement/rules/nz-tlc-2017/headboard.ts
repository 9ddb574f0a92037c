import { checkOneOf } from '../../../input-checks.js';
import { nzTlc2017Multiples as multiples } from '../../../tables/generated/nz-tlc-2017-multiples.js';
import type { Article } from '../../plan.js';

/** How many times its weight an article must be lashed for. */
export interface Multiple {
  readonly headboard: string;
  readonly multiple: number;
}

/**
 * By the headboard in front of it. What blocks an article need not be an adequate headboard: while it is blocked and
 * nothing says by what, both ends are possible, and `least` and `most` differ.
 */
export function multiplesOf({ headboard, blockedForward }: Article): {
  readonly least: Multiple;
  readonly most: Multiple;
} {
  const names = Object.keys(multiples.rows);
  if (headboard !== undefined) checkOneOf(headboard, names, 'headboard');
  const open = headboard === undefined && blockedForward === true;
  const by = (name: keyof typeof multiples.rows): Multiple => ({ headboard: name, ...multiples.rows[name] });
  return { least: by(headboard ?? (open ? 'adequate' : 'none')), most: by(headboard ?? 'none') };
}
