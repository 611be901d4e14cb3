import { test } from 'vitest';
import { glassWiderThanSection as rule } from '../../../language/src/rules/opening/glass-wider-than-section.js';
import { checkFindings } from '../../support/check.js';

test('reports the model', () => checkFindings(rule, `
    window_model Pane { glass_size 24 1/8" x 24"; section 24"; glass safety }
    window view on left {
        model     Pane
    //            ^^^^ error: The glass of window view is 24 1/8" wide and its section 24"; the section has to hold the glass. Mend the window model.
        from      front 20"
        sill      40"
    }
`));

test('accepts glass as wide as the section', () => checkFindings(rule, `
    window_model Pane { glass_size 24" x 24"; section 24"; glass safety }
    window view on left { model Pane; from front 20"; sill 40" }
`));

test('stays silent while the section is being typed', () => checkFindings(rule, `
    window_model Pane {
        glass_size 26" x 24"; glass safety
        section
    }
    window view on left { model Pane; from front 20"; sill 40" }
`));
