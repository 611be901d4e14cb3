import { insideSize, thicknessOf } from './wall-run.js';
import { divideRun, type Division, type SoftRule } from './division.js';
import { usableOffer } from './shell.js';
import type { ShellInput } from './shell-input.js';
import { runOfWall } from './wall-panels.js';
import { inches, plus, ticks, type Length } from '../../core/length.js';
import { walls, type Wall } from '../../core/geometry.js';

/** How far a thing moves along its wall, to the right as seen from inside; less than zero to the left. Both ends count. */
export interface Shifts { readonly from: Length; readonly to: Length }

/** Where a joint stands in the way, places no farther apart than this are tried: a stretch shorter than that may be passed over, none is promised wrongly. */
const step = inches(1);
/** Divisions tried for one answer. */
const mostTries = 160;

/**
 * How far a fastening zone may move along its wall so that no panel joint lies strictly inside it, the wall being divided anew for every place: the
 * division itself gives way to fastenings.
 * @param name of the fastening zone in `input.fastenings`
 * @param allowed shifts to look at, left to right
 * @returns the stretches of `allowed` that are free of joints, left to right; nothing when the wall does not close or there is no such zone
 */
export function shiftsOffJoints(input: ShellInput, name: string, allowed: readonly Shifts[]): readonly Shifts[] {
    const fastening = input.fastenings.find(one => one.kind === 'fastening-zone' && one.name === name);
    if (fastening?.kind !== 'fastening-zone') return [];
    const thickness = Object.fromEntries(walls.map(wall => [wall, thicknessOf(input.wallLayers[wall])])) as Record<Wall, Length>;
    const run = runOfWall(input, fastening.wall, thickness, insideSize(input, thickness, thicknessOf(input.ceilingLayers)), usableOffer(input).offer);
    const zone = run.softRules.find(rule => rule.kind === 'fastening-zone' && rule.name === name)?.zone;
    if (!zone) return [];
    const at = (rule: SoftRule, shift: number): SoftRule => rule.kind === 'fastening-zone' && rule.name === name ? { ...rule, zone: { from: ticks(zone.from + shift), to: ticks(zone.to + shift) } } : rule;
    let tries = 0;
    /** The shifts for which the division made for `shift` keeps its joints off the zone; nothing when it does not. */
    const freeAround = (shift: number): { readonly from: number; readonly to: number } | undefined => {
        tries++;
        const division: Division = divideRun({ ...run, softRules: run.softRules.map(rule => at(rule, shift)) });
        if (!division.closes) return undefined;
        const [from, to] = [zone.from + shift, zone.to + shift];
        if (division.joints.some(joint => from < joint && joint < to)) return undefined;
        const before = division.joints.findLast(joint => joint <= from) ?? 0;
        const after = division.joints.find(joint => joint >= to) ?? plus(run.run, zone.to);
        return { from: before - zone.from, to: after - zone.to };
    };
    const free: { from: number; to: number }[] = [];
    for (const range of allowed) {
        let least: number = range.from;
        for (let shift: number = range.from; shift <= range.to && tries < mostTries;) {
            const around = freeAround(shift);
            if (around) {
                const end = Math.min(around.to, range.to);
                const to = end > shift && freeAround(end) ? end : shift;
                add(free, Math.max(Math.min(around.from, shift), least), to);
                least = to + 1;
                shift = to + 1;
            } else {
                least = shift + 1;
                shift = shift === range.to ? range.to + 1 : Math.min(shift + step, range.to);
            }
        }
    }
    return free.map(({ from, to }) => ({ from: ticks(from), to: ticks(to) }));
}

/** Puts a stretch behind the others; one that continues the last, tick on tick, becomes part of it. */
function add(free: { from: number; to: number }[], from: number, to: number): void {
    const last = free.at(-1);
    if (last && from <= last.to + 1) last.to = Math.max(last.to, to);
    else free.push({ from, to });
}
