import type { JobAnalysis } from '../analysis/analyze-job.js';
import { computedConsequence } from '../compare/consequences.js';
import { showCitation } from '../core/citation.js';
import { showBoth, showNumber, showWritable, type LengthUnit } from '../core/show.js';
import type { Length } from '../core/length.js';
import { isMetric } from '../core/show.js';
import type { Span } from '../core/span.js';
import { showAmountBoth, showFigureBoth } from '../editing/show-both.js';
import type { FactEntry } from '../facts/facts-tree.js';
import { factsWithin, namedBlocks, type FactValue, type PlacedFact } from '../model/given-facts.js';
import { showBlock, type Block } from '../model/block.js';
import type { ReviewPlace } from './review-report.js';

/** One figure with how it came about. */
export interface ReviewFigure {
    /** Path in the facts tree: `upper.ledger.top`. */
    readonly path: string;
    readonly title: string;
    readonly value: string;
    /** How it was worked out, with the figures put in; `as written` for one the job says. */
    readonly how: string;
    /** The lines that decided it. */
    readonly from: readonly ReviewPlace[];
    readonly source?: string;
    /** Whether somebody outside the drawing office acts on it: it is signed one by one. */
    readonly isToSign: boolean;
}

/** The figures of one block, those to sign first. */
export interface FigureGroup {
    readonly title: string;
    readonly figures: readonly ReviewFigure[];
    /** What else the block says, fact by fact. */
    readonly written: readonly string[];
}

/** What the job says that is measured on site or signed, by kind of block. */
const givenToSign: Readonly<Record<string, readonly string[]>> = {
    site: ['width', 'depth', 'ceiling', 'supply', 'capacity', 'doorway'], room: ['width', 'depth', 'height'], bench: ['top', 'depth'], heater: ['model', 'from', 'centre'], door: ['model', 'from', 'centre', 'hinge'],
    circuit: ['device', 'existing_device', 'existing_conductor'],
};
const computedToSign: ReadonlySet<string> = new Set(['room.inside.width', 'room.inside.depth', 'room.inside.height', 'room.inside.volume', 'room.panels', 'room.panel_mass', 'bench.ledger.top', 'bench.seats', 'bench.legs']);
/** What stands at the head of a report. A path that is not there is left out. */
const atAGlance: readonly RegExp[] = [/^room\.inside\.volume$/, /^room\.assembly_headroom$/, /^room\.panels$/, /^room\.panel_mass$/, /^[^.]+\.power$/, /^[^.]+\.device$/, /^[^.]+\.head_clearance$/];

/** Every computed fact of a job by the block it is about, with what that block says; whatever an engine publishes shows here of itself. */
export function reviewFigures({ job, results, facts }: JobAnalysis, place: (at: Span) => ReviewPlace): { readonly glance: readonly ReviewFigure[]; readonly groups: readonly FigureGroup[] } {
    const { unit } = job;
    const blocks = namedBlocks(job.block.children.filter(({ kind }) => kind !== 'variant' && kind !== 'sign_off'));
    const all = facts.under();
    const toFigure = (kind: string) => (entry: FactEntry): ReviewFigure => ({
        path: entry.path, title: capital(entry.title), value: showFigureBoth(entry.value, unit), how: entry.how ?? '', from: linesOf(entry.because, place),
        ...(entry.source && { source: `${showCitation(entry.source)}${entry.source.kind === 'standard' && entry.source.fromMemory ? ' (from memory)' : ''}` }),
        isToSign: isToSign(kind, entry.path),
    });
    const groupOf = (name: string, block: Block | undefined): FigureGroup => {
        const kind = block?.kind ?? name;
        const given = block ? factsWithin(block, name).slice(1) : [];
        const wanted = (key: string): boolean => givenToSign[kind]?.includes(key) === true;
        const signed = given.filter(([path]) => wanted(path.split('.')[1] ?? ''));
        const figures = [...givenFigures(signed, unit, place), ...all.filter(({ path }) => path.split('.')[0] === name).map(toFigure(kind))];
        return {
            title: block ? capital(showBlock(block)) : capital(name),
            figures: [...figures.filter(one => one.isToSign), ...figures.filter(one => !one.isToSign)],
            written: given.filter(([path, value]) => !wanted(path.split('.')[1] ?? '') && value.kind !== 'block').map(([path, value]) => `${spokenPath(path)} ${showFactValue(value, unit)}`),
        };
    };
    const known = new Set(blocks.map(([name]) => name));
    const others = [...new Set(all.map(({ path }) => path.split('.')[0] ?? ''))].filter(name => !known.has(name));
    const pieces = results.parts.reduce((sum, { count }) => sum + count, 0);
    const site = results.parts.reduce((sum, { cut, count }) => cut === 'site' ? sum + count : sum, 0);
    const count = (path: string, title: string, value: number, how: string): ReviewFigure => ({ path, title, value: showNumber(value), how, from: [], isToSign: true });
    const counts: FigureGroup = { title: 'Counts', written: [], figures: [count('parts', 'Kinds of part on the cut list', results.parts.length, 'marks of the cut list'), count('pieces', 'Pieces', pieces, 'every mark by its count'), count('site_cut', 'Pieces cut on site', site, 'those that are measured in place')] };
    const groups = [...[...blocks.map(([name, block]) => groupOf(name, block)), ...others.map(name => groupOf(name, undefined))].filter(({ figures, written }) => figures.length > 0 || written.length > 0), ...(results.parts.length > 0 ? [counts] : [])];
    const kinds = new Map(blocks.map(([name, block]) => [name, block.kind]));
    const room = job.room?.values;
    const outside = room?.width && room.depth && room.height ? [sizeOf('room', 'Outside, width x depth x height', [room.width.value, room.depth.value, room.height.value], unit, [room.width.fact, room.depth.fact, room.height.fact], place)] : [];
    const inside = results.inside ? [sizeOf('room.inside', 'Inside, width x depth x height', [results.inside.width, results.inside.depth, results.inside.height], unit, [], place)] : [];
    const named = atAGlance.flatMap(pattern => all.filter(({ path }) => pattern.test(path))).map(entry => { const [name = ''] = entry.path.split('.'); const figure = toFigure(kinds.get(name) ?? name)(entry); return name === 'room' ? figure : { ...figure, title: `${capital(name.replaceAll('_', ' '))}, ${entry.title}` }; });
    const tops = job.benches.flatMap(({ name, kind, values: { top } }) => top ? [{ path: `${name?.value ?? kind}.top`, title: `${capital(name?.value ?? kind)}, finished top`, value: showBoth(top.value, unit), how: 'as written', from: [place(top.fact)], isToSign: true }] : []);
    return { glance: [...outside, ...inside, ...named, ...tops], groups };
}

