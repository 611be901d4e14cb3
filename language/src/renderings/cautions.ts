/**
 * What every document says first. Nothing in them is a measure: where people can be hurt, the papers that come with the things and the people with
 * the licence decide, and this tool says so.
 */
export const cautions: readonly string[] = [
    'Worked out from the job file alone. It is no approval of any kind: the local code and the authority that applies it decide.',
    'Heat: the manual that comes with the heater goes before everything here, above all its clearances, its guard and the rooms it is listed with.',
    'Electricity: the circuit is for a licensed electrician to confirm and connect, under a permit where one is asked for.',
    'Lifting: panels, glazed doors and heaters are heavy. Weigh one before lifting, and lift with two people or a hoist when in doubt.',
    'Fire: keep sawdust, offcuts and packing away from the heater, and have the finished room looked at before its first heating.',
    'Measure a first piece of every setting before the rest is cut; a site part is cut only after its place was measured.',
];
