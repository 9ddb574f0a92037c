/** Checked by `tsc`, never run: every line marked `@ts-expect-error` must be a compile error, and every other must compile. */
import { type Angle, deDin5688_1986, euEn818_2008, slingRating, slingTensions, usAlloySling_2011 } from 'chain-rigging';

const angle: Angle = { fromHorizontal: '60 deg' };

slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 80, hitch: 'double', angle });
// a chain that is not for lifting may be asked for: the verdict says so
slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 70, hitch: 'double', angle });
slingRating({ ratings: euEn818_2008, size: '10 mm', grade: '8', hitch: 'quad', angle: { included: '90 deg' } });
slingRating({ ratings: deDin5688_1986, size: '10 mm', grade: '5', hitch: 'single' });
slingRating({ ratings: usAlloySling_2011, grade: 120, hitch: 'single', markedWll: '10600 lb' });

// @ts-expect-error no alloy chain of 7/16 in the table
slingRating({ ratings: usAlloySling_2011, size: '7/16', grade: 80, hitch: 'single' });
// @ts-expect-error class 8 is European
slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: '8', hitch: 'single' });
// @ts-expect-error a sling of two legs has an angle with its kind
slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 80, hitch: 'double', angle: '60 deg' });
// @ts-expect-error no such kind of angle
slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 80, hitch: 'double', angle: { fromWall: '60 deg' } });
// @ts-expect-error no such hitch
slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 80, hitch: 'bridle', angle });
// @ts-expect-error a length is no angle
slingRating({ ratings: usAlloySling_2011, size: '3/8', grade: 80, hitch: 'double', angle: { fromVertical: '60 ft' } });
// @ts-expect-error a mass is no length
slingTensions({ load: { mass: '9 lb', centerOfGravity: ['0 ft', '0 ft', '0 lb'] }, legs: [] });
