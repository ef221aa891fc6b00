// How a document looks: one style sheet for a screen of any width, light or dark, and for A4 and Letter.
#ifndef TURNCLOTH_PAGE_DETAIL_HTML_LOOK_HPP
#define TURNCLOTH_PAGE_DETAIL_HTML_LOOK_HPP

#include <string_view>

namespace turncloth::detail {

// Drawings keep their white ground in the dark: they are made in black on white. On paper each section of level 2 that is
// marked by a rule begins where it falls, so that no page is left half empty. Margins leave what printers cannot print.
// It holds none of the signs that XML would read.
inline constexpr std::string_view html_look = R"css(:root {
  color-scheme: light dark;
  --ground: #fdfcf9; --ink: #22261f; --quiet: #5b6156; --rule: #c9cabf; --tint: #f0f1ea; --accent: #3d5a45;
  --warn: #8a3b12; --warn-tint: #fbf1e8;
}
@media (prefers-color-scheme: dark) {
  :root {
    --ground: #1b1e1a; --ink: #e7e8e0; --quiet: #a9aea2; --rule: #4a4f46; --tint: #252923; --accent: #a9c8b0;
    --warn: #f0b088; --warn-tint: #33261d;
  }
}
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0; background: var(--ground); color: var(--ink);
  font: 1rem/1.5 "Charter", "Bitstream Charter", "Georgia", "DejaVu Serif", serif; font-variant-numeric: lining-nums;
}
main { max-width: 46rem; margin: 0 auto; padding: 1rem 0.9rem 3rem; overflow-wrap: break-word; }
header { border-bottom: 3px double var(--accent); padding-bottom: 0.6rem; margin-bottom: 1rem; }
h1, h2, h3, h4, h5, h6 { line-height: 1.2; margin: 1.4em 0 0.4em; font-weight: 600; text-wrap: balance; }
h1 { font-size: 1.9rem; margin: 0.3em 0 0.1em; }
h2 { font-size: 1.35rem; color: var(--accent); border-bottom: 1px solid var(--rule); padding-bottom: 0.15em; }
h3 { font-size: 1.1rem; }
h4, h5, h6 { font-size: 1rem; }
p { margin: 0.4em 0; }
.subtitle { font-size: 1.2rem; color: var(--quiet); }
ul { margin: 0.4em 0; padding-left: 1.2em; }
.ticks, .blanks { list-style: none; padding: 0; }
.ticks li { display: flex; gap: 0.55em; margin: 0.3em 0; }
.tick {
  display: inline-block; flex: none; width: 0.85em; height: 0.85em; margin-top: 0.3em; border: 1.2px solid currentColor;
  border-radius: 2px;
}
td .tick { margin: 0.1em 0 0; }
.blanks li { display: flex; gap: 0.6em; align-items: flex-end; margin: 0.7em 0; }
.blanks .blank { flex: 1; }
.blank { display: inline-block; min-width: 4.5em; height: 1.3em; border-bottom: 1px solid var(--quiet); }
.caution {
  border: 1.5px solid var(--warn); border-left-width: 6px; background: var(--warn-tint); border-radius: 3px;
  padding: 0.35em 0.8em; margin: 0.6em 0; font-size: 0.94rem;
}
.caution strong { color: var(--warn); }
.reminder { color: var(--quiet); font-size: 0.88rem; }
.reminder strong { font-weight: 600; }
.steps { list-style: none; counter-reset: step; padding: 0; margin: 0.6em 0; }
.steps li { margin: 0; }
.steps > li {
  counter-increment: step; position: relative; padding: 0.7em 0 0.7em 2.7em; border-top: 1px solid var(--rule);
}
.steps > li::before {
  content: counter(step); position: absolute; left: 0; top: 0.62em; min-width: 1.9em; height: 1.9em; padding: 0 0.3em;
  border-radius: 1em; background: var(--accent); color: var(--ground); font-weight: 600; line-height: 1.9em;
  text-align: center;
}
.table { overflow-x: auto; margin: 0.8em 0; }
table { border-collapse: collapse; width: 100%; font-size: 0.94rem; }
caption { text-align: left; color: var(--quiet); font-style: italic; padding-bottom: 0.3em; }
th, td { text-align: left; vertical-align: top; padding: 0.3em 0.7em 0.3em 0; border-bottom: 1px solid var(--rule); }
thead th { font-weight: 600; color: var(--accent); border-bottom: 1.5px solid var(--accent); vertical-align: bottom; }
tbody th { font-weight: 600; }
.figure { font-variant-numeric: lining-nums tabular-nums; }
figure { margin: 1em 0; }
figure svg {
  display: block; max-width: 100%; height: auto; background: #fff; border: 1px solid var(--rule); border-radius: 3px;
}
figcaption { color: var(--quiet); font-style: italic; font-size: 0.94rem; margin-top: 0.3em; }
.row, .pair { display: flex; flex-wrap: wrap; gap: 0 1.2em; align-items: flex-start; }
.row figure { flex: 1 1 17rem; max-width: 100%; min-width: 0; margin: 0.8em 0; }
.pair p { flex: 1 1 14rem; }
.pair figure { flex: 1 1 17rem; max-width: 24rem; min-width: 0; margin: 0.4em 0 0.8em; }
.true-to-size { overflow-x: auto; }
.true-to-size svg { max-width: none; }
@media (max-width: 30rem) {
  body { font-size: 0.97rem; }
  .steps > li { padding-left: 0; padding-top: 2.9em; }
  table { font-size: 0.86rem; }
  th, td { padding-right: 0.5em; }
}
@media print {
  :root {
    color-scheme: light; --ground: #fff; --ink: #000; --quiet: #3c3c3c; --rule: #b5b5b5; --tint: #fff; --accent: #1d3324;
    --warn: #000; --warn-tint: #fff;
  }
  body { font-size: 10.5pt; line-height: 1.4; }
  main { max-width: none; padding: 0; }
  p, li { orphans: 3; widows: 3; }
  h1, h2, h3, h4, h5, h6, caption, thead { break-after: avoid; }
  h2 + p, h3 + p { break-after: avoid; }
  figure, .row, .pair, tr, .caution p, .ticks li, .blanks li { break-inside: avoid; }
  .caution { box-decoration-break: clone; -webkit-box-decoration-break: clone; }
  .steps .caution, .reminder { break-after: avoid; }
  .steps .ticks { break-before: avoid; }
  .table { overflow: visible; }
  thead { display: table-header-group; }
  figure svg { border: 0; max-height: 150mm; max-width: 118mm; }
  .row, .pair { flex-wrap: nowrap; }
  .row figure { flex: 1 1 50%; }
  .pair p { flex: 1 1 45%; }
  .pair figure { flex: 0 0 82mm; }
  .row svg, .pair svg { max-width: 100%; max-height: 105mm; }
  .true-to-size svg { max-height: none; max-width: none; }
  .steps > li::before { background: none; color: var(--ink); border: 1.2px solid var(--ink); line-height: 1.75em; }
}
@page {
  margin: 15mm 15mm 17mm;
  @bottom-left { font: 8.5pt "Charter", "Georgia", serif; color: #3c3c3c; }
  @bottom-right {
    content: counter(page) " of " counter(pages); font: 8.5pt "Charter", "Georgia", serif; color: #3c3c3c;
  }
}
)css";

} // namespace turncloth::detail

#endif
