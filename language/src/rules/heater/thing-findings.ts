import { spoken } from '../../core/show.js';
import { overlap } from '../../core/geometry.js';
import type { Finding, Fix, Related } from '../../core/finding.js';
import { lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import type { Span } from '../../core/span.js';
import type { Thing } from '../../engines/fittings/things.js';
import type { Clearance } from '../../engines/heater/clearances.js';
import type { JudgedHeater } from '../../assembly/heater-judgement.js';
import type { Block } from '../../model/block.js';
import { belongsToBench, benchesAstray } from '../astray.js';
import { showRequired } from '../governing.js';
import type { RuleInput } from '../rule.js';
import { moveToClear, placeSpan, showPositions } from './heater-findings.js';

/** How a sentence names a thing: `the front wall`, `bench lower`, `the sensor`. */
export function thingWords({ kind, name }: Pick<Thing, 'kind' | 'name'>): string {
    if (kind === 'wall') return `the ${name} wall`;
    const word = kind === 'other' ? 'fitting' : spoken(kind);
    return spoken(name).includes(word) ? `the ${spoken(name)}` : `${word} ${name}`;
}
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const isSurface = ({ kind }: Thing): boolean => kind === 'wall' || kind === 'ceiling' || kind === 'floor';

/** The block a thing was made from; a leaf, a trim and a rest belong to their door, window and bench. */
export function blockOfThing({ results }: RuleInput, thing: Thing): Block | undefined {
    const belongs = ({ name }: { readonly name: string }): boolean => thing.name === name || thing.name.startsWith(`${name} `);
    const named: readonly { readonly name: string; readonly block: Block }[] = [
        ...results.fittings, ...results.doors, ...results.windows, ...(results.air?.vents ?? []),
        ...[...(results.benches?.blocks ?? [])].map(([name, block]) => ({ name, block })), ...results.heaters,
    ];
    return named.find(belongs)?.block;
}

/** Where a finding about a heater and a thing stands: a fitting is moved before a heater is, everything else stays and the heater moves. With the other one as related. */
export function placeOfBoth(input: RuleInput, judged: JudgedHeater, thing: Thing): { readonly at: Span; readonly related: readonly Related[] } {
    const fitting = input.results.fittings.find(({ thing: fixed }) => fixed === thing)?.block;
    if (fitting) return { at: placeSpan(fitting), related: [{ at: judged.block.head, message: `Heater ${judged.name} stands here.` }] };
    const block = blockOfThing(input, thing);
    return { at: placeSpan(judged.block), related: block ? [{ at: block.head, message: `${capital(thingWords(thing))} stands here.` }] : [] };
}

/** What to do about a heater and a thing that come too near each other. */
export function cureOf(input: RuleInput, judged: JudgedHeater, thing: Thing): string {
    const isFitting = input.results.fittings.some(({ thing: fixed }) => fixed === thing);
    const { range, heater } = judged;
    if (!range || !heater) return '';
    if (range.never.includes(thing) && thing.kind === 'wall') return 'No position of the heater along its wall clears it; choose another wall, or a larger room.';
    if (range.never.includes(thing)) return `No position of the heater along this wall clears it; move ${thingWords(thing)}${isFitting ? '' : ' or choose another wall'}.`;
    if (!isFitting) return showPositions(judged, input);
    return range.ranges.length === 0 ? `Move ${thingWords(thing)}; no position of the heater along the ${heater.wall} wall clears everything.` : `Move ${thingWords(thing)}, or the heater. ${showPositions(judged, input)}`;
}

/** Clearances that are too small, the tightest of each thing. What another rule explains better, or what lies flush in a wall that is too near itself, is left out; so is a
 * bench that stands out of place, and beside a bench that stands in the heater every other. */
export function shortClearances(input: RuleInput, judged: JudgedHeater): readonly Clearance[] {
    const has = (kind: JudgedHeater['problems'][number]['kind']): boolean => judged.problems.some(problem => problem.kind === kind);
    if (has('runs-off-the-wall')) return [];
    const astray = benchesAstray(input);
    const isBenchInHeater = judged.clearances.some(({ collides, thing }) => collides && isBenchLike(thing));
    const short = judged.clearances.filter(({ status, thing, collides }) => status === 'short' && !belongsToBench(thing, astray) && !(isBenchInHeater && !collides && isBenchLike(thing)) && !(has('above-the-ceiling') && thing.kind === 'ceiling') && !judged.duckboardsUnderStones.includes(thing));
    const seen = new Set<string>();
    return short.filter(one => !short.some(other => other !== one && isSurface(other.thing) && !isSurface(one.thing) && other.direction === one.direction && other.measured <= one.measured && overlap(other.thing.box, one.thing.box)))
        .sort((a, b) => a.measured - b.measured)
        .filter(({ thing }) => { const key = `${thing.kind} ${thing.name}`; const isNew = !seen.has(key); seen.add(key); return isNew; });
}

/** Moving the heater, where that clears the thing. */
export const movesThatClear = (input: RuleInput, judged: JudgedHeater, thing: Thing): readonly Fix[] => judged.range?.never.includes(thing) ? [] : moveToClear(judged, input);

const directionWords = { side: 'beside', front: 'before', above: 'above', below: 'below', behind: 'behind' } as const satisfies Readonly<Record<Clearance['direction'], string>>;

/** One clearance that is too small, found at the place of the heater, with the positions that cure it. */
export function clearanceFinding(input: RuleInput, judged: JudgedHeater, { thing, direction, measured, required }: Clearance): Finding | undefined {
    if (!required) return undefined;
    const { name } = judged;
    return {
        ...placeOfBoth(input, judged, thing),
        message: `${capital(thingWords(thing))} is ${input.show(measured)} ${directionWords[direction]} heater ${name}; ${showRequired(required.value, input.job.unit)} is needed (${showCitation(required.citation)}). ${cureOf(input, judged, thing)}`.trimEnd(),
        citation: required.citation, measured: lengthFigure(measured), required: lengthFigure(required.value), subject: `${name}.clearance.${direction}`,
        fixes: movesThatClear(input, judged, thing),
    };
}

/** The sweep of a leaf that opens inward; what it hits is told of the door. */
export const isLeaf = ({ kind, name }: Thing): boolean => kind === 'door' && name.endsWith(' leaf');
export const isBenchLike = ({ kind }: Thing): boolean => kind === 'bench' || kind === 'rest';
