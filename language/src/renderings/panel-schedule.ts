import { contains, intervalsOverlap, neighbours, walls, type Wall } from '../core/geometry.js';
import { minus, type Length } from '../core/length.js';
import { showList } from '../core/show.js';
import type { Span } from '../core/span.js';
import type { ShellPanel } from '../engines/shell/shell-result.js';
import { toCsv, type CsvField } from './csv.js';
import { traceFields, traceHeader, type JobTrace } from './job-trace.js';
import { panelCutOuts, showCutOut, type PanelCutOut } from './panel-cut-outs.js';
import type { RenderedJob } from './rendered-job.js';
import { scaleOf, showCount, showCut, type Scale } from './show-figures.js';
import { csvMm } from './stock-plan-tables.js';
import { cell, footerLines, type Table, type TableColumn } from './tables-document.js';

/** One panel or section as the shop builds it, with the place it stands in. */
export interface ScheduledPanel {
    readonly panel: ShellPanel;
    readonly side: Wall | 'ceiling';
    /** What its place is measured from: the end its number counts from, lining or outside as the run begins there. */
    readonly from: { readonly wall: Wall; readonly face: 'lining' | 'outside' };
    /** From there to its near edge, in cover widths. */
    readonly distance: Length;
    /** Edge that carries the tongue: of a wall panel as seen from inside, of a ceiling panel the side of the room it lies to. Absent on the panel a chain begins with. */
    readonly tongue?: 'left' | 'right' | 'back';
    /** `door entry`, `vent intake`. */
    readonly holds: readonly string[];
    /** The holes those make in it. */
    readonly cutOuts: readonly PanelCutOut[];
    readonly at?: Span;
}

/** What the tables of the schedule read of a job. */
type PanelsOf = Pick<RenderedJob, 'job' | 'results' | 'settings'>;

/** Every panel of walls and ceiling, in plan order and then by number. A side that does not close has none. */
export function panelSchedule({ job, results }: Pick<RenderedJob, 'job' | 'results'>): readonly ScheduledPanel[] {
    if (!results.shell) return [];
    const { input, result: shell } = results.shell;
    const room = job.room?.head;
    const openings = [
        ...results.doors.map(({ name, block }) => ({ title: `door ${name}`, name, at: block.head })),
        ...results.windows.map(({ name, block }) => ({ title: `window ${name}`, name, at: block.head })),
    ];
    const onWalls = walls.flatMap(side => {
        const { run, runsThrough, panels } = shell.walls[side];
        return panels.map((panel): ScheduledPanel => {
            const own = openings.find(({ name }) => name === panel.opening);
            const vents = (results.air?.vents ?? []).flatMap(({ name, vent }) => vent?.wall === side && intervalsOverlap(vent.onWall.u, panel.at)
                ? [`${contains(panel.at, vent.onWall.u) ? '' : 'part of '}vent ${name}`] : []);
            const [edge] = panel.tongueEdges;
            const at = own?.at ?? room;
            return {
                panel, side, from: { wall: neighbours[side].left, face: runsThrough.left ? 'outside' : 'lining' }, distance: minus(panel.at.from, run.from),
                holds: [...(own ? [own.title] : []), ...vents], cutOuts: panelCutOuts({ results }, side, panel, input.system.plate.section.thickness), ...(edge && { tongue: edge }), ...(at && { at }),
            };
        });
    });
    const { ceiling } = shell;
    const overhead = !ceiling ? [] : ceiling.panels.map((panel): ScheduledPanel => {
        const isFromLeft = ceiling.acrossAxis === 'x';
        return {
            panel, side: 'ceiling', from: { wall: isFromLeft ? 'left' : 'back', face: 'outside' }, distance: isFromLeft ? panel.at.from : minus(input.depth, panel.at.to), holds: [], cutOuts: [],
            ...(panel.tongueEdges.length > 0 && { tongue: isFromLeft ? 'left' : 'back' }), ...(room && { at: room }),
        };
    });
    return [...onWalls, ...overhead];
}

export const panelKinds = { module: 'module', made_to_measure: 'made to measure', door_section: 'door section', window_section: 'window section' } as const satisfies Record<ShellPanel['kind'], string>;

/** `near edge 24" from the outside of the right wall`. */
export const showPanelPlace = (scheduled: Pick<ScheduledPanel, 'from' | 'distance'>, unit: Scale): string => `near edge ${showCut(scheduled.distance, unit)} from the ${showFrom(scheduled)}`;
const showCutOuts = (cutOuts: readonly PanelCutOut[], unit: Scale): string => cutOuts.map(one => showCutOut(one, unit)).join('; ');
const showFrom = ({ from }: Pick<ScheduledPanel, 'from'>): string => from.face === 'outside' ? `outside of the ${from.wall} wall` : `lining of the ${from.wall} wall`;

const columns: readonly TableColumn[] = [
    { id: 'panel', label: 'Panel', align: 'start' },
    { id: 'wall', label: 'Wall', align: 'start' },
    { id: 'place', label: 'Near edge', align: 'end' },
    { id: 'from', label: 'Measured from', align: 'start' },
    { id: 'kind', label: 'Kind', align: 'start' },
    { id: 'cover', label: 'Cover', align: 'end' },
    { id: 'overall', label: 'Overall', align: 'end' },
    { id: 'height', label: 'Height', align: 'end' },
    { id: 'thickness', label: 'Thick', align: 'end' },
    { id: 'tongue', label: 'Tongue', align: 'start' },
    { id: 'holds', label: 'Holds', align: 'start' },
    { id: 'cut-outs', label: 'Cut-outs', align: 'start', isProse: true },
];

