import { softGroundPullFractions } from '../../tables/generated/soft-ground-pull-fractions.js';
import { type Note, note } from '../../working/note.js';
import { listed } from '../plain-input.js';
import { gradeOf, type Pulled, type Resistance } from './pulled.js';

/** A vehicle that still rolls, on ground that gives. */
export interface SoftGroundLoad {
  readonly kind: 'soft-ground';
  readonly surface: keyof typeof softGroundPullFractions.rows;
}

/** R = fraction · W + W · sin α. */
export function softGround({ surface }: SoftGroundLoad, pulled: Pulled): Resistance {
  const { rows, source } = softGroundPullFractions;
  const row = listed<{ readonly part: number; readonly of: number }>(rows, surface, 'surface');
  const { weight, force, working } = pulled;
  const ground = (weight * row.part) / row.of;
  working.step('load', 'R ground', `${row.part}/${row.of} · W`, { W: force(weight) }, force(ground));
  working.cite(source);
  working.cautions.push(STILL_ROLLS);
  const total = ground + gradeOf(pulled);
  return { low: total, high: total };
}

const STILL_ROLLS: Note = /* @__PURE__ */ note('STILL_ROLLS');
