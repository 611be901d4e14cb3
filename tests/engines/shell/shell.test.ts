import { describe, expect, test } from 'vitest';
import { walls, type Wall } from '../../../language/src/core/geometry.js';
import { feet, inches, minus, ticks, zero, type Length } from '../../../language/src/core/length.js';
import { panelUnits, shellParts } from '../../../language/src/engines/shell/parts.js';
import { computeShell } from '../../../language/src/engines/shell/shell.js';
import type { ShellInput } from '../../../language/src/engines/shell/shell-input.js';
import type { ShellResult } from '../../../language/src/engines/shell/shell-result.js';
import { nearAfterMove } from '../../../language/src/engines/shell/opening-place.js';
import { door, layers, room, shown, system } from './rooms.js';

/** `18|12|[30]|24` in inches; made to measure carries a star, a strip behind a neighbour stands in brackets at its end. */
const wallText = (result: ShellResult, wall: Wall): string => result.walls[wall].panels.map(({ kind, cover, cornerStrip }) => {
    const width = kind.endsWith('section') ? `[${shown(cover)}]` : `${shown(cover)}${kind === 'made_to_measure' ? '*' : ''}`;
    return (cornerStrip?.left === undefined ? '' : `(${shown(cornerStrip.left)})`) + width + (cornerStrip?.right === undefined ? '' : `(${shown(cornerStrip.right)})`);
}).join(' ');
/** A room whose designer has not said which way the ceiling spans. */
function withoutSpan(more: Partial<ShellInput> = {}): ShellInput {
    const input: { -readonly [K in keyof ShellInput]: ShellInput[K] } = room(more);
    delete input.ceilingSpan;
    return input;
}
const problems = (input: ShellInput) => computeShell(input).problems.map(({ kind }) => kind);

describe('thickness, inside size and runs', () => {
    test('T is the sum of the layers and the inside size follows', () => {
        const result = computeShell(room());
        expect(walls.map(wall => shown(result.thickness[wall]))).toEqual([3.75, 3.75, 3.75, 3.75]);
        expect([result.inside.width, result.inside.depth, result.inside.height].map(shown)).toEqual([76.5, 64.5, 80.25]);
        expect(shown(result.wallPanelHeight)).toBe(84 - 1.5 - 3.75);
    });
    test('a hidden wall without facing is thinner, and only its own side changes', () => {
        const bare = layers.filter(({ role }) => role !== 'facing');
        const result = computeShell(room({ wallLayers: { front: layers, left: bare, back: bare, right: layers } }));
        expect(walls.map(wall => shown(result.thickness[wall]))).toEqual([3.75, 3.25, 3.25, 3.75]);
        expect([result.inside.width, result.inside.depth].map(shown)).toEqual([77, 65]);
        expect([shown(result.walls.right.run.from), shown(result.walls.right.run.to)]).toEqual([0, 65]);
        expect([shown(result.walls.front.run.from), shown(result.walls.front.run.to)], 'left end of the front as seen from inside is the right wall').toEqual([-3.75, 80.25]);
    });
    const run = (input: ShellInput) => walls.map(wall => {
        const { from, to } = computeShell(input).walls[wall].run;
        return `${wall} ${shown(from)} to ${shown(to)}`;
    });
    test.each<[ShellInput['corners'], string[]]>([
        ['front_and_back', ['front -3.75 to 80.25', 'left 0 to 64.5', 'back -3.75 to 80.25', 'right 0 to 64.5']],
        ['sides', ['front 0 to 76.5', 'left -3.75 to 68.25', 'back 0 to 76.5', 'right -3.75 to 68.25']],
        ['pinwheel', ['front -3.75 to 76.5', 'left -3.75 to 64.5', 'back -3.75 to 76.5', 'right -3.75 to 64.5']],
    ])('corners: %s', (corners, expected) => expect(run(room({ corners }))).toEqual(expected));
});

