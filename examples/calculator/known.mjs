// node known.mjs <package> <index.html>: the page with what it would ask the engine first written into it, so that it has
// its list of sums and its first answer before the engine is there.
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { pathToFileURL } from "node:url";

const [folder, page] = process.argv.slice(2).map(path => resolve(path));
const { calculate, list } = await import(pathToFileURL(`${folder}/turncloth.js`));

const first = "bound"; // as in the page
const calculations = await list();
const { asks } = calculations.find(({ name }) => name === first);
const answer = await calculate(first, { units: "in", ...Object.fromEntries(asks.map(({ name, first }) => [name, first.in])) });
// Nothing within it may look like the end of its element.
const known = JSON.stringify({ calculations, answer }).replaceAll("<", "\\u003c");
process.stdout.write(readFileSync(page, "utf8").replace(/(?<=<script type="application\/json" id="known">).*(?=<\/script>)/, () => known));
