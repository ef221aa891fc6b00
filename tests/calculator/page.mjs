// The calculator's page as people use it, in a headless Chromium: typed answers, the keyboard, a bad input, a shared
// address, a narrow screen; and the page's figures against the same questions asked of the native program.
//
//   node page.mjs <folder of the page> <turncloth_calculator> <folder of node_modules>
import { execFileSync } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { brotliCompressSync } from "node:zlib";
import { checks, served } from "./served.mjs";

const [folder, native, modules] = process.argv.slice(2).map(path => resolve(path));
const { check, done } = checks();
const { address: server, browser, close } = await served(folder, modules);
const address = server + "index.html";
const weight = readdirSync(folder, { withFileTypes: true }).filter(entry => entry.isFile())
  .reduce((sum, { name }) => sum + brotliCompressSync(readFileSync(join(folder, name))).length, 0);
check("the whole page is at most 240 kB, compressed by Brotli at its best", weight <= 240_000, weight);
console.log(`the page weighs ${weight} bytes, compressed by Brotli`);

const page = await browser.newPage();
const complaints = [];
page.on("pageerror", error => complaints.push(String(error)));
page.on("console", message => message.type() === "error" && complaints.push(message.text()));

async function open(question = "") {
  await page.goto("about:blank");
  await page.goto(address + question);
  await page.waitForSelector("body[data-ready]");
}
const answers = () => page.$$eval("#answers dl div", rows => rows.map(row => ({
  label: row.querySelector("dt").textContent, figure: row.querySelector("dd").textContent, working: row.querySelector(".working")?.textContent ?? "" })));
const figure = async label => (await answers()).find(row => row.label === label)?.figure;

await open();
check("it opens with an answer", (await answers()).length > 3);
// By hand: 14 + 4 x 1/2 = 16 in = 40.64 cm.
check("the first answer is right", await figure("outer layer, cut width") === "16 in (40.6 cm)", await figure("outer layer, cut width"));

await page.fill("#width", "17-1/4");
// By hand: 17 1/4 + 2 = 19 1/4 in = 48.895 cm, nearer to 48.9.
check("the answer follows as a size is typed", await figure("outer layer, cut width") === "19 1/4 in (48.9 cm)", await figure("outer layer, cut width"));
check("the address keeps what was typed", new URL(page.url()).hash.includes("width=17-1%2F4"), page.url());
check("the working is shown", (await answers())[0].working === "19 1/4 in = 17 1/4 in finished + 2 x (1/2 + 1/2) in self-binding", (await answers())[0]);
check("the drawing is shown", await page.$eval("#drawing svg", svg => svg.getBoundingClientRect().width > 100));
const in_sight = () => page.$$eval("#drawing figure, #printed figure", figures => figures.filter(figure => figure.getBoundingClientRect().width > 0).map(figure => figure.textContent));
check("on the screen one drawing is shown, which states no scale", (await in_sight()).length === 1 && !/scale|100 %/.test((await in_sight())[0]), await in_sight());

await page.fill("#width", "17 1/");
check("a bad size is said beside its field", (await page.textContent("#why-width")).includes("expected a denominator"), await page.textContent("#why-width"));
check("and is marked for a screen reader", await page.getAttribute("#width", "aria-invalid") === "true");
check("and its border shows it", await page.$eval("#width", width => getComputedStyle(width).borderTopWidth !== getComputedStyle(document.querySelector("#height")).borderTopWidth));
check("the last good answer stays, greyed and named so", await page.$eval("#answers", answers => answers.classList.contains("stale") && answers.textContent.startsWith("The answer before this change") && answers.textContent.includes("19 1/4 in") && Number(getComputedStyle(answers).opacity) < 1));
await page.emulateMedia({ media: "print" });
check("and is no figure to print and cut by", !await page.isVisible("#answers") && !await page.isVisible("#drawing"));
await page.emulateMedia({ media: "screen" });
check("an answer is not announced before a pause", !(await page.textContent("#aloud")).includes("denominator"));
await page.waitForFunction(() => document.querySelector("#aloud").textContent.includes("expected a denominator"));
await page.fill("#width", "17 1/2");
check("put right, it answers again", await page.getAttribute("#width", "aria-invalid") === "false" && (await answers()).length > 3 && await page.$eval("#answers", answers => !answers.classList.contains("stale")));
await page.fill("#width", "1/2");
await page.fill("#binding", "3");
check("what does not fit is said", (await page.textContent("#refused")).includes("has no room for"), await page.textContent("#refused"));