describe('panels', () => {
    test('an 84" x 72" room: the stretch right of the door starts T before the inside corner and closes on a 24" module', () => {
        const result = computeShell(room());
        expect(Object.fromEntries(walls.map(wall => [wall, wallText(result, wall)]))).toEqual({
            front: '(3.75)18 12 [30] 24(3.75)', left: '24 22.5* 18', back: '(3.75)24 24 18 18(3.75)', right: '24 22.5* 18',
        });
        expect(result.walls.front.panels.map(({ mark }) => mark)).toEqual(['FRONT-1', 'FRONT-2', 'FRONT-3', 'FRONT-4']);
        expect(result.ceiling?.panels.map(({ mark, cover, height }) => `${mark} ${shown(cover)} x ${shown(height)}`))
            .toEqual(['CEILING-1 24 x 72', 'CEILING-2 24 x 72', 'CEILING-3 18 x 72', 'CEILING-4 18 x 72']);
        expect(result.problems).toEqual([]);
    });
    test('overall width is cover plus the engagement on the tongue edge; the first of the chain has none', () => {
        expect(computeShell(room()).walls.left.panels.map(({ overall, hookEdge }) => `${shown(overall)} ${hookEdge}`)).toEqual(['24 left', '22.875 left', '18.375 left']);
        expect(computeShell(room({ system: { ...system, chainStartsAt: 'right' } })).walls.left.panels.map(({ overall, hookEdge }) => `${shown(overall)} ${hookEdge}`))
            .toEqual(['24.375 right', '22.875 right', '18 right']);
    });
    test('joints stand between marks, in the wall\'s own u', () => {
        expect(computeShell(room()).walls.front.joints.map(({ between, at }) => `${between.join('/')} ${shown(at)}`))
            .toEqual(['FRONT-1/FRONT-2 14.25', 'FRONT-2/FRONT-3 26.25', 'FRONT-3/FRONT-4 56.25']);
    });
    test('a joint in the heater\'s fastening zone is avoided when that costs nothing, and reported when it cannot be', () => {
        const zone = (from: number, to: number) => room({ fastenings: [{ kind: 'fastening-zone', name: 'stove', wall: 'right', zone: { from: inches(from), to: inches(to) } }] });
        expect(wallText(computeShell(zone(20, 40)), 'right')).toBe('18 22.5* 24');
        expect(wallText(computeShell(zone(24, 46)), 'right'), 'joints on both edges pass').toBe('24 22.5* 18');
        expect(computeShell(zone(10, 50)).problems).toMatchObject([{ kind: 'joint-in-fastening-zone', wall: 'right', name: 'stove' }, { kind: 'joint-in-fastening-zone' }]);
    });
    test('a joint exactly 2" from a ledger end passes, a tick nearer does not', () => {
        const ledger = (at: Length) => room({ openings: [], width: inches(60), fastenings: [{ kind: 'ledger-end', name: 'UPPER-LEDGER-1', wall: 'back', at }] });
        // Back: 24 18 18 from u = -3 3/4", joints at 20 1/4" and 38 1/4"; in a run of 60" any order of the three puts a joint at 14 1/4", 20 1/4", 32 1/4" or 38 1/4".
        expect(wallText(computeShell(ledger(inches(22, 1, 4))), 'back')).toBe('(3.75)24 18 18(3.75)');
        expect(wallText(computeShell(ledger(ticks(inches(22, 1, 4) - 1))), 'back')).toBe('(3.75)18 24 18(3.75)');
    });
    test('weight: lining to overall width, the rest to cover width', () => {
        const [first, second] = computeShell(room()).walls.left.panels;
        const height = 78.75 * 0.0254;
        const perMetre = (width: number, overall: number) => height * 0.0254 * 0.0254 * (0.75 * 400 * overall + 2.5 * 100 * width + 0.5 * 500 * width);
        expect(first?.weight.isKnown && first.weight.kg).toBeCloseTo(perMetre(24, 24), 9);
        expect(second?.weight.isKnown && second.weight.kg).toBeCloseTo(perMetre(22.5, 22.875), 9);
    });
    test('weight: a missing density is named, never guessed', () => {
        const noDensity = layers.map(({ densityKgPerM3, ...layer }) => layer.role === 'core' ? layer : { ...layer, ...(densityKgPerM3 !== undefined && { densityKgPerM3 }) });
        const result = computeShell(room({ wallLayers: { front: noDensity, left: noDensity, back: noDensity, right: noDensity } }));
        expect(result.walls.back.panels[0]?.weight).toEqual({ isKnown: false, missing: ['core'] });
        expect(result.walls.front.panels[2]?.weight, 'the section weighs what its catalogue entry says').toEqual({ isKnown: true, kg: 40 });
    });
});

