import { inWords, type Finding, type Fix } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import type { Length } from '../../core/length.js';
import type { AssembledVent } from '../../assembly/air.js';
import { imc } from '../../rule-sets/documents.js';
import type { Size } from '../../vocabulary/values.js';
import { defineRule } from '../rule.js';
import { exhausts, governs, showArea, showOpening, ventTitle } from './air-findings.js';

export const openingTooSmall = defineRule({
    id: 'opening-too-small',
    family: 'air',
    title: 'The ventilation opening is smaller than the rules ask for',
    severity: 'error',
    why: 'The published text gives the opening by its two sides, so a long slot of the same area does not do.',
    bad: 'rules us_commercial\nvent exhaust on front { size 6" x 4"; from left 8"; below_ceiling 3"; air room }',
    good: 'rules us_commercial\nvent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [imc('914.5', 'A ventilation opening of at least 4 in by 8 in.')],
    isWaivable: true,
    fixes: 'review',
    *check(input): Generator<Finding> {
        const required = governs(input, 'vent.opening-size');
        if (!required) return;
        const { shorter, longer } = required.figure;
        const all = exhausts(input);
        const inPlace = all.filter(({ exhaust }) => exhaust?.nearTopOfDoor.isMet);
        const isNearDoor = governs(input, 'vent.opening-place')?.figure.value === 'near_top_of_door';
        const judged = isNearDoor && inPlace.length > 0 ? inPlace : all;
        const sizes = judged.flatMap(vent => vent.block.values.size ? [{ vent, size: vent.block.values.size }] : []);
        if (sizes.some(({ size: { value } }) => Math.min(value.width, value.height) >= shorter && Math.max(value.width, value.height) >= longer)) return;
        const largest = [...sizes].sort((a, b) => areaOf(b.size.value) > areaOf(a.size.value) ? 1 : areaOf(b.size.value) < areaOf(a.size.value) ? -1 : 0)[0];
        if (!largest) return;
        const { vent, size } = largest;
        const cure = enlarged(size.value, shorter, longer);
        // Exactly, because a rounded figure in metric units would pass an opening that is too small.
        const least = `${input.show(shorter)} x ${input.show(longer)}`;
        const areaRequired = governs(input, 'vent.opening-area');
        const text = `${input.show(cure.width)} x ${input.show(cure.height)}`;
        const fixes: readonly Fix[] = text.includes('≈') ? [] : [{ title: `Make it ${text}`, safety: 'review', edits: [{ span: size.span, newText: text }] }];
        yield {
            at: size.span,
            message: `${ventTitle(vent.block)} is ${input.show(size.value.width)} x ${input.show(size.value.height)}${areas(vent, input)}; ${least} or more is needed${areaRequired ? `, ${showArea(areaRequired.figure.value, input)} gross` : ''} (${showCitation(required.clause.citation)}). Make it ${text} or larger.`,
            citation: required.clause.citation, measured: inWords(`${input.show(size.value.width)} x ${input.show(size.value.height)}`), required: inWords(least),
            subject: `${vent.name}.gross_area`, fixes,
        };
    },
});

const areaOf = ({ width, height }: Size): bigint => BigInt(width) * BigInt(height);
const areas = ({ vent }: AssembledVent, input: Parameters<typeof showOpening>[1]): string => vent ? ` (${showOpening(vent, input)})` : '';
/** The least growth of both sides that reaches the figure, the longer side staying the longer one. */
function enlarged({ width, height }: Size, shorter: Length, longer: Length): Size {
    const atLeast = (side: Length, least: Length): Length => Math.max(side, least) as Length;
    return width >= height ? { width: atLeast(width, longer), height: atLeast(height, shorter) } : { width: atLeast(width, shorter), height: atLeast(height, longer) };
}
