import type * as vscode from 'vscode';

/** Registers a command so that a failure of it is told. */
export type Register = (name: string, run: (argument: unknown) => Promise<void> | void) => vscode.Disposable;
