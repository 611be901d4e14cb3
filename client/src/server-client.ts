import type { CancellationToken } from 'vscode';
import { LanguageClient, State, type MessageSignature } from 'vscode-languageclient/node';

/**
 * The connection to the language server. A request that meets the server just as it stops or restarts has no answer and
 * needs none: the editor asks again. Left to itself the library logs each as a failure, and a log that cries over
 * nothing is not read when something is wrong.
 */
export class HotroomClient extends LanguageClient {
    override handleFailedRequest<T>(
        type: MessageSignature, token: CancellationToken | undefined, error: unknown, defaultValue: T, showNotification?: boolean, throwOnCancel?: boolean,
    ): T {
        if (this.state !== State.Running) return defaultValue;
        return super.handleFailedRequest(type, token, error, defaultValue, showNotification, throwOnCancel);
    }
}
