import { grow, interval, intervalsOverlap, type Box, type InsideSize } from '../../core/geometry.js';
import { zero, type Length } from '../../core/length.js';
import type { Thing } from '../fittings/things.js';
import { inRoom, onWall, wallBox } from '../fittings/wall-frame.js';
import type { HeaterManual, PlacedHeater } from './casing.js';

export interface ControlInput {
    readonly name: string;
    readonly stands: 'outside' | 'inside' | 'on_heater';
    readonly height?: Length;
    readonly timerMinutes?: number;
}
export interface SignInput {
    readonly name: string;
    readonly says: 'warning' | 'bathing' | 'heater';
    readonly stands: 'outside' | 'inside';
    readonly letters?: Length;
}
export interface ReceptacleInput {
    readonly name: string;
    readonly stands: 'outside' | 'inside';
    readonly height?: Length;
}

export type ControlProblem =
    | { readonly kind: 'control-missing'; readonly wanted: 'outside' | 'on_heater' | 'either' }
    | { readonly kind: 'control-place-missing-in-manual' }
    | { readonly kind: 'control-in-wrong-place'; readonly name: string; readonly stands: ControlInput['stands']; readonly wanted: 'outside' | 'on_heater' | 'either' }
    | { readonly kind: 'limiter-missing-in-manual' }
    | { readonly kind: 'no-limiter' }
    | { readonly kind: 'timer-missing' };

export interface Controls {
    /** The longest the heater can be made to run; absent when nothing states a timer. Several controls: the longest counts, as each can be used. */
    readonly timerMinutes?: number;
    /** Whether every timer is outside the room; absent without a timer. A timer on the heater is inside. */
    readonly isTimerOutside?: boolean;
    readonly isLimiterResetByHand: boolean;
    readonly problems: readonly ControlProblem[];
}

/** What the controls of the heater come to, against what its manual wants. */
export function heaterControls(manual: HeaterManual, controls: readonly ControlInput[]): Controls {
    const problems: ControlProblem[] = [];
    const wanted = manual.control;
    if (!wanted) problems.push({ kind: 'control-place-missing-in-manual' });
    // A control on the heater comes with it and need not be written down.
    else if (controls.length === 0 && wanted === 'outside') problems.push({ kind: 'control-missing', wanted });
    for (const { name, stands } of controls) {
        const isRight = wanted === undefined || (wanted === 'either' ? stands !== 'inside' : stands === wanted);
        if (!isRight) problems.push({ kind: 'control-in-wrong-place', name, stands, wanted });
    }
    if (manual.limiter === undefined) problems.push({ kind: 'limiter-missing-in-manual' });
    else if (manual.limiter === 'none') problems.push({ kind: 'no-limiter' });

    const separate = controls.flatMap(({ stands, timerMinutes }) => timerMinutes === undefined ? [] : [{ minutes: timerMinutes, isOutside: stands === 'outside' }]);
    // The heater's own timer sits where the manual puts the control; a control block with a timer replaces it.
    const isOwnOutside = wanted === 'outside' || (wanted === 'either' && controls.length > 0 && controls.every(({ stands }) => stands === 'outside'));
    const timers = separate.length > 0 ? separate : manual.timerMinutes === undefined ? [] : [{ minutes: manual.timerMinutes, isOutside: isOwnOutside }];
    if (timers.length === 0) problems.push({ kind: 'timer-missing' });
    return {
        isLimiterResetByHand: manual.limiter === 'manual_reset',
        problems,
        ...(timers.length > 0 && { timerMinutes: Math.max(...timers.map(({ minutes }) => minutes)), isTimerOutside: timers.every(({ isOutside }) => isOutside) }),
    };
}

export interface SignFacts {
    readonly warningOutside?: SignInput;
    readonly bathing?: SignInput;
    readonly heaterCautions?: SignInput;
    /** Smallest stated letters of the warning signs outside; absent when none states any. */
    readonly warningLetters?: Length;
}

/** Which signs the room has. The first of a kind stands for it. */
export function signFacts(signs: readonly SignInput[]): SignFacts {
    const warnings = signs.filter(({ says, stands }) => says === 'warning' && stands === 'outside');
    const letters = warnings.flatMap(sign => sign.letters === undefined ? [] : [sign.letters]);
    const [warningOutside] = warnings;
    const bathing = signs.find(({ says }) => says === 'bathing');
    const heaterCautions = signs.find(({ says }) => says === 'heater');
    return {
        ...(warningOutside && { warningOutside }), ...(bathing && { bathing }), ...(heaterCautions && { heaterCautions }),
        ...(letters.length > 0 && { warningLetters: Math.min(...letters) as Length }),
    };
}

/** Receptacles that stand in the room, in the order of the job. */
export const receptaclesInside = (receptacles: readonly ReceptacleInput[]): readonly ReceptacleInput[] => receptacles.filter(({ stands }) => stands === 'inside');

/** The column of hot air over the heater: its casing, grown to both sides by `spread`, from its wall to its front and up to the ceiling. */
export function plume(heater: PlacedHeater, spread: Length, inside: InsideSize): Box {
    const { u, v, w } = heater.onWall;
    return inRoom(heater.wall, wallBox(grow(u, spread), interval(v.to, inside.height), interval(zero, w.to)), inside);
}

/** Whether a thermometer reads the plume instead of the room. On the lining over the heater it does: a thing on the wall touches the air before it. */
export function isInPlume(thing: Thing, heater: PlacedHeater, spread: Length, inside: InsideSize): boolean {
    const { u, v, w } = heater.onWall;
    const seen = onWall(heater.wall, thing.box, inside);
    return intervalsOverlap(grow(u, spread), seen.u) && intervalsOverlap(interval(v.to, inside.height), seen.v) && seen.w.from < w.to;
}
