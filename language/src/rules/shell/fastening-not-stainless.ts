import { inWords } from '../../core/finding.js';
import type { Span } from '../../core/span.js';
import type { Link } from '../../model/block.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'stainless fastenings' } as const;

export const fasteningNotStainless = defineRule({
    id: 'fastening-not-stainless',
    family: 'shell',
    title: 'Screws in the hot room are not stainless',
    severity: 'warning',
    why: 'Heat, steam and treated plates eat zinc; stains run down the lining, and a ledger may let go years later.',
    bad: 'screw zinc_screw { length 2 3/4"; material zinc }\nbench_build Rusty { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; ledger_screw zinc_screw }\nbench upper on back { build Rusty; top 37"; depth 20" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ job }) {
        const seen = new Set<string>();
        const uses: { readonly what: string; readonly link: Link<'screw'> | undefined; readonly at: Span | undefined }[] = [
            ...job.benches.flatMap(({ values: { build } }) => [
                { what: 'the ledger screw', link: build?.value.block?.values.ledger_screw?.value, at: build?.span },
                { what: 'the slat screw', link: build?.value.block?.values.slat_screw?.value, at: build?.span },
            ]),
            ...job.heaters.map(({ values: { model } }) => ({ what: 'the heater screw', link: model?.value.block?.values.fasten_screw?.value, at: model?.span })),
        ];
        for (const { what, link, at } of uses) {
            const material = link?.block?.values.material;
            if (!link || !at || !material || material.value === 'stainless' || seen.has(link.name)) continue;
            seen.add(link.name);
            yield {
                at,
                message: `${capital(what)} ${link.name} is ${material.value}; stainless is needed in a hot room (common practice, no source). Name a stainless screw.`,
                citation, measured: inWords(material.value), required: inWords('stainless'), related: [{ at: material.span, message: 'Its material stands here.' }],
            };
        }
    },
});
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
