import { fail } from './errors.js';
import type { RuleSet } from './securement/rule-set.js';
import { auLrg_2018 } from './securement/rules/au-lrg-2018/index.js';
import { caNsc10_2013 } from './securement/rules/ca-nsc10-2013/index.js';
import { euEn12195_1_2010 } from './securement/rules/eu-en12195-1-2010/index.js';
import { imoCssAnnex13_2014 } from './securement/rules/imo-css-annex13-2014/index.js';
import { imoCtu_2014 } from './securement/rules/imo-ctu-2014/index.js';
import { nzTlc_2017 } from './securement/rules/nz-tlc-2017/index.js';
import { ukDvsa_2024 } from './securement/rules/uk-dvsa-2024/index.js';
import { us49cfr393_102_2024, us49cfr393_2024 } from './securement/rules/us-49cfr393-2024/index.js';
import { auLrg_2018_chain } from './tables/au-lrg-2018-chain.js';
import { caNsc10_chain_2013 } from './tables/ca-nsc10-2013.js';
import type { CriteriaSet } from './tables/criteria-set.js';
import { deDin5688_1986 } from './tables/de-din5688-1986.js';
import { euEn818_2008 } from './tables/eu-en818-2008.js';
import { euEn12195_3_2001 } from './tables/eu-en12195-3-2001.js';
import {
  deBgBau3074_intervals,
  ukLoler_1998_intervals,
  us29cfr1910_184_2011_intervals,
  usAsmeB30_9_2010_intervals,
  usAsmeB30_10_2005_intervals,
  usNavfacP307_intervals,
  usWac296_155_55800_2013_intervals,
} from './tables/inspection-intervals.js';
import type { IntervalSet } from './tables/interval-set.js';
import type { CapacityTable, RatingTable } from './tables/rating-table.js';
import {
  auQldDoggers_2010,
  deBgBau3072,
  deDguv109_004,
  deDguv209_021_2021,
  euEn818_6_2000,
  euEn12195_3_2001_criteria,
  us29cfr1910_184_2011,
  us29cfr1919_25_2024,
  us29cfr1926_251_2019,
  us49cfr393_104_2024,
  usAsmeB30_9_2010,
  usAsmeB30_10_2005,
  usDoeStd1090_1996,
  usOshaCourse600,
  usWac296_155_55800_2013,
} from './tables/removal-criteria.js';
import type { SlingRatings } from './tables/sling-ratings.js';
import { us49cfr393_108_2024, us49cfr393_108_chain_2024 } from './tables/us-49cfr393-108-2024.js';
import { usAlloySling_2011 } from './tables/us-alloy-sling-2011.js';
import { usWeldedChain_2003 } from './tables/us-welded-chain-2003.js';

/**
 * The rule set with a text id, for applications that keep ids in JSON. It carries every rule set of the
 * library; an application that knows its rule set imports the constant instead.
 *
 * @throws RiggingError `UNKNOWN_RULE_SET`
 * @example
 * ruleSetById('us-49cfr393-2024').jurisdiction
 * // => 'United States, federal'
 */
export function ruleSetById(id: string): RuleSet {
  const known: readonly RuleSet[] = [
    us49cfr393_2024,
    us49cfr393_102_2024,
    caNsc10_2013,
    euEn12195_1_2010,
    imoCtu_2014,
    imoCssAnnex13_2014,
    auLrg_2018,
    nzTlc_2017,
    ukDvsa_2024,
  ];
  return (
    known.find((rules) => rules.id === id) ??
    fail('UNKNOWN_RULE_SET', 'id', known.map((rules) => rules.id).join(', '), id, 'Write the id as results echo it.')
  );
}

/**
 * The rating table with a text id.
 *
 * @throws RiggingError `UNKNOWN_RATING_TABLE`
 * @example
 * ratingTableById('us-49cfr393-108-2024').asOf
 * // => '2024'
 */
export function ratingTableById(id: string): RatingTable {
  const known = ratingTables();
  return known.find((table) => table.id === id) ?? unknownTable(known, id);
}

const ratingTables = (): readonly RatingTable[] =>
  ([] = [us49cfr393_108_2024, us49cfr393_108_chain_2024, usWeldedChain_2003, caNsc10_chain_2013]);

/**
 * The table of capacities with a text id, of any system: the rating tables, and those of lashing capacities.
 *
 * @throws RiggingError `UNKNOWN_RATING_TABLE`
 * @example
 * capacityTableById('eu-en12195-3-2001').system
 * // => 'lashingCapacity'
 */
export function capacityTableById(id: string): CapacityTable {
  const known: readonly CapacityTable[] = [...ratingTables(), euEn12195_3_2001, auLrg_2018_chain];
  return known.find((table) => table.id === id) ?? unknownTable(known, id);
}

/**
 * The table of sling ratings with a text id.
 *
 * @throws RiggingError `UNKNOWN_RATING_TABLE`
 * @example
 * slingRatingsById('us-alloy-sling-2011').units
 * // => 'us'
 */
export function slingRatingsById(id: string): SlingRatings {
  const known: readonly SlingRatings[] = [usAlloySling_2011, euEn818_2008, deDin5688_1986];
  return known.find((table) => table.id === id) ?? unknownTable(known, id);
}

function unknownTable(known: readonly { readonly id: string }[], id: string): never {
  return fail(
    'UNKNOWN_RATING_TABLE',
    'id',
    known.map((table) => table.id).join(', '),
    id,
    'Write the id as results echo it.',
  );
}

/**
 * The set of removal criteria with a text id, for `inspectChain` and `forecastRetirement`.
 *
 * @throws RiggingError `UNKNOWN_CRITERIA_SET`
 * @example
 * criteriaSetById('eu-en12195-3-2001-criteria').removal.rows.chain?.elongation?.limit
 * // => 3
 */
export function criteriaSetById(id: string): CriteriaSet {
  const known: readonly CriteriaSet[] = [
    us29cfr1910_184_2011,
    us29cfr1926_251_2019,
    us29cfr1919_25_2024,
    us49cfr393_104_2024,
    usAsmeB30_9_2010,
    usAsmeB30_10_2005,
    usWac296_155_55800_2013,
    usDoeStd1090_1996,
    usOshaCourse600,
    euEn818_6_2000,
    euEn12195_3_2001_criteria,
    deDguv209_021_2021,
    deDguv109_004,
    deBgBau3072,
    auQldDoggers_2010,
  ];
  return known.find((set) => set.id === id) ?? unknownSet(known, id);
}

/**
 * The set of inspection intervals with a text id, for `forecastRetirement`.
 *
 * @throws RiggingError `UNKNOWN_CRITERIA_SET`
 * @example
 * intervalSetById('uk-loler-1998').title
 * // => 'Lifting accessories, United Kingdom'
 */
export function intervalSetById(id: string): IntervalSet {
  const known: readonly IntervalSet[] = [
    us29cfr1910_184_2011_intervals,
    usWac296_155_55800_2013_intervals,
    usAsmeB30_9_2010_intervals,
    usAsmeB30_10_2005_intervals,
    deBgBau3074_intervals,
    ukLoler_1998_intervals,
    usNavfacP307_intervals,
  ];
  return known.find((set) => set.id === id) ?? unknownSet(known, id);
}

function unknownSet(known: readonly { readonly id: string }[], id: string): never {
  return fail(
    'UNKNOWN_CRITERIA_SET',
    'id',
    known.map((set) => set.id).join(', '),
    id,
    'Write the id as results echo it.',
  );
}
