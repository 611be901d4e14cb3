import { test } from 'vitest';
import { hingesTooFew as rule } from '../../../language/src/rules/opening/hinges-too-few.js';
import { checkFindings } from '../../support/check.js';

// A pair that carries 60 lb: two hinges up to 60 lb, three up to 90 lb. By practice, no source, two up to 25 kg.
test('reports the model and counts the hinges', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; leaf_mass 91 lb; hinges 3; hinge_limit 60 lb }
    door entry on front {
        model     Trial
    //            ^^^^^ warning: Door entry has 3 hinges for a leaf of 91 lb; 4 are needed (the mass one pair of hinges carries). Add hinges to the door model, or choose a lighter leaf.
        from      left 23 7/8"
        hinge     left
    }
`));

test('counts by practice where the catalogue states no limit', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; leaf_mass 26 kg; hinges 2 }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    //                          ^^^^^ warning: Door entry has 2 hinges for a leaf of 57.3 lb; 3 are needed (common practice, no source). Add hinges to the door model, or choose a lighter leaf.
`));

test('accepts a leaf of exactly what they carry', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; leaf_mass 90 lb; hinges 3; hinge_limit 60 lb }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));

test('stays silent while the hinges are being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; leaf_mass 91 lb
        hinges
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