await open("#ask=bound&units=in&width=35+cm&height=11&binding=1/2");
// By hand: 35 + 2 x 2.54 = 40.08 cm.
check("a working keeps the unit that was typed", (await answers())[0].working === "40.08 cm = 35 cm finished + 2 x (1/2 + 1/2) in self-binding", (await answers())[0]);

await open("#ask=zipper&units=in&across=13&margin=1&beyond=3%2F4&pieces=5&roll=2+yd");
// By hand: 13 - 2 = 11; 11 + 1 1/2 = 12 1/2 = 31.75 cm, halfway to the millimetre, so to the even one; 72 / 12 1/2 gives 5.
check("a shared address brings its sum back", await figure("tape to cut, each") === "12 1/2 in (31.8 cm)", await answers());
check("five from two yards leave nine and a half inches", await figure("left on the last roll") === "9 1/2 in (24.1 cm)", await answers());

await open();
for (let i = 0; i < 12 && await page.evaluate(() => document.activeElement.textContent) !== "Zippers from a roll"; ++i) await page.keyboard.press("Tab");
await page.keyboard.press("Enter");
await page.waitForFunction(() => document.getElementById("name").textContent === "Zippers from a roll");
check("the keyboard alone reaches another sum", await figure("sliders") === "4", await answers());
check("and the heading has the focus there", await page.evaluate(() => document.activeElement.id) === "name");
check("every field has a label", await page.$$eval("input, select, textarea", fields => fields.length > 4 && fields.every(field => field.labels.length === 1)));

await page.check("input[value=cm]");
await page.fill("#across", "30");
check("centimetres are worked in centimetres", (await answers())[0].working.startsWith("26.19 cm = 30 cm across"), (await answers())[0]);

await open("#ask=cloth");
// By hand: 29 x 32 beside three of 13 x 9, one behind the other, 27 long: 42 of 43 in used, 32 in laid; 34 in with both
// ends, and eighths of a yard are 4 1/2 in, so 36 in.
check("cloth to buy is laid and rounded up to what is sold", await figure("length to buy") === "36 in (91.4 cm)", await answers());
check("a lay that cannot be shorter says so", await figure("length laid, the shortest possible") === "32 in (81.3 cm)", await answers());
await page.fill("#pieces", "1 of 50 x 3");
check("a piece wider than the cloth is refused", (await page.textContent("#refused")).includes("50"), await page.textContent("#refused"));
await page.fill("#pieces", "3 of 13");
check("a piece without a height is said beside its field", (await page.textContent("#why-pieces")).includes("how many of width x height"));

await page.fill("#pieces", "2 of 9 x 50\n1 of 40 x 7 may turn");
// By hand: beside each other the two leave 43 - 18 = 25 in, where the third lies along the cloth, within their 50 in.
check("a piece that may turn is turned", await figure("length laid, the shortest possible") === "50 in (127 cm)" && (await figure("40 x 7 in")).endsWith("turned"), await answers());

// Sums of strips and of edges, their first figures by hand.
for (const [sum, label, expected] of [
  ["binding", "width of each strip, to cut", "2 1/4 in (5.7 cm)"], // 4 x 3/8 + 2 x 3/8
  ["binding", "left over of the strip", "19 1/2 in (49.5 cm)"], // 2 x 42 - 2 1/4, less 60 + 2 1/4
  ["bias", "and along the selvedge", "15 3/8 in (39.1 cm)"], // (15 3/8 - 1/2) / 1 3/4 sqrt 2 is just over 6; 15 1/4 gives 5 strips, 105 in
  ["bias", "joined, they come to", "126 7/8 in (322.3 cm)"], // 6 x 15 3/8 sqrt 2 less 5 x 1/2 sqrt 2 is 126.93
  ["pleats", "cloth to pleat, hems and seams apart", "45 1/2 in (115.6 cm)"], // 26 + 13 x 2 x 3/4
  ["eyelets", "eyelets", "8"], // 46 - 2 - 7/8 = 43 1/8, over 7: 6.2, so 7 gaps
  ["eyelets", "centre 1", "1 7/16 in (3.7 cm) from the left finished edge"],
  ["mitre", "trim from edge to edge, each mark", "2 5/8 in (6.7 cm)"], // 2 x 1 1/2 less 1/4 sqrt 2 is 2.646
]) {
  await open("#ask=" + sum);
  check(`${sum}, ${label}: as by hand`, await figure(label) === expected, await answers());
}
await open("#ask=binding");
await page.selectOption("#layers", "single");
check("a choice is answered like a size", await figure("width of each strip, to cut") === "1 1/2 in (3.8 cm)", await answers()); // 2 x 3/8 + 2 x 3/8
check("and is kept in the address", new URL(page.url()).hash.includes("layers=single"), page.url());
await open("#ask=eyelets&units=cm");
check("who asks in centimetres reads them first", (await figure("from centre to centre")).startsWith("15.7 cm ("), await answers());

