import { type Quantity, quantity } from './quantity.js';

/** Millimeters. @throws RiggingError `NOT_FINITE` */
export const mm = (value: number): Quantity<'mm'> => quantity(value, 'mm');
/** Centimeters. @throws RiggingError `NOT_FINITE` */
export const cm = (value: number): Quantity<'cm'> => quantity(value, 'cm');
/** Meters. @throws RiggingError `NOT_FINITE` */
export const m = (value: number): Quantity<'m'> => quantity(value, 'm');
/** Inches (`in` is a reserved word). @throws RiggingError `NOT_FINITE` */
export const inches = (value: number): Quantity<'in'> => quantity(value, 'in');
/** Feet. @throws RiggingError `NOT_FINITE` */
export const ft = (value: number): Quantity<'ft'> => quantity(value, 'ft');
/** Yards. @throws RiggingError `NOT_FINITE` */
export const yd = (value: number): Quantity<'yd'> => quantity(value, 'yd');
/** Kilograms. @throws RiggingError `NOT_FINITE` */
export const kg = (value: number): Quantity<'kg'> => quantity(value, 'kg');
/** Tonnes of 1000 kg. @throws RiggingError `NOT_FINITE` */
export const t = (value: number): Quantity<'t'> => quantity(value, 't');
/** Avoirdupois pounds, a mass. @throws RiggingError `NOT_FINITE` */
export const lb = (value: number): Quantity<'lb'> => quantity(value, 'lb');
/** Short tons of 2000 lb. @throws RiggingError `NOT_FINITE` */
export const shortTon = (value: number): Quantity<'short-ton'> => quantity(value, 'short-ton');
/** Long tons of 2240 lb. @throws RiggingError `NOT_FINITE` */
export const longTon = (value: number): Quantity<'long-ton'> => quantity(value, 'long-ton');
/** Newtons. @throws RiggingError `NOT_FINITE` */
export const N = (value: number): Quantity<'N'> => quantity(value, 'N');
/** Decanewtons, 10 N. @throws RiggingError `NOT_FINITE` */
export const daN = (value: number): Quantity<'daN'> => quantity(value, 'daN');
/** Kilonewtons. @throws RiggingError `NOT_FINITE` */
export const kN = (value: number): Quantity<'kN'> => quantity(value, 'kN');
/** Kilograms-force. @throws RiggingError `NOT_FINITE` */
export const kgf = (value: number): Quantity<'kgf'> => quantity(value, 'kgf');
/** Pounds-force. @throws RiggingError `NOT_FINITE` */
export const lbf = (value: number): Quantity<'lbf'> => quantity(value, 'lbf');
/** Degrees of angle. @throws RiggingError `NOT_FINITE` */
export const deg = (value: number): Quantity<'deg'> => quantity(value, 'deg');