describe('what is wrong with a room', () => {
    const only12 = { ...system, modules: [inches(24), inches(18), inches(12)], madeToMeasure: { from: inches(9), to: inches(10) } };
    test('a wall that does not close leaves the others as they are', () => {
        const sound = computeShell(room({ system: only12, depth: inches(67, 1, 2) }));
        const broken = computeShell(room({ system: only12, depth: inches(67, 1, 2), openings: [door({ near: inches(24) })] }));
        expect(sound.problems).toEqual([]);
        expect(broken.problems).toMatchObject([
            { kind: 'wall-does-not-close', wall: 'front', fault: { kind: 'stretch-does-not-close', after: 'entry' } },
            { kind: 'wall-does-not-close', wall: 'front', fault: { kind: 'stretch-does-not-close', before: 'entry' } },
        ]);
        expect(broken.walls.front.panels).toEqual([]);
        for (const wall of ['left', 'back', 'right'] as const) expect(broken.walls[wall]).toEqual(sound.walls[wall]);
        expect(broken.ceiling).toEqual(sound.ceiling);
    });
    test('and the places named for the opening do close it', () => {
        const input = room({ system: only12, depth: inches(67, 1, 2), openings: [door({ near: inches(24) })] });
        const places = computeShell(input).walls.front.suggestions.placesThatClose;
        expect(places.map(({ section, change }) => `${section} ${shown(nearAfterMove(door({ near: inches(24) }), change))}`)).toEqual(['entry 23.25', 'entry 26.25']);
        for (const { change } of places) expect(problems({ ...input, openings: [door({ near: nearAfterMove(door({ near: inches(24) }), change) })] })).toEqual([]);
    });
    test('sizes that close hold for every wall and ceiling they change', () => {
        const input = room({ system: { ...system, madeToMeasure: { from: inches(8), to: inches(9) } }, width: inches(85), openings: [], depth: inches(67, 1, 2) });
        const { sizes } = computeShell(input);
        expect(sizes.map(({ axis, sizesThatClose }) => [axis, ...sizesThatClose.map(({ change }) => shown(change))])).toEqual([['width', 1, -1], ['depth']]);
        for (const { change } of sizes[0]?.sizesThatClose ?? []) expect(problems({ ...input, width: ticks(input.width + change) })).toEqual([]);
    });
    test('depth 73 1/2" and 67 1/2" save the made-to-measure panels of both sides; of the ceiling across them too', () => {
        expect(computeShell(room()).sizes.map(({ axis, sizesThatSave }) => [axis, ...sizesThatSave.map(({ change, madeToMeasure }) => [shown(change), madeToMeasure])]))
            .toEqual([['width'], ['depth', [1.5, 0], [-4.5, 0]]]);
        expect(computeShell(room({ ceilingSpan: 'left_to_right' })).sizes[1]?.sizesThatSave.map(({ change, madeToMeasure }) => [shown(change), madeToMeasure]))
            .toEqual([[1.5, 1], [-4.5, 1]]);
    });
    test.each<[string, ShellInput, object[]]>([
        ['door over the corner', room({ openings: [door({ near: inches(1) })] }), [{ kind: 'opening-overlaps-corner', wall: 'front', opening: 'entry', corner: 'front_left', by: inches(2) }]],
        ['section flush with the inside corner of a through wall', room({ openings: [door({ near: inches(3) })] }),
            [{ kind: 'corner-panel-too-narrow', wall: 'front', corner: 'front_left', left: inches(3, 3, 4), least: inches(6, 3, 4) }]],
        ['the same at the other end', room({ openings: [door({ from: 'right', near: inches(3) })] }),
            [{ kind: 'corner-panel-too-narrow', wall: 'front', corner: 'front_right', left: inches(3, 3, 4), least: inches(6, 3, 4) }]],
        ['two openings in one place', room({ openings: [door(), door({ name: 'view', kind: 'window', from: 'right', near: inches(24) })] }),
            [{ kind: 'openings-overlap', wall: 'front', first: 'view', second: 'entry' }]],
        ['opening measured from the wall it is on', room({ openings: [door({ from: 'front' })] }), [{ kind: 'opening-not-measured-from-neighbour', opening: 'entry', wall: 'front', from: 'front' }]],
        ['opening wider than its section', room({ openings: [door({ near: inches(29, 1, 4), clearWidth: inches(31), edgeToClear: inches(6) })] }), [{ kind: 'opening-wider-than-section', opening: 'entry', clear: inches(31), section: inches(30) }]],
        ['square room without a span', withoutSpan({ width: inches(72), openings: [] }), [{ kind: 'span-not-stated', size: inches(72) }]],
        ['no room inside', room({ width: inches(7), openings: [] }), [{ kind: 'room-has-no-inside', axis: 'width', outside: inches(7), takenByShell: inches(7, 1, 2) }]],
        ['a slip of the pen', room({ width: feet(840), openings: [] }), [{ kind: 'room-too-large', axis: 'width', outside: feet(840), limit: feet(50) }]],
        ['narrow, unrelated widths', room({ system: { ...system, modules: [ticks(2_032_001), ticks(2_345_679), ticks(2_654_323)] } }), [{ kind: 'too-many-panel-mixtures' }]],
        ['no widths', room({ system: { ...system, modules: [], madeToMeasure: { from: inches(9), to: inches(8) } } }), [{ kind: 'no-panel-widths' }]],
        ['a width that is no panel', room({ system: { ...system, modules: [...system.modules, inches(0, 1, 2)] } }), [{ kind: 'panel-width-unusable', width: inches(0, 1, 2), least: inches(1) }]],
    ])('%s', (_name, input, expected) => {
        const result = computeShell(input);
        expect(result.problems.filter(({ kind }) => kind !== 'no-closing-corner' && kind !== 'wall-does-not-close' && kind !== 'ceiling-does-not-close')).toMatchObject(expected);
    });
    test('one slip is one problem: no cascade', () => {
        expect(problems(room({ width: inches(7), openings: [] }))).toEqual(['room-has-no-inside']);
        expect(problems(room({ width: feet(840), openings: [] }))).toEqual(['room-too-large']);
    });
});

