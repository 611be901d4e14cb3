import { amount } from '../../core/finding.js';
import { showList, showNumber } from '../../core/show.js';
import { governingCheck } from '../../engines/strength/strength-result.js';
import { defineRule } from '../rule.js';
import { cureWords, loadWords, measuredWords, memberWords, strengthCases, type StrengthCase } from './strength-findings.js';

const citation = { kind: 'standard', document: 'NDS', edition: '2018', clause: 'chapters 3, 4 and 12', text: 'Design values of lumber and fasteners with their factors.', fromMemory: true } as const;

/** As close to its capacity as the arithmetic can tell. */
const just = 1 + 1e-9;

export const benchOverloaded = defineRule({
    id: 'bench-overloaded',
    family: 'bench',
    title: 'A part of a bench carries more than it can',
    severity: 'error',
    why: 'Someone who sits or stands on a bench trusts every part of it; a slat that breaks or a ledger that tears off drops people beside a hot heater.',
    bad: 'bench upper on back { build Wide; top 37"; depth 16" }\nbench_build Wide { slat alder_1x4; slat_gap 1/4" to 3/4"; bearer alder_2x4; bearer_spacing 40"; rail alder_2x4; ledger alder_2x4; leg alder_2x4; leg_spacing 36"; ledger_screw bench_screw; ledger_screw_rows 3; ledger_screw_spacing 5" }',
    good: 'bench upper on back { build Slatted; top 37"; depth 20" }',
    sources: [citation, { kind: 'standard', document: 'ADA Standards', edition: '2010', clause: '903.6', text: '250 lbf at any point of an accessible bench.' }],
    isWaivable: true,
    fixes: 'none',
    check: function* (input) {
        const groups = new Map<string, StrengthCase[]>();
        for (const one of strengthCases(input)) {
            if (!((governingCheck(one.strength)?.utilisation ?? 0) > just)) continue;
            const key = one.build.name?.value ?? '';
            groups.set(key, [...groups.get(key) ?? [], one]);
        }
        for (const cases of groups.values()) {
            const worst = cases.reduce((a, b) => (governingCheck(b.strength)?.utilisation ?? 0) > (governingCheck(a.strength)?.utilisation ?? 0) ? b : a);
            // What breaks is said before what merely bends too far.
            const check = worst.strength.checks.find(({ action, utilisation }) => action !== 'deflection' && utilisation > just) ?? governingCheck(worst.strength);
            const at = worst.block.values.build?.span;
            if (!check || !at) continue;
            const { member } = worst.strength;
            const { is, most } = measuredWords(check);
            const same = cases.filter(one => one !== worst && one.strength.member === member).map(({ bench }) => bench);
            const others = [...new Set(cases.filter(one => one.strength.member !== member).map(one => memberWords[one.strength.member]))];
            yield {
                at,
                message: `The ${memberWords[member]} of bench ${worst.bench} ${is}; ${most} at most is allowed at ${showNumber(input.results.strength?.input.serviceC ?? 0, 0)} °C under ${loadWords(check, input)}. ` +
                    `${cureWords(input.results.strength?.cure(worst.bench, member), input)}${same.length > 0 ? ` The same in bench ${showList(same)}.` : ''}${others.length > 0 ? ` The ${showList(others)} take more than they can carry as well.` : ''}`,
                citation, measured: amount(check.utilisation, ''), required: amount(1, ''), subject: `${worst.bench}.strength.${member.replace(' ', '_')}`,
                related: [{ at: worst.build.head, message: 'The bench build stands here.' }],
                ...(check.action === 'deflection' && { severity: 'warning' as const }),
            };
        }
    },
});
