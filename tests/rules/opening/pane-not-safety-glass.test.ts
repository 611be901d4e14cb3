import { test } from 'vitest';
import { paneNotSafetyGlass as rule } from '../../../language/src/rules/opening/pane-not-safety-glass.js';
import { checkFindings } from '../../support/check.js';

// Common practice, no source.
test('reports a window of plain glass', () => checkFindings(rule, `
    window_model Pane { glass_size 18" x 24"; section 24"; glass plain }
    window view on left {
        model     Pane
    //            ^^^^ error: The pane of window view is plain glass; safety glass is needed (common practice, no source; the local code has its own rules on glass). Choose a window with safety glass.
        from      front 26"
        sill      40"
    }
`));

test('reports a door of plain glass', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; glass plain; pane 16" x 60" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    //                          ^^^^^ error: The pane of door entry is plain glass; safety glass is needed (common practice, no source; the local code has its own rules on glass). Choose a door with safety glass.
`));

test('reports a pane nobody says is safety glass', () => checkFindings(rule, `
    door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; frame_width 1 1/2"; pane 16" x 60" }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
    //                          ^^^^^ error: The pane of door entry is not said to be safety glass; safety glass is needed (common practice, no source; the local code has its own rules on glass). Write glass safety in the model if it is, or choose another.
`));

test('accepts safety glass and a leaf without glass', () => checkFindings(rule, `
    door entry on front { model Glass24; from left 23 7/8"; hinge left }
    door second on right { model Leaf24; from back 23 7/8"; hinge back }
    window view on left { model View18; from front 26"; sill 40" }
`));

test('stays silent while the glass is being typed', () => checkFindings(rule, `
    door_model Trial {
        leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; pane 16" x 60"
        glass
    }
    door entry on front { model Trial; from left 23 7/8"; hinge left }
`));
