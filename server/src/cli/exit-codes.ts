/** How a run ended, for scripts. Public: never renumbered. */
export const exitCodes = { none: 0, findings: 1, usage: 2, unreadable: 3, internal: 4 } as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** A mistake of the person or trouble outside the program: one message, no stack. */
export class CommandFailure extends Error {
    constructor(readonly exitCode: ExitCode, message: string) {
        super(message);
    }
}

export const usageFailure = (message: string): CommandFailure => new CommandFailure(exitCodes.usage, message);
export const unreadable = (message: string): CommandFailure => new CommandFailure(exitCodes.unreadable, message);