// What is taken along.
await browser.grantPermissions(["clipboard-read", "clipboard-write"]);
await open("#ask=zipper");
await page.click("#figures");
await page.waitForFunction(() => document.getElementById("taken").textContent === "Figures copied.");
const copied = await page.evaluate(() => navigator.clipboard.readText());
check("the figures are copied with what was asked and the cautions", copied.startsWith("Zippers from a roll\n") && copied.includes("zippers wanted: 4") && copied.includes("sliders: 4") && copied.includes("eye protection"), copied);
await page.click("#link");
await page.waitForFunction(() => document.getElementById("taken").textContent === "Link copied.");
check("the link is copied", (await page.evaluate(() => navigator.clipboard.readText())) === page.url());

// The units: what was typed stays what it was.
await open("#ask=cloth");
await page.check("input[value=cm]");
check("a size typed without a unit keeps the one it was typed in", await page.inputValue("#pieces") === "1 of 29 in x 32 in\n3 of 13 in x 9 in", await page.inputValue("#pieces"));
check("and the page says so", (await page.textContent("#units-note")).includes("stay in inches"));
check("so that the answer is the same cloth", (await figure("length laid, the shortest possible")).includes("81.3 cm"), await answers());
await page.click("text=Zippers from a roll");
await page.waitForFunction(() => document.getElementById("name").textContent === "Zippers from a roll");
check("the units go along to another sum", await page.isChecked("input[value=cm]"));

// One long number, from a shared link: answered at once, with a refusal.
for (const size of ["9999999999", "9999999999999999", "1e300", "0.0000000001"]) {
  const started = Date.now();
  await open(`#ask=bound&units=in&width=${size}&height=11&binding=1/2`);
  check(`a width of ${size} does not stop the page`, Date.now() - started < 3000, Date.now() - started);
}
await open("#ask=bound&units=in&width=9999999999&height=11&binding=1/2");
check("a size beyond any cloth is refused beside its field", (await page.textContent("#why-width")).includes("at most 200 m"), await page.textContent("#why-width"));

// On paper: a drawing at its scale is a sheet of its own; millimetres are 96 / 25.4 of the browser's points.
await open("#ask=bound&units=cm&width=40&height=30&binding=1");
await page.emulateMedia({ media: "print" });
check("on paper one drawing is shown, which states its scale", (await in_sight()).length === 1 && /scale 1:/.test((await in_sight())[0]), await in_sight());
const drawn = await page.$eval("#printed svg", svg => ({ left: svg.getBoundingClientRect().left, mm: svg.getBoundingClientRect().width * 25.4 / 96, stated: parseFloat(svg.getAttribute("width")) }));
check("a printed drawing is as large as it states", Math.abs(drawn.mm - drawn.stated) < 0.3 && (drawn.stated === 210 || drawn.stated === 297), drawn);
check("and begins at the edge of its sheet", drawn.left === 0, drawn);
check("a print keeps what was asked", await page.isVisible("#asked") && (await page.textContent("#asked")).includes("finished width40"), await page.textContent("#asked"));
check("and its cautions", await page.isVisible("footer"));
await page.emulateMedia({ media: "screen" });

// 49 in to 35 in in seven spans: spans of 7 in and of 5 in, and a line from each mark to the other.
await open("#ask=map");
check("marks that meet are joined", await page.$$eval("#drawing .joined line", lines => lines.length) === 8);
check("and their drawing states no scale and no height", !/scale|\bcut\b/.test(await page.textContent("#drawing")), await page.textContent("#drawing"));
check("a mark of the longer meets one of the shorter", (await figure("mark 1")).startsWith("7 in (17.8 cm) of the longer meets 5 in (12.7 cm)"), await figure("mark 1"));

await page.setViewportSize({ width: 320, height: 640 });
for (const ask of ["bound", "map", "zipper", "cloth", "binding", "pleats", "eyelets", "mitre"]) {
  await open("#ask=" + ask);
  check(`nothing of ${ask} is wider than a narrow screen`, await page.evaluate(() => document.documentElement.scrollWidth <= 320), await page.evaluate(() => document.documentElement.scrollWidth));
}

