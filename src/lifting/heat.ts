import type { AnyGrade } from '../chain/trade-size.js';
import { compare } from '../quantities/arithmetic.js';
import { decimalProduct } from '../quantities/decimal.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { slingColdestUse } from '../tables/generated/sling-coldest-use.js';
import type { SlingRatings } from '../tables/sling-ratings.js';
import { type Check, failedCheck, undeterminedCheck } from '../working/check.js';
import { note } from '../working/note.js';
import type { Working } from '../working/step.js';

/**
 * What heat takes off, in percent; undefined where the chain may not be used so, or it is not known. What it takes while
 * hot and what earlier heat took for good both count, one after the other: the document does not say, this is the safer reading.
 */
export function heatReduction(
  { heat }: SlingRatings,
  grade: AnyGrade | undefined,
  temperature: QuantityLike | undefined,
  hottest: QuantityLike | undefined,
  checks: Check[],
  working: Working,
): number | undefined {
  if (temperature === undefined) working.assumptions.push(note('USUAL_TEMPERATURE'));
  const { document, clause: table, provenance } = heat.table.source;
  const about = {
    id: 'temperature/sling',
    title: 'temperature of the chain',
    weight: 'requirement',
    subject: 'sling',
  } as const;
  const clause = `${document}, ${table}`;
  const rows = grade === undefined ? undefined : heat.table.rows[grade];
  let left = 100;
  const taken: number[] = [];
  let known = true;
  for (const [at, column] of [
    [temperature, 'while_hot_percent'],
    [hottest, 'permanent_percent'],
  ] as const) {
    if (at === undefined) continue;
    if (rows === undefined || grade === undefined) {
      checks.push(undeterminedCheck({ ...about, clause }, [note('HEAT_NOT_LISTED', { grade: grade ?? '' })]));
      return undefined;
    }
    const points = Object.keys(rows)
      .map(Number)
      .sort((a, b) => a - b);
    const point = points.find((each) => compare(at, { value: each, unit: heat.unit }) <= 0);
    const coldest = slingColdestUse.rows[grade as keyof typeof slingColdestUse.rows];
    if (point === undefined) {
      const most = { value: points.at(-1)!, unit: heat.unit };
      checks.push(failedCheck({ ...about, clause }, note('TOO_HOT', { temperature: at, most })));
      known = false;
    } else if (compare(at, { value: -coldest.degrees_below_zero, unit: coldest.unit }) < 0) {
      const least = { value: -coldest.degrees_below_zero, unit: coldest.unit };
      checks.push(failedCheck({ ...about, clause: coldest.clause }, note('TOO_COLD', { temperature: at, least })));
      known = false;
    } else if (!(heat.fullBelow && compare(at, { value: points[0]!, unit: heat.unit }) < 0)) {
      const row = rows[point]!;
      const off = row[column] ?? 0;
      left = decimalProduct(left, decimalProduct(100 - off, 0.01));
      if (off > 0) taken.push(off);
      working.step(
        'sling',
        'r',
        'percent off at the next row at or above t',
        { t: at, row: point, grade },
        off,
        row.clause ?? clause,
      );
      working.cite({ document, clause: row.clause ?? table!, provenance: row.provenance ?? provenance });
    }
  }
  if (taken.length > 1) {
    working.assumptions.push(note('HEAT_TAKEN_TWICE'));
    working.cite({ document, clause: 'both losses at once', provenance: 'interpretation' });
  }
  return known ? Number((100 - left).toFixed(9)) : undefined;
}
