/** Checks a page with axe-core, the open-source accessibility rules, and gives back what matters. */
import fs from 'node:fs';
import path from 'node:path';
import { root } from './paths.mjs';

/**
 * @param frame the document to check.
 * @returns the serious and critical violations, one line each, and how many rules passed.
 */
export async function checkAccessibility(frame) {
    // Evaluated, not added as a script: the page's own policy rightly refuses scripts that are not its own.
    await frame.evaluate(fs.readFileSync(path.join(root, 'node_modules/axe-core/axe.min.js'), 'utf8'));
    return await frame.evaluate(async () => {
        const result = await globalThis.axe.run(document);
        const grave = result.violations.filter(violation => violation.impact === 'serious' || violation.impact === 'critical');
        return {
            passed: result.passes.length,
            grave: grave.map(({ id, help, nodes }) => `${id}: ${help} (${nodes.length}, first ${nodes[0].html.slice(0, 120)} ${nodes[0].failureSummary})`),
        };
    });
}
