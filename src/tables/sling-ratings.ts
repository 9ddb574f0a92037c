import type { Provenance } from '../working/source.js';
import type { slingRules } from './generated/sling-rules.js';
import type { GeneratedTable } from './rating-table.js';

/** One size of sling chain: its working load limits by column, such as `double_45_kg`. */
export interface SlingCell {
  readonly [column: string]: number | Provenance | undefined;
}

/** How a sling is hung: its legs, or a chain under the load, or tight around it. */
export type SlingHitch =
  | 'single'
  | 'double'
  | 'triple'
  | 'quad'
  | 'basket'
  | 'double-basket'
  | 'choker'
  | 'double-choker'
  | 'endless-choker';

/** What a document takes off for heat: rows of temperature for each grade. */
interface HeatRows {
  readonly [grade: string]: {
    readonly [temperature: number]: {
      readonly while_hot_percent: number;
      readonly permanent_percent?: number;
      readonly clause?: string;
      readonly provenance?: Provenance;
    };
  };
}

/** A factor or limit of angle by its name in `reference-tables/sling-rules`. */
export type SlingRuleName = keyof (typeof slingRules)['rows'];

/** The working load limits of chain slings of one document and edition, as an exported constant that the caller names. */
export interface SlingRatings {
  readonly id: string;
  readonly title: string;
  readonly asOf: string;
  /** The unit of its columns: lb or kg. */
  readonly units: 'us' | 'si';
  /** What its columns are called for each hitch; a hitch left out is not in it. */
  readonly columns: { readonly [hitch in SlingHitch]?: string };
  /** Its ranges of angle, steepest first: a sling belongs to the first whose end, from the vertical and included, it does not pass. */
  readonly ranges: readonly { readonly column: number; readonly toFromVertical: number }[];
  /** What its text says of a sling flatter than its last range. */
  readonly flatter: { readonly rule: SlingRuleName; readonly qualifiedPersonMay: boolean };
  /** One table for each grade. */
  readonly grades: { readonly [grade: string | number]: GeneratedTable<{ readonly [size: string]: SlingCell }> };
  /** The formula legs · choke · single leg · sin(angle from horizontal), rounded down; null where the document has none. */
  readonly formula: {
    readonly clause: string;
    readonly provenance: Provenance;
    /** Down to a whole number of these, in the unit of the columns. */
    readonly step: number;
    readonly choker: SlingRuleName;
    readonly endlessChoker?: SlingRuleName;
  } | null;
  /** The angle of choke must be over this, where the document states one. */
  readonly chokeAngle?: SlingRuleName;
  /** A chain under the load whose legs are this near to plumb counts twice the single leg. */
  readonly plumbBasket?: SlingRuleName;
  /** What counts where the legs are not alike. */
  readonly unlike: 'half' | 'factors' | 'not rated';
  readonly heat: {
    readonly table: GeneratedTable<HeatRows>;
    readonly unit: 'F' | 'C';
    /** True where nothing is taken off below the first row; false where the first row says so. */
    readonly fullBelow: boolean;
  };
}

/** The sizes of a table of sling ratings, of any grade. */
export type SlingSizeOf<T extends SlingRatings> = {
  [G in keyof T['grades']]: keyof T['grades'][G]['rows'];
}[keyof T['grades']] &
  string;

/** The grades of a table of sling ratings. */
export type SlingGradeOf<T extends SlingRatings> = keyof T['grades'];
