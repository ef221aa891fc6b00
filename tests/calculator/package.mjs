// The packed package as people use it: installed in an empty folder, from Node, from TypeScript, and on pages in a headless
// Chromium; each step of the guide; and its figures against the native program's.
//
//   node package.mjs <turncloth-....tgz> <turncloth_calculator> <folder of node_modules>
import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { isDeepStrictEqual } from "node:util";
import { checks, served } from "./served.mjs";

const [tarball, native, modules] = process.argv.slice(2).map(path => resolve(path));
const here = dirname(fileURLToPath(import.meta.url));
const sources = resolve(here, "../../examples/calculator");
const { check, done } = checks();

// The guide, step by step.
const guide = readFileSync(join(sources, "GUIDE.md"), "utf8");
const blocks = kind => [...guide.matchAll(new RegExp("^```" + kind + "\\n([^]*?)^```$", "gm"))].map(([, text]) => text);
const folder = mkdtempSync(join(tmpdir(), "turncloth-blog-"));
const run = (command, ...rest) => execFileSync(command, rest, { cwd: folder, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
cpSync(tarball, join(folder, basename(tarball)));
run("sh", "-e", "-c", blocks("sh")[0].replace("npm install", "npm install --offline --no-audit --no-fund"));
const [page, inCentimetres] = blocks("html");
writeFileSync(join(folder, "index.html"), page);
writeFileSync(join(folder, "functions.mjs"), blocks("js")[0]);
check("a calculator on a page takes ten lines", page.trimEnd().split("\n").length <= 10);
check("the functions of the guide print what it says", run("node", "functions.mjs") === blocks("text")[0], run("node", "functions.mjs"));
check("the guide's own calculation is the one that is built", blocks("cpp")[0] === readFileSync(join(sources, "bunting.cpp"), "utf8"));

// What is packed.
const packed = JSON.parse(readFileSync(join(folder, "node_modules/turncloth/package.json"), "utf8"));
const macro = name => readFileSync(resolve(here, "../../include/turncloth/version.hpp"), "utf8").match(new RegExp(`VERSION_${name} (\\d+)`))[1];
check("it is packed in under 300 kB", statSync(tarball).size < 300_000, statSync(tarball).size);
check("it depends on nothing", !packed.dependencies && !packed.peerDependencies);
check("its version is the library's", packed.version === ["MAJOR", "MINOR", "PATCH"].map(macro).join("."), packed.version);
check("its licence is in it", readFileSync(join(folder, "node_modules/turncloth/LICENSE"), "utf8").startsWith("Boost Software License"));

// From TypeScript: the package's types, strictly.
cpSync(join(here, "types.mts"), join(folder, "types.mts"));
let complaint = "";
try {
  run("node", join(modules, "typescript/bin/tsc"), "--noEmit", "--strict", "--target", "es2022", "--module", "nodenext", "types.mts");
} catch (why) {
  complaint = why.stdout;
}
check("the types say what the functions take and give", complaint === "", complaint);

// Figures as the native program has them.
const { calculate, list, panel, cloth, zipper, divide, map, withUnits, Refusal } = await import(pathToFileURL(join(folder, "node_modules/turncloth/turncloth.js")));
const questions = [];
const seam = { is: "seam", allowance: "5/8 in" };
for (const units of ["in", "cm"])
  for (const width of ["9", "21 3/8", "31,75 cm", "5' 3\"", 12.5, 0, "-4", "1,000", "\u00bd", "99999999999999999999", "<b>", "12\u201313", "12 ins", "30 cms"])
    questions.push(["panel", { units, width, height: "12 1/3", edges: { all: seam, top: { is: "heading", depth: "3 in", under: "1/2 in" } } }],
                   ["bound", { units, width, height: 12, binding: "3/8" }], ["divide", { units, length: width, parts: 7 }],
                   ["map", { units, longer: width, shorter: 7, spans: 3 }], ["bunting", { units, flag: width, flags: 5, gap: "1/2", tie: 12 }],
                   ["zipper", { units, across: width, margin: "7/8 in", beyond: "5/8 in", pieces: 12, roll: "10 m" }],
                   ["cloth", { units, pieces: [{ width, height: 9, count: 3, may_turn: true }], width: "60 in", selvedge: "1/2 in", gap: "1/4 in" }]);
for (const pieces of ["7 of 3 x 4; 2 of 5 1/2 x 9", "29 x 32\n2 of 13 by 9", "29 \u00d7 32, 2 of 13 x 9", "12 of 17,5 x 23 cm", "0 of 3 x 4", "3 of 13", ""])
  questions.push(["cloth", { pieces, width: 36 }], ["with_units", { of: "cloth", pieces, units: "cm" }]);
questions.push(["none", {}], ["panel", { width: 1 }], ["panel", { width: 1, height: 2, colour: "red" }], ["panel", { width: 1, height: 2, edges: { top: { is: "frill" } } }],
               ["panel", { width: 9, height: 9, edges: { top: { is: "seam", depth: 1 } } }], ["panel", { width: 9, height: 9, units: "inches" }], ["list", {}]);
const there = execFileSync(native, { input: questions.map(([ask, given]) => JSON.stringify({ ...given, ask })).join("\n") + "\n", encoding: "utf8", maxBuffer: 1 << 28 }).trimEnd().split("\n").map(line => JSON.parse(line));
check("the native program answers every question", there.length === questions.length, there.length);
const alike = (a, b) => isDeepStrictEqual(JSON.parse(JSON.stringify(a)), b);
for (const [i, [name, given]] of questions.entries()) {
  const answer = await calculate(name, given).catch(why => {
    if (!(why instanceof Refusal)) throw why;
    const { name: _, ...facts } = why;
    return { refused: { sentence: why.message, ...facts } };
  });
  const native = name === "list" ? { calculations: [...there[i].calculations].sort((a, b) => a.name.localeCompare(b.name)) } : there[i];
  const packed = name === "list" ? { calculations: [...answer.calculations].sort((a, b) => a.name.localeCompare(b.name)) } : answer;
  check(`package and library agree on ${name} of ${JSON.stringify(given)}`, alike(packed, native), [packed, native]);
}

// By hand: 14 + 2 (1/4 + 1) = 16 1/2 in; 5 yd = 180 in give 17 of 10 1/2 in; 49 : 35 = 7/5; 32 + 2 -> 36 in.
const hem = { is: "double-turned hem", first: "1/4 in", depth: "1 in" };
check("a panel is as by hand", (await panel({ width: "14 in", height: 11, edges: { all: hem } })).cut.width.near === 16.5);
check("zippers are as by hand", (await zipper({ across: 11, margin: "3/4", beyond: "1/2", pieces: 4, roll: "5 yd" })).from_one_roll === 17);
check("a division is as by hand", isDeepStrictEqual((await divide({ length: 16, parts: 4 })).marks.map(mark => mark.near), [4, 8, 12]));
check("a mapping is as by hand", (await map({ longer: 49, shorter: 35, spans: 7 })).fullness.exact === "1 2/5");
check("cloth is as by hand", (await cloth({ pieces: "29 x 32; 3 of 13 x 9", width: 44, selvedge: "1/2", ends: 1 })).buy.near === 36);
const tight = await panel({ width: 14, height: "1/2 in", edges: { all: hem } }).catch(why => why);
check("a refusal says what was given and what is allowed", tight instanceof Refusal && tight.kind === "no_room" && tight.message.length > 20 && tight.given !== undefined, tight);
check("what was typed keeps its unit", (await withUnits("panel", { width: "12 1/2", height: "3 cm", units: "in" })).width === "12 1/2 in");

// On pages.
writeFileSync(join(folder, "two.html"), `<!doctype html><html lang="en"><title>Two</title><script type="module" src="turncloth/element.js"></script><h1>Two</h1>
<main><turncloth-calculator id="first" sum="bunting" level="2"></turncloth-calculator>${inCentimetres.replace("<turncloth-calculator", '<turncloth-calculator id="second"')}
<turncloth-calculator id="third" sum="frills"></turncloth-calculator></main></html>`);
const { address, browser, close } = await served(folder, modules);
const tab = await browser.newPage();
const complaints = [];
tab.on("pageerror", error => complaints.push(String(error)));
tab.on("console", message => message.type() === "error" && complaints.push(message.text()));

await tab.goto(address + "index.html");
await tab.waitForSelector("turncloth-calculator dl");
const figures = id => tab.$$eval(`${id} dl div`, rows => Object.fromEntries(rows.map(row => [row.querySelector("dt").textContent, row.querySelector("dd").textContent])));
check("the guide's page works six zippers out", (await figures("turncloth-calculator")).sliders === "6", await figures("turncloth-calculator"));

await tab.goto(address + "two.html");
await tab.waitForSelector("#first dl");
await tab.waitForSelector("#second dl");
// By hand: 12 x 6 + 11 x 1 + 2 x 18 = 119 in = 302.26 cm; 40 + 2 x 1.5 = 43 cm = 16.93 in, nearest sixteenth 15/16.
check("each of two on a page has its own sum", (await figures("#first"))["tape to cut"] === "119 in (302.3 cm)", await figures("#first"));
check("what is tied has its caution", (await tab.textContent("#first .caution")).includes("infants"));
check("and its own units", (await figures("#second"))["cut width"].includes("43 cm"), await figures("#second"));
check("one that is none says which there are", (await tab.textContent("#third [role=status]")).includes("bunting"));
check("ids are each element's own", await tab.evaluate(() => document.getElementById("form") === null));

// The keyboard alone: to the first field of the first, which is typed over.
const focused = () => tab.evaluate(() => [document.activeElement.id, document.activeElement.shadowRoot?.activeElement?.id]);
for (let i = 0; i < 9 && (await focused())[1] !== "gap"; ++i) await tab.keyboard.press("Tab");
check("the keyboard reaches a field", (await focused()).join() === "first,gap", await focused());
await tab.keyboard.press("Control+A");
await tab.keyboard.type("-1 in");
await tab.waitForSelector("#first #gap[aria-invalid=true]");
check("a refusal is shown as text beside its field", (await tab.textContent("#first #why-gap")) === blocks("text")[1].trimEnd(), await tab.textContent("#first #why-gap"));
check("the field names it for a screen reader", await tab.getAttribute("#first #gap", "aria-describedby") === "why-gap");
check("its border shows it", await tab.$eval("#first #gap", (gap, other) => getComputedStyle(gap).borderTopWidth !== getComputedStyle(gap.getRootNode().getElementById(other)).borderTopWidth, "flag"));
check("the last good answer stays, greyed", await tab.$eval("#first #answers", answers => answers.classList.contains("stale") && answers.textContent.includes("before this change") && answers.textContent.includes("119 in") && Number(getComputedStyle(answers).opacity) < 1));
check("the other is untouched", (await figures("#second"))["cut width"].includes("43 cm") && !await tab.$eval("#second #answers", answers => answers.classList.contains("stale")));
await tab.waitForFunction(said => document.querySelector("#first").shadowRoot.querySelector("#aloud").textContent === said, blocks("text")[1].trimEnd());
await tab.keyboard.press("Control+A");
await tab.keyboard.type("2");
// By hand: 11 in more of gaps.
check("put right, it answers again", (await figures("#first"))["tape to cut"] === "130 in (330.2 cm)" && await tab.getAttribute("#first #gap", "aria-invalid") === "false", await figures("#first"));
check("an answer is not announced while it is typed", await tab.$eval("#first #aloud", aloud => !aloud.textContent.includes("130")));
await tab.waitForFunction(() => document.querySelector("#first").shadowRoot.querySelector("#aloud").textContent.includes("tape to cut: 130 in"));
check("every field has a label", await tab.evaluate(() => [...document.querySelectorAll("turncloth-calculator")].flatMap(one => [...one.shadowRoot.querySelectorAll("input")]).every(input => input.labels.length === 1)));
await tab.check("#first input[value=cm]");
await tab.waitForFunction(() => document.querySelector("#first").shadowRoot.querySelector("#flag").value === "6 in");
check("what was typed in inches stays in inches", (await figures("#first"))["tape to cut"] === "330.2 cm (130 in)", await figures("#first"));

// Looks: the page's variables, widths, and what an accessibility checker finds.
await tab.addStyleTag({ content: "turncloth-calculator { --turncloth-line: rgb(1, 2, 3); --turncloth-text: rgb(10, 20, 30); }" });
check("variables of the page's style reach it", await tab.$eval("#second #width", input => getComputedStyle(input).borderTopColor === "rgb(1, 2, 3)" && getComputedStyle(input).color === "rgb(10, 20, 30)"));
await tab.setViewportSize({ width: 320, height: 640 });
check("nothing is wider than a narrow screen", await tab.evaluate(() => document.documentElement.scrollWidth <= 320), await tab.evaluate(() => document.documentElement.scrollWidth));
await tab.addScriptTag({ content: readFileSync(join(modules, "axe-core/axe.min.js"), "utf8") });
for (const scheme of ["light", "dark"]) {
  await tab.emulateMedia({ colorScheme: scheme });
  const found = await tab.evaluate(async () => (await axe.run("main")).violations.map(({ id, nodes }) => [id, nodes.map(node => node.target)]));
  check(`an accessibility checker finds nothing in ${scheme}`, found.length === 0, found);
}
check("the pages never complained", complaints.length === 0, complaints);

// Where the engine comes late, or not at all.
const waiting = await browser.newPage();
let arrive;
await waiting.route("**/engine.wasm", route => new Promise(done => { arrive = done; }).then(() => route.abort()));
await waiting.goto(address + "index.html", { waitUntil: "commit" });
await waiting.waitForSelector("turncloth-calculator [role=status]");
check("it says at once that it is loading", (await waiting.textContent("turncloth-calculator [role=status]")).startsWith("Loading"));
while (!arrive) await waiting.waitForTimeout(10);
arrive();
await waiting.waitForSelector("turncloth-calculator .why");
check("and says so where it cannot be loaded", (await waiting.textContent("turncloth-calculator .why")).startsWith("This calculation cannot be shown"));

await close();
rmSync(folder, { recursive: true, force: true });
done();
