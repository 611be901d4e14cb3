import { patternsOf } from '../../language/src/engines/strength/arrangements.js';
import { prepareBeam, type BeamLoad } from '../../language/src/engines/strength/beam.js';
import { responseOf, type BeamResponse } from '../../language/src/engines/strength/beam-response.js';
import { bendingStress, rectangle, shearStress } from '../../language/src/engines/strength/section.js';
import type { PublishedRow } from './table.js';

const source = 'AWC Design Aid 6, Beam Design Formulas';
const exact = { tolerance: 1e-9, toleranceReason: 'a closed formula against a stiffness solution in double precision' } as const;
const printed = (digits: number) => ({ tolerance: 0.5 * 10 ** -digits + 1e-12, toleranceReason: `a figure printed to ${digits} decimals, a half rounded up` });

const respond = (length: number, supports: readonly number[], loads: readonly BeamLoad[], stiffness = 1): BeamResponse => responseOf(prepareBeam({ length, supports, stiffness })(loads));
/** Equal spans of length 1 with an even load of 1 on those named. */
const spans = (count: number, loaded: readonly number[]): BeamResponse =>
    respond(count, Array.from({ length: count + 1 }, (_, i) => i), loaded.map(span => ({ from: span, to: span + 1, total: 1 })));
const point = (at: number, total = 1): BeamLoad => ({ from: at, to: at, total });

type Case = readonly [clause: string, what: string, published: number, ours: () => number, closeness: { readonly tolerance: number; readonly toleranceReason: string }];
const cases: readonly Case[] = [
    ['Figure 1', 'simple beam, even load: M = wL²/8, w 10 lbf/in, L 48 in', 2880, () => respond(48, [0, 48], [{ from: 0, to: 48, total: 480 }]).sagging, exact],
    ['Figure 1', 'simple beam, even load: deflection 5wL⁴/384EI, w 10 lbf/in, L 48 in, EI 1.2e6 lbf·in²', 5 * 10 * 48 ** 4 / 384 / 1.2e6, () => respond(48, [0, 48], [{ from: 0, to: 48, total: 480 }], 1.2e6).deflection, exact],
    ['Figure 7', 'simple beam, load in the middle: M = PL/4, P 250 lbf, L 24 in', 1500, () => respond(24, [0, 24], [point(12, 250)]).sagging, exact],
    ['Figure 7', 'simple beam, load in the middle: deflection PL³/48EI of a 2x4 laid flat, E 1.11e6 psi, in', 0.0659, () => respond(24, [0, 24], [point(12, 250)], 1.11e6 * rectangle(3.5, 1.5).inertia).deflection, printed(4)],
    ['Figure 9', 'simple beam, two equal loads a third from its ends: deflection Pa(3L²−4a²)/24EI, P 1, L 3, a 1', 23 / 24, () => respond(3, [0, 3], [point(1), point(2)]).deflection, exact],
    ['Figure 9', 'simple beam, two equal loads a third from its ends: M = Pa', 1, () => respond(3, [0, 3], [point(1), point(2)]).sagging, exact],
    ['Figure 26', 'overhang, load at its end: M = Pa, L 3, a 1', 1, () => respond(4, [0, 3], [point(4)]).hogging, exact],
    ['Figure 26', 'overhang, load at its end: deflection of the end Pa²(L+a)/3EI, L 3, a 1', 4 / 3, () => respond(4, [0, 3], [point(4)]).deflection, exact],
    ['Figure 26', 'overhang, load at its end: uplift of the far support Pa/L, L 3, a 1', -1 / 3, () => respond(4, [0, 3], [point(4)]).reactions[0] ?? NaN, exact],
    ['Figure 25', 'overhang, even load on it: deflection of the end wa³(4L+3a)/24EI, L 3, a 1', 15 / 24, () => respond(4, [0, 3], [{ from: 3, to: 4, total: 1 }]).deflection, exact],
    ['Figure 29', 'two equal spans, both loaded: moment over the middle support, wL²/8', 0.125, () => spans(2, [0, 1]).hogging, exact],
    ['Figure 29', 'two equal spans, both loaded: greatest moment in a span, 9wL²/128', 9 / 128, () => spans(2, [0, 1]).sagging, exact],
    ['Figure 29', 'two equal spans, both loaded: middle reaction, 10wL/8', 1.25, () => spans(2, [0, 1]).reactions[1] ?? NaN, exact],
    ['Figure 29', 'two equal spans, both loaded: deflection, wL⁴/185EI', 1 / 185, () => spans(2, [0, 1]).deflection, { tolerance: 2e-5, toleranceReason: '185 is a rounded figure, 184.6 to one more digit' }],
    ['Figure 27', 'two equal spans, one loaded: moment over the middle support, wL²/16', 1 / 16, () => spans(2, [0]).hogging, exact],
    ['Figure 27', 'two equal spans, one loaded: moment in the loaded span, 49wL²/512', 49 / 512, () => spans(2, [0]).sagging, exact],
    ['Figure 27', 'two equal spans, one loaded: uplift at the far end, wL/16', -1 / 16, () => spans(2, [0]).reactions[2] ?? NaN, exact],
    ['Figure 27', 'two equal spans, one loaded: deflection, 0.0092wL⁴/EI', 0.0092, () => spans(2, [0]).deflection, printed(4)],
    ['Figure 28', 'two equal spans, a load in the middle of one: moment there, 13PL/64', 13 / 64, () => respond(2, [0, 1, 2], [point(0.5)]).sagging, exact],
    ['Figure 36', 'three equal spans, all loaded: moment over a middle support, 0.100wL²', 0.1, () => spans(3, [0, 1, 2]).hogging, printed(4)],
    ['Figure 36', 'three equal spans, all loaded: moment in an end span, 0.080wL²', 0.08, () => spans(3, [0, 1, 2]).sagging, printed(4)],
    ['Figure 36', 'three equal spans, all loaded: reaction of a middle support, 1.10wL', 1.1, () => spans(3, [0, 1, 2]).reactions[1] ?? NaN, printed(4)],
    ['Figure 36', 'three equal spans, all loaded: deflection, 0.0069wL⁴/EI', 0.0069, () => spans(3, [0, 1, 2]).deflection, printed(4)],
    ['Figure 35', 'three equal spans, the ends loaded: moment in an end span, 0.1013wL²', 0.1013, () => spans(3, [0, 2]).sagging, printed(4)],
    ['Figure 34', 'three equal spans, two neighbours loaded: moment between them, 0.1167wL²', 0.1167, () => spans(3, [0, 1]).hogging, printed(4)],
    ['Figure 39', 'four equal spans, all loaded: moment over the second support, 0.1071wL²', 0.1071, () => spans(4, [0, 1, 2, 3]).hogging, printed(4)],
    ['Figure 39', 'four equal spans, all loaded: moment in an end span, 0.0772wL²', 0.0772, () => spans(4, [0, 1, 2, 3]).sagging, printed(4)],
    ['Figure 39', 'four equal spans, all loaded: reaction of the second support, 1.143wL', 1.143, () => spans(4, [0, 1, 2, 3]).reactions[1] ?? NaN, printed(3)],
];

