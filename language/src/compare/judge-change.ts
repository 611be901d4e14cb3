import type { ModelFinding, ModelPanel, ModelPart, ModelValue, ModelWaiver } from '../exports/model-schema.js';
import type { Change, ChangeOf, ChangeWord, Consequence, Rows, Side, What } from './change.js';
import { catalogueConsequence, computedConsequence, givenConsequence, woodConsequence } from './consequences.js';
import { sameRow } from './model-rows.js';

/**
 * One changed row with what it means. It hangs on nothing but the row on both sides, so that the change back is told the same way.
 * @param kind of the block a fact belongs to
 */
export function judgeChange<W extends What>(what: W, from: Side<Rows[W]> | undefined, to: Side<Rows[W]> | undefined, kind?: string): Change {
    const says = wordsFor(what, from, to);
    const change: ChangeOf<W> = { what, consequence: consequenceFor(what, from, to, says, kind ?? ''), says, ...(kind !== undefined && { in: kind }), ...(from && { from }), ...(to && { to }) };
    return change as Change;
}

function wordsFor<W extends What>(what: W, from: Side<Rows[W]> | undefined, to: Side<Rows[W]> | undefined): readonly ChangeWord[] {
    if (!from || !to) return [what === 'finding' ? from ? 'cured' : 'new' : from ? 'gone' : 'added'];
    switch (what) {
        case 'panel': return panelWords(from.value as ModelPanel, to.value as ModelPanel);
        case 'part': return partWords(from.value as ModelPart, to.value as ModelPart);
        case 'finding': return findingWords(from.value as ModelFinding, to.value as ModelFinding);
        case 'waiver': return waiverWords(from.value as ModelWaiver, to.value as ModelWaiver);
        case 'given': return (from.value as ModelValue).kind === 'block' && from.key !== to.key ? ['renamed'] : /\.(from|centre)\.(wall|distance)$/.test(from.key) ? ['moved'] : ['changed'];
        default: return ['changed'];
    }
}

const differs = (a: unknown, b: unknown): boolean => !sameRow(a, b);
const words = (...found: readonly (readonly [ChangeWord, boolean])[]): readonly ChangeWord[] => found.flatMap(([word, holds]) => holds ? [word] : []);

const panelWords = (a: ModelPanel, b: ModelPanel): readonly ChangeWord[] => words(
    ['resized', (['cover', 'overall', 'height', 'thickness'] as const).some(member => differs(a[member], b[member]))], ['other kind', a.kind !== b.kind], ['other mass', differs(a.massKg, b.massKg)],
    ['changed', differs(a.tongue, b.tongue) || differs(openingsIn(a), openingsIn(b))], ['moved', a.side !== b.side || differs(a.place, b.place)], ['re-marked', a.mark !== b.mark],
    ['noted otherwise', differs([a.holds, a.cutOuts], [b.holds, b.cutOuts]) && !differs(openingsIn(a), openingsIn(b))]);
/** What is cut into it, by whatever name: `door`, `part of vent`. */
const openingsIn = ({ holds, cutOuts }: ModelPanel): unknown => [holds.map(one => one.replace(/ \S+$/, '')).sort(), cutOuts.map(({ of: _of, ...cutOut }) => JSON.stringify(cutOut)).sort()];

function partWords(a: ModelPart, b: ModelPart): readonly ChangeWord[] {
    const notches = (part: ModelPart): unknown => part.notches.map(({ clears: _clears, ...notch }) => notch);
    const hasMoved = differs(standOf(a), standOf(b)) || hasShifted(a, b) || (!a.place && !b.place && a.goesTo !== b.goesTo);
    return words(
        ['resized', differs(a.length, b.length) || differs(a.section, b.section) || differs(a.allowance, b.allowance)], ['other stock', differs([a.stock, a.nominal], [b.stock, b.nominal])], ['other count', a.count !== b.count],
        ['other kind', a.part !== b.part], ['changed', differs([a.endsDegrees, notches(a), a.cut], [b.endsDegrees, notches(b), b.cut])],
        ['moved', hasMoved], ['re-marked', a.mark !== b.mark],
        ['noted otherwise', differs([a.measure, a.notches.map(({ clears }) => clears)], [b.measure, b.notches.map(({ clears }) => clears)]) || (!hasMoved && a.goesTo !== b.goesTo)]);
}

const standOf = ({ place }: ModelPart): unknown => place && { ...place, stretches: place.stretches.length };
/** A piece that is longer at one end only stays where it is. */
function hasShifted(a: ModelPart, b: ModelPart): boolean {
    const isResized = differs(a.length, b.length) || differs(a.section, b.section);
    return (a.place?.stretches ?? []).some(({ from, to }, i) => {
        const other = b.place?.stretches[i];
        const [start, end] = [from.ticks !== other?.from.ticks, to.ticks !== other?.to.ticks];
        return isResized ? start && end : start || end;
    });
}

function findingWords({ key: _a, ...a }: ModelFinding, { key: _b, ...b }: ModelFinding): readonly ChangeWord[] {
    const accepted = words(['accepted', !a.waived && b.waived !== undefined], ['no longer accepted', a.waived !== undefined && !b.waived]);
    const rest = ({ waived: _waived, severity: _severity, ...own }: typeof a): unknown => own;
    return differs(rest(a), rest(b)) || accepted.length === 0 ? ['changed', ...accepted] : accepted;
}

function waiverWords({ key: _a, ...a }: ModelWaiver, { key: _b, ...b }: ModelWaiver): readonly ChangeWord[] {
    const over = words(['expired', !a.isOver && b.isOver], ['in force again', a.isOver && !b.isOver]);
    return differs({ ...a, isOver: false }, { ...b, isOver: false }) ? ['changed', ...over] : over;
}

function consequenceFor<W extends What>(what: W, from: Side<Rows[W]> | undefined, to: Side<Rows[W]> | undefined, says: readonly ChangeWord[], kind: string): Consequence {
    const sides = [from, to].filter(side => side !== undefined);
    const gravest = (of: (side: Side<Rows[W]>) => Consequence): Consequence => {
        const found = sides.map(of);
        return (['cut', 'order', 'approve'] as const).find(one => found.includes(one)) ?? 'drawing';
    };
    const row: What = what;
    switch (row) {
        case 'panel': case 'part': return woodConsequence(says);
        case 'stock': return 'order';
        case 'rule-set': case 'finding': case 'waiver': return 'approve';
        case 'job': return sides.some(({ key }) => key === 'isWhole') ? 'approve' : 'drawing';
        case 'computed': return gravest(({ key }) => computedConsequence(kind, key));
        case 'catalogue': return gravest(({ key, value }) => catalogueConsequence(kind, key, value as ModelValue));
        case 'given': return says.includes('renamed') ? 'drawing' : gravest(({ key, value }) => givenConsequence(kind, key, value as ModelValue));
        default: return row satisfies never;
    }
}