function isToSign(kind: string, path: string): boolean {
    const consequence = computedConsequence(kind, path);
    return consequence === 'approve' || consequence === 'order' || computedToSign.has([kind, ...path.split('.').slice(1)].join('.'));
}

const sizeOf = (path: string, title: string, lengths: readonly Length[], unit: LengthUnit, from: readonly Span[], place: (at: Span) => ReviewPlace): ReviewFigure => ({
    path, title, value: lengths.map(length => showWritable(length, unit)).join(' x '), how: '', from: linesOf(from, place), isToSign: true,
});

/** Facts as figures, the pieces of one fact together: `left, 23 7/8"`. */
function givenFigures(given: readonly PlacedFact[], unit: LengthUnit, place: (at: Span) => ReviewPlace): readonly ReviewFigure[] {
    const byFact = new Map<string, PlacedFact[]>();
    for (const fact of given) {
        const key = fact[0].split('.').slice(0, 2).join('.');
        const same = byFact.get(key);
        if (same) same.push(fact); else byFact.set(key, [fact]);
    }
    return [...byFact].map(([path, pieces]): ReviewFigure => ({
        path, title: capital(spokenPath(path)), how: 'as written', isToSign: true, from: linesOf(pieces.map(([, , at]) => at), place),
        value: pieces.map(([own, value]) => { const part = own.slice(path.length + 1); return `${part === 'width' || part === 'height' ? `${part} ` : ''}${showFactValue(value, unit, true)}`; }).join(', '),
    }));
}

/** The facts a figure hangs on, a line once. */
function linesOf(spans: readonly Span[], place: (at: Span) => ReviewPlace): readonly ReviewPlace[] {
    const places = new Map(spans.map(at => { const own = place(at); return [own.text, own] as const; }));
    return [...places.values()];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const spokenPath = (path: string): string => path.split('.').slice(1).join(' ').replaceAll('_', ' ');

/** A value the job says, in its own unit; `isBoth`: in the other system too. */
function showFactValue(value: FactValue, unit: LengthUnit, isBoth = false): string {
    switch (value.kind) {
        case 'length': return isBoth ? showBoth(value.ticks as Length, unit) : showWritable(value.ticks as Length, unit);
        case 'amount': return showAmountBoth(value.value, value.unit, isMetric(unit));
        case 'word': return value.word.replaceAll('_', ' ');
        case 'text': return value.text;
        case 'flag': return value.flag ? 'yes' : 'no';
        case 'date': return value.date;
        case 'reference': return value.name;
        case 'list': return value.items.map(item => showFactValue(item, unit, isBoth)).join(', ');
        case 'block': return '';
        default: return value satisfies never;
    }
}
