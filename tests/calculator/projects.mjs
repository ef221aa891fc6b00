// The packed package of projects as people use it: installed in an empty folder, from Node, from TypeScript, and on pages in a
// headless Chromium; each step of its guide; the page that opens a file; and its sheets and handouts against the program's.
//
//   node projects.mjs <turncloth-projects-....tgz> <folder of the page> <turncloth_sheets> <folder of node_modules>
import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { checks, served } from "./served.mjs";

const [tarball, built, native, modules] = process.argv.slice(2).map(path => resolve(path));
const here = dirname(fileURLToPath(import.meta.url));
const examples = resolve(here, "../../examples"), designs = join(examples, "designs");
const { check, done } = checks();
const read = (...path) => readFileSync(join(...path), "utf8");
const bag = read(designs, "peg_bag.json");

// The guide, step by step.
const guide = read(examples, "calculator/projects/GUIDE.md");
const block = kind => guide.match(new RegExp("^```" + kind + "\\n([^]*?)^```$", "m"))[1];
const folder = mkdtempSync(join(tmpdir(), "turncloth-projects-"));
const run = (command, ...rest) => execFileSync(command, rest, { cwd: folder, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
cpSync(tarball, join(folder, basename(tarball)));
writeFileSync(join(folder, "peg_bag.json"), bag);
run("sh", "-e", "-c", block("sh").replace("npm install", "npm install --offline --no-audit --no-fund"));
writeFileSync(join(folder, "index.html"), block("html"));
writeFileSync(join(folder, "functions.mjs"), block("js"));
check("a project file on a page takes ten lines", block("html").trimEnd().split("\n").length <= 10);
const printed = run("node", "functions.mjs");
check("the functions of the guide print what it says", printed === block("text"), printed);

// What is packed.
const installed = join(folder, "node_modules/turncloth-projects");
const packed = JSON.parse(read(installed, "package.json"));
const macro = name => read(here, "../../include/turncloth/version.hpp").match(new RegExp(`VERSION_${name} (\\d+)`))[1];
check("it is packed in under 800 kB", statSync(tarball).size < 800_000, statSync(tarball).size);
check("it depends on nothing", !packed.dependencies && !packed.peerDependencies);
check("its version is the library's", packed.version === ["MAJOR", "MINOR", "PATCH"].map(macro).join("."), packed.version);
check("its licence is in it", read(installed, "LICENSE").startsWith("Boost Software License"));
for (const schema of ["design/project_design.schema.json", "sheet/sheet.schema.json"])
  check(`the library's ${schema} is in it`, read(installed, basename(schema)) === read(here, "../../include/turncloth", schema));

// From TypeScript: the package's types, strictly.
cpSync(join(here, "project_types.mts"), join(folder, "project_types.mts"));
const typed = spawnSync("node", [join(modules, "typescript/bin/tsc"), "--noEmit", "--strict", "--target", "es2022", "--module", "nodenext", "project_types.mts"],
                        { cwd: folder, encoding: "utf8" });
check("the types say what the functions take and give", typed.status === 0, typed.stdout);

// The same bytes as the program's, in either unit, and where a size is refused the same sentence.
const { handout, sheet, Refusal } = await import(pathToFileURL(join(installed, "projects.js")));
const refused = promise => promise.catch(why => why);
function program(name, size) {
  const to = mkdtempSync(join(folder, "native-"));
  const ran = spawnSync(native, ["--project-file", join(designs, name), "--size", size, "--out", to, "--handout", "html", "--json"], { encoding: "utf8" });
  const written = kind => read(to, readdirSync(to).find(file => file.endsWith(kind)));
  return ran.status === 0 ? { text: written(".txt"), html: written(".html"), sheet: JSON.parse(written(".json")) } : { refused: ran.stderr };
}
for (const [name, size] of [["peg_bag.json", "14 x 12 in"], ["peg_bag.json", "35,5 x 31 cm"], ["scooped_peg_bag.json", "12 x 14 in"],
                            ["organiser.json", "27 x 28 in"], ["tool_roll.json", "75 x 54 cm"], ["kneeling_pad.json", "17 1/2 x 10 1/2 in"],
                            ["peg_bag.json", "2 x 12 in"]]) {
  const design = read(designs, name), there = program(name, size), at = `${name} at ${size}`;
  const told = await refused(handout(design, size));
  if (there.refused) {
    check(`${at} is refused as the program does`, told instanceof Refusal && told.field === "size" && there.refused.includes(told.message), [told, there.refused]);
    continue;
  }
  check(`the handout of ${at} is the program's`, told.html === there.html, told.message ?? told.html?.length);
  check(`the sheet of ${at} is the program's, to be read`, told.text === there.text, told.text);
  const made = await refused(sheet(JSON.parse(design), size));
  check(`and as data`, JSON.stringify(made.sheet) === JSON.stringify(there.sheet));
}

// Refusals, each with its place or its field.
const faulty = bag.replace('"finished width * ', '"').replace('"width": "finished width"', '"width": "finished girth"').replace('"count": "eyelets"', '"count": "3 in"');
const wrong = await refused(handout(faulty, "14 x 12 in"));
check("every fault of a file is told at once, with its place",
      wrong instanceof Refusal && wrong.field === "design" && wrong.faults?.length === 2 && wrong.faults[0].where === "/pieces/0/width" && wrong.faults[1].where.startsWith("/pieces/0/eyelets"), wrong);
const cases = [
  ["what is no JSON", handout("{", "9 x 9 in"), why => why.field === "design" && why.faults.length === 1],
  ["a size that is none", handout(bag, "14 by in"), why => why.field === "size"],
  ["a file of no size, and none given", sheet({ turncloth_design: 1, name: "Bag", units: "inches", pieces: [{ name: "back", material: "canvas", width: "9 in", height: "9 in" }] }), why => why.field === "size" && why.kind === "missing"],
  ["an option that there is not", sheet(bag, "14 x 12 in", { colour: "red" }), why => why.field === "colour"],
  ["units that there are not", sheet(bag, "14 x 12 in", { units: "ells" }), why => why.field === "units"],
  ["a cloth of no width", sheet(bag, "14 x 12 in", { clothWidth: "wide" }), why => why.field === "cloth_width"],
  ["a file that is too long", sheet("x".repeat(1_300_000)), why => why.kind === "too_large"],
];
for (const [what, promise, as] of cases) {
  const why = await refused(promise);
  check(`${what} is refused with data`, why instanceof Refusal && why.message.length > 10 && as(why), why);
}
check("it still answers after them", (await sheet(bag, "14 x 12 in")).sheet.pieces.length === 2);

// On pages: the guide's, and the one that is built.
cpSync(built, join(folder, "page"), { recursive: true });
const { address, browser, close } = await served(folder, modules);
const tab = await browser.newPage();
const complaints = [];
tab.on("pageerror", error => complaints.push(String(error)));
tab.on("console", message => message.type() === "error" && complaints.push(message.text()));
const status = () => tab.textContent("turncloth-project #status");
const until = sentence => tab.waitForFunction(said => document.querySelector("turncloth-project")?.shadowRoot?.querySelector("#status").textContent.includes(said), sentence);
const shown = () => tab.frameLocator("turncloth-project #handout");

await tab.goto(address + "index.html");
await until("14 x 12 in");
const words = await shown().locator("body").textContent();
check("the guide's page shows the handout", words.includes("Peg bag, pockets: 2") && words.includes("The allotment society"), words.slice(0, 200));
check("with its cautions", words.includes("pegs at the height of the eyes hurt"));
// By hand: 20 in and 1 1/4 in of hem at each side are 22 1/2 in; at 6 in a pocket 20 in hold 3.
await tab.fill("turncloth-project #size", "20 x 14 in");
await until("Peg bag, pockets: 3");
check("it follows the size that is typed", (await shown().locator("body").textContent()).replaceAll("\u00a0", " ").includes("22 1/2"));
await tab.fill("turncloth-project #size", "2 x 14 in");
await tab.waitForSelector("turncloth-project #refused p");
check("and its field is marked for a screen reader", await tab.getAttribute("turncloth-project #size", "aria-invalid") === "true" && await tab.getAttribute("turncloth-project #size", "aria-describedby") === "refused");
check("a size that the file refuses is refused in its own words", (await tab.textContent("turncloth-project #refused")).startsWith("A peg bag needs at least 6 in of width"), await tab.textContent("turncloth-project #refused"));
check("what was made before stays, greyed and named so", await tab.$eval("turncloth-project #handout", part => part.classList.contains("stale")) && (await status()).includes("before this change"));
await tab.fill("turncloth-project #size", "20 x 14 in");
await until("Peg bag, pockets: 3");
check("put right, it is as before", !await tab.$eval("turncloth-project #handout", part => part.classList.contains("stale")) && await tab.textContent("turncloth-project #refused") === "");

// The page of sums leads to it; it opens with a project, by its name in the address another, and whatever file is chosen.
await tab.goto(address + "page/index.html");
await tab.click('a[href="projects/index.html"]');
await until("organiser");
check("the page of sums leads to one that opens with a project", tab.url().endsWith("page/projects/index.html"), tab.url());
await tab.click('nav a[href="#kneeling_pad"]');
await until("neeling pad");
await tab.setInputFiles("#file", { name: "mine.json", mimeType: "application/json", buffer: Buffer.from(bag) });
await until("Peg bag");
check("a file that is chosen is opened, at its own first size", (await status()).includes("14 x 12 in"), await status());
check("the page has its cautions", (await tab.textContent("footer")).includes("Check a figure before you cut"));
await tab.setInputFiles("#file", { name: "faulty.json", mimeType: "application/json", buffer: Buffer.from(faulty) });
await tab.waitForSelector("turncloth-project #refused li");
const faults = await tab.$$eval("turncloth-project #refused li", all => all.map(one => one.textContent));
check("its faults are listed as text, each with its place", faults.length === 2 && faults[0].startsWith("/pieces/0/width"), faults);
await tab.setInputFiles("#file", { name: "picture.json", mimeType: "application/json", buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0]) });
await tab.waitForFunction(() => document.querySelector("turncloth-project").shadowRoot.querySelectorAll("#refused li").length === 1);
check("what is no such file is said to be none", (await tab.textContent("turncloth-project #refused")).includes("JSON"), await tab.textContent("turncloth-project #refused"));
await tab.evaluate(text => {
  const dropped = new DataTransfer();
  dropped.items.add(new File([text], "mine.json"));
  document.getElementById("open").dispatchEvent(new DragEvent("drop", { dataTransfer: dropped, bubbles: true, cancelable: true }));
}, bag);
await until("Peg bag, pockets");
check("a file that is dropped is opened", await tab.textContent("turncloth-project #refused") === "");

