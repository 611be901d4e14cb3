import type { RenderedJob } from './rendered-job.js';

/**
 * What a room needs and its cut list does not hold, so that nobody takes the list for the whole order. It follows the engines: what they make no part of
 * stands here, and what they would make a part of if the job named its stock.
 */
export function notOnList({ job, results }: Pick<RenderedJob, 'job' | 'results'>): readonly string[] {
    const { shell, doors, windows, heaters, fittings, benches } = results;
    const has = (parts: readonly { readonly mark: string }[], word: string): boolean => parts.some(({ mark }) => mark.includes(`-${word}`));
    const laidOut = new Set(benches?.result.benches.map(({ name }) => name));
    return [
        ...(shell ? [] : ['base plates, for the shell of the room could not be worked out']),
        'the wood and boards of the wall and ceiling panels: frames, lining, battens, vapour barrier, insulation, sheathing and facing',
        `blocking set in the panels to take fastenings${results.parts.some(({ mark }) => mark.includes('-BLOCKING-')) ? ', except the heater blocking listed' : ''}`,
        ...heaters.flatMap(({ name, block, parts }) => [
            ...(has(parts, 'BLOCKING') ? [] : [`blocking for ${name}${block.values.backing_stock ? '' : ', whose stock the job does not name'}`]),
            ...(block.values.guard?.value === true && !has(parts, 'GUARD') ? [`the guard of ${name}${block.values.guard_stock ? '' : ', whose stock the job does not name'}`] : []),
        ]),
        ...doors.filter(({ parts }) => parts.length === 0).map(({ name, door }) => `frame and header of door ${name}${door ? ', whose stock its model does not name' : ', which could not be placed'}`),
        ...windows.filter(({ parts }) => parts.length === 0).map(({ name, window }) => `inside trim of window ${name}${window ? ', whose stock its model does not name' : ', which could not be placed'}`),
        ...job.benches.flatMap(({ name }) => name && !laidOut.has(name.value) ? [`bench ${name.value}, which could not be laid out`] : []),
        ...fittings.filter(({ block, parts }) => block.kind === 'duckboard' && parts.length === 0).map(({ name }) => `duckboard ${name}`),
        ...(results.parts.some(({ mark }) => mark.includes('-MOULDING-')) ? [] : ['ceiling mouldings inside']),
        'corner boards and corner fillers, battens over the facing joints, base moulding and outside trim',
        ...(job.doors.length > 0 ? ['door leaves with their glass, hinges, catches and handles'] : []),
        ...(job.windows.length > 0 ? ['windows with their glass and stops'] : []),
        'screws, shims, seals and other hardware',
        'the heater with its stones and controls, wiring, lights, vents with their grilles, thermometer and signs',
    ];
}