describe('ceiling', () => {
    test('spans the shorter way unless stated', () => {
        const unstated = withoutSpan();
        expect(computeShell(unstated).ceiling?.span).toBe('front_to_back');
        expect(computeShell({ ...unstated, depth: inches(96) }).ceiling?.span).toBe('left_to_right');
    });
    test('numbered from the back when it spans left to right; places measured from the front', () => {
        const ceiling = computeShell(room({ ceilingSpan: 'left_to_right', depth: inches(66) })).ceiling;
        expect(ceiling?.panels.map(({ mark, at }) => `${mark} ${shown(at.from)} to ${shown(at.to)}`)).toEqual(['CEILING-1 42 to 66', 'CEILING-2 18 to 42', 'CEILING-3 0 to 18']);
        expect(ceiling?.joints.map(({ between, at }) => `${between.join('/')} ${shown(at)}`)).toEqual(['CEILING-1/CEILING-2 42', 'CEILING-2/CEILING-3 18']);
    });
    test('grooves stand over the walls they land on', () => {
        expect(computeShell(room()).ceiling?.bearing.back).toEqual({ from: minus(inches(72), inches(3, 3, 4)), to: inches(72) });
    });
});

describe('base plates', () => {
    const plates = (input: ShellInput) => computeShell(input).basePlates.map(({ mark, length, along }) => `${mark} ${shown(length)} from ${shown(along.from)}`);
    test('run through on the same walls; lengths from set-in and plate width, cut out under the door', () => {
        expect(plates(room())).toEqual(['BASE-FRONT-1 33 from -3.75', 'BASE-FRONT-2 27 from 53.25', 'BASE-LEFT 65 from -0.25', 'BASE-BACK 84 from -3.75', 'BASE-RIGHT 65 from -0.25']);
    });
    test.each<[ShellInput['corners'], number, number[]]>([
        ['front_and_back', 0.5, [83, 64, 83, 64]], ['sides', 0.5, [76, 71, 76, 71]], ['pinwheel', 0.5, [79.5, 67.5, 79.5, 67.5]],
    ])('%s, set in %f"', (corners, setIn, expected) => {
        const result = computeShell(room({ corners, openings: [door({ plate: 'threshold' })], system: { ...system, plate: { ...system.plate, setIn: inches(0, setIn * 2, 2) } } }));
        expect(result.basePlates.map(({ length }) => shown(length))).toEqual(expected);
        expect(result.basePlates[0]).toMatchObject({ mark: 'BASE-FRONT', thresholdFor: ['entry'], across: { from: inches(-3, -1, 4), to: inches(0, 1, 4) } });
    });
    test('a long plate is spliced clear of every panel joint and of the doorway, in as few pieces as the stock allows', () => {
        const input = room({ width: inches(240), openings: [door({ plate: 'threshold' })], system: { ...system, plate: { ...system.plate, longestPiece: inches(96) } } });
        const result = computeShell(input);
        for (const wall of ['front', 'back'] as const) {
            const pieces = result.basePlates.filter(plate => plate.wall === wall);
            expect(pieces.map(({ mark }) => mark)).toEqual([1, 2, 3].map(n => `BASE-${wall.toUpperCase()}-${n}`));
            expect(pieces.reduce((total, { length }) => total + length, 0)).toBe(inches(240));
            for (const piece of pieces) expect(piece.length).toBeLessThanOrEqual(inches(96));
            for (const splice of pieces.slice(1).map(({ along }) => along.from)) {
                expect(Math.min(...result.walls[wall].joints.map(joint => Math.abs(joint.at - splice)))).toBeGreaterThanOrEqual(inches(9));
                if (wall === 'front') expect(splice <= inches(232, 1, 2) - inches(23, 1, 4) - inches(24) || splice >= inches(232, 1, 2) - inches(23, 1, 4)).toBe(true);
            }
        }
    });
    test('stock too short for any splice is said', () => {
        expect(problems(room({ system: { ...system, plate: { ...system.plate, longestPiece: zero } } }))).toContain('plate-cannot-be-spliced');
    });
    test('parts carry what the saw operator reads', () => {
        const input = room();
        expect(shellParts(input, computeShell(input))[2]).toEqual({
            mark: 'BASE-LEFT', what: 'base plate', count: 1, material: { stock: 'base_2x4' }, nominal: '2x4', section: { thickness: inches(1, 1, 2), width: inches(3, 1, 2) },
            length: inches(65), ends: { left: 0, right: 0 }, notches: [], cut: 'shop', goesTo: 'under the left wall',
            place: { wall: 'left', stretches: [{ from: inches(3, 1, 2), to: inches(68, 1, 2) }], run: inches(72), between: 'outside' },
        });
        expect(panelUnits(computeShell(input)).map(({ mark }) => mark)).toHaveLength(18);
    });
});

