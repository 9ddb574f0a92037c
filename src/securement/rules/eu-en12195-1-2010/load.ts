import type { ArticleLayout } from '../../layout.js';
import type { Friction } from './friction.js';
import type { Lashing } from './lashing.js';

/** An article as the checks of the standard look at it. */
export interface Load {
  readonly layout: ArticleLayout;
  /** m · g with the g of the standard, in N. */
  readonly weight: number;
  readonly friction: Friction;
  readonly lashings: readonly Lashing[];
}
