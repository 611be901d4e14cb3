import type { AssembledVent } from '../../assembly/air.js';
import type { Finding, Fix } from '../../core/finding.js';
import { inches, inSquareInches, inSquareMetres, type Area, type Length } from '../../core/length.js';
import { isMetric, showNumber, spoken } from '../../core/show.js';
import type { Span } from '../../core/span.js';
import type { Vent, VentProblem, VentRole } from '../../engines/ventilation/vents.js';
import { showBlock, type Block } from '../../model/block.js';
import { strictest, type ClauseKey, type Condition, type Governing } from '../../rule-sets/index.js';
import type { RuleInput } from '../rule.js';

/** How near "near the heater" is read to be. Common practice, no source. */
export const nearHeater: Length = inches(24);

/** Every heater of the language is electric, so what a text asks of gas heaters never governs. */
const notElectric: readonly Condition[] = ['gas_heater', 'gas_heater_with_timer'];
export const governs = <K extends ClauseKey>({ ruleSets }: RuleInput, key: K): Governing<K> | undefined => strictest(ruleSets, key, { without: notElectric });

/** A place as the rule sets word it, in a sentence. */
export function placeWords(place: string): string {
    switch (place) {
        case 'near_top_of_door': return 'near the top of the door';
        case 'across_the_room_low': return 'low and across the room from the heater';
        default: return spoken(place);
    }
}

export interface VentCase<K extends VentProblem['kind']> extends AssembledVent {
    readonly problem: Extract<VentProblem, { readonly kind: K }>;
    /** With a capital: `Vent intake`. */
    readonly title: string;
}

/** Turns the problems of one kind that placing the vents found into findings. */
export function* ventFindings<K extends VentProblem['kind']>({ results }: RuleInput, kind: K, make: (found: VentCase<K>) => Finding | undefined): Generator<Finding> {
    for (const vent of results.air?.vents ?? []) {
        for (const problem of vent.problems) {
            const finding = problem.kind === kind ? make({ ...vent, problem: problem as VentCase<K>['problem'], title: ventTitle(vent.block) }) : undefined;
            if (finding) yield finding;
        }
    }
}

export const ventTitle = (block: Block<'vent'>): string => { const text = showBlock(block); return text.charAt(0).toUpperCase() + text.slice(1); };
/** What a vent is for: as stated, else by its name. */
export function roleOf({ values, name }: Block<'vent'>): VentRole | undefined {
    if (values.role) return values.role.value;
    return name?.value === 'intake' || name?.value === 'exhaust' ? name.value : undefined;
}
/** Exhausts that let something through, as assembled. */
export const exhausts = ({ results }: RuleInput): readonly AssembledVent[] =>
    (results.air?.vents ?? []).filter(({ block }) => roleOf(block) === 'exhaust' && isOpen(block));
export const isOpen = ({ values: { size, free } }: Block<'vent'>): boolean => size !== undefined && size.value.width > 0 && size.value.height > 0 && free?.value !== 0;

/** The fact that says where it stands along its wall, else its head. */
export const alongSpan = ({ values, head }: Block<'vent'>): Span => (values.from ?? values.centre ?? values.behind)?.span ?? head;
/** The fact that says how high it stands, else its head. */
export const heightSpan = ({ values, head }: Block<'vent'>): Span => (values.bottom ?? values.below_ceiling)?.span ?? head;

/** `32 in2`, or `206.5 cm2` in a job written in metric units. */
export const showArea = (area: Area, { job }: RuleInput): string =>
    isMetric(job.unit) ? `${showNumber(inSquareMetres(area) * 10_000, 1)} cm2` : `${showNumber(inSquareInches(area), 1)} in2`;
/** Gross and free area, both named when a grille makes them differ. */
export const showOpening = ({ gross, free }: Pick<Vent, 'gross' | 'free'>, input: RuleInput): string =>
    gross === free ? `${showArea(gross, input)}, all of it free` : `${showArea(gross, input)} gross, ${showArea(free, input)} free`;

/** Writes another length in the place of a fact; none when the length cannot be written exactly in the job's unit. */
export function setLength(span: Span, length: Length, title: string, { show }: RuleInput, before = ''): readonly Fix[] {
    const text = show(length);
    return text.startsWith('≈') ? [] : [{ title: `${title} ${text}`, safety: 'review', edits: [{ span, newText: `${before}${text}` }] }];
}

/** Sets the height of a vent by the fact it is written with. */
export function setLowerEdge({ values }: Block<'vent'>, lowerEdge: Length, { height, size }: { readonly height: Length; readonly size: Length }, input: RuleInput): readonly Fix[] {
    if (values.bottom) return setLength(values.bottom.span, lowerEdge, 'Set bottom to', input);
    return values.below_ceiling ? setLength(values.below_ceiling.span, (height - size - lowerEdge) as Length, 'Set below_ceiling to', input) : [];
}
