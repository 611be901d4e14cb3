import type { ReportedFinding } from '../core/finding.js';
import type { Sourced } from '../core/span.js';
import { familyOf, isLower, mayBeLowered } from './may-be-lowered.js';
import type { ChosenSeverity, ProjectSettings } from './settings.js';

/** Findings as a project wants them. */
export interface JudgedFindings {
    readonly findings: readonly ReportedFinding[];
    /** What the settings turned off, with the severity it had. */
    readonly leftOut: readonly ReportedFinding[];
}

/**
 * Gives findings the severities the settings choose: the one place where a severity is decided outside of rules and waivers. What may not be lowered stays,
 * and says so beside the place that wanted it; an accepted finding stays the info its waiver made it, unless it is turned off.
 */
export function applySeverities(findings: readonly ReportedFinding[], { severities }: ProjectSettings): JudgedFindings {
    if (severities.length === 0) return { findings, leftOut: [] };
    const kept: ReportedFinding[] = [];
    const leftOut: ReportedFinding[] = [];
    for (const finding of findings) {
        const chosen = chosenFor(finding.rule, severities);
        if (!chosen || chosen.value === finding.severity || (finding.waived && chosen.value !== 'off')) { kept.push(finding); continue; }
        const { value: to, span: at } = chosen;
        const related = (message: string): Pick<ReportedFinding, 'related'> => ({ related: [...finding.related ?? [], { at, message }] });
        if (!finding.waived && isLower(to, finding.severity) && !mayBeLowered(finding)) {
            kept.push({ ...finding, ...related(`The settings would have it ${to}; it can never be lowered.`) });
            continue;
        }
        const changed = { ...finding, changed: { from: finding.severity, to, at } };
        if (to === 'off') leftOut.push(changed);
        else kept.push({ ...changed, severity: to, ...related(`The settings make it ${to}; by itself it is ${finding.severity}.`) });
    }
    return { findings: kept, leftOut };
}

/** The nearest place that speaks of a rule; there its own id goes before its family. */
function chosenFor(rule: string, layers: ProjectSettings['severities']): Sourced<ChosenSeverity> | undefined {
    const family = familyOf(rule);
    for (const layer of layers) {
        const chosen = layer.get(rule) ?? (family === undefined ? undefined : layer.get(family));
        if (chosen) return chosen;
    }
    return undefined;
}
