import type { CriteriaSet } from './criteria-set.js';
import { removalCriteriaAuQldDoggers2010 } from './generated/removal-criteria-au-qld-doggers-2010.js';
import { removalCriteriaDeBgBau3072 } from './generated/removal-criteria-de-bg-bau-3072.js';
import { removalCriteriaDeDguv109004 } from './generated/removal-criteria-de-dguv-109-004.js';
import { removalCriteriaDeDguv2090212021 } from './generated/removal-criteria-de-dguv-209-021-2021.js';
import { removalCriteriaEuEn81862000 } from './generated/removal-criteria-eu-en818-6-2000.js';
import { removalCriteriaEuEn1219532001Criteria } from './generated/removal-criteria-eu-en12195-3-2001-criteria.js';
import { removalCriteriaUs29cfr19101842011 } from './generated/removal-criteria-us-29cfr1910-184-2011.js';
import { removalCriteriaUs29cfr1919252024 } from './generated/removal-criteria-us-29cfr1919-25-2024.js';
import { removalCriteriaUs29cfr19262512019 } from './generated/removal-criteria-us-29cfr1926-251-2019.js';
import { removalCriteriaUs49cfr3931042024 } from './generated/removal-criteria-us-49cfr393-104-2024.js';
import { removalCriteriaUsAsmeB3092010 } from './generated/removal-criteria-us-asme-b30-9-2010.js';
import { removalCriteriaUsAsmeB30102005 } from './generated/removal-criteria-us-asme-b30-10-2005.js';
import { removalCriteriaUsDoeStd10901996 } from './generated/removal-criteria-us-doe-std-1090-1996.js';
import { removalCriteriaUsOshaCourse600 } from './generated/removal-criteria-us-osha-course-600.js';
import { removalCriteriaUsWac296155558002013 } from './generated/removal-criteria-us-wac-296-155-55800-2013.js';
import { us29cfr1910184Wear } from './generated/us-29cfr1910-184-wear.js';
import { usAsmeB309Thickness } from './generated/us-asme-b30-9-thickness.js';

// One constant for each source and edition, so that an application carries only the one it names.

/**
 * Alloy steel chain slings in general industry in the United States: 29 CFR 1910.184 as amended in 2011. Any increase in length is a defect,
 * and the least size of a worn link is given for twelve sizes, 7/32, 9/32 and 5/16 not among them.
 *
 * @example
 * us29cfr1910_184_2011.wearTable.rows['3/8'].minimum_in
 * // => '19/64'
 */
export const us29cfr1910_184_2011 = {
  id: 'us-29cfr1910-184-2011',
  title: 'Alloy steel chain slings, United States, general industry',
  document: '29 CFR Part 1910, Occupational Safety and Health Standards',
  short: '29 CFR',
  asOf: '2011',
  standing: 'regulation',
  removal: removalCriteriaUs29cfr19101842011,
  wearTable: us29cfr1910184Wear,
} as const satisfies CriteriaSet;

/**
 * Alloy steel chain slings in construction in the United States: 29 CFR 1926.251, the wear table in the form of greatest wear.
 *
 * @example
 * us29cfr1926_251_2019.wearTable.rows['3/8'].wear_in
 * // => '5/64'
 */
export const us29cfr1926_251_2019 = {
  id: 'us-29cfr1926-251-2019',
  title: 'Alloy steel chain slings, United States, construction',
  document: '29 CFR Part 1926, Safety and Health Regulations for Construction',
  short: '29 CFR',
  asOf: '2019',
  standing: 'regulation',
  removal: removalCriteriaUs29cfr19262512019,
  wearTable: us29cfr1910184Wear,
} as const satisfies CriteriaSet;

/**
 * Chain of marine cargo gear in the United States: 29 CFR 1919.25, over 5 percent of a measured section.
 *
 * @example
 * us29cfr1919_25_2024.removal.rows.chain.elongation.limit
 * // => 5
 */
export const us29cfr1919_25_2024 = {
  id: 'us-29cfr1919-25-2024',
  title: 'Chain of cargo gear, United States, marine terminals and vessels',
  document: '29 CFR Part 1919, Gear Certification',
  short: '29 CFR',
  asOf: '2024',
  standing: 'regulation',
  removal: removalCriteriaUs29cfr1919252024,
} as const satisfies CriteriaSet;

