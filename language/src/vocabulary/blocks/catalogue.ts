import { block, may, must } from '../block.js';
import { choice, count, density, layer, length, lengthRange, lengths, number, price, reference, size, text } from '../values.js';

export const catalogueBlocks = {
    catalogue: block({
        doc: 'What a maker offers: panel systems, doors, bench builds, heaters, stock with its prices.',
        standsIn: ['file'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        snippet: 'catalogue ${1:name} {\n\t$0\n}',
        properties: {
            note: may(text, 'A remark printed with every document that uses it.'),
            edition: may(text, 'Its edition.'),
        },
    }),
    panel_system: block({
        doc: 'A system of prefabricated wall and ceiling panels: its layers, modules and joints.',
        standsIn: ['catalogue'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        properties: {
            lining: must(layer('stock', 'material'), 'The lining, innermost.'),
            air_gap: may(length, 'Air gap behind the lining.', { otherwise: 'none' }),
            barrier: may(reference('material'), 'The vapour barrier.'),
            core: must(layer('material', 'stock'), 'The insulation between the frame, at its real thickness.'),
            sheathing: may(layer('material', 'stock'), 'A sheathing outside the frame.', { otherwise: 'none' }),
            facing: may(layer('material', 'stock'), 'The outside facing.', { otherwise: 'none' }),
            ceiling_core: may(layer('material', 'stock'), 'The insulation of ceiling panels.', { otherwise: 'as the walls' }),
            ceiling_facing: may(layer('material', 'stock'), 'The top of ceiling panels.', { otherwise: 'as the walls' }),
            modules: must(lengths, 'Cover widths of the stock panels.'),
            made_to_measure: may(lengthRange, 'Cover widths a made-to-measure panel may have.', { otherwise: 'none are made' }),
            engagement: must(length, 'How far a tongue or hook engages the next panel.'),
            corners: must(choice('front_and_back', 'sides', 'pinwheel'), 'Which walls run through at the corners.'),
            plate: must(reference('stock'), 'Stock of the base plates, laid flat.'),
            plate_set_in: must(length, 'From the outside of the facing to the outer edge of the plate.'),
            frame: may(reference('stock'), 'Stock of the panel frames.'),
            moulding: may(reference('stock'), 'Stock of the ceiling moulding inside.', { otherwise: 'no moulding is listed' }),
            joint: may(choice('tongue', 'lift_and_drop'), 'How panels lock.', { otherwise: 'tongue' }),
        },
    }),
    material: block({
        doc: 'A layer material that is not cut from boards.',
        standsIn: ['catalogue'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        properties: {
            kind: must(choice('wood', 'insulation', 'barrier', 'board', 'metal', 'other'), 'What it is.'),
            density: may(density, 'Its density, for the mass of panels.'),
        },
    }),
    stock: block({
        doc: 'Boards as bought: section, lengths, price.',
        standsIn: ['catalogue'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        properties: {
            nominal: may(text, 'The nominal size it is ordered by, such as "2x4"; a name, not a measure.'),
            section: must(size, 'The dressed section, thickness x width.'),
            cover: may(length, 'Face width a worked board covers.', { otherwise: 'the width of the section' }),
            species: may(text, 'The wood.'),
            grade: may(text, 'The grade.'),
            treated: may(choice('no', 'treated', 'durable'), 'Whether it is treated or durable by nature.', { otherwise: 'no' }),
            lengths: must(lengths, 'The lengths it comes in.'),
            price: may(price, 'Its price.'),
            density: may(density, 'Its density, for the mass of panels.'),
            kerf: may(length, 'What one saw cut takes.', { otherwise: '1/8"' }),
            end_trim: may(length, 'What is cut off each end before use.', { otherwise: '0"' }),
            on_hand: may(count, 'Boards in the store, all of the longest length.', { otherwise: 'none counted' }),
        },
    }),
    screw: block({
        doc: 'A wood screw.',
        standsIn: ['catalogue'], name: 'required', walls: 'none', isRepeatable: true,
        properties: {
            length: must(length, 'Its length under the head.'),
            diameter: may(length, 'Its shank diameter.'),
            gauge: may(number, 'Its gauge number.'),
            material: may(choice('stainless', 'zinc', 'brass'), 'What it is made of.', { otherwise: 'stainless' }),
            penetration: may(length, 'Least penetration in the member that holds it.', { otherwise: '1", common practice' }),
        },
    }),
} as const;
