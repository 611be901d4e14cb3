import { neighbours } from '../core/geometry.js';
import { inches, mm } from '../core/length.js';
import { isMetric, showLength, type LengthUnit } from '../core/show.js';
import { assemble } from '../assembly/assemble.js';
import type { Results } from '../assembly/results.js';
import { stockOf } from '../assembly/catalogue-values.js';
import { layOutSlats } from '../engines/benches/slats.js';
import type { Block, Given } from '../model/block.js';
import { isKind } from '../model/block.js';
import type { Job } from '../model/job.js';
import { exactText } from '../rules/fixes.js';
import { propertiesOf } from '../vocabulary/index.js';
import type { Place } from '../vocabulary/values.js';
import { jobScope } from './names-in-sight.js';
import type { Offer, SeenJob, Sight } from './offer.js';
import { scopeAt, type RawFact, type RawScope, type RawText } from './raw-facts.js';
import { headerParts } from './spot.js';

interface ValuePlace { readonly fact: RawFact; readonly key: string; readonly block: Block; readonly given: Given<unknown> | undefined; readonly job: SeenJob }

/**
 * Figures that were worked out for the value at `offset`: those that mend a finding about it or save something, depths that slats fill, positions that clear.
 * Where a value stands already they take its place.
 */
export function completeFigures(raw: RawText, offset: number, sight: Sight): Offer[] {
    const place = placeAt(raw, offset, sight);
    if (!place) return [];
    const { fact, given, key, block, job } = place;
    const inJob = job.as === undefined ? '' : `, in ${job.as}`;
    const first = fact.tokens[1];
    const last = fact.tokens.at(-1);
    const written = given && first && last ? { start: given.span.start, end: given.span.end } : undefined;
    if (written ? offset < written.start || written.end < offset : fact.tokens.length > 1) return [];
    const at = written ?? { start: offset, end: offset };
    const filter = raw.text.slice(at.start, at.end);
    if (filter.includes('\n')) return [];
    const found = new Map<string, Offer>();
    const add = (text: string, detail: string, doc: string): void => {
        if (text === filter || found.has(text)) return;
        found.set(text, { ...at, label: text, kind: 'unit', text, isSnippet: false, order: -1, detail, doc, ...(filter !== '' && { filter }) });
    };
    if (given && job.as === undefined) for (const { fixes = [], message } of job.analysis.findings) for (const { edits } of fixes) {
        const [edit] = edits;
        if (edits.length === 1 && edit && edit.span.uri === given.span.uri && edit.span.start === given.span.start && edit.span.end === given.span.end) add(edit.newText, 'worked out', message);
    }
    if (isKind(block, 'bench') && key === 'depth') for (const depth of depthsThatFill(block, job.analysis.job.unit)) {
        add(depth, 'slats fill it', 'A number of slats fills this depth with equal gaps within the limits of the bench build.');
    }
    if (isKind(block, 'heater') && key === 'from') for (const { text, doc } of clearPositions(block, job)) add(text, `clears everything${inJob}`, doc);
    return [...found.values()];
}

function placeAt(raw: RawText, offset: number, sight: Sight): ValuePlace | undefined {
    const scope = scopeAt(raw.file, offset);
    const fact = scope.facts.find(one => one.start <= offset && offset <= one.end);
    const known = fact?.key && !fact.body && offset > fact.key.startOffset + fact.key.image.length ? propertiesOf(scope.kind).get(fact.key.image) : undefined;
    const job = jobScope(scope) && known ? sight.job?.(offset) : undefined;
    if (!fact || !known || !job) return undefined;
    const block = job.analysis.job.block.children.find(({ kind, name, span }) => kind === scope.kind && (name ? name.value === nameOf(raw, scope) : span.start === scope.header?.start));
    const given = (block?.values as Readonly<Record<string, Given<unknown>>> | undefined)?.[known.key];
    return block && { fact, key: known.key, block, given: given && given.span.uri === job.analysis.job.block.span.uri && fact.start <= given.span.start && given.span.end <= fact.end ? given : undefined, job };
}
const nameOf = (raw: RawText, scope: RawScope): string | undefined => scope.header && headerParts(raw, scope.header).name?.image;

const fewest = 6;
/** Depths near the usual ones (or near the one written) that slats of the bench's build fill. */
function depthsThatFill({ values }: Block<'bench'>, unit: LengthUnit): readonly string[] {
    const build = values.build?.value.block;
    const width = stockOf(build?.values.slat?.value)?.section.width;
    const limits = build?.values.slat_gap?.value;
    if (!width || !limits) return [];
    const near = values.depth?.value ?? inches(20);
    const all = isMetric(unit) ? Array.from({ length: 70 }, (_, i) => mm(10 * (20 + i))) : Array.from({ length: 28 }, (_, i) => inches(8 + i));
    return all.filter(depth => layOutSlats(depth, width, limits) !== undefined).sort((a, b) => Math.abs(a - near) - Math.abs(b - near) || a - b).slice(0, fewest).flatMap(depth => exactText(depth, unit) ?? []);
}

/** Ranges of a heater without a place, from either neighbouring wall: it is put there to see. */
function rangesOfUnplaced(block: Block<'heater'>, job: Job): readonly HeaterRange[] {
    const [wall] = block.walls;
    if (!wall || block.values.from || block.values.centre) return [];
    return [neighbours[wall.value].left, neighbours[wall.value].right].flatMap(side => {
        const from: Given<Place> = { value: { wall: side, distance: inches(0) }, span: block.head, fact: block.head };
        const placed: Block<'heater'> = { ...block, values: { ...block.values, from } };
        return assemble({ ...job, heaters: job.heaters.map(one => one === block ? placed : one) }, []).heaters.find(heater => heater.block === placed)?.range ?? [];
    });
}
type HeaterRange = NonNullable<Results['heaters'][number]['range']>;

/** Ends of the stretches along the wall where the heater keeps every clearance a move can keep, nearest to where it is first. */
function clearPositions(block: Block<'heater'>, { analysis: { results, job } }: SeenJob): readonly { readonly text: string; readonly doc: string }[] {
    const known = results.heaters.find(heater => heater.block === block)?.range;
    return (known ? [known] : rangesOfUnplaced(block, job)).flatMap(range => positionsIn(range, job.unit));
}
function positionsIn(range: HeaterRange, unit: LengthUnit): readonly { readonly text: string; readonly doc: string }[] {
    const stretches = range.ranges.map(({ from, to }) => `${showLength(from, unit)} to ${showLength(to, unit)}`).join(', or ');
    const doc = `From the ${range.from} wall, ${stretches} keeps the clearances of the heater's manual that a move can keep. The manual decides.`;
    const places = [...(range.nearest === undefined ? [] : [range.nearest]), ...range.ranges.flatMap(({ from, to }) => [from, to])];
    return places.flatMap(place => { const text = exactText(place, unit); return text === undefined ? [] : [{ text: `${range.from} ${text}`, doc }]; });
}
