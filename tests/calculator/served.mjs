// A folder on a web server of this machine, and a headless Chromium that looks at it.
//
//   const { address, browser, close } = await served(folder, modules)
import { createReadStream, existsSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { extname, join, normalize } from "node:path";
import { createGzip } from "node:zlib";

const types = { ".html": "text/html; charset=utf-8", ".js": "text/javascript", ".wasm": "application/wasm" };

export async function served(folder, modules) {
  const server = createServer((request, reply) => {
    const file = join(folder, normalize(decodeURIComponent(new URL(request.url, "http://localhost").pathname)));
    if (request.url === "/favicon.ico") return reply.writeHead(204).end();
    if (!existsSync(file) || !statSync(file).isFile()) return reply.writeHead(404).end();
    // Compressed, as a blog's server does.
    reply.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream", "content-encoding": "gzip" });
    createReadStream(file).pipe(createGzip()).pipe(reply);
  });
  await new Promise(ready => server.listen(0, "127.0.0.1", ready));
  const { chromium } = createRequire(join(modules, "here.js"))("playwright-core");
  const profile = mkdtempSync(join(tmpdir(), "turncloth-page-"));
  const browser = await chromium.launchPersistentContext(profile, {
    executablePath: "/usr/bin/chromium", headless: true,
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
  const close = async () => {
    await browser.close();
    server.close();
    rmSync(profile, { recursive: true, force: true });
  };
  return { address: `http://127.0.0.1:${server.address().port}/`, browser, close };
}

/// Each check counts; done() says how many, and fails the program where one failed.
export function checks() {
  let passed = 0, failed = 0;
  const check = (sentence, true_, seen) => {
    if (true_) return ++passed;
    ++failed;
    console.log(`FAILED: ${sentence}${seen === undefined ? "" : `; seen: ${JSON.stringify(seen)}`}`);
  };
  const done = () => {
    console.log(`${passed} passed, ${failed} failed`);
    process.exitCode = failed ? 1 : 0;
  };
  return { check, done };
}
