/** Whether the sling may be used: in words, or the whole result of an inspection by criteria for chain slings. */
export type SlingCondition = 'sound' | 'damaged' | SlingInspection;

/** The result of an inspection of the sling. */
export interface SlingInspection {
  readonly verdict: 'fit' | 'remove' | 'undetermined';
  /** The id of the set it went by; fit by a set that is not for slings leaves the sling open. */
  readonly criteria?: string;
  /** What the word of the set is worth; an owner's policy does not stand for it. */
  readonly standing?: string;
}

/** Whether an inspection went by criteria for chain slings: not by those for tie-downs, for hooks alone, or by a policy. */
export function isForSlings({ criteria, standing }: SlingInspection): boolean {
  return standing !== 'policy' && CRITERIA_FOR_SLINGS.includes(criteria as (typeof CRITERIA_FOR_SLINGS)[number]);
}

/** The sets for chain slings and lifting chain; a training text is none, and a set with rows for hooks alone is none. */
export const CRITERIA_FOR_SLINGS = [
  'us-29cfr1910-184-2011',
  'us-29cfr1926-251-2019',
  'us-29cfr1919-25-2024',
  'us-asme-b30-9-2010',
  'us-wac-296-155-55800-2013',
  'us-doe-std-1090-1996',
  'eu-en818-6-2000',
  'de-dguv-209-021-2021',
  'de-dguv-109-004',
  'de-bg-bau-3072',
  'au-qld-doggers-2010',
] as const;