/**
 * Tie-downs on commercial motor vehicles in the United States: 49 CFR 393.104(b). No damaged or weakened part, and no number.
 *
 * @example
 * Object.keys(us49cfr393_104_2024.removal.rows.chain)
 * // => [ 'damage', 'crack' ]
 */
export const us49cfr393_104_2024 = {
  id: 'us-49cfr393-104-2024',
  title: 'Tie-downs, United States, commercial motor vehicles',
  document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
  short: '49 CFR',
  asOf: '2024',
  standing: 'regulation',
  removal: removalCriteriaUs49cfr3931042024,
} as const satisfies CriteriaSet;

/**
 * Alloy steel chain slings by ASME B30.9: the least thickness of a worn link by size (from memory), and any stretched link.
 *
 * @example
 * usAsmeB30_9_2010.wearTable.rows['5/16'].minimum_in
 * // => 0.273
 */
export const usAsmeB30_9_2010 = {
  id: 'us-asme-b30-9-2010',
  title: 'Alloy steel chain slings, ASME',
  document: 'ASME B30.9, Slings',
  short: 'ASME B30.9',
  asOf: '2010',
  standing: 'standard',
  removal: removalCriteriaUsAsmeB3092010,
  wearTable: usAsmeB309Thickness,
} as const satisfies CriteriaSet;

/**
 * Hooks by ASME B30.10: the throat opened by 5 percent or 1/4 in, whichever comes first, any visible bend or twist.
 *
 * @example
 * usAsmeB30_10_2005.removal.rows.hook['throat-opening'].limit
 * // => 5
 */
export const usAsmeB30_10_2005 = {
  id: 'us-asme-b30-10-2005',
  title: 'Hooks, ASME',
  document: 'ASME B30.10, Hooks',
  short: 'ASME B30.10',
  asOf: '2005',
  standing: 'standard',
  removal: removalCriteriaUsAsmeB30102005,
} as const satisfies CriteriaSet;

/**
 * Chain slings in construction in Washington State: WAC 296-155-55800, which mirrors ASME B30.9 and B30.10. The values of its
 * thickness table are taken to be those of ASME (from memory).
 *
 * @example
 * usWac296_155_55800_2013.removal.rows.chain['highest-temperature'].limit
 * // => 1000
 */
export const usWac296_155_55800_2013 = {
  id: 'us-wac-296-155-55800-2013',
  title: 'Chain slings, Washington State, construction',
  document: 'Washington Administrative Code, Safety Standards for Construction Work',
  short: 'WAC 296-155-55800',
  asOf: '2013',
  standing: 'regulation',
  removal: removalCriteriaUsWac296155558002013,
  wearTable: usAsmeB309Thickness,
} as const satisfies CriteriaSet;

/**
 * The hoisting and rigging manual of the United States Department of Energy of 1996: greatest wear by size; hooks by the old pair
 * of 15 percent and 10 degrees.
 *
 * @example
 * usDoeStd1090_1996.removal.rows.hook.twist.limit
 * // => 10
 */
export const usDoeStd1090_1996 = {
  id: 'us-doe-std-1090-1996',
  title: 'Hoisting and rigging manual, United States Department of Energy',
  document: 'DOE-STD-1090-96, Hoisting and Rigging',
  short: 'DOE-STD-1090-96',
  asOf: '1996',
  standing: 'standard',
  removal: removalCriteriaUsDoeStd10901996,
  wearTable: us29cfr1910184Wear,
} as const satisfies CriteriaSet;

/**
 * The text of a training course on sling safety, undated: over 3 percent of the original length. It is no regulation.
 *
 * @example
 * usOshaCourse600.standing
 * // => 'training text'
 */
export const usOshaCourse600 = {
  id: 'us-osha-course-600',
  title: 'Sling safety, text of a training course, United States',
  document: 'OSHA course 600, sling safety',
  short: 'OSHA course 600',
  asOf: '',
  standing: 'training text',
  removal: removalCriteriaUsOshaCourse600,
} as const satisfies CriteriaSet;