// The keyboard, a narrow screen, paper, and what an accessibility checker finds.
for (let i = 0; i < 12 && await tab.evaluate(() => document.activeElement.shadowRoot?.activeElement?.id) !== "size"; ++i) await tab.keyboard.press("Tab");
await tab.keyboard.press("Control+A");
await tab.keyboard.type("36 x 30 cm");
await tab.keyboard.press("Enter");
await until("36 x 30 cm");
check("the keyboard alone makes another size", (await tab.textContent("turncloth-project #refused")) === "");
await tab.setViewportSize({ width: 320, height: 640 });
check("nothing is wider than a narrow screen", await tab.evaluate(() => document.documentElement.scrollWidth <= 320), await tab.evaluate(() => document.documentElement.scrollWidth));
await tab.addScriptTag({ content: read(modules, "axe-core/axe.min.js") });
for (const scheme of ["light", "dark"]) {
  await tab.emulateMedia({ colorScheme: scheme });
  const found = await tab.evaluate(async () => (await axe.run({ exclude: [["turncloth-project", "iframe"]] })).violations.map(({ id, nodes }) => [id, nodes.map(node => [node.target, node.failureSummary])]));
  check(`an accessibility checker finds nothing in ${scheme}`, found.length === 0, found);
}
check("the pages never complained", complaints.length === 0, complaints);

// Where the engine does not come.
const lost = await browser.newPage();
await lost.route("**/engine.wasm", route => route.abort());
await lost.goto(address + "index.html");
await lost.waitForSelector("turncloth-project #refused p");
check("it says so where the engine cannot be loaded", (await lost.textContent("turncloth-project #refused")).length > 10, await lost.textContent("turncloth-project #refused"));

await close();
rmSync(folder, { recursive: true, force: true });
done();
