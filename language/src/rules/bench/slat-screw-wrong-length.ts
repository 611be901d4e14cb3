import { lengthFigure } from '../../core/finding.js';
import { plus, zero } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { buildOf, placedBenches } from './bench-findings.js';

const build = (screw: string): string => `bench_build Screwed { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; slat_screw ${screw} }
bench upper on back { build Screwed; top 37"; depth 20" }`;
const citation = { kind: 'geometry', text: 'a screw from below ends in the slat' } as const;

export const slatScrewWrongLength = defineRule({
    id: 'slat-screw-wrong-length',
    family: 'bench',
    title: 'The slat screw misses the slat or comes out of the seat',
    severity: 'error',
    why: 'Slats are screwed from below so that no metal is touched; hot metal in the seat burns, and a screw that ends in the bearer holds nothing.',
    bad: `screw long_screw { length 2 1/2" }\n${build('long_screw')}`,
    good: `screw right_screw { length 2" }\n${build('right_screw')}`,
    sources: [citation, { kind: 'practice', text: 'no metal where skin touches' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { show } = input;
        const said = new Set<string>();
        for (const { layout, block, name } of placedBenches(input)) {
            const made = buildOf(block)?.values;
            const screw = made?.slat_screw?.value;
            const slat = input.results.benches?.input.benches.find(bench => bench.name === name)?.build.slat.section.thickness;
            const joint = layout.fastenings.find(fastening => fastening.joint === 'slat to bearer');
            const build = block.values.build;
            if (!screw || slat === undefined || !joint || joint.screwLength === undefined || !build || said.has(build.value.name)) continue;
            said.add(build.value.name);
            // What the screw itself wants in the slat; without it, anything more than the bearer.
            const bite = screw.block?.values.penetration?.value;
            const [least, most] = [plus(joint.sideMember, bite ?? zero), plus(joint.sideMember, slat)];
            const length = joint.screwLength;
            if ((bite === undefined ? length > least : length >= least) && length <= most) continue;
            yield {
                at: build.span,
                message: `Screw ${screw.name} in the slats of bench ${name} is ${show(length)} long and ${length > most ? 'comes out of the seat' : bite === undefined ? 'ends in the bearer' : 'bites too little into the slat'}; ` +
                    `${bite === undefined ? `more than ${show(least)} of bearer` : `${show(least)}, bearer and ${show(bite)} of slat,`} and ${show(most)} at most, where the slat ends, is needed. Name another screw in the bench build.`,
                citation, measured: lengthFigure(length), required: lengthFigure(length > most ? most : least), subject: name,
                related: screw.block ? [{ at: screw.block.head, message: 'The screw stands here.' }] : [],
            };
        }
    },
});