/**
 * Chain slings in Europe: EN 818-6, the mean of two diameters at right angles below 90 percent of nominal; over 5 percent of inner
 * length (from memory; some editions say any stretch).
 *
 * @example
 * euEn818_6_2000.removal.rows.chain['mean-diameter'].limit
 * // => 90
 */
export const euEn818_6_2000 = {
  id: 'eu-en818-6-2000',
  title: 'Short link chain slings, Europe',
  document: 'EN 818-6, Chain slings, Information for use and maintenance',
  short: 'EN 818-6',
  asOf: '2000',
  standing: 'standard',
  removal: removalCriteriaEuEn81862000,
} as const satisfies CriteriaSet;

/**
 * Lashing chains in Europe: EN 12195-3, over 3 percent of elongation or over 10 percent of wear (from memory). Stricter in length
 * than the standards for lifting.
 *
 * @example
 * euEn12195_3_2001_criteria.removal.rows.chain.elongation.limit
 * // => 3
 */
export const euEn12195_3_2001_criteria = {
  id: 'eu-en12195-3-2001-criteria',
  title: 'Lashing chains, Europe',
  document: 'EN 12195-3, Lashing chains, information for the user',
  short: 'EN 12195-3',
  asOf: '2001',
  standing: 'standard',
  removal: removalCriteriaEuEn1219532001Criteria,
} as const satisfies CriteriaSet;

/**
 * Guidance of the German statutory accident insurers on chain slings: 5 percent or more, of the chain or of one link; over 10
 * percent of mean thickness.
 *
 * @example
 * deDguv209_021_2021.removal.rows.chain.elongation.comparison
 * // => '>='
 */
export const deDguv209_021_2021 = {
  id: 'de-dguv-209-021-2021',
  title: 'Chain slings, guidance of the German statutory accident insurers',
  document: 'DGUV Information 209-021',
  short: 'DGUV Information 209-021',
  asOf: '2021',
  standing: 'guide',
  removal: removalCriteriaDeDguv2090212021,
} as const satisfies CriteriaSet;

/**
 * Chains in galvanizing plants in Germany, a rule of the statutory accident insurers, undated: 5 percent of one link beyond what one
 * depth of wear explains; notches and bends over 10 percent of the remaining diameter.
 *
 * @example
 * deDguv109_004.removal.rows.chain['notch-depth'].limit
 * // => 10
 */
export const deDguv109_004 = {
  id: 'de-dguv-109-004',
  title: 'Chains in galvanizing plants, rule of the German statutory accident insurers',
  document: 'DGUV Regel 109-004',
  short: 'DGUV Regel 109-004',
  asOf: '',
  standing: 'guide',
  removal: removalCriteriaDeDguv109004,
} as const satisfies CriteriaSet;

/**
 * A leaflet of a German statutory accident insurer on round steel chain, undated: over 5 percent of one link, where the guidance of the
 * same institutions says 5 percent or more.
 *
 * @example
 * deBgBau3072.removal.rows.chain['link-elongation'].comparison
 * // => '>'
 */
export const deBgBau3072 = {
  id: 'de-bg-bau-3072',
  title: 'Round steel chain, leaflet of a German statutory accident insurer',
  document: 'Accident insurer leaflet 3072, round steel chain',
  short: 'Leaflet 3072',
  asOf: '',
  standing: 'guide',
  removal: removalCriteriaDeBgBau3072,
} as const satisfies CriteriaSet;

/**
 * A regional guide for doggers in Queensland: over 10 percent of elongation, twice what others allow.
 *
 * @example
 * auQldDoggers_2010.removal.rows.chain.elongation.limit
 * // => 10
 */
export const auQldDoggers_2010 = {
  id: 'au-qld-doggers-2010',
  title: 'Chain slings, guide for doggers, Queensland',
  document: 'Guide for doggers, PN10123, Queensland',
  short: 'Guide for doggers',
  asOf: '2010',
  standing: 'guide',
  removal: removalCriteriaAuQldDoggers2010,
} as const satisfies CriteriaSet;
