import { evenLoads, movingLoad, placedLoads, rowsOfLoads, type Carried } from './arrangements.js';
import { prepareBeam, type BeamLoad } from './beam.js';
import { responseOf } from './beam-response.js';

/** The greatest effects of a load in any of its arrangements; deflections are of a beam of stiffness 1 and shrink with the stiffness of the real one. */
export interface Effects {
    readonly moment: number;
    readonly shear: number;
    readonly deflection: number;
    readonly deflectionShare: number;
    /** Greatest downward force on each support; they need not come at once. */
    readonly reactions: readonly number[];
}

const none = (supports: number): Effects => ({ moment: 0, shear: 0, deflection: 0, deflectionShare: 0, reactions: new Array<number>(supports).fill(0) });

/** @param hasDeflection whether deflections are wanted; they are 0 otherwise */
export function effectsOf(member: Carried, arrangements: readonly (readonly BeamLoad[])[], hasDeflection = true): Effects {
    const solve = prepareBeam({ ...member, stiffness: 1 });
    return arrangements.map(loads => responseOf(solve(loads), member.face, hasDeflection)).reduce<Effects>((most, one) => ({
        moment: Math.max(most.moment, one.sagging, one.hogging), shear: Math.max(most.shear, one.shear),
        deflection: Math.max(most.deflection, one.deflection), deflectionShare: Math.max(most.deflectionShare, one.deflectionShare),
        reactions: most.reactions.map((reaction, i) => Math.max(reaction, one.reactions[i] ?? 0)),
    }), none(member.supports.length));
}

/** Effects of a load `factor` times as great; effects of loads together, as if their worst came at one place, which is on the safe side. */
export const scaled = ({ moment, shear, deflection, deflectionShare, reactions }: Effects, factor: number): Effects =>
    ({ moment: moment * factor, shear: shear * factor, deflection: deflection * factor, deflectionShare: deflectionShare * factor, reactions: reactions.map(reaction => reaction * factor) });
export const together = (a: Effects, b: Effects): Effects => ({
    moment: a.moment + b.moment, shear: a.shear + b.shear, deflection: a.deflection + b.deflection, deflectionShare: a.deflectionShare + b.deflectionShare,
    reactions: a.reactions.map((reaction, i) => reaction + (b.reactions[i] ?? 0)),
});

/** Effects on one member of an even load of 1 for each unit of length, and of 1 on a footprint that moves along it or comes in a row. */
export interface UnitEffects {
    readonly even: Effects;
    readonly moving: (footprint: number) => Effects;
    readonly row: (footprint: number, pitch: number) => Effects;
    /** One load that stands on one of these places. */
    readonly at: (places: readonly number[], footprint: number) => Effects;
}
/** Members of the same spans have the same effects, in whatever job and bench they are: the last few hundred are kept. */
const known = new Map<string, UnitEffects>();
const mostKnown = 400;

/** Deflections of a moving load are left out: the limits of codes are for loads that lie on a whole member. */
export function unitEffects(member: Carried): UnitEffects {
    const name = `${member.length} ${member.face ?? 0} ${member.supports.join(' ')}`;
    const found = known.get(name);
    if (found) return found;
    const kept = new Map<string, Effects>();
    const keep = (key: string, make: () => Effects): Effects => {
        const before = kept.get(key);
        if (before) return before;
        const made = make();
        kept.set(key, made);
        return made;
    };
    const effects: UnitEffects = {
        get even() { return keep('even', () => effectsOf(member, evenLoads(member, 1))); },
        moving: footprint => keep(`moving ${footprint}`, () => effectsOf(member, movingLoad(member, 1, footprint), false)),
        at: (places, footprint) => keep(`at ${places.join(' ')} ${footprint}`, () => effectsOf(member, placedLoads(member, places, footprint), false)),
        row: (footprint, pitch) => keep(`row ${footprint} ${pitch}`, () => effectsOf(member, rowsOfLoads(member, 1, footprint, pitch))),
    };
    if (known.size >= mostKnown) for (const oldest of known.keys()) { known.delete(oldest); break; }
    known.set(name, effects);
    return effects;
}

/**
 * The greatest share of a load that one slat takes, the load lying evenly on what it touches of the slats: it starts at the edge of a slat, ends at one, or lies
 * with its middle over one.
 * @param footprint its size across the slats, @param width of a slat, @param pitch of the slats
 */
export function shareOfOneSlat(footprint: number, width: number, pitch: number, count: number): number {
    const shares = [0, width - footprint, (width - footprint) / 2].map(start => {
        let [touched, most] = [0, 0];
        const reach = Math.ceil(footprint / pitch) + 1;
        for (let slat = -reach; slat <= reach; slat++) {
            const on = Math.min(slat * pitch + width, start + footprint) - Math.max(slat * pitch, start);
            if (on > 0) { touched += on; most = Math.max(most, on); }
        }
        return touched > 0 ? most / touched : 1;
    });
    return count <= 1 ? 1 : Math.max(...shares, 1 / count);
}
