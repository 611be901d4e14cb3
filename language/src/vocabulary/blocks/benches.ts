import { block, may, must } from '../block.js';
import { choice, count, flag, length, lengthRange, place, reference } from '../values.js';

export const benchBlocks = {
    bench: block({
        doc: 'One tier of benches along one wall, or along several in an L or U; the first wall named runs through.',
        standsIn: ['job'], name: 'required', walls: 'several', isRepeatable: true,
        snippet: 'bench ${1:upper} on ${2:back} {\n\tbuild     ${3:build}\n\ttop       ${4:37"}\n\tdepth     ${5:20"}\n}',
        properties: {
            build: must(reference('bench_build'), 'How the maker builds its benches.', { oftenCalled: ['model', 'type', 'construction'] }),
            top: must(length, 'Finished top over the finished floor.', { oftenCalled: ['height', 'seat_height', 'seat'] }),
            depth: must(length, 'From front edge to back edge of the slats.', { oftenCalled: ['width'] }),
            length: may(length, 'Length along the first wall named.', { otherwise: 'wall to wall' }),
            from: may(place, 'From a neighbouring wall\'s lining to the near end, when it does not run wall to wall.'),
            in_front_of: may(reference('bench'), 'The higher tier it stands in front of.', { otherwise: 'the next higher bench on the same wall' }),
            overlap: may(length, 'How far it reaches under the tier behind it.', { otherwise: '0"' }),
            load_path: may(choice('end_ledgers', 'back_ledger_and_legs'), 'What carries it.', { otherwise: 'as the bench build states' }),
            fascia: may(flag, 'Whether the front is closed with a board.', { otherwise: 'no' }),
            back_rest: may(length, 'Height of a back rest\'s upper edge over the bench top.', { otherwise: 'no back rest' }),
            head_rest: may(flag, 'Whether a head rest belongs to it.', { otherwise: 'no' }),
            is_often_wet: may(flag, 'Whether its wood is wet for weeks, as beside a shower; wet service counts for its strength.', { otherwise: 'no' }),
            is_accessible: may(flag, 'Whether it is the accessible bench of the room.', { otherwise: 'no' }),
        },
    }),
    bench_build: block({
        doc: 'How a maker builds benches: slats on cross-bearers on rails or ledgers, and legs.',
        standsIn: ['catalogue'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        properties: {
            slat: must(reference('stock'), 'Stock of the slats, laid flat along the length.'),
            slat_gap: must(lengthRange, 'Least and greatest gap between slats.'),
            bearer: must(reference('stock'), 'Stock of the cross-bearers, laid flat, front to back.'),
            bearer_spacing: must(length, 'Greatest distance between centres of cross-bearers.'),
            rail: must(reference('stock'), 'Stock of the rails, on edge along the front and back.'),
            ledger: must(reference('stock'), 'Stock of the ledgers, on edge on the wall.'),
            leg: must(reference('stock'), 'Stock of the legs.'),
            leg_spacing: may(length, 'Greatest length of a bench between supports.', { otherwise: '6\', common practice' }),
            load_path: may(choice('end_ledgers', 'back_ledger_and_legs'), 'What carries a bench.', { otherwise: 'end_ledgers' }),
            fascia: may(reference('stock'), 'Stock of fascia boards.'),
            back_rest: may(reference('stock'), 'Stock of back rests.'),
            ledger_screw: may(reference('screw'), 'The screw that fastens a ledger to the wall.'),
            ledger_screw_spacing: may(length, 'Greatest distance between the screws of a ledger.', { otherwise: '16", common practice' }),
            ledger_screw_rows: may(count, 'Screws over one another at each place of a ledger.', { otherwise: '1' }),
            slat_screw: may(reference('screw'), 'The screw that fastens a slat from below.'),
            wall_gap: may(length, 'Clearance of bench ends and backs to the lining.', { otherwise: '0"' }),
        },
    }),
} as const;