await page.setViewportSize({ width: 1280, height: 800 });
await open();
check("on a wide screen the answer stands beside the fields, and is the largest thing after its title", await page.evaluate(() => {
  const [form, answers] = ["form", "answers"].map(id => document.getElementById(id).getBoundingClientRect());
  const size = query => parseFloat(getComputedStyle(document.querySelector(query)).fontSize);
  return answers.left >= form.right && Math.abs(answers.top - form.top) < 40 && size("#answers dd") >= Math.max(...["label", "input", "p", "h1", "dt"].map(size));
}));
await page.addScriptTag({ content: readFileSync(join(modules, "axe-core/axe.min.js"), "utf8") });
for (const scheme of ["light", "dark"]) {
  await page.emulateMedia({ colorScheme: scheme });
  const found = await page.evaluate(async () => (await axe.run()).violations.map(({ id, nodes }) => [id, nodes.map(node => node.target)]));
  check(`an accessibility checker finds nothing in ${scheme}`, found.length === 0, found);
}
await page.emulateMedia({ colorScheme: null });

// A telephone: 16 points of the browser to the em of a book at arm's length, half of that for the smallest print.
await page.setViewportSize({ width: 390, height: 800 });
for (const ask of ["bound", "map", "cloth", "eyelets", "mitre"]) {
  await open("#ask=" + ask);
  const smallest = await page.$eval("#drawing svg", svg => Math.min(...[...svg.querySelectorAll("text")].map(text => parseFloat(getComputedStyle(text).fontSize))) * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width);
  check(`the smallest words of the drawing of ${ask} can be read on a telephone`, smallest >= 8, smallest);
}

// The same questions, asked here and there; tests/calculator/package.mjs asks more.
const questions = [];
for (const units of ["in", "cm"])
  for (const width of ["9", "31,75 cm", "5' 3\"", "0", "99999999999999999999"])
    questions.push({ ask: "bound", units, width, height: "12 1/3", binding: "3/8" }, { ask: "map", units, longer: width, shorter: "7", spans: "3" });
const there = execFileSync(native, { input: questions.map(one => JSON.stringify(one)).join("\n") + "\n", encoding: "utf8", maxBuffer: 1 << 28 }).trimEnd().split("\n").map(line => JSON.parse(line));
const here = await page.evaluate(async list => {
  const { calculate } = await import("./turncloth.js");
  return Promise.all(list.map(({ ask, ...given }) => calculate(ask, given).catch(why => ({ refused: why.message }))));
}, questions);
questions.forEach((question, i) => check(`page and library agree on ${JSON.stringify(question)}`, JSON.stringify(here[i].lines ?? here[i].refused) === JSON.stringify(there[i].lines ?? there[i].refused.sentence), [here[i], there[i]]));

// Before the engine is there, and where it does not come.
await page.route("**/engine.wasm", () => {});
await page.goto("about:blank");
await page.goto(address, { waitUntil: "commit" });
await page.waitForSelector("#answers dl");
check("the first answer does not wait for the engine", await figure("outer layer, cut width") === "16 in (40.6 cm)", await answers());
await page.fill("#width", "15");
await page.waitForSelector("#answers.stale .before");
check("what is asked before it is there is said to be loading", (await page.textContent("#answers")).startsWith("Loading"));
await page.goto("about:blank");
await page.goto(address + "#ask=cloth", { waitUntil: "commit" });
await page.waitForSelector("#answers .before");
check("and so is another sum", (await page.textContent("#answers")).startsWith("Loading"));
await page.unroute("**/engine.wasm");

// A telephone on a slow network, measured and not judged: 1.6 Mbit/s, 150 ms there and back, a processor of a quarter.
const slow = await browser.newPage();
const session = await browser.newCDPSession(slow);
await session.send("Network.enable");
await session.send("Network.setCacheDisabled", { cacheDisabled: true });
await session.send("Network.emulateNetworkConditions", { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 100_000 });
await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
const since = Date.now();
await slow.goto(address, { waitUntil: "commit" });
await slow.waitForSelector("#answers dl");
const firstAnswer = Date.now() - since;
await slow.fill("#width", "15");
await slow.waitForFunction(() => document.querySelector("#answers:not(.stale) dd")?.textContent.startsWith("17 in"));
console.log(`on a slow telephone the first answer stands after ${firstAnswer} ms, what is typed then is answered after ${Date.now() - since} ms`);

check("the page never complained", complaints.length === 0, complaints);
await close();
done();
