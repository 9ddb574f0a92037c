import type { GeneratedTable } from './rating-table.js';

/** The share of its breaking strength that a device may be counted on for, by device and use; `any` where its use makes no difference. */
export interface FractionTable {
  readonly id: string;
  readonly title: string;
  readonly asOf: string;
  readonly fractions: GeneratedTable<{
    readonly [device: string]: { readonly [use in DeviceUse | 'any']?: { readonly fraction: number } };
  }>;
}

/** Whether a device is used once or again. */
export type DeviceUse = 'single-use' | 'reusable';

/** The devices that a table of shares lists. */
export type DeviceOf<T extends FractionTable> = keyof T['fractions']['rows'] & string;
