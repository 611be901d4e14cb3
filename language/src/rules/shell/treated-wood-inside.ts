import { inWords } from '../../core/finding.js';
import type { Span } from '../../core/span.js';
import type { Block, Link } from '../../model/block.js';
import { defineRule } from '../rule.js';

const citation = { kind: 'practice', text: 'no treated face is exposed to the hot room' } as const;

export const treatedWoodInside = defineRule({
    id: 'treated-wood-inside',
    family: 'shell',
    title: 'Treated wood is exposed to the hot room',
    severity: 'error',
    why: 'Wood preservatives gas out in the heat, and bathers breathe and touch them. Treated wood stays under the panels.',
    bad: 'stock dipped_slat { section 3/4" x 3 1/2"; lengths 8\'; treated treated }\nbench_build Dipped { slat dipped_slat; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 24"; rail alder_2x4; ledger alder_2x4; leg alder_2x4 }\nbench upper on back { build Dipped; top 37"; depth 20" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }',
    sources: [citation],
    isWaivable: false,
    fixes: 'none',
    *check({ job, results }) {
        const seen = new Set<string>();
        const uses: { readonly what: string; readonly link: Link<'stock' | 'material'> | undefined; readonly at: Span | undefined }[] = [
            { what: 'the lining', link: results.room?.system.values.lining?.value.of, at: job.room?.values.system?.span },
            ...job.benches.flatMap(({ values: { build } }) => {
                const made = build?.value.block?.values;
                return ([['bench slats', made?.slat], ['cross-bearers', made?.bearer], ['rails', made?.rail], ['ledgers', made?.ledger], ['legs', made?.leg], ['fascia boards', made?.fascia], ['back rests', made?.back_rest]] as const)
                    .map(([what, given]) => ({ what, link: given?.value, at: build?.span }));
            }),
        ];
        for (const { what, link, at } of uses) {
            const block = link?.block;
            if (!link || !at || block?.kind !== 'stock' || (block as Block<'stock'>).values.treated?.value !== 'treated' || seen.has(link.name)) continue;
            seen.add(link.name);
            yield {
                at,
                message: `${capital(what)} are cut from ${link.name}, which is treated; no treated face may be exposed to the hot room (common practice, no source). Name untreated stock.`.replace('The lining are', 'The lining is'),
                citation, measured: inWords('treated'), required: inWords('untreated'), subject: 'room.panels', related: [{ at: link.span, message: 'The stock is named here.' }],
            };
        }
    },
});
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
