import * as vscode from 'vscode';

/**
 * The page's frame. Everything a job says reaches it as data afterwards; nothing here depends on a document.
 * @param pageFolder the one folder the page may load from.
 * @param page its file's name, and what the page is called.
 */
export function pageHtml(webview: vscode.Webview, pageFolder: vscode.Uri, page: { readonly file: string; readonly title: string }): string {
    const nonce = [...crypto.getRandomValues(new Uint8Array(16))].map(byte => byte.toString(16).padStart(2, '0')).join('');
    const script = webview.asWebviewUri(vscode.Uri.joinPath(pageFolder, `${page.file}.js`)).toString();
    const styles = webview.asWebviewUri(vscode.Uri.joinPath(pageFolder, `${page.file}.css`)).toString();
    const policy = [
        `default-src 'none'`,
        `script-src 'nonce-${nonce}'`,
        `style-src ${webview.cspSource}`,
        `base-uri 'none'`,
        `form-action 'none'`,
    ].join('; ');
    return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${page.title}</title>
<link rel="stylesheet" href="${styles}">
</head>
<body>
<main id="page" data-page="${page.file}"></main>
<script nonce="${nonce}" src="${script}"></script>
</body>
</html>
`;
}
