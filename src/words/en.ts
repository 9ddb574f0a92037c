/**
 * Everything the library says in sentences, in English: a result names each note by its code and the values in it,
 * and this says it. A place such as `{size}` takes the value of that name.
 *
 * A code says one thing. Where two calculations mean different things they use two codes.
 */
export const english = {
  language: 'en',
  /** The notes of results, by their code. */
  notes: {
    // cautions of every kind
    STRAIGHT_PULL: 'For a straight, even pull on sound chain: no knots, twists, side or tip loads, no shock.',
    FOLLOW_THE_MARK: "The maker's marking and instructions govern; local codes and a qualified person decide.",
    STAND_CLEAR: 'Stay clear of a loaded chain and out of its line; take up slack gently.',
    NOT_FOR_LIFTING: 'Not a rating for overhead lifting.',
    MET: 'Met.',

    // chain
    UNMARKED_CHAIN: 'No grade mark: counts as grade {grade} ({clause}).',
    UNKNOWN_MARK: 'The mark {mark} names no grade: counts as none.',
    AMBIGUOUS_MARK: 'The mark {mark} counts as grade {grade}: {note}.',
    FINISH_IS_NO_PROOF: 'A finish (usual on grade {grades}) proves no grade and counts as nothing.',
    FINISH_IGNORED: 'The finish is usual on grade {grades}; the mark governs.',
    BY_MARK: 'Marked {mark}: grade {grade}.',
    BY_WIRE: 'Wire of {nominal} when new; made in grade {grades}.',
    BY_FINISH: 'A {finish} finish is usual on grade {grade}.',
    MAYBE_WORN: 'If worn: wire of {nominal} when new; made in grade {grades}.',
    BETWEEN_BANDS: 'No new chain has this wire: an odd make, or worn. The lower size counts.',
    IN_WIDE_BAND: 'Also within 5 percent of {nominal} wire ({size}): measure again, at right angles.',
    OVERLAP: 'The reading fits two sizes: the smaller counts.',
    THIN_FOR_GRADE: 'Thinner than new {size} grade {grade}, {nominal}: worn or made thinner. Inspect it before use.',
    COUNTED: 'Counts as {size} grade {grade}.',
    COUNTED_UNMARKED: 'No grade mark: counts as {size} grade {grade} ({clause}).',
    SAME_WIRE: '{ratings} lists this wire as {size}, not {own}.',
    NOT_LISTED: '{ratings} does not list {size} grade {grade}: only a marked limit counts.',
    NO_DEFAULT_FOR_GRADE: '{ratings} does not list grade {grade}: only a marked limit counts.',
    UNMARKED_NOT_CREDITED: '{ratings} does not rate chain without a grade mark.',
    TOO_THIN: 'Wire under {least} is no size of chain.',
    MEASURE_THE_WIRE: 'Measure the wire on a straight leg away from the weld.',
    HEAVIEST_WIRE: 'No grade: the heaviest wire of the size.',
    WELD_FLASH: 'Weld flash adds 1 to 3 percent; wire thicker than listed (grades 43, 70) 4 to 8 more; no fittings.',
    STEEL_DENSITY: 'Steel of {density}.',
    STIFF_AS_MOORING_CHAIN:
      'Short-link chain is taken to be as stiff as studless mooring chain; no published figure for it was found.',
    STIFFNESS_OF_CHAIN_ALONE: 'Of the chain alone: hooks, tensioners, anchor points and the machine give way too.',
    MANUFACTURING_TEST:
      'A manufacturing test, never a limit for use: look the working load limit up, it does not follow from the wire.',
    ROUND_WIRE_ONLY: 'For new links of round wire only.',
    MEASURED_PITCH:
      'Measure the pitch over several links: the greatest inside length gives the fewest links, and a worn chain has grown.',

    // hardware
    OWN_SIZE: 'A grab hook takes a link of its own size.',
    ONE_SIZE_LARGER: 'A grab hook also takes chain one size larger.',
    ONE_SIZE_SMALLER: 'A link one size smaller is held, but sits deep in the slot.',
    CHAIN_TOO_LARGE: 'The link does not go into the slot: the chain is {steps} sizes larger than the hook.',
    CHAIN_TOO_SMALL: 'The next link may pass the slot: the chain is {steps} sizes smaller than the hook.',
    GRAB_HOOK_ON_OBJECT: 'A grab hook grips a link of chain; its point is not made to carry anything else.',
    RUNS_THROUGH: 'Chain of {chain} runs through a slip hook of its own size or larger.',
    LARGER_THAN_SLIP_HOOK: 'The chain is larger than the hook: whether it runs through is not known.',
    OPENING_DECIDES: 'Whether a slip hook goes onto an object depends on its opening.',
    WITHIN_OPENING: '{thickness} goes through the opening of {opening}.',
    OVER_OPENING: '{thickness} does not go through the opening of {opening}: it would sit on the point.',
    HOOK_OPENING: 'The opening of the hook and the thickness of the object.',
    HOOK_MARKING: "The hook maker's marking for this size of chain.",
    SOURCES_DISAGREE:
      'Sources disagree on chain one size larger: some say it does not seat. The link must seat fully (wire thinner than the slot, slot under about 2.4 times the wire); the marking of the hook governs.',
    NOT_RATED_FOR_IT: 'The hook is not rated for smaller chain: see that the next link cannot pass the slot.',
    HOOK_ADDS_NO_STRENGTH: 'A hook larger than its chain adds no strength: the weakest part governs.',
    GRADES_DIFFER: 'Hook of grade {hook} on chain of grade {chain}: the weaker governs.',
    NO_LATCH: 'Without a latch a slip hook can fall off when the chain goes slack.',

    // assembly
    PART_NOT_MARKED: 'The {capacity} marked on {kind} {part}.',
    NOT_IN_TABLE: 'The {capacity} marked on {kind} {part}: {table} has none for {size}.',
    OTHER_CAPACITY_SYSTEM: 'The {capacity} of {kind} {part}: no other capacity stands for it.',
    CONDITION_UNDETERMINED: 'Whether {kind} {part} may stay in service: its inspection does not say.',
    ANCHOR_NOT_RATED: 'The rating of anchor point {part} on the {at}: unrated is unknown, not unlimited.',
    UNMARKED_PART: 'Unmarked {kind} {part} counts as {as} ({clause}).',
    LEAST_OF_SERIES:
      'Of the devices of a tie-down and its anchor points the least counts. A marked maximum securing load stands before this one.',
    FITTINGS_RATED_AS_CHAIN:
      'Hooks and links marked with grade and size only count as such chain; a lower mark governs.',
    TAKEN_AS_SOUND: 'Parts without a stated condition are taken as inspected and sound.',

    // handling
    RATE_TAKEN_AS: '{lifts} lifts per minute count as {rate}, the next rate of the table.',
    POOR_GRIP_TAKEN: 'No grip stated: poor, the least favorable.',
    LET_GO_AT_DESTINATION: 'The load is let go at the destination: only the origin is judged.',
    BEYOND_LIFTING_METHOD: 'At the {at} the {multiplier} multiplier is zero: no load is recommended there.',
    RECOVERY_NEEDED:
      'Lifting for up to {hours} h, then light work for {times} times as long; with less of it the next longer duration counts.',
    TWO_ARE_NOT_TWICE: 'Lighten the load, split it or use a machine. Two people do not lift twice as much.',
    LOOSE_CHAIN:
      'A loose chain sags and shifts, which the method does not cover: a screening figure. Lift it in a bucket with a handle.',
    LIFTING_METHOD_LIMITS:
      'For one person lifting smoothly with both hands, standing, on firm footing, at 66 to 79 F (19 to 26 C), 8 h at most; not for carrying, pushing, one hand, kneeling or cramped places.',
    TEAM_OF_EQUAL_GRIP: 'All reach the load, see where they go and lift together.',
    TWO_RULES_OF_STOWAGE:
      'By rules for anchor chain, which differ by two: least where the chain stows itself tight, most as clear room to provide.',
    PILE_OVERFLOWS: 'Even stowed tight the chain takes more room than the box has.',
    ONLY_IF_STOWED_TIGHT: 'How tightly the chain lies: it goes in only if tighter than a loose pile.',
    BOX_NARROWER_THAN_LINK: 'Whether the links go in at all: the box is {least} across, a link up to {width} wide.',
    WIDEST_SHORT_LINK:
      'Links up to {width} wide outside, {times} times the wire, as short link chain may be. Measure them.',
    LINK_NOT_MEASURED: 'The outside width of the links: up to {width}, more than the {inside} of the pipe.',
    WIDER_THAN_PIPE: 'A link {width} wide does not go into a pipe of {inside}.',
    STRANDS_MAY_NEST:
      'Whether {strands} strands of {width} nest in {inside}: side by side in a ring they need {needed}.',
    TOO_MANY_STRANDS: 'Whether {strands} strands go in: side by side only {most} are decided here.',
    CHAIN_ONLY_STOWED: 'Of the chain alone: hooks and binders need room of their own.',
    // lifting
    LOAD_ROLLS_OVER: 'The center of gravity is not below the picks: the load rolls over before it hangs.',
    LEGS_SHARE_BY_A_HAIR:
      'Legs of one sling may differ by {allowance}, more than steel chain stretches at its limit: which legs carry is not certain, so each is given its worst case.',
    LEG_STIFFNESS_NOT_STATED:
      'The axial stiffness of every leg, without which it is not known how they share by stretch.',
    LEGS_OF_ONE_STIFFNESS: 'The legs are taken as alike in stiffness.',
    LOAD_TILTS: 'The load turns by {tilt} until it hangs at rest; the pick of leg {leg} goes down most.',
    TENSIONS_AT_REST: 'Tensions at rest: swing, snatch and wind add to them.',
    STAY_CLEAR_OF_LOAD: 'Nobody under or near a suspended load; hands clear while the legs come tight.',
    SLING_GRADE_NOT_STATED: 'The grade on the tag of the sling.',
    GRADE_BY_MARK_ALONE: 'The limit on the tag: no public standard of grade {grade} was read.',
    SCOPE_NOT_FOR_LIFTING:
      '{standard} is for purposes other than overhead lifting: chain of grade {grade} is not made for it.',
    TRADE_LIFTS_WITH_ALLOY: 'The trade lifts with alloy chain, grade 80 and up, not with grade {grade}.',
    REGULATION_FORBIDS_NO_GRADE:
      '29 CFR 1910.184 forbids no grade by name (letter of May 18, 1978); in construction 29 CFR 1926.251 was read as asking for alloy chain (letter of August 4, 2000).',
    USUAL_TEMPERATURE: 'Its temperature is not stated: taken as one at which nothing comes off.',
    HEAT_NOT_LISTED: 'What heat takes off grade {grade}: the document has no row for it.',
    TOO_HOT: '{temperature} is over {most}: not to be used, and chain that was so hot is taken out of service.',
    TOO_COLD: '{temperature} is below {least}.',
    TOO_FLAT: 'A leg leans {angle} from the vertical, over {most}: flatter than the document rates.',
    FLATTER_THAN_TAG: 'A leg leans {angle} from the vertical, over the {most} that the tag rates.',
    CHOKE_TOO_SHARP:
      'The angle of choke, {angle}, is not over {least} (a standard takes that angle itself): the maker of the sling or a qualified person says what it carries.',
    CHOKE_ANGLE_NOT_STATED: 'The angle of choke; below {least} the sling is rated otherwise.',
    LEGS_NOT_ALIKE:
      'What a sling of unlike legs carries: a qualified person says. The tension of each leg can be told (slingTensions) and held against one leg.',
    HALF_FOR_UNLIKE_LEGS: 'The legs are not alike enough: half of the limit.',
    TAKEN_AS_ALIKE: 'The test of EN 818-6 for legs nearly alike is met, from memory.',
    LEGS_TAKEN_AS_ALIKE: 'The legs are taken as alike, the load as spread evenly over them.',
    TAG_FOR_THIS_USE: 'The limit on the tag is taken as the one for this hitch and angle.',
    TABLE_BEFORE_FORMULA: 'The table prints a limit, and that stands before the formula.',
    FORMULA_NOT_ON_TAG: 'By the formula, rounded down; a sling whose tag states a limit is used by its tag.',
    QUAD_CREDITED:
      'Four legs are credited with {credited}. Some sources credit three and four legs with {cautious}, unless something makes them share alike.',
    TAG_ANGLE_NOT_STATED: 'The angle that the tag rates it at (markedAt): the legs lean.',
    HEAT_TAKEN_TWICE:
      'What heat takes off now and what earlier heat took for good are taken one after the other: our reading, the safer one.',
    HEAT_ON_PARTS: 'Heat takes {percent} percent off hooks and links as off the chain: our reading.',
    HEAT_ON_PARTS_NOT_KNOWN: 'What heat takes off the hooks and links.',
    NO_TAG_NO_USE: 'The tag governs: a sling without a legible tag may not be used.',
    NO_SHOCK: 'No shock, no kinks or knots, no shortening by bolts, nothing pulled from under a load; edges padded.',

    TAG_NOT_STATED: 'Whether the sling has a legible tag.',
    TAG_NOT_LEGIBLE: 'Without a legible tag it may not be used.',
    SLING_DAMAGED: 'The sling is stated as damaged: take it out of service.',
    SLING_CONDITION_OPEN: 'Whether the sling may stay in service: its inspection does not say.',
    INSPECT_AS_SLING:
      'An inspection by criteria for chain slings: {criteria} is not one, and a sling may be out under them all the same.',
    INSPECTED_BY_WHAT: 'The criteria that the inspection went by: give its whole result.',
    PART_NOT_FOR_LIFTING: 'Part {part}, a {kind}, is made for tie-downs, not for lifting.',
    PART_GRADE_NOT_FOR_LIFTING:
      'Part {part} is of grade {grade}: {standard} is for purposes other than overhead lifting.',
    PART_GRADE_NOT_STATED: 'The grade of part {part}.',
    DIAGONAL_MAY_CARRY_ALL:
      'Two legs in a diagonal may carry all of the load, {tension} on a leg, where the legs differ by a hair; the rating counts three as sharing. Level the load before it is lifted high.',
    KEEP_TOWED_CHAIN_OUT: 'It was used for towing or tie-down: the trade keeps such chain out of lifting.',
    HARDWARE_OF_THE_TAG: 'Hooks, links and master link are taken as those of the tagged sling, no weaker than it.',
    MACHINE_NOT_STATED: 'What lifts, and what its maker lets it lift at this height and reach.',
    MACHINE_CAPACITY_NOT_STATED:
      'What the maker of the machine lets it lift at this height and reach, attachment included.',
    MAKER_DOES_NOT_ALLOW: 'The maker of the machine does not let it lift a load that hangs.',
    MAKER_MUST_ALLOW_FORKS:
      'Whether the maker of the truck allows a load slung from its forks, in writing, with changed capacity plates (29 CFR 1910.178(a)(4), letter of October 22, 1999). An approved attachment avoids the question.',
    MAKER_DECIDES:
      'A loader, excavator or lift truck is a crane only as far as its maker says: low, slow, no side pull, a tag line on the load.',
    USED_FOR_TOWING: 'It was used for towing or tie-down: rigging used so may not lift.',
    TOWED_CHAIN_LIFTS:
      'It was used for towing or tie-down: overloads there leave no trace that is sure to be seen. Inspect it as a sling, or keep it out of lifting.',
    TOWING_NOT_STATED: 'Whether the chain was ever used for towing or tie-down.',
    PEOPLE_UNDER_LOAD: 'People are stated as not clear of the load.',
    LEG_HANGS_SLACK: 'Leg {leg} hangs slack: the others carry all of the load.',
    LEG_LIMIT_NOT_KNOWN: 'The limit of one leg by itself, plumb: the legs do not carry alike.',
    PARTS_IN_LINE: 'Parts of a leg are held against its tension, those above the legs against the whole load.',
    RIGGING_MASS_NOT_COUNTED: 'The mass of the rigging is not stated and not counted for the machine.',
    // service: inspection
    DIAMETER: 'The diameter of the wire where it is most worn, best where links bear on each other.',
    TWO_DIAMETERS: 'Two diameters at right angles at each place: the source judges their mean.',
    NOMINAL_WIRE: 'The nominal diameter of the wire; a metric size names it.',
    SIZE_NOT_STATED: 'The trade size, by which the wear table goes.',
    SIZE_NOT_IN_WEAR_TABLE:
      '{document} lists no wear for {size}, and nothing is interpolated: ask the maker of the chain.',
    SECTION_LENGTH: 'The inside length over several links.',
    LONGEST_LINK: 'The inside length of the longest link: one that is stretched is lost in a long section.',
    OUTSIDE_OF_LINK: 'The outside length of the longest link, now and when new: it grows by stretch alone.',
    PITCH_WHEN_NEW: 'The inside length of a link when new.',
    UNCERTAINTY_NOT_STATED:
      'It measures {percent} % longer. Any growth is too much here, so say how exact the measuring is, and more than that is growth.',
    UNCERTAINTY_TOO_LARGE:
      'It measures {percent} % longer, within an uncertainty of more than 0.5 % of the length: measure more exactly.',
    LONGER_THAN_NEW: 'It is {percent} % longer than new, and any growth is too much here.',
    DEPTH: 'How much: {name}.',
    TEMPERATURE: 'The hottest it ever was, or that it was never heated.',
    GRADE_FOR_HEAT: 'The class of the chain: class 4 bears more heat than class 8.',
    CLASS_4_ONLY: 'For class 4 alone; while the class is not known, the limit of class 8 stands.',
    NOT_CLASS_4: 'For chain that is not of class 4.',
    TENSIONINGS_NOT_STATED: 'How often it was tensioned since it was new.',
    NOT_LOOKED_AT: 'What a look at every link and hook found, or that it found nothing.',
    FOUND: 'Found: {defects}.',
    STRETCH_SEEN:
      'Stretch that is seen without an instrument is some {percent} % on a link (common practice): past every limit, and a sign that it was overloaded.',
    HOOK_NOT_INSPECTED: 'Its hook, measured and looked at, or that it has none.',
    NO_HOOK: 'It has no hook.',
    THROAT: 'The opening of the hook at its narrowest.',
    THROAT_WHEN_NEW: 'The opening of the hook when new.',
    TWIST: 'The twist of the hook out of its plane, or that no bend or twist is seen.',
    HOOK_SECTION: 'The thickness of the hook where it is most worn, now and when new.',
    OWNERS_POLICY: "These limits are the owner's policy: no standard sets them.",
    NO_RULE: 'These criteria are a {standing}, neither a regulation nor a standard.',
    SAYS_NOTHING_OF: '{title}: no figure for {of}. A chain that is fit here may be out under another source.',
    NOT_DERATED: 'A worn or stretched chain is in or out: it is never used at a lower rating.',
    WHERE_TO_MEASURE:
      'Measure with the chain slack and the links turned, where they bear on each other, then on the straight sides.',
    WORST_LINK:
      'One overloaded link of eleven shows an eleventh of its stretch in the section: measure the longest link too.',
    NOMINAL_PITCH:
      'A nominal pitch has a tolerance of its own, some 3 % (from memory): a length recorded when new decides better.',
    NOT_TOLD_APART:
      'Growth inside is wear and stretch together: the outside length of one link grows by stretch alone.',
    PROOF_LOADED_WHEN_NEW:
      'Every link was pulled to its proof force when made, and a straight even pull below that leaves no stretch.',
    ONCE_OVER_PROOF:
      'Stretched {percent} % beyond wear. Unless the measuring is as far off, it once carried more than {proof} times its working load limit, or was bent, heated or damaged; how much more is not known.',
    ONCE_OVERLOADED:
      'Stretched {percent} % beyond wear. Unless the measuring is as far off, it once carried more than its proof force, or was bent, heated or damaged; how much more is not known.',

    // service: history and forecast
    THREE_RECORDS: '{title}: at least three inspections that measured it, on different days; there are {records}.',
    NO_TREND: 'It does not move toward its limit.',
    TREND_NOT_CLEAR: 'The records scatter so much that no date follows with confidence: go on measuring.',
    TREND_TOO_SHORT:
      'On this line its limit lies further off than {times} times as long as the records span: go on measuring.',
    BEYOND_CALENDAR: 'Its limit lies further off than a forecast can say.',
    PAST_LIMIT: 'It is past its limit.',
    STRAIGHT_LINE:
      'Wear and stretch go on as before, along a straight line; records scatter around it independently and alike.',
    INTERVAL_OF_SCATTER:
      'The interval is that of the scatter of the records about the line: it does not know how exact the measuring was, and records that happen to lie on a line leave none.',
    LIMIT_OVERDUE:
      '{title}: on the line of the records its limit was reached on {date}. Inspect it before it is used again.',
    NEAR_LIMIT: '{title} is near its limit: {measured} of {limit}.',
    REPAIR_NOT_STATED:
      'What became of the cause for removal found on {date} ({check}): a repair, stated in a later record. Until then it stays out.',
    AVERAGE_PACE: 'It is tensioned as often as on average so far.',
    FORECAST_IS_NO_PERMISSION:
      'A forecast is no permission: one overload ends the life of a chain on any day, and each inspection decides.',
    NO_COUNT_IN_STANDARDS: 'No standard found sets a number of tensionings after which a chain is retired.',
    INTERVAL_NOT_LISTED: '{title} lists no interval for this service.',
    SERVICE_NOT_STATED: 'The class of service: {title} sets its intervals by it.',
    OPEN_IS_NOT_THOROUGH: 'An inspection that leaves something open counts as no thorough one.',
    QUALIFIED_PERSON: 'Special service: a qualified person says how often.',
    BEFORE_EACH_USE: 'Each day before use.',
    LAST_NOT_RECORDED: 'When the last inspection of this kind was: {kind}.',
    TAKEN_AS_THOROUGH: 'Inspections without a stated kind count as thorough ones.',

    // securement
    COUNTS_ANOTHER_CAPACITY: '{ids}, the capacity that counts: {said}.',
    CREDITS_ANOTHER_SHARE: '{ids}, the share of it that counts: {said}.',
    RATES_OTHERWISE: '{ids}, its rating: {said}.',
    ASKS_ANOTHER_COUNT: '{ids}, tie-downs asked: {said}.',
    BELOW_GRADE_70: 'Lower or unmarked, lawful at its rating: {tieDowns}.',
    ANCHOR_NOT_LISTED: 'The anchor points on the {at} with their ratings, as parts of kind anchor.',
    CAPACITY_NOT_STATED: 'Its {capacity}; another capacity is not converted into one.',
    STATED_AS_WHOLE: '{tieDown} is stated as a whole: {limit} holds for all of it, anchor points included.',
    NOTHING_FOR: 'Nothing is added for {name}.',
    THE_ROAD_DECIDES: 'The road that is driven decides which rules bind; none of these stands in for another.',

    // securement: rule sets that count and add up
    END_NOT_STATED: 'The end that each of {tieDowns} holds.',
    DAMAGED_PART: 'Damaged, may not be used, counts zero: {parts}.',
    NOT_BLOCKED_FORWARD: '{article} is taken as not blocked forward.',
    FRICTION_MAT_NOT_COUNTED: 'The friction mat under {article} is not counted in the aggregate.',
    RULE_TAKEN_TO_REACH_VEHICLE: 'The vehicle is not stated: checked as if the rule reached it.',
    UNIT_MASS_NOT_STATED: 'A unit has neither rating nor weight; the others alone are too light.',
    RATING_NOT_KNOWN: 'The working load limit of {tieDowns}.',
    NOT_HELD: 'It is not held as the rule asks.',
    LOCK_NOT_STATED: 'Whether a lock, pins or a tie-down hold it.',
    LOWERED_NOT_STATED: 'Whether it is completely lowered.',
    LOWERED_ONLY: 'Lowered, neither locked nor tied: whether it can drift.',
    DIRECTION_NOT_CHECKED: 'Directions are not checked: of four direct chains only two resist forward movement.',
    COUNTING_NOT_LOOKED_AT:
      'Nor are chocks, brakes, edge protection, cargo side by side, front-end structure, adjustability.',
    ONE_END_ONLY: 'Not both ends are held.',
    RATING_NOT_NEEDED: 'One is not; the others are enough.',

    // securement: rule sets by force
    LEAST_FRICTION_COUNTED: '{article}: as long as its friction is not stated, only friction that is certain counts.',
    FRICTION_NOT_STATED:
      'The friction factor of {article}, or its surfaces as the table names them: load, deck, condition.',
    SURFACE_CONDITION_NOT_STATED: 'Whether {pair} is dry or wet.',
    FRICTION_NOT_IN_TABLE:
      'A friction factor for {pair} when {condition}: the table gives none, which is not the same as dry. Measure it and state it.',
    DAMAGED_COUNTS_ZERO: 'Tie-down {tieDown} counts zero, because of damage: {parts}. Take that out of use.',
    POINTS_NOT_STATED: 'Tie-down {tieDown}: the points where each of its runs is fixed and meets the cargo.',
    PRETENSION_NOT_STATED:
      'Tie-down {tieDown}: the tension that its tensioner leaves in it. Over the load that counts, not its strength.',
    CENTER_OF_GRAVITY_NOT_ABOVE_EDGE:
      'The center of gravity of {article} lies no higher than the edge it would tip over.',
    CENTER_OF_GRAVITY_NOT_STATED: 'The center of gravity of {article} as carried, raised equipment included.',
    CONTACTS_NOT_STATED:
      'Where {article} stands on the deck, as contacts: it would tip over a side of the shape that they span.',
    UNEQUAL_STIFFNESS:
      '{article}, {heading}: its tie-downs differ in stiffness by more than 2 to 1, so the stiffest reaches its capacity before the others help.',
    CHAIN_AND_WEBBING: '{article}, {heading}: chain and webbing do not share a load; do not count them together.',

    // securement: restraint
    NO_STIFFNESS:
      'Tie-down {tieDown}: its axial stiffness, without which it is not known how the load shares. For chain see chainStiffness.',
    NO_POINTS: 'Tie-down {tieDown}: the points it runs between. Until then it counts nothing.',
    NO_PRETENSION:
      'Tie-down {tieDown}: its pretension, the only thing that counts of one that runs over. Until then it counts nothing.',
    NOTHING_IN_THE_WAY: 'Nothing is taken to stand in the way of a straight run between two points.',
    LOW_ON_THE_FRAME:
      'Fix to the frame or to points made for it, as low as practical; never to an attachment, a guard or an axle end that turns.',
    RIGID_AND_STRAIGHT:
      'The load and the deck are rigid, tie-downs run straight between their points; springs and tires settle and slacken them.',
    BALANCE_IS_NECESSARY_ONLY:
      'A balance at the limit is necessary for holding, not sufficient: it shares the load in the most favorable way.',

    // rule set au-lrg-2018
    FRICTION_FACTOR_NOT_LISTED: 'Its friction factor: the guide, as recalled, has none for {load} on {deck}.',
    FRICTION_NOT_DRY: 'Its friction factor when {condition}: the table has dry surfaces alone.',
    FRICTION_FROM_TABLE: '{load} on {deck}: {mu}, the low end of the range, clean and dry (from memory).',
    TAKEN_AS_NOT_BLOCKED:
      '{article}: nothing is said of blocking, so nothing stops it from moving forward but its tie-downs.',
    AVERAGE_PRETENSION:
      'The stated pretension is the average of both sides: {tieDowns}. On the far side of the tensioner it is less.',
    BLOCKING_NOT_LOOKED_AT: '{article}: what blocks it must hold it forward by itself; its strength was not looked at.',
    WEBBING_ON_PLANT: 'Of webbing: {tieDowns}.',
    PARTS_NOT_LISTED: 'What these are made of: {tieDowns}.',
    NOT_SECURED: '{accessory} is neither lowered nor locked.',
    POSITION_NOT_STATED: 'Whether {accessory} is lowered or locked.',
    CHAIN_FROM_MEMORY: 'Lashing capacities from the table are recalled, not read; the tag on the chain decides.',
    LRG_NOT_LOOKED_AT:
      'Not looked at: tipping, limited vertical displacement, what blocks the load, hooks that cut the capacity of a chain.',
    FRICTION_LEFT_OUT:
      'Without friction. Where it or limited vertical displacement is relied on, 0.2 of the weight upward too.',
    AFTER_FRICTION: 'After the friction of its weight, which may be relied on only while the upward force is held too.',
    BLOCKING_MUST_HOLD: 'Blocked forward: what blocks it must hold that way.',
    BLOCKED_FORWARD: 'Stopped from moving forward by what stands before it; how strong that is was not looked at.',
    FRICTION_NOT_RELIED_ON:
      'Friction is not relied on; where limited vertical displacement is, this part of the schedule binds all the same.',

    // rule set ca-nsc10-2013
    UNMARKED_TIE_DOWN: 'No mark is stated, and without one it may not be used and counts as nothing: {parts}.',
    SPECIAL_METHODS_NOT_READ:
      '{article} is stated as fastened by special methods; no exception for that was read here, so the count binds.',
    NOT_OVER_WEIGHT_LIMIT:
      '{total} is not over {limit}. Registered for more, it would be; Ontario reaches lighter commercial vehicles too.',
    OVER_THE_LIMIT_OF_MASS: 'Over {limit}; which use is commercial, and what is exempt, each province says.',
    BLOCKING_NOT_CHECKED:
      'What blocks {article} forward needs a working load limit of {required}; nothing is held against that.',
    FRICTION_MAT_NOT_MARKED:
      'The friction mat under {article} carries no mark and counts as nothing; in the United States it would count half of the weight on it.',
    LENGTH_COUNT_WERE_IT_NO_LIGHT_VEHICLE: 'Were it no light vehicle of 88(2), it would need {count} by length.',
    INTERPRETATION_OPEN:
      'Whether 89(2) accepts this in place of equipment lowered and tied down, or of a locked joint: ask the province.',
    FULL_CREDIT:
      'A tie-down fixed to the cargo or back on its own side counts in full here, and half in the United States.',

    // rule set eu-en12195-1-2010
    FRICTION_NOT_LISTED:
      'The friction of {article} on its deck as a number: Annex B does not list {load} on {deck}, only {known}.',
    SWEPT_CLEAN:
      '{article}: friction of Annex B, for surfaces swept clean and free of frost, ice, snow, grease and oil.',
    SEA_NOT_ENTERED:
      'Acceleration coefficients of the standard for sea area {area}: only those of the road are known here.',
    PRETENSION_OR_STF_NOT_STATED:
      'The pretension in tie-down {tieDown}, or the standard tension force (STF) of its tensioner: strength does not press a load down.',
    STANDARD_TAKEN_TO_REACH_VEHICLE: 'The vehicle is not stated; the plan is checked as if the standard reached it.',
    UNIT_RATING_NOT_STATED: 'A unit has no gross weight rating; the standard is for vehicles of more than {limit}.',
    SOME_UNITS_TOO_LIGHT:
      'Some units are of more than {limit} and some are not: it depends on which one carries the load.',
    VEHICLE_TOO_LIGHT:
      'Every unit is of {limit} or less: the standard is not for such vehicles, and other rules ask for more.',
    VEHICLE_COVERED: 'Every unit is of more than {limit}.',
    OVER_TOP_FLAT:
      'Where over-top tie-down {tieDown} presses down: a leg of it runs flat or upward, and clamps nothing.',
    BLOCK_NOT_STATED: 'Whether what stops {article} forward takes {force}: the lashings leave that much to it.',
    ENOUGH_WITHOUT_FRICTION: 'The friction is not known; {heading} the lashings are enough without any.',
    MORE_FRICTION_THAN_PULL:
      'Tie-down {tieDown} runs steeply or almost across: {heading} it counts more by friction than by its pull.',
    STF_BELOW_SHARE:
      'Tie-down {tieDown}: STF {stf} is less than {share} of the {lc} of its {size} chain, the least of EN 12195-3: check the tag.',
    BEYOND_THE_EDGE:
      'The center of gravity of {article} lies beyond the edge of its contacts, and no higher: it hangs over.',
    ON_THE_EDGE: '{article} stands at b / d = c / cz, neither more nor less, and no lashing holds it.',
    OVER_TOP_ON_TIRES:
      'An over-top lashing loses its tension when a machine settles on its tires, tracks or springs: no formula shows that.',
    SYMMETRICAL_LASHINGS:
      'Direct lashings are summed as if each reached its LC: the equations are for lashings that lie symmetrically and are alike.',

    // rule set imo-css-annex13-2014
    OVER_THE_TOP_NOT_COVERED:
      'What tie-down {tieDown} holds: the method is for tie-downs that end on the cargo or come back to their side, and has no figure for one that runs over to the other.',
    PAIR_NOT_LISTED:
      'The friction factor of {article}: the annex does not list {load} on {deck}. Measure it and state it.',
    SHIP_FORCE_NOT_STATED:
      "The {direction} force of the ship's motion, wind and sea on {article}, from the accelerations for its ship and stowage.",
    VERTICAL_FORCE_NOT_STATED:
      'The vertical force that goes with the longitudinal one on {article}, which takes friction off: a plan does not state it.',
    CSS_NOT_LOOKED_AT:
      'Not looked at: tipping along the ship, the strength of the deck, two tie-downs on one point. The length of the plan lies along the ship, left is port.',
    SHIP_FORCES_STATED:
      "The forces of the ship's motion are as stated: their tables by length, speed, stability and stowage are not held here.",
    ANNEX_REPLACED:
      'Annex 13 was replaced as a whole in December 2020; this is the earlier text, for comparison and old cargo securing manuals.',

    // rule set imo-ctu-2014
    CAP_ON_PAIR_NOT_LISTED:
      '{article}: {pair} is not in the table, and {cap} is the most that may count without a test. Where a listed pair that is more slippery comes near it, state that; where it was measured, state the friction.',
    BLOCKING_STRENGTH_NOT_STATED: 'The force that what blocks {article} forward can take: a plan does not state it.',
    SEA_AREA: 'By sea in area {area}, significant waves {waves}; the length of the vehicle lies along the ship.',
    CTU_NOT_LOOKED_AT:
      'Not looked at: walls and blocking (an open platform, r = 0), rail, two tie-downs on one point, the vehicle and its lashing to the ship.',
    TENSION_LEFT:
      'A tie-down over the load counts its tension in both runs; corners take some of it, and a load that settles on tires or springs takes more.',
    NO_NUMBER_ASKED:
      'No number of tie-downs is asked here: forces decide, and how many it takes depends on how they run.',

    // rule set nz-tlc-2017
    RATED_NOT_BREAKING:
      'Stated rated strengths are within the code: at most {chain} of the breaking force for chain and wire rope, {webbing} for webbing and rope.',
    HEADBOARD_NOT_STATED: 'Whether what blocks it is an adequate or a partial headboard, or none.',
    TAKEN_AS_NO_HEADBOARD: '{article}: no headboard is stated, so the multiple without one is shown.',
    PLAIN_SUM: 'A plain sum: neither angles nor directions are looked at, and friction adds nothing.',
    CONSTRUCTION_EQUIPMENT:
      'The code has a section of its own on track and wheel construction equipment, which was not read.',

    // rule set uk-dvsa-2024
    BLOCKING_NOT_RATED: 'What the headboard or whatever blocks it holds: a plan does not state it.',
    OVER_THE_LOAD:
      'What {tieDowns} over the load add: the guidance gives no figure, and friction alone is not to be relied on.',
    ANCHORAGE_SHARED: 'Fixed to one point: {tieDowns}.',
    ANCHORAGES_NOT_STATED: 'Where these are fixed on the vehicle: {tieDowns}.',
    STRAPS_AND_CHAINS: 'Some are chain and some are webbing: they stretch unequally.',
    HEAVY_PLANT_ON_LIGHT_VEHICLE:
      'Tractors and plant may not go on light goods vehicles or trailers (3500 kg or less), says a page quoting the guidance: ask.',
    UK_NOT_LOOKED_AT:
      'Not looked at: tipping, what blocks the load, whether an anchorage is one (hooks for ropes and sheets are not).',

    // rule set us-49cfr393-2024
    COMMERCE_NOT_STATED: 'Heavy enough; interstate commerce is not stated.',
    BELOW_WEIGHT_THRESHOLD: '{total} is below {limit}; state law usually asks for securement anyway.',
    NOT_INTERSTATE: 'Not interstate commerce: state law decides, often by these rules.',
    COMMERCIAL_VEHICLE: '{limit} or more, in interstate commerce.',
    NO_WORKING_LOAD_LIMIT: 'Tie-down {tieDown}: Its working load limit: no other capacity stands for it.',
    SPECIAL_METHODS: '{article} is fastened by special methods: only the count by length does not bind it.',
    LENGTH_COUNT_LARGER: 'By length {count}; whether 393.110 binds beside 393.128 is read both ways.',
    NO_FRICTION: 'Friction that is not stated counts nothing.',
    SHARED_EVENLY:
      'A sum of forces takes for granted that the tie-downs share the load; a short stiff one reaches its limit first.',
    NOT_DEEMED_TO_PERFORM: 'Not all other checks for it pass.',
    LOCK_DISPUTED: 'Locked, not lowered and tied down: guidance may accept it, the words of the rule do not.',
    MOUNTING_POINTS_NOT_STATED: 'Not both ends are held: whether the points were made for the purpose.',
    HALF_CREDIT: "A tie-down from vehicle to cargo counts half; the agency's handbook counts it in full.",

    // pulling
    ENGINE_NOT_CHECKED: 'Nothing given about the engine or the gear: whether they can push so hard is not checked.',
    LIFT_GOVERNS:
      'An axle lifts before anything else gives: this pull begins to overturn the tractor, it is not one to use. Hook lower.',
    RIGGING_NOT_COUNTED:
      'The ratings of chain, hooks and hitch are not in this: the lowest of them limits the pull too.',
    STEADY_PULL:
      'For a slow, steady pull with locked differentials or equal grip on both sides; a jerk is a multiple of it.',
    TOO_SLOW_FOR_POWER: 'Below 2 km/h the power is not counted: the limit of gear, clutch or relief stands for it.',
    PTO_POWER_AT_BEST_SLIP: 'The power is taken as PTO power, and the wheels to slip as they do at their best.',
    CHAIN_ALONG_GROUND: 'No chain angle given: the chain runs along the ground under the tractor.',
    BARK_LIMBS_MUD: 'Bark, limbs, mud and water in the wood come on top where the density does not count them.',
    OVERRUNS:
      'It may run down the slope onto the tractor: a chain cannot hold it back. Brake it, or lower it from above.',
    CATCHES_ON_A_STUMP:
      'A log that catches on a stump or rock resists as much as the tractor can pull: stop, do not pull harder.',
    LOG_CHAIN_ALONG_GROUND: 'No chain angle given: the chain is taken along the ground.',
    UNIFORM_LOG: 'The log is taken as uniform: half its weight on the ground, half on the hitch.',
    DIG_OUT_FIRST:
      'Dig out around wheels and belly to break the suction first: that takes away more than pulling harder.',
    BREAKS_FREE:
      'Once free it takes a small part of this pull and jumps toward the tractor: pull slowly, nobody between or beside.',
    PAST_BALANCE: 'Past its balance it falls by itself: hold it from the other side.',
    STILL_ROLLS:
      "From a page of low authority, for a vehicle that still rolls. Buried to the hubs or more it is 'mired', twice to six times a bog.",
    USUAL_DEFLECTION: 'No deflection ratio given: the tires give by 0.20 of their section height.',
    NORMALLY_LOADED_TIRES:
      'No size of tires given: all are taken as loaded normally for their size, as the soil class is meant.',
    TWO_TIRES_ON_AN_AXLE: 'Each axle is taken to stand on two tires alike, each with half its load.',
    LEVEL_GROUND: 'No slope given: the ground is taken as level.',
    NO_POINT_TO_PULL_ON:
      'Never pull from here ({kind}): it can turn a tractor over backward. Hitch to the drawbar or the frame.',
    NO_HOOK_BACK: 'End {end}: nothing is added for the way back to its own hook.',
    WIDE_BRIDLE: 'More than 60 deg between the legs: longer legs carry less.',
    COUNT_TWO_LEGS: 'Of three or more legs on a rigid load count two: legs never share alike.',
    NEVER_LEAN_ON_CHAIN: 'Never step on or lean on a taut chain: a light push sideways adds a very large tension.',
    SUBFRAME_UNKNOWN: "Whether the attachment's subframe is tied into the frame of the tractor: subframeTiedToFrame.",
    SUBFRAME_NOT_TIED: "The attachment's subframe is not tied into the frame of the tractor.",
    TIPS_REARWARD: 'It tips over rearward without any pull: its center of gravity is over or behind the rear axle.',
    TIPS_FORWARD: 'It tips over forward without any pull: its center of gravity is over or ahead of the front axle.',
    PULL_UNKNOWN: 'The pull.',
    TRACK_WIDTH_UNKNOWN: 'The track width of the tractor.',
    CENTER_OF_GRAVITY_HEIGHT_UNKNOWN: 'The height of its center of gravity.',
    FRONT_CARRIES_NOTHING: 'The front axle carries nothing.',
    TIPS_SIDEWAYS: 'It tips to the side, even with a frame that is rigid across its width.',
    FRONT_AXLE_PIVOTS:
      'Whether the front axle meets its stop in time: a frame rigid across its width would stand, one free to pivot tips.',
    HITCH_NOT_BELOW_AXLE:
      'Once the front is up, a hitch below the axle swings down and loses its arm; this one goes on pulling it over.',
    NO_PULL_GIVEN: 'No pull given: reactions are those without one.',
    TRACK_ENDS_AS_AXLES: 'The ends of the tracks on the ground stand for the axles.',
    NO_STEERING_RESERVE:
      'No steering reserve given: only the lifting is judged. Long before that the front wheels no longer steer.',
    LIFTS_BEFORE_SLIPPING:
      'On this ground the front lifts before the wheels slip: nothing but the throttle stops it from going over.',
    REVERSE_PULL:
      'The pull takes weight off the rear wheels: driven alone, they slip early; the front axle carries more.',
    LIFT_PULL_IS_NO_ALLOWANCE:
      'The pull that lifts an axle is a limit, not what the tractor can pull: its wheels may slip before.',
    JERK_ADDS_TO_PULL:
      'For a steady pull. A jerk can be a multiple of it and lift the front of a tractor that pulls steadily in safety.',
    OVERTURN_IS_QUICK:
      'A rear overturn passes its point of no return in under a second, too quick for anyone: roll bar up, belt on.',
    WHEELS_MUST_TURN:
      'Wheels that cannot turn, frozen, blocked or in a hole, let a low gear lift the front without any pull.',
    SHORT_LINK_WIDTH: 'The chain is taken as 3.4 times its wire wide, as short link is.',
    NO_DANGER_MARGIN: 'No margin given: the danger zone reaches as far as the chain is long, from both of its ends.',
    NO_STANDOFF: 'No standoff given: the chain is for its ends alone.',
    WRAP_TO_KEEP_HOOK:
      'Wrap from the top, down and back, so that the weight of the hook keeps it engaged; pad sharp corners.',
    TURNS_HOLD_NOTHING: 'Do not count on the friction of turns: rate the chain and its hooks for the whole pull.',
    LIMIT_UNKNOWN: 'The working load limit of the weakest part.',
    NO_THRUST_AFTER: 'No thrust given: nothing drives the machine on once the chain is tight.',
    THRUST_GOES_ON: 'No thrust given: what accelerated the machine, m · a, goes on once the chain is tight.',
    NOTHING_ELSE_GIVES: 'Machines, hooks and hitches are taken as rigid; what gives lowers the peak.',
    SCRAP_PAST_PROOF: 'Past the proof load: a chain that has seen this is scrap, whether it looks so or not.',
    DUCTILE_BOUND_IS_NO_DESIGN:
      'Do not design with the ductile bound: every link would have to stretch alike to its end, once; hooks and welds go first.',
    BELOW_BREAKING_IS_NO_PASS: 'A peak below the breaking force is no pass: what counts is the working load limit.',
    TRACTOR_CAN_OVERLOAD_RIGGING:
      'The tractor can pull up to {most}, more than the rigging may see: stop when the load does not move.',
    NO_CHAIN_OF_TABLE_DOES: '{ratings} lists no chain of known weight for {required}.',
    STOP_IF_IT_DOES_NOT_MOVE:
      'What holds a load is an estimate. If it does not move, stop: dig, lay planks, or get more help; never pull harder with a run.',
    LOAD_RUNS_BY_ITSELF: 'The load runs down by itself: a chain cannot hold it back.',
    LOAD_MAY_RUN_BY_ITSELF:
      'Whether the load runs down by itself, with up to {push}: a chain cannot hold it back. Brake it, or lower it from above.',
    STEERING_RESERVE_UNKNOWN: 'The share of the weight that the front axle is to keep for steering: steeringReserve.',
    LOAD_SIDE_UNKNOWN: 'The parts between tackle and load: atLoad. They carry the whole resistance.',
    BRIDLE_PARTS_UNKNOWN: 'The parts of a leg of the bridle: bridle.parts.',
    WIRE_UNKNOWN: 'The chain that comes tight: its wire, or size and grade of every chain of the rigging.',
    HITCH_POINT_NOT_LISTED: "The drawbar or hook of the tractor with its rating, as an anchor at the 'vehicle'.",
    LOAD_POINT_NOT_LISTED: "The point of the load that the chain holds with its rating, as an anchor at the 'cargo'.",
    CHAIN_NOT_MADE_FOR_RECOVERY:
      'Extension advice is against link chain for pulling out stuck machines: often unrated, worn, with unmatched hooks, and jolted as it comes tight. If it is used, use it as here.',
    TRACTOR_CANNOT_PULL: 'The tractor has nothing left to pull with: {outcome}.',
    NOTHING_PULLS: 'Nothing pulls on the rigging.',
    RIGGING_UNKNOWN: 'The parts from the hitch to the load.',
    LENGTH_TO_BE_CUT: 'No length of a chain at hand given: it takes {length}.',
    TAKE_UP_AT_A_CRAWL:
      'Take up slack at a crawl and raise the pull slowly: a chain is not for jerking, and never takes a running start.',

    // selection
    USUAL_FITTINGS: 'Where no fittings are named: a binder and two grab hooks, one at either end of the chain.',
    OWNED_COSTS_NOTHING: 'What is owned costs nothing, and is taken as sound.',
    CATALOG_NOT_COUNTED: 'Rows of the catalog without a count are taken as there in any number.',
    WITHOUT_TAX: 'Prices as stated: taxes and freight are not in them.',
    JOINT_NOT_CHECKED: 'Whether shackles and master links go onto the hooks and points they join is not looked at.',
    NO_KIT_MEETS: 'No kit meets this, however strong: {title} ({clause}).',
    ANCHORS_NOT_RATED: 'The rating of every point that tie-down {tieDown} is fixed to.',
    NO_CHAIN_LONG_ENOUGH: 'No chain with a rating is long enough for tie-down {tieDown}.',
    NO_FITTING: 'No {kind} with a rating goes with a chain that is long enough for tie-down {tieDown}.',
    NOTHING_GOES_TOGETHER: 'No chain for tie-down {tieDown} has all of its fittings: each goes with another size.',
    NOT_ENOUGH_PIECES: 'There are pieces for {made} of {wanted} tie-downs.',
    NOT_STRONG_ENOUGH: 'The tie-downs of {article} cannot be made strong enough together.',
    LIMIT_TOO_LOW: 'The least {what} of a kit within the other limits is more.',
    NOT_ALL_TOGETHER: 'Each requirement can be met, but not all of them by one kit.',
    KIT_NOT_PROVED: 'Whether there is a better kit was not settled: too many come close. This one passes.',
    TOO_WEAK: 'Its limit of {limit} is below {required}.',
    NOT_RATED_BY_TABLE: '{ratings} has no rating for {size} grade {grade}.',
    GRADE_NOT_USUAL: 'Grade {grade} is not what the trade uses for this ({task}): common practice, no rule.',
    GRADE_NOT_WANTED: 'Grade {grade} is not among those wanted.',
    MASS_NOT_KNOWN: 'What {size} grade {grade} weighs is not known: no table describes its links.',
    TOO_HEAVY_TO_CARRY: '{mass} without fittings is more than the {limit} that is carried.',
    HOOK_DOES_NOT_TAKE: 'The {hook} hook is not known to go with chain of {size}.',
    PRICE_NOT_STATED: 'No price is stated for {size} grade {grade}.',
    USUAL_GRADES:
      'Only grade 70 and higher, as common practice uses for this ({task}); lower grades are lawful at their rating.',
    FITTINGS_COUNT_TOO:
      'Hooks, binder, hitch and anchor points count too: the least of all parts is what the chain is good for.',
    FEWER_THAN_REQUIRED: 'The rule set asks for {count} tie-downs.',
    EQUAL_SHARES: 'Each of {count} tie-downs is taken to bear an equal share.',
    GRAB_HOOK_HOLDS_LINK: 'A grab hook of its own size at either end: it holds a link, and the chain at any length.',
    BINDER_MARKED_FOR_CHAIN:
      'A binder whose mark names chain of {size}, lever or ratchet; it has no rating but its mark.',
    GRAB_HOOK_SETS_LENGTH: 'A grab hook at the tractor: it sets the length on any link.',
    SLIP_HOOK_ON_LOAD:
      'A slip hook with a latch at the load: it goes round it and runs on its own chain, and the latch keeps it on.',
    GRAB_HOOK_KEEPS_WRAP:
      'A grab hook on a link of its own chain keeps the wrap from growing; a slip hook would let it run.',
  },
  /** Every word of a calculation sheet that is not data. */
  sheet: {
    inputs: 'Inputs',
    answer: 'Answer',
    steps: 'Steps',
    checks: 'Checks',
    requirements: 'Requirements',
    practice: 'Practice, which does not decide the verdict',
    assumptions: 'Assumptions',
    cautions: 'Cautions',
    sources: 'Sources',
    verdict: 'Verdict',
    check: 'Check',
    clause: 'Clause',
    finding: 'Finding',
    governs: '(governs)',
    with: 'with',
    unknown: 'not known',
    ofTieDown: 'Tie-down {tieDown}: {said}',
    closing:
      "This sheet is arithmetic on the figures given. The maker's marking and instructions govern; local codes and a qualified person decide.",
  },
  /** How a figure or a rule came to be known. */
  provenance: {
    read: 'read',
    memory: 'from memory, to be confirmed',
    computed: 'computed',
    derived: 'derived from other figures',
    'common practice': 'common practice, no rule',
    interpretation: 'interpretation of the rule',
  },
} as const;
