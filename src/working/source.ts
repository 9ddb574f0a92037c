/**
 * How a figure came to be here:
 * `read` in the document or a page quoting it; `memory`: recalled, to be confirmed; `computed` or `derived`
 * from other figures; `common practice`: a habit of the trade, no rule; `interpretation`: our reading of a rule.
 */
export type Provenance = 'read' | 'memory' | 'computed' | 'derived' | 'common practice' | 'interpretation';

/** Where a figure or a rule stands. */
export interface SourceRef {
  readonly document: string;
  readonly edition?: string;
  readonly clause?: string;
  readonly provenance: Provenance;
  readonly note?: string;
  /** Columns of a table whose figures came another way than the rest. */
  readonly columnProvenance?: Readonly<Record<string, Provenance>>;
}
