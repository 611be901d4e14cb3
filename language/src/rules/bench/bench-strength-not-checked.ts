import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import type { Span } from '../../core/span.js';
import { memberStock } from '../../assembly/strength.js';
import type { Block } from '../../model/block.js';
import { defineRule, type RuleInput } from '../rule.js';
import { memberWords, strengthCases, type StrengthCase } from './strength-findings.js';

const citation = { kind: 'catalogue', text: 'the design values its catalogue states' } as const;

/** Facts of a timber by what a check lacks. */
const facts: Readonly<Record<string, string>> = { bending: 'bending', shear: 'shear', elasticity: 'elasticity', compression_parallel: 'compression_parallel', compression_perpendicular: 'compression_perpendicular' };

interface Gap { readonly entry: Block; readonly says: string }

export const benchStrengthNotChecked = defineRule({
    id: 'bench-strength-not-checked',
    family: 'bench',
    title: 'The strength of a bench is not checked, as its catalogue states no design values',
    severity: 'info',
    why: 'No strength is ever guessed: what the catalogue does not state is missing, and the part it is missing for has to be checked by someone else.',
    bad: 'stock plain_2x4 { section 1 1/2" x 3 1/2"; lengths 8\' }\nbench upper on back { build Plain; top 37"; depth 20" }\nbench_build Plain { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 20"; rail plain_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 36"; ledger_screw bench_screw; ledger_screw_rows 3; ledger_screw_spacing 5" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: function* (input) {
        const gaps = new Map<string, { readonly gap: Gap; readonly at: Span; readonly parts: Set<string>; readonly benches: Set<string> }>();
        for (const one of strengthCases(input)) {
            const at = one.block.values.build?.span;
            if (!at) continue;
            for (const gap of gapsOf(one, input)) {
                const key = `${gap.entry.kind} ${gap.entry.name?.value ?? ''} ${gap.says}`;
                const known = gaps.get(key) ?? { gap, at, parts: new Set(), benches: new Set() };
                gaps.set(key, known);
                known.parts.add(memberWords[one.strength.member]);
                known.benches.add(one.bench);
            }
        }
        for (const { gap: { entry, says }, at, parts, benches } of gaps.values()) {
            yield {
                at, citation,
                message: `The strength of the ${showList([...parts])} of bench ${showList([...benches])} is not checked: ${says}. State what a published table gives, or have it checked by someone who may.`,
                measured: inWords('no design values'), required: inWords('design values a published table gives'), subject: [...benches][0] ?? '', related: [{ at: entry.head, message: 'The catalogue entry stands here.' }],
            };
        }
    },
});

/** The catalogue entries a member's checks lack something in; what is being typed is not called missing. */
function gapsOf({ build, strength: { member, lacks } }: StrengthCase, { results: { room } }: RuleInput): readonly Gap[] {
    if (lacks.length === 0) return [];
    if (member === 'ledger screw') {
        const screw = build.values.ledger_screw?.value.block;
        const [frame, ledger] = [room?.system.values.frame?.value.block, build.values.ledger?.value.block];
        return lacks.flatMap(lack => {
            switch (lack) {
                case 'screw': return missing(build, 'ledger_screw', 'names no screw of the ledger');
                case 'diameter': return screw ? missing(screw, 'root_diameter', 'states neither the diameter at its root nor a gauge that tells it') : [];
                case 'penetration of six diameters': return screw ? [{ entry: screw, says: `screw ${screw.name?.value ?? ''} reaches less than six diameters into the frame, for which nothing is published` }] : [];
                case 'gravity of the wall frame': return frame ? timberGap(frame, ['specific_gravity']) : room ? missing(room.system, 'frame', 'names no frame the screws are driven into') : [];
                default: return ledger ? timberGap(ledger, ['specific_gravity']) : [];
            }
        });
    }
    const stock = build.values[memberStock[member]]?.value.block;
    return stock ? timberGap(stock, lacks) : [];
}

function timberGap(stock: Block<'stock'>, lacks: readonly string[]): readonly Gap[] {
    const link = stock.values.timber?.value;
    if (!link) return missing(stock, 'timber', 'names no timber with design values');
    const timber = link.block;
    const absent = lacks.map(lack => facts[lack] ?? lack).filter(key => timber && !timber.written.has(key));
    return timber && absent.length > 0 ? [{ entry: timber, says: `timber ${link.name} states no ${showList(absent.map(key => key.replaceAll('_', ' ')))}` }] : [];
}

const missing = (entry: Block, key: string, says: string): readonly Gap[] =>
    entry.written.has(key) || !entry.isWhole ? [] : [{ entry, says: `${entry.kind.replaceAll('_', ' ')} ${entry.name?.value ?? ''} ${says}` }];
