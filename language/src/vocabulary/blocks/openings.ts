import { block, may, must } from '../block.js';
import { centrePlace, choice, count, flag, length, mass, place, price, reference, size, temperature } from '../values.js';

export const openingBlocks = {
    door: block({
        doc: 'A door in its panel section.',
        standsIn: ['job'], name: 'optional', walls: 'one', isRepeatable: true,
        snippet: 'door ${1:entry} on ${2:front} {\n\tmodel     ${3:model}\n\tfrom      ${4:left} ${5:12"}\n\thinge     ${6:left}\n}',
        properties: {
            model: must(reference('door_model'), 'The door in the catalogue.'),
            from: may(place, 'From a neighbouring wall\'s lining to the near edge of the clear opening.'),
            centre: may(centrePlace, 'From a neighbouring wall\'s lining to the middle of the clear opening.', { aliases: ['center'] }),
            hinge: must(choice('front', 'left', 'back', 'right'), 'The side of the hinges: toward which neighbouring wall.', { oftenCalled: ['hand', 'handing', 'hung', 'hinges'] }),
            swing: may(choice('outward', 'inward'), 'Which way the leaf opens.', { otherwise: 'outward', oftenCalled: ['opens', 'opening'] }),
            threshold: may(length, 'Height of the threshold over the finished floor.', { otherwise: 'as the door model states', takenFrom: 'model.threshold' }),
        },
    }),
    window: block({
        doc: 'A fixed window in its panel section.',
        standsIn: ['job'], name: 'optional', walls: 'one', isRepeatable: true,
        snippet: 'window ${1:view} on ${2:left} {\n\tmodel     ${3:model}\n\tfrom      ${4:front} ${5:12"}\n\tsill      ${6:36"}\n}',
        properties: {
            model: must(reference('window_model'), 'The window in the catalogue.'),
            from: may(place, 'From a neighbouring wall\'s lining to the near edge of the clear glass.'),
            centre: may(centrePlace, 'From a neighbouring wall\'s lining to the middle of the clear glass.', { aliases: ['center'] }),
            sill: must(length, 'From the finished floor to the lower edge of the clear glass.', { oftenCalled: ['bottom', 'height'] }),
        },
    }),
    door_model: block({
        doc: 'A door a maker offers: leaf, clear opening, glass, hinges and the section it comes in.',
        standsIn: ['catalogue'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        properties: {
            leaf: must(size, 'The leaf, width x height.'),
            leaf_thickness: may(length, 'Thickness of the leaf.', { otherwise: '1 1/2", to work out how far the open leaf stands in the opening' }),
            clear: must(size, 'The clear opening with the leaf open at 90 degrees, width x height.'),
            section: must(length, 'Cover width of the wall section the door comes in.'),
            glass: may(choice('none', 'safety', 'plain'), 'What the pane is.', { otherwise: 'none' }),
            pane: may(size, 'Size of the pane.', { otherwise: 'no pane' }),
            leaf_mass: may(mass, 'Mass of the leaf with its glass.'),
            hinges: may(count, 'Number of hinges.'),
            hinge_limit: may(mass, 'Leaf mass one pair of hinges carries.'),
            gap: may(length, 'Gap at the top and at both sides.', { otherwise: '1/8"' }),
            bottom_gap: may(length, 'Gap under the leaf.', { otherwise: '1/2"' }),
            threshold: may(length, 'Height of the threshold over the finished floor.', { otherwise: 'the base plate is cut out and there is none' }),
            catch: must(choice('roller', 'magnetic', 'latch', 'lock'), 'How the door is held shut.'),
            handle_inside: may(choice('wood', 'metal', 'none'), 'What the inside handle is made of.', { otherwise: 'wood' }),
            frame: may(reference('stock'), 'Stock the door frame is cut from.'),
            frame_width: may(length, 'Face width of one frame jamb.', { otherwise: 'the width of its stock' }),
            price: may(price, 'Price of the door in its section.'),
        },
    }),
    window_model: block({
        doc: 'A window a maker offers.',
        standsIn: ['catalogue'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        properties: {
            glass_size: must(size, 'The clear glass, width x height.'),
            section: must(length, 'Cover width of the wall section the window comes in.'),
            glass: must(choice('safety', 'plain'), 'What the pane is.'),
            panes: may(count, 'Number of panes one behind the other.', { otherwise: 'one' }),
            trim: may(reference('stock'), 'Stock the inside trim is cut from.'),
            price: may(price, 'Price of the window in its section.'),
        },
    }),
    light_model: block({
        doc: 'A luminaire and what it withstands.',
        standsIn: ['catalogue'], name: 'required', hasTitle: true, walls: 'none', isRepeatable: true,
        properties: {
            body: must(size, 'Its body on the wall, width x height.'),
            depth: must(length, 'How far it stands into the room.'),
            rating: may(temperature, 'The temperature it is rated for.'),
            cable_rating: may(temperature, 'The temperature its cable is rated for.'),
            protection: may(choice('none', 'IP24', 'IPX4', 'IPX5', 'IP44', 'IP54', 'IP65'), 'Its ingress protection.'),
            is_low_voltage: may(flag, 'Whether it works on separated extra-low voltage.'),
        },
    }),
} as const;
