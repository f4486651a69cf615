import { phoneFiles } from '@/app/phone-files';

/** The page in which the phone's app starts. Nothing in it is anybody's. The worker is begun first: it has more to load. */
export function shell(nonce: string): string {
  const { script, style, worker, parts } = phoneFiles();
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>At the pump · Bedplate</title>
<script nonce="${nonce}">globalThis.bedplateWorker = new Worker('${worker}', { type: 'module', name: 'bedplate' })</script>
${parts.map((part) => `<link rel="modulepreload" href="${part}" nonce="${nonce}">`).join('\n')}
<link rel="stylesheet" href="${style}" nonce="${nonce}">
<script type="module" src="${script}" nonce="${nonce}"></script>
<link rel="manifest" href="/manifest.webmanifest">
<link rel="icon" href="/icon.svg" type="image/svg+xml">
</head>
<body>
<a class="skip" href="#content">To the content</a>
<div id="phone">
<header class="bar"><a class="brand" href="/pump">Bedplate</a></header>
<main id="content" tabindex="-1" class="sheet">
<p class="offline" role="status"><span>Reading what lies on this phone …</span></p>
<noscript><p>At the pump Bedplate needs script. <a href="/">The whole register</a> works without it.</p></noscript>
</main>
</div>
</body>
</html>
`;
}