/** The panels as one table; nothing when no side of the room closes. */
export function panelTables(analysis: PanelsOf): readonly Table[] {
    const panels = panelSchedule(analysis);
    const unit = scaleOf(analysis);
    if (panels.length === 0) return [];
    const thicknesses = new Set(panels.map(({ panel }) => panel.thickness));
    const isShown = ({ id }: TableColumn): boolean => id === 'thickness' ? thicknesses.size > 1 : id !== 'cut-outs' || panels.some(({ cutOuts }) => cutOuts.length > 0);
    const shown = columns.filter(isShown);
    const rows = panels.map(scheduled => {
        const { panel, side, tongue, holds, cutOuts, at, distance, from } = scheduled;
        const figure = (length: Length) => cell(showCut(length, unit), length);
        return {
            cells: [
                cell(panel.mark), cell(side), figure(distance), cell(`${from.face} ${from.wall}`), cell(panelKinds[panel.kind]), figure(panel.cover), figure(panel.overall),
                figure(panel.height), figure(panel.thickness), cell(tongue ?? 'none'), cell(holds.join(', ')), cell(showCutOuts(cutOuts, unit)),
            ].filter((_, index) => { const column = columns[index]; return column !== undefined && isShown(column); }),
            ...(at && { at }),
        };
    });
    return [{ id: 'panel-schedule', caption: 'Panel schedule', columns: shown, rows, footer: footerLines(footer(analysis, panels, thicknesses), shown) }];
}

function footer({ job, results, settings }: PanelsOf, panels: readonly ScheduledPanel[], thicknesses: ReadonlySet<Length>): string[] {
    const [thickness] = thicknesses;
    const shell = results.shell?.result;
    const counts = (Object.keys(panelKinds) as ShellPanel['kind'][]).flatMap(kind => {
        const count = panels.filter(({ panel }) => panel.kind === kind).length;
        if (count === 0) return [];
        return [kind === 'made_to_measure' ? `${count} ${panelKinds[kind]}` : showCount(count, panelKinds[kind])];
    });
    const open = [...walls.filter(wall => shell?.walls[wall].panels.length === 0).map(wall => `${wall} wall`), ...(shell && !panels.some(({ side }) => side === 'ceiling') ? ['ceiling'] : [])];
    return [
        `${showCount(panels.length, 'panel')}: ${showList(counts)}.${thickness !== undefined && thicknesses.size === 1 ? ` All are ${showCut(thickness, scaleOf({ job, ...(settings && { settings }) }))} thick.` : ''}`,
        'The near edge is measured from the outside or from the lining of the wall named, where the panels of that side begin.',
        'Cover is the width a panel takes of its side; overall adds the tongue. The tongue is on the left or right edge as seen from inside; on a ceiling panel, on the edge toward that side of the room. The height of a ceiling panel is its length along the span.',
        ...(panels.some(({ cutOuts }) => cutOuts.length > 0) ? ['Cut-outs are width x height. A panel\'s left edge is that of its cover as seen from inside, the tongue not counted; its lower edge stands on the base plate, whose underside is on the finished floor.'] : []),
        ...(panels.some(({ cutOuts }) => cutOuts.some(({ what }) => what === 'clear glass')) ? ['The hole round clear glass is larger than the glass: as large as the window\'s own papers say.'] : []),
        ...(open.length > 0 ? [`Without panels, because it does not close: ${showList(open)}.`] : []),
    ];
}

const csvHeader = [
    ...traceHeader, 'panel', 'wall', 'near_edge', 'near_edge_mm', 'measured_from', 'kind', 'cover', 'cover_mm', 'overall', 'overall_mm', 'height', 'height_mm', 'thickness', 'thickness_mm', 'tongue', 'holds', 'cut_outs', 'cut_outs_mm',
] as const;

/** Width x height at left edge, lower edge over the finished floor: one figure after the other for a program to read. */
const showCutOutMm = ({ of, width, height, fromLeft, overFloor }: PanelCutOut): string => `${of} ${csvMm(width)} x ${csvMm(height)} at ${csvMm(fromLeft)}, ${csvMm(overFloor)}`;

/** One record a panel, in the order of the schedule. */
export function panelScheduleCsv(jobs: readonly { readonly trace: JobTrace; readonly panels: readonly ScheduledPanel[]; readonly unit: Scale }[]): string {
    return toCsv(csvHeader, jobs.flatMap(({ trace, panels, unit }) => panels.map((scheduled): CsvField[] => {
        const { panel: { mark, kind, cover, overall, height, thickness }, side, distance, tongue, holds, cutOuts } = scheduled;
        const both = (length: Length): CsvField[] => [showCut(length, unit), csvMm(length)];
        return [
            ...traceFields(trace), mark, side, ...both(distance), showFrom(scheduled), panelKinds[kind],
            ...both(cover), ...both(overall), ...both(height), ...both(thickness), tongue ?? 'none', holds.join(', '), showCutOuts(cutOuts, unit), cutOuts.map(showCutOutMm).join('; '),
        ];
    })));
}