describe('closing corner', () => {
    const closing = (input: ShellInput) => {
        const { closing: found, problems: all } = computeShell(input);
        return found ? `${found.corner} by ${found.panel}, ${found.swings} swings ${shown(found.by)}` : all.filter(({ kind }) => kind === 'no-closing-corner').map(problem => problem.kind === 'no-closing-corner' ? problem.reason.kind : '').join();
    };
    test.each<[string, ShellInput, string]>([
        ['both sides free first', room(), 'front_right by RIGHT-3, front swings 0.375'],
        ['the wall that swings must be free', room({ freeSides: ['right'] }), 'back_right by BACK-4, right swings 0.375'],
        ['the other chain closes at the other end of the wall', room({ freeSides: ['front'], system: { ...system, chainStartsAt: 'right' } }), 'front_left by LEFT-1, front swings 0.375'],
        ['a whole module before a door section', room({
            freeSides: ['front', 'left', 'right'], width: inches(76, 1, 2), corners: 'sides', openings: [door({ near: inches(3) })],
        }), 'front_right by RIGHT-3, front swings 0.375'],
        ['named by the designer', room({ closingCorner: 'back_right' }), 'back_right by BACK-4, right swings 0.375'],
        ['named, but against the building', room({ closingCorner: 'back_left' }), 'named-corner-stands-against-the-building'],
        ['no side free', room({ freeSides: [] }), 'every-corner-stands-against-the-building'],
    ])('%s', (_name, input, expected) => expect(closing(input)).toBe(expected));
});
