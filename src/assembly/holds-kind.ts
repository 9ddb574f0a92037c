import type { Part, PartKind } from './part.js';

/** True when one of the parts is of a kind, in legs side by side too. */
export function holdsKind(parts: readonly Part[], kind: PartKind): boolean {
  return parts.some(
    (part) => part.kind === kind || (part.kind === 'parallel' && part.legs.some((leg) => holdsKind(leg, kind))),
  );
}