export const beamRows: readonly PublishedRow[] = cases.map(([clause, what, published, ours, closeness]): PublishedRow =>
    ({ source, clause, what, published, ours, ...closeness, fromMemory: true, checks: what.includes('M =') || what.includes('deflection') || what.includes('moment') ? 'responseOf' : 'prepareBeam' }));

export const sectionRows: readonly PublishedRow[] = [
    { source: 'NDS Supplement', clause: 'Table 1B', what: 'section modulus of a 2x4 laid flat, in³', published: 1.313, ours: () => rectangle(3.5, 1.5).modulus, ...printed(3), fromMemory: true, checks: 'rectangle' },
    { source: 'NDS Supplement', clause: 'Table 1B', what: 'section modulus of a 2x4 on edge, in³', published: 3.063, ours: () => rectangle(1.5, 3.5).modulus, ...printed(3), fromMemory: true, checks: 'rectangle' },
    { source: 'NDS Supplement', clause: 'Table 1B', what: 'second moment of a 2x4 on edge, in⁴', published: 5.359, ours: () => rectangle(1.5, 3.5).inertia, ...printed(3), fromMemory: true, checks: 'rectangle' },
    { source: 'NDS Supplement', clause: 'Table 1B', what: 'second moment of a 2x4 laid flat, in⁴', published: 0.984, ours: () => rectangle(3.5, 1.5).inertia, ...printed(3), fromMemory: true, checks: 'rectangle' },
    { source: 'NDS Supplement', clause: 'Table 1B', what: 'section modulus of a 2x6 on edge, in³', published: 7.563, ours: () => rectangle(1.5, 5.5).modulus, ...printed(3), fromMemory: true, checks: 'rectangle' },
    { source: 'NDS 2018', clause: '3.3.2', what: 'bending stress of a 2x4 laid flat under 250 lbf in the middle of 24 in, psi', published: 1142.9, ours: () => bendingStress(1500, rectangle(3.5, 1.5)), ...printed(1), checks: 'bendingStress' },
    { source: 'NDS 2018', clause: '3.4.2', what: 'shear stress of a 2x4 under 350 lbf, 3V/2bd, psi', published: 100, ours: () => shearStress(350, rectangle(1.5, 3.5)), ...exact, checks: 'shearStress' },
    {
        source: 'pattern loading of continuous beams', clause: 'five spans', what: 'loaded spans for the greatest moment over the second support', published: '1 2 4', ...{ tolerance: 0, toleranceReason: 'a pattern' }, fromMemory: true,
        ours: () => (patternsOf(5)[3] ?? []).flatMap((loaded, i) => loaded ? [String(i + 1)] : []).join(' '), checks: 'patternsOf',
    },
];
